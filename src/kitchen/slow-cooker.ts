/** Finds frozen meat or poultry that goes into a slow cooker. */
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { isFrozen, isRawAnimal } from './bought.js';
import {
  allSentences,
  anyTells,
  foodsIn,
  isWarned,
  methodSentences,
  type Place,
  placeOfWords,
  type Sentence,
  tells,
  wordOf,
} from './hazard-sentences.js';
import type { Dish } from './types.js';

const MEAT = ['meat', 'poultry'].flatMap(foodsNamed);

/** The frozen meat, in the method where it says so, else where the method first uses the frozen listing; null where it is thawed first. */
export function frozenInSlowCooker(dish: Dish): Place | null {
  const method = methodSentences(dish);
  if (!anyTells(method, 'slow-cooker')) return null;
  if (allSentences(dish).some((sentence) => isThawed(sentence))) return null;
  for (const sentence of method) {
    const meat = frozenMeatIn(sentence);
    if (meat !== null) return meat;
  }
  const listing = dish.recipe.listings.find(
    (each) => isFrozen(each) && each.line.foods.some(({ row }) => row !== null && isMeat(row)),
  );
  if (listing === undefined) return null;
  const food = listing.line.foods[0]!;
  const use = dish.uses[listing.index]!.find(({ group }) => !group);
  return use === undefined
    ? { passage: listing.passage, start: food.start, end: food.end, food: food.name }
    : { passage: dish.recipe.steps[use.step]!.passage, start: use.start, end: use.end, food: food.name };
}

/** "The frozen beef", "the beef, still frozen", "the beef straight from the freezer", but not "the beef and the frozen peas". */
function frozenMeatIn(sentence: Sentence): Place | null {
  const frozen = wordOf(sentence, 'frozen', 'unthawed');
  if (frozen === undefined || isWarned(sentence, frozen.start)) return null;
  const foods = foodsIn(sentence);
  const next = foods.find(
    ({ start, end }) => start === frozen.end || (start <= frozen.start && end > frozen.end),
  );
  const meat = next ?? foods.find(({ food }) => isMeat(food));
  return meat === undefined || !isMeat(meat.food)
    ? null
    : placeOfWords(sentence, meat.start, meat.end, meat.food.name);
}

/** Whether the sentence thaws meat, or names no food at all and thaws. */
function isThawed(sentence: Sentence): boolean {
  if (!tells(sentence, 'thaw') || tells(sentence, 'unthawed')) return false;
  const foods = foodsIn(sentence);
  return foods.length === 0 || foods.some(({ food }) => isMeat(food));
}

function isMeat(food: Parameters<typeof isRawAnimal>[0]): boolean {
  return (
    isRawAnimal(food) &&
    (isAnyOf(food, MEAT) ||
      food.safety === 'poultry' ||
      food.safety === 'ground-meat' ||
      food.safety === 'whole-cut')
  );
}
