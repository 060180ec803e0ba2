/** Knows whether two statements of one temperature agree as cooks round it, and what one is on the scale of the other. */
import Fraction from 'fraction.js';
import type { Amount, Scale, Temperature } from '../grammar/types.js';
import { larder } from '../larder/load.js';
import { celsiusToFahrenheit, gasMark, gasMarks, toCelsius, toFahrenheit } from './temperatures.js';

/** right: a cook's rounding explains it; wrong: nothing does; doubtful: only the author can tell. */
export type Nearness = 'right' | 'doubtful' | 'wrong';

/** Degrees Celsius, the lower first. */
interface Stretch {
  readonly low: Fraction;
  readonly high: Fraction;
}

/**
 * Whether the two agree by the table of tolerances; null where a gas mark is none that ovens have.
 * With `difference` both say how much hotter or cooler, not how hot.
 */
export function compareHeat(one: Temperature, other: Temperature, difference = false): Nearness | null {
  const figures = stretchesOf(one, other.scale, difference);
  const others = stretchesOf(other, one.scale, difference);
  if (figures.length === 0 || others.length === 0) return null;
  const gap = nearest(figures, others);
  const plain = nearnessOf(gap, comparedAs(one, other, gap.coolest, difference));
  if (one.fan === other.fan) return plain;
  // "160°C / 325°F fan" may say both for the fan oven, since the word stands behind the last; gas ovens have no fan.
  const last = one.start > other.start ? one : other;
  const ambiguous = last.fan && one.scale !== other.scale && one.scale !== 'gas' && other.scale !== 'gas';
  if (plain === 'right' && ambiguous) return plain;
  const lowered = (stretches: readonly Stretch[], fan: boolean): Stretch[] =>
    stretches.map(({ low, high }) =>
      fan ? { low, high } : { low: low.sub(FAN_DROP), high: high.sub(FAN_DROP) },
    );
  return nearnessOf(nearest(lowered(figures, one.fan), lowered(others, other.fan)), 'fan');
}

/** The numbers of a temperature on another scale: exactly (whole degrees), or as cooks round them. */
export function heatOn(
  item: Temperature,
  to: Temperature,
  how: 'exactly' | 'rounded',
  difference = false,
): Fraction[] | null {
  const scale = to.scale ?? guessedScale(to.amount, item.scale);
  const from = item.scale ?? guessedScale(item.amount, to.scale);
  const ends = item.amount.low.equals(item.amount.high)
    ? [item.amount.low]
    : [item.amount.low, item.amount.high];
  const numbers = ends.map((value) => {
    if (difference) return whole(scale === 'fahrenheit' ? value.mul(9, 5) : value.mul(5, 9));
    const drop = item.fan === to.fan ? ZERO : to.fan ? FAN_DROP.neg() : FAN_DROP;
    return numberOn(value, from, scale, drop, how);
  });
  return numbers.every((number) => number !== null) ? numbers : null;
}

/** Degrees Celsius by which a fan oven is set lower. */
const FAN_DROP = new Fraction(larder.ovenLimits.find((row) => row.what === 'fan-drop')!.celsius);
const COOLEST_OVEN = new Fraction(larder.ovenLimits.find((row) => row.what === 'coolest')!.celsius);
/** Cooks write oven temperatures in fives; those of food in whole degrees. */
const OVEN_STEP = 5;
const ZERO = new Fraction(0);

const tolerances = new Map(
  larder.heatTolerances.map((row) => [
    row.compares,
    { right: new Fraction(row.right), wrong: new Fraction(row.wrong) },
  ]),
);

type Compared = (typeof larder.heatTolerances)[number]['compares'];

function comparedAs(one: Temperature, other: Temperature, coolest: Fraction, difference: boolean): Compared {
  if (difference) return 'difference';
  if (one.scale === 'gas' || other.scale === 'gas') return 'gas';
  return coolest.lt(COOLEST_OVEN) ? 'food' : 'oven';
}

function nearnessOf(gap: { degrees: Fraction }, compared: Compared): Nearness {
  const { right, wrong } = tolerances.get(compared)!;
  if (gap.degrees.lte(right)) return 'right';
  return gap.degrees.lte(wrong) ? 'doubtful' : 'wrong';
}

/** The smallest distance between any figure of one and any of the other, and the hotter of the two lowest ends. */
function nearest(
  ones: readonly Stretch[],
  others: readonly Stretch[],
): { degrees: Fraction; coolest: Fraction } {
  let degrees = distance(ones[0]!, others[0]!);
  for (const one of ones) {
    for (const other of others) {
      const next = distance(one, other);
      if (next.lt(degrees)) degrees = next;
    }
  }
  const [first, second] = [ones[0]!.low, others[0]!.low];
  return { degrees, coolest: first.gt(second) ? first : second };
}

