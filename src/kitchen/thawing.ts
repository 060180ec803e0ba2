/** Finds raw animal food that is thawed where it gets too warm, and tells cold places from others. */
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import type { HazardWord } from '../larder/hazard-words.js';
import { techniqueOf } from '../larder/techniques.js';
import { isFrozen, isRawAnimal, rawAnimalsOf } from './bought.js';
import {
  allSentences,
  foodsIn,
  isWarned,
  listSentences,
  type Place,
  placeOfWords,
  type Sentence,
  tells,
  wordOf,
} from './hazard-sentences.js';
import type { Dish } from './types.js';

/** Water and ice are no food that could spoil. */
export const WATER = ['water', 'ice'].flatMap(foodsNamed);

/** A stretch of a passage where food is kept unsafely. */
export interface Hold extends Place {
  /** Whether the sentence names the food itself; else it is the recipe's raw food. */
  readonly named: boolean;
}

export interface Named {
  readonly food: string;
  readonly named: boolean;
}

/** Where raw animal food is thawed on the counter, in the sink or in warm water. */
export function unsafeThaws(dish: Dish): Hold[] {
  const animals = dish.recipe.listings.some(({ line }) =>
    line.foods.some(({ row }) => row !== null && isRawAnimal(row)),
  );
  if (!animals) return [];
  const sentences = [...allSentences(dish), ...listSentences(dish)];
  return sentences.flatMap((sentence, index) => {
    const thaw = thawingWord(sentence);
    if (thaw === undefined) return [];
    const food = thawedFood(dish, sentence);
    const place = placeOf(sentence, thaw);
    if (food === null) return [];
    if (place === null) return tellsPlace(sentence) ? [] : warmedNext(sentences[index + 1], sentence, food);
    return isWarned(sentence, place.start) ? [] : [holdOf(sentence, [thaw, place], food)];
  });
}

function tellsPlace(sentence: Sentence): boolean {
  return tells(sentence, 'room', 'cold', 'warm-water', 'freezer');
}

/** "Forgot to thaw it? Hold it under the hot tap": warm water that the sentence behind speaks of, where the first names no place. */
function warmedNext(next: Sentence | undefined, thawing: Sentence, food: Named): Hold[] {
  const water = next?.passage === thawing.passage ? wordOf(next, 'warm-water') : undefined;
  if (next === undefined || water === undefined || isWarned(next, water.start)) return [];
  const isOther = foodsIn(next).some(({ food: each }) => !isAnyOf(each, WATER));
  return isOther ? [] : [holdOf(next, [water], food)];
}

/** The word for thawing; or, where something frozen is left somewhere, the word for frozen. */
export function thawingWord(sentence: Sentence): HazardWord | undefined {
  const thaw = wordOf(sentence, 'thaw');
  if (thaw !== undefined || !tells(sentence, 'leave')) return thaw;
  return tells(sentence, 'room', 'warm-water') || leftOut(sentence) !== null
    ? wordOf(sentence, 'frozen', 'freezer')
    : undefined;
}

/** Where something is thawed, if that is no cold place: the first place told after the word, else the last before it. */
function placeOf(sentence: Sentence, thaw: HazardWord): HazardWord | null {
  const places = sentence.hazards.filter(
    (word) => word.is === 'room' || word.is === 'warm-water' || isCold(sentence, word),
  );
  const out = leftOut(sentence);
  const place =
    places.find(({ start }) => start >= thaw.end) ??
    places.filter(({ end }) => end <= thaw.start).at(-1) ??
    out;
  return place === null || place.is === 'cold' || isColdThere(sentence, place) ? null : place;
}

/** A cold place or water; "outside the refrigerator" is none. */
export function isCold(sentence: Sentence, { is, start }: HazardWord): boolean {
  // "Out of the fridge" is a warm place.
  return (
    is === 'cold' &&
    !sentence.hazards.some((word) => word.is === 'room' && word.start <= start && word.end > start)
  );
}

/** "In the sink under cold running water": a cold place that is said of the same place, before anything joins on. */
function isColdThere(sentence: Sentence, place: HazardWord): boolean {
  const next = sentence.hazards.find(
    ({ is, start }) => start >= place.end && (is === 'cold' || is === 'joining' || is === 'warning'),
  );
  return next?.is === 'cold';
}

/** The raw animal food that the sentence thaws; null for dough, fruit and what else may be thawed so. */
function thawedFood(dish: Dish, sentence: Sentence): Named | null {
  const foods = foodsIn(sentence).filter(({ food }) => !isAnyOf(food, WATER));
  const raw = foods.find(({ food }) => isRawAnimal(food));
  if (raw !== undefined) return { food: raw.food.name, named: true };
  // "Fillets" and "breasts" tell no food.
  if (foods.some(({ food }) => !food.generic) || tells(sentence, 'fermented')) return null;
  const animals = rawAnimalsOf(dish);
  const otherFrozen = dish.recipe.listings.some(
    (listing) => isFrozen(listing) && !listing.line.foods.some(({ row }) => row !== null && isRawAnimal(row)),
  );
  return animals[0] === undefined || otherFrozen ? null : { food: animals[0].name, named: false };
}

/** "Leave the stew out", "let it sit out": the word "out", where no other verb has it ("roll out"). */
export function leftOut(sentence: Sentence): HazardWord | null {
  const { keys } = sentence;
  for (let at = 1; at < keys.length; at++) {
    if (keys[at] !== 'out' || keys[at + 1] === 'of') continue;
    // "Roll out the dough", but "set it out the night before".
    if (
      keys[at + 1] === 'the' &&
      !sentence.hazards.some(({ is, start }) => is === 'long' && (start === at + 1 || start === at + 2))
    )
      continue;
    const isLeft = sentence.hazards.some(
      ({ is, start }) => is === 'leave' && start < at && start >= at - LEAVE_REACH,
    );
    const before = keys[at - 1]!;
    const other =
      techniqueOf(before) !== null && !sentence.hazards.some(({ is, end }) => is === 'leave' && end === at);
    if (isLeft && !other) return { is: 'room', start: at, end: at + 1 };
  }
  return null;
}

/** How many words may stand between "leave" and "out". */
const LEAVE_REACH = 7;

function holdOf(sentence: Sentence, words: readonly HazardWord[], food: Named): Hold {
  const start = Math.min(...words.map((word) => word.start));
  const end = Math.max(...words.map((word) => word.end));
  return { ...placeOfWords(sentence, start, end, food.food), named: food.named };
}
