/** Finds food that is left where bacteria grow: too warm for too long, or cooked in part and put away. */
import { toFahrenheit } from '../arithmetic/temperatures.js';
import type { Duration, Item } from '../grammar/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { limitFahrenheit, limitSeconds } from '../larder/hazard-limits.js';
import { type HazardWord, hazardFoods, hazardWordsIn, tellsOf } from '../larder/hazard-words.js';
import { fold } from '../larder/names.js';
import type { Food } from '../larder/types.js';
import { isRawAnimal, listingsOf, rawAnimalsOf } from './bought.js';
import {
  allSentences,
  anyTells,
  durationsIn,
  foodsIn,
  heatVerbsIn,
  isWarned,
  isWordOf,
  itemsIn,
  methodSentences,
  type Sentence,
  tells,
  wordOf,
} from './hazard-sentences.js';
import { type Hold, isCold, leftOut, type Named, thawingWord, WATER } from './thawing.js';
import type { Dish } from './types.js';

const COOKED_STAPLES = ['rice', 'pasta', 'bean', 'potato', 'lentil'].flatMap(foodsNamed);
const SPOILING = hazardFoods('spoiling');
const CULTURES = hazardFoods('curdles');

/** Where food that spoils is left at room temperature, or lukewarm, for longer than the limit; or a bird is stuffed ahead. */
export function warmHolds(dish: Dish): Hold[] {
  const story = storyOf(dish);
  return allSentences(dish).flatMap((sentence) => {
    const hold = roomHold(story, sentence) ?? lukewarmHold(story, sentence) ?? stuffedAhead(dish, sentence);
    return hold === null ? [] : [hold];
  });
}

/** What was done before: asked for once a recipe, and only where something is left. */
interface Story {
  readonly dish: Dish;
  /** The first sentence that cooks. */
  readonly cooked: () => Sentence | undefined;
  /** The first that speaks of a dough or a ferment. */
  readonly fermented: () => Sentence | undefined;
}

function storyOf(dish: Dish): Story {
  const once = (find: () => Sentence | undefined): (() => Sentence | undefined) => {
    let found: { sentence: Sentence | undefined } | null = null;
    return () => {
      found ??= { sentence: find() };
      return found.sentence;
    };
  };
  return {
    dish,
    cooked: once(() => methodSentences(dish).find(boils)),
    fermented: once(() => methodSentences(dish).find((sentence) => tells(sentence, 'fermenting'))),
  };
}

function roomHold(story: Story, sentence: Sentence): Hold | null {
  if (!tells(sentence, 'leave') || tells(sentence, 'fermented', 'sous-vide')) return null;
  if (thawingWord(sentence) !== undefined) return null;
  const place = wordOf(sentence, 'room') ?? leftOut(sentence) ?? wordOf(sentence, 'uncooled') ?? null;
  if (place === null || isWarned(sentence, place.end)) return null;
  const end = beforeCold(sentence);
  if (place.start >= end) return null;
  const time = longTime(sentence, place, end);
  if (time === null) return null;
  const food = spoilingFood(story, sentence);
  if (food === null) return null;
  const start = sentence.places[place.start]![0];
  return {
    passage: sentence.passage,
    start: Math.min(start, time.start),
    end: Math.max(sentence.places[place.end - 1]![1], time.end),
    ...food,
  };
}

