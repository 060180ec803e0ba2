/** Turns a file of the manuscript into blocks whose text knows its place in the source. */
import type {
  BlockContent,
  DefinitionContent,
  ListItem as MdastItem,
  Table as MdastTable,
  RootContent,
} from 'mdast';
import { readFront } from './front.js';
import { flatten, type Surroundings, wrapping } from './inline.js';
import { LineIndex } from './lines.js';
import { parser } from './markdown.js';
import type { Passage } from './passage.js';
import { onlyComments, StetFinder } from './stets.js';
import type { Block, FrontField, ListItem, Page, SourceFile, Span } from './types.js';

/** The page of a file. Every text has one: what Markdown cannot make sense of is text. */
export function openPage(file: SourceFile): Page {
  const { path, text } = file;
  const lines = new LineIndex(text);
  const stets = new StetFinder(text, lines);
  const shift = text.charCodeAt(0) === BYTE_ORDER_MARK ? 1 : 0;
  const onHtml = (start: number, end: number): void => {
    stets.look(start, end);
  };
  const around: Around = {
    source: text,
    shift,
    quotes: 0,
    onHtml,
    depth: 0,
    span: (node) => spanOf(node, shift),
  };
  let front: readonly FrontField[] = [];
  const children = parser.parse(text).children;
  const first = children[0];
  if (first?.type === 'yaml') {
    const span = around.span(first);
    front = readFront(text, span.start, span.end);
  }
  return { path, text, lines, front, blocks: blocksOf(children, around), stets: stets.found };
}

const BYTE_ORDER_MARK = 0xfeff;
/** Deeper nesting than any author's is not followed, so that a hostile file cannot exhaust the stack. */
const DEEPEST_NESTING = 60;

interface Around extends Surroundings {
  readonly depth: number;
  readonly span: (node: Placed) => Span;
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

function blocksOf(nodes: readonly AnyBlock[], around: Around): Block[] {
  const blocks: Block[] = [];
  for (const node of nodes) {
    const span = around.span(node);
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

/** Numbers are as printed; where all are printed alike ("1." before every item) they count as they will be shown. */
function itemsOf(nodes: readonly MdastItem[], first: number | null, around: Around): ListItem[] {
  const printed = nodes.map((node) => printedNumber(around.source, around.span(node).start));
  const alike = printed.every((number) => number === printed[0]);
  return nodes.map((node, index) => ({
    number: first === null ? null : alike ? first + index : printed[index]!,
    blocks: blocksOf(node.children, around),
    span: around.span(node),
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
    row.children.map((cell) => flatten(cell.children, around.span(cell).start, around)),
  );
}

function inside(around: Around, quotes: number): Around {
  return { ...around, quotes: around.quotes + quotes, depth: around.depth + 1 };
}

function spanOf(node: Placed, shift: number): Span {
  return { start: (node.position?.start.offset ?? 0) + shift, end: (node.position?.end.offset ?? 0) + shift };
}
