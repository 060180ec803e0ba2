/** Finds the kitchen's verbs by any of their forms. */
import { larder } from './load.js';
import { fold } from './names.js';
import type { Technique } from './types.js';

export type VerbForm = 'base' | 's' | 'past' | 'ing';

export interface TechniqueMatch {
  readonly technique: Technique;
  readonly form: VerbForm;
}

const forms = new Map<string, TechniqueMatch>();
/** The first words of verbs of two: "stir" of "stir-fry". */
const openings = new Set<string>();

for (const technique of larder.techniques) {
  for (const verb of [technique.name, ...technique.also]) {
    const [first, second] = verb.split(/[\s-]+/);
    if (second !== undefined) openings.add(fold(first!));
    const [base, s, past, ing] = inflections(fold(verb));
    learn(base, technique, 'base');
    for (const form of past) learn(form, technique, 'past');
    for (const form of ing) learn(form, technique, 'ing');
    learn(s, technique, 's');
  }
  for (const form of technique.forms) learn(fold(form), technique, form.endsWith('ing') ? 'ing' : 'past');
}

/** The verb of which this folded word is a form; null when it is none of the larder's. */
export function techniqueOf(folded: string): TechniqueMatch | null {
  return forms.get(folded) ?? null;
}

/** The verb that two folded words make together: "stir-fry", "slow cook"; null when they make none. */
export function techniqueOfTwo(first: string, second: string): TechniqueMatch | null {
  return openings.has(first) ? techniqueOf(first + second) : null;
}

export type Role = Technique['does'][number];

/** Whether the verb does that with the food it names. */
export function does(technique: Technique, ...roles: readonly Role[]): boolean {
  return roles.some((role) => technique.does.includes(role));
}

function learn(form: string, technique: Technique, kind: VerbForm): void {
  if (!forms.has(form)) forms.set(form, { technique, form: kind });
}

/** Base, third person, past forms, -ing forms of a regular verb; a doubled consonant is offered beside the plain form. */
function inflections(verb: string): [string, string, string[], string[]] {
  const last = verb.at(-1)!;
  if (last === 'e') return [verb, `${verb}s`, [`${verb}d`], [`${verb.slice(0, -1)}ing`, `${verb}ing`]];
  if (last === 'y' && !/[aeiou]y$/.test(verb)) {
    return [verb, `${verb.slice(0, -1)}ies`, [`${verb.slice(0, -1)}ied`], [`${verb}ing`]];
  }
  const s = /(s|x|z|ch|sh)$/.test(verb) ? `${verb}es` : `${verb}s`;
  return [verb, s, [`${verb}ed`, `${verb}${last}ed`], [`${verb}ing`, `${verb}${last}ing`]];
}
