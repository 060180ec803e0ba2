/** Says, wherever the reports speak of food safety, whose word comes first. */
import type { Mark, Rule } from '../../rules/rule.js';

export const caution =
  'Temperatures follow the USDA chart of safe minimum internal temperatures. Local codes and licensed practice come first; no recipe is declared safe.';

/** Whether a rule of food safety left any of the marks. */
export function speaksOfSafety(marks: readonly Mark[], rules: readonly Rule[]): boolean {
  const safety = new Set(rules.filter((rule) => rule.topic === 'safety').map((rule) => rule.name));
  return marks.some((mark) => safety.has(mark.rule));
}
