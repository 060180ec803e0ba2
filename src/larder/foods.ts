/** Finds foods by their names, and knows which is a kind of which and what can be had from what. */
import { larder } from './load.js';
import { fold, plurals } from './names.js';
import type { Food } from './types.js';

/** A food found in a row of words: how many words name it. */
export interface FoodMatch {
  readonly food: Food;
  readonly length: number;
}

const LONGEST_NAME = 6;
const byKey = new Map<string, Food>();
const byName = new Map<string, Food>();
/** Every beginning of a key that ends where a word may end: a quick no for most words. */
const openings = new Set<string>();

for (const food of larder.foods) byName.set(food.name, food);
for (const food of larder.foods) {
  for (const name of [food.name, ...food.also]) {
    for (const form of [name, ...plurals(name)]) index(form, food);
  }
  if (food.plural !== undefined) index(food.plural, food);
}

/**
 * The longest food name that begins at `words[at]`. Words are folded keys; a name matches however it is split
 * into words ("corn flour" is "cornflour"). Words from `limit` on do not count.
 */
export function foodAt(words: readonly string[], at: number, limit = words.length): FoodMatch | null {
  let key = '';
  let found: FoodMatch | null = null;
  const end = Math.min(limit, at + LONGEST_NAME);
  for (let next = at; next < end; next++) {
    key += words[next];
    const food = byKey.get(key);
    if (food !== undefined) found = { food, length: next - at + 1 };
    if (!openings.has(key)) break;
  }
  return found;
}

/** The row of that name or synonym, singular or plural; null when the larder has none. */
export function foodNamed(name: string): Food | null {
  return byKey.get(fold(name)) ?? null;
}

/** The names of all rows, as the tables have them. */
export function foodNames(): string[] {
  return larder.foods.map((food) => food.name);
}

const ancestry = new Map<Food, ReadonlySet<Food>>();

/** The food itself and every class it belongs to. */
export function kindsOf(food: Food): ReadonlySet<Food> {
  let kinds = ancestry.get(food);
  if (kinds === undefined) {
    const all = new Set<Food>([food]);
    ancestry.set(food, all);
    for (const name of food.kinds) {
      const parent = byName.get(name);
      if (parent !== undefined) for (const kind of kindsOf(parent)) all.add(kind);
    }
    kinds = all;
  }
  return kinds;
}

/** Whether `food` is `kind` or a kind of it: a chicken thigh is poultry. */
export function isKindOf(food: Food, kind: Food): boolean {
  return kindsOf(food).has(kind);
}

/** Whether `part` can be had in the kitchen from `whole` or from a kind of it: lemon juice from a lemon. */
export function isPartOf(part: Food, whole: Food): boolean {
  const wholes = wholesOf(part);
  if (wholes.size === 0) return false;
  for (const kind of kindsOf(whole)) if (wholes.has(kind)) return true;
  return false;
}

const wholesByPart = new Map<Food, ReadonlySet<Food>>();

/** What a food can be had from, by itself or by a class of it, and from what those can be had. */
function wholesOf(part: Food): ReadonlySet<Food> {
  let wholes = wholesByPart.get(part);
  if (wholes === undefined) {
    const all = new Set<Food>();
    wholesByPart.set(part, all);
    for (const kind of kindsOf(part)) {
      for (const name of kind.from) {
        const source = byName.get(name);
        if (source === undefined) continue;
        all.add(source);
        for (const further of wholesOf(source)) all.add(further);
      }
    }
    wholes = all;
  }
  return wholes;
}

/** Whether some kind of `part` can be had from `whole`: "the juice" of a lemon is lemon juice. */
export function hasPartOfKind(whole: Food, part: Food): boolean {
  return partsOf(whole).some((each) => isKindOf(each, part));
}

const parts = new Map<Food, readonly Food[]>();

function partsOf(whole: Food): readonly Food[] {
  let known = parts.get(whole);
  if (known === undefined) {
    known = larder.foods.filter((food) => food.from.length > 0 && isPartOf(food, whole));
    parts.set(whole, known);
  }
  return known;
}

function index(name: string, food: Food): void {
  const words = name.split(/[\s-]+/).map(fold);
  let key = '';
  for (const word of words) {
    key += word;
    openings.add(key);
  }
  // A name written in one word may be split by the author at any joint, so a known row is never overwritten by a plural.
  if (!byKey.has(key)) byKey.set(key, food);
}
