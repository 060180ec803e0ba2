/** Reads a stated time: "45 min", "1 h 20", "PT1H30M", "20 minutes plus chilling". */
import Fraction from 'fraction.js';
import { unitById } from '../larder/units.js';
import { readText } from './text.js';
import type { Item } from './types.js';

/** A length of time in seconds. `open` where the words say that more may come to it: "plus chilling", "at least". */
export interface TimeSpan {
  readonly low: Fraction;
  readonly high: Fraction;
  readonly open: boolean;
}

/** The time that a value states; null where it states none, or one for each of several things ("5 minutes a day"). */
export function readTime(text: string, items: readonly Item[] = readText(text)): TimeSpan | null {
  const coded = text.includes('P') ? ISO_DURATION.exec(text.trim()) : null;
  if (coded === null) return ofItems(items);
  const [, days = '0', hours = '0', min = '0'] = coded;
  const seconds = times('day', days).add(times('hour', hours)).add(times('minute', min));
  return seconds.equals(0) ? null : { low: seconds, high: seconds, open: false };
}

function ofItems(items: readonly Item[]): TimeSpan | null {
  const at = items.findIndex((item) => item.kind === 'duration');
  const first = items[at];
  if (first?.kind !== 'duration' || first.seconds === null) return null;
  const { low, high, approximation } = first.seconds;
  if (low.gt(high)) return null;
  const rest = items.slice(at + 1);
  // "1 hr 20": the minutes stand without their name.
  const [next] = rest;
  if (next?.kind === 'count' && rest.length === 1 && first.unit === 'hour' && low.equals(high)) {
    const seconds = low.add(times('minute', next.amount.low.toString()));
    return { low: seconds, high: seconds, open: false };
  }
  if (next?.kind === 'point' && next.text === '/') return null;
  const open =
    approximation === 'at-least' || rest.some((item) => item.kind !== 'point' || item.text === '+');
  // What stands before the first length of time ("about", "up to") is part of it, or speaks of something else.
  return at > 1 ? null : { low: approximation === 'up-to' ? ZERO : low, high, open };
}

/** ISO 8601, 4.4: "PT1H30M", as front matter has it. */
const ISO_DURATION = /^P(?:(\d+)D)?(?:T(?:(\d+)H)?(?:(\d+)M)?)?$/;
const ZERO = new Fraction(0);

function times(unit: 'day' | 'hour' | 'minute', count: string): Fraction {
  return new Fraction(unitById(unit).seconds!).mul(count);
}
