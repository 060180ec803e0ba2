/** Knows the lines that listings stand on, where each has a line with a bullet of its own, and how one more would be written. */
import type { Listing } from '../anatomy/types.js';
import type { Page, Span } from '../manuscript/types.js';

/** A stretch of the page and what would stand there instead. */
export interface Replacement {
  readonly span: Span;
  readonly text: string;
}

/** The listing with its line; null where the list is no list of bullets. */
export function withoutListing(page: Page, listing: Listing): Replacement | null {
  const line = lineOf(page, listing);
  return line === null ? null : { span: line.span, text: '' };
}

interface ListLine {
  /** From the start of the line to that of the next. */
  readonly span: Span;
  readonly bullet: string;
  /** White space behind the listing. */
  readonly rest: string;
  readonly lineEnd: string;
}

const BULLET = /^[\t >]*[-*+•]\s+(?:\[[ xX]\]\s+)?$/;

function lineOf({ text }: Page, { passage }: Listing): ListLine | null {
  const { start, end } = passage.span();
  const from = Math.max(text.lastIndexOf('\n', start - 1), text.lastIndexOf('\r', start - 1)) + 1;
  const bullet = text.slice(from, start).replace(/^\uFEFF/, '');
  const after = LINE_REST.exec(text.slice(end, end + LONGEST_REST));
  if (!BULLET.test(bullet) || after === null || /[\r\n]/.test(text.slice(start, end))) return null;
  const [whole, rest, lineEnd] = after;
  return {
    span: { start: from, end: end + whole.length },
    bullet: bullet.replace(/\[[xX]\]/, '[ ]'),
    rest: rest!,
    lineEnd: lineEnd === '' ? usualLineEnd(text) : lineEnd!,
  };
}

const LONGEST_REST = 40;
const LINE_REST = /^([ \t]*)(\r\n|\n|\r|$)/;

function usualLineEnd(text: string): string {
  return /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
}
