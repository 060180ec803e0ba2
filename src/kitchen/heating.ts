/** Finds where the method cooks something, how long, and whether it says how the food is when it is done. */

import type { Duration, Item } from '../grammar/types.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { does } from '../larder/techniques.js';
import { vesselAt } from '../larder/vessels.js';
import { clauseOf } from './context.js';
import { cooksTo } from './done-temperatures.js';
import { lastMentionBefore, mentionsWithin } from './stretches.js';
import type { Heating, Mention, ReadStep } from './types.js';
import { verbAt, type Words } from './words.js';

/** The orders to cook in each step, in order. */
export function heatingsOf(
  steps: readonly ReadStep[],
  words: readonly Words[],
  mentions: readonly Mention[],
): Heating[] {
  const found = steps.flatMap((step, index) =>
    heatingsIn(step, words[index]!, words[index + 1] ?? null, mentions),
  );
  return found.map((heating, index) =>
    isFirstStage(heating, found[index + 1]) ? { ...heating, cued: true } : heating,
  );
}

/** "Bake for 20 minutes. Uncover and bake until golden": two stages of one bake, of which the last says when it is done. */
function isFirstStage(heating: Heating, next: Heating | undefined): boolean {
  if (next === undefined || next.technique !== heating.technique || next.step - heating.step > 1)
    return false;
  return next.cued && does(heating.technique, 'oven');
}

function heatingsIn(
  step: ReadStep,
  words: Words,
  next: Words | null,
  mentions: readonly Mention[],
): Heating[] {
  const found: Heating[] = [];
  const here = mentionsWithin(mentions, step.step.index);
  const listings = [...new Set(here.flatMap((mention) => mention.listings))];
  for (let at = 0; at < words.keys.length; at++) {
    const technique = verbAt(words, at);
    if (technique === null || !does(technique, 'heat') || isInName(words, at, step.step.index, mentions))
      continue;
    const durations = durationsIn(words, at);
    if (isNoOrder(words, at, durations)) continue;
    found.push({
      step: step.step.index,
      technique,
      start: words.words[at]!.start,
      end: words.words[at]!.end,
      durations,
      cued: isCued(words, at, next, durations.length > 0),
      listings,
      objects: objectsOf(words, at, step.step.index, mentions),
    });
  }
  return found;
}

/** "Liquid smoke", "the stew meat": a word of a food's name, behind its first. */
function isInName(words: Words, at: number, step: number, mentions: readonly Mention[]): boolean {
  const { start, end } = words.words[at]!;
  const before = lastMentionBefore(mentions, step, start, () => true);
  return before !== null && before.step === step && before.end >= end;
}

/** What the verb at word `at` names: the foods behind it, as far as nothing but "and" and commas comes between verb and verb. */
function objectsOf(words: Words, at: number, step: number, mentions: readonly Mention[]): Mention[] {
  let to = at + 1;
  while (
    to < words.keys.length &&
    to < at + FURTHEST_OBJECT &&
    words.sentence[to] === words.sentence[at] &&
    !isWord(words.keys[to], 'preposition') &&
    phraseAt(words.keys, to, 'until') === null &&
    verbAt(words, to) === null
  )
    to++;
  const from = words.words[at]!.end;
  const until = words.words[to - 1]!.end;
  return mentionsWithin(mentions, step, from, until).filter((mention) => mention.role !== 'aside');
}

/** How many words after an order to cook may still name what is cooked. */
const FURTHEST_OBJECT = 12;

/** Whether the verb gives no order: "while the pasta is boiling", "if you cook it", "bring it to boil", "boil some water". */
function isNoOrder(words: Words, at: number, durations: readonly Duration[]): boolean {
  const previous = words.before[at] === '' ? words.keys[at - 1] : undefined;
  if (previous === 'keep' || previous === 'continue') return false;
  if ((previous === 'begin' || previous === 'start') && durations.length > 0) return false;
  if (words.keys[at]!.endsWith('ing') && (words.before[at] === '' || previous === 'for')) return true;
  // "Let it simmer" is an order; "it simmers" and "don't let it boil" are none.
  const isLet = words.keys[at - 2] === 'let' && phraseAt(words.keys, at - 3, 'negation') === null;
  if (previous !== undefined && isWord(previous, 'subject') && !isLet) return true;
  if (isWord(words.keys[clauseStart(words, at)], 'clause-opening')) return true;
  if (
    previous === 'to' &&
    (durations.length === 0 ||
      words.keys.slice(Math.max(0, at - 6), at).some((key) => isWord(key, 'bringing')))
  )
    return true;
  // "Ignite the charcoal grill", "smoke comes off the oil": the verb's form is a thing.
  const isThing =
    words.before[at] === '' &&
    words.before[at - 1] === '' &&
    vesselAt(words.keys, at) !== null &&
    isWord(words.keys[at - 2], 'before-noun');
  if (isThing || isWord(words.keys[at + 1], 'bringing')) return true;
  return durations.length === 0 && boilsWater(words, at);
}

