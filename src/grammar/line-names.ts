/** Knows when a comma or a dash parts no foods but stands inside one name, and when names share a noun. */
import { foodAt, foodNamed } from '../larder/foods.js';
import { keysOf, type Piece, QUANTITY_KEY } from './line-pieces.js';
import { namesIn } from './naming.js';
import type { ListedFood } from './types.js';
import { commonName, rowEndingAt, rowOf } from './words.js';

/** "green, red, and yellow bell pepper": a word the larder does not know takes the noun of the food after it. */
export function withSharedNouns(listed: readonly ListedFood[]): ListedFood[] {
  const foods = [...listed];
  for (let at = foods.length - 2; at >= 0; at--) {
    const food = foods[at]!;
    const after = foods[at + 1]!.text.split(' ');
    for (
      let from = Math.max(1, after.length - MOST_SHARED_WORDS);
      from < after.length && food.row === null;
      from++
    ) {
      const text = [food.text, ...after.slice(from)].join(' ');
      const row = foodNamed(text);
      if (row !== null) foods[at] = { ...food, text, name: commonName(text), row };
      if (row !== null) break;
    }
  }
  return foods;
}

const MOST_SHARED_WORDS = 2;

/** "unflavored, unsweetened gelatin": one word after the amount that the larder does not know, before a name that it does. */
export function isAdjectives(pieces: readonly Piece[]): boolean {
  if (pieces[0]?.draft === null) return false;
  const { foods, tail } = namesIn(pieces.filter((piece) => piece.draft === null));
  const name = foods[0]?.name ?? [];
  return tail.length === 0 && foods.length === 1 && name.length === 1 && rowOf(keysOf(name)) === null;
}

/** Whether the stretch is nothing but names, the last of them in the larder. */
export function endsInFood(pieces: readonly Piece[]): boolean {
  const { foods, tail } = namesIn(pieces);
  return (
    tail.length === 0 &&
    foods.every(({ name }) => name.length > 0) &&
    rowEndingAt(keysOf(foods.at(-1)?.name ?? [])) !== null
  );
}

/** "active dry - yeast": a dash inside a name that the larder knows. */
export function isBrokenName(before: readonly Piece[], after: readonly Piece[]): boolean {
  const own = keysOf(before).filter((key) => key !== QUANTITY_KEY);
  const keys = keysOf(after);
  if (rowEndingAt(own) !== null || rowEndingAt(keys) === null) return false;
  return rowEndingAt([...own.slice(-1), ...keys]) !== null && foodAt([...own.slice(-1), ...keys], 0) !== null;
}
