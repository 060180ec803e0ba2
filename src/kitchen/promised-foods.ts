/** Finds the foods that a title or headnote promises, and which of them nothing on the list bears out. */
import { readText } from '../grammar/text.js';
import type { Item } from '../grammar/types.js';
import { foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { foodAt, isKindOf, kindsOf } from '../larder/foods.js';
import { isWord, phraseAt, speaksOf } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import type { Food } from '../larder/types.js';
import type { Passage } from '../manuscript/passage.js';
import { vocabularyOf } from './listed.js';
import { resolveFood } from './resolve.js';
import type { Dish } from './types.js';

export interface PromisedFood {
  readonly passage: Passage;
  readonly start: number;
  readonly end: number;
  readonly food: Food;
  readonly where: 'title' | 'headnote';
}

/** The foods that the title names, and those that the headnote says are in the dish, of which the list has nothing. */
export function* foodsMissing(dish: Dish): Iterable<PromisedFood> {
  const { title, headnote, listings } = dish.recipe;
  if (listings.length === 0) return;
  const named = [
    ...(title === null ? [] : titleFoods(title)),
    ...headnote
      .filter(({ text }) => speaksOf(text, 'promised-food'))
      .flatMap((passage) => [...headnoteFoods(passage)]),
  ];
  if (named.length === 0) return;
  const borne = bearing(dish);
  for (const each of named) if (!borne(each)) yield each;
}

/** Words of a text with their places, and whether each follows the one before directly. */
interface Row {
  readonly keys: readonly string[];
  readonly items: readonly Item[];
}

function rowOf(text: string): Row {
  const items = readText(text);
  return { items, keys: items.map((item) => (item.kind === 'word' ? item.key : PARTING)) };
}

/** What no name reaches over: punctuation, a number. */
const PARTING = '|';

function* titleFoods(passage: Passage): Iterable<PromisedFood> {
  const row = rowOf(passage.text);
  const { keys } = row;
  let depth = 0;
  for (let at = 0; at < keys.length; at++) {
    const item = row.items[at]!;
    if (item.kind === 'point') depth += item.text === '(' ? 1 : item.text === ')' ? -1 : 0;
    // What stands in brackets is a translation, or another name.
    if (item.kind !== 'word' || depth > 0) continue;
    const name = phraseAt(keys, at, 'name-only');
    if (name !== null) {
      at += name.length - 1;
      continue;
    }
    const named = promisedAt(row, at);
    if (named === null) continue;
    const { food, length } = named;
    const isHead = !isModifier(row, at + length);
    // "Salsa", "Rusks", "Pâté Maison": the chief word of a name is what comes out, unless it is grown.
    if (isHead && !isAnyOf(food, GROWN)) continue;
    if (!isDenied(row, at, at + length) && !isMadeFor(row, at + length, food))
      yield { passage, ...placeOf(row, at, length), food, where: 'title' };
    at += named.whole - 1;
  }
}

/** Whether it is said of another food or dish that follows: "Walnut" in "Walnut Cake with Dates", and not "Dates". */
function isModifier({ items, keys }: Row, end: number): boolean {
  for (let at = items[end]?.kind === 'point' ? end + 1 : end; items[at]?.kind === 'word'; at++) {
    if (isWord(keys[at], 'preposition') || isWord(keys[at], 'title-small')) return false;
    if (foodAt(keys, at) !== null || phraseAt(keys, at, 'made') !== null) return true;
  }
  return false;
}

const MOST_PROMISED_WORDS = 8;

/** "packed with walnuts and dates": the foods up to the end of the clause. */
function* headnoteFoods(passage: Passage): Iterable<PromisedFood> {
  const row = rowOf(passage.text);
  const { keys, items } = row;
  for (let at = 0; at < keys.length; at++) {
    const opening = phraseAt(keys, at, 'promised-food');
    if (opening === null || isLoose(items, at)) continue;
    const from = at + opening.length;
    for (let next = from; next < keys.length && next < from + MOST_PROMISED_WORDS; next++) {
      const item = items[next]!;
      if (endsClause(item) || isWord(keys[next], 'preposition')) break;
      const named = item.kind === 'word' ? promisedAt(row, next) : null;
      if (named === null) continue;
      if (isDenied(row, next, next + named.length)) break;
      yield { passage, ...placeOf(row, next, named.length), food: named.food, where: 'headnote' };
      next += named.whole - 1;
    }
    at = from - 1;
  }
}

function placeOf({ items }: Row, at: number, length: number): { start: number; end: number } {
  return { start: items[at]!.start, end: items[at + length - 1]!.end };
}

interface Named {
  readonly food: Food;
  /** How many words name the food. */
  readonly length: number;
  /** How many the name that it stands in has: "tomato soup". */
  readonly whole: number;
}

const PRODUCTS = [...foodsOfClass('product'), ...foodsOfClass('baked')];
const GROWN = foodsOfClass('grown');

/** The food that the words at `at` promise: of a made thing ("walnut cake") what it is made of. */
function promisedAt({ keys }: Row, at: number): Named | null {
  const match = foodAt(keys, at);
  if (match === null) return null;
  if (!isMadeThing(match.food)) return { food: match.food, length: match.length, whole: match.length };
  for (let end = at + match.length - 1; end > at; end--) {
    const inner = foodAt(keys, at, end);
    if (inner !== null && !isMadeThing(inner.food))
      return { food: inner.food, length: inner.length, whole: match.length };
  }
  return null;
}

/** A dish, a dough or a sauce is what comes out, and is not bought for it. */
function isMadeThing(food: Food): boolean {
  return food.dish || isAnyOf(food, PRODUCTS);
}

/** "No-egg", "egg-free", "mock turtle", "chicken-style", "sauce for fish". */
function isDenied({ keys, items }: Row, start: number, end: number): boolean {
  const before = items[start - 1]?.kind === 'point' ? start - 2 : start - 1;
  const after = items[end]?.kind === 'point' && items[end]!.start === items[end - 1]!.end ? end + 1 : end;
  return isWord(keys[before], 'title-denial') || isWord(keys[after], 'title-denial') || keys[before] === 'or';
}

const SAUCED = foodsOfClass('sauced');

/** "Steak sauce", "pasta sauce", "hamburger buns": what goes on or around the food. */
function isMadeFor({ keys }: Row, end: number, food: Food): boolean {
  if (!isWord(keys[end], 'goes-on')) return false;
  return (
    food.generic || [...kindsOf(food)].some(({ safety }) => safety !== undefined) || isAnyOf(food, SAUCED)
  );
}

/** Whether the sentence up to the end of the clause speaks of what others do, or of what may be: "traditionally full of raisins". */
export function isLoose(items: readonly Item[], at: number): boolean {
  let from = at;
  while (from > 0 && !endsSentence(items[from - 1]!)) from--;
  for (let next = from; next < items.length && !(next > at && endsClause(items[next]!)); next++)
    if (isLooseWord(items[next]!)) return true;
  return false;
}

function isLooseWord(item: Item): boolean {
  return item.kind === 'word' && isWord(item.key, 'loose-claim');
}

function endsSentence(item: Item): boolean {
  return item.kind === 'point' && /[.;!?\n]/.test(item.text);
}

function endsClause(item: Item): boolean {
  return item.kind === 'point' && /[.;:!?\n()–—]/.test(item.text);
}

/** Tells whether a food is on the list: it, a kind or class of it, what it can be had from, or any line that has its word. */
function bearing({ recipe, mentions }: Dish): (named: PromisedFood) => boolean {
  const vocabulary = vocabularyOf(recipe.listings);
  const rows = recipe.listings.flatMap(({ line }) => line.foods.map(({ row }) => row));
  const unknown = rows.includes(null);
  const words = new Set(
    recipe.listings.flatMap(({ passage }) =>
      passage.text.split(/[^\p{L}\p{M}'’]+/u).map((word) => singular(fold(word))),
    ),
  );
  return ({ food, passage, start, end }) => {
    const own = passage.text
      .slice(start, end)
      .split(/[^\p{L}\p{M}'’]+/u)
      .map((word) => singular(fold(word)));
    if (own.some((word) => words.has(word) || [...words].some((other) => isPartOfWord(word, other))))
      return true;
    if (resolveFood(food, vocabulary) !== null) return true;
    if (rows.some((row) => row !== null && sharesClass(row, food))) return true;
    // "Steak" of ground beef: so wide a word is borne out by anything of its class.
    if (isWord(fold(food.name), 'vague') && rows.some((row) => isAnyOf(row, [...kindsOf(food)]))) return true;
    // A class may be what the larder does not know on the list.
    if (food.generic && unknown) return true;
    // Used in the method and on no list: that is another rule's.
    return mentions.some(
      (mention) => mention.food !== null && (isKindOf(mention.food, food) || isKindOf(food, mention.food)),
    );
  };
}

const SHORTEST_PART = 3;

/** "Oatmeal" of oats, "corn" of popcorn. */
function isPartOfWord(word: string, other: string): boolean {
  const [short, long] = word.length < other.length ? [word, other] : [other, word];
  return short.length >= SHORTEST_PART && (long.startsWith(short) || long.endsWith(short));
}

/** "Beef" and a listed steak, "chilli" and a listed chilli powder: one is of the other's narrower classes. */
function sharesClass(row: Food, food: Food): boolean {
  const wide = (kind: Food): boolean => isWord(fold(kind.name), 'wide') || isWord(fold(kind.name), 'vague');
  const own = [...kindsOf(food)].filter((kind) => kind !== food && !kind.generic && !wide(kind));
  return own.some((kind) => isKindOf(row, kind)) || row.from.some((name) => name === food.name);
}
