/** Finds where a recipe tells one length of time twice, and whether the two agree. */
import type Fraction from 'fraction.js';
import { isLonger } from '../arithmetic/times.js';
import type { TimeSpan } from '../grammar/stated-time.js';
import { minutes } from './minutes.js';
import { type ReadTime, type StatedTimes, statedTimesOf, together } from './stated-times.js';
import { type StepTime, stepTimesOf, waitsUntold } from './step-times.js';
import { stepPart, type TimePair, type TimesTold } from './time-pair.js';
import { mayTellTimes, type Promised, promisesOf, retellingsOf } from './told-times.js';
import type { Dish } from './types.js';

/** Every comparison that the recipe allows, in the order above. */
export function timePairsOf(dish: Dish): TimePair[] {
  if (!tellsTimes(dish)) return [];
  const times = statedTimesOf(dish);
  const steps = stepTimesOf(dish);
  const found = [...sums(dish, times, steps), ...againstSteps(times, steps, dish)];
  for (const promise of promisesOf(dish)) found.push(...kept(promise, times, steps, dish));
  return [...found, ...retellingsOf(dish, steps)];
}

/** Whether anything outside of the method tells a time: else there is nothing to compare. */
function tellsTimes(dish: Dish): boolean {
  return dish.recipe.times.length > 0 || mayTellTimes(dish.recipe);
}

const partOf = ({ stated, span }: ReadTime): TimePair['parts'][number] => ({
  span: stated.value.span(),
  low: span.low,
  high: span.high,
});

const markOf = ({ stated }: ReadTime): TimePair['marked'] => ({
  span: stated.value.span(),
  words: stated.value.text,
});

function sums(dish: Dish, times: StatedTimes, steps: readonly StepTime[]): TimePair[] {
  const { total, active, prep, cook, rest } = times;
  if (total === null) return [];
  const found: TimePair[] = [];
  const pair = (compares: TimesTold, agree: boolean, certain: boolean, parts: readonly ReadTime[]): void => {
    found.push({
      compares,
      agree,
      certain,
      marked: markOf(total),
      stated: total.span,
      parts: parts.map(partOf),
      reckoned: together(parts),
    });
  };
  if (active !== null)
    pair('sum', total.span.open || !isLonger(active.span.low, total.span.high, 'sum'), true, [active]);
  const working = [...prep, ...cook];
  const all = [...working, ...rest];
  if (working.length === 0) return found;
  if (!total.span.open) {
    const short = isLonger(together(working).low, total.span.high, 'sum');
    const shortOfRest = isLonger(together(all).low, total.span.high, 'sum');
    // A short wait may have been counted with the preparing; a longer one than that cannot.
    const apart = together(rest).low.gt(together(prep).high);
    pair('sum', !shortOfRest, short || apart, short ? working : all);
    if (shortOfRest) return found;
  }
  const known = prep.length > 0 && cook.length > 0 && active === null && !together(all).open;
  if (!known || waitsUntold(dish)) return found;
  const waiting =
    rest.length > 0
      ? minutes(0)
      : sumOf(
          steps.filter(({ kind }) => kind === 'waiting'),
          'high',
        );
  const longer = isLonger(total.span.low, together(all).high.add(waiting), 'unexplained');
  if (longer) pair('unexplained', false, false, all);
  return found;
}

/** The steps against the time before the recipe: the total, or preparing and cooking together. */
function againstSteps(times: StatedTimes, steps: readonly StepTime[], dish: Dish): TimePair[] {
  const limit = limitOf(times);
  if (limit === null || dish.recipe.steps.length === 0) return [];
  const heat = steps.filter((time) => time.kind === 'heat');
  const longest = heat.reduce<StepTime | null>(
    (most, time) => (most === null || time.low.gt(most.low) ? time : most),
    null,
  );
  const found: TimePair[] = [];
  if (longest !== null) {
    const over = isLonger(longest.low, limit.span.high, 'steps');
    found.push(pairOf('step', limit, [longest], !over, true, dish));
    if (over) return found;
    // Cooking that is done beforehand may be counted with the preparing, but that is the author's to say.
    const cook = times.cook.length === 1 ? times.cook[0]! : null;
    if (cook !== null && !cook.span.open && isLonger(longest.low, cook.span.high, 'steps')) {
      found.push(pairOf('step', { marked: markOf(cook), span: cook.span }, [longest], false, false, dish));
      return found;
    }
    const row = heat.filter((time) => !time.beside);
    const overAll = isLonger(sumOf(row, 'low'), limit.span.high, 'steps-in-all');
    if (row.length > 1) found.push(pairOf('steps', limit, row, !overAll, false, dish));
    if (overAll) return found;
  }
  found.push(...soleStep(times, steps, dish));
  if (times.total === null) return found;
  const row = steps.filter((time) => time.kind !== 'work' && !time.beside);
  if (row.length > heat.length) {
    const over = isLonger(sumOf(row, 'low'), limit.span.high, 'steps-in-all');
    found.push(pairOf('waiting', limit, row, !over, false, dish));
  }
  return found;
}

