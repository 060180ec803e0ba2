/** Finds the words that tell how a food's name is used in a method; their classes are explained at the head of kitchen-words.yaml and safety-words.yaml. */
import { larder } from './load.js';
import { fold } from './names.js';

export type KitchenWordClass =
  | 'cue'
  | 'until'
  | 'group'
  | 'made'
  | 'product'
  | 'wide'
  | 'no-yield'
  | 'clause-opening'
  | 'ground-state'
  | 'reaching'
  | 'seasoned-with'
  | 'baked'
  | 'subject'
  | 'bringing'
  | 'small-piece'
  | 'grown'
  | 'dry'
  | 'wet'
  | 'likeness'
  | 'likeness-after'
  | 'suggestion'
  | 'instead'
  | 'example'
  | 'referring'
  | 'rest-word'
  | 'extra-word'
  | 'reserve-word'
  | 'negation'
  | 'adjective'
  | 'before-noun'
  | 'object'
  | 'served'
  | 'after-verb'
  | 'countable'
  | 'mass-plural'
  | 'emptied'
  | 'order-opening'
  | 'preposition'
  | 'boiling-water'
  | 'vague'
  | 'inside'
  | 'outside'
  | 'unclear-amount'
  | 'placeholder'
  | 'placeholder-bracket'
  | 'mass'
  | 'opaque-cue'
  | 'each-word'
  | 'ready-state'
  | 'whole-step'
  | 'meatless'
  | 'meatless-dish'
  | 'crumbled'
  | 'raw-state'
  | 'either-state'
  | 'color-cue'
  | 'degree-word'
  | 'falls-apart'
  | 'under-pressure'
  | 'formed'
  | 'ground-kind'
  | 'thin-kind'
  | 'heat-place'
  | 'forming'
  | 'bite-size'
  | 'small-cut'
  | 'reheated'
  | 'holding'
  | 'resting'
  | 'rising'
  | 'handled'
  | 'by-hand'
  | 'hands-washed'
  | 'washed'
  | 'running-water'
  | 'thawing'
  | 'cured-state'
  | 'surface'
  | 'same'
  | 'marinade'
  | 'putting'
  | 'boiling'
  | 'taken-off';

export interface PhraseMatch {
  /** How many words it takes. */
  readonly length: number;
  /** What it stands for, where its row says so. */
  readonly means: string | null;
}

interface Entry {
  readonly is: string;
  readonly words: readonly string[];
  readonly means: string | null;
}

/** By first word: the phrases of all classes, longest first. Most words of a text open none, and are done with one look. */
const byFirst = new Map<string, Entry[]>();

for (const row of larder.kitchenWords) {
  const words = row.word.split(/[\s-]+/).map(fold);
  const same = byFirst.get(words[0]!) ?? [];
  same.push({ is: row.is, words, means: row.means ?? null });
  same.sort((a, b) => b.words.length - a.words.length);
  byFirst.set(words[0]!, same);
}

/** The longest phrase of that class that begins at `words[at]` and ends before `end` (folded keys). */
export function phraseAt(
  words: readonly string[],
  at: number,
  is: KitchenWordClass,
  end = words.length,
): PhraseMatch | null {
  const entries = at < end ? byFirst.get(words[at]!) : undefined;
  if (entries === undefined) return null;
  for (const entry of entries) {
    if (entry.is !== is || at + entry.words.length > end) continue;
    if (entry.words.every((word, index) => words[at + index] === word))
      return { length: entry.words.length, means: entry.means };
  }
  return null;
}

/** Whether a single folded word is of that class. */
export function isWord(word: string | undefined, is: KitchenWordClass): boolean {
  const entries = word === undefined ? undefined : byFirst.get(word);
  return entries?.some((entry) => entry.is === is && entry.words.length === 1) ?? false;
}

/** Whether a text holds any word or phrase of a class; hyphens part words. */
export function speaksOf(text: string, is: KitchenWordClass): boolean {
  const keys = text.split(/[^\p{L}\p{N}'’]+/u).map(fold);
  return keys.some((_, at) => phraseAt(keys, at, is) !== null);
}

/** All words and phrases of a class, as the table has them. */
export function wordsOfClass(is: KitchenWordClass): string[] {
  return larder.kitchenWords.filter((row) => row.is === is).map((row) => row.word);
}
