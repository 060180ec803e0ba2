/** What the words around a food say of it: a comparison, a suggestion, a tool's name, a thing already made. */

import type { Measure } from '../grammar/types.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { singular } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Technique } from '../larder/types.js';
import { unitById } from '../larder/units.js';
import { vesselAt } from '../larder/vessels.js';
import { LONGEST_CLAUSE, verbAt, type Words } from './words.js';

/** How far a comparison reaches: "the size of a small green walnut". */
const LIKENESS_REACH = 6;
/** How far back a word is sought that refers to what was named before: "the remaining chopped fresh parsley". */
const REFERRING_REACH = 4;

/** Whether the food at words `start` to `end` is only compared with: "the size of a walnut", "pea-sized", "like thick cream". */
export function isLikeness(words: Words, start: number, end: number): boolean {
  const next = words.keys[end];
  if (
    next !== undefined &&
    words.before[end] === '' &&
    phraseAt(words.keys, end, 'likeness-after') !== null
  ) {
    const hyphenated = words.words[end]!.hyphenated;
    if (hyphenated || (next !== 'brown' && next !== 'like' && next !== 'free' && next !== 'style'))
      return true;
  }
  for (let index = start - 1; index >= 0 && index >= start - LIKENESS_REACH; index--) {
    if (words.sentence[index] !== words.sentence[start] || words.before[index + 1] !== '') break;
    const phrase = phraseAt(words.keys, index, 'likeness');
    if (phrase !== null && index + phrase.length <= start) return true;
  }
  return false;
}

/** Whether the food's name belongs to a tool's: "butter knife", "rice cooker". A slice, a cup or a bowl of it is no tool. */
export function isToolName(words: Words, end: number): boolean {
  if (end >= words.keys.length || words.before[end] !== '' || words.at[end]! - words.at[end - 1]! > 1)
    return false;
  return vesselAt(words.keys, end) !== null && verbAt(words, end) === null;
}

/** Whether a made thing's name follows the food's and takes it over: "the onion mixture", "chicken soup". */
export function namesMade(words: Words, end: number): boolean {
  if (end >= words.keys.length || words.before[end] !== '') return false;
  const length = isMadeWord(words.keys, end);
  // "Into the wheat mix.": with nothing behind it, it orders nothing.
  const next = end + length;
  const endsClause = next === words.keys.length || words.before[next] !== '';
  // "A spoon of leek filling in each": what fills the leek would stand before "in".
  const isThing = endsClause || isWord(words.keys[next], 'preposition');
  return length !== 0 && (isThing || verbAt(words, end) === null);
}

/** Whether the word names a thing that is bought as often as made: "sauce", "pie". */
export function isBoughtToo(keys: readonly string[], at: number): boolean {
  const phrase = phraseAt(keys, at, 'made') ?? phraseAt([singular(keys[at] ?? '')], 0, 'made');
  return phrase?.means === 'bought';
}

/** How many words name a thing that recipes make ("dough", "egg wash"), in singular or plural; 0 when none does. */
export function isMadeWord(keys: readonly string[], at: number, end = keys.length): number {
  const phrase = phraseAt(keys, at, 'made', end);
  if (phrase !== null) return phrase.length;
  const one = keys[at];
  return one !== undefined && isWord(singular(one), 'made') ? 1 : 0;
}

/** Whether the sentence leaves the food at word `at` to the reader: "if you like", "goes well with", "such as", "instead of". */
export function isSuggestion(words: Words, at: number): boolean {
  const [from, to] = clauseOf(words, at);
  // "Optionally, top with pepper and garnish with parsley": the first word speaks for the sentence.
  if (from < at && phraseAt(words.keys, from, 'suggestion') !== null) return true;
  for (
    let index = Math.max(from, at - SUGGESTION_REACH);
    index < Math.min(to, at + SUGGESTION_REACH);
    index++
  ) {
    if (
      index < at &&
      (phraseAt(words.keys, index, 'suggestion') ?? phraseAt(words.keys, index, 'instead')) !== null
    )
      return true;
    if (index > at && phraseAt(words.keys, index, 'suggestion-after') !== null && reaches(words, at, index))
      return true;
    if (index < at && phraseAt(words.keys, index, 'example') !== null) return true;
  }
  return false;
}

