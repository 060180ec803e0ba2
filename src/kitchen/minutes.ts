/** Lengths of time in seconds. */
import Fraction from 'fraction.js';
import { unitById } from '../larder/units.js';

/** So many minutes, in seconds. */
export function minutes(count: number): Fraction {
  return MINUTE.mul(count);
}

const MINUTE = new Fraction(unitById('minute').seconds!);
