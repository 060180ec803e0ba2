/** Amounts are printed as cooks write them, and read back as they were. */
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { printAmount, printFraction } from '../../src/grammar/print.js';
import { readText } from '../../src/grammar/text.js';
import type { Amount, Approximation } from '../../src/grammar/types.js';

describe('a fraction is printed in the parts that spoons and cups have, otherwise as a scale shows it', () => {
  test.each([
    ['3/2', '1 1/2'],
    ['3/4', '3/4'],
    ['1/3', '1/3'],
    ['2', '2'],
    ['7/5', '1.4'],
    ['113/10', '11.3'],
    ['22/7', '3 1/7'],
  ])('%s as %s', (value, printed) => expect(printFraction(new Fraction(value))).toBe(printed));
});

const approximations = fc.constantFrom<Approximation | null>(
  null,
  'about',
  'scant',
  'heaped',
  'generous',
  'at-least',
  'up-to',
);
const value = fc
  .tuple(
    fc.integer({ min: 0, max: 999 }),
    fc.integer({ min: 0, max: 15 }),
    fc.constantFrom(1, 2, 3, 4, 5, 6, 8, 10, 16, 20),
  )
  .filter(([whole, above, below]) => whole > 0 || above % below > 0)
  .map(([whole, above, below]) => new Fraction(whole).add(new Fraction(above % below, below)));

test('a printed amount reads back as the same amount', () => {
  fc.assert(
    fc.property(value, value, approximations, (one, other, approximation) => {
      const [low, high] = one.lt(other) ? [one, other] : [other, one];
      const amount: Amount = { low, high, approximation };
      const [item, ...others] = readText(`${printAmount(amount)} cups`);
      expect(others).toEqual([]);
      expect(item).toMatchObject({ kind: 'measure', unit: 'cup', amount });
    }),
    { numRuns: 2000 },
  );
});
