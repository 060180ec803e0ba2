/** Finds eggs, flour and milk that go to the table without having been cooked. */
import type { Listing } from '../anatomy/types.js';
import { toFahrenheit } from '../arithmetic/temperatures.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { limitFahrenheit, limitSeconds } from '../larder/hazard-limits.js';
import { tellsOf } from '../larder/hazard-words.js';
import { listingsOf } from './bought.js';
import {
  allSentences,
  anyTells,
  asideSentences,
  durationsIn,
  heatVerbsIn,
  isWordOf,
  itemsIn,
  methodSentences,
  type Place,
  placeOfListing,
  placeOfWords,
  type Sentence,
  sentencesFrom,
  tells,
  textOfWords,
  wordOf,
} from './hazard-sentences.js';
import type { Dish } from './types.js';

const FLOUR = ['flour', 'cake mix', 'brownie mix', 'cookie mix', 'pancake mix'].flatMap(foodsNamed);
const OTHER_FLOUR = ['oat flour', 'almond flour', 'coconut flour', 'gluten-free flour'].flatMap(foodsNamed);
const DAIRY = foodsNamed('dairy');
/** Most raw-milk cheese has ripened for the 60 days that 21 CFR 133 asks. */
const CHEESE = foodsNamed('cheese');

/** The first listing of eggs that are neither pasteurized nor cooked from their own sentence on; null where all are. */
export function rawEggs(dish: Dish): Listing | null {
  const eggs = dish.rawFoods.filter((raw) => raw.safety === 'egg').map(({ listing }) => listing);
  if (eggs.length === 0 || eggs.some(({ passage }) => tellsOf(passage.text, 'pasteurized'))) return null;
  const raw = eggs.find((listing) => isServedRaw(dish, listing));
  return raw === undefined || isAnnounced(dish) ? null : raw;
}

function isServedRaw(dish: Dish, listing: Listing): boolean {
  const from = sentencesFrom(dish, listing);
  if (from.length === 0 || from.some((sentence) => cooks(sentence) || isOverHeat(sentence))) return false;
  if (isByCustom(dish, from[0]!)) return true;
  // Where nothing at all is cooked, the eggs are not; else only a dish known for its raw eggs is asked about.
  const method = methodSentences(dish);
  return !method.some(cooks) && !isForLater(dish) && anyTells(method, 'served-so');
}

/** Whether the sentence puts something on or in a thing that is hot; "chill in small pots" does not. */
export function isOverHeat(sentence: Sentence): boolean {
  return tells(sentence, 'hot-thing') && !tells(sentence, 'cold', 'freezer');
}

/** Whether the recipe warns of its raw eggs, or speaks of pasteurized ones. "Top with the raw egg" in the method warns nobody. */
function isAnnounced(dish: Dish): boolean {
  return (
    anyTells(allSentences(dish), 'at-risk', 'egg-caution', 'pasteurized') ||
    anyTells(asideSentences(dish), 'raw-egg')
  );
}

/** Whether the title, or the sentence that takes the eggs, names a dish whose eggs are by custom raw, or calls them so. */
function isByCustom(dish: Dish, own: Sentence): boolean {
  return tellsOf(dish.recipe.title?.text ?? '', 'raw-egg-dish') || tells(own, 'raw-egg-dish', 'raw-egg');
}

/** Whether the recipe makes a dough or batter that another recipe bakes. */
function isForLater(dish: Dish): boolean {
  return (
    tellsOf(dish.recipe.title?.text ?? '', 'raw-dough', 'fermented') ||
    anyTells(methodSentences(dish), 'raw-dough')
  );
}

/** Whether the sentence cooks: a verb of heat that is more than melting or warming, or a heat too high for a room or a drink. */
export function cooks(sentence: Sentence): boolean {
  const cooking = heatVerbsIn(sentence).some(({ at }) => !isWordOf(sentence, at, 'mild-heat'));
  return cooking || isHeatedTo(sentence, 'danger-zone-high');
}

/** Whether the sentence gives a temperature of that limit or more; a gas mark is an oven's, a bare number is taken as Fahrenheit. */
function isHeatedTo(sentence: Sentence, limit: string): boolean {
  return itemsIn(sentence).some((item) => {
    if (item.kind !== 'temperature') return false;
    if (item.scale === 'gas') return true;
    return toFahrenheit(item.amount.high, item.scale ?? 'fahrenheit')?.gte(limitFahrenheit(limit)) ?? false;
  });
}

/** The listing of wheat flour that is eaten raw, as the recipe says of itself; null where it is baked, heat-treated or only for dusting. */
export function rawFlour(dish: Dish): Listing | null {
  const flours = listingsOf(dish, FLOUR).filter(
    ({ line, passage }) =>
      !line.foods.some(({ row }) => isAnyOf(row, OTHER_FLOUR)) && !tellsOf(passage.text, 'heat-treated'),
  );
  const [listing] = flours;
  if (listing === undefined) return null;
  const sentences = allSentences(dish);
  if (anyTells(sentences, 'heat-treated')) return null;
  const title = dish.recipe.title?.text ?? '';
  const told =
    tellsOf(title, 'eaten-raw') ||
    anyTells(sentences, 'eaten-raw') ||
    (tellsOf(title, 'sweet-dough') && anyTells(sentences, 'eats'));
  if (!told) return null;
  const after = sentencesFrom(dish, listing);
  return after.some((sentence) => cooks(sentence) || isOverHeat(sentence)) ? null : listing;
}

/** Where the list or the method asks for raw milk or cream that is not heated afterwards; null where it is, or there is none. */
export function rawMilk(dish: Dish): Place | null {
  const listing = dish.recipe.listings.find(
    ({ passage, line }) =>
      tellsOf(passage.text, 'raw-dairy') &&
      line.foods.some(({ row }) => isAnyOf(row, DAIRY) && !isAnyOf(row, CHEESE)),
  );
  const method = methodSentences(dish);
  const sentence = method.find((each) => tells(each, 'raw-dairy'));
  if (listing === undefined && sentence === undefined) return null;
  const after =
    listing === undefined ? method.slice(method.indexOf(sentence!)) : sentencesFrom(dish, listing);
  if (after.some(pasteurizes)) return null;
  if (listing !== undefined) return placeOfListing(listing);
  const word = wordOf(sentence!, 'raw-dairy')!;
  return placeOfWords(sentence!, word.start, word.end, textOfWords(sentence!, word.start, word.end));
}

/** Whether the sentence boils, cooks, or pasteurizes, at once or slowly; a warm place for a culture does not. */
function pasteurizes(sentence: Sentence): boolean {
  if (tells(sentence, 'boil') || isHeatedTo(sentence, 'milk-pasteurized')) return true;
  if (heatVerbsIn(sentence).some(({ at }) => !isWordOf(sentence, at, 'warms'))) return true;
  const held = durationsIn(sentence).some(
    ({ seconds }) => seconds?.low.gte(limitSeconds('milk-held')) ?? false,
  );
  return held && isHeatedTo(sentence, 'milk-pasteurized-slowly');
}
