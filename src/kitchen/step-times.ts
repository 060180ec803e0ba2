/** Knows how long each step of a method takes, as far as it says: time on the stove, time of waiting, time of work. */
import type Fraction from 'fraction.js';
import type { Duration, Item } from '../grammar/types.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { does } from '../larder/techniques.js';
import type { Technique } from '../larder/types.js';
import { says } from './sentences.js';
import type { Dish } from './types.js';
import { LONGEST_CLAUSE, verbAt, type Words } from './words.js';

/** A length of time that the method adds to the whole: not "every 5 minutes", nor one that is left to the cook. */
export interface StepTime {
  readonly step: number;
  readonly item: Duration;
  readonly low: Fraction;
  readonly high: Fraction;
  readonly kind: 'heat' | 'waiting' | 'work';
  readonly technique: Technique | null;
  /** Goes on beside something else: "meanwhile", "while the rice cooks". */
  readonly beside: boolean;
}

/** The times of all steps, in order. */
export function stepTimesOf(dish: Dish): StepTime[] {
  return dish.steps.flatMap(({ step, words }) => timesIn(step.index, words));
}

/** Whether the method waits for a time that it does not tell: "chill overnight", "leave to rise until doubled". */
export function waitsUntold(dish: Dish): boolean {
  return dish.steps.some(({ words, items }) => {
    if (items.some((item) => item.kind === 'duration' && item.seconds === null)) return true;
    return says(words.keys, 'passive') && !timesIn(0, words).some((time) => time.kind === 'waiting');
  });
}

/** How many words before or behind a length of time may say what it is. */
const REACH = 2;

function timesIn(step: number, words: Words): StepTime[] {
  const found: StepTime[] = [];
  let next = 0;
  let before = -1;
  words.items.forEach((item, index) => {
    while (next < words.at.length && words.at[next]! < index) next++;
    if (item.kind !== 'duration' || item.seconds === null) return;
    const time = timeAt(step, words, item, index, next, before);
    if (time !== null) found.push(time);
    before = index;
  });
  return found;
}

/** The time at item `index`, before which `next` words stand; `earlier` is the item of the time before it. */
function timeAt(
  step: number,
  words: Words,
  item: Duration,
  index: number,
  next: number,
  earlier: number,
): StepTime | null {
  const { low, high, approximation } = item.seconds!;
  const sentence =
    next > 0 && !endsBetween(words, next - 1, index) ? words.sentence[next - 1] : words.sentence[next];
  if (low.gt(high) || sentence === undefined || approximation === 'up-to' || item.unit === 'day') return null;
  const [from, to] = clauseAt(words, next, sentence);
  const keys = words.keys.slice(from, to);
  const technique = verbBefore(words, next, from);
  // "When the fruit has been cooking for 3 hours" tells of an earlier step once more.
  const retold =
    technique !== null && words.keys.slice(from, next).some((key) => isWord(key, 'looking-back'));
  if (retold && isGerund(words, next, from)) return null;
  if (says(keys, 'maybe') || isPart(words, next, from, to, technique)) return null;
  if (isAlternative(words.items, earlier, index)) return null;
  const heats = technique !== null && does(technique, 'heat');
  const waits = technique !== null ? does(technique, 'chill', 'rest', 'hold') : says(keys, 'passive');
  return {
    step,
    item,
    low,
    high,
    kind: heats ? 'heat' : waits ? 'waiting' : 'work',
    technique,
    beside: says(keys, 'meanwhile'),
  };
}

/** The order that the time before word `next` belongs to: "simmer, stirring often, for 20 minutes" simmers so long. */
function verbBefore(words: Words, next: number, from: number): Technique | null {
  let beside: Technique | null = null;
  for (let at = next - 1; at >= from; at--) {
    const verb = verbAt(words, at);
    if (verb === null || tellsUntil(words, at)) continue;
    if (!words.keys[at]!.endsWith('ing')) return verb;
    beside ??= verb;
  }
  return beside;
}

/** Whether the verb nearest to the time is an -ing form. */
function isGerund(words: Words, next: number, from: number): boolean {
  for (let at = next - 1; at >= from; at--)
    if (verbAt(words, at) !== null) return words.keys[at]!.endsWith('ing');
  return false;
}

/** "Until crisp", "until the crust browns": what looks like an order tells when to stop. */
function tellsUntil(words: Words, at: number): boolean {
  for (
    let index = at - 1;
    index >= 0 && index >= at - UNTIL_REACH && words.before[index + 1] === '';
    index--
  ) {
    const phrase = phraseAt(words.keys, index, 'until');
    if (phrase !== null && phrase.means === null) return true;
  }
  return false;
}

const UNTIL_REACH = 3;

/** The words of the sentence around the place before word `next`, as far as a clause reaches. */
function clauseAt(words: Words, next: number, sentence: number): [from: number, to: number] {
  let from = next;
  let to = next;
  while (from > 0 && from > next - LONGEST_CLAUSE && words.sentence[from - 1] === sentence) from--;
  while (to < words.keys.length && to < next + LONGEST_CLAUSE && words.sentence[to] === sentence) to++;
  return [from, to];
}

/** "Every 5 minutes", "10 minutes before serving": a part of another time. */
function isPart(words: Words, next: number, from: number, to: number, verb: Technique | null): boolean {
  for (let at = Math.max(from, next - REACH); at < next; at++) {
    const phrase = phraseAt(words.keys, at, 'part-time', next);
    if (phrase !== null && at + phrase.length === next) return true;
  }
  // "Let it rest for 10 minutes before serving" is a time of its own.
  return verb === null && next < to && phraseAt(words.keys, next, 'time-left-over', to) !== null;
}

/** "20 minutes at 350°F or 15 minutes at 375°F": the second is instead of the first. */
function isAlternative(items: readonly Item[], earlier: number, index: number): boolean {
  if (earlier < 0) return false;
  const between = items.slice(earlier + 1, index);
  return (
    !between.some((item) => item.kind === 'point' && /[.!?\n]/.test(item.text)) &&
    between.some((item) => item.kind === 'word' && isWord(item.key, 'choice'))
  );
}

/** Whether a sentence ends between a word and the item. */
function endsBetween(words: Words, word: number, index: number): boolean {
  return words.items
    .slice(words.at[word]! + 1, index)
    .some((item) => item.kind === 'point' && /[.!?;\n]/.test(item.text));
}
