/** Which listed foods a named food means, also where the method names it with a state, a part, or a slip of the pen. */
import { distance } from 'fastest-levenshtein';
import type { Listing } from '../anatomy/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { foodAt, foodNamed, isKindOf } from '../larder/foods.js';
import { isWord } from '../larder/kitchen-words.js';
import { fold, plurals, singular } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';
import type { Food } from '../larder/types.js';
import { once } from '../manuscript/once.js';
import { type Entry, listedAt, type Vocabulary, vocabularyOf } from './listed.js';
import { resolveFood } from './resolve.js';
import type { Named } from './scan.js';
import type { Words } from './words.js';

const PEPPER = foodNamed('pepper');
const SPICE = foodsNamed('spice');

/** The listed foods that a larder food means; a pepper beside salt is the spice. A misspelled word may still be the list's. */
export function entriesOf(
  named: Named,
  words: Words,
  vocabulary: Vocabulary,
  preferred: readonly Listing[],
): readonly Entry[] {
  if (named.food === null) return [];
  // "The seeds" in the steps of a component are all the kinds that it lists, whatever another component calls seeds.
  const own =
    named.food.generic && preferred.length > 0
      ? resolveFood(named.food, vocabularyOfComponent(preferred))
      : null;
  const resolution = own ?? resolveFood(named.food, vocabulary);
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
    misspelled(named.food, words.keys.slice(named.start, named.end).join(''), vocabulary)
  );
}

const vocabularyOfComponent = once(vocabularyOf);

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

function misspelled(food: Food, key: string, vocabulary: Vocabulary): readonly Entry[] {
  if (key.length < LONG_WORD) return [];
  const entries = vocabulary.entries.filter((entry) => {
    if (entry.food.row !== null) return false;
    const name = entry.words.join('');
    const slips = distance(name, singular(key));
    return slips <= 1 || (slips === 2 && key.length > LONG_WORD) || isSlipOf(entry.head, key);
  });
  // What the list means by it holds for the food's other names too.
  if (entries.length > 0) vocabulary.resolved.set(food, { entries, closeness: 'same' });
  return entries;
}

/** "Sweet pototoes": one letter of the last word is wrong, in the plural where the singular is another. */
function isSlipOf(head: string, key: string): boolean {
  if (head.length < LONG_WORD) return false;
  return [singular(key), ...plurals(singular(key))].some((form) =>
    [head, ...plurals(head)].some((other) => distance(form, other) <= 1),
  );
}

/** Of several listings of one food, those of the component that the step belongs to, where there are some. */
export function narrowed(listings: readonly Listing[], preferred: readonly Listing[]): Listing[] {
  const unique = [...new Set(listings)];
  if (unique.length < 2 || preferred.length === 0) return unique;
  const own = unique.filter((listing) => preferred.includes(listing));
  return own.length > 0 ? own : unique;
}
