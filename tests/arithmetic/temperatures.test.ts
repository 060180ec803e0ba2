import fc from 'fast-check';
import Fraction from 'fraction.js';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  celsiusToFahrenheit,
  fahrenheitToCelsius,
  gasMark,
  gasMarks,
  toCelsius,
  toFahrenheit,
} from '../../src/arithmetic/temperatures.js';

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
