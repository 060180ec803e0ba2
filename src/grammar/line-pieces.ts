/** Cuts an ingredient line at its commas, dashes, colons and parentheses, and keeps each stretch as words and quantities. */
import { lexiconAt } from '../larder/lexicon.js';
import { fold } from '../larder/names.js';
import type { Draft } from './drafts.js';
import { isWord } from './lexer.js';
import { isDraft } from './quantities.js';
import { partsOfLine } from './runs.js';
import { difference } from './sums.js';
import * as t from './tokens.js';
import { endOf, type KitchenToken } from './tokens.js';
import type { Extent, Phrase } from './types.js';

/** A word, a quantity, or a mark that may join words ("and" is a word; "&", "+" and "/" are marks). */
export interface Piece extends Extent {
  /** The folded word or the mark; for a quantity a sign that is no word. */
  readonly key: string;
  readonly draft: Draft | null;
  readonly mark: boolean;
  /** Whether a hyphen joins it to the word before. */
  readonly hyphenated: boolean;
}

/** What stands before a stretch: nothing, a comma, a dash, a colon, a full stop, a cell's edge, an opening parenthesis, or a mark inside it. */
export type Lead = 'start' | 'comma' | 'dash' | 'colon' | 'stop' | 'cell' | 'paren' | 'inner';

export interface Segment {
  readonly lead: Lead;
  readonly pieces: readonly Piece[];
}

/** The stretches of a line in order. A stretch that parentheses interrupt goes on after them; theirs stand after it. */
export function segmentsOf(text: string): Segment[] {
  const segments: Segment[] = [];
  const outer: Segment[] = [];
  let pieces: Piece[] = [];
  let lead: Lead = 'start';
  let inside: { lead: Lead; pieces: Piece[] } | null = null;
  let groups: Segment[] = [];
  let depth = 0;
  const close = (next: Lead): void => {
    if (pieces.length > 0) (depth > 0 ? groups : outer).push({ lead, pieces });
    if (depth === 0) {
      segments.push(...outer, ...groups);
      outer.length = 0;
      groups = [];
    }
    pieces = [];
    lead = next;
  };
  const parts = partsOfLine(text);
  let end = 0;
  for (let at = 0; at < parts.length; at++) {
    const part = parts[at]!;
    const start = isDraft(part) ? part.item.start : part.startOffset;
    if (depth === 0 && text.slice(end, start).includes('\t')) close('cell');
    if (isDraft(part)) {
      end = part.item.end;
      const key = isNameNumber(part, parts[at + 1], parts[at + 2])
        ? fold(text.slice(start, end))
        : QUANTITY_KEY;
      pieces.push({
        key,
        draft: key === QUANTITY_KEY ? part : null,
        mark: false,
        hyphenated: false,
        start,
        end,
      });
      takeLess(pieces);
      continue;
    }
    end = endOf(part);
    if (part.tokenType === t.Open) {
      if (depth === 0) {
        inside = { lead, pieces };
        pieces = [];
        lead = 'paren';
      } else close('paren');
      depth++;
      continue;
    }
    if (part.tokenType === t.Close) {
      if (depth === 0 || inside === null) continue;
      if (depth > 1) close('paren');
      else if (pieces.length > 0) groups.push({ lead, pieces });
      depth--;
      if (depth === 0) {
        ({ lead, pieces } = inside);
        inside = null;
      }
      continue;
    }
    const separator = separatorOf(text, parts[at - 1], part, parts[at + 1]);
    if (separator !== null) close(depth > 0 ? 'inner' : separator);
    else if (isWord(part)) pieces.push(wordPiece(part, pieces, text));
    else if (JOINING_MARKS.has(part.tokenType)) {
      pieces.push({ key: part.image, draft: null, mark: true, hyphenated: false, start, end });
    }
  }
  if (depth > 0 && inside !== null) {
    if (pieces.length > 0) groups.push({ lead: 'paren', pieces });
    depth = 0;
    ({ lead, pieces } = inside);
  }
  close('start');
  return segments;
}

