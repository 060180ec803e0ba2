/** Compares an amount said in the method with the list's. */
import type { Listing } from '../anatomy/types.js';
import { type Sum, sumMeasures } from '../arithmetic/compare.js';
import type { Measure } from '../grammar/types.js';
import { isWord } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { hasOtherSource, isOneOfMany, takenSeveralTimes } from './accounts.js';
import { formsOf } from './balance.js';
import { says } from './context.js';
import type { Dish, Mention } from './types.js';

/**
 * The listing whose amount a mention contradicts; null when they agree, cannot be compared, or the mention may take a part:
 * less than is listed while other steps use the food too, "1 tablespoon of the oil", "another cup", "at a time".
 */
export function compareWithListing(dish: Dish, mention: Mention): Listing | null {
  const { measure } = mention;
  if (
    measure === null ||
    mention.role !== 'use' ||
    mention.group ||
    mention.allBut ||
    mention.listings.length === 0 ||
    measure.share
  )
    return null;
  if (says(mention.determiner, 'extra-word') || isRatio(dish, mention)) return null;
  if (mention.listings.some((listing) => hasOtherSource(dish.recipe, listing))) return null;
  const verdicts = mention.listings.map((listing) => verdict(dish, mention, measure, listing));
  return verdicts.every((each) => each === 'disagrees') ? mention.listings[0]! : null;
}

type Verdict = 'agrees' | 'disagrees' | 'unknown';

function verdict(dish: Dish, mention: Mention, measure: Measure, listing: Listing): Verdict {
  const stated = [measure, ...measure.equals];
  const listed = formsOf(listing);
  let verdict: Verdict = 'unknown';
  for (const one of stated) {
    for (const other of listed) {
      const sums = comparable(one, other);
      if (sums === null) continue;
      if (agree(sums[0], sums[1])) return 'agrees';
      const less = sums[0].high.lt(sums[1].low);
      if (less && (isOneOfMany(listing, mention) || mayBePart(dish, mention, listing))) return 'agrees';
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

/** Whether less than is listed may be meant: by its own words, or because the food is used elsewhere too. */
function mayBePart(dish: Dish, mention: Mention, listing: Listing): boolean {
  if (
    listing.line.divided ||
    says(mention.determiner, 'rest-word') ||
    isPartOfIt(dish, mention) ||
    takenSeveralTimes(dish.steps[mention.step]!, mention)
  )
    return true;
  if (dish.accounts[listing.index]!.takings.some((taking) => taking.mention.step !== mention.step))
    return true;
  return dish.uses[listing.index]!.some((use) => use !== mention && isFurtherUse(use));
}

/** Whether a mention is a use of its own, and does not only refer back to what went in before: "simmer until the lentils are soft". */
function isFurtherUse(use: Mention): boolean {
  if (use.telling) return false;
  if (
    use.group ||
    use.measure !== null ||
    use.toTaste ||
    says(use.determiner, 'rest-word') ||
    says(use.determiner, 'extra-word')
  )
    return true;
  const technique = use.verb === null ? null : techniqueOf(fold(use.verb))?.technique;
  if (technique == null) return use.determiner === null;
  return (
    does(technique, 'add', 'coat', 'garnish', 'fill', 'serve', 'season') ||
    (does(technique, 'combine') && use.determiner === null)
  );
}

/** "1 tablespoon of the oil", "2 of the eggs": a part, by its own words. */
function isPartOfIt(dish: Dish, mention: Mention): boolean {
  const keys = keysBetween(dish, mention);
  const of = keys.indexOf('of');
  return of >= 0 && keys.slice(of).some((key) => isWord(key, 'referring'));
}

function keysBetween(dish: Dish, mention: Mention): string[] {
  return dish.steps[mention.step]!.items.flatMap((item) =>
    item.kind === 'word' && item.start >= mention.measure!.end && item.end <= mention.start ? [item.key] : [],
  );
}

/** "16 balls for 2 pounds of meat": the amount is a proportion. */
function isRatio(dish: Dish, mention: Mention): boolean {
  const items = dish.steps[mention.step]!.items;
  const at = items.findIndex((item) => item.start >= mention.measure!.start);
  const before = items[at - 1];
  // "You should have about 4 cups of rice": what comes of it.
  const results = items
    .slice(Math.max(0, at - 3), at)
    .some((item) => item.kind === 'word' && item.key === 'have');
  return results || (before?.kind === 'word' && (before.key === 'for' || before.key === 'per'));
}
