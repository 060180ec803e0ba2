/** What a quantity is while it is being read, and the small things it is made of. */
import Fraction from 'fraction.js';
import type { Unit } from '../larder/types.js';
import { sizeOf, unitById } from '../larder/units.js';
import type { KitchenToken } from './tokens.js';
import type { Amount, Count, Dimension, Duration, Measure, Temperature } from './types.js';

export type Quantity = Measure | Dimension | Temperature | Duration | Count;

/** How a number was written. What is written in words goes back to being words when nothing explains it. */
export type Style = 'figure' | 'word' | 'article' | 'fraction';

/** A quantity on its way: what was read so far, and what of it may still change. */
export interface Draft {
  readonly item: Quantity;
  readonly style: Style;
  /** The tokens of a bare number. */
  readonly tokens: readonly KitchenToken[];
  /** Whether the one pack of "14-ounce can" was not stated. */
  readonly implied: boolean;
  /** Whether it was joined of two ends, so that what is added to it is added to the higher one: "1 to 1 hour and a half". */
  readonly ranged?: boolean;
}

export function single(value: Fraction, approximation: Amount['approximation'] = null): Amount {
  return { low: value, high: value, approximation };
}

export const ONE = single(new Fraction(1));

export function measure(amount: Amount, unit: string | null, start: number, end: number): Measure {
  return { kind: 'measure', start, end, amount, unit, plus: [], equals: [], pack: null, share: false };
}

export function packOf(
  amount: Amount,
  pack: Measure,
  unit: string | null,
  start: number,
  end: number,
): Measure {
  return { ...measure(amount, unit, start, end), pack };
}

/** Whether one would weigh or pour it rather than spoon it: what a pack is sized in. */
export function isWeighed(item: Measure): boolean {
  if (item.unit === null || item.pack !== null) return false;
  return isPackSize(unitById(item.unit));
}

export function isPackSize(unit: Unit): boolean {
  // Cups and spoons alone have a metric size of their own; nothing is sold by them.
  return unit.kind === 'mass' || (unit.kind === 'volume' && unit.elsewhere.metric === undefined);
}

export function isSingle(amount: Amount): boolean {
  return amount.low.equals(amount.high);
}

export function secondsOf(amount: Amount, unit: string): Amount {
  const size = sizeNumber(unit);
  return { ...amount, low: amount.low.mul(size), high: amount.high.mul(size) };
}

const sizes = new Map<string, Fraction>();

/** The size of one of the unit in the base of its kind; 1 where it has none. */
export function sizeNumber(unit: string): Fraction {
  let size = sizes.get(unit);
  if (size === undefined) {
    size = new Fraction(sizeOf(unitById(unit)) ?? '1');
    sizes.set(unit, size);
  }
  return size;
}
