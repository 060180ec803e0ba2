/** Finds which sizes of cup, spoon and pint the duals of a book stand for, and where the book has more than one. */
import { SYSTEMS, unitSize } from '../arithmetic/units.js';
import type { Measure } from '../grammar/types.js';
import { unitById } from '../larder/units.js';
import { once } from '../manuscript/once.js';
import { type Dual, dualsOf, isOf } from './duals.js';
import type { Book, Dish } from './types.js';

/** A cup, spoon or pint that is given in milliliters, with the size of one that this stands for. */
export interface SizedUnit {
  readonly dish: Dish;
  readonly dual: Dual;
  readonly unit: string;
  /** The size as the page has it, in milliliters. */
  readonly stated: number;
  /** Which of the larder's sizes of the unit it is. */
  readonly size: number;
}

export interface MixedUnit {
  readonly unit: string;
  /** The first place with the size that most of the book has. */
  readonly usual: SizedUnit;
  /** The places of another size, the first of each with how many there are. */
  readonly others: readonly { readonly first: SizedUnit; readonly count: number }[];
}

/** The units that the book gives in more than one size. */
export function mixedUnits(book: Book): MixedUnit[] {
  const byUnit = groups(book.dishes.flatMap(sizedUnits), (each) => each.unit);
  return byUnit.flatMap((all) => {
    const [usual, ...others] = groups(all, (each) => each.size).sort((a, b) => b.length - a.length);
    if (usual === undefined || others.length === 0) return [];
    return [
      {
        unit: usual[0]!.unit,
        usual: usual[0]!,
        others: others.map((places) => ({ first: places[0]!, count: places.length })),
      },
    ];
  });
}

const LITER = 'liter';
/** A third of a cup is printed as 80 mL by those whose cup is 240 mL, and by those whose cup is 250. */
const THIRDS = new Set([3n, 6n]);
/** Sizes nearer to each other than this are one size in print: cups of 236.6 and 240 mL, fluid ounces of 28.4 and 29.6. */
const ONE_SIZE = 0.045;
/** How far a rounded figure may be from the size that it stands for. */
const ROUNDED = 0.06;
/** How much nearer it must be to that size than to any other. */
const CLEARLY = 3;

const sizedUnits = once((dish: Dish): readonly SizedUnit[] =>
  dualsOf(dish, null).flatMap((dual) => sizedUnit(dish, dual) ?? []),
);

function sizedUnit(dish: Dish, dual: Dual): SizedUnit | null {
  if (dual.judgement?.agreement !== 'right') return null;
  const [kitchen, metric] = isOfSystem(dual.first) ? [dual.first, dual.second] : [dual.second, dual.first];
  if (!isOfSystem(kitchen) || isOfSystem(metric) || kitchen.unit === null || metric.unit === null)
    return null;
  if (![kitchen, metric].every(isPlain) || THIRDS.has(kitchen.amount.low.d)) return null;
  const volume = unitSize(metric.unit);
  // A liter is rounded too far to tell a quart from four metric cups.
  if (volume?.kind !== 'volume' || metric.unit === LITER) return null;
  const stated = metric.amount.low.mul(volume.value).div(kitchen.amount.low).valueOf();
  const [nearest, next] = sizesOf(kitchen.unit)
    .map((members) => ({
      size: members[0]!,
      off: Math.min(...members.map((size) => Math.abs(size - stated) / size)),
    }))
    .sort((a, b) => a.off - b.off);
  if (nearest === undefined || next === undefined) return null;
  if (nearest.off > ROUNDED || next.off < nearest.off * CLEARLY) return null;
  return { dish, dual, unit: kitchen.unit, stated, size: nearest.size };
}

/** Whether the size of the measure's unit depends on the system. */
function isOfSystem({ unit }: Measure): boolean {
  return (
    unit !== null && unitById(unit).kind === 'volume' && Object.keys(unitById(unit).elsewhere).length > 0
  );
}

function isPlain({ amount, plus, pack }: Measure): boolean {
  return amount.low.equals(amount.high) && amount.low.gt(0) && plus.length === 0 && pack === null;
}

const sizes = new Map<string, readonly (readonly number[])[]>();

/** The sizes that a unit has in the systems, those together that print makes one. */
function sizesOf(unit: string): readonly (readonly number[])[] {
  let known = sizes.get(unit);
  if (known === undefined) {
    const together: number[][] = [];
    for (const system of SYSTEMS.filter((each) => isOf({ unit }, each))) {
      const size = unitSize(unit, system)?.value.valueOf();
      if (size === undefined) continue;
      const same = together.find(([first]) => Math.abs(first! - size) / size < ONE_SIZE);
      if (same === undefined) together.push([size]);
      else same.push(size);
    }
    known = together;
    sizes.set(unit, known);
  }
  return known;
}

function groups<T, K>(all: readonly T[], keyOf: (each: T) => K): T[][] {
  const found = new Map<K, T[]>();
  for (const each of all) {
    const key = keyOf(each);
    const same = found.get(key);
    if (same === undefined) found.set(key, [each]);
    else same.push(each);
  }
  return [...found.values()];
}
