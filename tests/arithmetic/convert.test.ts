import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { convert, toBase } from '../../src/arithmetic/convert.js';
import { type System, unitSize } from '../../src/arithmetic/units.js';
import { larder } from '../../src/larder/load.js';

const systems: readonly System[] = ['us-customary', 'us-legal', 'metric', 'imperial', 'australian'];
const sized = larder.units.map((row) => row.id).filter((id) => unitSize(id) !== null);
const amounts = fc
  .tuple(fc.integer({ min: 0, max: 100_000 }), fc.integer({ min: 1, max: 1000 }))
  .map(([numerator, denominator]) => new Fraction(numerator, denominator));
const ids = fc.constantFrom(...sized);

describe('conversion', () => {
  test.each([
    ['1', 'cup', 'tablespoon', '16'],
    ['3/2', 'tablespoon', 'teaspoon', '9/2'],
    ['1', 'pound', 'ounce', '16'],
    ['2', 'kilogram', 'gram', '2000'],
    ['1', 'pound', 'gram', '45359237/100000'],
    ['9', 'inch', 'centimeter', '1143/50'],
    ['3/2', 'hour', 'minute', '90'],
  ])('%s %s in %s is %s', (amount, from, to, expected) => {
    expect(convert(new Fraction(amount), from, to)?.toFraction()).toBe(expected);
  });
  test('an Australian tablespoon is four teaspoons', () => {
    expect(convert(new Fraction(1), 'tablespoon', 'teaspoon', 'australian')?.equals(4)).toBe(true);
  });
  test('a cup is no number of grams: that depends on the food', () => {
    expect(convert(new Fraction(1), 'cup', 'gram')).toBeNull();
  });
  test('an ounce of weight is no fluid ounce', () => {
    expect(convert(new Fraction(15), 'ounce', 'milliliter')).toBeNull();
  });
  test('a can is a can, and nothing else', () => {
    expect(convert(new Fraction(2), 'can', 'can')?.equals(2)).toBe(true);
    expect(convert(new Fraction(2), 'can', 'ounce')).toBeNull();
    expect(toBase(new Fraction(2), 'can')).toBeNull();
  });
  test('the base of a quart is 946.352946 milliliters', () => {
    const base = toBase(new Fraction(1), 'quart');
    expect(base?.kind).toBe('volume');
    expect(base?.value.equals(new Fraction('946.352946'))).toBe(true);
  });
});

describe('for any amount', () => {
  test('there and back is exact', () => {
    fc.assert(
      fc.property(amounts, ids, ids, fc.constantFrom(...systems), (amount, from, to, system) => {
        const there = convert(amount, from, to, system);
        fc.pre(there !== null);
        expect(convert(there, to, from, system)?.equals(amount)).toBe(true);
      }),
    );
  });
  test('a way round by a third unit ends at the same amount', () => {
    fc.assert(
      fc.property(amounts, ids, ids, ids, (amount, from, by, to) => {
        const first = convert(amount, from, by);
        fc.pre(first !== null && convert(amount, from, to) !== null);
        expect(convert(first, by, to)?.equals(convert(amount, from, to)!)).toBe(true);
      }),
    );
  });
  test('twice the amount is twice the result', () => {
    fc.assert(
      fc.property(amounts, ids, ids, (amount, from, to) => {
        const once = convert(amount, from, to);
        fc.pre(once !== null);
        expect(convert(amount.mul(2), from, to)?.equals(once.mul(2))).toBe(true);
      }),
    );
  });
  test('it converts exactly when both units are of one kind', () => {
    fc.assert(
      fc.property(amounts, ids, ids, (amount, from, to) => {
        expect(convert(amount, from, to) !== null).toBe(unitSize(from)?.kind === unitSize(to)?.kind);
      }),
    );
  });
});