/** "Boil a large pot of salted water": water behind the verb before any other verb. */
function boilsWater(words: Words, at: number): boolean {
  for (
    let next = at + 1;
    next <= at + FURTHEST_WATER && words.sentence[next] === words.sentence[at];
    next++
  ) {
    if (words.keys[next] === 'water') return true;
    if (words.before[next] !== '' || verbAt(words, next) !== null) return false;
  }
  return false;
}

/** How many words after "boil" may name the water. */
const FURTHEST_WATER = 6;

/** The first word after the last punctuation before word `at`. */
function clauseStart(words: Words, at: number): number {
  let start = at;
  while (start > words.opening[at]! && words.before[start] === '') start--;
  return start;
}

/**
 * Whether the order at word `at` comes with a cue: in its sentence, in those after it until the next order to cook,
 * or, for the last order of a step, at the opening of the next step.
 */
function isCued(words: Words, at: number, next: Words | null, timed: boolean): boolean {
  const from = clauseOf(words, at)[0];
  let to = at;
  for (; to < words.keys.length && to < at + FURTHEST_CUE; to++) {
    const verb = words.sentence[to] === words.sentence[at] ? null : verbAt(words, to);
    if (verb !== null && does(verb, 'heat')) break;
  }
  // The sentence that holds the next order tells of that one.
  while (
    to < words.keys.length &&
    words.sentence[to - 1] === words.sentence[to] &&
    words.sentence[to - 1] !== words.sentence[at]
  )
    to--;
  return (
    saysWhenDone(words, from, to, at, timed) ||
    (to === words.keys.length && next !== null && opensWithCue(next))
  );
}

/** Whether words `from` to `to` hold a cue, a clause that opens with "until", or a hint that the package tells. */
function saysWhenDone(words: Words, from: number, to: number, verb: number, timed: boolean): boolean {
  for (let at = from; at < to; at++) {
    if (
      tellsUntil(words, at, verb) ||
      (!timed && lastsAsLong(words, at, verb)) ||
      phraseAt(words.keys, at, 'cue') !== null ||
      phraseAt(words.keys, at, 'whole-step') !== null
    )
      return true;
  }
  const temperatures = words.items
    .slice(words.at[from], (words.at[to] ?? words.items.length) + 1)
    .filter((item) => item.kind === 'temperature');
  return (
    (temperatures.length > 0 && words.keys.slice(from, to).some((key) => isWord(key, 'inside'))) ||
    temperatures.some((temperature) => cooksTo(words, temperature))
  );
}

/**
 * Whether a clause that opens at word `at` says when the order at word `verb` is done. "Once" and "when" do so only with a clause
 * behind them: after the verb ("fry, and turn when golden", not "turning once"), or at the head of a later sentence.
 */
function tellsUntil(words: Words, at: number, verb: number): boolean {
  const phrase = phraseAt(words.keys, at, 'until');
  if (phrase === null) return false;
  if (phrase.means === null) return true;
  const next = at + phrase.length;
  if (
    words.before[next] !== '' ||
    words.sentence[next] !== words.sentence[at] ||
    words.keys[next] === 'or' ||
    words.keys[next] === 'halfway'
  )
    return false;
  if (words.sentence[at] !== words.sentence[verb]) return words.sentence[at - 1] !== words.sentence[at];
  return at > verb && !(words.keys[at - 1] ?? '').endsWith('ing');
}

/** "Simmer while you shape the meatballs": as long as another work takes. "While stirring" tells how, and not how long. */
function lastsAsLong(words: Words, at: number, verb: number): boolean {
  if (words.keys[at] !== 'while' || at < verb || words.sentence[at] !== words.sentence[verb]) return false;
  const work = verbAt(words, at + 1);
  return work === null || !(does(work, 'combine', 'hold') && words.keys[at + 1]!.endsWith('ing'));
}

/** "Once the onions are soft, …", "When golden, …": the step's first words tell when the one before is done. */
function opensWithCue(words: Words): boolean {
  const first = words.keys[0];
  return first === 'after' || phraseAt(words.keys, 0, 'until') !== null || testsDoneness(words);
}

/** "Check that the center reads 165°F": a step that only looks whether the food is done. */
function testsDoneness(words: Words): boolean {
  const measures =
    words.items.some((item) => item.kind === 'temperature') &&
    words.keys.some((key) => isWord(key, 'inside'));
  return measures && words.keys.every((_, at) => verbAt(words, at)?.does.includes('heat') !== true);
}

/** How many words after an order to cook may still tell when it is done. */
const FURTHEST_CUE = 120;

/** The times of the sentence of word `at`, as far as its full stops reach on both sides. */
function durationsIn(words: Words, at: number): Duration[] {
  const item = words.at[at]!;
  let from = item;
  let to = item + 1;
  while (from > 0 && from > item - FURTHEST_CUE && !isStop(words.items[from - 1]!)) from--;
  while (to < words.items.length && to < item + FURTHEST_CUE && !isStop(words.items[to]!)) to++;
  return words.items.slice(from, to).filter((item): item is Duration => item.kind === 'duration');
}

function isStop(item: Item): boolean {
  return item.kind === 'point' && /[.!?;]/.test(item.text);
}
