/** Gives what a volume, a piece or a part of a food weighs, by the tables of SR28; a kind without a row of its own has its class's. */
import Fraction from 'fraction.js';
import { foodNamed, kindsOf } from './foods.js';
import { larder } from './load.js';
import { fold, singular } from './names.js';
import { once } from './once.js';
import type { Food } from './types.js';

/** So many grams in `amount` of `unit`, filled as the wording says; no words where SR28 says no more. */
export interface Weight {
  readonly amount: Fraction;
  /** A unit of volume or of pieces; empty where the thing itself is counted. */
  readonly unit: string;
  /** Folded and singular. */
  readonly wording: readonly string[];
  readonly grams: Fraction;
}

/** What volumes of the food weigh; none where no table has it. */
export function volumeWeights(food: Food): readonly Weight[] {
  return nearest(food, volumesByFood(), knownVolumes);
}

/** Whether the food's volumes are weighed by rows of its own, and not by those of a class of it. */
export function hasOwnVolume(food: Food): boolean {
  return volumesByFood().has(food.name);
}

/** What pieces of the food weigh; none where no table has it. */
export function pieceWeights(food: Food): readonly Weight[] {
  return nearest(food, piecesByFood(), knownPieces);
}

/** What is thrown away of the food as bought, as shares of its weight: by its own rows and those of its classes; none where no table has it. */
export function refuseShares(food: Food): readonly number[] {
  return [...kindsOf(food)].flatMap((kind) => refuseByFood().get(kind.name) ?? []);
}

/** How many grams of `part` one `whole` gives; null where no table says. */
export function partGrams(part: Food, whole: Food): number | null {
  const kinds = kindsOf(whole);
  const row = larder.parts.find((one) => {
    const from = foodNamed(one.whole);
    return foodNamed(one.part) === part && from !== null && kinds.has(from);
  });
  return row?.grams ?? null;
}

type Rows = ReadonlyMap<string, readonly (readonly [number, string, string, number])[]>;

/** The rows of the food itself, else of the nearest class that has some. Numbers are made exact only for the foods that are asked about. */
function nearest(food: Food, rows: Rows, known: Map<Food, readonly Weight[]>): readonly Weight[] {
  let found = known.get(food);
  if (found === undefined) {
    const own = [...kindsOf(food)].find((kind) => rows.has(kind.name));
    found = own === undefined ? [] : rows.get(own.name)!.map(weight);
    known.set(food, found);
  }
  return found;
}

const volumesByFood = once(() =>
  byFood([...larder.volumeWeights, ...larder.moreWeights].map((row) => [row.food, row.weights])),
);
const piecesByFood = once(() => byFood(larder.pieceWeights.map((row) => [row.food, row.weights])));
const refuseByFood = once(() => byFood(larder.refuse.map((row) => [row.food, [row.percent / 100]])));
const knownVolumes = new Map<Food, readonly Weight[]>();
const knownPieces = new Map<Food, readonly Weight[]>();

function byFood<T>(rows: readonly (readonly [string, readonly T[]])[]): ReadonlyMap<string, readonly T[]> {
  const found = new Map<string, readonly T[]>();
  for (const [food, own] of rows) found.set(food, [...(found.get(food) ?? []), ...own]);
  return found;
}

function weight([amount, unit, wording, grams]: readonly [number, string, string, number]): Weight {
  return { amount: exact(amount), unit, wording: words(wording), grams: exact(grams) };
}

/** The decimal as it is written in the table. */
function exact(value: number): Fraction {
  return new Fraction(String(value));
}

function words(wording: string): string[] {
  return wording.split(' ').flatMap((word) => (word === '' ? [] : [singular(fold(word))]));
}
