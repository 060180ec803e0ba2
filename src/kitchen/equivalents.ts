/** Judges what a recipe says of pieces in weights and volumes: "1 medium onion (about 1 cup chopped)", "juice of 2 lemons (⅓ cup)". */
import type { Listing } from '../anatomy/types.js';
import { sumMeasures } from '../arithmetic/compare.js';
import type { Agreement, Bounds } from '../arithmetic/tolerance.js';
import { baseUnits } from '../arithmetic/units.js';
import { type Weighing, weighPieces, weightAgreement, weighVolume } from '../arithmetic/weigh.js';
import { readText } from '../grammar/text.js';
import type { Extent, ListedFood, Measure } from '../grammar/types.js';
import { foodNamed } from '../larder/foods.js';
import { toleranceFor } from '../larder/tolerances.js';
import type { Food } from '../larder/types.js';
import { unitById } from '../larder/units.js';
import { partGrams, refuseShares } from '../larder/weights.js';
import { once } from '../manuscript/once.js';
import type { Passage } from '../manuscript/passage.js';
import { measuresSaidTwice, type SaidTwice, wordsIn } from './said-twice.js';
import type { Dish } from './types.js';

export interface Equivalent {
  readonly passage: Passage;
  /** From the count to the amount, in either order on the page. */
  readonly extent: Extent;
  readonly food: Food;
  /** The part asked for: "juice", "zest"; null for the food itself. */
  readonly form: string | null;
  /** So many pieces: the thing itself, or cloves, ears and the like. */
  readonly count: Bounds;
  readonly unit: string | null;
  /** The words of the line, folded and singular. */
  readonly words: readonly string[];
  /** Milliliters or grams. */
  readonly amount: Bounds;
  readonly amountUnit: string;
  readonly amountText: Extent;
  /** How the amount agrees with the handbook; null where the handbook has no such piece. */
  readonly agreement: Agreement | null;
  /** What the pieces weigh by the handbook, in grams. */
  readonly pieces: Bounds | null;
  /** What the stated amount weighs, in grams. */
  readonly stated: Bounds | null;
}

/** Every equivalent of the recipe's list, in its order. */
export const equivalentsOf = once((dish: Dish): readonly Equivalent[] => {
  const found: Equivalent[] = [];
  for (const pair of measuresSaidTwice(dish)) {
    const [food] = pair.foods;
    if (pair.part !== 'listing' || food === undefined || pair.changed || !isCounted(pair.first)) continue;
    push(found, { ...pair, food, form: null, count: pair.first, amount: pair.second });
  }
  for (const listing of dish.recipe.listings) {
    for (const each of counted(listing)) push(found, each);
  }
  return found;
});

interface Stated extends Pick<SaidTwice, 'passage' | 'words'> {
  readonly food: Food;
  readonly form: string | null;
  readonly count: Measure;
  readonly amount: Measure;
}

function push(found: Equivalent[], stated: Stated): void {
  const { passage, words, food, form, count, amount } = stated;
  const sum = sumMeasures([amount]);
  const number = { low: count.amount.low, high: count.amount.high };
  if (
    sum?.unit == null ||
    (sum.unit !== baseUnits.mass && sum.unit !== baseUnits.volume) ||
    number.low.lte(0)
  )
    return;
  const amountBounds = { low: sum.low, high: sum.high };
  const pieces = weighedPieces(food, form, number, count.unit, words);
  const grams = sum.unit === baseUnits.mass ? amountBounds : weighedVolume(food, form, amountBounds, words);
  const agreement =
    pieces === null || grams === null
      ? null
      : weightAgreement(withRefuse(pieces, food), grams, toleranceFor('weight-of-pieces', food));
  found.push({
    passage,
    extent: { start: Math.min(count.start, amount.start), end: Math.max(count.end, amount.end) },
    food,
    form,
    count: number,
    unit: count.unit,
    words,
    amount: amountBounds,
    amountUnit: sum.unit,
    amountText: amount,
    agreement,
    pieces: pieces?.grams ?? null,
    stated: grams,
  });
}

