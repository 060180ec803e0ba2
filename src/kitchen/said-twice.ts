/** Finds what a recipe says twice in different units ("3 pounds (1.4 kg)", "9-inch (23 cm)"), with the food that is measured. */
import type { Listing } from '../anatomy/types.js';
import type { Dimension, Item, ListedFood, Measure, Word } from '../grammar/types.js';
import { foodAt } from '../larder/foods.js';
import { isWord, speaksOf } from '../larder/kitchen-words.js';
import { lexiconAt } from '../larder/lexicon.js';
import { fold, singular } from '../larder/names.js';
import type { Food } from '../larder/types.js';
import { unitById } from '../larder/units.js';
import { once } from '../manuscript/once.js';
import type { Passage } from '../manuscript/passage.js';
import type { Dish, ReadPart } from './types.js';

/** Two measures of the same thing, in the order of the page. */
export interface SaidTwice {
  readonly passage: Passage;
  readonly part: ReadPart['part'];
  readonly first: Measure;
  readonly second: Measure;
  /** What they measure, alternatives included; empty where that was not made out. */
  readonly foods: readonly Food[];
  /** The words of the line that say how the food is, folded and singular. */
  readonly words: readonly string[];
  /** Whether the food's state makes a cup of it weigh something else than the tables say. */
  readonly changed: boolean;
  /** Whether it is the size of a pack. */
  readonly packed: boolean;
}

/** Lengths said twice. */
export interface SidesSaidTwice {
  readonly passage: Passage;
  readonly first: Dimension;
  readonly second: Dimension;
  /** Where both end, with the parenthesis that closes. */
  readonly end: number;
}

/** All pairs of measures that the recipe gives as one amount, each once, in the order of its parts. */
export const measuresSaidTwice = once((dish: Dish): readonly SaidTwice[] => [...pairsOf(dish)]);

function* pairsOf(dish: Dish): Iterable<SaidTwice> {
  for (const listing of dish.recipe.listings) yield* ofListing(listing);
  for (const { part, passage, items } of dish.parts) {
    if (part === 'listing') continue;
    for (const [index, item] of items.entries()) {
      if (item.kind !== 'measure' || !holdsTwo(item)) continue;
      const named = foodAfter(items, index);
      const between = named === null ? '' : passage.text.slice(item.end, named.end);
      const changed = speaksOf(between, 'changed');
      const foods = named === null ? [] : [named.food];
      yield* pairs(item, { part, passage, foods, words: wordsIn(between), changed, packed: false });
    }
  }
}

/** The food that the words after a measure name, directly or after its states: "½ cup (120 mL) of warm water". */
function foodAfter(items: readonly Item[], index: number): { food: Food; end: number } | null {
  const words: Word[] = [];
  for (let at = index + 1; words.length < MOST_WORDS && items[at]?.kind === 'word'; at++)
    words.push(items[at] as Word);
  const keys = words.map((word) => word.key);
  for (let at = 0; at < keys.length; ) {
    const found = foodAt(keys, at);
    if (found !== null) return { food: found.food, end: words[at + found.length - 1]!.end };
    const small = keys[at] === 'of' || isWord(keys[at], 'referring') ? { length: 1 } : null;
    const skipped = small ?? lexiconAt(keys, at, 'state') ?? lexiconAt(keys, at, 'size');
    if (skipped === null) return null;
    at += skipped.length;
  }
  return null;
}

const MOST_WORDS = 10;

/** All lengths that the recipe gives in two units: tins, pieces, cuts. */
export function* sidesSaidTwice(dish: Dish): Iterable<SidesSaidTwice> {
  for (const { line, passage } of dish.recipe.listings) {
    for (const [index, first] of line.dimensions.entries()) {
      const second = line.dimensions[index + 1];
      if (second !== undefined && OPENING.test(passage.text.slice(first.end, second.start)))
        yield { passage, first, second, end: closed(passage.text, second.end) };
    }
  }
  for (const { part, passage, items } of dish.parts) {
    if (part === 'listing') continue;
    for (const [index, first] of items.entries()) {
      const second = first.kind === 'dimension' ? sidesAfter(items, index) : null;
      if (first.kind === 'dimension' && second !== null)
        yield { passage, first, second, end: closed(passage.text, second.end) };
    }
  }
}

