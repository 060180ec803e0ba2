/** Says an amount in the system that it is not written in: cups and pounds in milliliters and grams, and the other way round. */
import Fraction from 'fraction.js';
import type { Measure } from '../grammar/types.js';
import { type Sum, sumMeasures } from './compare.js';
import { convert } from './convert.js';
import { type SizedKind, type System, unitSize } from './units.js';

/** The measure in the other system, rounded as cooks round; null where it has no size, or says itself what it is there. */
export function inOtherSystem(measure: Measure, system: System = 'us-customary'): Sum | null {
  const written = [measure, ...measure.equals].map(({ unit }) => unit !== null && METRIC.has(unit));
  const sum = measure.unit === null ? null : sumMeasures([measure], system);
  const kind = sum?.unit == null ? undefined : unitSize(sum.unit, system)?.kind;
  if (sum?.unit == null || kind === undefined || written.includes(!written[0])) return null;
  const unit = fitting(sum.high, sum.unit, written[0] ? CUSTOMARY[kind] : SI[kind], system);
  const [low, high] = [sum.low, sum.high].map((amount) =>
    unit === null ? null : convert(amount, sum.unit!, unit, system),
  );
  return unit === null || low == null || high == null
    ? null
    : { unit, low: rounded(low), high: rounded(high) };
}

/** The units of the SI and those used with it; all others are customary. */
const METRIC: ReadonlySet<string> = new Set([
  'milliliter',
  'centiliter',
  'deciliter',
  'liter',
  'milligram',
  'gram',
  'kilogram',
  'millimeter',
  'centimeter',
  'meter',
]);

/** For each kind the units to choose from, the smallest first, each with how much of it makes it worth using. */
type Choice = readonly (readonly [unit: string, from: Fraction])[];
const NOTHING = new Fraction(0);
const ONE = new Fraction(1);
const SI: Readonly<Record<SizedKind, Choice>> = {
  volume: [
    ['milliliter', NOTHING],
    ['liter', ONE],
  ],
  mass: [
    ['gram', NOTHING],
    ['kilogram', ONE],
  ],
  length: [
    ['millimeter', NOTHING],
    ['centimeter', ONE],
  ],
  time: [],
};
/** A quarter of a cup is the smallest cup that kitchens have, and a spoon is read off better than a part of one. */
const CUSTOMARY: Readonly<Record<SizedKind, Choice>> = {
  volume: [
    ['teaspoon', NOTHING],
    ['tablespoon', ONE],
    ['cup', new Fraction(1, 4)],
    ['quart', ONE],
  ],
  mass: [
    ['ounce', NOTHING],
    ['pound', ONE],
  ],
  length: [['inch', NOTHING]],
  time: [],
};

/** The largest of the units that the amount is enough for, once rounded. */
function fitting(amount: Fraction, from: string, choice: Choice, system: System): string | null {
  const enough = choice.filter(([unit, least]) => {
    const converted = convert(amount, from, unit, system);
    return converted !== null && rounded(converted).gte(least);
  });
  return enough.at(-1)?.[0] ?? null;
}

/** Two figures are what a kitchen scale or jug is read to: 453.6 g is 450 g, 1.36 kg is 1.4 kg (trade practice; SP 811 keeps more). */
const FIGURES = 2;

function rounded(amount: Fraction): Fraction {
  return new Fraction(Number(amount.valueOf().toPrecision(FIGURES)));
}
