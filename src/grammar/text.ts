/** Reads any passage of kitchen language as items: its quantities understood, everything else as words and punctuation marks. */
import { foodAt } from '../larder/foods.js';
import { lexiconAt } from '../larder/lexicon.js';
import { fold } from '../larder/names.js';
import { type Draft, measure } from './drafts.js';
import { isFigure, isWord } from './lexer.js';
import { isDraft, type Part } from './quantities.js';
import { partsOfText } from './runs.js';
import { settleTemperatures } from './temperatures.js';
import type { KitchenToken } from './tokens.js';
import * as t from './tokens.js';
import type { Count, Item } from './types.js';
import { trailingUnit } from './words.js';

/** The tokens of a passage as items, in order. Never throws; the time it takes grows with the text in a straight line. */
export function readText(text: string): Item[] {
  const parts = partsOfText(text);
  const items: Item[] = [];
  for (let at = 0; at < parts.length; at++) {
    const part = parts[at]!;
    if (!isDraft(part)) pushToken(items, part);
    else if (part.item.kind === 'count') pushCount(items, part, part.item, parts, at);
    else items.push(part.item);
  }
  return settleTemperatures(text, items);
}

/** Adds a token as a word or a punctuation mark. */
export function pushToken(items: Item[], token: KitchenToken): void {
  const { image, startOffset: start } = token;
  if (image === '') return;
  const end = start + image.length;
  if (!isWord(token)) {
    items.push({ kind: 'point', start, end, text: token.tokenType === t.Newline ? '\n' : image });
    return;
  }
  const key = token.payload?.key ?? fold(image);
  items.push({ kind: 'word', start, end, text: image, key, hyphenated: isHyphenated(items, start) });
}

/** A plain number after "at" or "to" is a temperature from here to there, in steps of 5. */
const COOLEST_OVEN = 100;
const HOTTEST_OVEN = 600;
const OVEN_STEP = 5;
/** What a thermometer shows may be any number from here on: fish in Celsius. */
const COOLEST_READING = 45;
const WORDS_BEFORE_HEAT = 3;
const MOST_WORDS_BEFORE_FOOD = 3;
const MOST_WORDS_AHEAD = 10;

/** A number that nothing explained: of foods it is a measure, after "at" a temperature, in words often no number at all. */
function pushCount(items: Item[], draft: Draft, count: Count, parts: readonly Part[], at: number): void {
  const { style, tokens } = draft;
  const ahead = wordsAhead(parts, at + 1);
  const first = tokens.length === 1 ? keyOf(tokens[0]!) : null;
  // "five-spice powder" is a name that a number belongs to.
  const inName = first !== null && (foodAt([first, ...ahead], 0)?.length ?? 0) > 1;
  const unit = style === 'article' || inName ? undefined : countedFood(ahead);
  if (unit !== undefined) {
    items.push(measure(count.amount, unit, count.start, count.end));
    return;
  }
  const inWords = !tokens.some(isFigure);
  const loose = style === 'article' || style === 'fraction' || count.amount.high.equals(1);
  if (inName || (inWords && loose && !draft.ranged)) {
    for (const token of tokens) {
      if (token.parts === undefined) pushToken(items, token);
      else for (const part of token.parts) pushToken(items, part);
    }
    return;
  }
  if (style === 'figure' && isHeat(count, items, ahead)) {
    items.push({ ...count, kind: 'temperature', scale: null, fan: false, equals: [] });
  } else items.push(count);
}

/** What the words after a number say is counted: null for things, a unit for "garlic cloves"; undefined where no food is named. */
function countedFood(ahead: readonly string[]): string | null | undefined {
  for (let at = 0; at <= MOST_WORDS_BEFORE_FOOD; ) {
    const food = foodAt(ahead, at);
    if (food !== null) {
      const inside = trailingUnit(ahead.slice(at, at + food.length));
      return inside ?? trailingUnit(ahead.slice(at, at + food.length + 1));
    }
    const before = lexiconAt(ahead, at, 'size') ?? lexiconAt(ahead, at, 'state');
    if (before === null) return undefined;
    at += before.length;
  }
  return undefined;
}

/** The keys of the words that follow directly, hyphens between them left out. */
function wordsAhead(parts: readonly Part[], from: number): string[] {
  const keys: string[] = [];
  for (let at = from; at < parts.length && keys.length < MOST_WORDS_AHEAD; at++) {
    const part = parts[at]!;
    if (isDraft(part)) break;
    if (part.tokenType === t.Hyphen) continue;
    if (!isWord(part)) break;
    keys.push(keyOf(part));
  }
  return keys;
}

/** Whether a plain number is the heat of an oven or what a thermometer shows: "at 350", "reads 165". */
function isHeat(count: Count, items: readonly Item[], ahead: readonly string[]): boolean {
  const { low, high } = count.amount;
  if (low.lt(COOLEST_READING) || high.gt(HOTTEST_OVEN)) return false;
  const oven = low.gte(COOLEST_OVEN) && low.mod(OVEN_STEP).equals(0);
  if (oven && lexiconAt(ahead, 0, 'oven-after') !== null) return true;
  const ends = ahead.length === 0 || lexiconAt(ahead, 0, 'oven-then') !== null;
  const before = items.slice(-WORDS_BEFORE_HEAT).map((item) => (item.kind === 'word' ? item.key : ''));
  if (opensHeat(before, 'reading-before')) return ends || lexiconAt(ahead, 0, 'reading-then') !== null;
  return oven && ends && opensHeat(before, 'oven-before');
}

/** Whether the words end in a phrase of that class. */
function opensHeat(before: readonly string[], is: 'oven-before' | 'reading-before'): boolean {
  return before.some((_, at) => lexiconAt(before, at, is)?.length === before.length - at);
}

function isHyphenated(items: readonly Item[], start: number): boolean {
  const point = items[items.length - 1];
  const before = items[items.length - 2];
  if (point?.kind !== 'point' || point.end !== start || before === undefined) return false;
  return HYPHENS.has(point.text) && before.end === point.start && before.kind !== 'point';
}

const HYPHENS = new Set(['-', '‐', '‑']);

function keyOf(token: KitchenToken): string {
  return token.payload?.key ?? fold(token.image);
}
