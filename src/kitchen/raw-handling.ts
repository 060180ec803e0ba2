/** Knows what the method has hands, water, boards, plates and marinades do with raw food. */
import type { Recipe } from '../anatomy/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { isWord, phraseAt, speaksOf } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import { does } from '../larder/techniques.js';
import { vesselAt } from '../larder/vessels.js';
import { isCookedBefore, placeOf } from './raw-course.js';
import { marinadesReused } from './raw-marinade.js';
import {
  all,
  lastMentionBefore,
  mentionsIn,
  mentionsWithin,
  type Stretch,
  saidIn,
  saysIn,
  sentenceAt,
  sentencesOf,
  wordAt,
} from './stretches.js';
import type { Mention, RawCourse, RawFood, RawHandling } from './types.js';
import { verbAt, type Words } from './words.js';

/** What a step says before the method begins: hands washed in the headnote or a note. */
const BEFORE_METHOD = -1;
const WATER = foodsNamed('water');
const CURED = foodsNamed('cured meat');

/** Nothing of the kind. */
export const untouched: RawHandling = {
  touches: [],
  handsWashed: [],
  rinsings: [],
  surfaces: [],
  marinades: [],
};

export function rawHandlingOf(
  recipe: Recipe,
  words: readonly Words[],
  mentions: readonly Mention[],
  courses: readonly RawCourse[],
): RawHandling {
  if (courses.length === 0) return untouched;
  const meats = courses.filter(({ raw }) => raw.safety !== 'egg');
  return {
    touches: touchesOf(words, mentions, courses),
    handsWashed: handsWashedIn(recipe, words),
    rinsings: meats.length === 0 ? [] : rinsingsOf(recipe, words, mentions, meats),
    surfaces: meats.length === 0 ? [] : surfacesOf(words, mentions, meats),
    marinades: meats.length === 0 ? [] : marinadesReused(words, mentions, meats),
  };
}

function handsWashedIn(recipe: Recipe, words: readonly Words[]): number[] {
  const steps = words.flatMap((step, index) =>
    saysIn(step, all(step), 'hands-washed') || washesHands(step) ? [index] : [],
  );
  const around = [...recipe.headnote, ...recipe.notes, ...recipe.rest, ...recipe.equipment];
  return around.some((passage) => speaksOf(passage.text, 'hands-washed')) ? [BEFORE_METHOD, ...steps] : steps;
}

/** "Wash up to the elbows, hands and all", "give your hands a scrub": washing, and hands a few words from it. */
function washesHands(words: Words): boolean {
  return saidIn(words, all(words), 'scrubbing').some(({ at }) => {
    const { from, to } = sentenceAt(words, at);
    return words.keys
      .slice(Math.max(from, at - REACH_OF_HANDS), Math.min(to, at + 1 + REACH_OF_HANDS))
      .some((key) => key === 'hands' || key === 'hand');
  });
}

/** How many words may part "wash" from "hands". */
const REACH_OF_HANDS = 6;

/** The first touch of each raw food in each step, before it is cooked. */
function touchesOf(
  words: readonly Words[],
  mentions: readonly Mention[],
  courses: readonly RawCourse[],
): RawHandling['touches'] {
  const found: RawHandling['touches'][number][] = [];
  for (const course of courses) {
    const { raw } = course;
    const steps = new Set<number>();
    let isNamed = false;
    for (const mention of mentions) {
      const isOwn = mention.listings.includes(raw.listing);
      isNamed ||= isOwn;
      // Patties and the mixture for them are the ground meat by another name.
      const isMadeOfIt = isNamed && course.ground && mention.role === 'made';
      if ((!isOwn && !isMadeOfIt) || mention.role === 'aside' || steps.has(mention.step)) continue;
      if (isCookedBefore(course, mention)) continue;
      const verb = mention.verb === null ? null : phraseAt([fold(mention.verb)], 0, 'handled');
      const step = words[mention.step]!;
      const byHand = raw.safety !== 'egg' && (isByHand(step, mention) || isRubbed(step, mention));
      if (verb === null && !byHand) continue;
      steps.add(mention.step);
      const bare = byHand || (verb?.means === 'hands' && raw.safety !== 'egg');
      found.push({ step: mention.step, start: mention.start, end: mention.end, food: raw, bare });
    }
  }
  return found;
}

