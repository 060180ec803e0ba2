/** Finds where a recipe needs a hot oven, and where it says that the oven is heated or how hot it is. */

import type { Recipe } from '../anatomy/types.js';
import { isOvenHeat } from '../arithmetic/oven.js';
import { isWord, phraseAt, speaksOf, wordsOfClass } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { minutes } from './minutes.js';
import { type Sentence, says, sentencesOf } from './sentences.js';
import type { Dish, Heating } from './types.js';
import type { Words } from './words.js';

/** A place of the method that needs a hot oven: offsets into the step's text. */
export interface OvenNeed {
  readonly step: number;
  readonly start: number;
  readonly end: number;
}

/** A need of a hot oven that nothing meets in time. */
export interface ColdOven {
  readonly need: OvenNeed;
  /** The later step that heats the oven; null where none does. */
  readonly heatedAt: number | null;
}

/** The first place that needs a hot oven which no step before it, nor the place itself, has heated; null where all is well. */
export function coldOvenOf(dish: Dish): ColdOven | null {
  // Reading the sentences is spared where nothing can be baked.
  const bakes = dish.heatings.some(({ technique }) => isWord(technique.name, 'oven-verb'));
  if (!bakes && !dish.steps.some(({ words }) => words.keys.some((key) => isWord(key, 'oven-word'))))
    return null;
  const named = namesOven(dish);
  if (!named && bakesElsewhere(dish)) return null;
  const steps = dish.steps.map(({ step, words }) => ({
    step: step.index,
    sentences: sentencesOf(words).map(readSentence),
  }));
  if (dish.steps.some(({ words }) => says(words.keys, 'cold-start'))) return null;
  // "Heat the oven before you start" may stand anywhere.
  if (
    steps.some((step) => step.sentences.some((each) => each.heats && says(each.sentence.keys, 'beforehand')))
  )
    return null;
  for (const { step, sentences } of steps) {
    if (sentences.some((sentence) => sentence.heats || sentence.hot)) return null;
    const need = needIn(dish, step, sentences, named);
    if (need === null) continue;
    const later = steps.find((each) => each.step > step && each.sentences.some((sentence) => sentence.heats));
    return later === undefined && isToldAside(dish.recipe) ? null : { need, heatedAt: later?.step ?? null };
  }
  return null;
}

interface ReadSentence {
  readonly sentence: Sentence;
  /** The place of "oven" among its words; null where it names none. */
  readonly oven: number | null;
  /** Has the oven heated. */
  readonly heats: boolean;
  /** Says how hot it is. */
  readonly hot: boolean;
}

function readSentence(sentence: Sentence): ReadSentence {
  const { keys, items } = sentence;
  // Most sentences have nothing to do with the oven, and one look tells.
  if (!keys.some((key) => AROUND_OVENS.has(key))) return { sentence, oven: null, heats: false, hot: false };
  const oven = ovenAt(keys);
  const degrees = items.some((item) => item.kind === 'temperature' && isOvenHeat(item));
  // "Bake in the preheated oven" leaves it to another step to heat it.
  const granted = oven !== null && keys.some((_, at) => endsBefore(keys, at, oven));
  const preheats = says(keys, 'preheating') && !granted;
  const elsewhere = oven === null && (says(keys, 'other-heat') || says(keys, 'pan-heat'));
  const near = oven === null ? [] : keys.slice(Math.max(0, oven - WORDS_BEFORE_OVEN), oven);
  // "Set in the oven" puts the food there; "set the oven" heats it.
  const heated = entersOven(near, near.length) < 0 && says(near, 'oven-heating');
  const heats = (preheats && !elsewhere) || heated;
  const ordered = keys.some((key) => isWord(key, 'oven-verb'));
  const named = oven !== null && oven > 0 && isWord(keys[oven - 1], 'oven-hot');
  return { sentence, oven, heats, hot: named || heats || (degrees && (oven !== null || ordered)) };
}

/** The first words of all that names an oven, heats it or bakes in it. */
const AROUND_OVENS: ReadonlySet<string> = new Set(
  (['oven-word', 'oven-verb', 'preheating'] as const).flatMap((is) =>
    wordsOfClass(is).map((word) => fold(word.split(' ')[0]!)),
  ),
);

/** Whether "preheated" begins at word `at` and leads right to the oven. */
function endsBefore(keys: readonly string[], at: number, oven: number): boolean {
  const phrase = at < oven ? phraseAt(keys, at, 'already-hot') : null;
  return phrase !== null && at + phrase.length === oven;
}

/** The place of the oven itself: not a Dutch oven, nor an oven dish. */
function ovenAt(keys: readonly string[]): number | null {
  const at = keys.findIndex(
    (key, index) =>
      isWord(key, 'oven-word') &&
      !isWord(keys[index - 1], 'no-oven') &&
      !isWord(keys[index + 1], 'oven-gear'),
  );
  return at < 0 ? null : at;
}

