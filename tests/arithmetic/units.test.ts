import Fraction from 'fraction.js';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { baseUnits, type System, unit, unitSize } from '../../src/arithmetic/units.js';
import { larder } from '../../src/larder/load.js';

const sizeOf = (id: string, system?: System): Fraction => {
  const size = unitSize(id, system);
  if (size === null) throw new Error(`expected ${id} to have a size`);
  return size.value;
};

/** A published factor has seven digits where it is not exact; ours, rounded so, must be the same digits. */
const sevenDigits = (value: Fraction): string => value.valueOf().toExponential(6);

/** NIST SP 811 (2008), appendix B.8, in the SI unit of the table; those marked exact there are compared in full. */
const sp811: readonly (readonly [
  string,
  System,
  string,
  'milliliter' | 'gram' | 'millimeter' | 'second',
  boolean,
])[] = [
  ['cup', 'us-customary', '2.365882E-04', 'milliliter', false],
  ['fluid-ounce', 'us-customary', '2.957353E-05', 'milliliter', false],
  ['gallon', 'us-customary', '3.785412E-03', 'milliliter', false],
  ['gill', 'us-customary', '1.182941E-04', 'milliliter', false],
  ['pint', 'us-customary', '4.731765E-04', 'milliliter', false],
  ['quart', 'us-customary', '9.463529E-04', 'milliliter', false],
  ['tablespoon', 'us-customary', '1.478676E-05', 'milliliter', false],
  ['teaspoon', 'us-customary', '4.928922E-06', 'milliliter', false],
  ['gallon', 'imperial', '0.00454609', 'milliliter', true],
  ['fluid-ounce', 'imperial', '2.841306E-05', 'milliliter', false],
  ['gill', 'imperial', '1.420653E-04', 'milliliter', false],
  ['liter', 'us-customary', '0.001', 'milliliter', true],
  ['ounce', 'us-customary', '2.834952E-02', 'gram', false],
  ['pound', 'us-customary', '4.535924E-01', 'gram', false],
  ['inch', 'us-customary', '0.0254', 'millimeter', true],
  ['foot', 'us-customary', '0.3048', 'millimeter', true],
  ['minute', 'us-customary', '60', 'second', true],
  ['hour', 'us-customary', '3600', 'second', true],
  ['day', 'us-customary', '86400', 'second', true],
];

/** How many of our base are in the SI unit of the table: cubic meter, kilogram, meter, second. */
const inSI = { milliliter: 1_000_000, gram: 1000, millimeter: 1000, second: 1 } as const;

describe('sizes are those of NIST SP 811, appendix B.8', () => {
  test.each(sp811)('%s (%s) is %s', (id, system, published, base, exact) => {
    const ours = sizeOf(id, system).div(inSI[base]);
    if (exact) expect(ours.equals(new Fraction(published))).toBe(true);
    else expect(sevenDigits(ours)).toBe(Number(published).toExponential(6));
  });
});

describe('sizes are those of NIST Handbook 44, appendix C', () => {
  // Appendix C gives the avoirdupois pound, the inch and the gallon as exact.
  test('a gallon is 231 cubic inches', () => {
    const cubicInch = new Fraction('2.54').pow(3);
    expect(sizeOf('gallon').equals(cubicInch.mul(231))).toBe(true);
  });
  test('an avoirdupois pound is 453.59237 grams', () => {
    expect(sizeOf('pound').equals(new Fraction('453.59237'))).toBe(true);
  });
  test.each([
    ['gallon', 4, 'quart'],
    ['quart', 2, 'pint'],
    ['pint', 2, 'cup'],
    ['pint', 4, 'gill'],
    ['cup', 8, 'fluid-ounce'],
    ['fluid-ounce', 2, 'tablespoon'],
    ['tablespoon', 3, 'teaspoon'],
    ['pound', 16, 'ounce'],
    ['foot', 12, 'inch'],
    ['liter', 10, 'deciliter'],
    ['deciliter', 10, 'centiliter'],
    ['kilogram', 1000, 'gram'],
    ['gram', 1000, 'milligram'],
    ['meter', 100, 'centimeter'],
  ])('a US %s is %d × %s', (larger, count, smaller) => {
    expect(sizeOf(larger).equals(sizeOf(smaller).mul(count))).toBe(true);
  });
});

