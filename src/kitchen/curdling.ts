/** Finds cultured dairy that is stirred at once into something boiling. */
import { isAnyOf } from '../larder/food-classes.js';
import { hazardFoods, tellsOf } from '../larder/hazard-words.js';
import { isWordOf, methodSentences, type Sentence, sentenceOf, tells, wordOf } from './hazard-sentences.js';
import type { Dish, Mention } from './types.js';

const CURDLES = hazardFoods('curdles');

/** The mentions of cultured dairy that go straight into a pot which boils or simmers. */
export function curdlingMentions(dish: Dish): Mention[] {
  const dairy = dish.mentions.filter(
    ({ role, food, verb }) =>
      role === 'use' && isAnyOf(food, CURDLES) && verb !== null && tellsOf(verb, 'pours'),
  );
  return dairy.length === 0 ? [] : dairy.filter((mention) => boilsWhenStirredIn(dish, mention));
}

function boilsWhenStirredIn(dish: Dish, mention: Mention): boolean {
  const method = methodSentences(dish);
  const own = sentenceOf(method, mention);
  if (own === undefined) return false;
  const at = method.indexOf(own);
  if (tells(own, 'off-heat', 'gently', 'together', 'cooled')) return false;
  // What follows at once may still say how: "a spoonful at a time".
  const next = method[at + 1];
  if (next !== undefined && next.step === mention.step && tells(next, 'gently')) return false;
  const place = wordPlace(own, mention);
  // "Stir the cucumber into the yogurt": nothing happens to the yogurt.
  if (isWordOf(own, place - 1, 'receives') || isWordOf(own, place - 2, 'receives')) return false;
  // "Into the boiling soup" says it behind the food, "and bring to a boil" does not.
  const boils = own.hazards.filter(({ is }) => is === 'boil');
  if (boils.some(({ start, end }) => end <= place || own.keys[start - 1] === 'the')) return true;
  for (let index = at - 1; index >= 0 && index >= at - BOILING_REACH; index--) {
    const before = method[index]!;
    if (mention.step - before.step! > 1 || tells(before, 'off-heat', 'cooled')) return false;
    const boil = wordOf(before, 'boil');
    if (boil !== undefined) return true;
  }
  return false;
}

/** How many sentences back a pot that boils is still on the boil. */
const BOILING_REACH = 3;

function wordPlace(sentence: Sentence, mention: Mention): number {
  return sentence.places.filter(([start]) => start < mention.start).length;
}
