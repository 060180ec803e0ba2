/** Finds how foods and other words are named and spelled. */
import type { Recipe } from '../../anatomy/types.js';
import type { Extent } from '../../grammar/types.js';
import { foodAt, foodNamed, isKindOf } from '../../larder/foods.js';
import { wordsOfClass } from '../../larder/kitchen-words.js';
import { larder } from '../../larder/load.js';
import { fold, plurals } from '../../larder/names.js';
import { otherNames, otherSpellings } from '../../larder/other-names.js';
import { isSort, spellingOf, termOf } from '../../larder/synonyms.js';
import type { Food } from '../../larder/types.js';
import type { Passage } from '../../manuscript/passage.js';
import type { Mention } from '../types.js';
import type { Usage } from './types.js';

/** A food's name in a few words of text. */
export interface Named {
  readonly food: Food;
  readonly term: string;
  /** The name of the larder of which it is a spelling. */
  readonly word: string;
  /** As it is compared in spelling. */
  readonly spelling: string;
  /** The same with the capitals that the larder has: "Parmesan". */
  readonly shown: string;
  /** Offsets into those words. */
  readonly start: number;
  readonly end: number;
}

/** A place that names a food of the larder. The name is shared by all places that write it so. */
export interface Naming {
  readonly named: Named;
  readonly passage: Passage;
  /** Where the words begin in which the name stands. */
  readonly from: number;
}

/** Every place on the list and in the method that names a food in words of the larder. */
export function namingsOf(recipe: Recipe, mentions: readonly Mention[]): Naming[] {
  const namings: Naming[] = [];
  for (const { passage, line } of recipe.listings) {
    // "Eggplant (aubergine)": a second name in the same line is there for those who do not know the first.
    const named = new Set<Food>();
    for (const { row, start, end } of line.foods) {
      if (row === null || named.has(row)) continue;
      named.add(row);
      pushNaming(namings, row, passage, start, end);
    }
  }
  for (const { food, role, step, start, end } of mentions) {
    if (food === null || role !== 'use') continue;
    pushNaming(namings, food, recipe.steps[step]!.passage, start, end);
  }
  return namings;
}

