/** Finds the places in a step that name a food, a group of foods or a thing made on the way. */
import { type FoodMatch, foodAt, foodNamed } from '../larder/foods.js';
import { isWord, type PhraseMatch, phraseAt } from '../larder/kitchen-words.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Food } from '../larder/types.js';
import { isMadeWord } from './context.js';
import { type Entry, listedAt, slipsOf, type Vocabulary } from './listed.js';
import { isSecondHalf, verbAt, type Words } from './words.js';

/** A named food in a step: words `start` to `end`, end exclusive. */
export interface Named {
  readonly start: number;
  readonly end: number;
  /** The larder's row; null when only the list knows the words. */
  readonly food: Food | null;
  /** The listed foods that these words name by the list's own words. */
  readonly entries: readonly Entry[];
  /** The food is said by a verb or a participle: "butter the dish", "a floured board". */
  readonly implied: boolean;
  /** The class of a group: all, rest, dry, wet or a food class. */
  readonly group: string | null;
  /** The words name a thing that recipes make. */
  readonly made: boolean;
}

/** All foods named in a step, in order; they do not overlap. */
export function namedIn(words: Words, vocabulary: Vocabulary): Named[] {
  const found: Named[] = [];
  let at = 0;
  while (at < words.keys.length) {
    const named = namedAt(words, at, vocabulary);
    if (named === null) at++;
    else {
      found.push(named);
      at = named.end;
    }
  }
  return found;
}

function namedAt(words: Words, at: number, vocabulary: Vocabulary): Named | null {
  const implied = impliedFood(words, at);
  if (implied !== null)
    return { start: at, end: at + 1, food: implied, entries: [], implied: true, group: null, made: false };
  // A word that is a food and a verb ("cream the butter", "season") is no food where it gives an order.
  if (verbAt(words, at) !== null || isSecondHalf(words, at) || isPredicate(words, at) || isPortion(words, at))
    return null;

  const keys = words.keys;
  const reach = sameStretch(words, at);
  const isAnnounced = at > 0 && isWord(keys[at - 1], 'announcing');
  const phrase = isAnnounced ? null : (phraseAt(keys, at, 'group', reach) ?? bareAll(words, at));
  const group = phrase !== null && isAllOver(words, at + phrase.length) ? null : phrase;
  const food = foodAcross(keys, at, reach, vocabulary);
  const listed = listedAt(vocabulary, keys, at, reach);
  const longest = Math.max(food?.length ?? 0, listed?.length ?? 0, group?.length ?? 0);
  const madeLength = isMadeWord(keys, at, reach);
  if (longest === 0) {
    const slips = madeLength === 0 ? slipsOf(vocabulary, keys[at]!) : [];
    if (slips.length > 0)
      return {
        start: at,
        end: at + 1,
        food: slips[0]!.food.row,
        entries: slips,
        implied: false,
        group: null,
        made: false,
      };
    return madeLength === 0
      ? null
      : { start: at, end: at + madeLength, food: null, entries: [], implied: false, group: null, made: true };
  }
  if (group !== null && group.length === longest && listed === null) {
    return {
      start: at,
      end: at + longest,
      food: null,
      entries: [],
      implied: false,
      group: group.means,
      made: false,
    };
  }
  return {
    start: at,
    end: at + longest,
    food: food !== null && food.length === longest ? food.food : null,
    entries: listed !== null && listed.length === longest ? listed.entries : [],
    implied: false,
    group: null,
    made: madeLength === longest,
  };
}

/** "While it roasts", "the chicken roasts": a verb of a statement, whose form is also a food's plural. */
function isPredicate(words: Words, at: number): boolean {
  const match = techniqueOf(words.keys[at]!);
  if (match?.form !== 's' || words.before[at] !== '' || at === 0) return false;
  return does(match.technique, 'heat') || isWord(words.keys[at - 1], 'subject');
}

/** "A generous sprinkle of salt": how much of the food behind it, and no food. */
function isPortion(words: Words, at: number): boolean {
  const match =
    words.keys[at + 1] === 'of' && words.before[at + 1] === '' ? techniqueOf(words.keys[at]!) : null;
  return match?.form === 'base' && does(match.technique, 'garnish', 'coat');
}

/** "Season it all over." */
function isAllOver(words: Words, end: number): boolean {
  return words.keys[end - 1] === 'all' && words.before[end] === '' && isWord(words.keys[end], 'all-over');
}

/** "Combine all and simmer", "add all.": the word by itself. */
function bareAll(words: Words, at: number): PhraseMatch | null {
  if (words.keys[at] !== 'all' || at === 0 || words.before[at] !== '' || verbAt(words, at - 1) === null)
    return null;
  const next = words.before[at + 1] === '' ? words.keys[at + 1] : undefined;
  return next === undefined || next === 'and' || isWord(next, 'preposition')
    ? { length: 1, means: 'all' }
    : null;
}

/** The food named at `at`; "beans and rice" is two listed foods before it is a dish. */
function foodAcross(
  keys: readonly string[],
  at: number,
  reach: number,
  vocabulary: Vocabulary,
): FoodMatch | null {
  const food = foodAt(keys, at, reach);
  if (food === null || food.length < 3) return food;
  const and = keys.indexOf('and', at);
  if (and < 0 || and >= at + food.length) return food;
  return listedAt(vocabulary, keys, at, and) === null ? food : foodAt(keys, at, and);
}

/** Where the run of words ends that nothing parts from word `at`: names do not reach over a comma, a bracket or a number. */
function sameStretch(words: Words, at: number): number {
  let end = at + 1;
  while (
    end < words.keys.length &&
    words.before[end] === '' &&
    words.at[end]! - words.at[end - 1]! <= (words.words[end]!.hyphenated ? 2 : 1)
  ) {
    end++;
    if (end - at > 8) break;
  }
  return end;
}

/** The food that a verb or its participle puts on something: "butter the dish", "a floured board", "salted water". */
function impliedFood(words: Words, at: number): Food | null {
  const match = techniqueOf(words.keys[at]!);
  const implied = match?.technique.implies;
  if (match === null || implied === undefined) return null;
  if (match.form === 'base') {
    const next = words.keys[at + 1];
    const orders =
      verbAt(words, at) !== null &&
      words.before[at + 1] === '' &&
      next !== undefined &&
      isWord(next, 'object');
    return orders ? foodNamed(implied) : null;
  }
  // "Salted butter" names a food of its own, which the larder knows as one.
  return match.form === 'past' && foodAt(words.keys, at) === null ? foodNamed(implied) : null;
}
