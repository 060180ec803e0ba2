import fc from 'fast-check';
import Fraction from 'fraction.js';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { compareHeat, heatOn } from '../../src/arithmetic/heat.js';
import {
  celsiusToFahrenheit,
  fahrenheitToCelsius,
  gasMark,
  gasMarks,
  toCelsius,
  toFahrenheit,
} from '../../src/arithmetic/temperatures.js';
import { readText } from '../../src/grammar/text.js';
import type { Temperature } from '../../src/grammar/types.js';

const degrees = fc
  .tuple(fc.integer({ min: -10_000, max: 10_000 }), fc.integer({ min: 1, max: 20 }))
  .map(([numerator, denominator]) => new Fraction(numerator, denominator));

describe('Celsius and Fahrenheit', () => {
  test.each([
    // The fixed points of water at one atmosphere, and where the scales meet.
    [0, 32],
    [100, 212],
    [-40, -40],
    [180, 356],
  ])('%d °C is %d °F', (celsius, fahrenheit) => {
    expect(celsiusToFahrenheit(new Fraction(celsius)).equals(fahrenheit)).toBe(true);
    expect(fahrenheitToCelsius(new Fraction(fahrenheit)).equals(celsius)).toBe(true);
  });
  test('there and back is exact', () => {
    fc.assert(
      fc.property(degrees, (value) => {
        expect(fahrenheitToCelsius(celsiusToFahrenheit(value)).equals(value)).toBe(true);
        expect(celsiusToFahrenheit(fahrenheitToCelsius(value)).equals(value)).toBe(true);
      }),
    );
  });
  test('a general library of units agrees', () => {
    fc.assert(
      fc.property(fc.integer({ min: -50, max: 600 }), (celsius) => {
        const theirs = mathUnit(celsius, 'degC').toNumber('degF');
        expect(celsiusToFahrenheit(new Fraction(celsius)).valueOf()).toBeCloseTo(theirs, 6);
      }),
    );
  });
});

describe('gas marks', () => {
  test('gas 4 is a moderate oven, 350°F and 180°C', () => {
    const row = gasMark(new Fraction(4));
    expect(row?.fahrenheit.equals(350)).toBe(true);
    expect(row?.celsius.equals(180)).toBe(true);
  });
  test('half a mark and a quarter are the lowest', () => {
    expect(toFahrenheit(new Fraction(1, 2), 'gas')?.equals(250)).toBe(true);
    expect(toFahrenheit(new Fraction(1, 4), 'gas')?.equals(225)).toBe(true);
  });
  test('ovens have no gas 10 and no gas 3½', () => {
    expect(gasMark(new Fraction(10))).toBeNull();
    expect(toCelsius(new Fraction(7, 2), 'gas')).toBeNull();
  });
  test('each whole mark is 25°F above the one before', () => {
    const whole = gasMarks.filter((row) => row.mark.gte(1));
    whole.forEach((row, index) => {
      expect(row.mark.equals(index + 1)).toBe(true);
      expect(row.fahrenheit.equals(275 + 25 * index)).toBe(true);
    });
  });
  test('the two scales of a mark are within ten degrees Celsius of each other', () => {
    for (const row of gasMarks) {
      expect(fahrenheitToCelsius(row.fahrenheit).sub(row.celsius).abs().lte(10)).toBe(true);
    }
  });
});

test('a temperature on the scale that is asked for stays as it is', () => {
  expect(toCelsius(new Fraction(63), 'celsius')?.equals(63)).toBe(true);
  expect(toFahrenheit(new Fraction(145), 'fahrenheit')?.equals(145)).toBe(true);
});

describe('two statements of one temperature agree as cooks round it', () => {
  const heat = (text: string): Temperature => {
    const item = readText(text).find((each) => each.kind === 'temperature');
    if (item?.kind !== 'temperature') throw new Error(`no temperature in "${text}"`);
    return item;
  };
  // What cookbooks print beside each other (common practice), and what no rounding explains.
  test.each([
    ['350°F', '175°C', 'right'],
    ['350°F', '177°C', 'right'],
    ['350°F', '180°C', 'right'],
    ['325°F', '160°C', 'right'],
    ['325°F', '165°C', 'right'],
    ['425°F', '220°C', 'right'],
    ['475°F', '240°C', 'right'],
    ['200°F', '95°C', 'right'],
    ['350°F', '190°C', 'wrong'],
    ['350°F', '160°C', 'wrong'],
    ['350°F', '210°C', 'wrong'],
    ['500°F', '250°C', 'doubtful'],
    ['165°F', '74°C', 'right'],
    ['165°F', '75°C', 'right'],
    ['165°F', '70°C', 'doubtful'],
    ['165°F', '65°C', 'wrong'],
    ['110°F', '43°C', 'right'],
    ['0°F', '-18°C', 'right'],
    ['gas 4', '180°C', 'right'],
    ['gas 3', '170°C', 'right'],
    ['gas 4', '350°F', 'right'],
    ['gas 4', '200°C', 'wrong'],
    ['gas 7', '200°C fan', 'right'],
    ['180°C', '160°C fan', 'right'],
    ['350°F', '160°C fan', 'right'],
    ['180°C', '180°C fan', 'doubtful'],
    ['180°C', '200°C fan', 'wrong'],
    ['180°C', '120°C fan', 'wrong'],
    ['325-350°F', '160-180°C', 'right'],
    ['180°C', '350-360°F', 'right'],
  ])('%s and %s: %s', (one, other, nearness) => {
    expect(compareHeat(heat(one), heat(other))).toBe(nearness);
    // The order on the page changes nothing, where no fan stands behind.
    if (!other.includes('fan')) expect(compareHeat(heat(other), heat(one))).toBe(nearness);
  });
  test('every mark of the oven scale agrees with its own row, and not with the row two marks on', () => {
    gasMarks.forEach((row, index) => {
      const gas = { ...heat('gas 1'), amount: { low: row.mark, high: row.mark, approximation: null } };
      const further = gasMarks[index + 2];
      for (const figure of row.celsiusFigures)
        expect(compareHeat(gas, heat(`${figure.toString()}°C`))).toBe('right');
      expect(compareHeat(gas, heat(`${row.fahrenheit.toString()}°F`))).toBe('right');
      if (further !== undefined)
        expect(compareHeat(gas, heat(`${further.celsius.toString()}°C`))).not.toBe('right');
    });
  });
  test('25°F lower is 15°C lower, and not 25', () => {
    expect(compareHeat(heat('25°F'), heat('15°C'), true)).toBe('right');
    expect(compareHeat(heat('25°F'), heat('25°C'), true)).toBe('wrong');
  });
  test('what is written for another scale agrees with what it was made from', () => {
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 110 }), (fives) => {
        const from = heat(`${fives * 5}°F`);
        const [celsius] = heatOn(from, heat('180°C'), 'rounded') ?? [];
        expect(compareHeat(from, heat(`${celsius?.toString()}°C`))).toBe('right');
      }),
    );
  });
});
