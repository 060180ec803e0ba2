/** Finds oven temperatures beyond what a home oven does. */
import { isTooHot } from '../arithmetic/oven.js';
import type { Temperature } from '../grammar/types.js';
import { speaksOf } from '../larder/kitchen-words.js';
import type { Passage } from '../manuscript/passage.js';
import type { Dish } from './types.js';

/** The temperatures of method, headnote and notes that no home oven reaches, where no hotter fire is spoken of. */
export function tooHotOvens(dish: Dish): { passage: Passage; item: Temperature }[] {
  const found: { passage: Passage; item: Temperature }[] = [];
  for (const { passage, items } of dish.parts) {
    for (const item of items) {
      // Where the same is said on another scale and that is possible, the two disagree, which is another mark.
      if (item.kind !== 'temperature' || ![item, ...item.equals].every(isTooHot)) continue;
      if (!speaksOf(passage.text, 'hotter-oven')) found.push({ passage, item });
    }
  }
  if (found.length === 0 || burnsHotter(dish)) return [];
  return found;
}

/** Whether the recipe as a whole is for a pizza oven, a grill, a fire. */
function burnsHotter(dish: Dish): boolean {
  const { title, headnote, equipment } = dish.recipe;
  return [...(title === null ? [] : [title]), ...headnote, ...equipment].some(({ text }) =>
    speaksOf(text, 'hotter-oven'),
  );
}
