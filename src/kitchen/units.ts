/** Knows where a listing's amount lacks a unit, or has one that tells a reader nothing. */
import type { Listing } from '../anatomy/types.js';
import { readText } from '../grammar/text.js';
import type { Extent, ListedFood, Measure } from '../grammar/types.js';
import { foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { phraseAt } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import { unitById } from '../larder/units.js';

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

/** An amount that leaves its size to the reader: a container or bunch without a size, or "some". Null when the line is clear. */
export function unclearAmount(listing: Listing): Extent | null {
  const { line } = listing;
  if (line.toTaste || line.asNeeded || line.purpose !== null || line.foods.length === 0) return null;
  const [measure] = line.measures;
  if (measure !== undefined) {
    const unit = measure.unit === null ? null : unitById(measure.unit);
    const sized =
      measure.pack !== null ||
      measure.equals.length > 0 ||
      line.dimensions.length > 0 ||
      line.measures.length > 1;
    return unit?.unclear === true && !sized ? measure : null;
  }
  if (phraseAt(line.text.split(/\s+/, LONGEST_PHRASE).map(fold), 0, 'unclear-amount') === null) return null;
  const words = readText(line.text).filter((item) => item.kind === 'word');
  const some = phraseAt(
    words.map((word) => word.key),
    0,
    'unclear-amount',
  );
  return some === null ? null : { start: words[0]!.start, end: words[some.length - 1]!.end };
}
