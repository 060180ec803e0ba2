/** Finds food that is put up to keep: garlic and herbs in oil, and jars that are canned at home. */
import type { Duration } from '../grammar/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { limitSeconds } from '../larder/hazard-limits.js';
import { type HazardWord, hazardFoods, tellsOf } from '../larder/hazard-words.js';
import { isDry, listingsOf } from './bought.js';
import {
  allSentences,
  anyTells,
  asideSentences,
  durationsIn,
  foodsIn,
  isWarned,
  methodSentences,
  type Place,
  placeOfWords,
  type Sentence,
  tells,
  wordOf,
} from './hazard-sentences.js';
import type { Dish } from './types.js';

const OIL = foodsNamed('oil');
const FRESH = hazardFoods('kept-in-oil');
const DRY = ['spice', 'seasoning'].flatMap(foodsNamed);
const ACID = hazardFoods('acid');

export interface OilKept extends Place {
  readonly why: 'too-long' | 'not-cold' | 'unsaid';
}

/** Garlic, herbs or vegetables in oil that are kept too long, or not cold; null where they are eaten at once or soured. */
export function keptInOil(dish: Dish): OilKept | null {
  const fresh = listingsOf(dish, FRESH).find(
    (listing) => !isDry(listing) && listing.line.foods.some(({ row }) => !isAnyOf(row, DRY)),
  );
  if (fresh === undefined || listingsOf(dish, OIL).length === 0) return null;
  const method = methodSentences(dish);
  const food = fresh.line.foods[0]!.name;
  const isSour = listingsOf(dish, ACID).length > 0;
  const isOil = !isSour && isOfOil(dish.recipe.title?.text ?? '');
  const laid = method.filter(
    (sentence) => tells(sentence, 'in-oil') && (isOil || laysInOil(method, sentence, isSour)),
  );
  if (!isOil && laid.length === 0) return null;
  const sentences = allSentences(dish);
  const keeps = isOil
    ? sentences.filter(isKept)
    : [...laid.flatMap((sentence) => fromOn(method, sentence)), ...asideSentences(dish)].filter(isKept);
  for (const sentence of keeps) {
    const shelf = wordOf(sentence, 'shelf', 'room');
    if (shelf !== undefined && !tells(sentence, 'cold') && !isWarned(sentence, shelf.start))
      return keptAt(sentence, food, 'not-cold');
  }
  for (const sentence of keeps) {
    const duration = durationsIn(sentence).find(isTooLong);
    if (isWarned(sentence, sentence.keys.length)) continue;
    if (duration !== undefined)
      return { passage: sentence.passage, start: duration.start, end: duration.end, food, why: 'too-long' };
    const weeks = wordOf(sentence, 'weeks');
    if (weeks !== undefined)
      return { ...placeOfWords(sentence, weeks.start, weeks.end, food), why: 'too-long' };
  }
  const kept = keeps[0];
  return kept === undefined || anyTells(keeps, 'cold', 'freezer') || anyTells(sentences, 'at-once')
    ? null
    : keptAt(kept, food, 'unsaid');
}

/** Whether the sentence lays garlic or herbs in oil to keep them; sour things in the same sentence or recipe make it a pickle or a dressing. */
function laysInOil(method: readonly Sentence[], sentence: Sentence, isSour: boolean): boolean {
  const foods = foodsIn(sentence).map(({ food }) => food);
  if (foods.some((food) => isAnyOf(food, ACID))) return false;
  const named = foods.some((food) => isAnyOf(food, FRESH) && !isAnyOf(food, DRY));
  if (tells(sentence, 'jar', 'keep')) return named || !isSour;
  const next = method[method.indexOf(sentence) + 1];
  return named && next !== undefined && tells(next, 'jar') && tells(next, 'keep', 'cold');
}

/** The sentence and the two after it, which may say where and how long. */
function fromOn(method: readonly Sentence[], sentence: Sentence): readonly Sentence[] {
  const at = method.indexOf(sentence);
  return method.slice(at, at + 3);
}

/** The words of the sentence from the keeping to the place. */
function keptAt(sentence: Sentence, food: string, why: OilKept['why']): OilKept {
  const keeps = sentence.hazards.filter(({ is }) => is === 'keep' || is === 'shelf' || is === 'room');
  const jars = sentence.hazards.filter(({ is }) => is === 'jar');
  const told = keeps.length === 0 || why === 'unsaid' ? [...keeps, ...jars] : keeps;
  const start = Math.min(...told.map((word) => word.start));
  const end = Math.max(...told.map((word) => word.end));
  const place = placeOfWords(sentence, start, end, food);
  const last = durationsIn(sentence).at(-1);
  return { ...place, end: Math.max(place.end, last?.end ?? 0), why };
}

/** A title that promises an oil or a confit: "Rosemary Oil", "Garlic Confit". */
function isOfOil(title: string): boolean {
  return tellsOf(title, 'in-oil') || /\boil$/i.test(title.trim());
}

function isKept(sentence: Sentence): boolean {
  return (
    tells(sentence, 'keep', 'cold') ||
    (tells(sentence, 'jar') && tells(sentence, 'in-oil', 'seal', 'shelf', 'cold'))
  );
}

