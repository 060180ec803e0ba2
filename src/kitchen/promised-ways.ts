/** Finds what a title or headnote promises of the way a dish is made: how many ingredients, which pots and tools, what is left out. */
import type Fraction from 'fraction.js';
import { readText } from '../grammar/text.js';
import type { Item } from '../grammar/types.js';
import { foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { vesselAt } from '../larder/vessels.js';
import type { Passage } from '../manuscript/passage.js';
import type { Span } from '../manuscript/types.js';
import { isLoose } from './promised-foods.js';
import type { Dish } from './types.js';

export interface BrokenPromise {
  readonly passage: Passage;
  readonly start: number;
  readonly end: number;
  /** What the recipe does instead, to follow "and the ...". */
  readonly but: string;
  /** Where it does so, when it is one place. */
  readonly against: Span | null;
}

/** What the title and headnote say of the making and the recipe does not bear out. */
export function* waysBroken(dish: Dish): Iterable<BrokenPromise> {
  const { title, headnote } = dish.recipe;
  for (const passage of title === null ? headnote : [title, ...headnote]) {
    if (passage !== title && !WAYS.test(passage.text)) continue;
    const items = readText(passage.text);
    const keys = keysOf(items);
    for (let at = 0; at < items.length; at++) {
      const broken =
        ingredientCount(dish, items, keys, at) ??
        oneVessel(dish, keys, at) ??
        leftOut(dish, items, keys, at) ??
        (passage === title ? tool(dish, keys, at) : null);
      if (broken === null || (passage !== title && isLoose(items, at))) continue;
      const { length, ...rest } = broken;
      yield { passage, start: items[at]!.start, end: items[at + length - 1]!.end, ...rest };
      at += length - 1;
    }
  }
}

/** What each promise of a headnote has some of. */
const WAYS = /ingredient|\b(?:one|single|no)\b/i;

interface Broken {
  readonly length: number;
  readonly but: string;
  readonly against: Span | null;
}

/** "Five-ingredient", "with only 4 ingredients". */
function ingredientCount(
  dish: Dish,
  items: readonly Item[],
  keys: readonly string[],
  at: number,
): Broken | null {
  const item = items[at]!;
  if (item.kind !== 'count' || !item.amount.low.equals(item.amount.high)) return null;
  let next = at + 1;
  if (items[next]?.kind === 'point' && isHyphen(items[next])) next++;
  else if (isWord(keys[next], 'adjective') && !isWord(keys[next], 'not-counted')) next++;
  if (!isWord(keys[next], 'ingredient-word')) return null;
  if (isWord(keys[at - 1], 'not-counted') || isWord(keys[next - 1], 'not-counted')) return null;
  const { least, most } = ingredientsOf(dish);
  if (isBetween(item.amount.low, least, most)) return null;
  return { length: next - at + 1, but: `list has ${most}`, against: null };
}

function isBetween(number: Fraction, least: number, most: number): boolean {
  return number.gte(least) && number.lte(most);
}

const STAPLES = foodsOfClass('staple');

/** How many different foods the list has: without staples and what is left open, and with all of them. */
function ingredientsOf({ recipe }: Dish): { least: number; most: number } {
  const all = new Set<string>();
  const needed = new Set<string>();
  for (const { line } of recipe.listings) {
    for (const food of line.foods) {
      if (food.joined === 'or') continue;
      const name = food.row?.name ?? food.name;
      all.add(name);
      const open = line.optional || line.toTaste || line.asNeeded || line.purpose !== null;
      if (!open && !isAnyOf(food.row, STAPLES)) needed.add(name);
    }
  }
  return { least: needed.size, most: Math.max(all.size, recipe.listings.length) };
}

/** "One-pot": no second pot; "one-bowl": no second bowl. */
function oneVessel(dish: Dish, keys: readonly string[], at: number): Broken | null {
  const words = joinedKeys(keys, at);
  const promise = phraseAt(words.keys, 0, 'one-vessel');
  if (promise === null) return null;
  const second = promise.means === 'bowl' ? secondBowl(dish) : secondPot(dish);
  if (second === null) return null;
  return { length: words.lengthOf(promise.length), but: `method has "${second.text}"`, against: second.span };
}

interface Place {
  readonly text: string;
  readonly span: Span;
}

const MOST_BEFORE_VESSEL = 3;

function secondBowl(dish: Dish): Place | null {
  return find(dish, (keys, at) =>
    secondNear(keys, at, (next) => vesselAt(keys, next)?.vessel.name === 'bowl'),
  );
}

/** Another pot, or a skillet beside a saucepan. */
function secondPot(dish: Dish): Place | null {
  const another = find(dish, (keys, at) =>
    secondNear(keys, at, (next) => phraseAt(keys, next, 'stove-pot') !== null),
  );
  if (another !== null) return another;
  let first: string | null = null;
  return find(dish, (keys, at) => {
    const pot = phraseAt(keys, at, 'stove-pot');
    // A "pan" may be either kind, and the one that was meant before.
    if (pot === null || pot.means === null || pot.means === first) return null;
    if (first !== null) return pot.length;
    first = pot.means;
    return null;
  });
}

/** How many words lead from "another" to a vessel near behind it. */
function secondNear(keys: readonly string[], at: number, isVessel: (at: number) => boolean): number | null {
  if (!isWord(keys[at], 'second-vessel')) return null;
  for (let next = at + 1; next <= at + MOST_BEFORE_VESSEL && next < keys.length; next++)
    if (isVessel(next)) return next - at + 1;
  return null;
}

/** The first place of the method where `look` finds something, of so many words. */
function find(dish: Dish, look: (keys: readonly string[], at: number) => number | null): Place | null {
  for (const { step, items } of dish.steps) {
    const keys = keysOf(items);
    for (let at = 0; at < items.length; at++) {
      const length = items[at]!.kind === 'word' ? look(keys, at) : null;
      if (length === null) continue;
      const [start, end] = [items[at]!.start, items[at + length - 1]!.end];
      return { text: step.passage.text.slice(start, end), span: step.passage.span(start, end) };
    }
  }
  return null;
}

/** "No-bake", "no-knead": the verb is then no order of the method. */
function leftOut(dish: Dish, items: readonly Item[], keys: readonly string[], at: number): Broken | null {
  if (keys[at] !== 'no' || !isHyphen(items[at + 1])) return null;
  const denied = techniqueOf(keys[at + 2] ?? '')?.technique;
  if (denied === undefined) return null;
  const isBaking = does(denied, 'oven');
  const order = find(dish, (words, index) => {
    const match = techniqueOf(words[index]!);
    if (match === null || match.form !== 'base') return null;
    const same = match.technique === denied || (isBaking && match.technique.name === 'bake');
    const negated = words.slice(Math.max(0, index - 2), index).some((word) => isWord(word, 'negation'));
    const isNoun = isWord(words[index - 1], 'before-noun') || isWord(words[index - 1], 'adjective');
    return same && !negated && !isNoun ? 1 : null;
  });
  return order === null ? null : { length: 3, but: `method says "${order.text}"`, against: order.span };
}

/** "Slow-Cooker Beans": the tool is named somewhere below. */
function tool(dish: Dish, keys: readonly string[], at: number): Broken | null {
  const words = joinedKeys(keys, at);
  const promise = phraseAt(words.keys, 0, 'special-tool');
  if (promise === null || promise.means === null) return null;
  const isNamed = textsOf(dish).some((passage) => toolsIn(passage.text).has(promise.means!));
  return isNamed
    ? null
    : { length: words.lengthOf(promise.length), but: 'method does not use one', against: null };
}

function textsOf({ recipe }: Dish): readonly Passage[] {
  return [
    ...recipe.equipment,
    ...recipe.listings.map(({ passage }) => passage),
    ...recipe.steps.flatMap(({ passage, heading }) => (heading === null ? [passage] : [heading, passage])),
    ...recipe.notes,
    ...recipe.rest,
  ];
}

/** The special tools that a text names, by what their rows call them. */
export function toolsIn(text: string): Map<string, { readonly start: number; readonly end: number }> {
  const found = new Map<string, { start: number; end: number }>();
  const items = readText(text);
  const words = items.filter((item) => item.kind === 'word');
  const keys = words.map(({ key }) => key);
  for (let at = 0; at < words.length; at++) {
    const match = phraseAt(keys, at, 'special-tool') ?? phraseAt(singularAll(keys, at), 0, 'special-tool');
    if (match?.means == null) continue;
    if (!found.has(match.means))
      found.set(match.means, { start: words[at]!.start, end: words[at + match.length - 1]!.end });
    at += match.length - 1;
  }
  return found;
}

const LONGEST_TOOL = 4;

function singularAll(keys: readonly string[], at: number): string[] {
  return keys.slice(at, at + LONGEST_TOOL).map((key) => key.replace(/s$/, ''));
}

/** The words from `at` on without the hyphens between them, and how many items so many of them take. */
function joinedKeys(
  keys: readonly string[],
  at: number,
): { keys: string[]; lengthOf: (words: number) => number } {
  const own: string[] = [];
  const places: number[] = [];
  for (let next = at; next < keys.length && own.length < LONGEST_TOOL; next++) {
    if (keys[next] === '') {
      if (next === at || keys[next - 1] === '') break;
      continue;
    }
    own.push(keys[next]!);
    places.push(next);
  }
  return { keys: own, lengthOf: (words) => places[words - 1]! - at + 1 };
}

function keysOf(items: readonly Item[]): string[] {
  return items.map((item) => (item.kind === 'word' ? item.key : ''));
}

function isHyphen(item: Item | undefined): boolean {
  return item?.kind === 'point' && /^[-‐‑]$/.test(item.text);
}
