/** Tells a thing that the recipe makes ("the sauce", "the bread") from one that has to be on its list. */
import type { Listing } from '../anatomy/types.js';
import { foodsNamed, foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { isKindOf } from '../larder/foods.js';
import { isWord } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Food } from '../larder/types.js';
import { hasArticle, isBoughtToo, isMadeWord, says, tellsWhen } from './context.js';
import { type Progress, wordsIn } from './progress.js';
import type { Named } from './scan.js';
import { governingVerb, measureOf, type Words } from './words.js';

const PRODUCTS = foodsOfClass('product');
const GROWN = foodsOfClass('grown');
const BAKED = foodsOfClass('baked');
const STOCK = foodsNamed('stock');
const WATER = foodsNamed('water');

/** Whether a word such as "sauce" or "filling" means what the recipe makes, and not a thing on the list. */
export function isMade(
  progress: Progress,
  named: Named,
  words: Words,
  listings: readonly Listing[],
  determiner: string | null,
): boolean {
  if (listings.length === 0) {
    // "Half of the marinade" is a share of what is made; "1 cup marinade" was bought.
    const measure = measureOf(words, named.start, named.end);
    if (!isBoughtToo(words.keys, named.end - 1)) return measure === null || measure.share;
    return (
      says(determiner, 'referring') ||
      hasArticle(words, named.start) ||
      madeOf(progress, named, words, determiner)
    );
  }
  if (named.entries.some((entry) => entry.words.length === named.end - named.start)) return false;
  if (!says(determiner, 'referring')) return false;
  // What is listed and has not gone in yet comes first: "boil the noodles" in a recipe for noodles.
  if (isBoughtToo(words.keys, named.end - 1) && !goesIn(words, named.start)) return true;
  if (listings.some((listing) => !progress.used.has(listing))) return false;
  const word = singular(words.keys[named.end - 1]!);
  return (
    progress.titleWords.has(word) ||
    progress.recipe.components.some((component) => component.name?.split(' ').includes(word)) ||
    listings.length > 1
  );
}

/**
 * Whether an unlisted food is what the recipe itself makes: a component's name, a product that the title names ("the bread"
 * of "Coconut Bread"), or a mixture of what is listed ("tomato sauce" from tomatoes).
 */
export function madeOf(progress: Progress, named: Named, words: Words, determiner: string | null): boolean {
  const keys = words.keys.slice(named.start, named.end).map(singular);
  const isNamed = (name: string | null): boolean =>
    name !== null && keys.every((key) => wordsIn(name).includes(key));
  if (progress.recipe.components.some((component) => isNamed(component.name))) return true;
  if (named.food !== null && [...progress.made].some((food) => isKindOf(food, named.food!))) return true;
  const mixedIn = isMixedIn(words, named.start);
  const refers = says(determiner, 'referring');
  if (!mixedIn && isTitled(progress, named.food, keys)) return true;
  if (refers && isAnyOf(named.food, BAKED) && !goesIn(words, named.start)) return true;
  if (isCookedOut(progress, named.food, refers)) return true;
  if (keys.length === 1 || isMadeWord(keys, keys.length - 1) === 0) return false;
  const before = keys.slice(0, -1);
  // "The spice mixture" is never bought.
  if (refers && (before.every((key) => isWord(key, 'adjective')) || !isBoughtToo(keys, keys.length - 1)))
    return true;
  return (
    !mixedIn &&
    measureOf(words, named.start, named.end) === null &&
    before.some((key) => progress.vocabulary.byWord.has(key))
  );
}

/** Whether a step says of the name how it is made ("prepare the pepper sauce by stirring"), or an earlier one did. */
export function isGivenName({ given }: Progress, { start, end, made }: Named, words: Words): boolean {
  const keys = words.keys.slice(start, end).map(singular);
  const name = keys.join(' ');
  const verb = governingVerb(words, start);
  const isTold =
    verb !== null &&
    does(verb, 'prepare') &&
    words.keys[end] === 'by' &&
    words.before[end] === '' &&
    techniqueOf(words.keys[end + 1] ?? '')?.form === 'ing';
  if (isTold) given.add(name);
  return given.has(name) || (made && [...given].some((each) => each.endsWith(` ${name}`)));
}

/** "Strain the broth": water of the list that meat, bones or vegetables have simmered in. */
function isCookedOut(progress: Progress, food: Food | null, refers: boolean): boolean {
  if (!refers || !isAnyOf(food, STOCK)) return false;
  return [...progress.used].some((listing) => listing.line.foods.some(({ row }) => isAnyOf(row, WATER)));
}

/** "Ricotta" is a recipe for ricotta, "Tomato Soup" one for soup; "Spaghetti with Clams" is none for spaghetti. */
function isTitled(progress: Progress, food: Food | null, keys: readonly string[]): boolean {
  if (!keys.every((key) => progress.titleWords.has(key))) return false;
  if (isProduct(food)) return true;
  if (isAnyOf(food, GROWN)) return false;
  // "Peanut Butter" makes butter, and no peanuts.
  return progress.titleWords.size <= keys.length + 1 && keys.at(-1) === [...progress.titleWords].at(-1);
}

/** Whether the food is of a class that recipes make: a dish, a dough, a sauce. */
export function isProduct(food: Food | null): boolean {
  return food?.dish === true || isAnyOf(food, PRODUCTS) || isAnyOf(food, BAKED);
}

/** "stir to a cream", "reduce to a syrup", "beat the egg whites into snow": what the food becomes. */
export function isTurnedInto(words: Words, start: number): boolean {
  const verb = words.keys[start - 1] === 'into' ? governingVerb(words, start) : null;
  if (verb !== null && isWord(fold(verb.name), 'becoming')) return true;
  return (
    hasArticle(words, start) &&
    words.keys
      .slice(Math.max(0, start - 4), start)
      .some((key) => key === 'to' || key === 'into' || key === 'form')
  );
}

/** Whether the verb before puts the food in among others: what is added so has not been made by this recipe. */
function isMixedIn(words: Words, start: number): boolean {
  const verb = governingVerb(words, start);
  return (
    verb !== null && (verb.name === 'add' || does(verb, 'combine', 'season')) && !tellsWhen(words, start)
  );
}

/** Whether the verb before adds the food, and the food stands in no clause that says when to stop. */
function goesIn(words: Words, start: number): boolean {
  const verb = governingVerb(words, start);
  return verb !== null && does(verb, 'add', 'combine', 'season', 'coat') && !tellsWhen(words, start);
}
