/** Turns the parser's tree into blocks whose text knows its place in the source. */
import type {
  BlockContent,
  DefinitionContent,
  ListItem as MdastItem,
  Table as MdastTable,
  RootContent,
} from 'mdast';
import { flatten, type Surroundings, wrapping } from './inline.js';
import type { Passage } from './passage.js';
import { itemNumbers } from './plain.js';
import { onlyComments } from './stets.js';
import type { Block, ListItem, Span } from './types.js';

/** The blocks that the nodes of the tree are, with their text. */
export function blocksOf(nodes: readonly AnyBlock[], around: Around): Block[] {
  const blocks: Block[] = [];
  for (const node of nodes) {
    const span = spanOf(node, around);
    switch (node.type) {
      case 'heading':
        blocks.push({
          type: 'heading',
          depth: node.depth,
          passage: flatten(node.children, span.start, around),
          span,
        });
        break;
      case 'paragraph':
        blocks.push({
          type: 'paragraph',
          passage: flatten(node.children, span.start, around),
          wrapped: wrapping(node),
          span,
        });
        break;
      case 'list':
        if (around.depth > DEEPEST_NESTING) break;
        blocks.push({
          type: 'list',
          ordered: node.ordered === true,
          items: itemsOf(node.children, node.ordered === true ? (node.start ?? 1) : null, inside(around, 0)),
          span,
        });
        break;
      case 'blockquote':
        if (around.depth > DEEPEST_NESTING) break;
        blocks.push({ type: 'quote', blocks: blocksOf(node.children, inside(around, 1)), span });
        break;
      case 'table':
        blocks.push({ type: 'table', rows: rowsOf(node, around), span });
        break;
      case 'html':
        around.onHtml(span.start, span.end);
        // A comment is not on the page, so it parts nothing.
        if (!onlyComments(around.source, span.start, span.end)) blocks.push({ type: 'html', span });
        break;
      case 'definition':
        around.onLink(node, span.start, span.end);
        break;
      case 'code':
        blocks.push({ type: 'code', span });
        break;
      case 'thematicBreak':
        blocks.push({ type: 'break', span });
        break;
    }
  }
  return blocks;
}

/** Deeper nesting than any author's is not followed, so that a hostile file cannot exhaust the stack. */
const DEEPEST_NESTING = 60;

/** Where a block stands: also how deep. */
export interface Around extends Surroundings {
  readonly depth: number;
}

interface Placed {
  readonly position?:
    | {
        readonly start: { readonly offset?: number | undefined };
        readonly end: { readonly offset?: number | undefined };
      }
    | undefined;
}

type AnyBlock = RootContent | BlockContent | DefinitionContent;

function itemsOf(nodes: readonly MdastItem[], first: number | null, around: Around): ListItem[] {
  const printed = nodes.map((node) => printedNumber(around.source, spanOf(node, around).start));
  const numbers = first === null ? [] : itemNumbers(printed, first);
  return nodes.map((node, index) => ({
    number: numbers[index] ?? null,
    blocks: blocksOf(node.children, around),
    span: spanOf(node, around),
  }));
}

function printedNumber(source: string, start: number): number {
  let number = 0;
  for (let at = start; source.charCodeAt(at) >= 48 && source.charCodeAt(at) <= 57; at++) {
    number = number * 10 + source.charCodeAt(at) - 48;
  }
  return number;
}

function rowsOf(table: MdastTable, around: Around): Passage[][] {
  return table.children.map((row) =>
    row.children.map((cell) => flatten(cell.children, spanOf(cell, around).start, around)),
  );
}

function inside(around: Around, quotes: number): Around {
  return { ...around, quotes: around.quotes + quotes, depth: around.depth + 1 };
}

function spanOf(node: Placed, { shift }: Around): Span {
  return { start: (node.position?.start.offset ?? 0) + shift, end: (node.position?.end.offset ?? 0) + shift };
}
