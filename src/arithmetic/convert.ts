/** Turns an amount in one unit into another, exactly. */
import type Fraction from 'fraction.js';
import { type SizedKind, type System, unitSize } from './units.js';

/** The amount in the base of its kind (see `baseUnits`). Null for a unit without a size, such as a can or a pinch. */
export function toBase(
  amount: Fraction,
  unitId: string,
  system: System = 'us-customary',
): { kind: SizedKind; value: Fraction } | null {
  const size = unitSize(unitId, system);
  return size === null ? null : { kind: size.kind, value: amount.mul(size.value) };
}

/**
 * The amount in another unit; null when the two are not of one kind, or one of them has no size.
 * A unit is always convertible to itself: two cans are two cans.
 */
export function convert(
  amount: Fraction,
  from: string,
  to: string,
  system: System = 'us-customary',
): Fraction | null {
  if (from === to) return amount;
  const base = toBase(amount, from, system);
  const target = unitSize(to, system);
  if (base === null || target === null || base.kind !== target.kind) return null;
  return base.value.div(target.value);
}
