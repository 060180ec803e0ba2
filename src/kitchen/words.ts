/** A step as a row of words: which sentence each is in, what punctuation parts it from the one before, and whether it acts as a verb. */
import { readText } from '../grammar/text.js';
import type { Count, Item, Measure, Word } from '../grammar/types.js';
import { foodAt } from '../larder/foods.js';
import { isWord, type KitchenWordClass, phraseAt } from '../larder/kitchen-words.js';
import { does, type TechniqueMatch, techniqueOf, techniqueOfTwo } from '../larder/techniques.js';
import type { Technique } from '../larder/types.js';
import { vesselAt } from '../larder/vessels.js';

export interface Words {
  readonly text: string;
  readonly items: readonly Item[];
  readonly words: readonly Word[];
  /** The folded form of each word. */
  readonly keys: readonly string[];
  /** The place of each word among the items. */
  readonly at: readonly number[];
  /** The number of the sentence that each word is in, from 0. */
  readonly sentence: readonly number[];
  /** The place of the first word of each word's sentence. */
  readonly opening: readonly number[];
  /** The punctuation that stands right before each word, "" where none does; a sentence's first word has ".". */
  readonly before: readonly string[];
  /** How deep in parentheses each word stands. */
  readonly depth: readonly number[];
  /** The verb that each word is, as far as it has been asked; see `verbAt`. */
  readonly verbs: (Technique | null | undefined)[];
}

/** Further than this no word of a sentence governs another; what runs on longer is a list, and is read in proportion. */
export const LONGEST_CLAUSE = 40;

/** The words of a passage's text. */
export function wordsOf(text: string): Words {
  const items = readText(text);
  const words: Word[] = [];
  const keys: string[] = [];
  const at: number[] = [];
  const sentence: number[] = [];
  const opening: number[] = [];
  const before: string[] = [];
  const depth: number[] = [];
  let current = 0;
  let point = '.';
  let parentheses = 0;
  items.forEach((item, index) => {
    if (item.kind === 'point') {
      if (item.text === '(' || item.text === '[') parentheses++;
      if (item.text === ')' || item.text === ']') parentheses = Math.max(0, parentheses - 1);
      if (endsSentence(items, index)) {
        current++;
        point = '.';
      } else if (point !== '.' && item.text !== '\n') point = item.text;
      return;
    }
    if (item.kind !== 'word') {
      if (point === '.') point = '';
      return;
    }
    words.push(item);
    keys.push(item.key);
    at.push(index);
    opening.push(sentence.at(-1) === current ? opening.at(-1)! : sentence.length);
    sentence.push(current);
    before.push(item.hyphenated ? '' : point);
    depth.push(parentheses);
    point = '';
  });
  return { text, items, words, keys, at, sentence, opening, before, depth, verbs: new Array(words.length) };
}

/** A full stop, or a line break before a capital; a stop in the middle of an abbreviation has lower case after it. */
function endsSentence(items: readonly Item[], index: number): boolean {
  const item = items[index]!;
  if (item.kind !== 'point') return false;
  if (item.text === '!' || item.text === '?' || item.text === ';') return true;
  if (item.text !== '.' && item.text !== '\n') return false;
  const next = items[index + 1];
  if (next === undefined || next.kind === 'point') return item.text === '.';
  if (next.kind !== 'word') return item.text === '.';
  const first = next.text.charAt(0);
  return first !== first.toLowerCase();
}

/** The verb that word number `at` is, where it acts as one: an order, or an -ing form; not a noun ("the heat") or a participle. */
export function verbAt(words: Words, at: number): Technique | null {
  let verb = words.verbs[at];
  if (verb === undefined) words.verbs[at] = verb = readVerb(words, at);
  return verb;
}

function readVerb(words: Words, at: number): Technique | null {
  if (isSecondHalf(words, at)) return null;
  const match = joined(words, at) ?? techniqueOf(words.keys[at]!);
  if (match === null || match.form === 's') return null;
  const { technique, form } = match;
  // "Cut", "put", "beat" are base and past at once.
  if (form === 'past' && (technique.name !== words.keys[at] || !opens(words, at))) return null;
  if (form === 'ing') return isAttribute(words, at) ? null : technique;
  return standsAsVerb(words, at) && givesOrder(words, at, technique) ? technique : null;
}