/** "With your hands", "using your fingers": said in the sentence, but not of washing them. */
function isByHand(words: Words, mention: Mention): boolean {
  const sentence = sentenceAt(words, wordAt(words, mention.start));
  return saysIn(words, sentence, 'by-hand') && !saysIn(words, sentence, 'hands-washed');
}

/** "Pat the chicken dry, and rub it with salt": the hands' work comes later in the sentence. */
function isRubbed(words: Words, mention: Mention): boolean {
  const at = wordAt(words, mention.start);
  const { to } = sentenceAt(words, at);
  for (let next = at + 1; next < to; next++) {
    const verb = verbAt(words, next);
    const isHands = verb !== null && phraseAt([fold(verb.name)], 0, 'handled')?.means === 'hands';
    if (isHands && (words.keys[next + 1] === 'it' || words.keys[next + 1] === 'them')) return true;
  }
  return false;
}

/** Orders to rinse or wash raw meat or poultry, and listings that have it rinsed. */
function rinsingsOf(
  recipe: Recipe,
  words: readonly Words[],
  mentions: readonly Mention[],
  courses: readonly RawCourse[],
): RawHandling['rinsings'] {
  const found: RawHandling['rinsings'][number][] = [];
  const rinsed = courses.filter(({ raw }) => isRinsedForNothing(raw));
  for (const { raw } of rinsed) {
    const { passage, line } = raw.listing;
    for (const phrase of [...line.preparation, ...line.states]) {
      if (speaksOf(phrase.text, 'washed'))
        found.push({ passage, start: phrase.start, end: phrase.end, food: raw });
    }
  }
  if (rinsed.length === 0) return found;
  const salted = new Set<RawCourse>();
  words.forEach((step, index) => {
    for (const sentence of sentencesOf(step)) {
      for (const at of rinsingsIn(step, sentence)) {
        // "Rinse off the brine", "take it out of the brine and rinse".
        if (saysIn(step, { from: sentence.from, to: at + REACH_OF_OBJECT }, 'cured-state')) continue;
        const course = rinsed.find(({ raw }) => isRinsed(step, index, at, sentence, mentions, raw));
        if (course === undefined || salted.has(course) || isCookedBy(course, index)) continue;
        const { start, end } = placeOf(step, index, at, 1);
        found.push({ passage: recipe.steps[index]!.passage, start, end, food: course.raw });
        break;
      }
      if (!saysIn(step, sentence, 'cured-state')) continue;
      for (const each of rinsed)
        if (!salted.has(each) && isIn(step, index, all(step), mentions, each)) salted.add(each);
    }
  });
  return found;
}

/** How many words after "rinse" may still be what is rinsed off. */
const REACH_OF_OBJECT = 5;

/** The words of a sentence that put something under water: "rinse", "wash", "under running water" other than to thaw it. */
function rinsingsIn(words: Words, sentence: Stretch): number[] {
  const verbs = saidIn(words, sentence, 'washed').map(({ at }) => at);
  const orders = verbs.filter((at) => {
    // "Start by washing the chicken".
    const isWork = words.keys[at]!.endsWith('ing') && isWord(words.keys[at + 1], 'object');
    return (
      (isWork || isGiven(words, sentence, at) || verbAt(words, at) !== null) &&
      !isForbidden(words, sentence, at)
    );
  });
  if (verbs.length > 0 || saysIn(words, sentence, 'thawing')) return orders;
  return underWater(words, sentence).filter((at) => !isForbidden(words, sentence, at));
}

/** "Give the bird a good rinse". */
function isGiven(words: Words, { from }: Stretch, at: number): boolean {
  for (let before = at - 1; before >= from && before >= at - REACH_OF_GIVING; before--)
    if (isWord(words.keys[before], 'rinse-giving')) return true;
  return false;
}

/** How many words after "give" may name the rinse. */
const REACH_OF_GIVING = 7;

/** "Under cold running water", "under the tap": the word "under", with its water a few words behind. */
function underWater({ keys }: Words, { from, to }: Stretch): number[] {
  const found: number[] = [];
  for (let at = from; at < to; at++) {
    const isThere = keys
      .slice(at + 1, Math.min(to, at + 1 + REACH_OF_WATER))
      .some((key) => isWord(key, 'water-source'));
    if (keys[at] === 'under' && isThere) found.push(at);
  }
  return found;
}

