/** Knows how hot the stove is: the heat that the method sets, and where it sets none or two at once. */
import { does } from '../larder/techniques.js';
import {
  isWordOf,
  methodSentences,
  type Place,
  placeOfWords,
  type Sentence,
  tells,
} from './hazard-sentences.js';
import type { Dish, Heating } from './types.js';

/** Words that set two heats at once: "over medium to high heat". */
export function heatMuddles(dish: Dish): Place[] {
  return methodSentences(dish).flatMap((sentence) =>
    sentence.hazards
      .filter(({ is, start, end }) => is === 'heat-muddle' && isOfStove(sentence, start, end))
      .map(({ start, end }) => placeOfWords(sentence, start, end, '')),
  );
}

/**
 * The first order to fry or sear for which no heat was set so far, in a recipe that sets one later: a recipe that never does
 * leaves the stove to the cook, and is not asked about every pan.
 */
export function unsetFrying(dish: Dish): Heating | null {
  const heating = dish.heatings.find(
    ({ technique }) => does(technique, 'dry-heat') && !does(technique, 'oven') && technique.name !== 'grill',
  );
  if (heating === undefined) return null;
  const method = methodSentences(dish);
  const isSet = (sentence: Sentence) => tells(sentence, 'heat-setting') || tells(sentence, 'heat-muddle');
  if (method.some((sentence) => sentence.step! <= heating.step && (isSet(sentence) || isNoStove(sentence))))
    return null;
  return method.some((sentence) => sentence.step! > heating.step && setsStove(sentence)) ? heating : null;
}

/** "Over medium to high heat", "on medium to high"; "from medium to high heat" is a change, and a mixer has speeds. */
function isOfStove(sentence: Sentence, start: number, end: number): boolean {
  const before = sentence.keys[start - 1];
  if (isWordOf(sentence, end, 'mixer-word') || before === 'from') return false;
  // "Medium-low to medium" is one step of the knob.
  if (before === 'medium' && sentence.keys[end - 1] === 'medium') return false;
  return tellsHeat(sentence, end) || isWordOf(sentence, start - 1, 'setting-word');
}

/** Whether "heat", "flame" or their like stand at words `end` or right after. */
function tellsHeat(sentence: Sentence, end: number): boolean {
  return sentence.hazards.some(({ is, start }) => is === 'stove-word' && start >= end && start <= end + 1);
}

/** Fried in air, in an oven, over coals: no stove whose heat could be set. */
function isNoStove(sentence: Sentence): boolean {
  return tells(sentence, 'no-stove');
}

function setsStove(sentence: Sentence): boolean {
  return sentence.hazards.some(({ is, end }) => is === 'heat-setting' && tellsHeat(sentence, end - 1));
}
