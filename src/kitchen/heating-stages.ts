/** Knows where another order or step says how the food of an order is when it is done: the next stage of one bake, or a later word about it. */
import Fraction from 'fraction.js';
import type { Listing } from '../anatomy/types.js';
import { isWord } from '../larder/kitchen-words.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { all, saysIn, wordAt } from './stretches.js';
import type { Heating } from './types.js';
import type { Words } from './words.js';

/** Whether the order at `index` of those found needs no sign of its own. */
export function isToldByOthers(
  heating: Heating,
  found: readonly Heating[],
  index: number,
  words: readonly Words[],
): boolean {
  const next = found
    .slice(index + 1, index + 1 + STAGES_BETWEEN)
    .find(({ technique }) => technique === heating.technique);
  return (
    isFirstStage(heating, next, words) ||
    isToldLater(heating, found, index) ||
    isToldAfterwards(heating, words) ||
    isClosed(heating, words)
  );
}

/** A slow cooker or a pressure cooker goes by its time: nobody can look in. */
function isClosed({ durations, step }: Heating, words: readonly Words[]): boolean {
  const isLong = durations.some(({ seconds }) => seconds === null || seconds.high.gte(LONG_IN_COOKER));
  return isLong && words.slice(0, step + 1).some((each) => saysIn(each, all(each), 'closed-cooker'));
}

/** What a slow cooker or a pressure cooker cooks takes no less (common practice). */
const LONG_IN_COOKER = new Fraction(300);

/** How many orders to cook ("reduce the heat") may part two stages of a bake. */
const STAGES_BETWEEN = 3;

/** "Bake for 20 minutes. Uncover and bake until golden", "bake for another 50 minutes": stages of one bake, of which the last is to say when it is done. */
function isFirstStage(heating: Heating, next: Heating | undefined, words: readonly Words[]): boolean {
  const steps = (next?.step ?? heating.step + 1) - heating.step;
  if (next?.cued && does(heating.technique, 'oven') && steps <= 1) return true;
  if (next !== undefined && steps <= FURTHEST_STAGE && isLaterStage(words[next.step]!, next)) return true;
  // "Put it back on the smoker at 225°F for 2 hours": so does whatever stands apart from the stove.
  const later = words.slice(heating.step + 1, heating.step + 1 + FURTHEST_STAGE);
  if (later.some((each) => isPutBack(each, 'heat-place')) && !does(heating.technique, 'dry-heat'))
    return true;
  if (!does(heating.technique, 'oven')) return false;
  // "Bake 15 minutes, stir, put back in the oven": the next step bakes on.
  if (returnsToOven(words[heating.step]!, heating.start)) return true;
  // "Drop the temperature to 150°C": the oven goes on. "Put it back for another 10 minutes" too.
  const after = words[heating.step + 1];
  if (after === undefined) return false;
  const isTurned =
    isWord(after.keys[0], 'stove-turning') && after.items.some(({ kind }) => kind === 'temperature');
  return isTurned || isPutBack(after, 'oven');
}

/** "Bake for another 50 minutes", "simmer 10 more minutes", where "more" is read with the time. */
function isLaterStage(words: Words, { start, durations }: Heating): boolean {
  const at = wordAt(words, start);
  const keys = [
    ...words.keys.slice(words.opening[at], at + FURTHEST_WORD),
    ...durations.flatMap((duration) => words.text.slice(duration.start, duration.end).split(/\s+/)),
  ];
  return keys.some((key) => isWord(key, 'another-stage'));
}

function sharesFood(heating: Heating, next: Heating): boolean {
  const own = foodsOf(heating);
  return foodsOf(next).some((listing) => own.includes(listing));
}

/** What the order names, else what its step names. */
function foodsOf({ objects, listings }: Heating): readonly Listing[] {
  return objects.length > 0 ? objects.flatMap((object) => object.listings) : listings;
}

/** "Return the loaf to the oven, 10 minutes more". */
function isPutBack(words: Words, place: 'oven' | 'heat-place'): boolean {
  const to = Math.min(words.keys.length, FURTHEST_BACK);
  const keys = words.keys.slice(0, to);
  const isThere = place === 'oven' ? keys.includes('oven') : saysIn(words, { from: 0, to }, 'heat-place');
  return (
    isThere &&
    keys.some((key) => isWord(key, 'another-stage')) &&
    words.items.slice(0, words.at[to] ?? words.items.length).some(({ kind }) => kind === 'duration')
  );
}

/** "Bake 15 minutes, take out, stir, put back in the oven". */
function returnsToOven(words: Words, start: number): boolean {
  const from = wordAt(words, start);
  const keys = words.keys.slice(from, from + FURTHEST_BACK);
  return keys.some(
    (key, at) =>
      key === 'oven' &&
      keys.slice(Math.max(0, at - WORDS_BEFORE_OVEN), at).some((word) => isWord(word, 'another-stage')),
  );
}

/** How many words into a step, or behind an order, the food may still go back into the oven. */
const FURTHEST_BACK = 60;

/** "Back into the oven". */
const WORDS_BEFORE_OVEN = 3;

/** How many steps on the next stage may be: "bake for 20 minutes", "turn the heat down", "bake for another 50 minutes". */
const FURTHEST_STAGE = 2;

/** "Sauté the crumbs over low heat. Add oil. Cook until opaque": a step says once, at its end, when what it cooks is done. */
function isToldLater(heating: Heating, found: readonly Heating[], index: number): boolean {
  if (heating.durations.length > 0) return false;
  for (let at = index + 1; found[at]?.step === heating.step; at++) {
    const { technique, cued, objects } = found[at]!;
    if (cued && objects.length === 0 && (technique === heating.technique || technique.name === 'cook'))
      return true;
  }
  // "Add the shrimp and fry. Toss with the spices. Fry until the shrimp turns white".
  const again = found
    .slice(index + 1, index + 1 + STAGES_BETWEEN)
    .find(({ technique, step }) => technique === heating.technique && step <= heating.step + FURTHEST_STAGE);
  return again?.cued === true && sharesFood(heating, again);
}

/** "Fry the potatoes. … After about 15 minutes of frying, add the onions": a later step says how long. */
function isToldAfterwards({ technique, durations, step }: Heating, words: readonly Words[]): boolean {
  if (durations.length > 0) return false;
  return words.slice(step + 1, step + 1 + FURTHEST_TOLD).some(({ keys, at, items }) => {
    if (keys[0] !== 'after') return false;
    const verb = keys.slice(0, FURTHEST_WORD).findIndex((key) => techniqueOf(key)?.technique === technique);
    return verb > 0 && items.slice(0, at[verb]).some(({ kind }) => kind === 'duration');
  });
}

/** How many steps on the method may still tell how long something is fried. */
const FURTHEST_TOLD = 4;

/** How many words into an order or a sentence its stage may be told. */
const FURTHEST_WORD = 12;
