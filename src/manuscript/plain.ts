/**
 * Reads blocks without any markup inside (a heading, a paragraph, a list of one-line items), which are most of a
 * manuscript, several times faster than the parser does. Whatever might mean anything to Markdown is left to the parser.
 */
import { Passage } from './passage.js';
import type { Block, ListItem, Paragraph } from './types.js';

/**
 * The plain block that begins at `at`, which is the start of a line where no other block is open; null when it is
 * not surely plain or does not surely end there.
 */
export function plainBlock(source: string, at: number): Block | null {
  const code = source.charCodeAt(at);
  if (code === HASH) return plainHeading(source, at);
  if (code === HYPHEN || code === STAR || code === PLUS)
    return plainBreak(source, at) ?? plainList(source, at);
  return (isDigit(code) ? plainList(source, at) : null) ?? plainParagraph(source, at);
}

/** Offset of the first line at or after `at` that is not blank, where `at` is the start or the end of a line. */
export function afterBlankLines(source: string, at: number): number {
  let start = at;
  for (let next = at; next < source.length; ) {
    const code = source.charCodeAt(next++);
    if (isLineEnd(code)) start = next;
    else if (code !== SPACE && code !== TAB) return start;
  }
  return source.length;
}

/**
 * Whether the line that begins at `at`, after a blank one, may go on with a list: it is indented, or an item of one.
 * Any other line at the margin ends all lists, quotes and paragraphs before it.
 */
export function mayGoOn(source: string, at: number): boolean {
  const code = source.charCodeAt(at);
  return code === SPACE || code === TAB || opensItem(source, markerEnd(source, at));
}

/** Numbers are as printed; where all are printed alike ("1." before every item) they count as they will be shown. */
export function itemNumbers(printed: readonly number[], first: number): readonly number[] {
  return printed.every((number) => number === printed[0])
    ? printed.map((_, index) => first + index)
    : printed;
}

const [TAB, LINE_FEED, RETURN, SPACE, HASH, CLOSE] = [9, 10, 13, 32, 35, 41];
const [STAR, PLUS, HYPHEN, DOT, ZERO, NINE] = [42, 43, 45, 46, 48, 57];
const MOST_HASHES = 6;
/** A longer number before a full stop is no list's. */
const MOST_DIGITS = 9;

/** Characters that may be markup wherever they stand in a line, and two that the parser rewrites. */
const MARKUP = flags('&*_<[]\\`|#\t\0');
/** Characters that at the beginning of a line may open a block or underline the one above. */
const OPENERS = flags(' >-+=~:');

function flags(characters: string): Uint8Array {
  const marked = new Uint8Array(128);
  for (const character of characters) marked[character.charCodeAt(0)] = 1;
  return marked;
}

/** Where the plain line that begins at `start` ends; -1 when it is not surely plain. */
function plainEnd(source: string, start: number): number {
  const first = source.charCodeAt(start);
  if (first < 128 && OPENERS[first] === 1) return -1;
  let at = start;
  let code = 0;
  for (; at < source.length; at++) {
    const next = source.charCodeAt(at);
    if (next < 128 && MARKUP[next] === 1) return -1;
    if (isLineEnd(next)) break;
    code = next;
  }
  // Spaces at the end of a line may break it.
  if (at === start || code === SPACE) return -1;
  return isDigit(first) && opensItem(source, markerEnd(source, start)) ? -1 : at;
}

function plainHeading(source: string, start: number): Block | null {
  let at = start;
  while (source.charCodeAt(at) === HASH) at++;
  const depth = at - start;
  if (depth > MOST_HASHES || source.charCodeAt(at) !== SPACE) return null;
  const end = plainEnd(source, at + 1);
  if (end < 0) return null;
  return { type: 'heading', depth, passage: Passage.verbatim(source, at + 1, end), span: { start, end } };
}

function plainParagraph(source: string, start: number): Paragraph | null {
  for (let at = start; ; ) {
    const end = plainEnd(source, at);
    if (end < 0) return null;
    if (endsBlock(source, end)) return paragraphOf(source, start, end);
    // Lines with a carriage return between them read otherwise than they are written.
    if (source.charCodeAt(end) === RETURN) return null;
    at = end + 1;
  }
}

