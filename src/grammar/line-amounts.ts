/** Knows whose an amount is in an ingredient line: one pack or piece, each of several foods, or an alternative. */
import Fraction from 'fraction.js';
import { foodNamed } from '../larder/foods.js';
import { lexiconAt } from '../larder/lexicon.js';
import { fold, singular } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';
import type { Food, Unit } from '../larder/types.js';
import { unitById, unitNamed } from '../larder/units.js';
import { isWeighed, measure, ONE, packOf, single, sizeNumber } from './drafts.js';
import { keysOf, type Piece } from './line-pieces.js';
import { jointOf } from './naming.js';
import type { Dimension, ListedFood, ListingLine, Measure, Phrase } from './types.js';
import { rowEndingAt, trailingUnit } from './words.js';

/** A second amount of the same food in another size, and the words without it. */
export interface Sized {
  readonly size: readonly Piece[];
  readonly amount: Measure;
  readonly rest: readonly Piece[];
}

/** "large or 4 small zucchini", as it stands after the first amount; null where no second amount follows a size. */
export function sizedAlternative(pieces: readonly Piece[], from: number): Sized | null {
  const keys = keysOf(pieces);
  const joint = from + (lexiconAt(keys, from, 'size')?.length ?? 0);
  const second = pieces[joint + 1];
  const item = second?.draft?.item;
  if (joint === from || item === undefined || jointOf(pieces[joint]!) !== 'or') return null;
  if (item.kind !== 'count' && item.kind !== 'measure') return null;
  const rest = pieces.slice(joint + 2 + (lexiconAt(keys, joint + 2, 'size')?.length ?? 0));
  if (rest.length === 0) return null;
  const amount = item.kind === 'measure' ? item : measure(item.amount, null, item.start, item.end);
  return { size: pieces.slice(from, joint), amount, rest };
}

/**
 * The unit of the amount where it stands in the name: "4 thinly cut slices of ham", "1-inch piece of ginger",
 * "200 g block feta", "4 garlic cloves"; null where none does.
 */
export function unitOfName(
  name: readonly Piece[],
  line: Pick<ListingLine, 'measures' | 'dimensions'>,
  text: string,
): { measure: Measure; name: readonly Piece[] } | null {
  const [first] = name;
  const [length] = line.dimensions;
  const one = length && first && measure(ONE, null, length.start, first.end);
  const stated = line.measures[0] ?? one;
  if (first === undefined || stated === undefined) return null;
  const keys = keysOf(name);
  const opening = openingUnit(keys);
  if (opening !== null) {
    const { unit } = opening;
    const rest = name.slice(opening.length);
    if (stated.unit === null) return { measure: { ...stated, unit: unit.id }, name: rest };
    const beside = text.slice(stated.end, first.start).trim() === '';
    if (beside && isOnePack(stated, unit, first.key))
      return { measure: packOf(ONE, stated, unit.id, stated.start, first.end), name: rest };
  }
  const last = keys[keys.length - 1]!;
  // "3-inch cinnamon sticks" does not tell how many.
  const open = line.measures.length === 0 && last !== singular(last);
  const trailing = stated.unit === null && !open ? trailingUnit(keys) : null;
  return trailing === null ? null : { measure: { ...stated, unit: trailing }, name: name.slice(0, -1) };
}

/** A unit before a name: "block feta", "slices of ham", but not "leaf spinach" where the larder has it. */
function openingUnit(keys: readonly string[]): { unit: Unit; length: number } | null {
  const unit = unitNamed(keys[0] ?? '');
  if (unit === null || !UNITS_OF_NAMES.has(unit.kind)) return null;
  const of = keys[1] === 'of';
  const named = of ? keys.length > 2 : rowEndingAt(keys.slice(1)) !== null;
  return named && (of || !isRowBeginning(keys)) ? { unit, length: of ? 2 : 1 } : null;
}

const UNITS_OF_NAMES: ReadonlySet<Unit['kind']> = new Set<Unit['kind']>(['piece', 'container', 'vague']);

function isRowBeginning(keys: readonly string[]): boolean {
  return rowEndingAt(keys) !== null && rowEndingAt(keys) !== rowEndingAt(keys.slice(1));
}

