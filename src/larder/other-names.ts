/** Gives what else a name may be put as: the other names of its food, and the other spellings of a word. */
import { foodNamed } from './foods.js';
import { larder } from './load.js';
import { fold } from './names.js';
import { termOf } from './synonyms.js';

/** Every other name of a food that the larder knows; none for a word that is no food. */
export function otherNames(wanted: string): string[] {
  const food = foodNamed(wanted);
  if (food === null) return [];
  const own = termOf(food, fold(wanted))?.term;
  return [food.name, ...food.also].filter((name) => termOf(food, fold(name))?.term !== own);
}

/** Every other spelling of a word, a food's or not. */
export function otherSpellings(wanted: string): string[] {
  const food = foodNamed(wanted);
  const own = food === null ? null : termOf(food, fold(wanted));
  const ofFood =
    food === null || own === null
      ? []
      : [food.name, ...food.also].filter((name) => termOf(food, fold(name))?.word === own.word);
  const key = fold(wanted);
  const pairs = larder.kitchenWords.flatMap(({ is, word, means }) =>
    is === 'spelling' && means !== undefined ? [[word, means] as const] : [],
  );
  const means = pairs.find((pair) => pair.some((word) => fold(word) === key))?.[1];
  const ofWord = pairs.filter((pair) => pair[1] === means).flat();
  const written = wanted.toLowerCase();
  return [...new Set([...ofFood, ...ofWord])].filter((name) => name.toLowerCase() !== written);
}
