/** Puts together what is understood of one recipe, from its own file alone. */
import type { Listing, Recipe } from '../anatomy/types.js';
import { readText } from '../grammar/text.js';
import type { Item } from '../grammar/types.js';
import type { Passage } from '../manuscript/passage.js';
import type { Page } from '../manuscript/types.js';
import { heatingsOf } from './heating.js';
import { mentionsOf } from './mentions.js';
import { doneTemperaturesOf, rawFoodsOf } from './safety.js';
import type { Dish, ReadPart } from './types.js';
import { type Words, wordsOf } from './words.js';

/** The recipe, understood. */
export function readDish(page: Page, recipe: Recipe): Dish {
  const words = recipe.steps.map((step) => wordsOf(step.passage.text));
  const steps = recipe.steps.map((step, index) => ({
    step,
    items: words[index]!.items,
    words: words[index]!,
  }));
  const mentions = mentionsOf(recipe, steps, words);
  const rawFoods = rawFoodsOf(recipe);
  return {
    page,
    recipe,
    steps,
    mentions,
    uses: recipe.listings.map((listing) =>
      mentions.filter((mention) => mention.role !== 'aside' && mention.listings.includes(listing)),
    ),
    heatings: heatingsOf(steps, words, mentions),
    parts: partsOf(recipe, words),
    rawFoods,
    doneTemperatures: doneTemperaturesOf(words, mentions, rawFoods),
  };
}

/** What holds an amount, a time or a temperature has a figure in it somewhere; other text need not be read again. */
const FIGURE = /[\d¼-¾⅐-⅞]/;

function partsOf(recipe: Recipe, words: readonly Words[]): ReadPart[] {
  const read = (part: ReadPart['part'], passages: readonly Passage[]): ReadPart[] =>
    passages
      .filter((passage) => FIGURE.test(passage.text))
      .map((passage) => ({ part, passage, items: readText(passage.text) }));
  return [
    ...read('headnote', recipe.headnote),
    ...read('yield', recipe.yield === null ? [] : [recipe.yield.passage]),
    ...read(
      'time',
      recipe.times.map((time) => time.value),
    ),
    ...recipe.listings.map((listing) => ({
      part: 'listing' as const,
      passage: listing.passage,
      items: itemsOf(listing),
    })),
    ...recipe.steps.map((step, index) => ({
      part: 'step' as const,
      passage: step.passage,
      items: words[index]!.items,
    })),
    ...read('note', [...recipe.notes, ...recipe.storage]),
  ];
}

/** A listing has been read as a line; only where it speaks of heat is its text read once more. */
function itemsOf(listing: Listing): readonly Item[] {
  if (HEAT.test(listing.passage.text)) return readText(listing.passage.text);
  const own = listing.line.measures.flatMap((measure) => [measure, ...measure.plus, ...measure.equals]);
  return [...own, ...listing.line.foods.flatMap((food) => food.measures)];
}

const HEAT = /[°º˚]|degree/;
