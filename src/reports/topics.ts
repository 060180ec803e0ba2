/** Knows what the marks of a reading are about. */
import type { Mark, Rule } from '../../rules/rule.js';

/** Whether a rule of the topic left any of the marks. */
export function hasTopic(marks: readonly Mark[], rules: readonly Rule[], topic: Rule['topic']): boolean {
  const names = new Set(rules.filter((rule) => rule.topic === topic).map((rule) => rule.name));
  return marks.some((mark) => names.has(mark.rule));
}
