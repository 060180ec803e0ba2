/** Knows whether a raw food is cooked so long that it is past its safe minimum beyond doubt. */
import Fraction from 'fraction.js';
import type { Duration } from '../grammar/types.js';
import { does } from '../larder/techniques.js';
import type { SafetyClass } from '../larder/types.js';
import { type Speech, type Stretch, sentenceAt, wordAt } from './stretches.js';
import type { Heating } from './types.js';
import { verbAt, type Words } from './words.js';

/** A pot that simmers this long is past every safe minimum (common practice). */
const LONG_SECONDS = new Fraction(3600);
/** So is meat that bakes or smokes this long, birds aside, which are roasted whole (common practice). */
const LONG_DRY_SECONDS = new Fraction(3 * 3600);
/** Crumbs and small pieces are done through in a pot much sooner (common practice). */
const LONG_SECONDS_IN_BITS = new Fraction(1200);
/** Browned beforehand, they need less still (common practice). */
const LONG_SECONDS_BROWNED = new Fraction(900);
/** And so are meatballs in a sauce, and pieces of chicken by any heat (common practice). */
const LONG_SECONDS_SMALL = new Fraction(1800);
/** Under pressure food cooks at about 250°F (121°C), and faster (common practice). */
const LONG_SECONDS_UNDER_PRESSURE = new Fraction(480);

/** Whether it boils, braises, stews, bakes or cooks under pressure so long that it is beyond doubt. */
export function isLong(
  words: readonly Words[],
  speech: Speech,
  cookings: readonly Heating[],
  { safety, ground, bits }: { safety: SafetyClass; ground: boolean; bits: boolean },
): boolean {
  const total = (end: 'least' | 'most', isCounted: (cooking: Heating) => boolean): Fraction => {
    const durations = new Set(cookings.filter(isCounted).flatMap((cooking) => timesOf(words, cooking)));
    return [...durations].reduce((sum, duration) => sum.add(secondsOf(duration, end)), new Fraction(0));
  };
  const isDry = ({ technique }: Heating): boolean => does(technique, 'dry-heat');
  const isWet = (cooking: Heating): boolean => !isDry(cooking);
  // "45 to 60 minutes" is an hour to who simmers a bird for it.
  if (total('most', isWet).gte(LONG_SECONDS)) return true;
  const closed = new Set(speech('under-pressure').map(({ step }) => step));
  const pressed = total('least', ({ step }) => closed.has(step));
  if (pressed.gte(LONG_SECONDS_UNDER_PRESSURE)) return true;
  const wet = total('least', isWet);
  const dry = total('least', isDry);
  if (safety !== 'poultry' && dry.gte(LONG_DRY_SECONDS)) return true;
  if (bits && safety === 'poultry' && wet.add(dry).gte(LONG_SECONDS_SMALL)) return true;
  if (ground && wet.gte(LONG_SECONDS_SMALL)) return true;
  if (bits && ground && cooksOn(words, speech, cookings)) return true;
  return (bits || safety === 'fish') && wet.gte(LONG_SECONDS_IN_BITS);
}

/** Crumbs that are fried until they are brown or fall apart, and then simmer or bake on in the dish. */
function cooksOn(words: readonly Words[], speech: Speech, cookings: readonly Heating[]): boolean {
  const [first] = cookings;
  if (first === undefined || !first.cued || does(first.technique, 'oven')) return false;
  // "Into the oven with it, 30 minutes" names no order to cook.
  const placed = speech('heat-place').filter(({ step }) => step > first.step);
  const times = [
    ...cookings.filter(({ step }) => step > first.step).flatMap((cooking) => timesOf(words, cooking)),
    ...placed.flatMap(({ step, at }) => durationsOf(words[step]!, sentenceAt(words[step]!, at))),
  ];
  const total = [...new Set(times)].reduce(
    (sum, duration) => sum.add(secondsOf(duration, 'least')),
    new Fraction(0),
  );
  return total.gte(LONG_SECONDS_BROWNED);
}

function durationsOf({ items, at }: Words, { from, to }: Stretch): Duration[] {
  return items
    .slice(at[from], at[to] ?? items.length)
    .filter((item): item is Duration => item.kind === 'duration');
}

/** The times of a cooking's sentence that are not those of a rest or a marinade: "chill for 2 hours, then grill". */
function timesOf(words: readonly Words[], { step, durations }: Heating): Duration[] {
  const here = words[step]!;
  return durations.filter((duration) => {
    const { from } = sentenceAt(here, wordAt(here, Math.max(0, duration.start - 1)));
    for (let at = wordAt(here, duration.start) - 1; at >= from; at--) {
      const verb = verbAt(here, at);
      if (verb === null || here.keys[at]!.endsWith('ing')) continue;
      if (does(verb, 'heat')) return true;
      if (does(verb, 'hold', 'chill', 'rest')) return false;
    }
    return true;
  });
}

/** One end of a duration; a night is long enough for anything. */
function secondsOf({ seconds, unit }: Duration, end: 'least' | 'most'): Fraction {
  if (seconds === null) return unit === 'night' ? LONG_DRY_SECONDS : new Fraction(0);
  const isUpwards = seconds.low.lte(seconds.high);
  return isUpwards === (end === 'least') ? seconds.low : seconds.high;
}