/** The words of a text as the tables have them: folded and singular. */
export function wordsIn(text: string): string[] {
  return text.split(/[^\p{L}]+/u).flatMap((word) => (word === '' ? [] : [singular(fold(word))]));
}

/** The larder's food that a measure of the line weighs; null where a part is asked for ("juice of" it), which the row is not. */
function foodMeasured(food: ListedFood): Food | null {
  return food.form === null ? food.row : null;
}

type Context = Omit<SaidTwice, 'first' | 'second'>;

function* ofListing({ line, passage }: Listing): Iterable<SaidTwice> {
  const stated = [...line.measures, ...line.foods.slice(1).flatMap((food) => food.measures)].filter(holdsTwo);
  if (stated.length === 0) return;
  const changed = speaksOf(passage.text, 'changed');
  const words = wordsIn(passage.text);
  for (const measure of new Set(stated)) {
    const owner = line.foods.find((food) => food.joined !== 'first' && food.measures.includes(measure));
    const named = owner === undefined ? line.foods : [owner];
    // "1 cup walnuts and raisins (150 g)" weighs neither alone.
    const mixed = owner === undefined && named.some((food) => food.joined === 'and');
    const foods = mixed ? [] : named.flatMap((food) => foodMeasured(food) ?? []);
    yield* pairs(measure, { part: 'listing', passage, foods, words, changed, packed: false });
  }
}

/** Between a length and the same in another unit. */
const OPENING = /^\s{0,3}[(/]\s{0,3}(?:about|approx\.?|~)?\s{0,3}$/i;
const FURTHEST_SIDES = 3;

function sidesAfter(items: readonly Item[], index: number): Dimension | null {
  const between = items[index + 1];
  if (between?.kind !== 'point' || (between.text !== '(' && between.text !== '/')) return null;
  for (const next of items.slice(index + 2, index + 2 + FURTHEST_SIDES)) {
    if (next.kind === 'dimension') return next;
    if (next.kind !== 'word' || !ABOUT.has(next.key)) return null;
  }
  return null;
}

function closed(text: string, end: number): number {
  return text[end] === ')' ? end + 1 : end;
}

const ABOUT = new Set(['about', 'approx', 'approximately', 'roughly']);

function holdsTwo(measure: Measure): boolean {
  return (
    measure.equals.length > 0 ||
    measure.plus.some(holdsTwo) ||
    (measure.pack !== null && holdsTwo(measure.pack))
  );
}

/** A measure against each of those given as its equals; what stands before "plus" is equal to the first part alone. */
function* pairs(measure: Measure, context: Context): Iterable<SaidTwice> {
  const added = measure.plus[0];
  const own = measure.equals.filter((each) => added === undefined || each.end <= added.start);
  const whole = measure.equals.filter((each) => !own.includes(each));
  if (own.length > 0) yield* against({ ...measure, plus: [] }, own, context);
  if (whole.length > 0) yield* against(measure, whole, context);
  for (const part of measure.plus) yield* pairs(part, context);
  if (measure.pack !== null) yield* pairs(measure.pack, { ...context, packed: true });
}

function* against(first: Measure, equals: readonly Measure[], context: Context): Iterable<SaidTwice> {
  const all = equals.flatMap((each) => [each, ...each.equals]);
  for (const second of all) yield { ...context, first, second };
  // "2 bananas (250 g / 9 oz)", "1 stick (½ cup / 113 g)": what stands in the parentheses says one thing twice by itself.
  const [inner, ...further] = all;
  if (isSized(first) || inner === undefined) return;
  for (const second of further) yield { ...context, first: inner, second };
}

function isSized({ unit }: Measure): boolean {
  return unit !== null && ['volume', 'mass', 'length'].includes(unitById(unit).kind);
}
