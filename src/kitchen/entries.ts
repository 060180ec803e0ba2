/** Which listed foods a named food means, also where the method names it with a state, a part, or a slip of the pen. */
import { distance } from 'fastest-levenshtein';
import type { Listing } from '../anatomy/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { foodAt, foodNamed, isKindOf } from '../larder/foods.js';
import { isWord } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';
import { type Entry, listedAt, type Vocabulary } from './listed.js';
import { resolveFood } from './resolve.js';
import type { Named } from './scan.js';
import type { Words } from './words.js';

const PEPPER = foodNamed('pepper');
const SPICE = foodsNamed('spice');

/** The listed foods that a larder food means; a pepper beside salt is the spice. A misspelled word may still be the list's. */
export function entriesOf(named: Named, words: Words, vocabulary: Vocabulary): readonly Entry[] {
  if (named.food === null) return [];
  const resolution = resolveFood(named.food, vocabulary);
  if (resolution !== null) {
    if (named.food !== PEPPER) return resolution.entries;
    const last = words.keys[named.end - 1]!;
    const spices = resolution.entries.filter((entry) => isAnyOf(entry.food.row, SPICE));
    const others = resolution.entries.filter((entry) => !spices.includes(entry));
    if (singular(last) !== last) return others.length > 0 ? others : resolution.entries;
    return spices.length > 0 ? spices : besideSalt(words, named) ? [] : resolution.entries;
  }
  return (
    withoutState(named, words, vocabulary) ??
    misspelled(words.keys.slice(named.start, named.end).join(''), vocabulary)
  );
}

/** "Pureed tomatoes" of listed tomatoes, "pork cubes" of pork belly, "broccoli stems" of Chinese broccoli: the name without its state, or without the part. Black pepper is no bell pepper. */
function withoutState(named: Named, words: Words, vocabulary: Vocabulary): readonly Entry[] | null {
  const { start, end } = named;
  if (end - start < 2) return null;
  const first = words.keys[start]!;
  if (techniqueOf(first)?.form === 'past' || isWord(first, 'adjective')) {
    const rest = foodAt(words.keys, start + 1, end);
    const resolution =
      rest === null || rest.length !== end - start - 1 || rest.food.generic
        ? null
        : resolveFood(rest.food, vocabulary);
    if (resolution !== null) return resolution.entries;
  }
  const last = singular(words.keys[end - 1]!);
  if (!isWord(last, 'vague') && !isWord(last, 'small-piece')) return null;
  const listed = listedAt(vocabulary, words.keys, start, end - 1);
  if (listed !== null && listed.length === end - start - 1) return listed.entries;
  const whole = foodAt(words.keys, start, end - 1);
  return whole !== null && whole.length === end - start - 1
    ? (resolveFood(whole.food, vocabulary)?.entries ?? null)
    : null;
}

/** Whether the list speaks of the food in a preparation or an aside: "1 cup milk, warmed with a cinnamon stick". */
export function saidInList(listings: readonly Listing[], named: Named): boolean {
  if (named.food === null) return false;
  return listings.some((listing) => {
    const { line } = listing;
    return [...line.preparation, ...line.asides, ...line.states].some((phrase) => {
      const keys = phrase.text.split(/[^\p{L}\p{N}]+/u).map(fold);
      return keys.some((_, at) => {
        const said = foodAt(keys, at);
        return said !== null && isKindOf(said.food, named.food!);
      });
    });
  });
}

function besideSalt(words: Words, named: Named): boolean {
  return words.keys[named.start - 1] === 'and' && words.keys[named.start - 2] === 'salt';
}

/** From how many letters on one wrong letter is forgiven. */
const LONG_WORD = 6;

function misspelled(key: string, vocabulary: Vocabulary): readonly Entry[] {
  if (key.length < LONG_WORD) return [];
  return vocabulary.entries.filter((entry) => {
    const name = entry.words.join('');
    const slips = distance(name, singular(key));
    return entry.food.row === null && (slips <= 1 || (slips === 2 && key.length > LONG_WORD));
  });
}

/** Of several listings of one food, those of the component that the step belongs to, where there are some. */
export function narrowed(listings: readonly Listing[], preferred: readonly Listing[]): Listing[] {
  const unique = [...new Set(listings)];
  if (unique.length < 2 || preferred.length === 0) return unique;
  const own = unique.filter((listing) => preferred.includes(listing));
  return own.length > 0 ? own : unique;
}
