/** Compares all that the method takes of a listing with what is listed. */
import Fraction from 'fraction.js';
import type { Listing } from '../anatomy/types.js';
import { type Sum, sumMeasures } from '../arithmetic/compare.js';
import { convert } from '../arithmetic/convert.js';
import { baseUnits, type System } from '../arithmetic/units.js';
import { printFraction } from '../grammar/print.js';
import type { Measure } from '../grammar/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { fold, plurals } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Unit } from '../larder/types.js';
import { unitById } from '../larder/units.js';
import type { Account, Taking } from './types.js';

/** The two sides, in one unit: milliliters or grams for what has a size, else the unit of the listing. */
export interface Balance {
  readonly listed: Sum;
  /** All amounts and shares together. */
  readonly used: Sum;
  /** The takings that have an amount or a share, in the order of the method. */
  readonly stated: readonly Taking[];
  /** Of those, the one with which they come to more than is listed; null where they do not. */
  readonly over: Taking | null;
  /** Whether the difference is no more than a cook rounds away between spoons and milliliters. */
  readonly slight: boolean;
  /** Whether nothing is left for a use after the stated ones that takes the rest, or gives no amount. */
  readonly nothingLeft: boolean;
}

/** The balance of a listing; null where it cannot be drawn: no amount listed or taken, two kinds of unit, a use that is not understood. */
export function balanceOf(account: Account, system: System | null): Balance | null {
  const { listing, takings, closed } = account;
  if (!closed || listing.line.toTaste || listing.line.asNeeded) return null;
  const stated = takings.filter(isStated);
  if (stated.length === 0) return null;
  for (const form of formsOf(listing)) {
    const listed = sumMeasures([form], system ?? undefined);
    if (listed === null) continue;
    const parts = stated.map((taking) => partOf(taking, listed, system));
    if (!areSums(parts)) continue;
    const used = parts.reduce(add);
    return {
      listed,
      used,
      stated,
      over: firstOver(stated, parts, listed),
      slight: isSlight(listed, used),
      nothingLeft: used.low.gte(listed.high),
    };
  }
  return null;
}

/**
 * The uses that plainly take the listing in parts where the list does not say so, the last of them what is left where the method
 * says that: two or more in different steps, one of them by less than all of its amount, by a share, or as the rest of what was
 * used. Empty where it is not taken in parts.
 */
export function undividedParts({ listing, takings }: Account, system: System | null): readonly Taking[] {
  const { line } = listing;
  if (line.divided || line.plusMore !== null || line.toTaste || line.asNeeded || line.measures.length === 0)
    return [];
  // Water without an amount is boiled in and poured away as often as not.
  const isWater = listing.line.foods.some(({ row }) => isAnyOf(row, WATER));
  const taken = takings.filter(
    ({ how, mention }) =>
      how !== 'surface' && !(isWater && how === 'some') && !mention.toTaste && mention.listings.length === 1,
  );
  // After the rest nothing is left but what is sprinkled: the chicken that was browned in two batches comes back whole.
  const rest = taken.findIndex(({ how }) => how === 'rest');
  const parts = taken.filter((taking, index) => rest < 0 || index <= rest || isPutOn(taking));
  if (new Set(parts.map(({ mention }) => mention.step)).size < 2) return [];
  const isSaid = parts.some((taking) => isStated(taking) && !isWhole(taking, listing, system));
  // Nobody divides one lemon or one loaf on the list, unless the method gives a share of it.
  if (!isSaid && isOnePiece(line.measures[0]!)) return [];
  // "The remaining oil" of oil that was poured without an amount is what stands in the pan.
  const isInPan = listing.line.foods.some(({ row }) => isAnyOf(row, FAT));
  if (!isSaid && (isInPan || rest < 0)) return [];
  // "The juice of half a lemon" is one use, though it names the juice as well.
  return parts.filter(
    (part) =>
      part.how !== 'some' ||
      parts.every((other) => !isStated(other) || other.mention.step !== part.mention.step),
  );
}

/** Whether the food is put on another: sprinkled, brushed, scattered over. */
function isPutOn({ mention: { verb } }: Taking): boolean {
  const technique = verb === null ? null : techniqueOf(fold(verb))?.technique;
  return technique != null && does(technique, 'garnish', 'coat');
}

/** One piece, or as much as holds one: "1 lemon", "a loaf of bread". */
function isOnePiece({ amount, unit, pack }: Measure): boolean {
  const isPiece = unit === null || ['piece', 'container'].includes(unitById(unit).kind);
  return isPiece && pack === null && amount.high.equals(1);
}

