/** Knows the orders to cook that lead to another page of the book, where it is said how that is done. */
import { does } from '../larder/techniques.js';
import { sentenceAt, wordAt } from './stretches.js';
import type { Dish, Heating } from './types.js';
import { verbAt } from './words.js';

/** "[Cook the pasta](pasta.md)", "cook and drain the [pasta](pasta.md)". */
export function isToldElsewhere({ page, recipe, steps }: Dish, { step, start }: Heating): boolean {
  const inside = page.links.filter(({ target }) => !OUTSIDE.test(target));
  if (inside.length === 0) return false;
  const { passage } = recipe.steps[step]!;
  const { words } = steps[step]!;
  const from = wordAt(words, start);
  const to = Math.min(sentenceAt(words, from).to, from + 1 + FURTHEST_LINK);
  for (let at = from; at < to; at++) {
    const verb = at === from ? null : verbAt(words, at);
    if (verb !== null && !does(verb, 'drain')) return false;
    const word = passage.span(words.words[at]!.start, words.words[at]!.end);
    if (inside.some(({ span }) => word.start < span.end && span.start < word.end)) return true;
  }
  return false;
}

/** How many words behind the verb the link may open. */
const FURTHEST_LINK = 4;

/** A target with a scheme or a host leads out of the book. */
const OUTSIDE = /^(?:[a-z][a-z0-9+.-]*:|\/\/)/i;
