/** Matches the value of a piece of Markdown text with the source it was written as, character by character. */
import { decodeNamedCharacterReference } from 'decode-named-character-reference';
import type { Assembler } from './assemble.js';

/** What is known of the piece besides its value. */
export interface Written {
  readonly source: string;
  readonly start: number;
  readonly end: number;
  readonly value: string;
  /** How many block quotes it stands in: a continued line may begin with as many ">". */
  readonly quotes: number;
  /** Inline code, where nothing is escaped but a bar in a table. */
  readonly code: boolean;
}

/** Adds the piece to `into`, with line ends as "\n". */
export function align(piece: Written, into: Assembler): void {
  const { source, value, start } = piece;
  if (piece.end - start === value.length && source.startsWith(value, start) && !value.includes('\r')) {
    into.verbatim(start, piece.end);
    return;
  }
  let from = 0;
  let at = piece.code ? insideFence(piece) : start;
  while (from < value.length) {
    const to = lineEnd(value, from);
    const next = alignLine(piece, from, to, at, into);
    if (next < 0) {
      // Not expected of any source; the rest then has one place as a whole, which is still true of it.
      into.instead(value.slice(from).replace(/\r\n?/g, '\n'), Math.min(at, piece.end), piece.end);
      return;
    }
    at = next;
    if (to >= value.length) return;
    // White space at the end of a continued line is no part of the value.
    if (!piece.code) while (isBlank(source, at)) at++;
    const width = source.startsWith('\r\n', at) ? 2 : 1;
    into.instead('\n', at, at + width);
    from = to + (value.startsWith('\r\n', to) ? 2 : 1);
    at = continued(piece, from, at + width);
  }
}

/** Aligns one line; gives where it ends in the source, or -1 where the two differ. With no `into` it only looks. */
function alignLine(piece: Written, from: number, to: number, start: number, into: Assembler | null): number {
  const { source, value, code } = piece;
  let at = start;
  let plain = start;
  for (let index = from; index < to; ) {
    const width = code ? barWidth(source, at, value[index]!) : referenceWidth(source, at);
    if (width > 1) {
      const reads = code || source[at] === '\\' ? value[index]! : decoded(source, at, width, value, index);
      if (!value.startsWith(reads, index)) return -1;
      into?.verbatim(plain, at);
      into?.instead(reads, at, at + width);
      at += width;
      plain = at;
      index += reads.length;
    } else {
      if (at >= piece.end) return -1;
      if (code && source[at] === '\t' && value[index] === ' ') {
        // A tab that a list's indentation took a part of leaves the rest as spaces.
        const spaces = /^ */.exec(value.slice(index, to))![0];
        into?.verbatim(plain, at);
        into?.instead(spaces, at, at + 1);
        plain = ++at;
        index += spaces.length;
        continue;
      }
      // A null character reads as the replacement character.
      if (source[at] !== value[index] && !(source[at] === '\0' && value[index] === '\uFFFD')) return -1;
      if (source[at] === '\0') {
        into?.verbatim(plain, at);
        into?.instead('\uFFFD', at, at + 1);
        plain = at + 1;
      }
      at++;
      index++;
    }
  }
  into?.verbatim(plain, at);
  return at;
}

/** Where the text of inline code begins: past its backticks, and past one space or line end where it has one at both ends. */
function insideFence(piece: Written): number {
  const { source } = piece;
  let fence = 0;
  while (source[piece.start + fence] === '`') fence++;
  const open = piece.start + fence;
  const inner = source.slice(open, piece.end - fence);
  if (!/^[ \r\n]/.test(inner) || !/[ \r\n]$/.test(inner) || inner.trim() === '') return open;
  return inner[0] === ' ' ? open + 1 : continued(piece, 0, open + (inner.startsWith('\r\n') ? 2 : 1));
}

/** Where the text of a continued line begins in the source: past the marks of quotes and the indentation. */
function continued(piece: Written, from: number, lineStart: number): number {
  const { source, value } = piece;
  const to = lineEnd(value, from);
  const blanks = piece.code ? countBlanks(value, from) : 0;
  for (let marks = piece.quotes; marks >= 0; marks--) {
    let at = lineStart;
    let met = 0;
    while (isBlank(source, at) || (source[at] === '>' && met < marks)) if (source[at++] === '>') met++;
    if (met < marks) continue;
    at = Math.max(lineStart, at - blanks);
    // A line may do without its marks, and text may begin with one: what fits is what was meant.
    if (marks === 0 || alignLine(piece, from, to, at, null) >= 0) return at;
  }
  return lineStart;
}

/** How many characters an escape or a character reference takes at `at`; 1 where there is none. */
function referenceWidth(source: string, at: number): number {
  const first = source[at];
  if (first === '\\') return isPunctuation(source.charCodeAt(at + 1)) ? 2 : 1;
  if (first !== '&') return 1;
  REFERENCE.lastIndex = at;
  const match = REFERENCE.exec(source);
  if (match === null || (match[1] !== undefined && decodeNamedCharacterReference(match[1]) === false))
    return 1;
  return match[0].length;
}

const REFERENCE = /&(?:#[xX][\da-fA-F]{1,6}|#\d{1,7}|([A-Za-z\d]{1,31}));/y;

/** In a table a bar in code is escaped; elsewhere the backslash is a part of the code. */
function barWidth(source: string, at: number, reads: string): number {
  return reads === '|' && source.startsWith('\\|', at) ? 2 : 1;
}

/** What the reference reads as; a numeric one is always one character of the value, whatever it names. */
function decoded(source: string, at: number, width: number, value: string, index: number): string {
  if (source[at + 1] === '#') return String.fromCodePoint(value.codePointAt(index) ?? 0);
  return decodeNamedCharacterReference(source.slice(at + 1, at + width - 1)) || '';
}

function lineEnd(value: string, from: number): number {
  let at = from;
  while (at < value.length && value[at] !== '\n' && value[at] !== '\r') at++;
  return at;
}

function countBlanks(text: string, from: number): number {
  let at = from;
  while (isBlank(text, at)) at++;
  return at - from;
}

function isBlank(text: string, at: number): boolean {
  return text[at] === ' ' || text[at] === '\t';
}

/** ASCII punctuation, which is what a backslash may escape. */
function isPunctuation(code: number): boolean {
  return (
    (code > 32 && code < 48) ||
    (code > 57 && code < 65) ||
    (code > 90 && code < 97) ||
    (code > 122 && code < 127)
  );
}
