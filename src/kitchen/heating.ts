/** Finds where the method cooks something, how long, and whether it says how the food is when it is done. */

import type { Duration, Item } from '../grammar/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { vesselAt } from '../larder/vessels.js';
import { clauseOf } from './context.js';
import { cooksTo } from './done-temperatures.js';
import { isToldByOthers } from './heating-stages.js';
import { lastMentionBefore, mentionsWithin, saysIn } from './stretches.js';
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
    isToldByOthers(heating, found, index, words) ? { ...heating, cued: true } : heating,
  );
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
    const objects = objectsOf(words, at, step.step.index, mentions);
    found.push({
      step: step.step.index,
      technique,
      start: words.words[at]!.start,
      end: words.words[at]!.end,
      durations: durations.length > 0 ? durations : takenTime(words, at),
      cued:
        isCued(words, at, next, durations.length > 0) ||
        isWord(words.keys[at - 1], 'how-far') ||
        (technique.name === 'toast' && toasts(words, at, step.step.index, mentions, objects)),
      listings,
      objects,
    });
  }
  return found;
}

/** Whether bread is toasted, by name or as "halve the muffins and toast them": it tells by itself when it is done. */
function toasts(
  words: Words,
  at: number,
  step: number,
  mentions: readonly Mention[],
  objects: readonly Mention[],
): boolean {
  const { start } = words.words[at]!;
  const named = objects.length > 0 ? objects : mentionsWithin(mentions, step, 0, start).slice(-1);
  return named.some(({ food }) => isAnyOf(food, BREAD));
}

const BREAD = ['bread', 'muffin'].flatMap(foodsNamed);

/** "Roast the beets. This takes an hour": the time that the next sentence tells. */
function takenTime(words: Words, at: number): Duration[] {
  let next = at;
  while (next < words.keys.length && next < at + FURTHEST_CUE && words.sentence[next] === words.sentence[at])
    next++;
  if (!isWord(words.keys[next], 'pronoun')) return [];
  const takes = words.keys.slice(next + 1, next + 4).some((key) => isWord(key, 'takes-time'));
  return takes ? durationsIn(words, next).slice(0, 1) : [];
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
  if (isForbidden(words, at) || tellsOutcome(words, at)) return true;
  // "For leftovers, boil it with rice": another meal.
  if (saysIn(words, { from: words.opening[at]!, to: at }, 'reheated')) return true;
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
    vesselAt(words.keys, at) !== null &&
    (isWord(words.keys[at - 2], 'before-noun') ||
      techniqueOf(words.keys[at - 1] ?? '')?.form === 'past' ||
      isOtherPlace(words, at));
  if (isThing || isWord(words.keys[at + 1], 'bringing')) return true;
  return durations.length === 0 && boilsWater(words, at);
}

/** "Don't boil", "never let it boil", "not to boil". */
function isForbidden(words: Words, at: number): boolean {
  const start = Math.max(clauseStart(words, at), at - FURTHEST_NOT);
  for (let before = at - 1; before >= start; before--) {
    if (phraseAt(words.keys, before, 'negation') !== null) return true;
    if (verbAt(words, before) !== null) return false;
  }
  return false;
}

/** How many words before a verb may forbid it. */
const FURTHEST_NOT = 3;

/** "Leave it to simmer by itself", "expect the pan to smoke": what happens, and no order. */
function tellsOutcome(words: Words, at: number): boolean {
  const before = words.keys.slice(Math.max(words.opening[at]!, at - FURTHEST_OUTCOME), at);
  const said = before.findIndex((key) => isWord(key, 'outcome'));
  return said >= 0 && before.indexOf('to', said) >= 0;
}

/** How many words after "allowing" may tell what it allows. */
const FURTHEST_OUTCOME = 7;

/** "In a bath or microwave": a second place behind "in". */
function isOtherPlace(words: Words, at: number): boolean {
  if (words.keys[at - 1] !== 'or') return false;
  return words.keys
    .slice(Math.max(words.opening[at]!, at - FURTHEST_NOT - 1), at)
    .some((key) => key === 'in' || key === 'on');
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
    // "It might caramelize too quickly" orders nothing.
    if (verb !== null && does(verb, 'heat') && !isWord(words.keys[to - 1], 'subject')) break;
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
    opensWithWhen(words, to) ||
    (to === words.keys.length && next !== null && opensWithCue(next))
  );
}

/** "Fry them in butter. When browned, cover them and fry on": the next order's own sentence opens by telling when this one is done. */
function opensWithWhen(words: Words, at: number): boolean {
  if (at >= words.keys.length || words.opening[at] !== at) return false;
  const phrase = phraseAt(words.keys, at, 'until');
  return phrase !== null && words.before[at + phrase.length] === '';
}

/** Whether words `from` to `to` hold a cue, a clause that opens with "until", or a hint that the package tells. */
function saysWhenDone(words: Words, from: number, to: number, verb: number, timed: boolean): boolean {
  for (let at = from; at < to; at++) {
    const kept = phraseAt(words.keys, at, 'heat-kept');
    if (kept !== null) {
      at += kept.length - 1;
      continue;
    }
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
  return (
    first === 'after' || phraseAt(words.keys, 0, 'until') !== null || testsDoneness(words) || tests(words)
  );
}

/** "It is done when a knife comes out clean", "test that the chicken is tender": the step's first sentence looks whether it is done. */
function tests(words: Words): boolean {
  let to = 0;
  while (to < words.keys.length && to < FURTHEST_CUE && words.sentence[to] === words.sentence[0]) to++;
  const looks = words.keys.slice(0, to).some((key) => isWord(key, 'testing'));
  return looks && (saysIn(words, { from: 0, to }, 'cue') || saysIn(words, { from: 1, to }, 'until'));
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
