/** Knows which temperatures are those to which the food itself is cooked, and which food each is about. */
import Fraction from 'fraction.js';
import type { Recipe } from '../anatomy/types.js';
import { toFahrenheit } from '../arithmetic/temperatures.js';
import type { Temperature } from '../grammar/types.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Passage } from '../manuscript/passage.js';
import {
  lastMentionBefore,
  mentionsWithin,
  type Stretch,
  saidIn,
  saysIn,
  sentenceAt,
  wordAt,
} from './stretches.js';
import type { DoneTemperature, Mention, RawFood } from './types.js';
import { verbAt, type Words, wordsOf } from './words.js';

/** Above this no food is cooked inside (water boils at 212°F): it is the oven's or the oil's temperature. */
const HOTTEST_FOOD_FAHRENHEIT = new Fraction(211);
/** Below this it is a drink's, a dough's or a refrigerator's temperature. */
const COOLEST_FOOD_FAHRENHEIT = new Fraction(115);
/** From here on a bare number of degrees is taken as Fahrenheit. */
const LEAST_PLAIN_FAHRENHEIT = new Fraction(105);
/** How many words after a temperature may still say that it is the food's own: "165°F on an instant-read thermometer". */
const WORDS_AFTER = 7;
/** How many words after a temperature may name its food: "165°F for the chicken". */
const WORDS_TO_NAME = 4;
/** How many words after a temperature may say that it goes on rising. */
const WORDS_TO_RISE = 40;
/** How many words after "heat" may name what is heated: "heat the whole milk". */
const WORDS_TO_HEATED = 4;

/** The temperatures to which food is cooked, in the method and in the texts around it, with the foods that each is about. */
export function doneTemperaturesOf(
  recipe: Recipe,
  words: readonly Words[],
  mentions: readonly Mention[],
  foods: readonly RawFood[],
): DoneTemperature[] {
  if (foods.length === 0) return [];
  const found = words.flatMap((step, index) =>
    temperaturesIn(step, recipe.steps[index]!.passage, index, (naming) =>
      foodsOf(foods, index, mentions, naming),
    ),
  );
  for (const passage of [...recipe.headnote, ...recipe.notes]) {
    if (!STATES_HEAT.test(passage.text)) continue;
    const note = wordsOf(passage.text);
    found.push(...temperaturesIn(note, passage, null, () => foods.filter((food) => food.safety !== 'egg')));
  }
  return found;
}

/** A text without a degree sign, the word or a figure before F or C states no temperature. */
const STATES_HEAT = /[°º˚]|degree|\d\s?[FC]\b/;

/** Where the food of a temperature may be named, in offsets of the step's text. */
interface Naming {
  /** From the sentence's head, or the temperature before, to this one. */
  readonly before: Stretch;
  /** The part of it that says when to stop: "until the sausages reach". */
  readonly clause: Stretch;
  /** What follows with "for" or "in": "165°F for the chicken". */
  readonly after: Stretch;
  /** The sentence bakes or roasts. */
  readonly baked: boolean;
}

type FoodsMeant = (naming: Naming) => readonly RawFood[];

function temperaturesIn(
  words: Words,
  passage: Passage,
  step: number | null,
  meant: FoodsMeant,
): DoneTemperature[] {
  const found: DoneTemperature[] = [];
  let last = 0;
  /** Where the last temperature of food stands among the items. */
  let chained = -1;
  /** Where the last temperature of any kind stands. */
  let other = -1;
  words.items.forEach((item, at) => {
    if (item.kind !== 'temperature') return;
    const previous = other;
    other = at;
    const fahrenheit = inFahrenheit(item);
    if (fahrenheit === null || !mayBeInside(fahrenheit) || !isFoodsOwn(words, at, previous, chained)) return;
    const after = wordAt(words, item.start);
    const sentence = sentenceAt(words, Math.max(0, after - 1));
    // In a note, only what is said of cooking counts: leftovers are warmed to a figure of their own.
    if (step === null && saysIn(words, sentence, 'reheated')) return;
    const before = { from: Math.max(last, sentence.from), to: after };
    const until = saidIn(words, before, 'until').at(-1)?.at ?? after;
    const isNamedBehind = words.keys[after] === 'for' || words.keys[after] === 'in';
    const behind = { from: after, to: isNamedBehind ? Math.min(sentence.to, after + WORDS_TO_NAME) : after };
    found.push({
      step,
      passage,
      temperature: item,
      fahrenheit,
      foods: meant({
        before: textOf(words, before, item.start),
        clause: textOf(words, { from: until, to: after }, item.start),
        after: textOf(words, behind, item.end),
        baked: bakes(words, sentence),
      }),
      rising: saysIn(
        words,
        { from: after, to: Math.min(words.keys.length, after + WORDS_TO_RISE) },
        'rising',
      ),
    });
    last = after;
    chained = at;
  });
  return found;
}