/** How many words after "under" may come before the water is named. */
const REACH_OF_WATER = 4;

/** Meat in brine is rinsed for its salt, organs by custom, fish and shellfish for their scales and sand. */
function isRinsedForNothing({ safety, food }: RawFood): boolean {
  const isMeat = safety === 'poultry' || safety === 'ground-meat' || safety === 'whole-cut';
  return isMeat && !isAnyOf(food, CURED);
}

function isCookedBy({ cookings }: RawCourse, step: number): boolean {
  return cookings.some((cooking) => cooking.step < step);
}

/** "Do not rinse", "never wash", "no need to rinse", "instead of rinsing". */
function isForbidden(words: Words, sentence: Stretch, at: number): boolean {
  for (let before = at - 1; before >= sentence.from && before >= at - REACH_OF_NOT; before--) {
    if (phraseAt(words.keys, before, 'negation') !== null || phraseAt(words.keys, before, 'instead') !== null)
      return true;
  }
  return false;
}

/** How many words before a verb may forbid it. */
const REACH_OF_NOT = 5;

/**
 * Whether what is rinsed at word `at` is the raw food: the first food named behind the verb, or, where none is, the last before it.
 * Hands, boards and plates between the two are rinsed themselves.
 */
function isRinsed(
  words: Words,
  step: number,
  at: number,
  sentence: Stretch,
  mentions: readonly Mention[],
  raw: RawFood,
): boolean {
  const isFood = (mention: Mention): boolean => mention.role !== 'aside' && !isAnyOf(mention.food, WATER);
  const verb = words.words[at]!;
  const { end } = words.words[sentence.to - 1]!;
  // "Wash it with salted water" is not about the salt.
  const isPronoun = isWord(words.keys[at + 1], 'pronoun');
  const behind = isPronoun ? undefined : mentionsWithin(mentions, step, verb.end, end).find(isFood);
  const reach = behind === undefined ? sentence.to : wordAt(words, behind.start);
  for (let next = at + 1; next < reach; next++) {
    const isOther = isWord(words.keys[next], 'by-hand') || isThing(words, next);
    if (isOther) return false;
  }
  const meant = behind ?? lastMentionBefore(mentions, step, verb.start, isFood);
  // "Rinse and pat dry." may be a step of its own, about what the step before has named.
  return meant !== null && meant.step >= step - 1 && meant.listings.includes(raw.listing);
}

/** A vessel that is washed: "the board", "your knife"; not one that stands by ("in a colander", "in the sink"). */
function isThing(words: Words, at: number): boolean {
  if (vesselAt(words.keys, at) === null) return false;
  return isWord(words.keys[at], 'surface') && !stands(words, at);
}

function stands(words: Words, at: number): boolean {
  return words.keys.slice(Math.max(0, at - 2), at).some((key) => isWord(key, 'preposition'));
}

/**
 * Surfaces that held raw food and then hold what is ready: "the same plate", "return the chicken to the plate" once it is cooked,
 * "on the same board, chop the lettuce"; unless something says that it was washed.
 */
function surfacesOf(
  words: readonly Words[],
  mentions: readonly Mention[],
  courses: readonly RawCourse[],
): RawHandling['surfaces'] {
  const found: RawHandling['surfaces'][number][] = [];
  /** By the surface's name: the raw food that it held; null when it has been named with none, or washed. */
  const held = new Map<string, RawCourse | null>();
  words.forEach((step, index) => {
    for (const sentence of sentencesOf(step)) {
      let course: RawCourse | null | undefined;
      for (let at = sentence.from; at < sentence.to; at++) {
        const name = surfaceAt(step, at);
        if (name === null) continue;
        course ??= courses.find((each) => isIn(step, index, sentence, mentions, each)) ?? null;
        const place = { step, index, at, sentence };
        // "Back on the same plate", of which nothing has been said, is the one on which it lay raw.
        const before = held.has(name) ? held.get(name)! : course;
        if (isWashed(place)) held.set(name, null);
        else if (before !== null && isReused(place, before, course, held.has(name))) {
          found.push({ ...placeOf(step, index, at, 1), food: before.raw });
          held.set(name, null);
        } else if (course === null || isCookedAt(course, place)) held.set(name, held.get(name) ?? null);
        else held.set(name, course);
      }
    }
  });
  return found;
}