/** Whether a measure counts things or pieces of one. */
function isCounted({ unit, pack, share }: Measure): boolean {
  return pack === null && !share && (unit === null || unitById(unit).kind === 'piece');
}

/** The counts that a line gives beside its measure or for the part it asks for: "1 cup chopped onion (about 1 medium)", "juice of 2 lemons (⅓ cup)". */
function* counted({ line, passage }: Listing): Iterable<Stated> {
  const [measure] = line.measures;
  const [food] = line.foods;
  if (measure === undefined || food?.row == null || line.foods.some((each) => each.joined === 'and')) return;
  if (food.form !== null) {
    if (isCounted(measure))
      for (const amount of measure.equals)
        yield {
          passage,
          words: wordsIn(passage.text),
          food: food.row,
          form: food.form,
          count: measure,
          amount,
        };
    return;
  }
  if (isCounted(measure) || measure.pack !== null) return;
  for (const aside of line.asides) {
    const count = countIn(passage.text, aside, food);
    if (count !== null)
      yield {
        passage,
        words: wordsIn(passage.text),
        food: count.food,
        form: count.form,
        count: count.measure,
        amount: measure,
      };
  }
}

/** "about 1 medium", "from 2 lemons", in the words around an aside; null where it counts nothing, or another food. */
function countIn(
  text: string,
  aside: Extent,
  food: ListedFood,
): { measure: Measure; food: Food; form: string | null } | null {
  const open = Math.max(text.lastIndexOf('(', aside.start), text.lastIndexOf(',', aside.start)) + 1;
  const items = readText(text.slice(open, aside.end));
  const [item, ...others] = items.filter((each) => each.kind === 'measure' || each.kind === 'count');
  if (item === undefined || others.length > 0) return null;
  const measure: Measure =
    item.kind === 'measure'
      ? { ...item, start: item.start + open, end: item.end + open }
      : {
          kind: 'measure',
          start: item.start + open,
          end: item.end + open,
          amount: item.amount,
          unit: null,
          plus: [],
          equals: [],
          pack: null,
          share: false,
        };
  if (!isCounted(measure)) return null;
  const named = items.flatMap((each) => (each.kind === 'word' ? (foodNamed(each.key) ?? []) : []));
  const [other] = named;
  if (other === undefined || other === food.row) return { measure, food: food.row!, form: null };
  // "3 tablespoons lemon juice (from 1 lemon)": the line's food is the part.
  return partGrams(food.row!, other) === null ? null : { measure, food: other, form: food.row!.name };
}

function weighedPieces(
  food: Food,
  form: string | null,
  count: Bounds,
  unit: string | null,
  words: readonly string[],
): Weighing | null {
  if (form === null) return weighPieces(food, count, unit ?? '', words);
  const part = partNamed(food, form);
  const each = part === null || unit !== null ? null : partGrams(part, food);
  if (each === null) return null;
  const grams = { low: count.low.mul(each), high: count.high.mul(each) };
  return { grams, each: [grams] };
}

function weighedVolume(
  food: Food,
  form: string | null,
  milliliters: Bounds,
  words: readonly string[],
): Bounds | null {
  const weighed = form === null ? food : partNamed(food, form);
  return weighed === null ? null : (weighVolume(weighed, milliliters, words)?.grams ?? null);
}

/** "juice" of a lemon is lemon juice. */
function partNamed(food: Food, form: string): Food | null {
  return foodNamed(`${food.name} ${form}`) ?? foodNamed(form);
}

/** The handbook weighs what is eaten; a recipe may weigh what is bought. */
function withRefuse(weighing: Weighing, food: Food): Weighing {
  const most = Math.max(0, ...refuseShares(food));
  const { low, high } = weighing.grams;
  return { ...weighing, grams: { low, high: high.div(1 - most) } };
}
