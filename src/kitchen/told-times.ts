/** Finds times that a title, headnote or note tells of the recipe: promises of how long it takes, and steps timed once more. */
import type Fraction from 'fraction.js';
import type { Recipe } from '../anatomy/types.js';
import { isLonger } from '../arithmetic/times.js';
import type { TimeSpan } from '../grammar/stated-time.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Technique } from '../larder/types.js';
import type { Passage } from '../manuscript/passage.js';
import { minutes } from './minutes.js';
import { says } from './sentences.js';
import type { StepTime } from './step-times.js';
import { stepPart, type TimePair } from './time-pair.js';
import type { Dish } from './types.js';
import { type Words, wordsOf } from './words.js';

/** A time within which the dish is promised: offsets into the passage's text. */
export interface Promised {
  readonly passage: Passage;
  readonly start: number;
  readonly end: number;
  readonly span: TimeSpan;
}

/** Whether title, headnote or notes have a length of time in them. */
export function mayTellTimes({ title, headnote, notes }: Recipe): boolean {
  return (
    (title !== null && TIME.test(title.text)) || [...headnote, ...notes].some(({ text }) => TIME.test(text))
  );
}

/** What title and headnote promise: "30-Minute Soup", "on the table in half an hour". */
export function promisesOf(dish: Dish): Promised[] {
  const { title, headnote } = dish.recipe;
  const found: Promised[] = [];
  for (const passage of title === null ? headnote : [title, ...headnote]) {
    for (const told of timesToldIn(passage)) {
      if (passage === title || isPromise(told))
        found.push({ passage, start: told.start, end: told.end, span: told.span });
    }
  }
  return found;
}

/** The steps that headnote and notes time once more: "it bakes for 40 minutes". */
export function retellingsOf(dish: Dish, steps: readonly StepTime[]): TimePair[] {
  const found: TimePair[] = [];
  for (const passage of [...dish.recipe.headnote, ...dish.recipe.notes]) {
    for (const told of timesToldIn(passage)) {
      const technique = says(told.keys, 'maybe') || says(told.keys, 'variant') ? null : verbBeside(told);
      const same = steps.filter((time) => technique !== null && time.technique === technique);
      if (same.length === 0) continue;
      const low = same.reduce((sum, time) => sum.add(time.low), minutes(0));
      const high = same.reduce((sum, time) => sum.add(time.high), minutes(0));
      const agree = overlaps(told.span, { low, high }) || same.some((time) => overlaps(told.span, time));
      found.push({
        compares: 'same-step',
        agree,
        certain: false,
        marked: {
          span: passage.span(told.start, told.end),
          words: passage.text.slice(told.start, told.end),
        },
        stated: told.span,
        parts: same.map((time) => stepPart(dish, time)),
        reckoned: { low, high },
      });
    }
  }
  return found;
}

interface Told {
  readonly start: number;
  readonly end: number;
  readonly span: TimeSpan;
  readonly words: Words;
  /** The first word behind it, and the words of its sentence. */
  readonly next: number;
  readonly keys: readonly string[];
}

/** How many words before or behind a time may say what it is of. */
const REACH = 4;

/** The minutes and hours of a passage: days are those of keeping. */
function timesToldIn(passage: Passage): Told[] {
  if (!TIME.test(passage.text)) return [];
  const words = wordsOf(passage.text);
  const found: Told[] = [];
  let next = 0;
  words.items.forEach((item, index) => {
    while (next < words.at.length && words.at[next]! < index) next++;
    if (item.kind !== 'duration' || item.seconds === null || item.unit === 'day' || item.unit === 'week')
      return;
    const { low, high, approximation } = item.seconds;
    if (low.gt(high) || approximation === 'at-least') return;
    const sentence = words.sentence[next] ?? words.sentence[next - 1] ?? 0;
    const near = words.keys.slice(Math.max(0, next - SENTENCE_REACH), next + SENTENCE_REACH);
    const first = Math.max(0, next - SENTENCE_REACH);
    found.push({
      start: item.start,
      end: item.end,
      span: { low, high, open: false },
      words,
      next,
      keys: near.filter((_, at) => words.sentence[first + at] === sentence),
    });
  });
  return found;
}

/** How far a sentence is looked through on either side of a time. */
const SENTENCE_REACH = 30;
/** A quick look that spares most headnotes the long one. */
const TIME = /minute|hour|\bmins?\b|\bhrs?\b/i;

/** Whether the words around the time promise the whole dish in it, and no part of the work. */
function isPromise({ words, next, keys }: Told): boolean {
  if (says(keys, 'maybe')) return false;
  const behind = (is: 'promised-part' | 'promised-dish'): boolean => {
    for (let at = next; at < Math.min(words.keys.length, next + REACH); at++) {
      if (at > next && words.before[at] !== '') return false;
      if (phraseAt(words.keys, at, is) !== null) return true;
    }
    return false;
  };
  if (behind('promised-part')) return false;
  for (let at = Math.max(0, next - REACH); at < next; at++) {
    const phrase = phraseAt(words.keys, at, 'promise', next);
    if (phrase !== null && at + phrase.length === next && words.sentence[at] === words.sentence[next - 1])
      return true;
  }
  return words.items[words.at[next]! - 1]?.kind === 'duration' && behind('promised-dish');
}

/** The verb of the stove right beside the time: "bakes for 40 minutes", "40 minutes to bake". */
function verbBeside({ words, next }: Told): Technique | null {
  for (let away = 1; away <= REACH; away++) {
    for (const at of [next - away, next + away - 1]) {
      const match = words.keys[at] === undefined ? null : techniqueOf(words.keys[at]!);
      if (match === null || !does(match.technique, 'heat') || match.technique.ends) continue;
      const between = words.keys.slice(Math.min(at, next), Math.max(at, next));
      if (!between.some((key) => isWord(key, 'part-time'))) return match.technique;
    }
  }
  return null;
}

function overlaps(one: { low: Fraction; high: Fraction }, other: { low: Fraction; high: Fraction }): boolean {
  return !isLonger(one.low, other.high, 'same-step') && !isLonger(other.low, one.high, 'same-step');
}
