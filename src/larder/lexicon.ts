/** Finds the words and fixed phrases of lexicon.yaml in a row of folded words; their classes are explained at its head. */
import { larder } from './load.js';
import { fold } from './names.js';

/** The classes asked about in an ingredient line or a yield. Those of the quantities are read by the grammar's lexer. */
export type ListingClass =
  | 'number'
  | 'article'
  | 'each'
  | 'size'
  | 'state'
  | 'state-adverb'
  | 'form'
  | 'optional'
  | 'to-taste'
  | 'as-needed'
  | 'divided'
  | 'plus-more'
  | 'purpose'
  | 'preparation'
  | 'attachment'
  | 'aside'
  | 'filler'
  | 'vague-amount'
  | 'part'
  | 'total'
  | 'less'
  | 'fan'
  | 'fan-after'
  | 'plain-oven'
  | 'same-heat'
  | 'turning'
  | 'reading-before'
  | 'reading-then'
  | 'oven-before'
  | 'oven-then'
  | 'oven-after';

/** A row as the lexer wants it: the words, each folded. */
export interface LexiconPhrase {
  readonly words: readonly string[];
  readonly is: string;
  readonly means: string | null;
}

export interface LexiconMatch {
  /** How many words it takes. */
  readonly length: number;
  readonly means: string | null;
}

export const phrases: readonly LexiconPhrase[] = larder.lexicon.map((row) => ({
  words: row.word.split(/[\s/-]+/).map(fold),
  is: row.is,
  means: row.means ?? null,
}));

/** By class and first word, the longest phrase first. */
const byClass = new Map<string, Map<string, LexiconPhrase[]>>();

for (const phrase of phrases) {
  let byFirst = byClass.get(phrase.is);
  if (byFirst === undefined) {
    byFirst = new Map();
    byClass.set(phrase.is, byFirst);
  }
  const same = byFirst.get(phrase.words[0]!) ?? [];
  same.push(phrase);
  same.sort((a, b) => b.words.length - a.words.length);
  byFirst.set(phrase.words[0]!, same);
}

/** The longest phrase of that class that begins at `words[at]` (folded keys). */
export function lexiconAt(words: readonly string[], at: number, is: ListingClass): LexiconMatch | null {
  const first = words[at];
  const candidates = first === undefined ? undefined : byClass.get(is)?.get(first);
  for (const { words: phrase, means } of candidates ?? []) {
    if (phrase.every((word, index) => words[at + index] === word)) return { length: phrase.length, means };
  }
  return null;
}