/** A cooking time against the only step that is on the stove: they time the same thing. */
function soleStep({ cook }: StatedTimes, steps: readonly StepTime[], dish: Dish): TimePair[] {
  const heat = steps.filter((time) => time.kind === 'heat');
  const [time] = heat;
  const [stated] = cook;
  if (time === undefined || stated === undefined || heat.length > 1 || cook.length > 1 || stated.span.open)
    return [];
  if (dish.heatings.filter(({ technique }) => !technique.ends).length !== 1) return [];
  const limit = { marked: markOf(stated), span: stated.span };
  // What else the method times may be counted in.
  const agree = !isLonger(stated.span.low, sumOf(steps, 'high'), 'unexplained');
  return [pairOf('sole-step', limit, [time], agree, false, dish)];
}

interface Limit {
  readonly marked: TimePair['marked'];
  readonly span: TimeSpan;
}

/** The time before the recipe that its steps have to fit into; null where it states none, or leaves it open. */
function limitOf({ total, prep, cook, rest }: StatedTimes): Limit | null {
  if (total !== null) return total.span.open ? null : { marked: markOf(total), span: total.span };
  const all = together([...prep, ...cook, ...rest]);
  if (cook.length === 0 || all.open) return null;
  return { marked: markOf(cook[0]!), span: all };
}

function pairOf(
  compares: TimesTold,
  limit: Limit,
  steps: readonly StepTime[],
  agree: boolean,
  certain: boolean,
  dish: Dish,
): TimePair {
  return {
    compares,
    agree,
    certain,
    marked: limit.marked,
    stated: limit.span,
    parts: steps.map((time) => stepPart(dish, time)),
    reckoned: { low: sumOf(steps, 'low'), high: sumOf(steps, 'high') },
  };
}

/** A promise against the total, else against preparing and cooking, else against the steps. */
function kept(promise: Promised, times: StatedTimes, steps: readonly StepTime[], dish: Dish): TimePair[] {
  const marked = {
    span: promise.passage.span(promise.start, promise.end),
    words: promise.passage.text.slice(promise.start, promise.end),
  };
  const stated = times.total === null ? [...times.prep, ...times.cook] : [times.total];
  if (times.total !== null || times.cook.length > 0) {
    const reckoned = together(stated);
    const agree = !isLonger(reckoned.low, promise.span.high, 'promise');
    return [
      {
        compares: 'promise',
        agree,
        certain: !reckoned.open,
        marked,
        stated: promise.span,
        parts: stated.map(partOf),
        reckoned,
      },
    ];
  }
  const row = steps.filter((time) => !time.beside);
  if (row.length === 0) return [];
  const reckoned = { low: sumOf(row, 'low'), high: sumOf(row, 'high') };
  const agree = !isLonger(reckoned.low, promise.span.high, 'promise');
  // Steps may go on side by side, but no step is shorter than itself.
  const certain = row.some(
    (time) => time.kind === 'heat' && isLonger(time.low, promise.span.high, 'promise'),
  );
  return [
    {
      compares: 'promise',
      agree,
      certain,
      marked,
      stated: promise.span,
      parts: row.map((time) => stepPart(dish, time)),
      reckoned,
    },
  ];
}

function sumOf(steps: readonly StepTime[], end: 'low' | 'high'): Fraction {
  return steps.reduce((sum, time) => sum.add(time[end]), minutes(0));
}