function paragraphOf(source: string, start: number, end: number): Paragraph {
  return {
    type: 'paragraph',
    passage: Passage.verbatim(source, start, end),
    wrapped: null,
    span: { start, end },
  };
}

/** "---" and the like, with nothing else in the line. */
function plainBreak(source: string, start: number): Block | null {
  const code = source.charCodeAt(start);
  let end = start;
  while (source.charCodeAt(end) === code) end++;
  if (code === PLUS || end - start < 3) return null;
  return end === source.length || isLineEnd(source.charCodeAt(end))
    ? { type: 'break', span: { start, end } }
    : null;
}

/** Items of one line each, with the same mark before all of them. */
function plainList(source: string, start: number): Block | null {
  const ordered = isDigit(source.charCodeAt(start));
  const first = markerEnd(source, start);
  if (first === 0) return null;
  const mark = source.charCodeAt(first - 1);
  const items: ListItem[] = [];
  const printed: number[] = [];
  let end = start;
  for (let at = start; ; ) {
    const marked = markerEnd(source, at);
    if (marked === 0 || source.charCodeAt(marked - 1) !== mark) return null;
    if (source.charCodeAt(marked) !== SPACE) return null;
    end = plainEnd(source, marked + 1);
    if (end < 0) return null;
    printed.push(ordered ? Number(source.slice(at, marked - 1)) : 0);
    items.push({
      number: null,
      blocks: [paragraphOf(source, marked + 1, end)],
      span: { start: at, end },
    });
    const next = afterBlankLines(source, end);
    if (next === source.length || source.charCodeAt(next) === HASH) {
      if (endsBlock(source, end)) break;
      return null;
    }
    const code = source.charCodeAt(next);
    if (code === mark || (ordered && isDigit(code))) at = next;
    // What stands at the margin after a blank line is no part of the list.
    else if (code !== SPACE && code !== TAB && endsBlock(source, end)) break;
    else return null;
  }
  const numbers = ordered ? itemNumbers(printed, printed[0]!) : [];
  return {
    type: 'list',
    ordered,
    items: ordered ? items.map((item, index) => ({ ...item, number: numbers[index]! })) : items,
    span: { start, end },
  };
}

/** Where the mark of a list's item ends that begins at `at`: past "-" or "12."; 0 where none does. */
function markerEnd(source: string, at: number): number {
  const code = source.charCodeAt(at);
  if (code === HYPHEN || code === STAR || code === PLUS) return at + 1;
  let end = at;
  while (isDigit(source.charCodeAt(end))) end++;
  const last = source.charCodeAt(end);
  return end > at && end - at <= MOST_DIGITS && (last === DOT || last === CLOSE) ? end + 1 : 0;
}

/** Whether a mark that ends at `end`, if there is one, has a space after it. */
function opensItem(source: string, end: number): boolean {
  const code = source.charCodeAt(end);
  return end > 0 && (code === SPACE || code === TAB || isLineEnd(code) || end === source.length);
}

/** Whether no block goes on past the end of the line at `end`: the text ends, or a blank line or a heading is next. */
function endsBlock(source: string, end: number): boolean {
  let at = end + (source.charCodeAt(end) === RETURN && source.charCodeAt(end + 1) === LINE_FEED ? 2 : 1);
  while (source.charCodeAt(at) === SPACE || source.charCodeAt(at) === TAB) at++;
  if (at >= source.length || isLineEnd(source.charCodeAt(at))) return true;
  const start = at;
  while (source.charCodeAt(at) === HASH) at++;
  const hashes = at - start;
  return (
    hashes > 0 &&
    hashes <= MOST_HASHES &&
    source.charCodeAt(at) === SPACE &&
    isLineEnd(source.charCodeAt(start - 1))
  );
}

function isLineEnd(code: number): boolean {
  return code === LINE_FEED || code === RETURN;
}

function isDigit(code: number): boolean {
  return code >= ZERO && code <= NINE;
}
