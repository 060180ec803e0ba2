/** Knows where a listing's amount lacks a unit, or has one that tells a reader nothing. */
import type { Listing } from '../anatomy/types.js';
import { readText } from '../grammar/text.js';
import type { Extent, ListedFood, Measure } from '../grammar/types.js';
import { foodsNamed, foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { phraseAt } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import { unitById } from '../larder/units.js';
import type { Dish } from './types.js';

const MASS = foodsOfClass('mass');
const MASS_PLURAL = foodsOfClass('mass-plural');
const COUNTABLE = foodsOfClass('countable');
/** Words in "a good amount of" and the like. */
const LONGEST_PHRASE = 4;
/** Nobody counts out as many pieces: a number from here on has lost its unit. */
const TOO_MANY_TO_COUNT = 60;

/** The measure of a listing that has a number, no unit, and a food that is measured rather than counted; else null. */
export function lacksUnit(listing: Listing): Measure | null {
  const [measure] = listing.line.measures;
  const [food] = listing.line.foods;
  if (
    measure === undefined ||
    food === undefined ||
    measure.unit !== null ||
    measure.share ||
    measure.pack !== null
  )
    return null;
  if (measure.equals.length > 0 || listing.line.dimensions.length > 0 || food.form !== null) return null;
  if (measure.amount.low.gte(TOO_MANY_TO_COUNT)) return measure;
  if (isAnyOf(food.row, COUNTABLE) || !isAnyOf(food.row, MASS)) return null;
  return !isPlural(food) || isAnyOf(food.row, MASS_PLURAL) ? measure : null;
}

function isPlural(food: ListedFood): boolean {
  const last = fold(food.text.split(/[\s-]+/).at(-1)!);
  return singular(last) !== last;
}

/** A container whose size the line does not give: "1 can tomatoes". Null when the line is clear, or has no container. */
export function packWithoutSize(listing: Listing): Measure | null {
  const measure = unsizedMeasure(listing);
  return measure !== null && isContainer(measure) && !isAnyOf(listing.line.foods[0]!.row, WATER)
    ? measure
    : null;
}

/** An amount that leaves its size to the reader: a bunch or a glass without a size, or "some". Null when the line is clear. */
export function unclearAmount(listing: Listing): Extent | null {
  const { line } = listing;
  if (isFree(listing)) return null;
  if (line.measures.length > 0) {
    const measure = unsizedMeasure(listing);
    return measure !== null && !isContainer(measure) && isUnitOf(measure, listing) ? measure : null;
  }
  if (isAnyOf(line.foods[0]!.row, SEASONING)) return null;
  if (phraseAt(line.text.split(/\s+/, LONGEST_PHRASE).map(fold), 0, 'unclear-amount') === null) return null;
  const words = readText(line.text).filter((item) => item.kind === 'word');
  const some = phraseAt(
    words.map((word) => word.key),
    0,
    'unclear-amount',
  );
  return some === null ? null : { start: words[0]!.start, end: words[some.length - 1]!.end };
}

/** A measure in ounces of a food that is bought by the weight and by the volume, where nothing tells which is meant. */
export function ounceOfEitherKind(listing: Listing): Measure | null {
  const { line } = listing;
  const [measure] = line.measures;
  const [food] = line.foods;
  if (measure?.unit !== OUNCE || food === undefined || food.form !== null) return null;
  const told = measure.equals.length > 0 || measure.plus.length > 0 || line.measures.length > 1;
  return !told && isAnyOf(food.row, EITHER_OUNCE) && !isAnyOf(food.row, SOLID) ? measure : null;
}

/** Whether the recipe tells its fluid ounces from its ounces by name, so that a bare ounce is a weight. */
export function namesFluidOunces({ recipe }: Dish): boolean {
  return recipe.listings.some(({ line }) =>
    line.measures.some(({ unit, plus, equals }) =>
      [unit, ...plus.map((each) => each.unit), ...equals.map((each) => each.unit)].includes(FLUID_OUNCE),
    ),
  );
}

/** "Two glass marbles" are none of a glass: an unknown food takes a vague unit only with "of". */
function isUnitOf(measure: Measure, { line, passage }: Listing): boolean {
  const [food] = line.foods;
  if (food === undefined || food.row !== null || unitById(measure.unit!).kind !== 'vague') return true;
  return passage.text.slice(measure.start, food.start).split(/\s+/).map(fold).includes('of');
}

/** A pot of water is no pack, and a little salt is clear. */
const WATER = foodsNamed('water');
const SEASONING = foodsOfClass('seasoned-with');
const OUNCE = 'ounce';
const FLUID_OUNCE = 'fluid-ounce';
const EITHER_OUNCE = foodsOfClass('either-ounce');
const SOLID = foodsOfClass('weighed-only');

/** Whether the line leaves the amount to the cook, or names no food. */
function isFree({ line }: Listing): boolean {
  return line.toTaste || line.asNeeded || line.purpose !== null || line.foods.length === 0;
}

/** The line's measure where its unit has no size of its own and the line gives none. */
function unsizedMeasure(listing: Listing): Measure | null {
  const { line } = listing;
  const [measure] = line.measures;
  if (isFree(listing) || measure?.unit == null || !unitById(measure.unit).unclear) return null;
  const sized =
    measure.pack !== null ||
    measure.equals.length > 0 ||
    line.dimensions.length > 0 ||
    line.measures.length > 1;
  return sized ? null : measure;
}

function isContainer({ unit }: Measure): boolean {
  return unit !== null && unitById(unit).kind === 'container';
}
