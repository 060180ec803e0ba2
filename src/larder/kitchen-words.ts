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
  | 'refers'
  | 'reference-filler'
  | 'recipe-word'
  | 'recipe-near'
  | 'page-word'
  | 'not-recipe'
  | 'title-small'
  | 'step-word'
  | 'step-joint'
  | 'step-owner'
  | 'serving-word'
  | 'serving-place'
  | 'serving-vessel'
  | 'among'
  | 'parting'
  | 'special-tool'
  | 'stove-pot'
  | 'one-vessel'
  | 'second-vessel'
  | 'name-only'
  | 'goes-on'
  | 'title-denial'
  | 'promise'
  | 'loose-claim'
  | 'staple'
  | 'not-counted'
  | 'sauced'
  | 'ingredient-word'
  | 'sized'
  | 'per-serving';

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

/** By class, then by first word: the phrases, longest first. Most words of a text open none, and are done with one look. */
const byClass = new Map<string, Map<string, Entry[]>>();
/** By class: the words that stand for it by themselves. */
const singles = new Map<string, Set<string>>();

for (const row of larder.kitchenWords) {
  const words = row.word.split(/[\s-]+/).map(fold);
  const byFirst = byClass.get(row.is) ?? new Map<string, Entry[]>();
  byClass.set(row.is, byFirst);
  const same = byFirst.get(words[0]!) ?? [];
  same.push({ words, means: row.means ?? null });
  same.sort((a, b) => b.words.length - a.words.length);
  byFirst.set(words[0]!, same);
  if (words.length > 1) continue;
  const alone = singles.get(row.is);
  if (alone === undefined) singles.set(row.is, new Set(words));
  else alone.add(words[0]!);
}

/** The longest phrase of that class that begins at `words[at]` and ends before `end` (folded keys). */
export function phraseAt(
  words: readonly string[],
  at: number,
  is: KitchenWordClass,
  end = words.length,
): PhraseMatch | null {
  const entries = at < end ? byClass.get(is)?.get(words[at]!) : undefined;
  if (entries === undefined) return null;
  for (const entry of entries) {
    if (at + entry.words.length > end) continue;
    if (entry.words.every((word, index) => words[at + index] === word))
      return { length: entry.words.length, means: entry.means };
  }
  return null;
}

/** Whether a single folded word is of that class. */
export function isWord(word: string | undefined, is: KitchenWordClass): boolean {
  return word !== undefined && (singles.get(is)?.has(word) ?? false);
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
