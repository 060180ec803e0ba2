/** Where a mark about a listing or a mention stands, and how a message speaks of it. */
import type { Listing } from '../src/anatomy/types.js';
import type { Measure } from '../src/grammar/types.js';
import type { Dish, Mention } from '../src/kitchen/types.js';
import type { Span } from '../src/manuscript/types.js';
import type { Related } from './rule.js';

/** The words of a mention. */
export function spanOfMention(dish: Dish, mention: Mention): Span {
  return dish.recipe.steps[mention.step]!.passage.span(mention.start, mention.end);
}

/** The amount that a mention states; its words where it states none. */
export function spanOfAmount(dish: Dish, mention: Mention): Span {
  const { start, end } = mention.measure ?? mention;
  return dish.recipe.steps[mention.step]!.passage.span(start, end);
}

/** The words of a listing that name its food; the line where none were made out. */
export function spanOfFood({ passage, line }: Listing): Span {
  const [food] = line.foods;
  return food === undefined ? passage.span() : passage.span(food.start, food.end);
}

/** The words of a listing from its amount to its food. */
export function spanOfListing(listing: Listing): Span {
  const { passage, line } = listing;
  const [measure] = line.measures;
  const [food] = line.foods;
  if (measure === undefined || food === undefined) return spanOfFood(listing);
  return passage.span(Math.min(measure.start, food.start), Math.max(measure.end, food.end));
}

/** "step 3": by the number printed before it, else by its place. */
export function stepOf(dish: Dish, step: number): string {
  return `step ${dish.recipe.steps[step]!.number ?? step + 1}`;
}

/** The food of a listing as the list writes it. */
export function foodOf(listing: Listing): string {
  return listing.line.foods[0]?.text ?? listing.passage.text;
}

/** The food of a listing as marks are compared by: lower case, singular. */
export function subjectOf(listing: Listing): string {
  return listing.line.foods[0]?.name ?? listing.passage.text;
}

/** The amount of a listing as the list writes it: "2 tablespoons". Empty where it states none. */
export function amountOf({ passage, line }: Listing): string {
  const [measure] = line.measures;
  return measure === undefined ? '' : passage.text.slice(measure.start, measure.end);
}

/** "2 cups of flour", "2 eggs": an amount before its food. */
export function ofFood(amount: string, { unit }: Measure, food: string): string {
  return unit === null ? `${amount} ${food}` : `${amount} of ${food}`;
}

/** The listing as the other side of a mark. */
export function atListing(dish: Dish, listing: Listing, message: string): Related {
  return { file: dish.page.path, span: spanOfListing(listing), message };
}

/** A mention as the other side of a mark. */
export function atMention(dish: Dish, mention: Mention, message: string): Related {
  return { file: dish.page.path, span: spanOfMention(dish, mention), message };
}
