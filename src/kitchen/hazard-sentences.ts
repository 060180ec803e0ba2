/** The recipe sentence by sentence, each with the words of safety that it holds. Made when a rule first asks, and kept for the next. */
import type { Listing } from '../anatomy/types.js';
import { readText } from '../grammar/text.js';
import type { Duration, Item } from '../grammar/types.js';
import { foodAt } from '../larder/foods.js';
import { type HazardClass, type HazardWord, hazardWordsIn } from '../larder/hazard-words.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf, techniqueOfTwo } from '../larder/techniques.js';
import type { Food, Technique } from '../larder/types.js';
import type { Passage } from '../manuscript/passage.js';
import type { Dish } from './types.js';
import { verbAt, type Words } from './words.js';

export interface Sentence {
  readonly passage: Passage;
  /** The step that it stands in; null in headnote, notes and the like. */
  readonly step: number | null;
  /** Offsets into the passage's text. */
  readonly start: number;
  readonly end: number;
  /** Its words, folded; numbers count as words. */
  readonly keys: readonly string[];
  /** Where each word begins and ends in the passage's text. */
  readonly places: readonly (readonly [start: number, end: number])[];
  readonly hazards: readonly HazardWord[];
  /** What the passage was read as, where that is already known: in the method. */
  readonly read: Words | null;
  /** The place of each word among those read; -1 where it is none of them. */
  readonly readAt: readonly number[];
}

/** A stretch of a passage that a rule may mark, and the food that it is about. */
export interface Place {
  readonly passage: Passage;
  /** Offsets into the passage's text. */
  readonly start: number;
  readonly end: number;
  readonly food: string;
}

/** The whole line of a listing. */
export function placeOfListing({ passage, line }: Listing): Place {
  return { passage, start: 0, end: passage.text.length, food: line.foods[0]?.name ?? line.text };
}

/** Words `from` to `to` of a sentence, end exclusive. */
export function placeOfWords(sentence: Sentence, from: number, to: number, food: string): Place {
  return {
    passage: sentence.passage,
    start: sentence.places[from]![0],
    end: sentence.places[to - 1]![1],
    food,
  };
}

/** The sentences of the method, in order. */
export function methodSentences(dish: Dish): readonly Sentence[] {
  return keptFor(dish, method, () =>
    dish.steps.flatMap(({ step, words }) => sentencesOf(step.passage, step.index, words)),
  );
}

/** What the lines of the list say beyond food and amount. */
export function listSentences(dish: Dish): readonly Sentence[] {
  return keptFor(dish, lists, () =>
    dish.recipe.listings
      .filter(({ line }) => line.preparation.length + line.asides.length + line.unread.length > 0)
      .flatMap(({ passage }) => sentencesOf(passage, null, null)),
  );
}

/** The sentences of headnote, notes, storage and what else the recipe says beside list and method. */
export function asideSentences(dish: Dish): readonly Sentence[] {
  const { headnote, notes, storage, rest, equipment } = dish.recipe;
  return keptFor(dish, asides, () =>
    [...headnote, ...notes, ...storage, ...equipment, ...rest].flatMap((passage) =>
      sentencesOf(passage, null, null),
    ),
  );
}

/** The sentences of the method, then those beside it. */
export function allSentences(dish: Dish): readonly Sentence[] {
  return [...methodSentences(dish), ...asideSentences(dish)];
}

/** The sentence of the method in which a mention stands. */
export function sentenceOf(
  method: readonly Sentence[],
  { step, start }: { readonly step: number; readonly start: number },
): Sentence | undefined {
  return method.find((each) => each.step === step && each.start <= start && start < each.end);
}

/**
 * The sentences of the method from the one that first uses the listing; all where none is seen to. Where the method names the
 * food, a group before ("everything") does not count.
 */
export function sentencesFrom(dish: Dish, listing: Listing): readonly Sentence[] {
  const uses = dish.uses[listing.index]!;
  const use = uses.find(({ group }) => !group) ?? uses[0];
  const method = methodSentences(dish);
  return use === undefined ? method : method.slice(method.indexOf(sentenceOf(method, use)!));
}

/** The first word or phrase of one of the classes; undefined where the sentence has none. */
export function wordOf(sentence: Sentence, ...classes: readonly HazardClass[]): HazardWord | undefined {
  return sentence.hazards.find(({ is }) => classes.includes(is));
}

/** Whether the sentence has a word of one of the classes. */
export function tells(sentence: Sentence, ...classes: readonly HazardClass[]): boolean {
  return wordOf(sentence, ...classes) !== undefined;
}

/** Whether word `at` belongs to a word or phrase of one of the classes. */
export function isWordOf(sentence: Sentence, at: number, ...classes: readonly HazardClass[]): boolean {
  return sentence.hazards.some(({ is, start, end }) => classes.includes(is) && start <= at && at < end);
}

/** Whether any of the sentences has a word of one of the classes. */
export function anyTells(sentences: readonly Sentence[], ...classes: readonly HazardClass[]): boolean {
  return sentences.some((sentence) => tells(sentence, ...classes));
}

