/** The list as a vocabulary: which words of the method may mean which listing. */
import { distance } from 'fastest-levenshtein';
import type { Listing } from '../anatomy/types.js';
import type { ListedFood } from '../grammar/types.js';
import { foodAt, isKindOf, isPartOf, kindsOf } from '../larder/foods.js';
import { isWord } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';
import type { Food } from '../larder/types.js';

/** One food of one listing, with the words it can be known by. */
export interface Entry {
  readonly listing: Listing;
  readonly food: ListedFood;
  /** Folded and singular. */
  readonly words: readonly string[];
  readonly head: string;
}

/** How a mentioned food is related to a listed one, the closest first. */
export type Closeness = 'same' | 'kind' | 'narrower' | 'part' | 'whole';

/** The listed foods that a mentioned one means. */
export interface Resolution {
  readonly entries: readonly Entry[];
  readonly closeness: Closeness;
}

export interface Vocabulary {
  readonly entries: readonly Entry[];
  /** The entries that hold a word. */
  readonly byWord: ReadonlyMap<string, readonly Entry[]>;
  /** What each food that has been asked for was found to mean; see `resolveFood`. */
  readonly resolved: Map<Food, Resolution | null>;
}

/** The vocabulary of a recipe's listings. */
export function vocabularyOf(listings: readonly Listing[]): Vocabulary {
  const entries: Entry[] = [];
  const byWord = new Map<string, Entry[]>();
  for (const listing of listings) {
    for (const food of listing.line.foods) {
      const words = food.name
        .split(/[\s/-]+/)
        .map((word) => singular(fold(word)))
        .filter((word) => word !== '');
      if (words.length === 0) continue;
      const entry: Entry = { listing, food, words, head: words.at(-1)! };
      entries.push(entry);
      for (const word of new Set(words)) {
        const holders = byWord.get(word);
        if (holders === undefined) byWord.set(word, [entry]);
        else holders.push(entry);
      }
    }
  }
  return { entries, byWord, resolved: new Map() };
}

/**
 * The longest run of words at `at` that names a listed food by the list's own words: its head ("potatoes" for "Yukon Gold
 * potatoes") or a word that only it has ("yacai"). `keys` are folded.
 */
export function listedAt(
  vocabulary: Vocabulary,
  keys: readonly string[],
  at: number,
  limit = keys.length,
): { entries: Entry[]; length: number } | null {
  const candidates = vocabulary.byWord.get(singular(keys[at]!));
  if (candidates === undefined) return null;
  let length = 0;
  let found: Entry[] = [];
  for (const entry of candidates) {
    const run = runLength(entry, keys, at, limit);
    if (run === 0 || run < length) continue;
    if (run > length) found = [];
    length = run;
    if (!found.includes(entry)) found.push(entry);
  }
  return length === 0 ? null : { entries: found, length };
}

/** The entries of one word that an unknown word may be a slip of the pen for: one letter wrong, or two that stand side by side. */
export function slipsOf(vocabulary: Vocabulary, key: string): Entry[] {
  if (key.length < SHORTEST_SLIP || techniqueOf(key) !== null) return [];
  return vocabulary.entries.filter(
    ({ words, head }) =>
      words.length === 1 && head.charAt(0) === key.charAt(0) && isSlip(head, singular(key)),
  );
}

/** Shorter words are words of their own too often: "batter" and "butter" are. */
const SHORTEST_SLIP = 7;

function isSlip(one: string, other: string): boolean {
  const slips = distance(one, other);
  return slips === 1 || (slips === 2 && one.length === other.length && isTurned(one, other));
}

/** "Parsely": two letters in the wrong order. */
function isTurned(one: string, other: string): boolean {
  const at = [...one].findIndex((letter, index) => letter !== other[index]);
  return one[at] === other[at + 1] && one[at + 1] === other[at];
}

/** How many words from `at` on are the entry's own, when they are enough to know it by; else 0. */
function runLength(entry: Entry, keys: readonly string[], at: number, limit: number): number {
  let end = at;
  let enough = 0;
  while (end < limit) {
    const word = singular(keys[end]!);
    if (!entry.words.includes(word)) break;
    end++;
    if (word === entry.head || tells(word, entry)) enough = end - at;
  }
  return enough;
}

/** Whether a word that is not the head tells the food by itself: no adjective, no state, no other food. */
function tells(word: string, { food: { row }, listing }: Entry): boolean {
  // "1 recipe Puree of Peas" is the puree, which is made elsewhere.
  if (isWord(word, 'made') && isRecipe(listing)) return true;
  if (
    word.length < 4 ||
    isWord(word, 'adjective') ||
    isWord(word, 'vague') ||
    isWord(word, 'made') ||
    techniqueOf(word) !== null
  )
    return false;
  const match = foodAt([word], 0);
  return (
    match === null ||
    match.food === row ||
    (row !== null && (isKindOf(match.food, row) || isSibling(match.food, row)))
  );
}

/** "Chorizo" of "chorizo pork sausage": both are sausages, and neither is made of the other. */
function isSibling(one: Food, other: Food): boolean {
  if (isPartOf(one, other) || isPartOf(other, one)) return false;
  return [...kindsOf(one)].some(
    (kind) =>
      kind !== one &&
      kindsOf(other).has(kind) &&
      !isWord(fold(kind.name), 'wide') &&
      !isWord(fold(kind.name), 'vague'),
  );
}

/** Whether the line lists what another recipe makes: "1 recipe pie dough", "½ batch of plum jam". */
function isRecipe({ line }: Listing): boolean {
  const unit = line.measures[0]?.unit;
  return unit === 'recipe' || unit === 'batch';
}
