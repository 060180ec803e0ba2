/** Finds what was left to be filled in: "page 000", "TK", "XX minutes", "??", "[check]". */
import { readText } from '../grammar/text.js';
import type { Item } from '../grammar/types.js';
import { phraseAt } from '../larder/kitchen-words.js';
import { unitNamed } from '../larder/units.js';
import { once } from '../manuscript/once.js';
import type { Passage } from '../manuscript/passage.js';
import { passagesOf } from '../manuscript/texts.js';
import type { Page, Span } from '../manuscript/types.js';

export interface Placeholder {
  readonly span: Span;
  readonly text: string;
}

/** What every placeholder has some of; a text without it need not be read. */
const SIGNS =
  /\?\s?\?|\[|_|[Xx]{2}|N{2}|[#•…]|\bx |to come|nsert |\b[Pp]p?\.? ?[0xXn]|\b[Pp]ages? |\b00 |\b[XN] |T[KBO]|FIXME|orem ipsum/;

/** All placeholders of a page, recipes or not, in order. */
export const placeholdersOf = once((page: Page): readonly Placeholder[] =>
  [...page.front.map((field) => field.passage), ...passagesOf(page.blocks)].flatMap((passage) =>
    SIGNS.test(passage.text) ? placeholdersIn(passage) : [],
  ),
);

function placeholdersIn(passage: Passage): Placeholder[] {
  const items = readText(passage.text);
  const found: Placeholder[] = [];
  for (let at = 0; at < items.length; at++) {
    const length =
      pageReference(items, at) ??
      zeros(items, at, passage.text) ??
      letterForNumber(items, at) ??
      lettersAt(items, at) ??
      questionMarks(items, at) ??
      bracketed(items, at);
    if (length === null) continue;
    const start = items[at]!.start;
    const end = items[at + length - 1]!.end;
    found.push({ span: passage.span(start, end), text: passage.text.slice(start, end) });
    at += length - 1;
  }
  return found;
}

/** "page 000", "p. 00", "page XX": how many items it takes. */
function pageReference(items: readonly Item[], at: number): number | null {
  const word = items[at]!;
  if (word.kind !== 'word' || !/^(pages?|pp?)$/.test(word.key)) return null;
  const next = items[at + 1];
  const target = next?.kind === 'point' && next.text === '.' ? at + 2 : at + 1;
  const item = items[target];
  if (item?.kind === 'count' && item.amount.low.equals(0)) return target - at + 1;
  if (item?.kind === 'word' && /^(x+|0+|tk|n+)$/.test(item.key)) return target - at + 1;
  // "page ###", "p. ••", "page __".
  let last = target;
  while (items[last]?.kind === 'point' && isBlank(items[last]!)) last++;
  return last > target ? last - at : null;
}

function isBlank(item: Item): boolean {
  return item.kind === 'point' && /^[#•_…]$/.test(item.text);
}

/** "00 minutes": a measure or time of nothing. */
function zeros(items: readonly Item[], at: number, text: string): number | null {
  const item = items[at]!;
  const amount =
    item.kind === 'duration'
      ? item.seconds
      : item.kind === 'measure' || item.kind === 'temperature'
        ? item.amount
        : null;
  return amount?.high.equals(0) && text.startsWith('00', item.start) ? 1 : null;
}

/** "X minutes", "bake for N minutes", "NN g", "_ minutes"; a small x only before a time. */
function letterForNumber(items: readonly Item[], at: number): number | null {
  const [word, next] = [items[at]!, items[at + 1]];
  if (next?.kind !== 'word') return null;
  const unit = unitNamed(next.text);
  if (unit === null) return null;
  if (isBlank(word) || (word.kind === 'word' && word.text === 'x')) return unit.kind === 'time' ? 1 : null;
  return word.kind === 'word' && /^(X|N+|x{2,})$/.test(word.text) ? 1 : null;
}

const LONGEST_PHRASE = 4;

function lettersAt(items: readonly Item[], at: number): number | null {
  const word = items[at]!;
  if (word.kind !== 'word') return null;
  const keys = items.slice(at, at + LONGEST_PHRASE).map((item) => (item.kind === 'word' ? item.key : ''));
  const length = phraseAt(keys, 0, 'placeholder')?.length ?? null;
  // One word in small letters may be another language's; two are not.
  return length === 1 && word.text !== word.text.toUpperCase() ? null : length;
}

/** Two question marks or more, or a run of low lines. */
function questionMarks(items: readonly Item[], at: number): number | null {
  const first = items[at]!;
  if (first.kind !== 'point' || (first.text !== '?' && first.text !== '_')) return null;
  let length = 1;
  for (
    let next = items[at + 1];
    next?.kind === 'point' && next.text === first.text;
    next = items[at + length]
  )
    length++;
  return length > 1 ? length : null;
}

/** "[check]", "[how much?]", "[?]". */
function bracketed(items: readonly Item[], at: number): number | null {
  const open = items[at]!;
  if (open.kind !== 'point' || open.text !== '[') return null;
  const close = items.findIndex((item, index) => index > at && item.kind === 'point' && item.text === ']');
  if (close < 0) return null;
  const inside = items.slice(at + 1, close);
  if (inside.length === 1 && inside[0]!.kind === 'point' && inside[0]!.text === '?') return close - at + 1;
  const keys = inside.map((item) => (item.kind === 'word' ? item.key : ''));
  return phraseAt(keys, 0, 'placeholder-bracket') !== null || phraseAt(keys, 0, 'placeholder') !== null
    ? close - at + 1
    : null;
}
