/** Gives how far apart two measures may be and still say the same, and which conversions whole books use instead. */
import { foodsNamed, isAnyOf } from './food-classes.js';
import { larder } from './load.js';
import { once } from './once.js';
import type { Food, ToleranceName } from './types.js';

/** The date since which all tolerances are as they are. */
export const toleranceEdition = larder.toleranceEditions.at(-1)!.edition;

/** A row of the table with its numbers as numbers. */
export interface Tolerance {
  /** The largest difference that passes, as a share of the larger amount. */
  readonly share: number;
  /** A difference that always passes, in the base of the kind. */
  readonly step: number;
  /** The share from which on no rounding explains the difference. */
  readonly query: number;
}

/** The tolerance of that name that holds for the food: of a row that names it or a class of it, else of the one for all others. */
export function toleranceFor(name: ToleranceName, food: Food | null = null): Tolerance {
  const rows = byName().get(name) ?? [];
  const own = food === null ? undefined : rows.find((row) => isAnyOf(food, row.foods));
  const row = own ?? rows.find((one) => one.foods.length === 0);
  if (row === undefined) throw new Error(`toleranceFor: tolerances.yaml has no row "${name}" for all foods`);
  return row.tolerance;
}

interface Row {
  readonly tolerance: Tolerance;
  readonly foods: readonly Food[];
}

const byName = once(() => {
  const found = new Map<ToleranceName, Row[]>();
  for (const { tolerance: name, share, step, query, foods } of larder.tolerances) {
    const tolerance = { share: number(share), step: number(step), query: number(query) };
    found.set(name, [...(found.get(name) ?? []), { tolerance, foods: foods.flatMap(foodsNamed) }]);
  }
  return found;
});

/** "3/50" is 0.06. */
function number(text: string): number {
  const [over, under = '1'] = text.split('/');
  return Number(over) / Number(under);
}
