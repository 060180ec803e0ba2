/** Knows the scales of heat: Celsius and Fahrenheit exactly, and the marks of a gas oven by their table. */
import Fraction from 'fraction.js';
import { larder } from '../larder/load.js';

/** SP 811, appendix B.8: t/°F = 1.8 t/°C + 32. */
export function celsiusToFahrenheit(celsius: Fraction): Fraction {
  return celsius.mul(9, 5).add(32);
}

/** SP 811, appendix B.8: t/°C = (t/°F − 32) / 1.8. */
export function fahrenheitToCelsius(fahrenheit: Fraction): Fraction {
  return fahrenheit.sub(32).mul(5, 9);
}

/** A mark of a gas oven, with the oven temperatures that cookbooks print beside it. */
export interface GasMark {
  readonly mark: Fraction;
  readonly fahrenheit: Fraction;
  /** The usual figure. */
  readonly celsius: Fraction;
  /** All figures that books print, the usual one first. */
  readonly celsiusFigures: readonly Fraction[];
}

export const gasMarks: readonly GasMark[] = larder.ovenScale.map((row) => {
  const celsiusFigures = row.celsius.map((celsius) => new Fraction(celsius));
  return {
    mark: new Fraction(row.mark),
    fahrenheit: new Fraction(row.fahrenheit),
    celsius: celsiusFigures[0]!,
    celsiusFigures,
  };
});

/** The row of a gas mark, or null when ovens have no such mark. */
export function gasMark(mark: Fraction): GasMark | null {
  return gasMarks.find((row) => row.mark.equals(mark)) ?? null;
}

/** An oven temperature in degrees Celsius, whatever its scale; null for a gas mark that ovens do not have. */
export function toCelsius(value: Fraction, scale: 'fahrenheit' | 'celsius' | 'gas'): Fraction | null {
  if (scale === 'celsius') return value;
  if (scale === 'fahrenheit') return fahrenheitToCelsius(value);
  return gasMark(value)?.celsius ?? null;
}

/** An oven temperature in degrees Fahrenheit, whatever its scale; null for a gas mark that ovens do not have. */
export function toFahrenheit(value: Fraction, scale: 'fahrenheit' | 'celsius' | 'gas'): Fraction | null {
  if (scale === 'fahrenheit') return value;
  if (scale === 'celsius') return celsiusToFahrenheit(value);
  return gasMark(value)?.fahrenheit ?? null;
}
