/** Finds ranges whose first number is the larger. */
import type { Amount, Item } from '../grammar/types.js';
import type { Passage } from '../manuscript/passage.js';
import type { Dish } from './types.js';

/** The measures, times and temperatures of a recipe that run downwards, each once. */
export function reversedRanges(dish: Dish): { passage: Passage; item: Item }[] {
  return dish.parts.flatMap(({ passage, items }) =>
    items.flatMap((item, at) => {
      const amount = amountOf(item);
      // "Lower the oven from 450 to 400°F" is a change, not a range.
      const before = items[at - 1];
      const changes = before?.kind === 'word' && before.key === 'from';
      return amount !== null && amount.low.gt(amount.high) && !changes ? [{ passage, item }] : [];
    }),
  );
}

/** A bare count is left alone: years and pages are written so. */
function amountOf(item: Item): Amount | null {
  switch (item.kind) {
    case 'measure':
    case 'temperature':
      return item.amount;
    case 'duration':
      return item.seconds;
    default:
      return null;
  }
}
