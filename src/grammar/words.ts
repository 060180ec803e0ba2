/** Knows what words stand for in a line: a food of the larder, a state with its adverbs, a unit after a food. */
import { foodAt, kindsOf } from '../larder/foods.js';
import { lexiconAt } from '../larder/lexicon.js';
import { singular } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';
import type { Food } from '../larder/types.js';
import { unitNamed } from '../larder/units.js';

/** The row of the larder that the words name: best where they end ("chicken stock cubes"), else anywhere, the longest. */
export function rowOf(keys: readonly string[]): Food | null {
  let longest: { food: Food; length: number } | null = null;
  for (let at = 0; at < keys.length; at++) {
    const match = foodAt(keys, at);
    if (match === null) continue;
    if (at + match.length === keys.length) return match.food;
    if (longest === null || match.length >= longest.length) longest = match;
  }
  return longest?.food ?? null;
}

/** The row whose name is the end of the words, and at least their last one. */
export function rowEndingAt(keys: readonly string[]): Food | null {
  for (let at = 0; at < keys.length; at++) {
    const match = foodAt(keys, at);
    if (match !== null && at + match.length === keys.length) return match.food;
  }
  return null;
}

/** How many words at `at` are a state, with its adverbs: "finely chopped", "very ripe"; 0 where none is. */
export function stateLength(keys: readonly string[], at: number): number {
  let next = at;
  for (let adverbs = 0; adverbs <= MOST_ADVERBS; adverbs++) {
    const adverb = lexiconAt(keys, next, 'state-adverb');
    const state = lexiconAt(keys, next, 'state');
    if (state !== null && state.length >= (adverb?.length ?? 0)) {
      const after = next + state.length;
      // "thin" and "fine" are states of their own and adverbs of the next.
      return after - at;
    }
    if (adverb === null) break;
    next += adverb.length;
  }
  const verb = techniqueOf(keys[next] ?? '');
  // "cut" and "split" are their own participles, and need an adverb to be told from the verb.
  const participle = verb?.form === 'past' || (next > at && verb?.technique.forms.includes(keys[next]!));
  return participle ? next + 1 - at : 0;
}

/** A unit that stands after the food: "garlic cloves", "celery sticks". */
export function trailingUnit(keys: readonly string[]): string | null {
  const last = keys[keys.length - 1];
  if (last === undefined || keys.length < 2) return null;
  const unit = unitNamed(last);
  if (unit === null || unit.kind !== 'piece') return null;
  const rest = rowEndingAt(keys.slice(0, -1));
  if (rest === null) return null;
  const whole = rowEndingAt(keys);
  const same =
    whole === null || whole === rest || (kindsOf(whole).has(rest) && whole.name.split(' ').length > 1);
  return same ? unit.id : null;
}

/** The word for one food: lower case, singular, single spaces. */
export function commonName(text: string): string {
  const words = text.toLowerCase().replace(OPEN_PLURAL, '').split(SPACES);
  const last = words.pop() ?? '';
  return [...words, singular(last)].join(' ');
}

/** "very finely", "not too thickly"; the bound keeps a hostile line's cost in proportion. */
const MOST_ADVERBS = 4;

const OPEN_PLURAL = /\((?:s|es)\)/g;
const SPACES = /\s+/;
