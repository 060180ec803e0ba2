import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { convert } from '../../src/arithmetic/convert.js';
import { agreement, bookRounding, boundsAgreement } from '../../src/arithmetic/tolerance.js';
import type { System } from '../../src/arithmetic/units.js';
import { larder } from '../../src/larder/load.js';
import { toleranceFor } from '../../src/larder/tolerances.js';

type Said = readonly [string, string];

/** Both in the base of the first one's kind; a customary unit is converted by NIST's factors. */
function verdict([amount, unit]: Said, [other, otherUnit]: Said, system: System = 'us-customary'): string {
  const base = larder.units.find((row) => row.id === unit)!.kind;
  const into = { volume: 'milliliter', mass: 'gram', length: 'millimeter' }[base as 'volume'];
  const one = convert(new Fraction(amount), unit, into, system)!;
  const two = convert(new Fraction(other), otherUnit, into, system)!;
  return agreement(one, two, toleranceFor(base as 'volume'));
}

describe('a dual measure is right as cooks round it', () => {
  // The figures of NIST SP 811: 28.35 g, 453.6 g; Handbook 44: 236.6 mL, 473.2 mL, 946.4 mL.
  test.each<[Said, Said]>([
    [
      ['1', 'ounce'],
      ['28', 'gram'],
    ],
    [
      ['1', 'ounce'],
      ['30', 'gram'],
    ],
    [
      ['3/2', 'ounce'],
      ['40', 'gram'],
    ],
    [
      ['1', 'pound'],
      ['450', 'gram'],
    ],
    [
      ['1', 'pound'],
      ['455', 'gram'],
    ],
    [
      ['3', 'pound'],
      ['1.4', 'kilogram'],
    ],
    [
      ['1', 'cup'],
      ['240', 'milliliter'],
    ],
    [
      ['1', 'cup'],
      ['250', 'milliliter'],
    ],
    [
      ['2/3', 'cup'],
      ['160', 'milliliter'],
    ],
    [
      ['1/4', 'teaspoon'],
      ['1', 'milliliter'],
    ],
    [
      ['1', 'quart'],
      ['1', 'liter'],
    ],
    [
      ['9', 'inch'],
      ['23', 'centimeter'],
    ],
    [
      ['1/2', 'inch'],
      ['1', 'centimeter'],
    ],
    [
      ['1', 'inch'],
      ['2.5', 'centimeter'],
    ],
  ])('%s is %s', (one, other) => {
    expect(verdict(one, other)).toBe('right');
  });
  test('a pint of 600 mL is an imperial one', () => {
    expect(verdict(['1', 'pint'], ['600', 'milliliter'])).toBe('wrong');
    expect(verdict(['1', 'pint'], ['600', 'milliliter'], 'imperial')).toBe('right');
  });
  test('a tablespoon of 20 mL is an Australian one', () => {
    expect(verdict(['1', 'tablespoon'], ['20', 'milliliter'])).toBe('wrong');
    expect(verdict(['1', 'tablespoon'], ['20', 'milliliter'], 'australian')).toBe('right');
  });
});

describe('a dual measure beyond rounding is not', () => {
  test.each<[Said, Said]>([
    [
      ['3', 'pound'],
      ['1.1', 'kilogram'],
    ],
    [
      ['1', 'cup'],
      ['720', 'milliliter'],
    ],
    [
      ['8', 'ounce'],
      ['180', 'gram'],
    ],
    [
      ['9', 'inch'],
      ['28', 'centimeter'],
    ],
    [
      ['1', 'tablespoon'],
      ['5', 'milliliter'],
    ],
  ])('%s is not %s', (one, other) => {
    expect(verdict(one, other)).toBe('wrong');
  });
  test('near, but by no rounding: half a cup of 100 mL, an inch of 3 cm', () => {
    expect(verdict(['1/2', 'cup'], ['100', 'milliliter'])).toBe('loose');
    expect(verdict(['1', 'inch'], ['3', 'centimeter'])).toBe('loose');
  });
});

describe('ranges', () => {
  const mass = toleranceFor('mass');
  const span = (low: number, high: number) => ({ low: new Fraction(low), high: new Fraction(high) });
  test('agree end by end', () => {
    expect(boundsAgreement(span(907, 1361), span(900, 1400), mass)).toBe('right');
    expect(boundsAgreement(span(907, 1361), span(900, 2000), mass)).toBe('wrong');
  });
  test('hold a single amount that lies in them, and one that is near an end', () => {
    expect(boundsAgreement(span(300, 400), span(350, 350), mass)).toBe('right');
    expect(boundsAgreement(span(300, 400), span(410, 410), mass)).toBe('right');
    expect(boundsAgreement(span(300, 400), span(600, 600), mass)).toBe('wrong');
  });
});

describe('the coarse roundings of whole books', () => {
  const grams = (value: number) => ({ low: new Fraction(value), high: new Fraction(value) });
  test('a pound is 500 g in some, and 560 g in none', () => {
    expect(bookRounding(grams(453.59237), grams(500))).toBe('kept');
    expect(bookRounding(grams(1000), grams(907.18474))).toBe('kept');
    expect(bookRounding(grams(453.59237), grams(560))).toBeNull();
  });
  test('an ounce is 25 g in others, for small amounts beside finer figures', () => {
    expect(bookRounding(grams(113.398), grams(100))).toBe('always');
    expect(bookRounding(grams(453.59237), grams(400))).toBe('kept');
  });
});

describe('for any amounts', () => {
  const amounts = fc
    .tuple(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 1, max: 1000 }))
    .map(([numerator, denominator]) => new Fraction(numerator, denominator));
  const rows = fc.constantFrom(...larder.tolerances.map((row) => toleranceFor(row.tolerance)));
  test('it does not matter which of the two is asked first', () => {
    fc.assert(
      fc.property(amounts, amounts, rows, (one, other, row) => {
        expect(agreement(one, other, row)).toBe(agreement(other, one, row));
      }),
    );
  });
  test('an amount is right beside itself, and wrong beside ten times as much', () => {
    fc.assert(
      fc.property(amounts, rows, (amount, row) => {
        expect(agreement(amount, amount, row)).toBe('right');
        fc.pre(amount.gt(1));
        expect(agreement(amount, amount.mul(11), row)).toBe('wrong');
      }),
    );
  });
});
