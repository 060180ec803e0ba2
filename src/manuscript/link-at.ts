/** Finds the link that stands at a place of a page, and the headings that a link can lead to. */
import type { Link, Nodes, Text } from 'mdast';
import { parser } from './markdown.js';
import type { Block, Heading, Page, Span } from './types.js';

export interface LinkAt {
  readonly span: Span;
  /** As written, without the part behind "#". */
  readonly path: string;
  /** Behind "#", decoded; empty where there is none. */
  readonly anchor: string;
}

/** The link around an offset; null where none is. Only the block around it is parsed: a page keeps no tree. */
export function linkAt(page: Page, offset: number): LinkAt | null {
  const block = page.blocks.find(({ span }) => span.start <= offset && offset <= span.end);
  if (block === undefined) return null;
  const link = find(
    parser.parse(page.text.slice(block.span.start, block.span.end)),
    offset - block.span.start,
  );
  if (link === null) return null;
  const [path = '', anchor = ''] = link.url.split('#', 2);
  return {
    span: {
      start: block.span.start + link.position!.start.offset!,
      end: block.span.start + link.position!.end.offset!,
    },
    path: decoded(path),
    anchor: decoded(anchor),
  };
}

/** The heading that "#anchor" means, by the usual rule of Markdown hosts; null where the page has none. */
export function headingNamed(page: Page, anchor: string): Heading | null {
  return (
    headingsIn(page.blocks).find(({ passage }) => anchorOf(passage.text) === anchor.toLowerCase()) ?? null
  );
}

function find(node: Nodes | Text, offset: number): Link | null {
  const { start, end } = node.position!;
  if (offset < start.offset! || offset > end.offset!) return null;
  if (node.type === 'link') return node;
  for (const child of 'children' in node ? node.children : []) {
    const found = find(child, offset);
    if (found !== null) return found;
  }
  return null;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

function headingsIn(blocks: readonly Block[]): Heading[] {
  return blocks.flatMap((block) =>
    block.type === 'heading' ? [block] : block.type === 'quote' ? headingsIn(block.blocks) : [],
  );
}

/** Lower case, without punctuation, hyphens for spaces: the rule that the common hosts share. */
function anchorOf(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\p{M}\s_-]/gu, '')
    .trim()
    .replace(/\s/g, '-');
}