function isTooLong(duration: Duration): boolean {
  return duration.seconds?.high.gt(limitSeconds('garlic-oil-kept')) ?? false;
}

export interface Canning extends Place {
  /** open: a way that no guide accepts; process: jars are processed; shelf: jars are sealed and kept uncooled. */
  readonly way: 'open' | 'process' | 'shelf';
  readonly lowAcid: boolean;
  /** Whether the recipe names a tested process or the altitude. */
  readonly tested: boolean;
}

/** Whether a jar is named by more than its lid, which a pot in the oven has as well. */
function hasJar({ hazards }: Sentence): boolean {
  const lids = hazards.filter(({ is }) => is === 'closes').map(({ start }) => start);
  return hazards.some(({ is, start }) => is === 'jar' && !lids.includes(start));
}

/** Where the recipe puts food up in jars that are to keep uncooled; null where it does not. */
export function canningOf(dish: Dish): Canning | null {
  const method = methodSentences(dish);
  const sentences = allSentences(dish);
  if (!anyTells(method, 'jar', 'canning')) return null;
  const jarAt = method.findIndex((sentence) => tells(sentence, 'jar'));
  const sealed = anyTells(method, 'seal', 'closes');
  const tested = anyTells(sentences, 'tested');
  const lowAcid = dish.recipe.listings.some(({ passage }) => tellsOf(passage.text, 'low-acid'));
  const made = (sentence: Sentence, way: Canning['way'], word: HazardWord): Canning => ({
    ...placeOfWords(sentence, word.start, word.end, 'canning'),
    way,
    lowAcid,
    tested,
  });
  const closed = jarAt < 0 ? [] : method.slice(jarAt);
  // A cake is turned upside down too: the jars must be closed.
  for (const [index, sentence] of (anyTells(closed, 'closes') ? closed : []).entries()) {
    if (!tells(sentence, 'jar') && !tells(closed[index - 1] ?? sentence, 'jar')) continue;
    const oven = hasJar(sentence) && !tells(sentence, 'sterile') ? wordOf(sentence, 'oven') : undefined;
    const open = wordOf(sentence, 'canning-open') ?? (tells(sentence, 'closes') ? oven : undefined);
    if (open !== undefined && !isWarned(sentence, open.start)) return made(sentence, 'open', open);
  }
  const closedAt = method.findIndex((sentence) => tells(sentence, 'closes'));
  for (const [index, sentence] of method.entries()) {
    const boiled = tells(sentence, 'boil') ? wordOf(sentence, 'full-jar') : undefined;
    const bathed = closedAt >= 0 && index >= closedAt ? boiledAgain(sentence) : undefined;
    const word = wordOf(sentence, 'canning') ?? boiled ?? processed(sentence) ?? bathed;
    // Headspace is left in a box for the freezer too.
    if (word !== undefined && !isVessel(sentence, word) && !tells(sentence, 'freezer'))
      return made(sentence, 'process', word);
  }
  if (jarAt < 0 || !sealed) return null;
  for (const sentence of sentences) {
    const shelf = wordOf(sentence, 'shelf');
    const isFromJars = sentence.step === null || method.indexOf(sentence) >= jarAt;
    if (shelf === undefined || !isFromJars || isWarned(sentence, shelf.start)) continue;
    if (tells(sentence, 'fermented') || tells(sentence, 'cold') || !tells(sentence, 'keep', 'seal', 'jar'))
      continue;
    // Spice blends, granola and flours are dry, and keep.
    if (anyTells(method, 'simmers')) return made(sentence, 'shelf', shelf);
  }
  // Sterile jars that are sealed hot are meant to keep, unless the recipe sends them into the cold.
  const hot = method.find((sentence) => tells(sentence, 'sterile') && tells(sentence, 'closes'));
  const word =
    hot === undefined || anyTells(sentences, 'cold', 'freezer') ? undefined : wordOf(hot, 'closes');
  return word === undefined || !anyTells(method, 'simmers') ? null : made(hot!, 'shelf', word);
}

/** "Fill the jars, close them, and process 10 minutes": for a time that no food processor takes. */
function processed(sentence: Sentence): HazardWord | undefined {
  const isLong = durationsIn(sentence).some(
    ({ seconds }) => seconds?.low.gte(limitSeconds('jars-processed')) ?? false,
  );
  return isLong && tells(sentence, 'jar') ? wordOf(sentence, 'process') : undefined;
}

/** "Stand the jars in a pan of simmering water for 40 minutes", once they are closed, and not to sterilize them. */
function boiledAgain(sentence: Sentence): HazardWord | undefined {
  const isLong = durationsIn(sentence).some(
    ({ seconds }) => seconds?.low.gte(limitSeconds('jars-processed')) ?? false,
  );
  const inWater = tells(sentence, 'boil', 'hot-thing') && sentence.keys.includes('water');
  return isLong && inWater && !tells(sentence, 'sterile', 'cold') ? wordOf(sentence, 'jar') : undefined;
}

/** "Canning jars", "canning salt": the word describes what follows. */
function isVessel(sentence: Sentence, word: HazardWord): boolean {
  return sentence.hazards.some(({ is, start }) => is === 'jar-gear' && start === word.end);
}
