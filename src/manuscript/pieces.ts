/**
 * Parts a text where Markdown lets no block go on, so that plain blocks are read without the parser, and the parser,
 * whose cost grows faster than its text, gets small pieces of the rest.
 */
import type { Nodes, RootContent } from 'mdast';
import { parserFor } from './markdown.js';
import { afterBlankLines, mayGoOn, plainBlock } from './plain.js';
import type { Block } from './types.js';

/** The part of a text that is one plain block, or what the parser makes of a stretch; `shift` is added to its offsets. */
export type Piece =
  | { readonly block: Block }
  | { readonly nodes: readonly RootContent[]; readonly shift: number };

/** The pieces of the text from `from` on, in order, as one parse of the whole would have them. */
export function* piecesOf(text: string, from: number): Generator<Piece> {
  if (!text.includes(DEFINES, from)) {
    yield* piecesWith(text, from, NO_LABELS);
    return;
  }
  // Definitions hold for the whole text. A short one is parsed at once; of a long one they are gathered first.
  if (text.length - from <= LARGE) {
    yield parse(text.slice(from), from, '');
    return;
  }
  const labels = new Set<string>();
  for (const piece of piecesWith(text, from, NO_LABELS)) if ('nodes' in piece) gather(piece.nodes, labels);
  yield* piecesWith(text, from, labels);
}

/** Where YAML front matter ends, fences included; -1 where the text has none. */
export function frontEnd(text: string, from: number): number {
  OPENING_FENCE.lastIndex = from;
  const open = OPENING_FENCE.exec(text);
  if (open === null) return -1;
  CLOSING_FENCE.lastIndex = from + open[0].length;
  const close = CLOSING_FENCE.exec(text);
  return close === null ? -1 : close.index + close[0].length;
}

const OPENING_FENCE = /---[ \t]*[\r\n]/y;
const CLOSING_FENCE = /(?<=[\r\n])---[ \t]*(?![^\r\n])/g;
const DEFINES = ']:';
const NO_LABELS: ReadonlySet<string> = new Set();
const LARGE = 32_000;
/** Beyond this a piece ends at the first place where it may. */
const LONGEST_PIECE = 16_000;

function* piecesWith(text: string, from: number, labels: ReadonlySet<string>): Generator<Piece> {
  for (let at = afterBlankLines(text, from); at < text.length; ) {
    const block = plainBlock(text, at);
    if (block !== null) {
      yield { block };
      at = afterBlankLines(text, block.span.end);
      continue;
    }
    const { nodes, shift, end } = parsed(text, at, labels);
    yield { nodes, shift };
    at = end;
  }
}

/**
 * What the parser makes of the text from `from` to the next place where a plain block begins. Whether that is such a
 * place is the parser's own word: a letter put there must come out as a paragraph of its own, which it does not
 * within a fence or a comment; then the piece is made longer.
 */
function parsed(text: string, from: number, labels: ReadonlySet<string>): Parsed {
  const full = from + LONGEST_PIECE;
  for (let least = from; ; ) {
    const end = nextCut(text, least, full);
    const piece = text.slice(from, end);
    const { nodes, shift } = parse(
      end < text.length ? `${piece}x` : piece,
      from,
      definitionsFor(piece, labels),
    );
    if (end === text.length) return { nodes, shift, end };
    const last = nodes.pop();
    if (last?.type === 'paragraph' && last.position!.start.offset! + shift === end)
      return { nodes, shift, end };
    // Twice as long at every attempt, so that all of them together cost little more than the last.
    least = from + 2 * (end - from);
  }
}

interface Parsed {
  readonly nodes: RootContent[];
  readonly shift: number;
  readonly end: number;
}

function parse(piece: string, from: number, defined: string): { nodes: RootContent[]; shift: number } {
  // A line end first, since the parser drops a byte-order mark that begins its text.
  const { children } = parserFor(piece).parse(`${defined}\n${piece}`);
  const before = defined.length;
  const nodes: RootContent[] =
    before === 0 ? children : children.filter((node) => node.position!.start.offset! > before);
  return { nodes, shift: from - before - 1 };
}

/** The next line past `least` that after a blank line goes on with nothing, and opens a plain block or, past `full`, any. */
function nextCut(text: string, least: number, full: number): number {
  for (let next = text.indexOf('\n', least); next >= 0; ) {
    const start = afterBlankLines(text, next);
    if (start === text.length) break;
    const blank = start > next + 1;
    if (blank && !mayGoOn(text, start) && (start > full || plainBlock(text, start) !== null)) return start;
    next = text.indexOf('\n', start);
  }
  return text.length;
}

/** The labels that the nodes define, at whatever depth. */
function gather(nodes: readonly Nodes[], into: Set<string>): void {
  const waiting = [...nodes];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (node.type === 'definition') into.add(fold(node.identifier));
    else if ('children' in node) for (const child of node.children) waiting.push(child);
  }
}

/** Definitions of those of the labels that the piece mentions: any will do, since where a link leads is not read. */
function definitionsFor(piece: string, labels: ReadonlySet<string>): string {
  if (labels.size === 0 || !piece.includes('[')) return '';
  const used = new Set<string>();
  // A line of a label may begin with the marks of the quote that it stands in.
  for (const [, label] of piece.matchAll(LABEL)) used.add(fold(label!.replace(/[\r\n][\t >]+/g, ' ')));
  return [...used].map((label) => (labels.has(label) ? `[${label}]: x\n` : '')).join('');
}

const LABEL = /\[((?:[^[\]\\]|\\.)+)\]/gs;

/** The form in which Markdown compares labels. */
function fold(label: string): string {
  return label
    .replace(/[\t\r\n ]+/g, ' ')
    .trim()
    .toLowerCase()
    .toUpperCase();
}
