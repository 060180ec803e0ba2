/** Knows the foods that the method makes ready and never puts in. */
import type { Listing } from '../anatomy/types.js';
import { isWord } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { wordsIn } from './progress.js';
import { isTakenUp } from './taken-up.js';
import type { Dish, Mention } from './types.js';

/**
 * The last mention of a food that is only cut, washed or peeled, where nothing behind it may put it in: no other order in its step,
 * no "it", nothing that gathers what was made ready. Null where it goes in, or may.
 */
export function preparedInVain(dish: Dish, listing: Listing): Mention | null {
  const uses = dish.uses[listing.index]!;
  const last = uses.at(-1);
  if (last === undefined || last.step === dish.steps.length - 1 || !uses.every(makesReady)) return null;
  if (goesOn(dish, last)) return null;
  const names = listing.line.foods.flatMap(({ name }) => wordsIn(name));
  return isTakenUp(dish, uses[0]!, last, names, []) ? null : last;
}

function makesReady(mention: Mention): boolean {
  if (mention.group || mention.listings.length !== 1 || mention.verb === null) return false;
  const roles = techniqueOf(fold(mention.verb))?.technique.does ?? [];
  return roles.length > 0 && roles.every((role) => role === 'cut' || role === 'pieces');
}

/** Whether the step goes on to do something else, perhaps with the same food: "chop the onion and fry until soft". */
function goesOn(dish: Dish, last: Mention): boolean {
  return dish.steps[last.step]!.items.some((item) => {
    if (item.kind !== 'word' || item.start < last.end) return false;
    const match = techniqueOf(item.key);
    return isWord(item.key, 'pronoun') || (match?.form === 'base' && !does(match.technique, 'cut'));
  });
}