const WORD = /[\p{L}\p{N}%&](?:[\p{L}\p{N}\p{M}%&'’]*[\p{L}\p{N}\p{M}%&])?/gu;

function pushNaming(namings: Naming[], food: Food, passage: Passage, from: number, to: number): void {
  const text = passage.text.slice(from, to);
  let known = namedIn.get(food);
  if (known === undefined) {
    known = new Map();
    namedIn.set(food, known);
  }
  let named = known.get(text);
  if (named === undefined) {
    named = readNaming(food, text);
    known.set(text, named);
  }
  if (named === null) return;
  namings.push({ named, passage, from });
}

/** A book writes the same few names over and over. */
const namedIn = new WeakMap<Food, Map<string, Named | null>>();

function readNaming(food: Food, text: string): Named | null {
  const words = [...text.matchAll(WORD)];
  const keys = words.map(([word]) => fold(word));
  for (let at = 0; at < keys.length; at++) {
    const match = foodAt(keys, at);
    if (match?.food !== food) continue;
    const named = termOf(food, keys.slice(at, at + match.length).join(''));
    if (named === null) return null;
    const last = words[at + match.length - 1]!;
    const start = words[at]!.index;
    const end = last.index + last[0].length;
    const written = text.slice(start, end);
    return PARTED.test(written) ? null : { food, ...named, ...spellingOf(food, written), start, end };
  }
  return null;
}

/**
 * Every place in a text where a food of `used` is named, whatever it does there: for counting, not for reading a recipe.
 * Words within `measures` are no part of a name: "1 stick butter".
 */
export function namesIn(
  passage: Passage,
  used: ReadonlySet<Food>,
  measures: readonly Extent[] = [],
): Naming[] {
  const words = [...passage.text.matchAll(WORD)].filter(
    ({ index }) => !measures.some(({ start, end }) => start <= index && index < end),
  );
  const keys = words.map(([word]) => fold(word));
  const namings: Naming[] = [];
  for (let at = 0; at < keys.length; at++) {
    const match = usedAt(keys, at, used);
    if (match === null) continue;
    const last = words[at + match.length - 1]!;
    const before = namings.length;
    pushNaming(namings, match.food, passage, words[at]!.index, last.index + last[0].length);
    if (namings.length > before) at += match.whole - 1;
  }
  return namings;
}

/** The food that the longest name at a word means; of one that no list or method has ("cilantro sprigs"), what it is of. */
function usedAt(
  keys: readonly string[],
  at: number,
  used: ReadonlySet<Food>,
): { readonly food: Food; readonly length: number; readonly whole: number } | null {
  const longest = foodAt(keys, at);
  for (let match = longest; match !== null; match = foodAt(keys, at, at + match.length - 1)) {
    if (used.has(match.food) && isKindOf(longest!.food, match.food))
      return { ...match, whole: longest!.length };
  }
  return null;
}

/** Words with a mark between them are a name only by chance: "salt, pepper". */
const PARTED = /[,;:()/\n]|\s[-–—]|[-–—]\s/;

/** A decision that a name makes: which of the food's names, or which spelling of it. */
export interface NameChoice {
  readonly aspect: 'term' | 'spelling';
  readonly about: string;
  readonly form: string;
}

/** What a name decides. */
export function choicesOf({ food, term, word, spelling }: Named): readonly NameChoice[] {
  const spelled = { aspect: 'spelling', about: word, form: spelling } as const;
  if (isOneOfMany(food, term)) return [spelled];
  return [{ aspect: 'term', about: food.name, form: term }, spelled];
}

/** The place of a choice, as a usage. */
export function usageOf(choice: NameChoice, { named, passage, from }: Naming): Usage {
  return { ...choice, shown: named.shown, passage, start: from + named.start, end: from + named.end };
}

/** A class goes by many names that are not the same, a dish by as many as it has cooks, and a sort is no other name. */
function isOneOfMany(food: Food, term: string): boolean {
  return food.generic || food.dish || isSort(term);
}

/** Words that are spelled in more than one way, foods aside: by the stem that all their endings share. */
const spellings = new Map<string, { readonly about: string; readonly form: string }>(
  larder.kitchenWords.flatMap(({ is, word, means }) =>
    is === 'spelling' && means !== undefined
      ? [word, means].map((form) => [stemOf(form), { about: means, form }] as const)
      : [],
  ),
);
const SPELLINGS = wordPattern([...spellings.keys()], String.raw`\p{L}*`);

/** Tells quickly that a text has none of them, which is so of most. */
const SPELLED = new RegExp([...spellings.keys()].join('|'), 'i');

/** "Caramelise" and "caramelising" share all but the e. */
function stemOf(word: string): string {
  return /[sz]e$/.test(word) ? word.slice(0, -1) : word;
}

export function spellingUsages(passages: readonly Passage[]): (Usage & { readonly shown: string })[] {
  if (SPELLINGS === null) return [];
  const pattern = SPELLINGS;
  return passages.flatMap((passage) =>
    !SPELLED.test(passage.text)
      ? []
      : [...passage.text.matchAll(pattern)].map((found) => ({
          aspect: 'spelling' as const,
          ...spellings.get(found[1]!.toLowerCase())!,
          shown: found[0].toLowerCase(),
          passage,
          start: found.index,
          end: found.index + found[0].length,
        })),
  );
}

/** A word that a house style has decided against. */
export interface UnwantedPlace {
  readonly wanted: string;
  /** The letters that are to be replaced: an ending that both words share is none of them. */
  readonly written: string;
  readonly start: number;
  readonly end: number;
  /** Whether the letters are a stem, whose endings stay as they are. */
  readonly isStem: boolean;
}

/** A house style's words to look for: where an unwanted one stands, and which is wanted. */
export class Unwanted {
  private readonly wanted = new Map<string, string>();
  private readonly pattern: RegExp | null;

  /** Of a spelling every ending is looked for ("flavoured"), of a term only its plural. */
  constructor(
    decided: Readonly<Record<string, readonly string[]>>,
    private readonly of: 'terms' | 'spellings',
  ) {
    for (const [wanted, others] of Object.entries(decided)) {
      const known = of === 'terms' ? otherNames : otherSpellings;
      for (const other of others.length > 0 ? others : known(wanted)) this.add(other, wanted);
    }
    this.pattern = wordPattern(
      [...this.wanted.keys()],
      of === 'terms' ? String.raw`(?!\p{L})` : String.raw`(\p{L}{0,5})(?!\p{L})`,
    );
  }

  private add(other: string, wanted: string): void {
    const inflected = this.of === 'spellings' && !other.includes(' ') && other.length >= SHORTEST_STEM;
    const stem = inflected ? stemOf(other) : other;
    this.wanted.set(keyOf(stem), stem === other ? wanted : stemOf(wanted));
    if (!inflected) for (const plural of plurals(other)) this.wanted.set(keyOf(plural), wanted);
  }

  /** Every unwanted word of a passage; one that is part of another food's name ("coriander seed") is none. */
  in(passage: Passage): UnwantedPlace[] {
    if (this.pattern === null) return [];
    const found: UnwantedPlace[] = [];
    for (const match of passage.text.matchAll(this.pattern)) {
      const written = match[1]!;
      const wanted = this.wanted.get(keyOf(written))!;
      const start = match.index;
      const ending = match[2] ?? '';
      if (ending !== '' && written.length < SHORTEST_STEM) continue;
      // "Yogurt" is no unwanted "yog": what is wanted already stands there.
      const elsewhere = this.of === 'terms' && isOtherFood(passage.text, start, written);
      if (elsewhere || keyOf(written + ending).startsWith(keyOf(wanted))) continue;
      const isStem = this.of === 'spellings' && !written.includes(' ');
      found.push({ wanted, written, start, end: start + written.length, isStem });
    }
    return found;
  }
}

/** A word shorter than this has too many others that begin like it. */
const SHORTEST_STEM = 4;

function keyOf(word: string): string {
  return word.toLowerCase().replace(/[’ʼ]/g, "'").replace(/\s+/g, ' ');
}

/** How far on a longer name is sought. */
const LONGEST_NAME_LETTERS = 60;

function isOtherFood(text: string, start: number, written: string): boolean {
  const food = foodNamed(written);
  if (food === null) return false;
  const before = /[\p{L}'’-]+[\s-]$/u.exec(text.slice(Math.max(0, start - LONGEST_NAME_LETTERS), start));
  for (const from of [start, ...(before === null ? [] : [start - before[0].length])]) {
    const keys = [...text.slice(from, start + written.length + LONGEST_NAME_LETTERS).matchAll(WORD)].map(
      ([word]) => fold(word),
    );
    const match = foodAt(keys, 0);
    if (
      match !== null &&
      match.food !== food &&
      keys.slice(0, match.length).join('').length > fold(written).length
    )
      return true;
  }
  return false;
}

/** A pattern that finds any of the words, the longest first, as whole words with `ending`; null where there are none. */
export function wordPattern(words: readonly string[], ending: string, flags = 'giu'): RegExp | null {
  if (words.length === 0) return null;
  const each = words
    .toSorted((a, b) => b.length - a.length)
    .map((word) =>
      word
        .replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)
        .replace(/['’]/g, "['’]")
        .replace(/ /g, String.raw`\s+`),
    );
  return new RegExp(String.raw`(?<![\p{L}\p{N}])(${each.join('|')})${ending}`, flags);
}

/** Foreign words of the kitchen that a style sheet lists. */
export const foreignWords = wordsOfClass('foreign');
