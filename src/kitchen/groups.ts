/** Which listings a group word takes: "the dry ingredients", "the spices", "everything but the parsley", "the sauce ingredients". */
import type { Component, Listing, Recipe } from '../anatomy/types.js';
import { foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { foodNamed } from '../larder/foods.js';
import { singular } from '../larder/names.js';
import type { Food } from '../larder/types.js';
import { wordsIn } from './progress.js';
import type { Words } from './words.js';

const DRY = foodsOfClass('dry');
const WET = foodsOfClass('wet');

/** The listings among `candidates` that a group takes; `used` holds those that an earlier step has used. */
export function listingsOf(
  means: string,
  candidates: readonly Listing[],
  used: ReadonlySet<Listing>,
): Listing[] {
  switch (means) {
    case 'all':
      return [...candidates];
    case 'rest':
      return candidates.filter((listing) => !used.has(listing));
    case 'dry':
      return candidates.filter((listing) => isOfClass(listing, DRY) && !isOfClass(listing, WET));
    case 'wet':
      return candidates.filter((listing) => isOfClass(listing, WET));
    case 'optional':
      return candidates.filter((listing) => listing.line.optional);
    case 'garnish':
      return garnishes(candidates, used);
    default: {
      const foods = foodsMeant(means);
      return candidates.filter((listing) => isOfClass(listing, foods));
    }
  }
}

/** What is listed for garnish; else what is left open and has not gone in. */
function garnishes(candidates: readonly Listing[], used: ReadonlySet<Listing>): Listing[] {
  const said = candidates.filter((listing) => listing.line.purpose !== null);
  return said.length > 0 ? said : candidates.filter((listing) => listing.line.optional && !used.has(listing));
}

/** The food classes that a group of foods takes; none for the groups that go by their place (all, rest). */
export function foodsMeant(means: string): Food[] {
  return means.split(', ').flatMap((name) => foodNamed(name) ?? []);
}

/** The components whose names stand among the words `first` to `last`, end exclusive: "the sauce ingredients", "for the glaze". */
export function componentsNamed(recipe: Recipe, words: Words, first: number, last: number): Component[] {
  return recipe.components.filter((component) => {
    if (component.name === null || component.listings.length === 0) return false;
    const name = wordsIn(component.name);
    for (let at = first; at + name.length <= last; at++) {
      if (name.every((word, index) => singular(words.keys[at + index]!) === word)) return true;
    }
    return false;
  });
}

/** The first of them; null where there is none. */
export function componentNamed(recipe: Recipe, words: Words, first: number, last: number): Component | null {
  return componentsNamed(recipe, words, first, last)[0] ?? null;
}

/** The component that a group word itself names: "the spices" for "Spice blend"; else null. */
export function componentOfGroup(recipe: Recipe, word: string): Component | null {
  const key = singular(word);
  return (
    recipe.components.find((component) => component.name !== null && wordsIn(component.name).includes(key)) ??
    null
  );
}

/** The component whose name stands in a heading over a group of steps; else null. */
export function componentOfHeading(recipe: Recipe, heading: string): Component | null {
  const said = wordsIn(heading);
  const named = recipe.components.filter((component) => component.name !== null);
  return named.find((component) => wordsIn(component.name!).every((word) => said.includes(word))) ?? null;
}

function isOfClass(listing: Listing, kinds: readonly Food[]): boolean {
  return listing.line.foods.some((food) => isAnyOf(food.row, kinds));
}
