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
  return inKitchenUnits(sum, kind, written[0] ? CUSTOMARY : SI, system);
}

/** A weight as scales of both systems show it; no ounces where it is less than one, which such a scale hardly tells. */
export function onScales(grams: Sum): readonly Sum[] {
  const metric = inKitchenUnits(grams, 'mass', SI);
  const ounces = convert(grams.low, 'gram', 'ounce');
  if (metric === null || ounces === null || ounces.lt(1)) return metric === null ? [] : [metric];
  // What the one scale cannot tell apart is no range on the other.
  const middle = grams.low.add(grams.high).div(2);
  const isOne = metric.low.equals(metric.high);
  const customary = inKitchenUnits(
    isOne ? { ...grams, low: middle, high: middle } : grams,
    'mass',
    CUSTOMARY,
  );
  return customary === null ? [metric] : [metric, customary];
}

/** The sum in the unit of the choice that suits it best, rounded; null where it has no size. */
function inKitchenUnits(
  sum: Sum,
  kind: SizedKind,
  choice: Choices,
  system: System = 'us-customary',
): Sum | null {
  if (sum.unit === null) return null;
  const unit = fitting(sum.high, sum.unit, choice[kind], system);
  if (unit === null) return null;
  const low = convert(sum.low, sum.unit, unit, system);
  const high = convert(sum.high, sum.unit, unit, system);
  return low === null || high === null ? null : { unit, low: rounded(low), high: rounded(high) };
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
type Choices = Readonly<Record<SizedKind, Choice>>;
const NOTHING = new Fraction(0);
const ONE = new Fraction(1);
const SI: Choices = {
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
const CUSTOMARY: Choices = {
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
