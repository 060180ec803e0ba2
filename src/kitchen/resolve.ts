/** Which listings a food named in the method can mean. */
import { foodsOfClass } from '../larder/food-classes.js';
import { hasPartOfKind, isKindOf, isPartOf, kindsOf } from '../larder/foods.js';
import type { Food } from '../larder/types.js';
import type { Closeness, Entry, Resolution, Vocabulary } from './listed.js';

const WIDE = foodsOfClass('wide');
const order: readonly Closeness[] = ['same', 'kind', 'narrower', 'part', 'whole'];

/** The entries that a larder food means, by the closest relation that any has; null when none has any. */
export function resolveFood(food: Food, vocabulary: Vocabulary): Resolution | null {
  let known = vocabulary.resolved.get(food);
  if (known === undefined) {
    known = findEntries(food, vocabulary);
    vocabulary.resolved.set(food, known);
  }
  return known;
}

function findEntries(food: Food, vocabulary: Vocabulary): Resolution | null {
  const found = new Map<Closeness, Entry[]>();
  for (const entry of vocabulary.entries) {
    const closeness = entry.food.row === null ? null : relation(food, entry.food.row, entry.food.form);
    if (closeness === null) continue;
    const same = found.get(closeness);
    if (same === undefined) found.set(closeness, [entry]);
    else same.push(entry);
  }
  for (const closeness of order) {
    const entries = found.get(closeness);
    if (entries !== undefined) return { entries, closeness };
  }
  return null;
}

/**
 * What the food of a mention is to the food of a listing: the same; a class of it ("the oil" for olive oil); a kind of it
 * ("chicken thighs" for chicken); a part of it (juice for a lemon); or the whole of which a part is listed.
 */
function relation(mentioned: Food, listed: Food, form: string | null): Closeness | null {
  const known = relations.get(mentioned) ?? new Map<Food, Closeness | null>();
  relations.set(mentioned, known);
  let closeness = known.get(listed);
  if (closeness === undefined) {
    closeness = findRelation(mentioned, listed);
    known.set(listed, closeness);
  }
  // "Juice of 1 lemon" lists no more of the lemon than that.
  return closeness === 'whole' && form !== null ? null : closeness;
}

/** The larder does not change, and the same pairs come again from recipe to recipe. */
const relations = new Map<Food, Map<Food, Closeness | null>>();

function findRelation(mentioned: Food, listed: Food): Closeness | null {
  if (mentioned === listed) return 'same';
  if (isKindOf(listed, mentioned)) return 'kind';
  if (isKindOf(mentioned, listed)) return 'narrower';
  if (isPartOf(mentioned, listed) || (mentioned.generic && hasPartOfKind(listed, mentioned))) return 'part';
  return isPartOf(listed, mentioned) ? 'whole' : null;
}

/** The listed food that a reader may have been meant to think of: it shares a class with the mentioned one that is not too wide. */
export function nearestEntry(food: Food, vocabulary: Vocabulary): Entry | null {
  const classes = new Set([...kindsOf(food)].filter((kind) => kind !== food && !WIDE.includes(kind)));
  return (
    vocabulary.entries.find(
      (entry) => entry.food.row !== null && [...kindsOf(entry.food.row)].some((kind) => classes.has(kind)),
    ) ?? null
  );
}