/** "Bake the custard until it reads …": what is set in the oven is set by its eggs. */
function bakes(words: Words, { from, to }: Stretch): boolean {
  for (let at = from; at < to; at++) {
    const verb = verbAt(words, at);
    if (verb !== null && does(verb, 'oven') && !verb.ends) return true;
  }
  return false;
}

/** The same stretch in offsets of the text; where it has no words, nothing at `place`. */
function textOf(words: Words, { from, to }: Stretch, place: number): Stretch {
  const first = words.words[from];
  return first === undefined || to <= from
    ? { from: place, to: place }
    : { from: first.start, to: words.words[to - 1]!.end };
}

/**
 * The foods that a temperature of a step is about: the one named behind it ("165°F for the chicken"), else those of its sentence since
 * the temperature before, else those of the step, else those that the method named last. A glaze of egg does not make it the egg's
 * temperature; eggs are meant where no other animal food is listed and the sentence names them, or bakes.
 */
function foodsOf(
  foods: readonly RawFood[],
  step: number,
  mentions: readonly Mention[],
  meant: Naming,
): readonly RawFood[] {
  const namedIn = (some: readonly Mention[], eggs = false): RawFood[] =>
    foods.filter(
      ({ safety, listing }) =>
        (safety === 'egg') === eggs &&
        some.some((mention) => mention.role !== 'aside' && mention.listings.includes(listing)),
    );
  const inside = ({ from, to }: Stretch): Mention[] => mentionsWithin(mentions, step, from, to);
  for (const place of [meant.after, meant.clause, meant.before]) {
    const named = namedIn(inside(place));
    if (named.length > 0) return named;
  }
  const eggs = namedIn(inside(meant.before).filter(isHeated), true);
  if (eggs.length > 0) return eggs;
  const last = lastMentionBefore(mentions, step, meant.before.to, (mention) => namedIn([mention]).length > 0);
  if (last !== null)
    return namedIn(mentionsWithin(mentions, last.step, 0, last.step === step ? meant.before.to : undefined));
  const others = foods.filter((food) => food.safety !== 'egg');
  if (others.length > 0) return others;
  return meant.baked ? foods : namedIn(inside(meant.before), true);
}

/** "Cook the eggs to …", "test the eggs with a probe", "take the eggs off at …": not those that are brushed on or stirred in. */
function isHeated({ verb }: Mention): boolean {
  const match = verb === null ? null : techniqueOf(fold(verb));
  if (match === null) return true;
  const { technique } = match;
  return does(technique, 'heat') || !does(technique, 'add', 'combine', 'coat', 'season', 'garnish', 'fill');
}

/** The lowest that the text allows, in degrees Fahrenheit; null for a gas mark, which is always an oven's. */
export function inFahrenheit(temperature: Temperature): Fraction | null {
  const { low, high } = temperature.amount;
  const least = low.lte(high) ? low : high;
  if (temperature.scale === 'gas') return null;
  return toFahrenheit(
    least,
    temperature.scale ?? (least.gte(LEAST_PLAIN_FAHRENHEIT) ? 'fahrenheit' : 'celsius'),
  );
}

/**
 * Whether the words around a temperature say that it is the food's: "internal", "thermometer", "until it reaches". What follows another
 * such temperature in its sentence is so too: "165°F in the thigh and 165°F in the stuffing".
 */
