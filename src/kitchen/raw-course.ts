/** Follows each raw animal food from the list through the steps: what cooks it, how long, and by what sign it is done. */
import Fraction from 'fraction.js';
import type { Recipe } from '../anatomy/types.js';
import type { Duration } from '../grammar/types.js';
import { foodAt, foodNamed, isKindOf } from '../larder/foods.js';
import { isWord, phraseAt, speaksOf } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { does } from '../larder/techniques.js';
import { all, type Stretch, saidIn, saysIn, sentenceAt, wordAt } from './stretches.js';
import type { Heating, Mention, Place, RawCourse, RawFood } from './types.js';
import { verbAt, type Words } from './words.js';

/** A pot that simmers this long is past every safe minimum (common practice). */
const LONG_SECONDS = new Fraction(3600);
/** So is meat that bakes or smokes this long, birds aside, which are roasted whole (common practice). */
const LONG_DRY_SECONDS = new Fraction(3 * 3600);
/** Crumbs and small pieces are done through in a pot much sooner (common practice). */
const LONG_SECONDS_IN_BITS = new Fraction(1200);
/** Under pressure food cooks at about 250°F (121°C), and faster (common practice). */
const LONG_SECONDS_UNDER_PRESSURE = new Fraction(480);
const STOCK = foodNamed('stock');

/** One course for each raw food, in the order of the list. `uses` are the mentions by listing, `heatings` all orders to cook. */
export function rawCoursesOf(
  recipe: Recipe,
  words: readonly Words[],
  uses: readonly (readonly Mention[])[],
  heatings: readonly Heating[],
  rawFoods: readonly RawFood[],
): RawCourse[] {
  const makesStock = rawFoods.length > 0 && namesStock(recipe.title?.text ?? '');
  return rawFoods.map((raw) => courseOf(recipe, words, uses, heatings, rawFoods, raw, makesStock));
}

function courseOf(
  recipe: Recipe,
  words: readonly Words[],
  uses: readonly (readonly Mention[])[],
  heatings: readonly Heating[],
  rawFoods: readonly RawFood[],
  raw: RawFood,
  makesStock: boolean,
): RawCourse {
  const own = uses[raw.listing.index]!;
  const cookings = cookingsOf(words, own, heatings, raw);
  const first = own[0]?.step ?? words.length;
  const bits = isInBits(recipe, words, own, cookings, raw);
  const about = (step: number, at: number) => isAbout(words[step]!, step, at, uses, rawFoods, raw);
  const signs = (is: 'color-cue' | 'degree-word' | 'opaque-cue' | 'falls-apart' | 'whole-step') =>
    words.flatMap((step, index) =>
      index < first
        ? []
        : saidIn(step, all(step), is)
            .filter((said) => about(index, said.at))
            .map((said) => ({ said, place: placeOf(step, index, said.at, said.length) })),
    );
  const [degree] = signs('degree-word');
  return {
    raw,
    cookings,
    bits,
    sure:
      makesStock ||
      signs('falls-apart').length > 0 ||
      signs('whole-step').some(({ place }) => cookings.some((cooking) => cooking.step === place.step)) ||
      isLong(words, cookings, raw, bits),
    shown: (raw.safety === 'fish' || raw.safety === 'shellfish') && signs('opaque-cue').length > 0,
    color: signs('color-cue')[0]?.place ?? null,
    degree: degree === undefined ? null : { ...degree.place, fahrenheit: Number(degree.said.means) },
    rest: restOf(words, cookings, first),
  };
}

