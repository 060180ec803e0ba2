/** Asks of a stretch of a step's words whether and where it speaks of a class of words. */
import { type KitchenWordClass, type PhraseMatch, phraseAt } from '../larder/kitchen-words.js';
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

/** The sentence that a word is in; empty where there is no such word. */
export function sentenceAt(words: Words, at: number): Stretch {
  const from = words.opening[at];
  if (from === undefined) return { from: at, to: at };
  let to = at;
  while (to < words.keys.length && words.sentence[to] === words.sentence[at]) to++;
  return { from, to };
}

/** The sentences of a step, in order. */
export function sentencesOf(words: Words): Stretch[] {
  const found: Stretch[] = [];
  for (let at = 0; at < words.keys.length; ) {
    const sentence = sentenceAt(words, at);
    found.push(sentence);
    at = sentence.to;
  }
  return found;
}

/** The number of the word that holds or follows an offset of the text. */
export function wordAt(words: Words, offset: number): number {
  const at = words.words.findIndex((word) => word.end > offset);
  return at < 0 ? words.keys.length : at;
}
