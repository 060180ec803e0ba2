/** Gives what a volume, a piece or a part of a food weighs, by the tables of SR28; a kind without a row of its own has its class's. */
import { foodNamed, kindsOf } from './foods.js';
import { larder } from './load.js';
import { fold, singular } from './names.js';
import type { Food } from './types.js';

/** So many grams in `amount` of `unit`, filled as the wording says; no words where SR28 says no more. */
export interface Weight {
  readonly amount: number;
  /** A unit of volume or of pieces; empty where the thing itself is counted. */
  readonly unit: string;
  /** Folded and singular. */
  readonly wording: readonly string[];
  readonly grams: number;
}

/** What volumes of the food weigh; none where no table has it. */
export function volumeWeights(food: Food): readonly Weight[] {
  return nearest(food, volumesByFood());
}

/** What pieces of the food weigh; none where no table has it. */
export function pieceWeights(food: Food): readonly Weight[] {
  return nearest(food, piecesByFood());
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

type ByFood<T> = ReadonlyMap<string, readonly T[]>;

/** The rows of the food itself, else of the nearest class that has some. */
function nearest<T>(food: Food, rows: ByFood<T>): readonly T[] {
  for (const kind of kindsOf(food)) {
    const own = rows.get(kind.name);
    if (own !== undefined) return own;
  }
  return [];
}

const volumesByFood = once(() =>
  byFood(larder.volumeWeights.map((row) => [row.food, row.weights.map(weight)])),
);
const piecesByFood = once(() =>
  byFood(larder.pieceWeights.map((row) => [row.food, row.weights.map(weight)])),
);
const refuseByFood = once(() => byFood(larder.refuse.map((row) => [row.food, [row.percent / 100]])));

function byFood<T>(rows: readonly (readonly [string, readonly T[]])[]): ByFood<T> {
  const found = new Map<string, readonly T[]>();
  for (const [food, own] of rows) found.set(food, [...(found.get(food) ?? []), ...own]);
  return found;
}

function weight([amount, unit, wording, grams]: readonly [number, string, string, number]): Weight {
  return { amount, unit, wording: words(wording), grams };
}

function words(wording: string): string[] {
  return wording.split(' ').flatMap((word) => (word === '' ? [] : [singular(fold(word))]));
}

/** Most readings weigh nothing, so no table is indexed before it is asked for. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
