/** Knows which names of a food are one name in several spellings, and which are different names for one thing. */
import { distance } from 'fastest-levenshtein';
import { wordsOfClass } from './kitchen-words.js';
import { fold, inLatin, plurals, singular } from './names.js';
import type { Food } from './types.js';

/** What a name of a food is, as names of the row. */
export interface Term {
  /** The name under which it goes: a longer one that only says more ("ground black pepper") goes under the shorter. */
  readonly term: string;
  /** The name of which it is a spelling. */
  readonly word: string;
}

/** What the food's name is that is written so (folded); null where the row has no such name. */
export function termOf(food: Food, folded: string): Term | null {
  let terms = termsByFood.get(food);
  if (terms === undefined) {
    terms = readTerms(food);
    termsByFood.set(food, terms);
  }
  return terms.get(folded) ?? null;
}

/** The names for one thing that differ by more than their spelling, the row's own first. */
export function termsOf(food: Food): string[] {
  termOf(food, '');
  return [...new Set([...termsByFood.get(food)!.values()].map(({ term }) => term))];
}

/** Whether the name tells a sort of its row's food, so that neither can be put for the other. */
export function isSort(term: string): boolean {
  return sorts.has(fold(term));
}

const sorts = new Set(wordsOfClass('sort').map(fold));

/** A written name of a food. */
export interface Spelling {
  /** As it is compared with others: lower case, straight apostrophes, the last word singular. */
  readonly spelling: string;
  /** The same with the capitals that the larder's names have: "Worcestershire sauce". */
  readonly shown: string;
}

export function spellingOf(food: Food, written: string): Spelling {
  const spelling = inSingular(food, written);
  return { spelling, shown: withCapitals(food, spelling) };
}

function inSingular(food: Food, written: string): string {
  // Letters that look alike are one spelling: nobody would see the difference that a mark told of.
  const lower = inLatin(written.toLowerCase())
    .replace(/[’ʼ`]/g, "'")
    .replace(/[\s\u00A0]+/g, ' ')
    .replace(/[‐‑]/g, '-');
  const cut = Math.max(lower.lastIndexOf(' '), lower.lastIndexOf('-')) + 1;
  const last = lower.slice(cut);
  // The row knows its own plurals better than any rule: "chilies" are several chiles or several chilis.
  for (const name of [food.name, ...food.also]) {
    const own = name.slice(Math.max(name.lastIndexOf(' '), name.lastIndexOf('-')) + 1).toLowerCase();
    if (fold(own) === fold(last) || plurals(own).every((plural) => fold(plural) !== fold(last))) continue;
    return lower.slice(0, cut) + (last === withoutAccents(last) ? withoutAccents(own) : own);
  }
  return lower;
}

function withCapitals(food: Food, spelling: string): string {
  const large = new Set([food.name, ...food.also].flatMap((name) => name.match(/\p{Lu}[\p{L}'’]*/gu) ?? []));
  let text = spelling;
  for (const word of large) {
    const at = text.search(new RegExp(String.raw`(?<!\p{L})${word.toLowerCase()}(?!\p{L})`, 'u'));
    if (at >= 0) text = text.slice(0, at) + word + text.slice(at + word.length);
  }
  return text;
}

function withoutAccents(word: string): string {
  return word.normalize('NFD').replace(/\p{M}+/gu, '');
}

const termsByFood = new Map<Food, ReadonlyMap<string, Term>>();

function readTerms(food: Food): Map<string, Term> {
  const names = [food.name, ...food.also];
  const terms = new Map<string, Term>();
  const heads: { name: string; folded: string; words: ReadonlySet<string>; term: string }[] = [];
  // The shorter come first, so that a longer name finds the one of which it says more.
  for (const name of names.toSorted((a, b) => wordsIn(a).length - wordsIn(b).length)) {
    const folded = fold(name);
    const words = new Set(wordsIn(name).map((word) => singular(fold(word))));
    const alike = heads.find((head) => isSpelling(head.folded, folded));
    const shorter = heads.find((head) => [...head.words].every((word) => words.has(word)));
    const term = alike?.term ?? shorter?.term ?? name;
    if (alike === undefined) heads.push({ name, folded, words, term });
    const said = { term, word: alike?.name ?? name };
    for (const form of [name, ...plurals(name)]) if (!terms.has(fold(form))) terms.set(fold(form), said);
  }
  if (food.plural !== undefined) terms.set(fold(food.plural), terms.get(fold(food.name))!);
  return terms;
}

function wordsIn(name: string): string[] {
  return name.split(/[\s-]+/);
}

/** Fewer letters than this, and one that differs makes another word. */
const SHORTEST_ALIKE = 5;
/** From this length on two letters may differ: "houmous", "chamomile". */
const LONG = 7;

function isSpelling(one: string, other: string): boolean {
  const length = Math.max(one.length, other.length);
  if (one === other) return true;
  if (length < SHORTEST_ALIKE || one[0] !== other[0]) return false;
  return distance(one, other) <= (length < LONG ? 1 : 2);
}