/** Whether the food at words `start` to `end` is one of several between which the cook may choose: "with pasta or rice". */
export function isChoice(words: Words, start: number, end: number): boolean {
  return isOrAhead(words, end, 1) || isOrAhead(words, start - 1, -1);
}

/** Whether an "or" comes before anything else that parts the sentence. */
function isOrAhead(words: Words, from: number, step: 1 | -1): boolean {
  for (let index = from; words.sentence[index] === words.sentence[from - step]; index += step) {
    if (words.keys[index] === 'or') return true;
    const isFar = Math.abs(index - from) >= SUGGESTION_REACH;
    if (isFar || words.keys[index] === 'and' || verbAt(words, index) !== null) return false;
  }
  return false;
}

/** How many words off a suggestion still speaks of a food. */
const SUGGESTION_REACH = 10;

/** "Add the sugar, the water and fat of your choice": the choice is of the fat. */
function reaches(words: Words, at: number, index: number): boolean {
  if (words.keys[index] !== 'of') return true;
  for (let between = at + 1; between <= index; between++)
    if (words.before[between] !== '' || words.keys[between] === 'and') return false;
  return true;
}

/** Whether the food is named only to be kept out: "do not add salt", "without butter". */
export function isNegated(words: Words, start: number): boolean {
  for (let index = start - 1; index >= 0 && index >= start - 3; index--) {
    if (words.sentence[index] !== words.sentence[start] || words.before[index + 1] !== '') return false;
    if (phraseAt(words.keys, index, 'negation') !== null)
      return words.keys[index] !== 'not' || words.keys[index + 1] !== 'only';
  }
  return false;
}

/** The referring, remaining or extra words before a food, joined by spaces; null when it stands bare. */
export function determinerOf(words: Words, start: number): string | null {
  const found: string[] = [];
  for (let index = start - 1; index >= 0 && index >= start - REFERRING_REACH; index--) {
    if (words.sentence[index] !== words.sentence[start] || words.before[index + 1] !== '') break;
    const key = words.keys[index]!;
    if (
      isWord(key, 'referring') ||
      (isWord(key, 'rest-word') && isDefinite(words, index)) ||
      isWord(key, 'extra-word') ||
      isWord(key, 'reserve-word')
    )
      found.unshift(key);
    else if (
      key !== 'of' &&
      (isWord(key, 'preposition') ||
        isWord(key, 'destination') ||
        key === 'and' ||
        key === 'or' ||
        key === 'into' ||
        verbAt(words, index) !== null)
    )
      break;
  }
  return found.length === 0 ? null : found.join(' ');
}

/** "The other half" is what is left; "some other stout" is not. */
function isDefinite(words: Words, index: number): boolean {
  return (
    phraseAt(words.keys, index, 'rest-word')?.means !== 'definite' ||
    isWord(words.keys[index - 1], 'referring')
  );
}

export function says(
  determiner: string | null,
  is: 'referring' | 'rest-word' | 'extra-word' | 'reserve-word',
): boolean {
  return determiner?.split(' ').some((word) => isWord(word, is)) ?? false;
}

/**
 * Whether the water at word `start` is only boiled in, steamed over, washed with or used to thin, and not eaten.
 * Where its volume is given, only being poured off or thinning says so.
 */
export function isCookingWater(
  words: Words,
  start: number,
  verb: Technique | null,
  measure: Measure | null,
): boolean {
  const unit = measure?.unit == null ? null : unitById(measure.unit);
  const sized = unit !== null && (unit.kind === 'volume' || unit.kind === 'mass');
  if (sized) return words.keys.some((key) => isWord(key, 'emptied'));
  if (
    words.keys
      .slice(Math.max(words.opening[start]!, start - 3), start)
      .some((key) => key === 'in' || key === 'under' || key === 'into' || key === 'to')
  )
    return true;
  if (verb !== null && (verb.name === 'add' || does(verb, 'combine')))
    return words.keys.some((key) => isWord(key, 'emptied'));
  if (verb !== null && does(verb, 'drain', 'prepare', 'remove')) return true;
  const [from, to] = clauseOf(words, start);
  return words.keys.slice(from, to).some((key) => isWord(key, 'boiling-water'));
}