function isFoodsOwn(words: Words, item: number, other: number, chained: number): boolean {
  const after = wordAt(words, words.items[item]!.start);
  const sentence = words.sentence[after - 1];
  let said: 'food' | 'other' | null = null;
  const { from } = sentenceAt(words, after - 1);
  for (let at = after - 1; at >= from; at--) {
    if (words.at[at]! < other) {
      if (said === null && other === chained) return true;
      break;
    }
    // The word nearest to the number tells: "heat the oil and fry until 160°F" is the food's, "until the oil is at 350°F" is not.
    if (phraseAt(words.keys, at, 'holding') !== null || heatsLiquid(words, at)) return false;
    if (phraseAt(words.keys, at, 'inside') !== null) said = 'food';
    if (said === null && phraseAt(words.keys, at, 'reaching') !== null) said = 'food';
    // "Grill to 160°F" names no grill.
    const isOrder = (): boolean => verbAt(words, at) !== null && words.keys[at] !== 'heat';
    if (said === null && isWord(words.keys[at], 'outside') && !isOrder()) said = 'other';
  }
  for (
    let at = after;
    at < Math.min(words.keys.length, after + WORDS_AFTER) && words.sentence[at] === sentence;
    at++
  ) {
    const key = words.keys[at];
    if (key === 'internal' || key === 'internally' || key === 'thermometer' || key === 'inside') return true;
  }
  return (
    said === 'food' ||
    isInMiddle(words, after) ||
    isTakenAt(words, after) ||
    (said === null && isCookedTo(words, after))
  );
}

/** "155° in the middle", "165°F in the thickest part": behind the figure, and not "in the middle of the oven". */
function isInMiddle(words: Words, after: number): boolean {
  const { keys } = words;
  if (!isWord(keys[after], 'beside-place') || words.before[after] !== '') return false;
  const behind = keys.slice(after + 1, after + 1 + WORDS_TO_NAME);
  const isOven = keys.slice(after, after + WORDS_AFTER).some((key) => isWord(key, 'outside'));
  return !isOven && behind.some((key) => isWord(key, 'inmost'));
}

/** How many words before "at 135°F" may take the food from the heat. */
const WORDS_SINCE_TAKEN = 6;

/** "Pull them at 135°F", "take it out of the oven at 155°F": what is taken out has that heat, and not the oven. */
function isTakenAt(words: Words, after: number): boolean {
  if (words.keys[after - 1] !== 'at') return false;
  for (let at = after - 2; at >= Math.max(words.opening[after - 1]!, after - WORDS_SINCE_TAKEN); at--) {
    if (isWord(words.keys[at], 'taken-out')) return true;
    const verb = verbAt(words, at);
    if (verb !== null && does(verb, 'heat')) return false;
  }
  return false;
}

/** Whether an order cooks something to this temperature: "grill to 145°F", not "the oven to 400°F". */
export function cooksTo(words: Words, temperature: Temperature): boolean {
  const fahrenheit = inFahrenheit(temperature);
  return (
    fahrenheit !== null && mayBeInside(fahrenheit) && isCookedTo(words, wordAt(words, temperature.start))
  );
}

function mayBeInside(fahrenheit: Fraction): boolean {
  return fahrenheit.lte(HOTTEST_FOOD_FAHRENHEIT) && fahrenheit.gte(COOLEST_FOOD_FAHRENHEIT);
}

/** "Flip and cook to 130°F": an order to cook, and "to" right before the figure. */
function isCookedTo(words: Words, after: number): boolean {
  if (words.keys[after - 1] !== 'to') return false;
  for (let at = words.opening[after - 1]!; at < after; at++) {
    const verb = verbAt(words, at);
    if (verb !== null && does(verb, 'heat') && !verb.ends) return true;
  }
  return false;
}

/** "Warm the milk until a thermometer reads …": what is only warmed is no meat. */
function heatsLiquid(words: Words, at: number): boolean {
  const verb = verbAt(words, at);
  if (verb === null || !verb.ends || !does(verb, 'heat') || does(verb, 'dry-heat')) return false;
  for (let next = at + 1; next <= at + WORDS_TO_HEATED && words.sentence[next] === words.sentence[at]; next++)
    if (phraseAt(words.keys, next, 'outside')?.means === 'liquid') return true;
  return false;
}
