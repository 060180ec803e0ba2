/** Knows the bounds of what an oven is set to. */
import Fraction from 'fraction.js';
import type { Temperature } from '../grammar/types.js';
import { larder } from '../larder/load.js';
import { gasMark, gasMarks } from './temperatures.js';

/** Whether a temperature is hot enough to be an oven's rather than the food's or the water's. */
export function isOvenHeat(item: Temperature): boolean {
  return item.scale === 'gas' || item.amount.high.gte(boundOn(item, 'coolest'));
}

/** Whether a temperature is beyond what a home oven does; a mark that gas ovens do not have is. */
export function isTooHot(item: Temperature): boolean {
  const { high } = item.amount;
  if (item.scale === 'gas') return gasMark(high) === null && high.gt(gasMarks.at(-1)!.mark);
  return high.gt(boundOn(item, 'hottest'));
}

/** The bound on the temperature's own scale; without a scale the one that leaves more room. */
export function boundOn(item: Temperature, what: 'coolest' | 'hottest'): Fraction {
  const row = larder.ovenLimits.find((each) => each.what === what)!;
  const fahrenheit = item.scale === 'fahrenheit' || (item.scale === null && what === 'hottest');
  return new Fraction(fahrenheit ? row.fahrenheit : row.celsius);
}
