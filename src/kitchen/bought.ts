/** Knows in what state a listing is bought: canned, dry, frozen, pasteurized; and which foods are raw animal foods. */
import type { Listing } from '../anatomy/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { tellsOf } from '../larder/hazard-words.js';
import type { Food } from '../larder/types.js';
import { unitById } from '../larder/units.js';
import type { Dish } from './types.js';

const ANIMAL = ['meat', 'poultry', 'fish', 'shellfish'].flatMap(foodsNamed);

/** Whether the food is meat, poultry, fish or shellfish that is not sold ready to eat; eggs are told apart. */
export function isRawAnimal(food: Food): boolean {
  if (food.ready || food.dish) return false;
  return (food.safety !== undefined && food.safety !== 'egg') || isAnyOf(food, ANIMAL);
}

/** The raw meat, poultry, fish and shellfish of the list. */
export function rawAnimalsOf(dish: Dish): Food[] {
  return dish.rawFoods.filter((raw) => raw.safety !== 'egg').map((raw) => raw.food);
}

/** Whether the line is of a can or says that the food is cooked. */
export function isCanned(listing: Listing): boolean {
  return (
    tellsOf(listing.passage.text, 'can') ||
    listing.line.measures.some(
      (measure) =>
        measure.pack !== null || (measure.unit !== null && unitById(measure.unit)?.kind === 'container'),
    )
  );
}

/** Whether the line says that the food is dry. */
export function isDry(listing: Listing): boolean {
  return tellsOf(listing.passage.text, 'dried');
}

/** Whether the line asks for it frozen, and neither has it thawed nor says that it is cooked. */
export function isFrozen({ passage }: Listing): boolean {
  return tellsOf(passage.text, 'frozen') && !tellsOf(passage.text, 'thawed', 'cooked', 'can');
}

/** The listings that are, or may be, one of these foods or a kind of one. */
export function listingsOf(dish: Dish, foods: readonly Food[]): Listing[] {
  return dish.recipe.listings.filter((listing) =>
    listing.line.foods.some((food) => isAnyOf(food.row, foods)),
  );
}
