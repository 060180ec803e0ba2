/** Finds where a book says of one food two things that cannot both be: a medium onion is 1 cup here and ½ cup there. */
import type Fraction from 'fraction.js';
import { type Bounds, boundsAgreement } from '../arithmetic/tolerance.js';
import { baseUnits, unitSize } from '../arithmetic/units.js';
import type { Extent } from '../grammar/types.js';
import { lexiconAt } from '../larder/lexicon.js';
import { techniqueOf } from '../larder/techniques.js';
import { toleranceFor } from '../larder/tolerances.js';
import { once } from '../manuscript/once.js';
import type { Passage } from '../manuscript/passage.js';
import { contradicted, type Dual, dualsOf } from './duals.js';
import { type Equivalent, equivalentsOf } from './equivalents.js';
import type { Book, Dish } from './types.js';

/** One saying of the book: so much of one thing is so much of another. */
export interface Saying {
  readonly dish: Dish;
  readonly passage: Passage;
  readonly extent: Extent;
  readonly food: string;
  /** What it is said of: so many pieces, or so many milliliters. */
  readonly of: Bounds;
  readonly amount: Bounds;
  readonly amountUnit: string;
}

export interface Drift {
  readonly saying: Saying;
  /** The first place of what the book says most often. */
  readonly usual: Saying;
  /** The usual amount for as much as the saying is of. */
  readonly expected: Bounds;
}

/** What a recipe says of a food, by what it is compared with. */
interface Sayings {
  readonly pieces: readonly (readonly [key: string, saying: Saying])[];
  readonly cups: readonly (readonly [key: string, saying: Saying])[];
}

const sayingsOf = once((dish: Dish): Sayings => {
  const wrong = contradicted(dish, null);
  return {
    pieces: equivalentsOf(dish)
      .filter(
        ({ agreement, passage }) => agreement !== 'wrong' && agreement !== 'loose' && !wrong.has(passage),
      )
      .map((each) => [keyOfPieces(each), ofPieces(dish, each)]),
    cups: dualsOf(dish, null).flatMap((dual) => {
      const saying = ofCups(dish, dual);
      return saying === null ? [] : [[`${saying.food} ${states(dual.words)}`, saying] as const];
    }),
  };
});

/** Every saying that does not agree with what the book says most often of the same food in the same state and size. */
export function* driftsOf(book: Book): Iterable<Drift> {
  const pieces = new Map<string, Saying[]>();
  const cups = new Map<string, Saying[]>();
  for (const dish of book.dishes) {
    const sayings = sayingsOf(dish);
    for (const [key, saying] of sayings.pieces) add(pieces, key, saying);
    for (const [key, saying] of sayings.cups) add(cups, key, saying);
  }
  for (const all of pieces.values()) yield* drifting(all, 'drift');
  for (const all of cups.values()) yield* drifting(all, 'weight-drift');
}

function* drifting(all: readonly Saying[], name: 'drift' | 'weight-drift'): Iterable<Drift> {
  if (all.length < 2) return;
  const tolerance = toleranceFor(name);
  const usual = mostSaid(all);
  for (const saying of all) {
    if (saying === usual) continue;
    const expected = {
      low: usual.amount.low.div(usual.of.high).mul(saying.of.low),
      high: usual.amount.high.div(usual.of.low).mul(saying.of.high),
    };
    if (boundsAgreement(saying.amount, expected, tolerance) !== 'right') yield { saying, usual, expected };
  }
}

/** The first saying of the rate that occurs most often. */
function mostSaid(all: readonly Saying[]): Saying {
  const counts = new Map<string, number>();
  for (const saying of all) counts.set(rateOf(saying), (counts.get(rateOf(saying)) ?? 0) + 1);
  const most = Math.max(...counts.values());
  return all.find((saying) => counts.get(rateOf(saying)) === most)!;
}

function rateOf({ of, amount }: Saying): string {
  return middle(amount).div(middle(of)).valueOf().toPrecision(2);
}

function middle({ low, high }: Bounds): Fraction {
  return low.add(high).div(2);
}

function ofPieces(dish: Dish, each: Equivalent): Saying {
  const { passage, extent, food, count, amount, amountUnit } = each;
  return { dish, passage, extent, food: food.name, of: count, amount, amountUnit };
}

/** A cup of the food in grams, where the handbook has nothing against it. */
function ofCups(dish: Dish, dual: Dual): Saying | null {
  const { judgement, passage, first, second } = dual;
  if (judgement?.food == null || judgement.agreement !== 'right') return null;
  const { from, to, food } = judgement;
  const size = from.unit === null ? null : unitSize(from.unit);
  const grams = to.unit === null ? null : unitSize(to.unit);
  if (size === null || grams === null || from.pack !== null || from.plus.length + to.plus.length > 0)
    return null;
  return {
    dish,
    passage,
    extent: { start: first.start, end: Math.max(first.end, second.end) },
    food: food.name,
    of: { low: from.amount.low.mul(size.value), high: from.amount.high.mul(size.value) },
    amount: { low: to.amount.low.mul(grams.value), high: to.amount.high.mul(grams.value) },
    amountUnit: baseUnits.mass,
  };
}

function keyOfPieces({ food, form, unit, amountUnit, words }: Equivalent): string {
  const sizes = words.filter((word) => lexiconAt([word], 0, 'size') !== null);
  return [food.name, form, unit, amountUnit, sizes.join(' '), states(words)].join(' ');
}

/** What was done to the food, in one order: "chopped", "packed sifted". */
function states(words: readonly string[]): string {
  return [...new Set(words.filter((word) => techniqueOf(word)?.form === 'past'))].sort().join(' ');
}

function add(all: Map<string, Saying[]>, key: string, saying: Saying): void {
  const same = all.get(key);
  if (same === undefined) all.set(key, [saying]);
  else same.push(saying);
}
