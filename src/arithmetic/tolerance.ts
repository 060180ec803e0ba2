/** Tells whether two amounts say the same as cooks round on a page. The tolerances are tables (tolerances.yaml, roundings.yaml). */
import type Fraction from 'fraction.js';
import { larder } from '../larder/load.js';
import { once } from '../larder/once.js';
import type { Tolerance } from '../larder/tolerances.js';
import { rational, unitSize } from './units.js';

/** right: within the tolerance; loose: near, but not by rounding alone; wrong: another amount. */
export type Agreement = 'right' | 'loose' | 'wrong';

/** From `low` to `high`, in the base of a kind; a single amount has both alike. */
export interface Bounds {
  readonly low: Fraction;
  readonly high: Fraction;
}

/**
 * How two amounts in one unit agree. It does not matter which is asked first. The amounts are exact; whether they are near
 * is not, so it is asked of plain numbers, which are many times quicker.
 */
export function agreement(one: Fraction, other: Fraction, { share, step, query }: Tolerance): Agreement {
  const [a, b] = [one.valueOf(), other.valueOf()];
  const difference = Math.abs(a - b);
  const larger = Math.max(a, b);
  if (difference <= step || difference <= larger * share) return 'right';
  return difference <= larger * query ? 'loose' : 'wrong';
}

/** The same for ranges: end by end; a single amount agrees with all that lies in a range, and outside it its nearer end counts. */
export function boundsAgreement(one: Bounds, other: Bounds, row: Tolerance): Agreement {
  if (isSingle(one) === isSingle(other))
    return worse(agreement(one.low, other.low, row), agreement(one.high, other.high, row));
  if (one.low.gt(other.high)) return agreement(one.low, other.high, row);
  return other.low.gt(one.high) ? agreement(one.high, other.low, row) : 'right';
}

/** The lesser agreement of two. */
export function worse(one: Agreement, other: Agreement): Agreement {
  return RANK.indexOf(one) < RANK.indexOf(other) ? other : one;
}

/** The better agreement of some; wrong where there are none. */
export function best(all: readonly Agreement[]): Agreement {
  return RANK.find((rank) => all.includes(rank)) ?? 'wrong';
}

/**
 * Whether a rounding that whole books use makes one amount of the other: a pound as 500 g. Both are in the base of their
 * kind. "always" where it is used beside finer ones.
 */
export function bookRounding(one: Bounds, other: Bounds): 'kept' | 'always' | null {
  for (const { factor, always } of roundings()) {
    const makes = (small: Bounds, large: Bounds) =>
      isNearly(small.low, large.low, factor) && isNearly(small.high, large.high, factor);
    const exact = makes(one, other) ? one : makes(other, one) ? other : null;
    if (exact !== null) return exact.high.valueOf() <= always ? 'always' : 'kept';
  }
  return null;
}

/** By what each rounding multiplies an amount that is exact, and up to which amount any book may use it. */
const roundings = once(() =>
  larder.roundings.flatMap((row) => {
    const [from, to] = [unitSize(row.unit), unitSize(row.of)];
    if (from === null || to === null) return [];
    const factor = rational(row.is).mul(to.value).div(rational(row.amount).mul(from.value)).valueOf();
    const always = row.always === undefined ? 0 : rational(row.always).mul(from.value).valueOf();
    return [{ factor, always }];
  }),
);

const RANK: readonly Agreement[] = ['right', 'loose', 'wrong'];
/** A book's rounding is kept to the last figure that is written. */
const LAST_FIGURE = 0.015;

function isNearly(one: Fraction, other: Fraction, factor: number): boolean {
  const [a, b] = [one.valueOf() * factor, other.valueOf()];
  return Math.abs(a - b) <= b * LAST_FIGURE;
}

function isSingle(span: Bounds): boolean {
  return span.low.equals(span.high);
}
