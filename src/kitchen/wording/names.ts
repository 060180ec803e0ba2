/** Finds how foods and other words are named and spelled. */
import type { Recipe } from '../../anatomy/types.js';
import { foodAt, foodNamed } from '../../larder/foods.js';
import { wordsOfClass } from '../../larder/kitchen-words.js';
import { larder } from '../../larder/load.js';
import { fold } from '../../larder/names.js';
import { isSort, spellingOf, termOf } from '../../larder/synonyms.js';
import type { Food } from '../../larder/types.js';
import type { Passage } from '../../manuscript/passage.js';
import type { Mention } from '../types.js';
import type { Usage } from './types.js';

/** A place that names a food of the larder. */
export interface Naming {
  readonly food: Food;
  readonly term: string;
  /** The name of the larder of which it is a spelling. */
  readonly word: string;
  /** As it is compared in spelling. */
  readonly spelling: string;
  readonly passage: Passage;
  readonly start: number;
  readonly end: number;
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
  const words = [...passage.text.slice(from, to).matchAll(WORD)];
  const keys = words.map(([word]) => fold(word));
  for (let at = 0; at < keys.length; at++) {
    const match = foodAt(keys, at);
    if (match?.food !== food) continue;
    const named = termOf(food, keys.slice(at, at + match.length).join(''));
    if (named === null) return;
    const last = words[at + match.length - 1]!;
    const start = from + words[at]!.index;
    const end = from + last.index + last[0].length;
    const text = passage.text.slice(start, end);
    if (!PARTED.test(text))
      namings.push({ food, ...named, spelling: spellingOf(food, text), passage, start, end });
    return;
  }
}

/** Words with a mark between them are a name only by chance: "salt, pepper". */
const PARTED = /[,;:()/\n]|\s[-–—]|[-–—]\s/;

/** The decisions that the namings make: which name, and which spelling of it. */
export function namingUsages(namings: readonly Naming[]): Usage[] {
  return namings.flatMap(({ food, term, word, spelling, passage, start, end }) => {
    const place = { passage, start, end };
    const spelled = { aspect: 'spelling' as const, about: word, form: spelling, ...place };
    if (isOneOfMany(food, term)) return [spelled];
    return [{ aspect: 'term' as const, about: food.name, form: term, shown: spelling, ...place }, spelled];
  });
}

/** A class goes by many names that are not the same, a dish by as many as it has cooks, and a sort is no other name. */
function isOneOfMany(food: Food, term: string): boolean {
  return food.generic || food.dish || isSort(term);
}

/** Words that are spelled in more than one way, foods aside. */
const spellings = larder.kitchenWords.flatMap(({ is, word, means }) =>
  is === 'spelling' ? [[word, means ?? word] as const] : [],
);
const spellingMeans = new Map<string, string>(
  spellings.flatMap(([word, means]) => [
    [word, means],
    [means, means],
  ]),
);
const SPELLINGS = wordPattern([...spellingMeans.keys()], String.raw`\p{L}*`);

export function spellingUsages(passages: readonly Passage[]): Usage[] {
  if (SPELLINGS === null) return [];
  const pattern = SPELLINGS;
  return passages.flatMap((passage) =>
    [...passage.text.matchAll(pattern)].map((found) => {
      const stem = found[1]!.toLowerCase();
      const start = found.index;
      return {
        aspect: 'spelling' as const,
        about: spellingMeans.get(stem)!,
        form: stem,
        shown: found[0].toLowerCase(),
        passage,
        start,
        end: start + found[1]!.length,
      };
    }),
  );
}

/** A house style's words to look for: where an unwanted one stands, and which is wanted. */
export class Unwanted {
  private readonly wanted = new Map<string, string>();
  private readonly pattern: RegExp | null;

  constructor(decided: Readonly<Record<string, readonly string[]>>) {
    for (const [wanted, others] of Object.entries(decided)) {
      for (const other of others.length > 0 ? others : otherNames(wanted))
        this.wanted.set(keyOf(other), wanted);
    }
    this.pattern = wordPattern([...this.wanted.keys()], String.raw`(?:es|s)?(?!\p{L})`);
  }

  /** Every unwanted word of a passage; one that is part of another food's name ("coriander seed") is none. */
  in(
    passage: Passage,
  ): { readonly wanted: string; readonly written: string; readonly start: number; readonly end: number }[] {
    if (this.pattern === null) return [];
    const found = [];
    for (const match of passage.text.matchAll(this.pattern)) {
      const written = match[0];
      const wanted = this.wanted.get(keyOf(match[1]!))!;
      const start = match.index;
      if (!isOtherFood(passage.text, start, written)) {
        found.push({ wanted, written, start, end: start + written.length });
      }
    }
    return found;
  }
}

function keyOf(word: string): string {
  return word.toLowerCase().replace(/[’ʼ]/g, "'").replace(/\s+/g, ' ');
}

/** Every other name of a food that the larder knows. */
function otherNames(wanted: string): string[] {
  const food = foodNamed(wanted);
  if (food === null) return [];
  const own = termOf(food, fold(wanted))?.term;
  return [food.name, ...food.also].filter((name) => termOf(food, fold(name))?.term !== own);
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
function wordPattern(words: readonly string[], ending: string): RegExp | null {
  if (words.length === 0) return null;
  const each = words
    .toSorted((a, b) => b.length - a.length)
    .map((word) =>
      word
        .replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)
        .replace(/['’]/g, "['’]")
        .replace(/ /g, String.raw`\s+`),
    );
  return new RegExp(String.raw`(?<![\p{L}\p{N}])(${each.join('|')})${ending}`, 'giu');
}

/** Foreign words of the kitchen that a style sheet lists. */
export const foreignWords = wordsOfClass('foreign');
