/** Follows each raw animal food from the list through the steps: what cooks it, how long, and by what sign it is done. */
import Fraction from 'fraction.js';
import type { Recipe } from '../anatomy/types.js';
import type { Duration } from '../grammar/types.js';
import { foodsNamed, foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { foodAt } from '../larder/foods.js';
import { isWord, speaksOf } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { vesselAt } from '../larder/vessels.js';
import { inFahrenheit } from './done-temperatures.js';
import { isLong } from './long-cooking.js';
import {
  all,
  mentionsIn,
  mentionsWithin,
  type Speech,
  type Stretch,
  saidIn,
  saysIn,
  sentenceAt,
  speechOf,
  wordAt,
} from './stretches.js';
import type { Heating, Mention, Place, RawCourse, RawFood } from './types.js';
import { verbAt, type Words } from './words.js';

const STOCK = foodsNamed('stock');
const GROUND = foodsOfClass('ground-kind');
const THIN = foodsOfClass('thin-kind');
const ANIMALS = ['meat', 'fish', 'shellfish'].flatMap(foodsNamed);

/** One course for each raw food, in the order of the list. `uses` are the mentions by listing, `heatings` all orders to cook. */
export function rawCoursesOf(
  recipe: Recipe,
  words: readonly Words[],
  mentions: readonly Mention[],
  uses: readonly (readonly Mention[])[],
  heatings: readonly Heating[],
  rawFoods: readonly RawFood[],
): RawCourse[] {
  if (rawFoods.length === 0) return [];
  const makesStock = isStock(recipe);
  const speech = speechOf(words);
  return rawFoods.map((raw) =>
    courseOf(recipe, words, speech, mentions, uses, heatings, rawFoods, raw, makesStock),
  );
}

function courseOf(
  recipe: Recipe,
  words: readonly Words[],
  speech: Speech,
  mentions: readonly Mention[],
  uses: readonly (readonly Mention[])[],
  heatings: readonly Heating[],
  rawFoods: readonly RawFood[],
  raw: RawFood,
  makesStock: boolean,
): RawCourse {
  const isOnly = raw.safety !== 'egg' && rawFoods.every((food) => food === raw || food.safety === 'egg');
  const own = ownMentions(mentions, uses, raw, isOnly);
  const cookings = cookingsOf(words, mentions, own, heatings, raw, isOnly);
  const first = own[0]?.step ?? (isOnly ? 0 : words.length);
  const bits = isInBits(recipe, words, speech, own, cookings, raw);
  const about = (step: number, at: number) => isAbout(words[step]!, step, at, uses, rawFoods, raw);
  const signs = (is: 'color-cue' | 'degree-word' | 'opaque-cue' | 'falls-apart' | 'whole-step') =>
    // Eggs are judged by their own temperature alone, and most recipes with eggs are bakes.
    (raw.safety === 'egg' ? [] : speech(is))
      .filter((said) => said.step >= first && about(said.step, said.at))
      .map((said) => ({ said, place: placeOf(words[said.step]!, said.step, said.at, said.length) }));
  const paleness = (): Place[] =>
    raw.safety === 'egg'
      ? []
      : palenessIn(words).filter(
          ({ step, start }) => step >= first && about(step, wordAt(words[step]!, start)),
        );
  const degree = signs('degree-word').find(({ said }) => isDegree(words[said.step]!, said));
  return {
    raw,
    ground: isGround(raw),
    cookings,
    cooked: cookings.length > 0 ? null : saidCooked(words, speech, own),
    bits,
    sure:
      makesStock ||
      signs('falls-apart').length > 0 ||
      signs('whole-step').some(({ place }) => cookings.some((cooking) => cooking.step === place.step)) ||
      isLong(words, speech, cookings, { safety: raw.safety, ground: isGround(raw), bits }),
    shown: (raw.safety === 'fish' || raw.safety === 'shellfish') && signs('opaque-cue').length > 0,
    color: signs('color-cue')[0]?.place ?? paleness()[0] ?? null,
    degree: degree === undefined ? null : { ...degree.place, fahrenheit: Number(degree.said.means) },
    rest: restOf(words, speech, cookings, first),
  };
}

/** The mentions of a raw food, with those that name its cut or its class only, where it is the only one of the recipe: "the steaks", "the fish". */
function ownMentions(
  mentions: readonly Mention[],
  uses: readonly (readonly Mention[])[],
  raw: RawFood,
  isOnly: boolean,
): readonly Mention[] {
  const own = uses[raw.listing.index]!;
  if (!isOnly) return own;
  const byClass = mentions.filter(
    ({ food, listings }) => listings.length === 0 && food?.generic === true && isAnyOf(food, ANIMALS),
  );
  return byClass.length === 0
    ? own
    : [...own, ...byClass].sort((a, b) => a.step - b.step || a.start - b.start);
}

/** Signs of color in words that no table can list: "has lost all its pink color", "the juice that comes out is clear". */
function palenessIn(words: readonly Words[]): Place[] {
  return words.flatMap((step, index) =>
    saidIn(step, all(step), 'meat-color').flatMap(({ at, means }) => {
      // "Pink salt", "blood orange".
      if (means === null && (foodAt(step.keys, at) ?? foodAt(step.keys, at + 1)) !== null) return [];
      const { from, to } = sentenceAt(step, at);
      const around = {
        from: Math.max(from, at - WORDS_AROUND_COLOR),
        to: Math.min(to, at + WORDS_AROUND_COLOR),
      };
      const [beside] = saidIn(step, around, means === 'juice' ? 'clear-word' : 'gone-word');
      if (beside === undefined) return [];
      const start = Math.min(at, beside.at);
      return [placeOf(step, index, start, Math.max(at, beside.at) - start + 1)];
    }),
  );
}

/** How many words may part "pink" from "lost", and "juices" from "clear". */
const WORDS_AROUND_COLOR = 6;

/** Whether the words ask for a degree of doneness: "for medium heat" speaks of the stove, "not pink in the middle" and "if it is …" ask for none. */
function isDegree(words: Words, { at, length }: { at: number; length: number }): boolean {
  const { from } = sentenceAt(words, at);
  const before = { from: Math.max(from, at - WORDS_AROUND_COLOR), to: at };
  return (
    !isWord(words.keys[at + length], 'stove-degree') &&
    !saysIn(words, before, 'gone-word') &&
    !words.keys.slice(before.from, at).includes('if')
  );
}

/** "While the chicken is cooking", "once it is fried": what says that it is cooked where no order does. */
function saidCooked(words: readonly Words[], speech: Speech, own: readonly Mention[]): Mention | null {
  for (const mention of own) {
    const step = words[mention.step]!;
    const { from, to } = sentenceOf(step, mention.start);
    for (let at = from + 1; at < to; at++) {
      const match = isWord(step.keys[at - 1], 'subject') ? techniqueOf(step.keys[at]!) : null;
      if (match !== null && match.form !== 'base' && does(match.technique, 'heat')) return mention;
    }
  }
  const given = own.find((mention) => isGivenTime(words, speech, mention));
  if (given !== undefined) return given;
  // "Put the dish in the oven": the last mention before that.
  const first = own[0]?.step ?? words.length;
  const place = speech('heat-place').find(({ step }) => step >= first)?.step ?? hotStep(words, first);
  return place === undefined ? null : (own.findLast((mention) => mention.step <= place) ?? null);
}

/** "In they go at 200°C for 40 minutes": the first step from there on with an oven's heat and a time in one sentence. */
function hotStep(words: readonly Words[], first: number): number | undefined {
  const step = words.findIndex(
    ({ items }, index) =>
      index >= first &&
      items.some((item, at) => {
        const fahrenheit = item.kind === 'temperature' ? inFahrenheit(item) : null;
        if (fahrenheit === null || fahrenheit.lt(LEAST_OVEN_FAHRENHEIT)) return false;
        return items
          .slice(Math.max(0, at - ITEMS_AROUND_HEAT), at + ITEMS_AROUND_HEAT)
          .some(({ kind }) => kind === 'duration');
      }),
  );
  return step < 0 ? undefined : step;
}

/** Ovens that cook are set no lower (common practice). */
const LEAST_OVEN_FAHRENHEIT = new Fraction(250);
/** How many words and figures may part an oven's heat from its time. */
const ITEMS_AROUND_HEAT = 5;

/** "Add the salmon and give it another 12 minutes": what goes on cooking goes on with it. */
function isGivenTime(words: readonly Words[], speech: Speech, { step, start, verb }: Mention): boolean {
  const match = verb === null ? null : techniqueOf(fold(verb));
  if (match === null || !does(match.technique, 'add')) return false;
  const here = words[step]!;
  const { from, to } = sentenceOf(here, start);
  return speech('giving-time').some((said) => {
    const next = here.items[here.at[said.at + said.length]! - 1];
    return said.step === step && said.at >= from && said.at < to + SENTENCE_AFTER && next !== null;
  });
}

/** How many words of the sentence after may still give the time. */
const SENTENCE_AFTER = 6;

/** "Chicken Stock", "Beef Bone Broth": what is strained off is boiled for as long as it takes. */
export function isStock({ title }: Recipe): boolean {
  const keys = (title?.text ?? '').split(/[^\p{L}\p{N}'’]+/u).map(fold);
  const last = foodAt(keys, keys.length - 1)?.food;
  const whole = keys.flatMap((_, at) => foodAt(keys, at)?.food ?? []).at(-1);
  return [last, whole].some((food) => food !== undefined && isAnyOf(food, STOCK));
}

/**
 * The orders that cook a raw food: those of the sentences that name it, and those after it is first named that name nothing,
 * a thing made on the way, or a group. "Boil the potatoes" does not cook the fish.
 */
function cookingsOf(
  words: readonly Words[],
  mentions: readonly Mention[],
  own: readonly Mention[],
  heatings: readonly Heating[],
  raw: RawFood,
  isOnly: boolean,
): Heating[] {
  // Meat that the method never names is cooked from the start, where it is the only one.
  const first = own[0] ?? (isOnly ? { step: 0, start: 0 } : null);
  if (first === null || words.length === 0) return [];
  const opening = sentenceOf(words[first.step]!, first.start);
  return heatings.filter((heating) => {
    // "Reduce for 30 minutes" boils what is in the pan; "heat the oil" does not.
    const isShort = heating.technique.ends && heating.durations.length === 0;
    if (isShort && !does(heating.technique, 'dry-heat')) return false;
    if (heating.step < first.step) return false;
    const step = words[heating.step]!;
    const sentence = sentenceOf(step, heating.start);
    if (heating.step === first.step && sentence.from < opening.from) return false;
    if (mentionsIn(step, sentence, heating.step, own).length > 0) return true;
    if (isInOtherPot(step, sentence, heating.step, mentions)) return false;
    return heating.objects.every(
      (mention) => mention.role === 'made' || mention.listings.includes(raw.listing),
    );
  });
}

/** "Lower the potatoes into a pot of water and cook": other food goes into a vessel that has not been named before. */
function isInOtherPot(words: Words, sentence: Stretch, step: number, mentions: readonly Mention[]): boolean {
  const { start } = words.words[sentence.from]!;
  const pot = newPot(words, sentence);
  return mentionsWithin(mentions, step, start, pot).some(
    (mention) => mention.role === 'use' && mention.listings.length > 0,
  );
}

/** Where a sentence puts something "into a pot": the offset of the vessel; 0 where it does not. "A pot of water" is read as a measure. */
function newPot(words: Words, { from, to }: Stretch): number {
  for (let at = from + 1; at < to; at++) {
    const says = words.keys.slice(Math.max(from, at - WORDS_BEFORE_VESSEL), at);
    if (!says.includes('in') && !says.includes('into')) continue;
    const isNew = says.some((key) => key === 'a' || key === 'another' || key === 'separate');
    if (isNew && vesselAt(words.keys, at) !== null) return words.words[at]!.start;
    const item = words.items[words.at[at]! - 1];
    const isVessel =
      item?.kind === 'measure' && item.unit !== null && vesselAt([fold(item.unit)], 0) !== null;
    if (isVessel) return item.start;
  }
  return 0;
}

/** "Into a large heavy pot". */
const WORDS_BEFORE_VESSEL = 4;

/**
 * Whether it is cooked in pieces too small for a thermometer: whole cuts and birds that are cut small before they are cooked, and
 * ground meat that is never shaped.
 */
function isInBits(
  recipe: Recipe,
  words: readonly Words[],
  speech: Speech,
  own: readonly Mention[],
  cookings: readonly Heating[],
  raw: RawFood,
): boolean {
  const listed = raw.listing.passage.text;
  if (isGround(raw)) {
    const isOrder = ({ step, at }: { step: number; at: number }) => verbAt(words[step]!, at) !== null;
    if (speaksOf(listed, 'crumbled') || speech('crumbled').length > 0) return true;
    const isFormed = speaksOf(listed, 'formed') || speaksOf(recipe.title?.text ?? '', 'formed');
    return !isFormed && speech('formed').length === 0 && !speech('forming').some(isOrder);
  }
  if (raw.safety === 'fish' || raw.safety === 'egg') return false;
  const small = raw.safety === 'whole-cut' ? 'small-piece' : 'bite-size';
  if (speaksOf(listed, small) || (raw.safety === 'whole-cut' && isAnyOf(raw.food, THIN))) return true;
  return own.some((mention) => {
    // A steak that is sliced when it has rested was whole in the pan.
    const step = words[mention.step]!;
    const sentence = { step: mention.step, start: step.words[sentenceOf(step, mention.start).from]!.start };
    if (isCookedBefore({ cookings }, sentence)) return false;
    if (isCalled(step, mention, small)) return true;
    if (isCookedBefore({ cookings }, mention)) return false;
    if (mention.verb === null || !isWord(fold(mention.verb), 'small-cut')) return false;
    return raw.safety === 'whole-cut' || saysIn(step, sentenceOf(step, mention.start), small);
  });
}

/** "The beef, chopped in strips", "the diced chicken": said right beside the name. */
function isCalled(words: Words, mention: Mention, is: 'small-piece' | 'bite-size'): boolean {
  const at = wordAt(words, mention.start);
  const { from, to } = sentenceAt(words, at);
  const beside = { from: Math.max(from, at - 1), to: Math.min(to, at + WORDS_BESIDE) };
  return saidIn(words, beside, is).length > 0;
}

/** How many words from a name may still say how small it is. */
const WORDS_BESIDE = 4;

/** Whether an order before this place cooks the food. */
export function isCookedBefore(
  { cookings }: Pick<RawCourse, 'cookings'>,
  place: Pick<Place, 'step' | 'start'>,
): boolean {
  const [first] = cookings;
  return (
    first !== undefined && (place.step > first.step || (place.step === first.step && place.start > first.end))
  );
}

/** Meat or poultry that is ground: by its kind, or because the line calls it so. Venison and rabbit share the figure and are whole. */
function isGround({ food, listing }: RawFood): boolean {
  return isAnyOf(food, GROUND) || speaksOf(listing.passage.text, 'ground-state');
}

/**
 * Whether a sign at word `at` of a step is about this food: its sentence names it or no raw food at all, in which case the step, and
 * then the steps before, must not name others only.
 */
function isAbout(
  words: Words,
  step: number,
  at: number,
  uses: readonly (readonly Mention[])[],
  rawFoods: readonly RawFood[],
  raw: RawFood,
): boolean {
  const sentence = sentenceAt(words, at);
  const inSentence = rawFoods.filter(
    (food) => mentionsIn(words, sentence, step, uses[food.listing.index]!).length > 0,
  );
  if (inSentence.length > 0) return inSentence.includes(raw);
  for (let earlier = step; earlier >= 0; earlier--) {
    const last = rawFoods.filter((food) => mentionsWithin(uses[food.listing.index]!, earlier).length > 0);
    if (last.length > 0) return last.includes(raw);
  }
  return true;
}

/** What is said of waiting after the last order to cook, and for how long where that is said. */
function restOf(
  words: readonly Words[],
  speech: Speech,
  cookings: readonly Heating[],
  first: number,
): RawCourse['rest'] {
  const last = cookings.at(-1) ?? { step: first, start: 0 };
  let found: RawCourse['rest'] = false;
  for (const { step, at, length } of speech('resting')) {
    const here = words[step]!;
    if (step < last.step || (step === last.step && here.words[at]!.start < last.start)) continue;
    // "The rest of the onions" waits for nothing.
    if (here.keys[at + length] === 'of') continue;
    const { from, to } = sentenceAt(here, at);
    const items = here.items.slice(here.at[from], here.at[to] ?? here.items.length);
    const time = items.findLast((item): item is Duration => item.kind === 'duration');
    if (time !== undefined) return { ...time, step };
    found = true;
  }
  return found;
}

function sentenceOf(words: Words, offset: number): Stretch {
  return sentenceAt(words, wordAt(words, offset));
}

/** The place of words `at` to `at + length` of a step. */
export function placeOf(words: Words, step: number, at: number, length: number): Place {
  return { step, start: words.words[at]!.start, end: words.words[at + length - 1]!.end };
}
