/** Knows how measures of one kind are added, taken from one another, and said in one another's units. */
import { sizeOf, unitById } from '../larder/units.js';
import { isSingle, type Quantity, sizeNumber } from './drafts.js';
import type { Amount, Measure } from './types.js';

/** One measure with another of its kind taken from it; null where that cannot be done. */
export function difference(whole: Quantity, part: Quantity): Measure | null {
  if (whole.kind !== 'measure' || part.kind !== 'measure' || whole.unit === null) return null;
  const less = inUnit(part, whole.unit);
  if (less === null || !isSingle(less) || whole.amount.low.lte(less.low)) return null;
  const [low, high] = [whole.amount.low.sub(less.low), whole.amount.high.sub(less.low)];
  const equals = [...whole.equals, ...part.equals];
  return { ...whole, amount: { ...whole.amount, low, high }, equals, end: Math.max(whole.end, part.end) };
}

/** The amount of a measure said in another unit of its kind; null when that cannot be done exactly. */
export function inUnit(item: Measure, unit: string): Amount | null {
  if (item.unit === unit) return item.amount;
  if (
    item.unit === null ||
    unitById(item.unit).kind !== unitById(unit).kind ||
    sizeOf(unitById(unit)) === null
  )
    return null;
  const factor = sizeNumber(item.unit).div(sizeNumber(unit));
  return { ...item.amount, low: item.amount.low.mul(factor), high: item.amount.high.mul(factor) };
}

/** The part a following smaller unit is added to: the last of what was said last. */
export function lastPart(item: Measure): Measure {
  const last = item.equals[item.equals.length - 1] ?? item.plus[item.plus.length - 1];
  return last === undefined ? item : lastPart(last);
}

/** The measure with a part added to what was said last. */
export function addPart(item: Measure, part: Measure, end: number): Measure {
  const last = item.equals[item.equals.length - 1];
  if (last === undefined) return { ...item, end, plus: [...item.plus, part] };
  return { ...item, end, equals: [...item.equals.slice(0, -1), addPart(last, part, end)] };
}

/** "2 pounds, 3 ounces": less than one of the larger unit, in a unit that divides it evenly; "2 pounds, 900 g" is the same twice. */
export function isRestOf(whole: Measure, part: Measure): boolean {
  if (!isSmallerOfKind(whole, part) || whole.amount.low.d !== 1n || !isSingle(whole.amount)) return false;
  const ratio = sizeNumber(whole.unit!).div(sizeNumber(part.unit!));
  return ratio.d === 1n && part.amount.high.lt(ratio);
}

/** Whether the part is in a smaller unit of the same kind: ounces after pounds. */
export function isSmallerOfKind(whole: Measure, part: Measure): boolean {
  if (whole.unit === null || part.unit === null) return false;
  const [large, small] = [unitById(whole.unit), unitById(part.unit)];
  if (large.kind !== small.kind || (large.kind !== 'mass' && large.kind !== 'volume')) return false;
  return sizeNumber(small.id).lt(sizeNumber(large.id));
}
