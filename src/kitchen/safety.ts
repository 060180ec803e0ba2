/** Knows which listings are raw animal foods, and which temperatures of the method are those of the food itself. */
import Fraction from 'fraction.js';
import type { Recipe } from '../anatomy/types.js';
import { toFahrenheit } from '../arithmetic/temperatures.js';
import type { ListedFood, Temperature } from '../grammar/types.js';
import { isWord, phraseAt, speaksOf } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import type { SafetyClass } from '../larder/types.js';
import type { DoneTemperature, Mention, RawFood } from './types.js';
import type { Words } from './words.js';

/** Above this no food is cooked inside (water boils at 212°F): it is the oven's or the oil's temperature. */
const HOTTEST_FOOD_FAHRENHEIT = new Fraction(211);
/** Below this it is a drink's, a dough's or a refrigerator's temperature. */
const COOLEST_FOOD_FAHRENHEIT = new Fraction(115);
/** From here on a bare number of degrees is taken as Fahrenheit. */
const LEAST_PLAIN_FAHRENHEIT = new Fraction(105);
/** How many words after a temperature may still say that it is the food's own: "165°F on an instant-read thermometer". */
const WORDS_AFTER = 7;

/** The listings that are raw animal foods with a safe minimum temperature. */
export function rawFoodsOf(recipe: Recipe): RawFood[] {
  const found: RawFood[] = [];
  for (const listing of recipe.listings) {
    const food = listing.line.foods.find((each) => each.row?.safety !== undefined && !each.row.ready);
    // "2 cups cooked chicken", "smoked trout", "leftover turkey": nothing raw is left.
    const isReady = speaksOf(listing.passage.text, 'ready-state');
    if (food?.row?.safety === undefined || isReady || !namesWhole(food)) continue;
    found.push({ listing, food: food.row, safety: classOf(food.row.safety, listing.passage.text) });
  }
  return found;
}

/** Meat that the line calls ground is ground meat, of whatever cut. */
function classOf(safety: SafetyClass, text: string): SafetyClass {
  return safety === 'whole-cut' && speaksOf(text, 'ground-state') ? 'ground-meat' : safety;
}

/** Whether the row says all of the food: an unknown word behind it ("chicken bullion", "beef bites") may make it another thing. */
function namesWhole(food: ListedFood): boolean {
  const last = singular(fold(food.name.split(/[\s-]+/).at(-1)!));
  const names = [food.row!.name, ...food.row!.also].flatMap((name) =>
    name.split(/[\s-]+/).map((word) => singular(fold(word))),
  );
  return names.includes(last) || isWord(last, 'vague') || isWord(last, 'small-piece');
}

/** The temperatures to which food is cooked, with the raw foods that each can be about. */
export function doneTemperaturesOf(
  words: readonly Words[],
  mentions: readonly Mention[],
  rawFoods: readonly RawFood[],
): DoneTemperature[] {
  const found: DoneTemperature[] = [];
  words.forEach((step, index) => {
    step.items.forEach((item, at) => {
      if (item.kind !== 'temperature') return;
      const fahrenheit = inFahrenheit(item);
      if (
        fahrenheit === null ||
        fahrenheit.gt(HOTTEST_FOOD_FAHRENHEIT) ||
        fahrenheit.lt(COOLEST_FOOD_FAHRENHEIT)
      )
        return;
      if (!isFoodsOwn(step, at)) return;
      // A glaze of egg does not make it the egg's temperature.
      const named = rawFoods.filter((raw) => raw.safety !== 'egg' && isUsedIn(raw, index, mentions));
      found.push({ step: index, temperature: item, fahrenheit, foods: named.length > 0 ? named : rawFoods });
    });
  });
  return found;
}

function isUsedIn(raw: RawFood, step: number, mentions: readonly Mention[]): boolean {
  return mentions.some(
    (mention) => mention.step === step && mention.role === 'use' && mention.listings.includes(raw.listing),
  );
}

/** The lowest that the text allows, in degrees Fahrenheit; null for a gas mark, which is always an oven's. */
function inFahrenheit(temperature: Temperature): Fraction | null {
  const { low, high } = temperature.amount;
  const least = low.lte(high) ? low : high;
  if (temperature.scale === 'gas') return null;
  return toFahrenheit(
    least,
    temperature.scale ?? (least.gte(LEAST_PLAIN_FAHRENHEIT) ? 'fahrenheit' : 'celsius'),
  );
}

/** Whether the words around a temperature say that it is the food's: "internal", "thermometer", "until it reaches". */
function isFoodsOwn(words: Words, item: number): boolean {
  const position = words.at.findIndex((at) => at > item);
  const after = position < 0 ? words.keys.length : position;
  const sentence = words.sentence[after - 1];
  let said: 'food' | 'other' | null = null;
  for (let at = after - 1; at >= 0 && words.sentence[at] === sentence; at--) {
    if (words.items.slice(words.at[at]!, item).some((between) => between.kind === 'temperature')) break;
    if (phraseAt(words.keys, at, 'inside') !== null) return true;
    // The word nearest to the number tells: "heat the oil and fry until 160°F" is the food's, "until the oil is at 350°F" is not.
    if (said === null && isWord(words.keys[at], 'reaching')) said = 'food';
    if (said === null && isWord(words.keys[at], 'outside')) said = 'other';
  }
  for (
    let at = after;
    at < Math.min(words.keys.length, after + WORDS_AFTER) && words.sentence[at] === sentence;
    at++
  ) {
    const key = words.keys[at];
    if (key === 'internal' || key === 'internally' || key === 'thermometer' || key === 'inside') return true;
  }
  return said === 'food';
}
