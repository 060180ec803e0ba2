/** Compares the order of the list with the order in which the method takes its listings up. */
import type { Component, Listing } from '../anatomy/types.js';
import { foodsNamed, foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { wordsIn } from './progress.js';
import { isTool } from './purposes.js';
import type { Dish, Mention } from './types.js';

/** The fewest listings out of place that are worth a mark. */
const FEWEST = 2;
/** Salt, pepper and water are listed last by habit, wherever they go in. */
const BY_HABIT = [...foodsOfClass('seasoned-with'), ...foodsNamed('water')];

export interface Misplaced {
  readonly listing: Listing;
  readonly step: number;
  /** A listing on the wrong side of it, with the step that first uses that one. */
  readonly other: Listing;
  readonly otherStep: number;
}

interface Placed {
  readonly listing: Listing;
  readonly step: number;
}

/**
 * The listings of a component that stand clearly out of the order of first use, each with one that it should stand on the other
 * side of; none where so few do that it may be habit, as when the main ingredient opens the list.
 */
export function misplaced(dish: Dish, component: Component): Misplaced[] {
  const placed = component.listings.flatMap((listing) => {
    const step = firstStep(dish, listing);
    return step === null || isByHabit(dish, listing) ? [] : [{ listing, step }];
  });
  const kept = longestRising(placed.map(({ step }) => step));
  const found = placed.flatMap((each, at) => {
    if (kept.has(at)) return [];
    const other = placed.find((one, index) => kept.has(index) && isWrongSide(each, one));
    return other === undefined ? [] : [{ ...each, other: other.listing, otherStep: other.step }];
  });
  return found.length < FEWEST ? [] : found;
}

function isWrongSide(one: Placed, other: Placed): boolean {
  return one.listing.index < other.listing.index ? one.step > other.step : one.step < other.step;
}

/** Salt, pepper and water; and the main ingredient at the head of a list: the raw meat or fish, or what the title names. */
function isByHabit(dish: Dish, listing: Listing): boolean {
  if (listing.line.foods.some(({ row }) => isAnyOf(row, BY_HABIT))) return true;
  if (listing !== dish.recipe.components[listing.component]!.listings[0]) return false;
  if (dish.rawFoods.some((raw) => raw.listing === listing)) return true;
  const title = wordsIn(dish.recipe.title?.text ?? '');
  return listing.line.foods.some(({ name }) => wordsIn(name).some((word) => title.includes(word)));
}

/** The step that first uses a listing; null where none does, where its place on the list tells nothing (salt to taste, a garnish), and for tools. */
function firstStep(dish: Dish, listing: Listing): number | null {
  const { line } = listing;
  if (line.toTaste || line.asNeeded || line.optional || line.purpose !== null || line.measures.length === 0)
    return null;
  const [first, ...others] = dish.uses[listing.index]!.filter(isTakenUp);
  if (isTool(listing) || first === undefined) return null;
  if (!isOfMany(first)) return first.step;
  // "The vegetables" may leave some of them for later, and those that are only cut or moved need not be all.
  const alone = others.filter((other) => !isOfMany(other));
  if (alone.some(({ step }) => step === first.step)) return first.step;
  const isUnsure = alone.length > 0;
  return isUnsure || isOnlyHandled(first) ? null : first.step;
}

/** "The vegetables", "the remaining ingredients". */
function isOfMany({ group, listings, food }: Mention): boolean {
  return group || (listings.length > 1 && food?.generic === true);
}

function isOnlyHandled({ verb }: Mention): boolean {
  const technique = verb === null ? null : techniqueOf(fold(verb))?.technique;
  return technique != null && does(technique, 'cut', 'drain', 'remove', 'prepare');
}

function isTakenUp(mention: Mention): boolean {
  return !mention.telling && !mention.surface && !mention.toTaste;
}

/** The places of the longest run of numbers that never falls. */
function longestRising(numbers: readonly number[]): Set<number> {
  const length: number[] = [];
  const previous: number[] = [];
  numbers.forEach((number, at) => {
    length[at] = 1;
    previous[at] = -1;
    for (let before = 0; before < at; before++) {
      if (numbers[before]! <= number && length[before]! >= length[at]!) {
        length[at] = length[before]! + 1;
        previous[at] = before;
      }
    }
  });
  const kept = new Set<number>();
  for (let at = length.indexOf(Math.max(0, ...length)); at >= 0; at = previous[at]!) kept.add(at);
  return kept;
}
