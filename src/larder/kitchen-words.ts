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
  | 'heat-kept'
  | 'small-piece'
  | 'grown'
  | 'dry'
  | 'wet'
  | 'likeness'
  | 'likeness-after'
  | 'suggestion'
  | 'suggestion-after'
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
  | 'destination'
  | 'pronoun'
  | 'anything'
  | 'gathering'
  | 'poured-off'
  | 'all-but'
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
  | 'promised-food'
  | 'loose-claim'
  | 'staple'
  | 'not-counted'
  | 'sauced'
  | 'ingredient-word'
  | 'sized'
  | 'per-serving'
  | 'other-measure'
  | 'unit-symbol'
  | 'spelling'
  | 'foreign'
  | 'sort'
  | 'small-in-title'
  | 'helping'
  | 'abbreviation'
  | 'poured'
  | 'either-ounce'
  | 'weighed-only'
  | 'with-refuse'
  | 'without-refuse'
  | 'keeping'
  | 'changed'
  | 'whole-step'
  | 'told-as-made'
  | 'becoming'
  | 'kept-back'
  | 'announcing'
  | 'made-of'
  | 'all-over'
  | 'takes-time'
  | HeatWordClass
  | SafetyWordClass;

/** The classes of heat-words.yaml, explained at its head. */
export type HeatWordClass =
  | 'hotter-or-cooler'
  | 'by-so-much'
  | 'oven-word'
  | 'no-oven'
  | 'oven-gear'
  | 'oven-heating'
  | 'oven-hot'
  | 'preheating'
  | 'cold-start'
  | 'other-heat'
  | 'pan-heat'
  | 'other-baker'
  | 'hotter-oven'
  | 'told-elsewhere'
  | 'not-yet'
  | 'oven-resting'
  | 'stove-heat'
  | 'frying'
  | 'beforehand'
  | 'looking-back'
  | 'before-oven'
  | 'already-hot'
  | 'made-ready'
  | 'stove-verb'
  | 'mash-pie'
  | 'sized-vessel'
  | 'bare-vessel'
  | 'sizeless-vessel'
  | 'bake-good'
  | 'raw-bake'
  | 'loose-bake'
  | 'holds-bake'
  | 'any-size'
  | 'variant'
  | 'oven-verb'
  | 'choice'
  | 'passive'
  | 'part-time'
  | 'time-left-over'
  | 'meanwhile'
  | 'maybe'
  | 'active-time'
  | 'promise'
  | 'promised-part'
  | 'promised-dish';

/** The classes of safety-words.yaml, explained at its head. */
export type SafetyWordClass =
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
  | 'thawing'
  | 'cured-state'
  | 'surface'
  | 'same'
  | 'marinade'
  | 'dipping'
  | 'putting'
  | 'boiling'
  | 'taken-off'
  | 'taken-out'
  | 'cut-name'
  | 'meat-color'
  | 'gone-word'
  | 'clear-word'
  | 'stove-degree'
  | 'water-source'
  | 'rinse-giving'
  | 'share-word'
  | 'beside-place'
  | 'keeping-apart'
  | 'inmost'
  | 'giving-time'
  | 'scrubbing'
  | 'closed-cooker'
  | 'another-stage'
  | 'how-far'
  | 'outcome'
  | 'stove-turning'
  | 'testing';

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

/** By class and first word: its phrases, longest first. Most words of a text open none, and are done with two looks. */
const byClass = new Map<string, Map<string, Entry[]>>();
/** By class: its single words. */
const singles = new Map<string, Set<string>>();

for (const row of larder.kitchenWords) {
  const words = row.word.split(/[\s-]+/).map(fold);
  const phrases = byClass.get(row.is) ?? new Map<string, Entry[]>();
  const same = phrases.get(words[0]!) ?? [];
  same.push({ words, means: row.means ?? null });
  same.sort((a, b) => b.words.length - a.words.length);
  byClass.set(row.is, phrases.set(words[0]!, same));
  if (words.length === 1) singles.set(row.is, (singles.get(row.is) ?? new Set()).add(words[0]!));
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
