/** Knows which listings are raw animal foods, and which are cooked ones that may be warmed again. */
import type { Listing, Recipe } from '../anatomy/types.js';
import type { ListedFood } from '../grammar/types.js';
import { foodsNamed, foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { isWord, speaksOf } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import type { Food, SafetyClass } from '../larder/types.js';
import type { Mention, RawFood } from './types.js';

const GROUND = foodsOfClass('ground-kind');
const MEATS = ['meat', 'fish', 'shellfish'].flatMap(foodsNamed);

/** The listings that are raw animal foods with a safe minimum temperature; "the mince" of the method tells what the list leaves open. */
export function rawFoodsOf(recipe: Recipe, mentions: readonly Mention[]): RawFood[] {
  const found: RawFood[] = [];
  const withoutMeat = speaksOf(recipe.title?.text ?? '', 'meatless-dish');
  for (const listing of recipe.listings) {
    const food = listing.line.foods.find((each) => each.row?.safety !== undefined && !each.row.ready);
    if (food?.row?.safety === undefined || !namesWhole(food)) continue;
    const text = listing.passage.text;
    // "Andouille or another sausage": the one that is ready is meant as much.
    const foods = listing.line.foods;
    const isEitherReady =
      foods.some((each) => each.row?.ready === true) && foods.some((each) => each.joined === 'or');
    if (isEitherReady || isReady(listing) || isMeatless(listing, food.row, withoutMeat)) continue;
    const isGround = mentions.some(
      (mention) => mention.listings.includes(listing) && isAnyOf(mention.food, GROUND),
    );
    const safety =
      isGround && food.row.safety === 'whole-cut' ? 'ground-meat' : classOf(food.row.safety, text);
    found.push({ listing, food: food.row, safety });
  }
  return found;
}

/** The listings of meat, fish or shellfish that was cooked before: the chart has a minimum for warming them. */
export function leftoversOf(recipe: Recipe): RawFood[] {
  const found: RawFood[] = [];
  for (const listing of recipe.listings) {
    const food = listing.line.foods.find((each) => isAnyOf(each.row, MEATS));
    if (food?.row == null || isMeatless(listing, food.row, false)) continue;
    if (speaksOf(listing.passage.text, 'reheated'))
      found.push({ listing, food: food.row, safety: 'leftover' });
  }
  return found;
}

/** "2 cups cooked chicken", "smoked trout", "leftover turkey": nothing raw is left, unless the line says that it is raw. */
function isReady(listing: Listing): boolean {
  const text = listing.passage.text;
  if (speaksOf(text, 'either-state')) return true;
  if (!speaksOf(text, 'ready-state') || speaksOf(text, 'raw-state')) return false;
  // "Rinsed and dried": a bird that is dried off is raw.
  const [food] = listing.line.foods;
  const before = food === undefined ? text : text.slice(0, food.end);
  return speaksOf(before, 'ready-state') || !speaksOf(text, 'washed');
}

/** "Vegan chicken", "plant-based ground beef"; and everything in a dish that calls itself so. */
function isMeatless(listing: Listing, food: Food, withoutMeat: boolean): boolean {
  if (withoutMeat) return true;
  return listing.line.foods.some((each) => each.row === food) && speaksOf(nameOf(listing), 'meatless');
}

/** The line up to where its own foods end: "soy" of "chicken in soy sauce" comes later. */
function nameOf(listing: Listing): string {
  return listing.passage.text.slice(0, listing.line.foods[0]?.end ?? 0);
}

/** Meat that the line calls ground is ground meat, of whatever cut. */
function classOf(safety: SafetyClass, text: string): SafetyClass {
  return safety === 'whole-cut' && speaksOf(text, 'ground-state') ? 'ground-meat' : safety;
}

/** Whether the row says all of the food: an unknown word behind it ("chicken bullion", "beef bites") may make it another thing. */
function namesWhole(food: ListedFood): boolean {
  const words = food.name.split(/[\s-]+/).map((word) => singular(fold(word)));
  const names = [food.row!.name, ...food.row!.also].flatMap((name) =>
    name.split(/[\s-]+/).map((word) => singular(fold(word))),
  );
  const joined = [food.row!.name, ...food.row!.also].map((name) =>
    singular(fold(name.replace(/[\s-]+/g, ''))),
  );
  const telling = words.filter(
    (word) => !isWord(word, 'vague') && !isWord(word, 'small-piece') && !isWord(word, 'cut-name'),
  );
  // "Ribeye" is the rib eye.
  return [words.at(-1), telling.at(-1), words.join('')].some(
    (word) => word === undefined || names.includes(word) || joined.includes(word),
  );
}
