/** Finds rules by the names that people type, and tells the nearest where a name is wrong. */
import { closest } from 'fastest-levenshtein';
import type { Rule } from '../../rules/rule.js';
import { Failure } from './failure.js';

export function ruleNamed(name: string, rules: readonly Rule[]): Rule {
  const found = rules.find((rule) => rule.name === name);
  if (found !== undefined) return found;
  const names = rules.map((rule) => rule.name);
  // Who types half a name means the whole.
  const holding = names.filter((each) => each.includes(name));
  const near = holding.length > 0 ? holding : names;
  const hint = near.length === 0 ? '' : ` The nearest is "${closest(name, near)}".`;
  throw new Failure(`there is no rule "${name}".${hint} \`tamis explain\` lists them all.`);
}

/** The names of "one,other", each checked. */
export function ruleNames(list: string, rules: readonly Rule[]): string[] {
  const names = list
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  if (names.length === 0) throw new Failure('--only names no rule. `tamis explain` lists them all.');
  return names.map((name) => ruleNamed(name, rules).name);
}
