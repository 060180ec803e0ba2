/** Follows sprouts of beans and seeds from the list through the steps, and finds those that go to the table raw. */
import type { Listing } from '../anatomy/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { type HazardClass, hazardWordsIn, tellsOf } from '../larder/hazard-words.js';
import { speaksOf } from '../larder/kitchen-words.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { listingsOf } from './bought.js';
import {
  allSentences,
  anyTells,
  asideSentences,
  heatVerbsIn,
  methodSentences,
  type Place,
  placeOfListing,
  type Sentence,
  sentenceOf,
  tells,
} from './hazard-sentences.js';
import { cooks, isOverHeat } from './served-raw.js';
import type { Dish, Mention, Taking } from './types.js';

/** A listing of "sprouts" alone may be Brussels sprouts, and is not followed. */
const SPROUTS = foodsNamed('seed sprout');

/** Where the first sprouts that nothing cooks are served; null where all are cooked, or the recipe warns of them. */
export function rawSprouts(dish: Dish): Place | null {
  const listings = listingsOf(dish, SPROUTS).filter((listing) => !isBoughtCooked(listing));
  if (listings.length === 0 || isAnnounced(dish)) return null;
  for (const listing of listings) {
    const place = rawPlace(dish, listing);
    if (place !== null) return place;
  }
  return null;
}

function rawPlace(dish: Dish, listing: Listing): Place | null {
  const all = dish.uses[listing.index]!;
  // "The vegetables", "toss everything together": they tell of sprouts only where the method does not name them.
  const named = all.filter(({ food, text }) => isAnyOf(food, SPROUTS) || tellsOf(text, 'sprout'));
  const uses = named.length > 0 ? named : all;
  if (uses.length === 0)
    return tellsOf(listing.passage.text, 'sprout-garnish') ? placeOfListing(listing) : null;
  const { takings } = dish.accounts[listing.index]!;
  let last: Mention | null = null;
  for (const use of uses.slice(0, MOST_USES)) {
    if (isPrepared(use)) continue;
    const taking = takings.find(({ mention }) => mention === use);
    // What an earlier use may have cooked, a later one serves cooked, unless it takes another part of it.
    const isNew = last === null || takesAnother(taking);
    last = use;
    if (!isNew || !isServedRaw(dish, use)) continue;
    if (use.group) return placeOfListing(listing);
    const { passage } = dish.recipe.steps[use.step]!;
    return { passage, start: use.start, end: use.end, food: listing.line.foods[0]?.name ?? use.text };
  }
  return null;
}

/** No recipe puts them to use in more places; a line that repeats their name without end is read no further. */
const MOST_USES = 20;

/** "Rinse the sprouts, and set aside": they go nowhere yet. */
function isPrepared({ verb }: Mention): boolean {
  const technique = verb === null ? null : techniqueOf(verb)?.technique;
  return technique != null && does(technique, 'prepare', 'cut', 'drain', 'hold');
}

function takesAnother(taking: Taking | undefined): boolean {
  return taking !== undefined && taking.how !== 'some' && taking.how !== 'surface';
}

/** Whether heat comes with the use or after it. */
function isCookedAt(dish: Dish, use: Mention): boolean {
  const method = methodSentences(dish);
  const own = sentenceOf(method, use);
  return own === undefined || method.slice(method.indexOf(own)).some(heats);
}

/**
 * Whether the sprouts are eaten as they are: no heat follows, and there was none before, or the use puts them on what is ready
 * or into a salad or sandwich. "Add the sprouts and toss" may stand over the heat of the step before.
 */
function isServedRaw(dish: Dish, use: Mention): boolean {
  if (isCookedAt(dish, use)) return false;
  const method = methodSentences(dish);
  if (isGarnish(use) || !method.some(heats)) return true;
  const own = sentenceOf(method, use)!;
  if (stands(own, 'sprout-cold', use)) return true;
  const isStepHeated = method.some((sentence) => sentence.step === use.step && heats(sentence));
  return !isStepHeated && (stands(own, 'together', use) || tells(own, 'sprout-cold') || isColdDish(dish));
}

/** Whether a word of the class stands before the use in its sentence: "for the salad, toss", "in a large bowl, toss". */
function stands(own: Sentence, word: HazardClass, use: Mention): boolean {
  return own.hazards.some(({ is, start }) => is === word && own.places[start]![0] < use.start);
}

function isColdDish({ recipe }: Dish): boolean {
  return tellsOf(recipe.title?.text ?? '', 'sprout-cold');
}

function isGarnish({ verb }: Mention): boolean {
  return verb !== null && hazardWordsIn([verb]).some(({ is }) => is === 'sprout-garnish');
}

function heats(sentence: Sentence): boolean {
  return cooks(sentence) || isOverHeat(sentence);
}

/** "1 can bean sprouts", "blanched bean sprouts". */
function isBoughtCooked({ passage, line }: Listing): boolean {
  const isTinned = line.measures.some(({ unit }) => unit === 'can' || unit === 'jar');
  return (
    isTinned ||
    speaksOf(passage.text, 'ready-state') ||
    passage.text.split(/[^\p{L}]+/u).some((word) => {
      const match = techniqueOf(word);
      return match !== null && match.form !== 'base' && does(match.technique, 'heat');
    })
  );
}

/** Whether the recipe warns of raw food, or speaks beside the method of raw or of cooked sprouts. */
function isAnnounced(dish: Dish): boolean {
  if (anyTells(allSentences(dish), 'at-risk')) return true;
  return asideSentences(dish).some(
    (sentence) =>
      tells(sentence, 'sprout') && (sentence.keys.includes('raw') || heatVerbsIn(sentence).length > 0),
  );
}
