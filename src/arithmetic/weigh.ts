/** Weighs volumes and pieces of a food by the handbook, and tells whether a stated weight fits. */
import Fraction from 'fraction.js';
import { isWord } from '../larder/kitchen-words.js';
import { toleranceFor } from '../larder/tolerances.js';
import type { Food } from '../larder/types.js';
import { hasOwnVolume, pieceWeights, volumeWeights, type Weight } from '../larder/weights.js';
import { type Agreement, type Bounds, best, boundsAgreement } from './tolerance.js';
import { unitSize } from './units.js';

/** What the handbook says that an amount weighs: from the lightest of its rows to the heaviest, in grams. */
export interface Weighing {
  readonly grams: Bounds;
  readonly each: readonly Bounds[];
}

/**
 * What so many milliliters of the food weigh; null where no table says. Where the words (folded, singular) say how the
 * cup is filled ("sifted", "chopped") and a row has them, only such rows count.
 */
export function weighVolume(food: Food, milliliters: Bounds, words: readonly string[]): Weighing | null {
  const rows = volumeWeights(food);
  const fitting = rows.filter((row) => row.wording.some((word) => words.includes(word)));
  // A cup of cream is no cup of whipped cream unless the line says so.
  const plain = rows.filter((row) => !row.wording.some((word) => isWord(word, 'changed')));
  return weighing([fitting, plain, rows].find((some) => some.length > 0) ?? [], (row) => {
    const size = unitSize(row.unit);
    return size === null || size.kind !== 'volume' ? null : times(milliliters, row, size.value);
  });
}

/**
 * What so many pieces of the food weigh; null where no table says. `unit` is a piece of the larder ("clove"), or empty
 * for the thing itself; where the words name a size and a row has it, only such rows count.
 */
export function weighPieces(
  food: Food,
  count: Bounds,
  unit: string,
  words: readonly string[],
): Weighing | null {
  const rows = pieceWeights(food).filter((row) => row.unit === unit);
  const said = rows.filter((row) => row.wording.some((word) => words.includes(word)));
  // A large egg is no extra large one.
  const fitting = said.filter((row) => row.wording.every((word) => words.includes(word)));
  return weighing([fitting, said, rows].find((some) => some.length > 0) ?? [], (row) =>
    times(count, row, ONE),
  );
}

/** How a stated volume and a stated weight of the food agree; null where no table says. */
export function volumeWeightAgreement(
  food: Food,
  milliliters: Bounds,
  grams: Bounds,
  words: readonly string[],
): Agreement | null {
  const weighed = weighVolume(food, milliliters, words);
  if (weighed === null) return null;
  // A kind without rows of its own may weigh otherwise than its class: the tolerance is the widest.
  const tolerance = toleranceFor('weight-of-volume', hasOwnVolume(food) ? food : null);
  return weightAgreement(weighed, grams, tolerance);
}

/** How the weight that the handbook gives agrees with a stated one: any of its rows may be meant, and what lies between. */
export function weightAgreement(
  weighed: Weighing,
  grams: Bounds,
  tolerance: Parameters<typeof boundsAgreement>[2],
): Agreement {
  return best([weighed.grams, ...weighed.each].map((span) => boundsAgreement(span, grams, tolerance)));
}

const ONE = new Fraction(1);

function weighing(rows: readonly Weight[], weigh: (row: Weight) => Bounds | null): Weighing | null {
  const each = rows.flatMap((row) => weigh(row) ?? []);
  const [first, ...others] = each;
  if (first === undefined) return null;
  const grams = others.reduce<Bounds>(
    (all, span) => ({
      low: span.low.lt(all.low) ? span.low : all.low,
      high: span.high.gt(all.high) ? span.high : all.high,
    }),
    first,
  );
  return { grams, each };
}

/** The row's grams for so many of its unit, whose size is given. */
function times({ low, high }: Bounds, row: Weight, size: Fraction): Bounds {
  const each = row.grams.div(row.amount.mul(size));
  return { low: low.mul(each), high: high.mul(each) };
}
