/** The foods that stand for a class of the kitchen's words: what is measured and not counted, what recipes make, what is dry. */
import { foodNamed, isKindOf } from './foods.js';
import { type KitchenWordClass, wordsOfClass } from './kitchen-words.js';
import type { Food } from './types.js';

/** The foods that a class of kitchen-words.yaml names; a word that no food table has names none. */
export function foodsOfClass(is: KitchenWordClass): readonly Food[] {
  return wordsOfClass(is).flatMap((word) => foodNamed(word) ?? []);
}

/** The food of that name, as a class of one; empty where no table has it. */
export function foodsNamed(name: string): Food[] {
  const food = foodNamed(name);
  return food === null ? [] : [food];
}

/** Whether the food is one of these, or a kind of one; no food is of no class. */
export function isAnyOf(food: Food | null, kinds: readonly Food[]): boolean {
  return food !== null && kinds.some((kind) => isKindOf(food, kind));
}
