/** Compares the preparation on the list with the one that the method asks for: cut twice, cut otherwise, or cut by nobody. */
import type { Listing } from '../anatomy/types.js';
import type { Item, Phrase } from '../grammar/types.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Technique } from '../larder/types.js';
import { isPartOfListing } from './accounts.js';
import { says } from './context.js';
import type { Dish, Mention } from './types.js';

export interface Disagreement {
  readonly listing: Listing;
  readonly mention: Mention;
  /** The preparation in the method; offsets into the step's text. */
  readonly start: number;
  readonly end: number;
  /** again: the list has done it; otherwise: the list has done another; undone: neither list nor method has done it. */
  readonly how: 'again' | 'otherwise' | 'undone';
  /** The words of the list that say how the food comes; null where it comes as it is. */
  readonly listed: Phrase | null;
  /** What the method orders, or has as done. */
  readonly technique: Technique;
}

/** Every food of the method whose preparation is not the list's, in the order of the list. */
export function* preparationDisagreements(dish: Dish): Iterable<Disagreement> {
  for (const listing of dish.recipe.listings) {
    const uses = dish.uses[listing.index]!.filter(isOfOne);
    const [first] = uses;
    if (first === undefined) continue;
    const done = doneOn(listing);
    const undone =
      done.length === 0 && listing.line.measures.length > 0 ? stateOf(dish, first, listing) : null;
    if (undone !== null) yield undone;
    for (const mention of done.length === 0 ? [] : uses) {
      const found = orderedAgain(dish, mention, listing, done);
      if (found === null) continue;
      yield found;
      break;
    }
  }
}

interface Done {
  readonly technique: Technique;
  readonly phrase: Phrase;
}

/** What the list says was done to a food before it was measured or after. */
function doneOn({ line, passage }: Listing): Done[] {
  // "2 bananas (250 g peeled)" says of which weight it speaks, and not how the bananas come.
  const said = [...line.states, ...line.preparation].filter((phrase) => !isWeighed(passage.text, phrase));
  return said.flatMap((phrase) =>
    phrase.text.split(/[^\p{L}\p{N}-]+/u).flatMap((word) => {
      const match = techniqueOf(fold(word));
      return match?.form === 'past' && does(match.technique, 'cut')
        ? [{ technique: match.technique, phrase }]
        : [];
    }),
  );
}

/** Whether a figure stands before the phrase in its brackets. */
function isWeighed(text: string, { start }: Phrase): boolean {
  const open = text.lastIndexOf('(', start);
  return open >= 0 && /^[^),]*\d[^),]*$/.test(text.slice(open, start));
}

function isOfOne(mention: Mention): boolean {
  return !mention.group && mention.listings.length === 1 && !mention.telling && !mention.into;
}

/** An order to cut what the list has cut. */
function orderedAgain(
  dish: Dish,
  mention: Mention,
  listing: Listing,
  done: readonly Done[],
): Disagreement | null {
  const isPart = says(mention.determiner, 'rest-word') || says(mention.determiner, 'reserve-word');
  if (isPart || mention.measure !== null) return null;
  for (const { item, technique } of ordersOn(dish.steps[mention.step]!.items, mention)) {
    const same = done.find((each) => each.technique === technique && technique.name !== 'cut');
    const other = done.find((each) => does(each.technique, 'pieces'));
    const place = { listing, mention, technique, start: item.start, end: item.end };
    if (same !== undefined) return { ...place, how: 'again', listed: same.phrase };
    // Potatoes diced to be boiled are mashed afterwards.
    if (other !== undefined && does(technique, 'pieces') && !does(technique, 'combine'))
      return { ...place, how: 'otherwise', listed: other.phrase };
  }
  return null;
}

interface Order {
  readonly item: Item;
  readonly technique: Technique;
}

/** The orders of which the mention is the first object: "peel and slice the potatoes" has two. */
function ordersOn(items: readonly Item[], mention: Mention): Order[] {
  let at = items.findIndex((item) => item.start >= mention.start) - 1;
  while (at >= 0 && items[at]!.kind === 'word' && orderAt(items, at)?.technique.name !== mention.verb) at--;
  const nearest = orderAt(items, at);
  if (nearest === null) return [];
  const joined = isWordOf(items[at - 1], 'and') ? orderAt(items, at - 2) : null;
  // "The juice, and tuck": what has a word before it is no order.
  return joined !== null && items[at - 3]?.kind !== 'word' ? [nearest, joined] : [nearest];
}

function orderAt(items: readonly Item[], at: number): Order | null {
  const item = items[at];
  const match = item?.kind === 'word' ? techniqueOf(item.key) : null;
  return item === undefined || match?.form !== 'base' ? null : { item, technique: match.technique };
}

function isWordOf(item: Item | undefined, key: string): boolean {
  return item?.kind === 'word' && item.key === key;
}

/** "Add the chopped walnuts", of walnuts that come whole and that no step has chopped. */
function stateOf(dish: Dish, mention: Mention, listing: Listing): Disagreement | null {
  const { items } = dish.steps[mention.step]!;
  const at = items.findIndex((item) => item.start >= mention.start);
  const before = items[at - 1];
  if (before?.kind !== 'word') return null;
  const match = techniqueOf(before.key);
  if (isPartOfListing(listing, mention)) return null;
  if (match?.form !== 'past' || !does(match.technique, 'pieces') || isOrdered(dish, match.technique, mention))
    return null;
  const { technique } = match;
  return { listing, mention, technique, start: before.start, end: mention.end, how: 'undone', listed: null };
}

/** Whether the method orders that cut anywhere before the mention, of whatever. */
function isOrdered(dish: Dish, technique: Technique, mention: Mention): boolean {
  return dish.steps.slice(0, mention.step + 1).some(({ items, step }) =>
    items.some((item) => {
      if (item.kind !== 'word' || (step.index === mention.step && item.start >= mention.start)) return false;
      const match = techniqueOf(item.key);
      return match?.technique === technique && match.form !== 'past';
    }),
  );
}
