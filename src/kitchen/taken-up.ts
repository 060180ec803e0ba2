/** Knows whether the method may speak again of something that it has made or made ready, by whatever words. */
import type { Extent, Item } from '../grammar/types.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { singular } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';
import { isMadeWord } from './context.js';
import type { Dish, Mention } from './types.js';

/** A place in a step; offsets into its text. */
export interface StepExtent extends Extent {
  readonly step: number;
}

/** Whether a place stands behind a mention. */
export function isAfter(place: StepExtent, mention: Mention): boolean {
  return place.step > mention.step || (place.step === mention.step && place.start >= mention.end);
}

/**
 * Whether anything behind `last` may take up what was made from `first` to `last`: one of its names, a made thing of which nothing
 * was said before and that is no other component, "it" close by, or what gathers all ("everything", "the vegetables").
 */
export function isTakenUp(
  dish: Dish,
  first: Mention,
  last: Mention,
  names: readonly string[],
  others: readonly string[],
): boolean {
  const before = new Set(dish.steps.slice(0, first.step).flatMap(({ items }) => keysOf(items)));
  const isSaid = dish.steps.slice(last.step).some(({ step, items }) => {
    const words = items.filter(
      (item) => item.kind === 'word' && isAfter({ ...item, step: step.index }, last),
    );
    const keys = keysOf(words);
    return keys.some(
      (key, at) =>
        names.includes(singular(key)) ||
        isWord(key, 'gathering') ||
        phraseAt(keys, at, 'group') !== null ||
        (isWord(key, 'pronoun') && mayStandFor(dish, step.index, words[at]!, last)) ||
        (namesMade(keys, at) && !before.has(key) && !others.includes(singular(key))),
    );
  });
  return isSaid || dish.mentions.some((mention) => mention.group && isAfter(mention, last));
}

/** Whether the word names a made thing and gives no order: "the roll", not "roll each piece". */
function namesMade(keys: readonly string[], at: number): boolean {
  if (isMadeWord(keys, at) === 0) return false;
  return techniqueOf(keys[at]!)?.form !== 'base' || isWord(keys[at - 1], 'referring');
}

function keysOf(items: readonly Item[]): string[] {
  return items.flatMap((item) => (item.kind === 'word' ? [item.key] : []));
}

/** Whether a pronoun is near enough: in the step that made it or the first sentence of the next one, with no other food named before it there. */
function mayStandFor(dish: Dish, step: number, pronoun: Extent, last: Mention): boolean {
  const { items } = dish.steps[step]!;
  const stop = items.findLast(
    (item) => item.kind === 'point' && item.text === '.' && item.end <= pronoun.start,
  );
  if (step > last.step && (step > last.step + 1 || stop !== undefined)) return false;
  return !dish.mentions.some(
    (mention) =>
      mention.step === step &&
      mention.start >= Math.max(stop?.end ?? 0, step === last.step ? last.end : 0) &&
      mention.end <= pronoun.start,
  );
}
