/** Knows the listings that a method uses without naming them: a garnish, the oil for frying, what is served beside, a tool. */
import type { Listing } from '../anatomy/types.js';
import { foodNamed, isKindOf } from '../larder/foods.js';
import { speaksOf } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Technique } from '../larder/types.js';
import { vesselAt } from '../larder/vessels.js';
import type { Dish } from './types.js';

/**
 * Whether the method uses the listing by its purpose: "for garnish" where something is garnished or served, "for frying" where
 * something is fried, water where something is boiled; or whether the listing is no food at all but a tool.
 */
export function isServedAside(dish: Dish, listing: Listing): boolean {
  return (
    isTool(listing) ||
    isLeftToCook(listing) ||
    isChosen(dish, listing) ||
    purposeServed(dish, listing) ||
    isBoiledIn(dish, listing)
  );
}

/** Whether the listing is a fat that a step may fry in without naming it. */
export function mayBeFryingFat(dish: Dish, listing: Listing): boolean {
  const fat = foodNamed('fat');
  const isFat = listing.line.foods.some(
    (food) => food.row !== null && fat !== null && isKindOf(food.row, fat),
  );
  return (
    isFat &&
    dish.heatings.some((heating) => does(heating.technique, 'dry-heat') && !does(heating.technique, 'oven'))
  );
}

/** "Whatever you like": a line that names no food of its own. */
function isLeftToCook({ line, passage }: Listing): boolean {
  return line.foods.every(({ row }) => row === null) && speaksOf(passage.text, 'suggestion');
}

/** An optional line where the method says "whatever you like", or where another line has the same food and is used. */
function isChosen(dish: Dish, listing: Listing): boolean {
  if (!listing.line.optional) return false;
  if (dish.recipe.steps.some((step) => speaksOf(step.passage.text, 'anything'))) return true;
  return dish.recipe.listings.some(
    (other) =>
      other !== listing &&
      dish.uses[other.index]!.length > 0 &&
      other.line.foods.some(({ row }) => row !== null && listing.line.foods.some((food) => food.row === row)),
  );
}

/** Whether the line lists a tool: "a baking dish", "cheesecloth". */
export function isTool(listing: Listing): boolean {
  return listing.line.foods.every((food) => {
    const words = food.name.split(/[\s-]+/).map(fold);
    return food.row === null && words.some((_, at) => vesselAt(words, at)?.length === words.length - at);
  });
}

function purposeServed(dish: Dish, listing: Listing): boolean {
  const component = dish.recipe.components[listing.component]?.name ?? '';
  if (speaksOf(component, 'served')) return isServedAtAll(dish);
  const purpose = listing.line.purpose ?? listing.line.plusMore;
  if (purpose === null) return false;
  const words = keysOf(purpose.text);
  const verbs = words
    .map((word) => techniqueOf(word)?.technique)
    .filter((technique) => technique !== undefined);
  if (verbs.length === 0) return false;
  const said = verbsOf(dish);
  return verbs.some(
    (verb) =>
      said.includes(verb) ||
      (does(verb, 'garnish', 'serve') && said.some((other) => does(other, 'garnish', 'serve'))),
  );
}

/** Whether the method serves, garnishes or tops anything, or names what does: "add your favorite toppings". */
function isServedAtAll(dish: Dish): boolean {
  const says = dish.recipe.steps.some((step) => speaksOf(step.passage.text, 'served'));
  return says || verbsOf(dish).some((verb) => does(verb, 'garnish', 'serve') || verb.name === 'top');
}

/** Every verb of the kitchen that the method has, in any form. */
function verbsOf(dish: Dish): Technique[] {
  return dish.recipe.steps
    .flatMap((step) => keysOf(step.passage.text))
    .flatMap((word) => techniqueOf(word)?.technique ?? []);
}

function isBoiledIn(dish: Dish, listing: Listing): boolean {
  const water = foodNamed('water');
  const isWater = listing.line.foods.some(
    (food) => food.row !== null && water !== null && isKindOf(food.row, water),
  );
  return isWater && verbsOf(dish).some((verb) => does(verb, 'heat') && !does(verb, 'dry-heat', 'oven'));
}

function keysOf(text: string): string[] {
  return text.split(/[^\p{L}\p{N}'’]+/u).map(fold);
}
