/** Turns a file of the manuscript into blocks whose text knows its place in the source. */
import { blocksOf } from './blocks.js';
import { readFront } from './front.js';
import { LineIndex } from './lines.js';
import { LinkFinder } from './links.js';
import { frontEnd, piecesOf } from './pieces.js';
import { StetFinder } from './stets.js';
import type { Block, Page, SourceFile } from './types.js';

/** The page of a file. Every text has one: what Markdown cannot make sense of is text. */
export function openPage(file: SourceFile): Page {
  const { path, text } = file;
  const lines = new LineIndex(text);
  const stets = new StetFinder(text, lines);
  const shift = text.charCodeAt(0) === BYTE_ORDER_MARK ? 1 : 0;
  const onHtml = (start: number, end: number): void => {
    stets.look(start, end);
  };
  const links = new LinkFinder();
  const onLink: LinkFinder['look'] = (node, start, end) => {
    links.look(node, start, end);
  };
  const end = frontEnd(text, shift);
  const front = end < 0 ? [] : readFront(text, shift, end);
  const blocks: Block[] = [];
  for (const piece of piecesOf(text, Math.max(shift, end))) {
    if ('block' in piece) blocks.push(piece.block);
    else {
      const around = { source: text, shift: piece.shift, quotes: 0, depth: 0, onHtml, onLink };
      for (const block of blocksOf(piece.nodes, around)) blocks.push(block);
    }
  }
  return { path, text, lines, front, blocks, stets: stets.found, links: links.found() };
}

const BYTE_ORDER_MARK = 0xfeff;