/** Stands for a quantity among the keys of words. */
export const QUANTITY_KEY = '#';

/** The keys of the pieces, for looking up phrases. */
export function keysOf(pieces: readonly Piece[]): string[] {
  return pieces.map((piece) => piece.key);
}

export function phraseOf(text: string, pieces: readonly Piece[]): Phrase {
  const start = pieces[0]!.start;
  const { end } = pieces[pieces.length - 1]!;
  return { start, end, text: text.slice(start, end).replace(SPACES, ' ') };
}

/** The words themselves, without the parentheses, commas or spaces between them. */
export function textOf(text: string, pieces: readonly Piece[]): string {
  let result = '';
  let end: number | null = null;
  for (const piece of pieces) {
    const between = end === null ? '' : text.slice(end, piece.start);
    result +=
      (between.includes('(') || between.includes(',') ? ' ' : between) + text.slice(piece.start, piece.end);
    end = piece.end;
  }
  return result.replace(SPACES, ' ');
}

/** "1 cup minus 1 tablespoon" is one amount, fifteen sixteenths of a cup. */
function takeLess(pieces: Piece[]): void {
  const [whole, word, part] = pieces.slice(-3);
  if (part === undefined || lexiconAt([word!.key], 0, 'less') === null) return;
  const [from, taken] = [whole!.draft, part.draft];
  const item = from === null || taken === null ? null : difference(from.item, taken.item);
  if (item === null) return;
  pieces.length -= 3;
  pieces.push({ ...whole!, draft: { ...from!, item }, end: part.end });
}

const SPACES = /\s+/g;
const JOINING_MARKS = new Set([t.Ampersand, t.PlusSign, t.Slash]);

function wordPiece(token: KitchenToken, before: readonly Piece[], text: string): Piece {
  const start = token.startOffset;
  const last = before[before.length - 1];
  const hyphenated = last !== undefined && start - last.end === 1 && HYPHENS.has(text[last.end]!);
  return {
    key: token.payload?.key ?? fold(token.image),
    draft: null,
    mark: false,
    hyphenated,
    start,
    end: endOf(token),
  };
}

const HYPHENS = new Set(['-', '‐', '‑']);

/** What the mark parts, or null where it parts nothing: a hyphen in a word, a full stop after a short form. */
function separatorOf(text: string, before: Neighbour, token: KitchenToken, after: Neighbour): Lead | null {
  const end = endOf(token);
  switch (token.tokenType) {
    case t.Comma:
      return 'comma';
    case t.Hyphen:
      return isSpace(text, token.startOffset - 1) && isSpace(text, end) ? 'dash' : null;
    case t.Dash:
      return 'dash';
    case t.Dot:
      return endsSentence(before, token, after) && isSpace(text, end) ? 'stop' : null;
    case t.Mark:
      if (token.image === ':') return 'colon';
      if (token.image === '|') return 'cell';
      return token.image === ';' || token.image === '•' ? 'stop' : null;
    default:
      return null;
  }
}

/** A full stop after a letter or two ends a short form: "e.g.", "ex." */
function endsSentence(before: Neighbour, token: KitchenToken, after: Neighbour): boolean {
  if (before === undefined || after === undefined) return false;
  if (isDraft(before) || !isWord(before)) return true;
  return before.image.length > LONGEST_SHORT_FORM || endOf(before) < token.startOffset;
}

const LONGEST_SHORT_FORM = 2;

/** "7-spice", "four-cheese": a number that a hyphen makes part of a name. */
function isNameNumber(draft: Draft, hyphen: Neighbour, word: Neighbour): boolean {
  if (draft.item.kind !== 'count' || hyphen === undefined || word === undefined) return false;
  if (isDraft(hyphen) || isDraft(word) || hyphen.tokenType !== t.Hyphen || !isWord(word)) return false;
  return hyphen.startOffset === draft.item.end && word.startOffset === endOf(hyphen);
}

type Neighbour = ReturnType<typeof partsOfLine>[number] | undefined;

function isSpace(text: string, at: number): boolean {
  return at < 0 || at >= text.length || text[at]!.trim() === '';
}
