/** Which listings a group word takes: "the dry ingredients", "the spices", "everything but the parsley", "the sauce ingredients". */
import type { Component, Listing, Recipe } from '../anatomy/types.js';
import { foodNamed, isKindOf } from '../larder/foods.js';
import { wordsOfClass } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import type { Food } from '../larder/types.js';
import type { Words } from './words.js';

const DRY = foods(wordsOfClass('dry'));
const WET = foods(wordsOfClass('wet'));

/** The listings among `candidates` that a group takes; `used` holds those that an earlier step has used. */
export function listingsOf(means: string, candidates: readonly Listing[], used: ReadonlySet<Listing>): Listing[] {
  switch (means) {
    case 'all':
      return [...candidates];
    case 'rest':
      return candidates.filter((listing) => !used.has(listing));
    case 'dry':
      return candidates.filter((listing) => isAnyOf(listing, DRY) && !isAnyOf(listing, WET));
    case 'wet':
      return candidates.filter((listing) => isAnyOf(listing, WET));
    case 'optional':
      return candidates.filter((listing) => listing.line.optional);
    case 'garnish':
      return candidates.filter((listing) => listing.line.purpose !== null);
    default: {
      const food = foodNamed(means);
      return food === null ? [] : candidates.filter((listing) => isAnyOf(listing, [food]));
    }
  }
}

/** The component that the words around a group name, by its words: "the sauce ingredients", "for the glaze"; else null. */
export function componentNamed(recipe: Recipe, words: Words, first: number, last: number): Component | null {
  for (const component of recipe.components) {
    if (component.name === null || component.listings.length === 0) continue;
    const name = component.name.split(/[\s-]+/).map((word) => singular(fold(word)));
    for (let at = first; at + name.length <= last; at++) {
      if (name.every((word, index) => singular(words.keys[at + index]!) === word)) return component;
    }
  }
  return null;
}

/** The component that a group word itself names: "the spices" for "Spice blend"; else null. */
export function componentOfGroup(recipe: Recipe, word: string): Component | null {
  const key = singular(word);
  return recipe.components.find((component) => component.name?.split(/[\s-]+/).some((each) => singular(fold(each)) === key)) ?? null;
}

/** The component whose name stands in a heading over a group of steps; else null. */
export function componentOfHeading(recipe: Recipe, heading: string): Component | null {
  const said = heading.split(/[^\p{L}\p{N}]+/u).map((word) => singular(fold(word)));
  return (
    recipe.components.find((component) => {
      if (component.name === null) return false;
      const name = component.name.split(/[\s-]+/).map((word) => singular(fold(word)));
      return name.every((word) => said.includes(word));
    }) ?? null
  );
}

function isAnyOf(listing: Listing, kinds: readonly Food[]): boolean {
  return listing.line.foods.some((food) => food.row !== null && kinds.some((kind) => isKindOf(food.row!, kind)));
}

function foods(names: readonly string[]): Food[] {
  return names.map((name) => foodNamed(name)).filter((food): food is Food => food !== null);
}
