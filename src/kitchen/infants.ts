/** Knows whether a recipe is meant for a child in its first year. */
import type { Listing } from '../anatomy/types.js';
import { foodsNamed } from '../larder/food-classes.js';
import { hazardWordsIn, tellsOf } from '../larder/hazard-words.js';
import { fold } from '../larder/names.js';
import { listingsOf } from './bought.js';
import type { Dish } from './types.js';

const HONEY = foodsNamed('honey');

/** The honey of a recipe for infants; null where there is none, or the recipe keeps it from them. */
export function honeyForInfants(dish: Dish): Listing | null {
  const [honey] = listingsOf(dish, HONEY);
  if (honey === undefined) return null;
  const { title, headnote, steps, notes, storage, rest } = dish.recipe;
  const texts = [
    ...(title === null ? [] : [title.text]),
    ...headnote.map((passage) => passage.text),
    ...steps.map(({ passage }) => passage.text),
    ...[...notes, ...storage, ...rest].map((passage) => passage.text),
    honey.passage.text,
  ];
  if (texts.some((text) => tellsOf(text, 'infant-caution'))) return null;
  return texts.some(speaksOfInfants) ? honey : null;
}

/** Whether the text speaks of an infant; "baby carrots" and "baby back ribs" are no children. */
function speaksOfInfants(text: string): boolean {
  const keys = text.split(/[^\p{L}\p{N}'’]+/u).map(fold);
  const found = hazardWordsIn(keys);
  return found.some(
    ({ is, start, end }) =>
      is === 'infant' &&
      !found.some(
        (other) =>
          (other.is === 'beside-baby' && other.start === end) ||
          (other.is === 'no-infant' && other.start <= start && other.end >= end),
      ),
  );
}
