/** Prints amounts as cooks write them, so that they read back as the same amount. */
import type Fraction from 'fraction.js';
import type { Amount, Approximation } from './types.js';

/** "about 1 1/2", "3 to 4". */
export function printAmount(amount: Amount): string {
  const { low, high, approximation } = amount;
  const number = low.equals(high) ? printFraction(low) : `${printFraction(low)} to ${printFraction(high)}`;
  return approximation === null ? number : `${WORDS[approximation]} ${number}`;
}

/** "1 1/2", "3/4", "1.35": a fraction where measuring spoons and cups have it, a decimal where a scale would show it. */
export function printFraction(value: Fraction): string {
  const { d } = value;
  if (d === 1n) return value.toFraction();
  if (KITCHEN_PARTS.has(d) || !isShortDecimal(d)) return value.toFraction(true);
  return value.toString();
}

const WORDS: Readonly<Record<Approximation, string>> = {
  about: 'about',
  scant: 'scant',
  heaped: 'heaped',
  generous: 'generous',
  'at-least': 'at least',
  'up-to': 'up to',
};

/** The parts into which cooks divide a cup, a spoon or an inch. */
const KITCHEN_PARTS = new Set([2n, 3n, 4n, 6n, 8n, 16n]);
/** No scale shows more than thousandths. */
const FINEST_DECIMAL = 1000n;

function isShortDecimal(denominator: bigint): boolean {
  return FINEST_DECIMAL % denominator === 0n;
}
