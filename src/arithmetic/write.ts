/** Writes amounts for a message or a mend, in the figures that a scale or a cup shows. */
import Fraction from 'fraction.js';
import type { Bounds } from './tolerance.js';
import { baseUnits, unitSize } from './units.js';

/** "1.36 kg", "240 mL", "300 to 400 g", of an amount in the base of its kind. */
export function writtenAmount({ low, high }: Bounds, base: string): string {
  const [small, large] = SYMBOLS.get(base) ?? [base, base];
  const big = high.gte(LARGE_FROM);
  const figure = (value: Fraction) => significant(big ? value.div(LARGE_FROM) : value);
  const [from, to] = [figure(low), figure(high)];
  return `${from === to ? from : `${from} to ${to}`} ${big ? large : small}`;
}

/** Three figures, as much as a message needs: "0.125", "37.5", "1360". */
export function significant(value: Fraction): string {
  return String(Number(value.valueOf().toPrecision(FIGURES)));
}

/**
 * An amount of the unit rounded for the kitchen. `finest` is the step that the book keeps to in small metric units,
 * in grams or milliliters.
 */
export function kitchenRound(value: Fraction, unit: string, finest: number): Fraction {
  const size = unitSize(unit)?.value ?? new Fraction(1);
  if (isSmallMetric(unit))
    return toStep(value, value.lt(SMALL) ? 1 : value.lt(MIDDLE) ? Math.min(finest, 5) : finest);
  const tenths = size.equals(LARGE_FROM) || size.equals(10) || size.equals(100);
  const step = tenths ? new Fraction(1, 10) : new Fraction(1, value.lt(1) ? 8 : 4);
  const rounded = toStep(value, step);
  return rounded.equals(0) ? value : rounded;
}

/** Whether the unit is a gram or a milliliter, which are written in whole numbers. */
export function isSmallMetric(unit: string): boolean {
  return unit === baseUnits.mass || unit === baseUnits.volume;
}

const SYMBOLS = new Map([
  [baseUnits.mass, ['g', 'kg']],
  [baseUnits.volume, ['mL', 'L']],
  [baseUnits.length, ['mm', 'm']],
] as const);
const LARGE_FROM = new Fraction(1000);
const FIGURES = 3;
/** Below this a scale's figure is kept; below that it is rounded to fives. */
const SMALL = 15;
const MIDDLE = 100;

function toStep(value: Fraction, step: Fraction | number): Fraction {
  return value.div(step).round().mul(step);
}