/** Whether the word only ends a verb of two: "stir-fry", "dry roast". */
export function isSecondHalf(words: Words, at: number): boolean {
  return at > 0 && joined(words, at - 1)?.form === 'base';
}

/** The verb that a word makes with the one behind it: "stir-fry", "pan-fry". */
function joined(words: Words, at: number): TechniqueMatch | null {
  const next = words.keys[at + 1];
  return next === undefined || words.before[at + 1] !== '' ? null : techniqueOfTwo(words.keys[at]!, next);
}

/** "A baking sheet", "cooking spray", "the simmering pot": an -ing form that describes what follows. */
function isAttribute(words: Words, at: number): boolean {
  if (isWord(words.keys[at - 1], 'before-noun') && words.before[at] === '') return true;
  return (
    (foodAt(words.keys, at)?.length ?? 0) > 1 ||
    (words.before[at + 1] === '' && vesselAt(words.keys, at + 1) !== null) ||
    (vesselAt(words.keys, at)?.length ?? 0) > 1
  );
}

/** Words after which a name is a noun: "the heat", "cold butter", "the remaining oil". */
const DESCRIBING: readonly KitchenWordClass[] = [
  'before-noun',
  'adjective',
  'rest-word',
  'extra-word',
  'reserve-word',
];

/** Whether the word before leaves room for a verb: no article, number, preposition or adjective. */
function standsAsVerb(words: Words, at: number): boolean {
  // "A grill pan", "the stew pot": the verb's name belongs to the pan.
  if (
    words.before[at + 1] === '' &&
    vesselAt(words.keys, at + 1) !== null &&
    vesselAt(words.keys, at) !== null
  )
    return false;
  if (opens(words, at)) return true;
  // A number counts what follows; a time does not: "after 2 minutes add".
  const gap = words.items[words.at[at]! - 1]!;
  if (words.before[at] === '' && gap.kind !== 'word' && gap.kind !== 'point')
    return gap.kind === 'duration' || gap.kind === 'temperature';
  const previous = words.keys[at - 1]!;
  if (DESCRIBING.some((is) => isWord(previous, is))) return false;
  // "Buttered toast", "whipped cream": after a participle a word that can be a food is one.
  return (
    techniqueOf(previous)?.form !== 'past' ||
    (foodAt(words.keys, at) === null && phraseAt(words.keys, at, 'made') === null)
  );
}

/** Whether a word that may be a food gives an order all the same: "cream the butter", "and roast at 400°F", "season." */
function givesOrder(words: Words, at: number, technique: Technique): boolean {
  const follows = words.before[at + 1] === '';
  const next = follows ? words.keys[at + 1] : undefined;
  const food = foodAt(words.keys, at);
  if (food === null || (next !== undefined && isWord(next, 'object'))) return true;
  // "Whip cream with sugar", "soak bread in milk": an order stands right before, and this is its object.
  if (at > 0 && words.before[at] === '' && !opens(words, at) && verbAt(words, at - 1) !== null) return false;
  if ((next === 'to' && does(technique, 'heat')) || words.keys[at - 1] === 'then') return true;
  if (followsOrder(words, at)) return true;
  // "Dice the onion, mince green ends": no noun stands before an adjective.
  if (opens(words, at) && next !== undefined && isWord(next, 'adjective') && technique.implies === undefined)
    return true;
  if (endsFoodList(words, at)) return !technique.noun && next !== undefined && isWord(next, 'preposition');
  if (next !== undefined && (isWord(next, 'after-verb') || next.endsWith('ly'))) return true;
  // "Oil", "salt" and their like are orders only before what they go on.
  if (technique.implies !== undefined || food.length > 1) return false;
  if (words.keys[at - 1]?.endsWith('ly') === true) return true;
  if (next === undefined) return amongVerbs(words, at);
  if (isWord(next, 'preposition') || foodAt(words.keys, at + 1) !== null) return true;
  return opens(words, at) && next !== 'and' && next !== 'to';
}

/** Whether a word begins a clause: the sentence, or what follows a comma, colon, dash or parenthesis. */
function opens(words: Words, at: number): boolean {
  return at === 0 || words.before[at] !== '';
}

/** "Let cool and chop fine": "and" right behind another order. */
function followsOrder(words: Words, at: number): boolean {
  if (words.keys[at - 1] !== 'and' || words.before[at] !== '' || at < 2 || words.before[at - 1] !== '')
    return false;
  return verbAt(words, at - 2) !== null;
}

