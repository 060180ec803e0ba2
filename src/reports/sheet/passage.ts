/** Cuts a passage out of a page as an editor quotes it: the marked words, and as much before and after as tells where they stand. */
import type { Span } from '../../manuscript/types.js';

export interface Quoted {
  readonly before: string;
  /** Empty where the mark stands between two characters. */
  readonly words: string;
  readonly after: string;
}

export function quotePassage(text: string, { start, end }: Span): Quoted {
  return {
    before: leadIn(text, start),
    words: shortened(text.slice(start, end)),
    after: leadOut(text, end),
  };
}

/** The words on one line, their middle left out when there are too many to quote. */
export function shortened(words: string): string {
  const line = words.replace(/\s+/g, ' ').trim();
  if (line.length <= longestQuote) return line;
  const half = longestQuote / 2;
  return `${line.slice(0, half).replace(/\s\S*$/, '')} … ${line.slice(-half).replace(/^\S*\s/, '')}`;
}

/** UTF-16 units; about two sentences of a method. */
const longestQuote = 320;
/** UTF-16 units on either side of the marked words. */
const furthest = 160;

/** An empty line, or the start of a list item, a heading, a quote or a row of a table. */
const blockBreak = /\n[ \t]*(?:\r?\n|(?=(?:[-*+>|]|#{1,6}|\d{1,3}[.)])[ \t]))/g;
/** Signs of Markdown that open a block and are no words of it. */
const opening = /^\s*(?:(?:[-*+>|]|#{1,6})[ \t]+)*/;

function leadIn(text: string, start: number): string {
  const from = Math.max(0, start - furthest);
  const near = text.slice(from, start);
  const last = [...near.matchAll(blockBreak)].at(-1);
  if (last !== undefined) return spaced(near.slice(last.index + last[0].length).replace(opening, ''));
  if (from === 0) return spaced(near.replace(opening, ''));
  return `… ${spaced(near.replace(/^\S*\s/, ''))}`;
}

function leadOut(text: string, end: number): string {
  const near = text.slice(end, end + furthest);
  const first = near.matchAll(blockBreak).next();
  if (first.done !== true) return closed(near.slice(0, first.value.index));
  if (end + furthest >= text.length) return closed(near);
  return `${spaced(near.replace(/\s\S*$/, ''))} …`;
}

/** Without the bars that close the row of a table. */
function closed(text: string): string {
  return spaced(text).replace(/[ |]{1,160}$/, '');
}

function spaced(text: string): string {
  return text.replace(/\s+/g, ' ');
}
