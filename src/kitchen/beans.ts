/** Follows dried red kidney beans: soaked, the water thrown away, boiled hard, before they cook slowly. */
import type { Listing } from '../anatomy/types.js';
import { foodsNamed } from '../larder/food-classes.js';
import { limitSeconds } from '../larder/hazard-limits.js';
import { isCanned, isDry, listingsOf } from './bought.js';
import {
  anyTells,
  durationsIn,
  heatVerbsIn,
  methodSentences,
  type Sentence,
  sentencesFrom,
  tells,
} from './hazard-sentences.js';
import type { Dish } from './types.js';

const KIDNEY = foodsNamed('kidney bean');

export interface Beans {
  readonly listing: Listing;
  readonly slow: boolean;
  /** What is missing before the beans are safe. */
  readonly lacks: 'boil' | 'drain';
}

/** The dried kidney beans of the list that are not boiled as they must be; null where they are, or are canned. */
export function unboiledKidneyBeans(dish: Dish): Beans | null {
  const listing = listingsOf(dish, KIDNEY).find((each) => isDriedBean(dish, each));
  const method = listing === undefined ? [] : sentencesFrom(dish, listing);
  if (listing === undefined || method.length === 0) return null;
  const slow = anyTells(method, 'slow-cooker');
  if (!method.some((sentence) => isBoiledHard(sentence, slow))) return { listing, slow, lacks: 'boil' };
  return anyTells(method, 'soak') && !anyTells(method, 'drained') ? { listing, slow, lacks: 'drain' } : null;
}

/** Dry by its line, or soaked for hours by the method; a line that says neither dry nor canned is left alone. */
function isDriedBean(dish: Dish, listing: Listing): boolean {
  if (isCanned(listing)) return false;
  return (
    isDry(listing) ||
    methodSentences(dish).some((sentence) => tells(sentence, 'soak') && tells(sentence, 'bean'))
  );
}

/** Whether the sentence boils for the time that destroys the toxin; on the stove a boil without a time, or a long simmer, counts. */
function isBoiledHard(sentence: Sentence, slow: boolean): boolean {
  const verbs = heatVerbsIn(sentence).map(({ technique }) => technique.name);
  const durations = durationsIn(sentence).filter(({ seconds }) => seconds !== null);
  if (tells(sentence, 'pressure')) return true;
  if (tells(sentence, 'slow-cooker') && !verbs.includes('boil')) return false;
  const boils = verbs.includes('boil') || sentence.keys.includes('boil') || sentence.keys.includes('boiling');
  const timed = (limit: number) => durations.some(({ seconds }) => seconds!.low.gte(limit));
  if (boils && (durations.length === 0 ? !slow : timed(limitSeconds('kidney-bean-boil')))) return true;
  return !slow && verbs.includes('simmer') && timed(limitSeconds('kidney-bean-simmer'));
}
