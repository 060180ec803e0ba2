/** Finds the words that tell how a food's name is used in a method; their classes are explained at the head of kitchen-words.yaml. */
import { larder } from './load.js';
import { fold } from './names.js';

export type KitchenWordClass =
  | 'cue'
  | 'until'
  | 'group'
  | 'made'
  | 'product'
  | 'wide'
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
  | 'after-verb'
  | 'preposition'
  | 'boiling-water'
  | 'vague'
  | 'inside'
  | 'outside'
  | 'unclear-amount'
  | 'placeholder'
  | 'placeholder-bracket'
  | 'mass'
  | 'long-cooking'
  | 'opaque-cue'
  | 'each-word'
  | 'ready-state'
  | 'whole-step';

export interface PhraseMatch {
  /** How many words it takes. */
  readonly length: number;
  /** What it stands for, where its row says so. */
  readonly means: string | null;
}

interface Entry {
  readonly words: readonly string[];
  readonly means: string | null;
}

/** By class, then by first word: the phrases, longest first. */
const byClass = new Map<string, Map<string, Entry[]>>();

for (const row of larder.kitchenWords) {
  const words = row.word.split(/[\s-]+/).map(fold);
  let phrases = byClass.get(row.is);
  if (phrases === undefined) byClass.set(row.is, (phrases = new Map()));
  const same = phrases.get(words[0]!) ?? [];
  same.push({ words, means: row.means ?? null });
  same.sort((a, b) => b.words.length - a.words.length);
  phrases.set(words[0]!, same);
}

/** The longest phrase of that class that begins at `words[at]` (folded keys). */
export function phraseAt(words: readonly string[], at: number, is: KitchenWordClass): PhraseMatch | null {
  const first = words[at];
  const entries = first === undefined ? undefined : byClass.get(is)?.get(first);
  if (entries === undefined) return null;
  for (const { words: phrase, means } of entries) {
    if (phrase.every((word, index) => words[at + index] === word)) return { length: phrase.length, means };
  }
  return null;
}

/** Whether a single folded word is of that class. */
export function isWord(word: string | undefined, is: KitchenWordClass): boolean {
  return word !== undefined && (byClass.get(is)?.get(word)?.some((entry) => entry.words.length === 1) ?? false);
}

/** All words and phrases of a class, as the table has them. */
export function wordsOfClass(is: KitchenWordClass): string[] {
  return larder.kitchenWords.filter((row) => row.is === is).map((row) => row.word);
}
