/** Asks of a stretch of a step's words whether and where it speaks of a class of words. */
import { type KitchenWordClass, type PhraseMatch, phraseAt } from '../larder/kitchen-words.js';
import type { Mention } from './types.js';
import type { Words } from './words.js';

/** From the first word to before the last, by their numbers. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A phrase of a class, with the number of its first word. */
export interface Said extends PhraseMatch {
  readonly at: number;
}

/** The phrases of a class that begin in the stretch, in order. */
export function saidIn(words: Words, { from, to }: Stretch, is: KitchenWordClass): Said[] {
  const found: Said[] = [];
  for (let at = from; at < to; at++) {
    const phrase = phraseAt(words.keys, at, is);
    if (phrase !== null) found.push({ ...phrase, at });
  }
  return found;
}

export function saysIn(words: Words, stretch: Stretch, is: KitchenWordClass): boolean {
  for (let at = stretch.from; at < stretch.to; at++) if (phraseAt(words.keys, at, is) !== null) return true;
  return false;
}

/** All words of a step. */
export function all(words: Words): Stretch {
  return { from: 0, to: words.keys.length };
}

/** A sentence that runs on further than this is a list, whose far ends say nothing of each other. */
const LONGEST_SENTENCE = 100;

/** The sentence that a word is in, as far as it can say something of the word; empty where there is no such word. */
export function sentenceAt(words: Words, at: number): Stretch {
  const opening = words.opening[at];
  if (opening === undefined) return { from: at, to: at };
  let to = at;
  while (to < at + LONGEST_SENTENCE && words.sentence[to] === words.sentence[at]) to++;
  return { from: Math.max(opening, at - LONGEST_SENTENCE), to };
}

/** The sentences of a step, in order. */
export function sentencesOf(words: Words): Stretch[] {
  const found: Stretch[] = [];
  let from = 0;
  for (let at = 1; at <= words.keys.length; at++) {
    if (at < words.keys.length && words.sentence[at] === words.sentence[from]) continue;
    found.push({ from, to: at });
    from = at;
  }
  return found;
}

/** What the steps say of a class of words, step by step; each class is looked for once, when it is first asked for. */
export type Speech = (is: KitchenWordClass) => readonly (Said & { readonly step: number })[];

export function speechOf(words: readonly Words[]): Speech {
  const known = new Map<KitchenWordClass, ReturnType<Speech>>();
  return (is) => {
    let said = known.get(is);
    if (said === undefined) {
      said = words.flatMap((step, index) =>
        saidIn(step, all(step), is).map((each) => ({ ...each, step: index })),
      );
      known.set(is, said);
    }
    return said;
  };
}

/** The mentions of a step that lie within these offsets of its text. Mentions are sorted, as everywhere. */
export function mentionsWithin(
  mentions: readonly Mention[],
  step: number,
  from = 0,
  to = Number.POSITIVE_INFINITY,
): Mention[] {
  const found: Mention[] = [];
  for (let index = firstAt(mentions, step, from); index < mentions.length; index++) {
    const mention = mentions[index]!;
    if (mention.step !== step || mention.start >= to) break;
    if (mention.end <= to) found.push(mention);
  }
  return found;
}

/** The last mention of a kind that begins before this place. */
export function lastMentionBefore(
  mentions: readonly Mention[],
  step: number,
  offset: number,
  isMeant: (mention: Mention) => boolean,
): Mention | null {
  for (let index = firstAt(mentions, step, offset) - 1; index >= 0; index--) {
    if (isMeant(mentions[index]!)) return mentions[index]!;
  }
  return null;
}

/** The number of the first mention that begins at this place or later. */
function firstAt(mentions: readonly Mention[], step: number, offset: number): number {
  let low = 0;
  let high = mentions.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const mention = mentions[middle]!;
    if (mention.step > step || (mention.step === step && mention.start >= offset)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The mentions that a stretch of a step holds. */
export function mentionsIn(
  words: Words,
  { from, to }: Stretch,
  step: number,
  mentions: readonly Mention[],
): Mention[] {
  if (to <= from) return [];
  return mentionsWithin(mentions, step, words.words[from]!.start, words.words[to - 1]!.end);
}

/** The number of the word that holds or follows an offset of the text. */
export function wordAt(words: Words, offset: number): number {
  let low = 0;
  let high = words.words.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (words.words[middle]!.end > offset) high = middle;
    else low = middle + 1;
  }
  return low;
}
