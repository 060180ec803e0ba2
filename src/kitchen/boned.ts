/** Judges alternatives with and without bone, shell or peel: "3 pounds bone-in chicken, or 1½ pounds boneless". */
import Fraction from 'fraction.js';
import type { Listing } from '../anatomy/types.js';
import { sumMeasures } from '../arithmetic/compare.js';
import { type Bounds, boundsAgreement } from '../arithmetic/tolerance.js';
import { baseUnits } from '../arithmetic/units.js';
import type { Extent, Measure } from '../grammar/types.js';
import { type KitchenWordClass, phraseAt } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { toleranceFor } from '../larder/tolerances.js';
import { refuseShares } from '../larder/weights.js';
import { once } from '../manuscript/once.js';
import type { Dish } from './types.js';

export interface BonedAlternative {
  readonly listing: Listing;
  /** The weight with and the weight without what is thrown away, as written. */
  readonly whole: Measure;
  readonly trimmed: Measure;
  readonly extent: Extent;
  /** What the whole gives by the handbook, in grams. */
  readonly expected: Bounds;
  /** "bone", "shell", "peel". */
  readonly refuse: string;
}

/** The alternatives whose weights leave no room for what is thrown away, or too much. */
export const wrongAlternatives = once((dish: Dish): readonly BonedAlternative[] =>
  dish.recipe.listings.flatMap((listing) => {
    const alternative = alternativeOf(listing);
    if (alternative === null) return [];
    const grams = gramsOf(alternative.trimmed);
    const isRight =
      grams === null || boundsAgreement(alternative.expected, grams, toleranceFor('boned')) === 'right';
    return isRight ? [] : [alternative];
  }),
);

function alternativeOf(listing: Listing): BonedAlternative | null {
  const { line, passage } = listing;
  const [first] = line.measures;
  const [food] = line.foods;
  const other = line.foods.find((each) => each.joined === 'or' && each.measures.length > 0)?.measures[0];
  if (first === undefined || other === undefined || food?.row == null) return null;
  const [one, two] = [passage.text.slice(0, other.start), passage.text.slice(other.start)];
  const [kept, taken] = [saidOf(one, 'with-refuse'), saidOf(two, 'without-refuse')];
  const [keptAfter, takenBefore] = [saidOf(two, 'with-refuse'), saidOf(one, 'without-refuse')];
  // "3 pounds chicken, or 1½ pounds boneless": where only the second says it, the first is as bought.
  const refuse =
    taken !== null && takenBefore === null && (kept === null || kept === taken)
      ? taken
      : keptAfter !== null && keptAfter === takenBefore
        ? keptAfter
        : null;
  if (refuse === null) return null;
  const [whole, trimmed] = refuse === taken ? [first, other] : [other, first];
  const grams = gramsOf(whole);
  const shares = refuseShares(food.row);
  if (grams === null || shares.length === 0) return null;
  const expected = {
    low: grams.low.mul(new Fraction(1).sub(Math.max(...shares))),
    high: grams.high.mul(new Fraction(1).sub(Math.min(...shares))),
  };
  return { listing, whole, trimmed, extent: { start: first.start, end: other.end }, expected, refuse };
}

function gramsOf(measure: Measure): Bounds | null {
  const sum = sumMeasures([{ ...measure, equals: [] }]);
  return sum?.unit === baseUnits.mass ? sum : null;
}

/** What a phrase of the class speaks of: "bone" for "boneless". */
function saidOf(text: string, is: KitchenWordClass): string | null {
  const keys = text.split(/[^\p{L}\p{N}'’]+/u).map(fold);
  for (let at = 0; at < keys.length; at++) {
    const means = phraseAt(keys, at, is)?.means;
    if (means != null) return means;
  }
  return null;
}
