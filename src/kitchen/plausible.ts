/** Knows which listed amounts no dish takes, and which units a food does not come in. */
import type Fraction from 'fraction.js';
import type { Listing, Recipe } from '../anatomy/types.js';
import { sumMeasures } from '../arithmetic/compare.js';
import { toBase } from '../arithmetic/convert.js';
import { baseUnits, rational } from '../arithmetic/units.js';
import { weighVolume } from '../arithmetic/weigh.js';
import type { Measure } from '../grammar/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { speaksOf } from '../larder/kitchen-words.js';
import { larder } from '../larder/load.js';
import { once } from '../larder/once.js';
import type { Food, Limit } from '../larder/types.js';
import type { Dish } from './types.js';

export type ExactLimit = Omit<Limit, 'most'> & { readonly most: Fraction };

/** An amount beyond a limit. `servings` is the number that it was divided by; null where the limit is for the whole recipe. */
export interface TooMuch {
  readonly listing: Listing;
  readonly measure: Measure;
  readonly limit: ExactLimit;
  readonly servings: Fraction | null;
}

/** The listed amounts that are more than any dish takes, each with the first limit that it passes. */
export function* tooMuch(dish: Dish): Iterable<TooMuch> {
  const servings = servingsOf(dish.recipe);
  let keeping: boolean | undefined;
  for (const listing of dish.recipe.listings) {
    const food = onlyFood(listing);
    const [measure] = listing.line.measures;
    if (food === null || measure === undefined || measure.share) continue;
    for (const limit of limitsOf(food)) {
      const divisor = limit.per === 'serving' ? servings : null;
      if ((limit.per === 'serving' && divisor === null) || !passes(measure, food, limit, divisor)) continue;
      keeping ??= keepsFood(dish);
      if (limit.kept && keeping) continue;
      yield { listing, measure, limit, servings: divisor };
      break;
    }
  }
}

/** The measures whose unit the food does not come in: "3 cloves flour". */
export function* unsuited(dish: Dish): Iterable<{ listing: Listing; measure: Measure }> {
  for (const listing of dish.recipe.listings) {
    const food = onlyFood(listing);
    const [measure] = listing.line.measures;
    const row = measure === undefined ? undefined : suits().get(measure.unit ?? '');
    if (measure !== undefined && row !== undefined && isAnyOf(food, row)) yield { listing, measure };
  }
}

const limits = once(() =>
  larder.limits.map((limit) => ({
    limit: { ...limit, most: rational(limit.most) },
    kinds: foodsNamed(limit.food),
  })),
);
const known = new Map<Food, readonly ExactLimit[]>();

/** The limits that hold for a food, found once: every line is asked about. */
function limitsOf(food: Food): readonly ExactLimit[] {
  let own = known.get(food);
  if (own === undefined) {
    own = limits().flatMap(({ limit, kinds }) => (isAnyOf(food, kinds) ? [limit] : []));
    known.set(food, own);
  }
  return own;
}

/** By unit, the foods that do not come in it. */
const suits = once(() => new Map(larder.suits.map((row) => [row.unit, row.never.flatMap(foodsNamed)])));

/** The food of a line that asks for one food as it is; null where it names several, or a part. */
function onlyFood({ line }: Listing): Food | null {
  const [food, ...others] = line.foods;
  return food === undefined || others.length > 0 || food.form !== null ? null : food.row;
}

/**
 * Servings that the recipe states; each piece of a yield in pieces counts as one. Null where none are stated: "3/4" is no number of
 * them, and one cake feeds more than one.
 */
function servingsOf(recipe: Recipe): Fraction | null {
  const counts = recipe.yields.flatMap(({ parsed }) => {
    const amount = parsed?.amount ?? null;
    const isThing = parsed !== null && (parsed.of !== '' || parsed.dimensions.length > 0);
    const isOneThing = isThing && (amount?.high.equals(1) ?? false);
    return amount === null || amount.high.lt(1) || isOneThing ? [] : [amount.high];
  });
  return counts.length === 0 ? null : counts.reduce((most, each) => (each.gt(most) ? each : most));
}

function passes(measure: Measure, food: Food, limit: ExactLimit, servings: Fraction | null): boolean {
  const most = servings === null ? limit.most : limit.most.mul(servings);
  if (limit.unit === undefined)
    return measure.unit === null && measure.pack === null && measure.amount.low.gt(most);
  const volume = toBase(most, limit.unit);
  const sum = sumMeasures([{ ...measure, equals: [] }]);
  if (volume === null || sum === null) return false;
  if (sum.unit === baseUnits.volume) return sum.low.gt(volume.value);
  if (sum.unit !== baseUnits.mass) return false;
  const heaviest = weighVolume(food, { low: volume.value, high: volume.value }, []);
  return heaviest !== null && sum.low.gt(heaviest.grams.high);
}

/** Whether salt, sugar or vinegar is there to keep food: the title, the list or the method speaks of brine and the like. */
function keepsFood({ recipe }: Dish): boolean {
  const texts = [
    recipe.title,
    ...recipe.components.map((each) => each.heading),
    ...recipe.listings.map((each) => each.passage),
    ...recipe.steps.map((each) => each.passage),
    ...recipe.headnote,
  ];
  return texts.some((passage) => passage !== null && speaksOf(passage.text, 'keeping'));
}
