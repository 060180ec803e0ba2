/** Knows the line that a listing stands on, where it has one with a bullet of its own. */
import type { Listing } from '../anatomy/types.js';
import type { Page, Span } from '../manuscript/types.js';

/** A stretch of the page and what would stand there instead. */
export interface Replacement {
  readonly span: Span;
  readonly text: string;
}

/** The listing with its line, and nothing in its place; null where the list is no list of bullets. */
export function withoutListing({ text }: Page, { passage }: Listing): Replacement | null {
  const { start, end } = passage.span();
  const from = Math.max(text.lastIndexOf('\n', start - 1), text.lastIndexOf('\r', start - 1)) + 1;
  const bullet = text.slice(from, start).replace(/^\uFEFF/, '');
  const rest = LINE_REST.exec(text.slice(end, end + LONGEST_REST));
  if (!BULLET.test(bullet) || rest === null || /[\r\n]/.test(text.slice(start, end))) return null;
  return { span: { start: from, end: end + rest[0].length }, text: '' };
}

const BULLET = /^[\t >]*[-*+•]\s+(?:\[[ xX]\]\s+)?$/;
const LONGEST_REST = 40;
const LINE_REST = /^[ \t]*(?:\r\n|\n|\r|$)/;
