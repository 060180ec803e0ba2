/** Reads how much a recipe gives and how long it takes, from the value a page states with or without its label. */
import Fraction from 'fraction.js';
import { foodAt } from '../larder/foods.js';
import { lexiconAt } from '../larder/lexicon.js';
import { unitById, unitNamed } from '../larder/units.js';
import { ONE } from './drafts.js';
import { readText } from './text.js';
import type { Amount, Dimension, Duration, Item, Measure, Yield } from './types.js';

/** "Serves 4", "2 dozen cookies", "one 9-inch pie", "about 1 quart"; null where nothing can be counted ("", "??", "depends"). */
export function readYield(text: string): Yield | null {
  const items = readText(text);
  const measures: Measure[] = [];
  const dimensions: Dimension[] = [];
  let amount: Amount | null = null;
  let of = '';
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!;
    if (item.kind === 'dimension') dimensions.push(item);
    if (item.kind === 'measure' && isPoured(item)) measures.push(item);
    const counted: Amount | null = amount === null ? countedAt(items, at) : null;
    if (counted === null) continue;
    amount = counted;
    of = item.kind === 'measure' && item.unit !== null ? unitText(text, item) : '';
    of = [of, thingsAfter(text, items, at + 1)].filter((part) => part !== '').join(' ');
  }
  if (amount === null && measures.length === 0) return null;
  return { text, amount, of, measures, dimensions };
}

/** "10 min", "1½-2 hours", "overnight": the first length of time that the value states; null where it states none. */
export function readDuration(text: string): Duration | null {
  return readText(text).find((item) => item.kind === 'duration') ?? null;
}

/** Nobody is fed by less than one serving: "2/3" is two to three. */
function countedAt(items: readonly Item[], at: number): Amount | null {
  const item = items[at]!;
  if (item.kind === 'word') return oneAt(items, at);
  if (item.kind !== 'count' && (item.kind !== 'measure' || isPoured(item))) return null;
  const { amount } = item;
  const { n, d } = amount.low;
  const portion = item.kind === 'count' && amount.low.equals(amount.high) && n < d;
  return portion ? { ...amount, low: new Fraction(n), high: new Fraction(d) } : amount;
}

/** "one pie", "a 9-inch cake": a word for one counts where something to count follows. */
function oneAt(items: readonly Item[], at: number): Amount | null {
  const keys = wordsFrom(items, at);
  const next = items[at + 1];
  if (lexiconAt(keys, 0, 'number')?.means === '1')
    return next?.kind === 'dimension' || keys.length > 1 || at <= 1 ? ONE : null;
  if (lexiconAt(keys, 0, 'article') === null) return null;
  return next?.kind === 'dimension' || foodAt(keys, 1) !== null || isContainerSoon(keys) ? ONE : null;
}

const MOST_BEFORE_CONTAINER = 4;

/** "An average-sized jar", "a large loaf". */
function isContainerSoon(keys: readonly string[]): boolean {
  return keys.slice(1, 1 + MOST_BEFORE_CONTAINER).some((key) => {
    const kind = unitNamed(key)?.kind;
    return kind === 'container' || kind === 'piece';
  });
}

/** Flour and soup are poured or weighed; loaves, bowls and servings are counted. */
function isPoured(item: Measure): boolean {
  if (item.unit === null) return false;
  const { kind } = unitById(item.unit);
  return kind === 'volume' || kind === 'mass';
}

function unitText(text: string, item: Measure): string {
  const end = item.equals[0]?.start ?? item.plus[0]?.start ?? item.end;
  return /\p{L}+(?=\P{L}*$)/u.exec(text.slice(item.start, end))?.[0] ?? '';
}

/** The words after the number, up to a mark or another quantity; a length between ("one 9-inch pie") is passed over. */
function thingsAfter(text: string, items: readonly Item[], from: number): string {
  let first = from;
  while (items[first]?.kind === 'dimension' || isSizeAgain(items, first)) first++;
  let last = first;
  while (items[last]?.kind === 'word' || isJoint(items, last)) last++;
  const keys = wordsFrom(items, first);
  if (last > first && keys[last - first - 1] === 'or' && isCounted(items[last])) {
    // "12 large or 24 small muffins": the things are named once, after the alternative.
    if (sizesFrom(keys, 0) === keys.length - 1)
      return thingsAfter(text, items, last + 1 + sizesAt(items, last + 1));
    last--;
  }
  return last === first ? '' : text.slice(items[first]!.start, items[last - 1]!.end);
}

/** "(13 × 9 in)": the size once more, in brackets. */
function isSizeAgain(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (item?.kind !== 'point') return false;
  return item.text === '('
    ? items[at + 1]?.kind === 'dimension'
    : item.text === ')' && items[at - 1]?.kind === 'dimension';
}

function isCounted(item: Item | undefined): boolean {
  return item?.kind === 'count' || (item?.kind === 'measure' && item.unit === null);
}

function sizesAt(items: readonly Item[], from: number): number {
  return sizesFrom(wordsFrom(items, from), 0);
}

/** How many words from `from` on tell a size. */
function sizesFrom(keys: readonly string[], from: number): number {
  const size = lexiconAt(keys, from, 'size');
  return size === null ? 0 : size.length + sizesFrom(keys, from + size.length);
}

function isJoint(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  return items[at]?.kind === 'point' && next?.kind === 'word' && next.hyphenated;
}

function wordsFrom(items: readonly Item[], from: number): string[] {
  const keys: string[] = [];
  for (let at = from; at < items.length; at++) {
    const item = items[at]!;
    if (item.kind === 'word') keys.push(item.key);
    else if (!isJoint(items, at)) break;
  }
  return keys;
}