const FAT = foodsNamed('fat');
const WATER = foodsNamed('water');

/** Whether a stated amount is all that is listed. */
function isWhole(taking: Taking, listing: Listing, system: System | null): boolean {
  return formsOf(listing).some((form) => {
    const listed = sumMeasures([form], system ?? undefined);
    return listed !== null && (partOf(taking, listed, system)?.high.gte(listed.low) ?? false);
  });
}

function isStated({ how }: Taking): boolean {
  return how === 'amount' || how === 'share' || how === 'but';
}

/** Every way in which the listing says how much there is: "2 cups (300 g)", "1 can (400 g)". */
export function formsOf(listing: Listing): Measure[] {
  const own = listing.line.measures.flatMap((each) => [
    each,
    ...each.equals,
    ...(each.pack === null ? [] : [each.pack]),
  ]);
  return [...own, ...listing.line.foods.flatMap((food) => food.measures)];
}

/** A sum in the words of the listing: "3 tablespoons of olive oil", "2 1/2 cups of flour", "4 eggs". */
export function printSum(sum: Sum, listing: Listing, system: System | null): string {
  const food = listing.line.foods[0]?.text ?? listing.passage.text;
  if (sum.unit === null) return `${printRange(sum.low, sum.high)} ${food}`;
  const unit = listing.line.measures[0]?.unit ?? null;
  const [low, high, id] = (unit === null ? null : convertSum(sum, unit, system)) ?? [
    sum.low,
    sum.high,
    sum.unit,
  ];
  return `${printRange(low, high)} ${nameFor(high, unitById(id))} of ${food}`;
}

function nameFor(amount: Fraction, { names }: Unit): string {
  const [name] = names;
  return amount.gt(1) ? plurals(name!)[0]! : name!;
}

function convertSum(sum: Sum, unit: string, system: System | null): [Fraction, Fraction, string] | null {
  const base = Object.values(baseUnits).find((id) => id === sum.unit) ?? sum.unit!;
  const low = convert(sum.low, base, unit, system ?? undefined);
  const high = convert(sum.high, base, unit, system ?? undefined);
  return low === null || high === null ? null : [low, high, unit];
}

function printRange(low: Fraction, high: Fraction): string {
  return low.equals(high) ? printRounded(low) : `${printRounded(low)} to ${printRounded(high)}`;
}

/** What no spoon or scale shows is rounded to a tenth. */
function printRounded(value: Fraction): string {
  const exact = printFraction(value);
  return exact.includes('/') && value.d > LARGEST_PART ? `about ${value.round(1).toString()}` : exact;
}

/** Cooks divide a cup or a spoon into no more parts. */
const LARGEST_PART = 16n;

/** What a taking comes to in the unit of the listing; null where it is of another kind. */
function partOf({ mention, how }: Taking, listed: Sum, system: System | null): Sum | null {
  const measure = mention.measure!;
  if (how === 'share') {
    const { low, high } = measure.amount;
    return { unit: listed.unit, low: listed.low.mul(low), high: listed.high.mul(high) };
  }
  for (const form of [measure, ...measure.equals]) {
    if (form.share) {
      const kept = form.amount.low;
      return {
        unit: listed.unit,
        low: listed.low.sub(listed.low.mul(kept)),
        high: listed.high.sub(listed.high.mul(kept)),
      };
    }
    const sum = sumMeasures([form], system ?? undefined);
    if (sum === null || sum.unit !== listed.unit) continue;
    return how === 'but'
      ? { unit: sum.unit, low: listed.low.sub(sum.high), high: listed.high.sub(sum.low) }
      : sum;
  }
  return null;
}

/** A tenth, of what is measured and not counted (common practice: 2 tablespoons are written as 30 mL, 100 mL as 7 tablespoons). */
const SLIGHT = new Fraction(1, 10);

function isSlight(listed: Sum, used: Sum): boolean {
  return listed.unit !== null && listed.high.sub(used.low).abs().lte(listed.high.mul(SLIGHT));
}

function areSums(parts: readonly (Sum | null)[]): parts is Sum[] {
  return parts.every((part) => part !== null);
}

function add(one: Sum, other: Sum): Sum {
  return { unit: one.unit, low: one.low.add(other.low), high: one.high.add(other.high) };
}

function firstOver(stated: readonly Taking[], parts: readonly Sum[], listed: Sum): Taking | null {
  let sum: Sum | null = null;
  for (const [index, part] of parts.entries()) {
    sum = sum === null ? part : add(sum, part);
    if (sum.low.gt(listed.high)) return stated[index]!;
  }
  return null;
}