/** The words `from` to `to` as they are written. */
export function textOfWords(sentence: Sentence, from: number, to: number): string {
  return sentence.passage.text.slice(sentence.places[from]![0], sentence.places[to - 1]![1]);
}

/** The times that the sentence gives. */
export function durationsIn(sentence: Sentence): Duration[] {
  return itemsIn(sentence).filter((item): item is Duration => item.kind === 'duration');
}

/** What the sentence was read as. */
export function itemsIn(sentence: Sentence): Item[] {
  const items = sentence.read?.items ?? readText(sentence.passage.text);
  const found: Item[] = [];
  for (let at = firstFrom(items, sentence.start); at < items.length && items[at]!.end <= sentence.end; at++)
    found.push(items[at]!);
  return found;
}

/** The place of the first item that starts at an offset or after it; a long step is not walked through for each of its sentences. */
function firstFrom(items: readonly Item[], offset: number): number {
  let low = 0;
  let high = items.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (items[middle]!.start < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The foods that the sentence names, each with the place of its first word and the one after its last. */
export function foodsIn(sentence: Sentence): { food: Food; start: number; end: number }[] {
  const found: { food: Food; start: number; end: number }[] = [];
  for (let at = 0; at < sentence.keys.length; ) {
    const match = foodAt(sentence.keys, at);
    if (match === null) at++;
    else {
      found.push({ food: match.food, start: at, end: at + match.length });
      at += match.length;
    }
  }
  return found;
}

/** The verbs that the sentence orders or goes on with ("bake", "simmering", "deep-fry"), each with its first word's place. */
export function verbsIn(sentence: Sentence): { technique: Technique; at: number }[] {
  return sentence.keys.flatMap((_, at) => {
    const technique = verbOf(sentence, at);
    return technique === null ? [] : [{ technique, at }];
  });
}

/** Those of heat. */
export function heatVerbsIn(sentence: Sentence): { technique: Technique; at: number }[] {
  return verbsIn(sentence).filter(({ technique }) => does(technique, 'heat'));
}

/** The verb that a word is: in the method as its step was read, elsewhere by its form alone. */
function verbOf({ read, readAt, keys }: Sentence, at: number): Technique | null {
  if (read !== null) return readAt[at]! < 0 ? null : verbAt(read, readAt[at]!);
  const next = keys[at + 1];
  const match = (next === undefined ? null : techniqueOfTwo(keys[at]!, next)) ?? techniqueOf(keys[at]!);
  return match?.form === 'base' ? match.technique : null;
}

/** Whether a word that forbids stands before word `at` of the sentence: "never thaw it on the counter". */
export function isWarned(sentence: Sentence, at: number): boolean {
  return sentence.hazards.some(({ is, start }) => is === 'warning' && start < at);
}

const method = new WeakMap<Dish, readonly Sentence[]>();
const asides = new WeakMap<Dish, readonly Sentence[]>();
const lists = new WeakMap<Dish, readonly Sentence[]>();

function keptFor(
  dish: Dish,
  kept: WeakMap<Dish, readonly Sentence[]>,
  make: () => readonly Sentence[],
): readonly Sentence[] {
  let sentences = kept.get(dish);
  if (sentences === undefined) {
    sentences = make();
    kept.set(dish, sentences);
  }
  return sentences;
}

const WORD = /[\p{L}\p{N}][\p{L}\p{N}'’]*/gu;
const STOP = /[.!?](?=\s|$)|;/;
/** What runs on longer is a list and no sentence; words further apart say nothing of each other. */
const LONGEST_SENTENCE = 120;

function sentencesOf(passage: Passage, step: number | null, read: Words | null): Sentence[] {
  const { text } = passage;
  const found: Sentence[] = [];
  let keys: string[] = [];
  let places: [number, number][] = [];
  let readAt: number[] = [];
  let start = 0;
  const close = (end: number): void => {
    if (keys.length > 0)
      found.push({ passage, step, start, end, keys, places, hazards: hazardWordsIn(keys), read, readAt });
    keys = [];
    places = [];
    readAt = [];
    start = end;
  };
  let last = 0;
  let next = 0;
  for (const { 0: word, index } of text.matchAll(WORD)) {
    if (keys.length >= LONGEST_SENTENCE || endsBetween(text.slice(last, index), word)) close(index);
    last = index + word.length;
    places.push([index, last]);
    while (read !== null && next < read.words.length && read.words[next]!.start < index) next++;
    const known = read?.words[next];
    const isKnown = known?.start === index && known.end === last;
    readAt.push(isKnown ? next : -1);
    keys.push(isKnown ? known.key : fold(word));
  }
  close(text.length);
  return found;
}

/** Whether a sentence ends in what stands before the word: a stop, or a line break before a capital. */
function endsBetween(gap: string, next: string): boolean {
  if (STOP.test(gap)) return true;
  return gap.includes('\n') && next.charAt(0) !== next.charAt(0).toLowerCase();
}
