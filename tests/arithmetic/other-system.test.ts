/** Amounts said in the system that they are not written in, rounded as a kitchen does. */
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { inOtherSystem, onScales } from '../../src/arithmetic/other-system.js';
import type { System } from '../../src/arithmetic/units.js';
import { readListing } from '../../src/grammar/listing.js';

function said(line: string, system?: System): string | null {
  const sum = inOtherSystem(readListing(line).measures[0]!, system);
  if (sum === null) return null;
  const range = sum.low.equals(sum.high) ? sum.low.toString() : `${sum.low} to ${sum.high}`;
  return `${range} ${sum.unit}`;
}

describe('the other system', () => {
  it.each([
    // SP 811: a pound is 453.6 g, an ounce 28.35 g; H44: a cup is 236.6 mL, a tablespoon 14.8 mL, a quart 946.4 mL.
    ['1 pound butter', '450 gram'],
    ['3 pounds chuck', '1.4 kilogram'],
    ['1 ounce cheese', '28 gram'],
    ['1 lb 2 oz pork', '510 gram'],
    ['1 cup milk', '240 milliliter'],
    ['2 quarts water', '1.9 liter'],
    ['1 teaspoon salt', '4.9 milliliter'],
    ['2 to 3 tablespoons oil', '30 to 44 milliliter'],
    ['500 g flour', '1.1 pound'],
    ['100 g flour', '3.5 ounce'],
    ['250 ml cream', '1.1 cup'],
    ['15 ml oil', '1 tablespoon'],
    ['2 l stock', '2.1 quart'],
  ])('of %s is %s', (line, other) => {
    expect(said(line)).toBe(other);
  });

  it('follows the cup of the book', () => {
    expect(said('1 cup milk', 'metric')).toBe('250 milliliter');
  });

  it('has nothing to say of eggs, cans, and lines that say both themselves', () => {
    expect(said('3 eggs')).toBe(null);
    expect(said('2 cans tomatoes')).toBe(null);
    expect(said('1 cup (240 ml) milk')).toBe(null);
  });
});

describe('on scales', () => {
  const shown = (low: number, high = low) =>
    onScales({ unit: 'gram', low: new Fraction(low), high: new Fraction(high) }).map(
      (sum) => `${sum.low} to ${sum.high} ${sum.unit}`,
    );

  it('a weight stands in grams and in ounces, a large one in kilograms and in pounds', () => {
    expect(shown(120)).toEqual(['120 to 120 gram', '4.2 to 4.2 ounce']);
    expect(shown(1360.8)).toEqual(['1.4 to 1.4 kilogram', '3 to 3 pound']);
  });

  it('less than an ounce has no ounces', () => {
    expect(shown(27)).toEqual(['27 to 27 gram']);
  });

  it('what is one weight in grams is one in ounces', () => {
    expect(shown(237, 241)).toEqual(['240 to 240 gram', '8.4 to 8.4 ounce']);
    expect(shown(70, 150)).toEqual(['70 to 150 gram', '2.5 to 5.3 ounce']);
  });
});
