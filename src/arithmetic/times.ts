/** Knows how far two lengths of time may lie apart, and prints them as a recipe would. */
import Fraction from 'fraction.js';
import { larder } from '../larder/load.js';

/** What is compared: see time-tolerances.yaml. */
export type TimesCompared = (typeof larder.timeTolerances)[number]['compares'];

/** Whether the longer of two times in seconds is longer by more than the table allows. */
export function isLonger(one: Fraction, other: Fraction, compared: TimesCompared): boolean {
  if (one.lte(other)) return false;
  const { least, share } = tolerances.get(compared)!;
  const gap = one.sub(other);
  return gap.gt(least) && gap.gt(one.mul(share));
}

/** "1 hour 20 minutes", "40 to 60 minutes". */
export function timeText(low: Fraction, high: Fraction = low): string {
  if (low.equals(high)) return lengthText(low);
  const [first, last] = [lengthText(low), lengthText(high)];
  const [number, ...unit] = first.split(' ');
  const sameUnit = unit.join(' ').replace(/s$/, '') === last.split(' ').slice(1).join(' ').replace(/s$/, '');
  return sameUnit ? `${number} to ${last}` : `${first} to ${last}`;
}

const SECONDS_PER_MINUTE = 60;

/** The table's rows: seconds, and the share of the longer one. */
const tolerances = new Map(
  larder.timeTolerances.map((row) => [
    row.compares,
    { least: new Fraction(row.minutes).mul(SECONDS_PER_MINUTE), share: new Fraction(row.share) },
  ]),
);
const MINUTES_PER_HOUR = 60;
/** From here on hours say more than minutes: nobody counts 90 minutes as one and a half hours, and 2 hours as 120 minutes. */
const LEAST_MINUTES_IN_HOURS = 60;

function lengthText(seconds: Fraction): string {
  if (seconds.lt(SECONDS_PER_MINUTE)) return counted(Number(seconds.round().toString()), 'second');
  const minutes = Number(seconds.div(SECONDS_PER_MINUTE).round().toString());
  if (minutes < LEAST_MINUTES_IN_HOURS) return counted(minutes, 'minute');
  const hours = counted(Math.floor(minutes / MINUTES_PER_HOUR), 'hour');
  const rest = minutes % MINUTES_PER_HOUR;
  return rest === 0 ? hours : `${hours} ${counted(rest, 'minute')}`;
}

function counted(count: number, unit: string): string {
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
