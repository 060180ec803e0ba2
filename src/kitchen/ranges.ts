/** Finds ranges whose first number is the larger. */
import type { Amount, Item } from '../grammar/types.js';
import type { Passage } from '../manuscript/passage.js';
import type { Dish } from './types.js';

/** The measures, times and temperatures of a recipe that run downwards, each once. */
export function* reversedRanges(dish: Dish): Iterable<{ passage: Passage; item: Item }> {
  for (const { passage, items } of dish.parts) {
    let before: Item | undefined;
    for (const item of items) {
      const amount = amountOf(item);
      // "Lower the oven from 450 to 400°F" is a change, not a range.
      const changes = before?.kind === 'word' && before.key === 'from';
      if (amount !== null && !changes && amount.low.gt(amount.high)) yield { passage, item };
      before = item;
    }
  }
}

/** "8 to 5 minutes" as "5 to 8 minutes": only the two numbers change places; null where they stand otherwise. */
export function turnedRound(range: string): string | null {
  const match = TWO_NUMBERS.exec(range);
  if (match === null) return null;
  const [both, before, first, between, second] = match;
  return `${before}${second}${between}${first}${range.slice(both.length)}`;
}

/** A whole number or decimal, a fraction, or a mixed number. */
const NUMBER = String.raw`(?:\d+(?:[.,]\d+)?(?: ?\d+\/\d+|\/\d+| ?[¼-¾⅐-⅞])?|[¼-¾⅐-⅞])`;
/** What may stand before ("about"), a number, what joins, a number. */
const TWO_NUMBERS = new RegExp(`^([\\p{L} ]{0,20})(${NUMBER})( ?(?:to|or|[-–—]) ?)(${NUMBER})`, 'u');

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