/** "200 g block feta" is one block of that weight; "200 g slices" are as many as it takes, and "leaf spinach" is a kind. */
function isOnePack(stated: Measure, unit: Unit, word: string): boolean {
  if (!isWeighed(stated) || stated.plus.length > 0) return false;
  return word === singular(word) && unit.kind !== 'vague' && !KINDS.has(unit.id);
}

/** Parts and cuts that name a kind before the food: "leaf spinach", "stem ginger", "fillet steak". */
const KINDS = new Set(['leaf', 'stalk', 'fillet']);

/** Whether a measure after "or" says the first one again: "1 cup (200 g, or 7 ounces)", "2 sticks (1 cup, or 226 g)". */
export function isSaidAgain(first: Measure | undefined, next: Measure): boolean {
  if (first === undefined || first.unit === next.unit || !isOfSize(next)) return false;
  return isOfSize(first) || first.equals.some(isOfSize);
}

function isOfSize({ unit }: Measure): boolean {
  const kind = unit === null ? null : unitById(unit).kind;
  return kind === 'mass' || kind === 'volume';
}

/** "6 x 15 cm tortillas" are six of that size: a small number before one far larger, and a food in the plural. */
export function countedPieces(
  sides: Dimension,
  text: string,
  food: ListedFood | undefined,
): { count: Measure; side: Dimension } | null {
  const [number, side, ...others] = sides.lengths;
  const digits = TIMES.exec(text.slice(sides.start, sides.end));
  if (digits === null || side === undefined || others.length > 0 || food === undefined) return null;
  const last = fold(food.text.split(' ').at(-1)!);
  if (last === singular(last) || number!.amount.low.mul(2).gte(side.amount.low)) return null;
  const count = measure(single(number!.amount.low), null, sides.start, sides.start + digits[1]!.length);
  return { count, side: { ...sides, start: sides.start + digits[0].length, lengths: [side] } };
}

const TIMES = /^(\d{1,2})\s{0,3}[x×]\s{0,3}/i;

/** A food of a list that one amount stands before has that amount too. */
export function eachMeasured(food: ListedFood, index: number, measures: readonly Measure[]): ListedFood {
  return index > 0 && food.joined === 'and' && food.measures.length === 0 ? { ...food, measures } : food;
}

/** "Salt and pepper", "1/2 teaspoon pepper": the bare word means the spice unless there are some of it or a good deal. */
export function meantFood(food: ListedFood, index: number, line: ListingLine): ListedFood {
  const uncounted = food.row?.uncounted;
  if (uncounted === undefined) return food;
  const word = fold(food.text);
  const own = food.measures[0] ?? (index === 0 ? line.measures[0] : undefined);
  const bare = word === singular(word) && foodNamed(word) === food.row;
  if (!bare || (own !== undefined && !isSmall(own)) || (index === 0 && line.size !== null)) return food;
  const meant = foodNamed(uncounted);
  const cut =
    line.foods.length === 1 && [...line.states, ...line.preparation].some((done) => isCut(done, word, meant));
  return cut ? food : { ...food, row: meant };
}

/** "pepper, chopped" is the vegetable; "ground pepper" is a name of the spice. */
function isCut({ text }: Phrase, name: string, meant: Food | null): boolean {
  return text.split(' ').some((part) => {
    const verb = techniqueOf(fold(part));
    return (
      verb?.form === 'past' && verb.technique.does.includes('cut') && foodNamed(`${part} ${name}`) !== meant
    );
  });
}

/** Whether it is no more than one would season with. */
function isSmall(item: Measure): boolean {
  if (item.unit === null) return false;
  const { kind } = unitById(item.unit);
  if (kind === 'vague') return true;
  const most = kind === 'volume' ? MOST_SEASONING_MILLILITERS : kind === 'mass' ? MOST_SEASONING_GRAMS : null;
  return most !== null && item.amount.low.mul(sizeNumber(item.unit)).lte(most);
}

/** Four tablespoons, and an ounce: common practice. */
const MOST_SEASONING_MILLILITERS = new Fraction(60);
const MOST_SEASONING_GRAMS = new Fraction(30);