/** "1 cup broth from the medium pot": taken out of what it was put into. */
export function isFromVessel(words: Words, { end }: { readonly end: number }): boolean {
  const at = words.words.findIndex(({ start }) => start >= end);
  if (at < 0 || words.keys[at] !== 'from' || words.before[at] !== '') return false;
  return [1, 2, 3, 4].some((off) => at + off < words.keys.length && vesselAt(words.keys, at + off) !== null);
}

/** "The base for the hollandaise", "a tray for baking bread": what something is for does not go in here. */
export function isPurposeOnly(words: Words, start: number): boolean {
  for (let index = start - 1; index >= 0 && index >= start - 3; index--) {
    if (words.sentence[index] !== words.sentence[start] || words.before[index + 1] !== '') return false;
    if (words.keys[index] === 'for') return words.at[start]! - words.at[index]! === start - index;
  }
  return false;
}

/** Whether something goes into the food at word `start`, or onto it: "to the onions", "over the cooked rice". */
export function isDestination(words: Words, start: number): boolean {
  for (let index = start - 1; index >= 0 && index >= start - REFERRING_REACH; index--) {
    if (words.sentence[index] !== words.sentence[start] || words.before[index + 1] !== '') return false;
    const key = words.keys[index]!;
    if (isWord(key, 'destination')) return true;
    if (!isWord(key, 'referring') && !isWord(key, 'adjective') && techniqueOf(key)?.form !== 'past')
      return false;
  }
  return false;
}

/** "A lemon", "an extra egg": an article, with nothing between that ends its reach. */
export function hasArticle(words: Words, start: number): boolean {
  for (let index = start - 1; index >= 0 && index >= start - ARTICLE_REACH; index--) {
    if (words.sentence[index] !== words.sentence[start] || words.before[index + 1] !== '') return false;
    const key = words.keys[index]!;
    if (key === 'a' || key === 'an') return true;
    if (isWord(key, 'preposition') || verbAt(words, index) !== null) return false;
  }
  return false;
}

/** How far back an article is sought: "a small ripe tomato". */
const ARTICLE_REACH = 3;

/** "Pour off all but a tablespoon of the fat", "drain off the oil": what has cooked out goes, and takes nothing of the list. */
export function isPouredOff(words: Words, start: number): boolean {
  const from = Math.max(words.opening[start]!, start - POURED_REACH);
  for (let index = start - 1; index >= from; index--) {
    if (phraseAt(words.keys, index, 'poured-off') !== null) return true;
    if (words.before[index] !== '' || verbAt(words, index) !== null) return false;
  }
  return false;
}

/** How far back a food is poured off: "drain off all but 2 tablespoons of the bacon fat". */
const POURED_REACH = 9;

/** "Its water", "their juices": what comes out of a food by itself. */
export function isGivenUp(words: Words, start: number): boolean {
  return (
    words.before[start] === '' &&
    words.keys.slice(Math.max(0, start - 2), start).some((key) => key === 'its' || key === 'their')
  );
}

/** Whether the food stands in a clause that says when to stop: "until a drop of water skips on it". */
export function tellsWhen(words: Words, start: number): boolean {
  for (let index = start - 1; index >= words.opening[start]! && index > start - LONGEST_CLAUSE; index--) {
    if (verbAt(words, index) !== null) return false;
    if (phraseAt(words.keys, index, 'until') !== null) return true;
  }
  return false;
}

/** The stretch of words around word `at` that can say something of it: its sentence, as far as a clause reaches. End exclusive. */
export function clauseOf(words: Words, at: number): [from: number, to: number] {
  let to = at;
  while (to < words.keys.length && to < at + LONGEST_CLAUSE && words.sentence[to] === words.sentence[at])
    to++;
  return [Math.max(words.opening[at]!, at - LONGEST_CLAUSE), to];
}
