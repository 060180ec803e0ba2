/** Knows the foods of the list that are gathered wild, and which of them are poisonous until they are cooked. */
import type { Listing } from '../anatomy/types.js';
import { isAnyOf } from '../larder/food-classes.js';
import { hazardFoods, tellsOf } from '../larder/hazard-words.js';
import { allSentences, anyTells, asideSentences, heatVerbsIn, sentencesFrom } from './hazard-sentences.js';
import type { Dish } from './types.js';

const WILD = hazardFoods('wild-food');
const RAW_POISON = hazardFoods('poison-raw');

export interface Foraged {
  readonly listing: Listing;
  /** raw: poisonous uncooked, and not cooked here; gathered: the recipe says that it is picked wild. */
  readonly why: 'raw' | 'gathered';
}

/** The first wild food of the list that is served raw and must not be, or that is gathered without a word of caution. */
export function foragedFoods(dish: Dish): Foraged | null {
  const raw = wildListings(dish, RAW_POISON).find((listing) => !isCooked(dish, listing));
  if (raw !== undefined) return { listing: raw, why: 'raw' };
  const sentences = allSentences(dish);
  const [wild] = wildListings(dish, WILD);
  const said = dish.recipe.listings.find(({ passage }) => tellsOf(passage.text, 'foraged'));
  const listing = said ?? wild;
  if (listing === undefined) return null;
  const gathered =
    said !== undefined ||
    anyTells(sentences, 'foraged') ||
    tellsOf(dish.recipe.title?.text ?? '', 'foraged') ||
    anyTells(asideSentences(dish), 'gathered') ||
    tellsOf(listing.passage.text, 'gathered');
  const cautioned = anyTells(sentences, 'wild-caution') || tellsOf(listing.passage.text, 'wild-caution');
  return gathered && !cautioned ? { listing, why: 'gathered' } : null;
}

function wildListings(dish: Dish, foods: typeof WILD): Listing[] {
  return dish.recipe.listings.filter((listing) => listing.line.foods.some(({ row }) => isAnyOf(row, foods)));
}

/** Whether heat comes with or after the food's first use; a food without a use is taken as cooked. */
function isCooked(dish: Dish, listing: Listing): boolean {
  const from = sentencesFrom(dish, listing);
  return from.length === 0 || from.some((sentence) => heatVerbsIn(sentence).length > 0);
}
