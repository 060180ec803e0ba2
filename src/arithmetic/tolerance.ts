/** Tells whether two amounts say the same as cooks round on a page. The tolerances are tables (tolerances.yaml, roundings.yaml). */
import Fraction from 'fraction.js';
import { larder } from '../larder/load.js';
import type { ToleranceRow } from '../larder/types.js';
import { rational, unitSize } from './units.js';

/** right: within the tolerance; loose: near, but not by rounding alone; wrong: another amount. */
export type Agreement = 'right' | 'loose' | 'wrong';

/** From `low` to `high`, in the base of a kind; a single amount has both alike. */
export interface Bounds {
  readonly low: Fraction;
  readonly high: Fraction;
}

/** How two amounts in one unit agree. It does not matter which is asked first. */
export function agreement(one: Fraction, other: Fraction, row: ToleranceRow): Agreement {
  const difference = one.sub(other).abs();
  const larger = one.gt(other) ? one : other;
  if (difference.lte(rational(row.step)) || difference.lte(larger.mul(rational(row.share)))) return 'right';
  return difference.lte(larger.mul(rational(row.query))) ? 'loose' : 'wrong';
}

/** The same for ranges: end by end; a single amount agrees with all that lies in a range, and outside it its nearer end counts. */
export function boundsAgreement(one: Bounds, other: Bounds, row: ToleranceRow): Agreement {
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

/** Whether a rounding that whole books use makes one amount of the other: a pound as 500 g. Both in the base of their kind. */
export function isBookRounding(one: Bounds, other: Bounds): boolean {
  return larder.roundings.some((row) => {
    const [from, to] = [unitSize(row.unit), unitSize(row.of)];
    if (from === null || to === null) return false;
    const factor = rational(row.is).mul(to.value).div(rational(row.amount).mul(from.value));
    const makes = (small: Bounds, large: Bounds) =>
      isNearly(small.low.mul(factor), large.low) && isNearly(small.high.mul(factor), large.high);
    return makes(one, other) || makes(other, one);
  });
}

const RANK: readonly Agreement[] = ['right', 'loose', 'wrong'];
/** A book's rounding is kept to the last figure that is written. */
const LAST_FIGURE = new Fraction(1, 100);

function isNearly(one: Fraction, other: Fraction): boolean {
  return one.sub(other).abs().lte(other.mul(LAST_FIGURE));
}

function isSingle(span: Bounds): boolean {
  return span.low.equals(span.high);
}
