/** Finds foods that one list has twice. */
import type { Component, Listing } from '../anatomy/types.js';
import type { ListedFood } from '../grammar/types.js';
import { fold } from '../larder/names.js';
import { wordsIn } from './progress.js';

/** Pairs of listings of a component that are the same food in the same state, with nothing that tells one from the other. */
export function listedTwice(component: Component): { first: Listing; second: Listing }[] {
  const seen = new Map<string, Listing>();
  const found: { first: Listing; second: Listing }[] = [];
  for (const listing of component.listings) {
    const key = keyOf(listing);
    if (key === null) continue;
    const first = seen.get(key);
    if (first === undefined) seen.set(key, listing);
    else found.push({ first, second: listing });
  }
  return found;
}

/** What a listing is compared by; null where it says itself what it is for ("for the glaze", "juice of 1 lemon"), or offers a choice. */
function keyOf({ line }: Listing): string | null {
  const [food, ...others] = line.foods;
  if (food === undefined || others.length > 0 || line.purpose !== null || line.optional || food.form !== null)
    return null;
  const state = [
    ...line.states,
    ...line.preparation,
    ...line.asides,
    ...(line.size === null ? [] : [line.size]),
  ];
  return [nameOf(food), ...state.map(({ text }) => fold(text)).sort()].join('|');
}

/** One name for all names of a row; the words in any order for a food that is more than its row says. */
function nameOf({ name, row }: ListedFood): string {
  const words = wordsIn(name).sort().join(' ');
  const isWholly =
    row !== null && [row.name, ...row.also].some((known) => wordsIn(known).sort().join(' ') === words);
  return isWholly ? row.name : words;
}
