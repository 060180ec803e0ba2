/** Knows the times that a recipe states for itself: of preparing, cooking, waiting, and in all. */
import Fraction from 'fraction.js';
import type { StatedTime } from '../anatomy/types.js';
import { readTime, type TimeSpan } from '../grammar/stated-time.js';
import { speaksOf } from '../larder/kitchen-words.js';
import type { Dish } from './types.js';

export interface ReadTime {
  readonly stated: StatedTime;
  readonly span: TimeSpan;
}

/** The times before the recipe, by what they are. */
export interface StatedTimes {
  readonly prep: readonly ReadTime[];
  readonly cook: readonly ReadTime[];
  readonly rest: readonly ReadTime[];
  readonly total: ReadTime | null;
  /** "Active time", which counts the hands and not the stove: it is a part of the total that overlaps the others. */
  readonly active: ReadTime | null;
}

/** What the recipe states; a time that cannot be read is left out. */
export function statedTimesOf(dish: Dish): StatedTimes {
  const parts = dish.parts.filter(({ part }) => part === 'time');
  const read = dish.recipe.times.flatMap((stated) => {
    const span = readTime(stated.value.text, parts.find(({ passage }) => passage === stated.value)?.items);
    return span === null ? [] : [{ stated, span }];
  });
  const active = read.find((time) => isActive(time.stated)) ?? null;
  const of = (kind: StatedTime['kind']): ReadTime[] =>
    read.filter((time, at) => time.stated.kind === kind && !isActive(time.stated) && !isTwice(read, at));
  return {
    prep: of('prep'),
    cook: of('cook'),
    rest: of('rest'),
    total: of('total')[0] ?? null,
    active,
  };
}

/** The times of several parts together; open where one of them is. */
export function together(times: readonly ReadTime[]): TimeSpan {
  return times.reduce<TimeSpan>(
    (sum, { span }) => ({
      low: sum.low.add(span.low),
      high: sum.high.add(span.high),
      open: sum.open || span.open,
    }),
    { low: NOTHING, high: NOTHING, open: false },
  );
}

const NOTHING = new Fraction(0);

function isActive(stated: StatedTime): boolean {
  const label = stated.passage.text.slice(0, Math.max(0, stated.passage.text.lastIndexOf(stated.value.text)));
  return speaksOf(label, 'active-time');
}

/** Whether an earlier one states the same: in the front matter and again on the page. */
function isTwice(read: readonly ReadTime[], at: number): boolean {
  const { stated, span } = read[at]!;
  return read
    .slice(0, at)
    .some(
      (one) =>
        one.stated.kind === stated.kind && one.span.low.equals(span.low) && one.span.high.equals(span.high),
    );
}
