/** Knows clams, mussels and oysters that are cooked in their shells, and whether the method throws out those that stay shut. */
import type { Listing } from '../anatomy/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { tellsOf } from '../larder/hazard-words.js';
import { unitById } from '../larder/units.js';
import { isCanned, listingsOf } from './bought.js';
import { allSentences, heatVerbsIn, type Sentence, sentencesFrom, tells } from './hazard-sentences.js';
import type { Dish } from './types.js';

const IN_SHELLS = ['clam', 'mussel', 'oyster', 'cockle'].flatMap(foodsNamed);
const SOLD_IN_SHELLS = ['clam', 'mussel', 'cockle'].flatMap(foodsNamed);

/** The mollusks cooked in their shells of which those that stay shut are not thrown out; null where there are none. */
export function unsortedShells(dish: Dish): Listing | null {
  const listing = listingsOf(dish, IN_SHELLS).find(
    (each) =>
      each.line.foods.every(({ row }) => row === null || !row.ready) &&
      !isCanned(each) &&
      !tellsOf(each.passage.text, 'shucked'),
  );
  if (listing === undefined) return null;
  const method = sentencesFrom(dish, listing);
  if (!method.some((sentence) => heatVerbsIn(sentence).length > 0)) return null;
  const inShells =
    isWhole(listing) ||
    tellsOf(listing.passage.text, 'shells') ||
    method.some((sentence) => tells(sentence, 'shells'));
  const isSorted = (sentence: Sentence): boolean =>
    tells(sentence, 'shut-shells') || (tells(sentence, 'shut') && tells(sentence, 'drained'));
  return inShells && !allSentences(dish).some(isSorted) ? listing : null;
}

/** "2 pounds mussels", "24 clams": what is weighed or counted comes in its shell; oysters are sold shucked by weight too. */
function isWhole({ line }: Listing): boolean {
  const isSold = line.foods.some(({ row }) => isAnyOf(row, SOLD_IN_SHELLS));
  const [measure] = line.measures;
  return (
    isSold && measure !== undefined && (measure.unit === null || unitById(measure.unit)?.kind === 'mass')
  );
}