/** "Whisk the eggs, oil and juice": a food stands right before, with "and" or a comma between. */
function endsFoodList(words: Words, at: number): boolean {
  const joining = words.keys[at - 1] === 'and' || words.keys[at - 1] === 'or';
  const last = joining ? at - 2 : at - 1;
  if (last < 0 || words.sentence[last] !== words.sentence[at] || (!joining && words.before[at] !== ','))
    return false;
  // "Rub with the salt, and roast": a comma before "and" closes the list.
  return words.before[at - 1] !== ',' || !joining ? foodAt(words.keys, last) !== null : false;
}

/** "Peel and mince/grate", "chop, salt, and stir": a verb stands right beside it. */
function amongVerbs(words: Words, at: number): boolean {
  const next = words.keys[at + 1] === 'and' ? at + 2 : at + 1;
  const after = words.sentence[next] === words.sentence[at] ? techniqueOf(words.keys[next] ?? '') : null;
  return after?.form === 'base' && foodAt(words.keys, next) === null;
}

/** The verb that governs word number `at`: the nearest order before it in its sentence; else the nearest participle after it. */
export function governingVerb(words: Words, at: number): Technique | null {
  for (let index = at - 1; index >= words.opening[at]! && index > at - LONGEST_CLAUSE; index--) {
    const verb = verbAt(words, index);
    if (verb !== null) return verb;
  }
  for (
    let index = at + 1;
    index < words.words.length && index < at + LONGEST_CLAUSE && words.sentence[index] === words.sentence[at];
    index++
  ) {
    const match = techniqueOf(words.keys[index]!);
    if (match !== null && match.form === 'past') return match.technique;
  }
  return null;
}

/**
 * The word that gives the order of a sentence when the larder does not know it as a verb: "Slacken with the milk".
 * Null where the sentence opens like a statement.
 */
export function unknownOrder(words: Words, at: number): string | null {
  const first = words.opening[at]!;
  const word = words.keys[first]!;
  const next = words.keys[first + 1];
  if (first === at || next === undefined || words.before[first + 1] !== '' || !isWord(next, 'order-opening'))
    return null;
  const isKnown =
    isWord(word, 'before-noun') ||
    isWord(word, 'subject') ||
    isWord(word, 'preposition') ||
    isWord(word, 'adjective') ||
    isWord(word, 'until');
  return isKnown || foodAt(words.keys, first) !== null || word.endsWith('ly') || word.endsWith('ing')
    ? null
    : word;
}

const FURTHEST_MEASURE = 5;

/** The measure said with the food that begins at word `start` and ends before word `end`: "2 tablespoons of the oil", "the oil (2 tablespoons)". */
export function measureOf(words: Words, start: number, end: number): Measure | null {
  const first = words.at[start]!;
  for (let index = first - 1; index >= 0 && index >= first - FURTHEST_MEASURE; index--) {
    const item = words.items[index]!;
    if (item.kind === 'measure') return item;
    // "4 of the eggs": a number that nothing but "of the" parts from what it counts.
    if (item.kind === 'count' && isOf(words.items[index + 1])) return counted(item);
    if (item.kind !== 'word' || !mayStandBetween(item.key)) break;
  }
  const last = words.at[end - 1]!;
  const open = words.items[last + 1];
  const inside = words.items[last + 2];
  return open?.kind === 'point' && open.text === '(' && inside?.kind === 'measure' ? inside : null;
}

function isOf(item: Item | undefined): boolean {
  return item?.kind === 'word' && item.key === 'of';
}

function counted({ start, end, amount }: Count): Measure {
  return { kind: 'measure', start, end, amount, unit: null, plus: [], equals: [], pack: null, share: false };
}

/** "All but 2 tablespoons", "all except half": the measure is what stays behind. */
export function isAllBut(words: Words, measure: Measure): boolean {
  const after = words.at.findIndex((at) => words.items[at]!.start >= measure.start);
  const before = after < 0 ? words.keys.length : after;
  return phraseAt(words.keys, before - 2, 'all-but') !== null;
}

function mayStandBetween(key: string): boolean {
  if (
    key === 'of' ||
    isWord(key, 'adjective') ||
    isWord(key, 'referring') ||
    isWord(key, 'rest-word') ||
    isWord(key, 'extra-word')
  )
    return true;
  const match = techniqueOf(key);
  return (match !== null && match.form === 'past') || key.endsWith('ly');
}