/** The first order of a step that needs a hot oven. */
function needIn(
  dish: Dish,
  step: number,
  sentences: readonly ReadSentence[],
  named: boolean,
): OvenNeed | null {
  const { words } = dish.steps[step]!;
  const orders = dish.heatings.filter(
    (each) => each.step === step && isWord(each.technique.name, 'oven-verb'),
  );
  let next = 0;
  for (const read of sentences) {
    const { sentence, oven } = read;
    const { end } = words.words[sentence.to - 1]!;
    for (; next < orders.length && orders[next]!.start < end; next++) {
      const order = orders[next]!;
      if (bakes(dish, order, read, named)) return { step, start: order.start, end: order.end };
    }
    // "Grill the peppers in the oven or over a flame" needs no heating beforehand.
    const placed = oven === null || says(sentence.keys, 'other-heat') ? -1 : entersOven(sentence.keys, oven);
    if (placed >= 0 && !isAside(words, sentence.from + placed)) {
      return {
        step,
        start: words.words[sentence.from + placed]!.start,
        end: words.words[sentence.from + oven!]!.end,
      };
    }
  }
  return null;
}

/** Whether an order to bake or roast means the oven: a roast on the stove is short, or names its pan. */
function bakes(dish: Dish, heating: Heating, { sentence, oven }: ReadSentence, named: boolean): boolean {
  if (oven !== null) return true;
  const { keys, from } = sentence;
  if (says(keys, 'other-heat') || says(keys, 'told-elsewhere')) return false;
  const { words, before } = dish.steps[heating.step]!.words;
  const verb = keys.findIndex((_, at) => words[from + at]!.start === heating.start);
  // "Bake or boil the potatoes" leaves the choice to the cook.
  if (keys[verb + 1] === 'or' || (keys[verb - 1] === 'or' && before[from + verb] === '')) return false;
  if (heating.technique.name === 'bake')
    return !says(keys, 'stove-heat') && (named || !isFryingOn(dish, heating));
  if (says(keys, 'pan-heat')) return false;
  return heating.durations.some(({ seconds }) => seconds?.low.gte(minutes(SHORTEST_OVEN_ROAST)) ?? false);
}

/** Whether a bake without a time goes on from frying: in a recipe that names no oven the pan is meant. */
function isFryingOn(dish: Dish, heating: Heating): boolean {
  if (heating.durations.length > 0) return false;
  return dish.heatings.some((each) => each.step <= heating.step && isWord(each.technique.name, 'frying'));
}

function namesOven(dish: Dish): boolean {
  return dish.steps.some(({ words }) => ovenAt(words.keys) !== null);
}

/** A roast without an oven in its sentence is the oven's from here on; spices and nuts in a pan take less (common practice). */
const SHORTEST_OVEN_ROAST = 15;

/** The place of "in" or "into" that leads to the oven; -1 where the food is not put there. */
function entersOven(keys: readonly string[], oven: number): number {
  for (let at = oven - 1; at >= Math.max(0, oven - WORDS_BEFORE_OVEN); at--) {
    const key = keys[at]!;
    if (key === 'in' || key === 'into' || key === 'to') return at;
    if (!isWord(key, 'before-oven')) return -1;
  }
  return -1;
}

/** How many words may stand between a verb or preposition and its oven: "heat up the oven". */
const WORDS_BEFORE_OVEN = 3;

/** Whether the clause that leads into the oven is no order to cook: "before it goes in the oven", "leave to rise in the oven". */
function isAside(words: Words, at: number): boolean {
  let from = at;
  while (from > words.opening[at]! && words.before[from] === '') from--;
  const clause = words.keys.slice(from, at);
  return clause.some((key) => isWord(key, 'not-yet') || isWord(key, 'oven-resting'));
}

/** Whether the recipe's baking is an air fryer's, a grill's, a bread machine's. */
function bakesElsewhere(dish: Dish): boolean {
  if (dish.steps.some(({ words }) => says(words.keys, 'other-baker'))) return true;
  const { title, equipment, headnote } = dish.recipe;
  const texts = [...(title === null ? [] : [title]), ...equipment, ...headnote];
  return texts.some(({ text }) => speaksOf(text, 'other-baker'));
}

/** Whether the heat is told outside of the method: in a note, a headnote, a list of equipment. */
function isToldAside(recipe: Recipe): boolean {
  const texts = [
    ...recipe.headnote,
    ...recipe.notes,
    ...recipe.equipment,
    ...recipe.rest,
    ...recipe.times.map((time) => time.passage),
    ...recipe.listings.map((listing) => listing.passage),
    ...recipe.steps.flatMap((step) => (step.heading === null ? [] : [step.heading])),
  ];
  return texts.some(
    ({ text }) => speaksOf(text, 'preheating') || (FIGURE.test(text) && speaksOf(text, 'oven-word')),
  );
}

const FIGURE = /\d/;
