/** Compares an amount said in the method with the list's. */
import type { Listing } from '../anatomy/types.js';
import { type Sum, sumMeasures } from '../arithmetic/compare.js';
import type { Measure } from '../grammar/types.js';
import { isPartOf } from '../larder/foods.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { says } from './context.js';
import type { Dish, Mention } from './types.js';

/**
 * The listing whose amount a mention contradicts; null when they agree, cannot be compared, or the mention may take a part:
 * less than is listed while other steps use the food too, "1 tablespoon of the oil", "another cup", "at a time".
 */
export function compareWithListing(dish: Dish, mention: Mention): Listing | null {
  const { measure } = mention;
  if (measure === null || mention.role !== 'use' || mention.group || mention.listings.length === 0 || measure.share) return null;
  if (says(mention.determiner, 'extra-word') || takenSeveralTimes(dish, mention) || hasOtherSource(dish, mention)) return null;
  const verdicts = mention.listings.map((listing) => verdict(dish, mention, measure, listing));
  return verdicts.every((each) => each === 'disagrees') ? mention.listings[0]! : null;
}

type Verdict = 'agrees' | 'disagrees' | 'unknown';

function verdict(dish: Dish, mention: Mention, measure: Measure, listing: Listing): Verdict {
  const stated = [measure, ...measure.equals];
  const listed = listing.line.measures.flatMap((each) => [each, ...each.equals, ...(each.pack === null ? [] : [each.pack])]);
  listed.push(...listing.line.foods.flatMap((food) => food.measures));
  let verdict: Verdict = 'unknown';
  for (const one of stated) {
    for (const other of listed) {
      const sums = comparable(one, other);
      if (sums === null) continue;
      if (agree(sums[0], sums[1])) return 'agrees';
      const less = sums[0].high.lt(sums[1].low);
      if (less && (mayBePart(mention) || dish.uses[listing.index]!.length > 1 || listing.line.divided)) return 'agrees';
      if (!less && listing.line.plusMore !== null) return 'agrees';
      if (listing.line.toTaste || listing.line.asNeeded) return 'agrees';
      verdict = 'disagrees';
    }
  }
  return verdict;
}

/** Both measures in one unit; null where they are of different kinds, or one is too vague to compare. */
function comparable(one: Measure, other: Measure): [Sum, Sum] | null {
  const first = sumMeasures([one]);
  const second = sumMeasures([other]);
  return first === null || second === null || first.unit !== second.unit ? null : [first, second];
}

/** Whether two amounts overlap: "2 to 3 cups" agrees with 3 cups. */
function agree(one: Sum, other: Sum): boolean {
  return one.low.lte(other.high) && other.low.lte(one.high);
}

/** Juice of the listed lemons is not bound by a listing of lemon juice beside them. */
function hasOtherSource(dish: Dish, mention: Mention): boolean {
  return dish.recipe.listings.some(
    (listing) =>
      !mention.listings.includes(listing) &&
      listing.line.foods.some((food) => food.row !== null && mention.listings.some((each) => each.line.foods.some((own) => own.row !== null && isPartOf(own.row, food.row!)))),
  );
}

/** "1 tablespoon of the oil": a part, by its own words. */
function mayBePart(mention: Mention): boolean {
  return says(mention.determiner, 'referring') && mention.measure !== null && mention.measure.unit !== null;
}

/** "2 tablespoons at a time", "½ cup into each jar": the amount is not the whole. */
function takenSeveralTimes(dish: Dish, mention: Mention): boolean {
  const items = dish.steps[mention.step]!.items;
  const keys = items.map((item) => (item.kind === 'word' ? item.key : item.kind === 'point' ? item.text : ''));
  const first = items.findIndex((item) => item.start >= mention.measure!.start);
  if (keys[first - 1] === 'for' || keys[first - 1] === 'per') return true;
  const last = items.findIndex((item) => item.start >= mention.end);
  const end = last < 0 ? items.length : Math.min(items.length, last + 8);
  for (let at = Math.max(0, first - 4); at < end; at++) {
    if (keys[at] === '.' && at > first) break;
    if (isWord(keys[at], 'each-word') || phraseAt(keys, at, 'each-word') !== null) return true;
  }
  return false;
}
