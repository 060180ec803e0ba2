/** Gives how far apart two measures may be and still say the same, and which conversions whole books use instead. */
import { foodsNamed, isAnyOf } from './food-classes.js';
import { larder } from './load.js';
import type { Food, ToleranceName, ToleranceRow } from './types.js';

/** The row of that name that holds for the food: one that names it or a class of it, else the one for all others. */
export function toleranceFor(name: ToleranceName, food: Food | null = null): ToleranceRow {
  const rows = larder.tolerances.filter((row) => row.tolerance === name);
  const own = rows.find((row) => row.foods.length > 0 && isAnyOf(food, foodsOf(row)));
  const row = own ?? rows.find((one) => one.foods.length === 0);
  if (row === undefined) throw new Error(`toleranceFor: tolerances.yaml has no row "${name}" for all foods`);
  return row;
}

const foods = new Map<ToleranceRow, readonly Food[]>();

function foodsOf(row: ToleranceRow): readonly Food[] {
  let known = foods.get(row);
  if (known === undefined) {
    known = row.foods.flatMap(foodsNamed);
    foods.set(row, known);
  }
  return known;
}