/** The word before which the sentence speaks of no cold place: "let cool at room temperature, then | refrigerate overnight". */
function beforeCold(sentence: Sentence): number {
  const cold = sentence.hazards.find((word) => word.is === 'freezer' || isCold(sentence, word));
  if (cold === undefined) return sentence.keys.length;
  const { text } = sentence.passage;
  for (let at = cold.start; at > 0; at--) {
    const gap = text.slice(sentence.places[at - 1]![1], sentence.places[at]![0]);
    const joins = sentence.hazards.some(({ is, start }) => is === 'joining' && start === at);
    if (joins || /[,(:–—]/.test(gap)) return at;
  }
  return 0;
}

/** A stretch of the sentence's text that is a time. */
interface Time {
  readonly start: number;
  readonly end: number;
  readonly long: boolean;
}

/** The time nearest to a word, before word `end`, where it is longer than food may be kept warm; null where it is not, or there is none. */
function longTime(sentence: Sentence, near: HazardWord, end = sentence.keys.length): Time | null {
  const limit = end < sentence.keys.length ? sentence.places[end]![0] : sentence.end;
  const times = timesIn(sentence).filter(({ start }) => start < limit);
  const from = sentence.places[near.start]![0];
  const to = sentence.places[near.end - 1]![1];
  const away = ({ start, end: last }: Time): number => Math.max(0, start - to, from - last);
  const nearest = times.reduce<Time | null>(
    (best, time) => (best === null || away(time) < away(best) ? time : best),
    null,
  );
  return nearest?.long === true ? nearest : null;
}

function timesIn(sentence: Sentence): Time[] {
  const words = sentence.hazards.filter(({ is }) => is === 'long');
  return [
    ...durationsIn(sentence).map((each) => ({ start: each.start, end: each.end, long: isLong(each) })),
    ...words.map(({ start, end }) => ({
      start: sentence.places[start]![0],
      end: sentence.places[end - 1]![1],
      long: true,
    })),
  ];
}

function isLong(duration: Duration): boolean {
  return duration.seconds === null
    ? duration.unit === 'night'
    : duration.seconds.high.gt(limitSeconds('hold-at-room-temperature'));
}

/** The food that spoils and is left: named, a cooked dish by its word, or the raw food that the method has in hand. */
function spoilingFood(story: Story, sentence: Sentence): Named | null {
  const foods = foodsIn(sentence).filter(({ food }) => !isAnyOf(food, WATER));
  const spoiling = foods.find(
    ({ food, start }) =>
      isRawAnimal(food) ||
      isAnyOf(food, SPOILING) ||
      (isAnyOf(food, COOKED_STAPLES) && isCookedThere(story, sentence, start)),
  );
  // Milk with a culture in it is on its way to yogurt or cheese.
  const isCultured = foods.some(({ food }) => isAnyOf(food, CULTURES));
  if (spoiling !== undefined && isCultured && !isRawAnimal(spoiling.food)) return null;
  if (spoiling !== undefined) return { food: spoiling.food.name, named: true };
  const dishWord = wordOf(sentence, 'cooked-dish');
  if (dishWord !== undefined)
    return { food: sentence.keys.slice(dishWord.start, dishWord.end).join(' '), named: true };
  // "Let the salad stand", of a chicken salad.
  const titled = dishInTitle(story.dish);
  if (titled !== null && sentence.keys.includes(titled.food.split(' ').at(-1)!))
    return { ...titled, named: true };
  // "Cover with the marinade and set aside" leaves what is covered.
  if (
    foods.some(
      ({ start }) => !isWordOf(sentence, start - 1, 'within') && !isWordOf(sentence, start - 2, 'within'),
    )
  )
    return null;
  if (sentence.step === null) return dishInTitle(story.dish);
  const inHand = rawInHand(story, sentence) ?? stapleInHand(story, sentence);
  return inHand === undefined ? null : { food: inHand.name, named: false };
}

/** "It will be fine in the basket all day", said of the dish that the title names. */
function dishInTitle({ recipe }: Dish): Named | null {
  const keys = (recipe.title?.text ?? '').split(/[^\p{L}\p{N}'’]+/u).map(fold);
  const word = hazardWordsIn(keys).find(({ is }) => is === 'cooked-dish');
  return word === undefined ? null : { food: keys.slice(word.start, word.end).join(' '), named: false };
}

/** Whether a staple is cooked where it is named: "cooked rice", "leftover rice", or rice after something was cooked. */
function isCookedThere(story: Story, sentence: Sentence, at: number): boolean {
  if (sentence.hazards.some(({ is, end }) => is === 'cooked' && end <= at && end >= at - 2)) return true;
  // What soaks is dry yet, whatever was cooked before.
  if (tells(sentence, 'soak')) return false;
  if (listingsOf(story.dish, COOKED_STAPLES).some(({ passage }) => tellsOf(passage.text, 'cooked')))
    return true;
  const cooked = sentence.step === null ? undefined : story.cooked();
  if (cooked === undefined) return false;
  // "Boil the rice, drain it, and leave it out".
  const leaves = wordOf(sentence, 'leave')?.start ?? 0;
  const cooksHere = cooked === sentence && heatVerbsIn(sentence).some((verb) => verb.at < leaves);
  return cooksHere || isBefore(cooked, sentence);
}

function boils(sentence: Sentence): boolean {
  return heatVerbsIn(sentence).some(({ technique }) => !technique.ends);
}

function isBefore(one: Sentence, other: Sentence): boolean {
  return one.step! < other.step! || (one.step === other.step && one.start < other.start);
}

/** The raw animal food that the step, or the one before it, uses; undefined where a dough or a bake is made. */
function rawInHand({ dish, fermented }: Story, sentence: Sentence): Food | undefined {
  const dough = fermented();
  if (dough !== undefined && (dough === sentence || isBefore(dough, sentence))) return undefined;
  return dish.rawFoods.find(({ listing, safety }) => {
    const uses = dish.uses[listing.index]!;
    const isNear = uses.some(({ step }) => step === sentence.step || step === sentence.step! - 1);
    return safety !== 'egg' && (isNear || uses.length === 0);
  })?.food;
}

/** The rice, pasta or beans that the sentence before speaks of, where they are cooked by then. */
function stapleInHand({ dish, cooked, fermented }: Story, sentence: Sentence): Food | undefined {
  const method = methodSentences(dish);
  const before = method[method.indexOf(sentence) - 1];
  const first = cooked();
  if (before === undefined || first === undefined || fermented() !== undefined) return undefined;
  if (first !== before && !isBefore(first, before)) return undefined;
  return foodsIn(before).find(({ food }) => isAnyOf(food, COOKED_STAPLES))?.food;
}

/** "Hold the pork in a 120°F oven for 4 hours": a heat of the danger zone, for longer than the limit. */
function lukewarmHold(story: Story, sentence: Sentence): Hold | null {
  if (!tells(sentence, 'leave') || tells(sentence, 'fermented', 'sous-vide', 'cold')) return null;
  // Milk that is kept warm with a culture is on its way to yogurt or cheese.
  if (foodsIn(sentence).some(({ food }) => isAnyOf(food, CULTURES))) return null;
  const items = itemsIn(sentence);
  const heat = items.find(isDangerHeat);
  const time = items.find((item): item is Duration => item.kind === 'duration' && isLong(item));
  const food = foodsIn(sentence).find(({ food }) => isRawAnimal(food) || isAnyOf(food, SPOILING));
  const dishWord = wordOf(sentence, 'cooked-dish');
  if (heat === undefined || time === undefined) return null;
  const named = food?.food.name ?? (dishWord === undefined ? undefined : sentence.keys[dishWord.start]);
  const inHand =
    foodsIn(sentence).length > 0 || sentence.step === null ? undefined : rawInHand(story, sentence);
  if (named === undefined && inHand === undefined) return null;
  return {
    passage: sentence.passage,
    start: Math.min(heat.start, time.start),
    end: Math.max(heat.end, time.end),
    food: named ?? inHand!.name,
    named: named !== undefined,
  };
}

function isDangerHeat(item: Item): boolean {
  if (item.kind !== 'temperature' || item.scale === null || item.scale === 'gas') return false;
  const fahrenheit = toFahrenheit(item.amount.low, item.scale);
  if (fahrenheit === null) return false;
  return (
    fahrenheit.gt(limitFahrenheit('danger-zone-low')) && fahrenheit.lt(limitFahrenheit('danger-zone-high'))
  );
}

/** "Stuff the turkey the night before": a bird that waits with its stuffing inside, even in the cold. */
function stuffedAhead(dish: Dish, sentence: Sentence): Hold | null {
  const stuff = wordOf(sentence, 'stuff');
  if (stuff === undefined || isWarned(sentence, sentence.keys.length)) return null;
  const bird = dish.rawFoods.find((raw) => raw.safety === 'poultry');
  const foods = foodsIn(sentence);
  const named = foods.find(({ food }) => food.safety === 'poultry' && !food.ready);
  const isBird = named !== undefined || (bird !== undefined && tells(sentence, 'bird'));
  const time = isBird ? longTime(sentence, stuff) : null;
  // Stuffing that is made ahead and kept by itself is no stuffed bird, nor is a bird that roasts for hours.
  if (time === null || heatVerbsIn(sentence).length > 0) return null;
  const food = named?.food.name ?? bird!.food.name;
  return {
    passage: sentence.passage,
    start: Math.min(sentence.places[stuff.start]![0], time.start),
    end: Math.max(sentence.places[stuff.end - 1]![1], time.end),
    food,
    named: true,
  };
}

/** Where meat is cooked in part and put away, to be finished later. */
export function partlyCookedHolds(dish: Dish): Hold[] {
  const animals = rawAnimalsOf(dish).filter((food) => food.safety !== 'fish' && food.safety !== 'shellfish');
  const sentences = methodSentences(dish);
  if (animals.length === 0 || !anyTells(sentences, 'brown', 'partly-cooked')) return [];
  const found: Hold[] = [];
  sentences.forEach((sentence, index) => {
    const part = wordOf(sentence, 'partly-cooked') ?? wordOf(sentence, 'brown');
    if (part === undefined || isWarned(sentence, part.start) || !isOfMeat(sentence)) return;
    const away = putAway(sentences, index, part);
    if (away === null) return;
    found.push({
      passage: sentence.passage,
      start: sentence.places[part.start]![0],
      end:
        away.sentence === sentence
          ? sentence.places[away.word.end - 1]![1]
          : sentence.places[part.end - 1]![1],
      food: foodsIn(sentence).find(({ food }) => isRawAnimal(food))?.food.name ?? animals[0]!.name,
      named: true,
    });
  });
  return found;
}

/** Whether the sentence may be about the meat: it names some, or no food of its own ("the fillet", "the joint"). */
function isOfMeat(sentence: Sentence): boolean {
  const foods = foodsIn(sentence);
  return foods.every(({ food }) => food.generic) || foods.some(({ food }) => isRawAnimal(food));
}

/** How many sentences on the meat may still be put away. */
const AWAY_REACH = 3;

/** Where the meat that word `part` cooks in part is put into the cold, or kept for hours, before any other heat. */
function putAway(
  sentences: readonly Sentence[],
  index: number,
  part: HazardWord,
): { sentence: Sentence; word: HazardWord } | null {
  for (let at = index; at < Math.min(sentences.length, index + AWAY_REACH); at++) {
    const sentence = sentences[at]!;
    const from = at === index ? part.end : 0;
    const word = sentence.hazards.find(({ is, start }) => is === 'cold' && start >= from);
    const hold = word ?? sentence.hazards.find(({ is, start }) => is === 'long' && start >= from);
    const waits =
      hold !== undefined &&
      (timesIn(sentence).some(({ long }) => long) ||
        tells(sentence, 'finish', 'keep', 'until-needed') ||
        tells(sentences[index]!, 'long') ||
        (sentences[at + 1] !== undefined && tells(sentences[at + 1]!, 'finish')));
    const heat = heatVerbsIn(sentence).find(
      (verb) => verb.at >= from && !isWordOf(sentence, verb.at, 'brown', 'partly-cooked'),
    );
    if (waits && (heat === undefined || heat.at > hold!.start)) return { sentence, word: hold! };
    if (heat !== undefined) return null;
  }
  return null;
}
