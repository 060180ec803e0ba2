/** Finds rules by the names that people type, and tells the nearest where a name is wrong. */
import type { Rule } from '../../rules/rule.js';
import { Failure } from './failure.js';

export function ruleNamed(name: string, rules: readonly Rule[]): Rule {
  const found = rules.find((rule) => rule.name === name);
  if (found !== undefined) return found;
  const nearest = rules.toSorted((one, other) => distance(name, one.name) - distance(name, other.name))[0];
  const hint = nearest === undefined ? '' : ` The nearest is "${nearest.name}".`;
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

/** How many letters must be put in, left out or changed to make one name of the other. */
function distance(one: string, other: string): number {
  let above = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row++) {
    const current = [row];
    for (let column = 1; column <= other.length; column++) {
      const changed = above[column - 1]! + (one[row - 1] === other[column - 1] ? 0 : 1);
      current.push(Math.min(changed, above[column]! + 1, current[column - 1]! + 1));
    }
    above = current;
  }
  return above[other.length]!;
}
