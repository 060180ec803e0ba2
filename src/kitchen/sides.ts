/** Judges lengths that a recipe gives in two units: tins, pieces, cuts. */
import { convert } from '../arithmetic/convert.js';
import { type Agreement, boundsAgreement, worse } from '../arithmetic/tolerance.js';
import { baseUnits } from '../arithmetic/units.js';
import { significant } from '../arithmetic/write.js';
import type { Dimension } from '../grammar/types.js';
import { toleranceFor } from '../larder/tolerances.js';
import { type SidesSaidTwice, sidesSaidTwice } from './said-twice.js';
import type { Dish } from './types.js';

export interface JudgedSides extends SidesSaidTwice {
  readonly verdict: Agreement;
}

/** Every length said twice; those in one unit ("1-inch (2-inch at most)") or with other numbers of sides are not the same thing. */
export function sidesOf(dish: Dish): JudgedSides[] {
  return [...sidesSaidTwice(dish)].flatMap((pair) => {
    const { first, second } = pair;
    const one = millimeters(first);
    const other = millimeters(second);
    if (one.length !== other.length || first.lengths[0]!.unit === second.lengths[0]!.unit) return [];
    const tolerance = toleranceFor('length');
    const verdict = one
      .map((side, index) => boundsAgreement(side, other[index]!, tolerance))
      .reduce(worse, 'right');
    return [{ ...pair, verdict }];
  });
}

/** The sides from the shortest, since a tin may be given either way round. */
function millimeters({ lengths }: Dimension) {
  return lengths
    .flatMap(({ amount, unit }) => {
      const low = convert(amount.low, unit, baseUnits.length);
      const high = convert(amount.high, unit, baseUnits.length);
      return low === null || high === null ? [] : [{ low, high }];
    })
    .sort((a, b) => a.low.compare(b.low));
}

/** The sides in centimeters: "22.9 cm", "22.9 × 33 cm". */
export function writtenSides({ lengths }: Dimension): string {
  const sides = lengths.flatMap(({ amount, unit }) => {
    const centimeters = convert(amount.low, unit, 'centimeter');
    return centimeters === null ? [] : [significant(centimeters)];
  });
  return `${sides.join(' × ')} cm`;
}