/** A word of a sentence of a step. */
interface WordPlace {
  readonly step: Words;
  readonly index: number;
  readonly at: number;
  readonly sentence: Stretch;
}

/** "Wash the plate": the verb stands before the surface, with no "on" or "in" between. */
function isWashed({ step, at, sentence }: WordPlace): boolean {
  for (let before = at - 1; before >= Math.max(sentence.from, at - REACH_OF_OBJECT); before--) {
    if (isWord(step.keys[before], 'preposition')) return false;
    if (isWord(step.keys[before], 'washed')) return !isWord(step.keys[before - 1], 'negation');
  }
  // "The plate, washed".
  return isWord(step.keys[at + 1], 'washed');
}

/** "Without washing the board". */
function isUnwashed({ step, at, sentence }: WordPlace): boolean {
  for (let before = at - 1; before > Math.max(sentence.from, at - REACH_OF_ARTICLE); before--)
    if (isWord(step.keys[before], 'washed') && isWord(step.keys[before - 1], 'negation')) return true;
  return false;
}

/** Whether a stretch names the food, or, of ground meat, what it has been made into. */
function isIn(
  words: Words,
  step: number,
  stretch: Stretch,
  mentions: readonly Mention[],
  { raw, ground }: RawCourse,
): boolean {
  return mentionsIn(words, stretch, step, mentions).some(
    ({ role, listings }) =>
      role !== 'aside' && (listings.includes(raw.listing) || (ground && role === 'made')),
  );
}

/** The surface ("board" of "cutting board") that a word names; null where it names none. */
function surfaceAt(words: Words, at: number): string | null {
  const isNamed = isWord(words.keys[at], 'surface') && verbAt(words, at) === null;
  return isNamed ? singular(words.keys[at]!) : null;
}

function isCookedAt(course: RawCourse, { step, index, at }: WordPlace): boolean {
  return isCookedBefore(course, { step: index, start: step.words[at]!.start });
}

/** Whether the surface takes food that is ready: called the same, or, where it was seen to hold raw food, "the plate" for what is cooked now. */
function isReused(place: WordPlace, before: RawCourse, course: RawCourse | null, seen: boolean): boolean {
  const { step, at, sentence } = place;
  const said = step.keys.slice(Math.max(sentence.from, at - REACH_OF_ARTICLE), at);
  const isCooked = isCookedAt(before, place);
  if (said.some((key) => isWord(key, 'same')) || isUnwashed(place))
    return isCooked || (seen && course === null);
  if (!seen || !isCooked) return false;
  // "Pile them back on the platter" names no food.
  const isMeant = course === before || (course === null && namesByPronoun(step, sentence, at));
  return isMeant && said.some((key) => isWord(key, 'referring')) && putsOn(step, sentence, at);
}

/** How many words before a surface's name tell which one it is. */
const REACH_OF_ARTICLE = 3;

function namesByPronoun({ keys }: Words, { from }: Stretch, at: number): boolean {
  return keys.slice(Math.max(from, at - REACH_OF_PRONOUN), at).some((key) => key === 'it' || key === 'them');
}

/** How many words from a pronoun the surface may be named. */
const REACH_OF_PRONOUN = 8;

/** "Return the chicken to the plate": a verb that puts, and "to", "on" or "onto" right before the surface. */
function putsOn(words: Words, sentence: Stretch, at: number): boolean {
  const said = words.keys.slice(Math.max(sentence.from, at - REACH_OF_ARTICLE), at);
  // What goes back "into the dish" may be baked in it, unless it is to rest there.
  if (!said.some(isDirection) || (said.includes('into') && !saysIn(words, sentence, 'resting'))) return false;
  for (let before = sentence.from; before < at; before++) {
    const verb = verbAt(words, before);
    if ((verb !== null && does(verb, 'add')) || words.keys[before] === 'back') return true;
  }
  return false;
}

function isDirection(key: string): boolean {
  return key === 'to' || key === 'on' || key === 'onto' || key === 'into';
}
