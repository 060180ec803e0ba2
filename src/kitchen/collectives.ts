/** The mentions of many foods at once: "the dry ingredients", "season to taste", "make the dressing", "whisk together". */
import type { Listing } from '../anatomy/types.js';
import { foodsNamed, foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { foodNamed } from '../larder/foods.js';
import { isWord } from '../larder/kitchen-words.js';
import { does } from '../larder/techniques.js';
import type { Food } from '../larder/types.js';
import { clauseOf, determinerOf, isNegated, tellsWhen } from './context.js';
import { componentNamed, componentOfGroup, componentsNamed, foodsMeant, listingsOf } from './groups.js';
import { isMostlyUsed, type Progress } from './progress.js';
import type { Named } from './scan.js';
import type { Mention, ReadStep } from './types.js';
import { governingVerb, verbAt, type Words } from './words.js';

/** What "season" means when nothing else is named. */
const SWEETENER = foodsNamed('sweetener');
const SEASONED_WITH = foodsOfClass('seasoned-with');
const SPICE = foodsNamed('spice');
/** Bare words of the list that mean the same: classes, which other kinds of pepper and seasoning belong to as well. */
const SEASONED_WITH_BARE = ['pepper', 'seasoning'].map((name) => foodNamed(name));

export function groupMention(
  progress: Progress,
  step: ReadStep,
  words: Words,
  named: Named,
  preferred: readonly Listing[],
  before: readonly Mention[],
): Mention | null {
  const { start, end } = named;
  if (
    governingVerb(words, start) === null ||
    tellsWhen(words, start) ||
    isNegated(words, start) ||
    words.keys[start - 1] === 'most'
  )
    return null;
  const own = componentNamed(progress.recipe, words, start, end);
  if (own !== null)
    return isMostlyUsed(progress, own.listings) ? null : collective(step, words, start, end, own.listings);
  const component = componentNamed(progress.recipe, words, ...clauseOf(words, start));
  // "The spices" of a recipe with a "spice blend" are all that the blend lists.
  const blend = component === null ? componentOfGroup(progress.recipe, words.keys[end - 1]!) : null;
  if (blend !== null && !isMostlyUsed(progress, blend.listings))
    return collective(step, words, start, end, blend.listings);
  const candidates = component?.listings ?? (preferred.length > 0 ? preferred : progress.recipe.listings);
  const means = named.group!;
  const used = new Set([...progress.used, ...before.flatMap((mention) => mention.listings)]);
  const taken = candidates.filter((listing) => used.has(listing));
  // "Mix everything" late in a method is what is in the bowl by then, unless hardly anything has been named before.
  const said = words.keys.slice(Math.max(0, start - 1), end);
  const loose =
    means === 'all' &&
    !(
      said.some((key) => key === 'all' || key === 'each') && said.some((key) => key.startsWith('ingredient'))
    );
  if (loose && taken.length * 2 > candidates.length) return null;
  const classed = listingsOf(means, candidates, used);
  // "Mix the seasonings" of a seasoning is the whole list, also what goes by another class.
  const members =
    foodsMeant(means).length > 0 && taken.length === 0 && isAlmostAll(classed, candidates)
      ? [...candidates]
      : classed;
  // "The dry ingredients", once some of them have been named, are those.
  const known = means === 'dry' || means === 'wet' ? members.filter((listing) => used.has(listing)) : [];
  return collective(step, words, start, end, known.length > 1 ? known : members);
}

/** Whether a class takes most of a list that is a mix of dry things: spices, with their sugar and bouillon. */
function isAlmostAll(classed: readonly Listing[], candidates: readonly Listing[]): boolean {
  const dry = listingsOf('dry', candidates, new Set());
  return classed.length * 2 > candidates.length && dry.length * 4 >= candidates.length * 3;
}

/** "Season well", "season to taste": the salt, pepper and seasonings of the list. */
export function seasonings(progress: Progress, step: ReadStep, words: Words): Mention[] {
  const found: Mention[] = [];
  words.keys.forEach((key, at) => {
    if (!key.startsWith('season') || key === 'seasoning' || key === 'seasonings') return;
    // "Season." names nothing, and takes the spices that the list leaves to the cook.
    const isBare = !words.keys.slice(...clauseOf(words, at)).includes('with');
    const listings = progress.recipe.listings.filter(
      (listing) =>
        listing.line.toTaste ||
        listing.line.foods.some((food) => isSeasoning(food.row) || (isBare && isSpice(listing, food.row))),
    );
    if (listings.length > 0) found.push({ ...collective(step, words, at, at + 1, listings), toTaste: true });
  });
  return found;
}

/** "Sweeten to taste": what the list has to sweeten with. */
export function sweetenings(progress: Progress, step: ReadStep, words: Words): Mention[] {
  return words.keys.flatMap((key, at) => {
    if (key !== 'sweeten' || words.keys.slice(...clauseOf(words, at)).includes('with')) return [];
    const listings = progress.recipe.listings.filter((listing) =>
      listing.line.foods.some(({ row }) => isAnyOf(row, SWEETENER)),
    );
    return listings.length > 0 ? [{ ...collective(step, words, at, at + 1, listings), toTaste: true }] : [];
  });
}

/** A spice without an amount. */
function isSpice({ line }: Listing, food: Food | null): boolean {
  return line.measures.length === 0 && isAnyOf(food, SPICE);
}

function isSeasoning(food: Food | null): boolean {
  return food !== null && (SEASONED_WITH_BARE.includes(food) || isAnyOf(food, SEASONED_WITH));
}

/**
 * "Make the dressing", "whisk the sauce together": all that its component lists goes into it, where the method does not
 * name most of it one by one.
 */
export function componentsMade(progress: Progress, step: ReadStep, words: Words): Mention[] {
  const found: Mention[] = [];
  for (let at = 0; at < words.keys.length; at++) {
    if (words.keys[at] !== 'make' && words.keys[at] !== 'making') {
      const verb = verbAt(words, at);
      if (verb === null || !does(verb, 'combine', 'prepare')) continue;
    }
    const next = isWord(words.keys[at + 1], 'referring') ? at + 2 : at + 1;
    for (const component of componentsNamed(
      progress.recipe,
      words,
      next,
      Math.min(words.keys.length, next + FURTHEST_NAME),
    )) {
      if (!isMostlyUsed(progress, component.listings))
        found.push(collective(step, words, at, at + 1, component.listings));
    }
  }
  return found;
}

/** How many words behind "make" may name what is made: "prepare your batter and flour". */
const FURTHEST_NAME = 6;

/** "Whisk together until smooth", as the first that is done with anything: all of the list. */
export function wholeList(progress: Progress, step: ReadStep, words: Words): Mention[] {
  if (progress.used.size > 0) return [];
  const at = words.keys.findIndex((_, index) => {
    const verb = words.opening[index] === index ? verbAt(words, index) : null;
    return verb !== null && does(verb, 'combine');
  });
  return at < 0 ? [] : [collective(step, words, at, at + 1, progress.recipe.listings)];
}

/** "Everything except the parsley": what is named after it is not part of the group. */
export function leaveOutExcepted(words: Words, mentions: readonly Mention[]): Mention[] {
  return mentions.map((mention) => {
    if (!mention.group) return mention;
    const at = words.words.findIndex((word) => word.start >= mention.end);
    const key = words.keys[at];
    if (at < 0 || (key !== 'but' && key !== 'except')) return mention;
    const excepted = mentions.filter(
      (other) =>
        !other.group && other.start >= mention.end && words.text.slice(mention.end, other.start).length < 30,
    );
    return {
      ...mention,
      listings: mention.listings.filter(
        (listing) => !excepted.some((other) => other.listings.includes(listing)),
      ),
    };
  });
}

/** A mention of several listings, by the words `start` to `end`. */
export function collective(
  step: ReadStep,
  words: Words,
  start: number,
  end: number,
  listings: readonly Listing[],
): Mention {
  return {
    text: words.text.slice(words.words[start]!.start, words.words[end - 1]!.end),
    start: words.words[start]!.start,
    end: words.words[end - 1]!.end,
    step: step.step.index,
    role: 'use',
    food: null,
    listings: [...listings],
    group: true,
    measure: null,
    allBut: false,
    determiner: determinerOf(words, start),
    verb: governingVerb(words, start)?.name ?? null,
    telling: false,
    article: false,
    into: false,
    toTaste: false,
    surface: false,
    optional: false,
  };
}
