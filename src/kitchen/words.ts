/** A step as a row of words: which sentence each is in, what punctuation parts it from the one before, and whether it acts as a verb. */
import { readText } from '../grammar/text.js';
import type { Item, Measure, Word } from '../grammar/types.js';
import { isWord } from '../larder/kitchen-words.js';
import { techniqueOf } from '../larder/techniques.js';
import type { Technique } from '../larder/types.js';

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
  /** The punctuation that stands right before each word, "" where none does; a sentence's first word has ".". */
  readonly before: readonly string[];
  /** How deep in parentheses each word stands. */
  readonly depth: readonly number[];
}

/** The words of a passage's text. */
export function wordsOf(text: string): Words {
  const items = readText(text);
  const words: Word[] = [];
  const keys: string[] = [];
  const at: number[] = [];
  const sentence: number[] = [];
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
    sentence.push(current);
    before.push(item.hyphenated ? '' : point);
    depth.push(parentheses);
    point = '';
  });
  return { text, items, words, keys, at, sentence, before, depth };
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

/** The verb that word number `at` is, where it acts as one: an order, or an -ing or -s form; not a noun ("the heat") or participle. */
export function verbAt(words: Words, at: number): Technique | null {
  const match = techniqueOf(words.keys[at]!);
  if (match === null || match.form === 'past' || match.form === 's') {
    return match !== null && match.form === 'past' && sameForm(match.technique, words.keys[at]!) && opens(words, at)
      ? match.technique
      : null;
  }
  if (match.form === 'ing') return isWord(words.keys[at - 1], 'before-noun') && words.before[at] === '' ? null : match.technique;
  if (opens(words, at)) return match.technique;
  const previous = words.keys[at - 1]!;
  if (words.at[at]! - words.at[at - 1]! > 1 && words.before[at] === '') return null;
  return isWord(previous, 'before-noun') || isWord(previous, 'adjective') ? null : match.technique;
}

/** Whether a word begins a clause: the sentence, or what follows a comma, colon, dash or parenthesis. */
function opens(words: Words, at: number): boolean {
  return at === 0 || words.before[at] !== '';
}

/** "Cut", "put", "beat" are base and past at once. */
function sameForm(technique: Technique, key: string): boolean {
  return technique.name === key;
}

/** The verb that governs word number `at`: the nearest order before it in its sentence; else the nearest participle after it. */
export function governingVerb(words: Words, at: number): Technique | null {
  for (let index = at - 1; index >= 0 && words.sentence[index] === words.sentence[at]; index--) {
    const verb = verbAt(words, index);
    if (verb !== null) return verb;
  }
  for (let index = at + 1; index < words.words.length && words.sentence[index] === words.sentence[at]; index++) {
    const match = techniqueOf(words.keys[index]!);
    if (match !== null && match.form === 'past') return match.technique;
  }
  return null;
}

const FURTHEST_MEASURE = 5;

/** The measure said with the food that begins at word `start` and ends before word `end`: "2 tablespoons of the oil", "the oil (2 tablespoons)". */
export function measureOf(words: Words, start: number, end: number): Measure | null {
  const first = words.at[start]!;
  for (let index = first - 1; index >= 0 && index >= first - FURTHEST_MEASURE; index--) {
    const item = words.items[index]!;
    if (item.kind === 'measure') return item;
    if (item.kind !== 'word' || !mayStandBetween(item.key)) break;
  }
  const last = words.at[end - 1]!;
  const open = words.items[last + 1];
  const inside = words.items[last + 2];
  return open?.kind === 'point' && open.text === '(' && inside?.kind === 'measure' ? inside : null;
}

function mayStandBetween(key: string): boolean {
  if (key === 'of' || isWord(key, 'adjective') || isWord(key, 'referring') || isWord(key, 'rest-word') || isWord(key, 'extra-word')) return true;
  const match = techniqueOf(key);
  return (match !== null && match.form === 'past') || key.endsWith('ly');
}