/** "Chicken Stock", "Beef Bone Broth": what is strained off is boiled for as long as it takes. */
function namesStock(title: string): boolean {
  const keys = title.split(/[^\p{L}\p{N}'’]+/u).map(fold);
  const last = foodAt(keys, keys.length - 1)?.food;
  const whole = keys.flatMap((_, at) => foodAt(keys, at)?.food ?? []).at(-1);
  return [last, whole].some((food) => food !== undefined && STOCK !== null && isKindOf(food, STOCK));
}

/**
 * The orders that cook a raw food: those of the sentences that name it, and those after it is first named that name nothing,
 * a thing made on the way, or a group. "Boil the potatoes" does not cook the fish.
 */
function cookingsOf(
  words: readonly Words[],
  own: readonly Mention[],
  heatings: readonly Heating[],
  raw: RawFood,
): Heating[] {
  const first = own[0];
  if (first === undefined) return [];
  const opening = sentenceOf(words[first.step]!, first.start);
  return heatings.filter((heating) => {
    if (heating.technique.ends && !does(heating.technique, 'dry-heat')) return false;
    if (heating.step < first.step) return false;
    const step = words[heating.step]!;
    const sentence = sentenceOf(step, heating.start);
    if (heating.step === first.step && sentence.from < opening.from) return false;
    if (names(step, sentence, heating.step, own)) return true;
    return heating.objects.every(
      (mention) => mention.role === 'made' || mention.listings.includes(raw.listing),
    );
  });
}

/** Whether it boils, braises, stews, bakes or cooks under pressure so long that it is beyond doubt. */
function isLong(words: readonly Words[], cookings: readonly Heating[], raw: RawFood, bits: boolean): boolean {
  let wet = new Fraction(0);
  let dry = new Fraction(0);
  let pressure = new Fraction(0);
  const seen = new Set<Duration>();
  for (const cooking of cookings) {
    const isDry = does(cooking.technique, 'dry-heat');
    for (const duration of cooking.durations) {
      if (seen.has(duration)) continue;
      seen.add(duration);
      if (duration.seconds === null) {
        if (duration.unit === 'night') return true;
        continue;
      }
      const { low, high } = duration.seconds;
      const least = low.lte(high) ? low : high;
      if (isDry) dry = dry.add(least);
      else wet = wet.add(least);
      const step = words[cooking.step]!;
      if (saysIn(step, all(step), 'under-pressure')) pressure = pressure.add(least);
    }
  }
  if (wet.gte(LONG_SECONDS) || pressure.gte(LONG_SECONDS_UNDER_PRESSURE)) return true;
  if (raw.safety !== 'poultry' && dry.gte(LONG_DRY_SECONDS)) return true;
  // Ground meat in crumbs is browned first, and what comes after is time over and above.
  const afterwards = raw.safety === 'ground-meat' ? wet.add(dry) : wet;
  return (bits || raw.safety === 'fish') && afterwards.gte(LONG_SECONDS_IN_BITS);
}

/**
 * Whether it is cooked in pieces too small for a thermometer: whole cuts and birds that are cut small before they are cooked, and
 * ground meat that is never shaped.
 */
function isInBits(
  recipe: Recipe,
  words: readonly Words[],
  own: readonly Mention[],
  cookings: readonly Heating[],
  raw: RawFood,
): boolean {
  const listed = raw.listing.passage.text;
  if (isGround(raw)) {
    const isFormed = speaksOf(listed, 'formed') || speaksOf(recipe.title?.text ?? '', 'formed');
    return !isFormed && !words.some(isForming);
  }
  if (raw.safety !== 'whole-cut' && raw.safety !== 'poultry') return false;
  const small = raw.safety === 'poultry' ? 'bite-size' : 'small-piece';
  if (speaksOf(listed, small)) return true;
  const [cooking] = cookings;
  return own.some((mention) => {
    // A steak that is sliced when it has rested was whole in the pan.
    const isLater =
      cooking !== undefined &&
      (mention.step > cooking.step || (mention.step === cooking.step && mention.start > cooking.end));
    if (isLater || mention.verb === null || !isWord(fold(mention.verb), 'small-cut')) return false;
    const step = words[mention.step]!;
    return raw.safety === 'whole-cut' || saysIn(step, sentenceOf(step, mention.start), small);
  });
}

/** Whether a step speaks of patties, meatballs, a loaf, or shapes something. */
function isForming(words: Words): boolean {
  return words.keys.some((key, at) => {
    if (phraseAt(words.keys, at, 'formed') !== null) return true;
    return isWord(key, 'forming') && verbAt(words, at) !== null;
  });
}

/** Meat or poultry that is ground: the class of ground meat, and every bird that is called so. */
export function isGround(raw: RawFood): boolean {
  return raw.safety === 'ground-meat' || speaksOf(raw.listing.passage.text, 'ground-state');
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
  const named = (isThere: (mention: Mention) => boolean): RawFood[] =>
    rawFoods.filter((food) => uses[food.listing.index]!.some(isThere));
  const inSentence = rawFoods.filter((food) => names(words, sentence, step, uses[food.listing.index]!));
  if (inSentence.length > 0) return inSentence.includes(raw);
  for (let earlier = step; earlier >= 0; earlier--) {
    const last = named((mention) => mention.step === earlier);
    if (last.length > 0) return last.includes(raw);
  }
  return true;
}

/** What is said of waiting after the last order to cook, and for how long where that is said. */
function restOf(words: readonly Words[], cookings: readonly Heating[], first: number): RawCourse['rest'] {
  const last = cookings.at(-1);
  let found: RawCourse['rest'] = false;
  words.forEach((step, index) => {
    if (index < first || (last !== undefined && index < last.step)) return;
    for (const said of saidIn(step, all(step), 'resting')) {
      // "The rest of the onions" waits for nothing.
      if (step.keys[said.at + said.length] === 'of') continue;
      if (last !== undefined && index === last.step && step.words[said.at]!.start < last.start) continue;
      const { from, to } = sentenceAt(step, said.at);
      const items = step.items.slice(step.at[from], step.at[to] ?? step.items.length);
      const time = items.filter((item): item is Duration => item.kind === 'duration').at(-1);
      if (found === false || (found === true && time !== undefined))
        found = time === undefined ? true : { ...time, step: index };
    }
  });
  return found;
}

/** Whether a stretch of a step names one of these mentions. */
export function names(words: Words, { from, to }: Stretch, step: number, own: readonly Mention[]): boolean {
  if (to <= from) return false;
  const start = words.words[from]!.start;
  const end = words.words[to - 1]!.end;
  return own.some((mention) => mention.step === step && mention.start >= start && mention.end <= end);
}

function sentenceOf(words: Words, offset: number): Stretch {
  return sentenceAt(words, wordAt(words, offset));
}

/** The place of words `at` to `at + length` of a step. */
export function placeOf(words: Words, step: number, at: number, length: number): Place {
  return { step, start: words.words[at]!.start, end: words.words[at + length - 1]!.end };
}