describe('other systems', () => {
  // Weights and Measures Act 1985 (UK): the gallon is 4.54609 litres, a pint an eighth, a fluid ounce a twentieth of it.
  // The spoons of British recipe books, from memory: a tablespoon of 5/8 fluid ounce, three teaspoons to it.
  test.each([
    ['gallon', '4', 'quart'],
    ['gallon', '8', 'pint'],
    ['pint', '20', 'fluid-ounce'],
    ['pint', '4', 'gill'],
    ['pint', '2', 'cup'],
    ['fluid-ounce', '8/5', 'tablespoon'],
    ['tablespoon', '3', 'teaspoon'],
  ])('an imperial %s is %s × %s', (larger, count, smaller) => {
    expect(sizeOf(larger, 'imperial').equals(sizeOf(smaller, 'imperial').mul(count))).toBe(true);
  });
  // 21 CFR 101.9(b)(5)(viii): a cup is 240 mL, a tablespoon 15 mL, a teaspoon 5 mL, a fluid ounce 30 mL.
  test.each([
    ['cup', 240],
    ['tablespoon', 15],
    ['teaspoon', 5],
    ['fluid-ounce', 30],
  ])('the legal %s of US labels is %d mL', (id, milliliters) => {
    expect(sizeOf(id, 'us-legal').equals(milliliters)).toBe(true);
  });
  test('an Australian tablespoon is 20 mL and a cup 250 mL', () => {
    expect(sizeOf('tablespoon', 'australian').equals(20)).toBe(true);
    expect(sizeOf('cup', 'australian').equals(250)).toBe(true);
  });
  test('a unit that a system does not size keeps its own size', () => {
    expect(sizeOf('pound', 'australian').equals(sizeOf('pound'))).toBe(true);
  });
});

describe('sizes are those of a general library of units', () => {
  // Its teaspoon and tablespoon are the metric ones.
  const theirs: Readonly<Record<string, readonly [string, System]>> = {
    cup: ['cup', 'us-customary'],
    'fluid-ounce': ['fluidounce', 'us-customary'],
    gill: ['gill', 'us-customary'],
    pint: ['pint', 'us-customary'],
    quart: ['quart', 'us-customary'],
    gallon: ['gallon', 'us-customary'],
    tablespoon: ['tablespoon', 'metric'],
    teaspoon: ['teaspoon', 'metric'],
    milliliter: ['ml', 'us-customary'],
    centiliter: ['cl', 'us-customary'],
    deciliter: ['dl', 'us-customary'],
    liter: ['liter', 'us-customary'],
    milligram: ['mg', 'us-customary'],
    gram: ['gram', 'us-customary'],
    kilogram: ['kg', 'us-customary'],
    ounce: ['ounce', 'us-customary'],
    pound: ['lbm', 'us-customary'],
    millimeter: ['mm', 'us-customary'],
    centimeter: ['cm', 'us-customary'],
    meter: ['meter', 'us-customary'],
    inch: ['inch', 'us-customary'],
    foot: ['foot', 'us-customary'],
    second: ['second', 'us-customary'],
    minute: ['minute', 'us-customary'],
    hour: ['hour', 'us-customary'],
    day: ['day', 'us-customary'],
    week: ['week', 'us-customary'],
  };
  const base = { volume: 'ml', mass: 'g', length: 'mm', time: 's' } as const;

  test.each(Object.entries(theirs))('%s', (id, [name, system]) => {
    const size = unitSize(id, system);
    expect(size).not.toBeNull();
    expect(size!.value.valueOf()).toBeCloseTo(mathUnit(1, name).toNumber(base[size!.kind]), 9);
  });

  test('every sized unit is compared, or is one that has its size by custom alone', () => {
    const byCustom = ['dessertspoon', 'shot', 'night', 'month'];
    const sized = larder.units.map((row) => row.id).filter((id) => unitSize(id) !== null);
    expect(sized.filter((id) => !(id in theirs) && !byCustom.includes(id))).toEqual([]);
  });
});

describe('units without a size', () => {
  test.each(['can', 'pinch', 'clove', 'bunch'])('a %s has none', (id) => {
    expect(unit(id)).not.toBeNull();
    expect(unitSize(id)).toBeNull();
  });
  test('nor has a word that is no unit', () => {
    expect(unit('spoonfuls-of-hope')).toBeNull();
    expect(unitSize('spoonfuls-of-hope')).toBeNull();
  });
  test('the bases are of size one', () => {
    for (const id of Object.values(baseUnits)) expect(sizeOf(id).equals(1)).toBe(true);
  });
});
