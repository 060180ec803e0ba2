/** Says what a listing weighs where its line does not measure by weight, by the tables of the larder. */
import type { Listing } from '../anatomy/types.js';
import { type Sum, sumMeasures } from '../arithmetic/compare.js';
import { baseUnits, type System } from '../arithmetic/units.js';
import { weighPieces, weighVolume } from '../arithmetic/weigh.js';
import { speaksOf } from '../larder/kitchen-words.js';
import { refuseShares } from '../larder/weights.js';
import { wordsIn } from './said-twice.js';

export interface ListingWeight {
  /** In grams. */
  readonly sum: Sum;
  /** Whether it is of what is eaten alone, and peel, stones or bones come on top. */
  readonly trimmed: boolean;
}

/** Null where no table says, where the line is of several foods, and where its food was changed before it is measured. */
export function weightOfListing({ line, passage }: Listing, system?: System): ListingWeight | null {
  const [named, ...others] = line.foods;
  const sum = sumMeasures(line.measures, system);
  if (named === undefined || named.row === null || named.form !== null || sum === null) return null;
  if (others.some(({ joined }) => joined === 'and') || line.measures.some(({ pack }) => pack !== null))
    return null;
  if (speaksOf(passage.text, 'changed')) return null;
  const food = named.row;
  // What every row of a tomato says tells no row from another; "cherry" before it does.
  const noun = wordsIn(named.text).at(-1);
  const words = wordsIn(passage.text).filter((word) => word !== noun);
  const isVolume = sum.unit === baseUnits.volume;
  const weighed = isVolume ? weighVolume(food, sum, words) : weighPieces(food, sum, sum.unit ?? '', words);
  if (weighed === null) return null;
  return {
    sum: { unit: baseUnits.mass, ...weighed.grams },
    trimmed: !isVolume && refuseShares(food).some((share) => share > 0),
  };
}