/** Ranges are compared end by end; a single temperature agrees with a range that holds it. */
function distance(one: Stretch, other: Stretch): Fraction {
  const single = one.low.equals(one.high) !== other.low.equals(other.high);
  const below = one.low.sub(other.low).abs();
  const above = one.high.sub(other.high).abs();
  if (!single) return below.gt(above) ? below : above;
  if (one.low.lte(other.low) && one.high.gte(other.high)) return ZERO;
  if (other.low.lte(one.low) && other.high.gte(one.high)) return ZERO;
  return below.lt(above) ? below : above;
}

/** What the temperature can be in Celsius: a gas mark has several figures. */
function stretchesOf(item: Temperature, beside: Scale | null, difference: boolean): Stretch[] {
  const { low, high } = sorted(item.amount);
  const scale = item.scale ?? guessedScale(item.amount, beside);
  if (difference) {
    if (scale === 'gas') return [];
    const part = scale === 'fahrenheit' ? new Fraction(5, 9) : new Fraction(1);
    return [{ low: low.mul(part), high: high.mul(part) }];
  }
  if (scale !== 'gas') return [{ low: toCelsius(low, scale)!, high: toCelsius(high, scale)! }];
  const [lows, highs] = [celsiusFigures(low), celsiusFigures(high)];
  return lows.flatMap((from, at) => (highs[at] === undefined ? [] : [{ low: from, high: highs[at] }]));
}

function celsiusFigures(mark: Fraction): Fraction[] {
  const row = gasMark(mark);
  return row === null ? [] : [toCelsius(row.fahrenheit, 'fahrenheit')!, ...row.celsiusFigures];
}

/** A number without a scale is on the other one of the two: "375 degrees (190°C)". */
function guessedScale(amount: Amount, beside: Scale | null): Scale {
  if (beside === 'celsius') return 'fahrenheit';
  if (beside === 'fahrenheit') return 'celsius';
  return amount.low.gt(HOTTEST_PLAIN_CELSIUS) ? 'fahrenheit' : 'celsius';
}

/** Beside a gas mark a larger number is Fahrenheit: no mark is hotter in Celsius. */
const HOTTEST_PLAIN_CELSIUS = Math.max(...larder.ovenScale.flatMap((row) => row.celsius));

function numberOn(
  value: Fraction,
  from: Scale,
  to: Scale,
  drop: Fraction,
  how: 'exactly' | 'rounded',
): Fraction | null {
  if (drop.equals(0)) {
    if (to === from) return value;
    const row = from === 'gas' ? gasMark(value) : how === 'rounded' ? rowOf(value, from) : null;
    if (row !== null) return to === 'gas' ? row.mark : to === 'celsius' ? row.celsius : row.fahrenheit;
  }
  const celsius = toCelsius(value, from)?.add(drop);
  if (celsius === undefined) return null;
  if (to === 'gas') return nearestMark(celsius);
  const exact = to === 'celsius' ? celsius : celsiusToFahrenheit(celsius);
  return how === 'exactly' || celsius.lt(COOLEST_OVEN)
    ? whole(exact)
    : exact.div(OVEN_STEP).round().mul(OVEN_STEP);
}

function rowOf(value: Fraction, scale: Scale): (typeof gasMarks)[number] | null {
  const figure = scale === 'fahrenheit' ? 'fahrenheit' : 'celsius';
  return gasMarks.find((row) => row[figure].equals(value)) ?? null;
}

/** The mark whose Fahrenheit is nearest; null far from any. */
function nearestMark(celsius: Fraction): Fraction | null {
  const fahrenheit = toFahrenheit(celsius, 'celsius')!;
  const away = (row: (typeof gasMarks)[number]): Fraction => row.fahrenheit.sub(fahrenheit).abs();
  const best = gasMarks.reduce((near, row) => (away(row).lt(away(near)) ? row : near));
  return away(best).lte(FURTHEST_FROM_MARK) ? best.mark : null;
}

/** Half of the 25°F between two marks, rounded up. */
const FURTHEST_FROM_MARK = 13;

function whole(value: Fraction): Fraction {
  return value.round();
}

function sorted({ low, high }: Amount): Stretch {
  return low.lte(high) ? { low, high } : { low: high, high: low };
}
