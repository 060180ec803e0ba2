/** Knows the scales of heat: Celsius and Fahrenheit exactly, and the marks of a gas oven by their table. */
import Fraction from 'fraction.js';

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
  readonly celsius: Fraction;
}

/**
 * The usual table of British cookbooks, from memory: each mark is 25°F, and Celsius is rounded to the ten that a dial shows.
 * Books differ by one step of 10°C at marks ½, 3 and 5, so a comparison has to allow that much.
 */
export const gasMarks: readonly GasMark[] = (
  [
    ['1/4', 225, 110],
    ['1/2', 250, 120],
    ['1', 275, 140],
    ['2', 300, 150],
    ['3', 325, 160],
    ['4', 350, 180],
    ['5', 375, 190],
    ['6', 400, 200],
    ['7', 425, 220],
    ['8', 450, 230],
    ['9', 475, 240],
  ] as const
).map(([mark, fahrenheit, celsius]) => ({
  mark: new Fraction(mark),
  fahrenheit: new Fraction(fahrenheit),
  celsius: new Fraction(celsius),
}));

/** How much lower a fan oven is set, in degrees Celsius (common practice; maker's booklets say 10 to 25). */
export const fanDropCelsius = new Fraction(20);

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
