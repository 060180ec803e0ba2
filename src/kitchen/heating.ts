/** Finds where the method cooks something, how long, and whether it says how the food is when it is done. */
import { phraseAt } from '../larder/kitchen-words.js';
import { does } from '../larder/techniques.js';
import type { Duration } from '../grammar/types.js';
import type { Heating, Mention, ReadStep } from './types.js';
import { verbAt, type Words } from './words.js';

/** The orders to cook in each step, in order. */
export function heatingsOf(steps: readonly ReadStep[], words: readonly Words[], mentions: readonly Mention[]): Heating[] {
  return steps.flatMap((step, index) => heatingsIn(step, words[index]!, words[index + 1] ?? null, mentions));
}

function heatingsIn(step: ReadStep, words: Words, next: Words | null, mentions: readonly Mention[]): Heating[] {
  const found: Heating[] = [];
  const cued = saysWhenDone(words, 0, words.keys.length) || (next !== null && opensWithCue(next));
  for (let at = 0; at < words.keys.length; at++) {
    const technique = verbAt(words, at);
    if (technique === null || !does(technique, 'heat') || isPurpose(words, at)) continue;
    found.push({
      step: step.step.index,
      technique,
      start: words.words[at]!.start,
      end: words.words[at]!.end,
      durations: durationsIn(words, words.sentence[at]!),
      cued,
      listings: [...new Set(mentions.filter((mention) => mention.step === step.step.index).flatMap((mention) => mention.listings))],
    });
  }
  return found;
}

/** "While the pasta is boiling", "a pan for frying": a verb that gives no order. */
function isPurpose(words: Words, at: number): boolean {
  return words.keys[at]!.endsWith('ing') && (words.before[at] === '' || words.keys[at - 1] === 'for');
}

/** Whether words `from` to `to` hold a cue, a clause that opens with "until", or a hint that the package tells. */
function saysWhenDone(words: Words, from: number, to: number): boolean {
  for (let at = from; at < to; at++) {
    if (phraseAt(words.keys, at, 'until') !== null || phraseAt(words.keys, at, 'cue') !== null || phraseAt(words.keys, at, 'whole-step') !== null) return true;
  }
  return words.items.some((item) => item.kind === 'temperature') && words.keys.some((_, at) => phraseAt(words.keys, at, 'inside') !== null);
}

/** "Once the onions are soft, …", "When golden, …": the step's first words tell when the one before is done. */
function opensWithCue(words: Words): boolean {
  const first = words.keys[0];
  return first === 'after' || phraseAt(words.keys, 0, 'until') !== null;
}

function durationsIn(words: Words, sentence: number): Duration[] {
  const first = words.sentence.indexOf(sentence);
  const last = words.sentence.lastIndexOf(sentence);
  const from = first <= 0 ? 0 : words.at[first - 1]! + 1;
  const to = last + 1 < words.at.length ? words.at[last + 1]! : words.items.length;
  return words.items.slice(from, to).filter((item): item is Duration => item.kind === 'duration');
}
