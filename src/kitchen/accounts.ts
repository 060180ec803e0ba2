/** Keeps the account of every listing: what each use takes of it, in the order of the method. */
import type { Listing, Recipe } from '../anatomy/types.js';
import type { Measure } from '../grammar/types.js';
import { isPartOf } from '../larder/foods.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { unitById } from '../larder/units.js';
import { isFromVessel, says } from './context.js';
import type { Account, Dish, Mention, ReadStep, Taking } from './types.js';

/** The account of each listing, by its index. `uses` are the mentions that use it, by the same index. */
export function accountsOf(
  recipe: Recipe,
  steps: readonly ReadStep[],
  uses: readonly (readonly Mention[])[],
): Account[] {
  return recipe.listings.map((listing) => {
    const takings: Taking[] = [];
    const own = uses[listing.index]!;
    for (const [index, mention] of own.entries()) {
      const how = taken(listing, mention, takings);
      // "Reserve the oil. … Pour in the remaining oil": what was strained off, and no more of the bottle.
      if (
        says(mention.determiner, 'rest-word') &&
        own.slice(0, index).some((other) => isKept(other, takings))
      )
        continue;
      // "Add 1 cup of broth from the pot": all of it went into the pot before.
      if (how === null || (takings.length > 0 && isFromVessel(steps[mention.step]!.words, mention))) continue;
      // "Wash the potatoes. … Add potatoes": what was only made ready goes in now.
      if (takings.at(-1)?.how === 'some' && makesReady(takings.at(-1)!.mention)) takings.pop();
      takings.push({ mention, how });
    }
    const closed = isClosed(listing, takings, steps) && !hasOtherSource(recipe, listing);
    return { listing, takings, closed };
  });
}

/** Whether a mention keeps for later what had gone in before, and takes nothing itself: "reserve the oil". */
function isKept(mention: Mention, takings: readonly Taking[]): boolean {
  return (
    isWord(mention.verb ?? undefined, 'kept-back') && takings.every((taking) => taking.mention !== mention)
  );
}

/** Whether another listing gives the same food: juice of the listed lemons is not bound by a line of lemon juice beside them. */
export function hasOtherSource(recipe: Recipe, listing: Listing): boolean {
  const own = listing.line.foods.flatMap(({ row }) => row ?? []);
  return recipe.listings.some(
    (other) =>
      other !== listing &&
      other.line.foods.some(
        ({ row }) => row !== null && own.some((food) => food !== row && isPartOf(food, row)),
      ),
  );
}

function isClosed(listing: Listing, takings: readonly Taking[], steps: readonly ReadStep[]): boolean {
  return (
    listing.line.foods.every((food) => food.joined !== 'and') &&
    takings.every(
      ({ mention }) => mention.listings.length === 1 && !takenSeveralTimes(steps[mention.step]!, mention),
    )
  );
}

/** What a mention takes after those before it; null where it only refers back to what went in: "simmer until the lentils are soft". */
function taken(listing: Listing, mention: Mention, before: readonly Taking[]): Taking['how'] | null {
  const { measure, determiner } = mention;
  if (mention.telling || isPartOfListing(listing, mention) || isUncounted(measure)) return null;
  if (isOneOfMany(listing, mention)) return null;
  if (mention.allBut) return 'but';
  if (measure !== null && !isPieceOf(listing, measure)) return measure.share ? 'share' : 'amount';
  if (says(determiner, 'rest-word') || says(determiner, 'reserve-word')) return 'rest';
  if (says(determiner, 'extra-word')) return 'extra';
  if (mention.surface) return 'surface';
  return isFirst(before) || (determiner === null && addsAnew(mention, before)) ? 'some' : null;
}

/** "One piece of bread" of a loaf: how the food is cut, and no amount of the list's. */
function isPieceOf({ line }: Listing, { unit, share }: Measure): boolean {
  if (share || unit === null || unitById(unit).kind !== 'piece') return false;
  return line.measures.length > 0 && line.measures.every((each) => each.unit !== null && each.unit !== unit);
}

/** "A slice of ham" of twelve: for each. */
export function isOneOfMany(listing: Listing, { measure }: Mention): boolean {
  if (measure === null || measure.unit === null || !measure.amount.high.equals(1)) return false;
  const { kind } = unitById(measure.unit);
  return kind !== 'volume' && kind !== 'mass' && listing.line.measures.some(({ amount }) => amount.low.gt(1));
}

/** Whether only a part of the food is named: the zest of a listed lemon leaves the juice for another step, and neither is a share of an amount. */
export function isPartOfListing(listing: Listing, { food }: Mention): boolean {
  return (
    food !== null && listing.line.foods.some(({ row }) => row !== null && row !== food && isPartOf(food, row))
  );
}

/** A pinch or a dash is not counted up. */
function isUncounted(measure: Measure | null): boolean {
  return measure !== null && measure.unit !== null && unitById(measure.unit).kind === 'vague';
}

function isFirst(before: readonly Taking[]): boolean {
  return before.every(({ how }) => how === 'surface');
}

/** "Add butter", "beat an egg" after some has gone in before: nothing says that it is the same. */
function addsAnew(mention: Mention, before: readonly Taking[]): boolean {
  if (mention.into || mention.group || mention.verb === null) return false;
  const last = before.at(-1)!.mention;
  if (last.step === mention.step || last.toTaste || mention.toTaste) return false;
  if (mention.article) return true;
  const technique = techniqueOf(fold(mention.verb))?.technique;
  return technique !== undefined && does(technique, 'add', 'coat', 'garnish', 'season');
}

/** Whether the food is only cut, washed or otherwise made ready there. */
function makesReady(mention: Mention): boolean {
  const technique = mention.verb === null ? null : techniqueOf(fold(mention.verb))?.technique;
  return technique != null && does(technique, 'cut', 'drain', 'remove');
}

/** How many words off a word may still say that the amount is taken again. */
const FURTHEST_WORD = 20;

/** "2 tablespoons at a time", "½ cup into each jar": the amount is not the whole. */
export function takenSeveralTimes({ items }: ReadStep, mention: Mention): boolean {
  const place = mention.measure?.start ?? mention.start;
  const keys = items.map((item) =>
    item.kind === 'word' ? item.key : item.kind === 'point' ? item.text : '',
  );
  const first = items.findIndex((item) => item.start >= place);
  let from = first;
  while (from > 0 && from > first - FURTHEST_WORD && keys[from - 1] !== '.') from--;
  for (let at = from; at < Math.min(items.length, first + FURTHEST_WORD); at++) {
    if (keys[at] === '.' && at > first) return keys[at + 1] === 'repeat';
    if (phraseAt(keys, at, 'each-word') !== null) return true;
  }
  return false;
}

/** Whether one use takes the listing, and no other mention can be a second one. */
export function isUsedOnce(dish: Dish, { listing, takings, closed }: Account): boolean {
  return (
    closed &&
    takings.length === 1 &&
    takings[0]!.how !== 'rest' &&
    dish.uses[listing.index]!.every((mention) => mention === takings[0]!.mention || mention.telling)
  );
}

/** The uses that take the rest of a listing which nothing before them has used, by name or in a group. */
export function* restsOfNothing(dish: Dish): Iterable<{ listing: Listing; mention: Mention }> {
  for (const { listing, takings, closed } of dish.accounts) {
    const [first] = takings;
    if (!closed || first?.how !== 'rest' || first.mention.group) continue;
    if (!says(first.mention.determiner, 'rest-word') || dish.uses[listing.index]![0] !== first.mention)
      continue;
    yield { listing, mention: first.mention };
  }
}
