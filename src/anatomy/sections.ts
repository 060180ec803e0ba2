/** Parts a page at its headings, and says of each block what it reads as: a list, a method, or one of the other parts. */
import type { HeadingKind } from '../larder/headings.js';
import type { Passage } from '../manuscript/passage.js';
import type { Block, Heading, List, Paragraph } from '../manuscript/types.js';
import { CLEAR, type Evidence, evidenceOf, NONE, POSSIBLE } from './evidence.js';
import { readFields, yieldRemark } from './fields.js';
import { BOLD_DEPTH, type Head, headOf, headOfHeading, headOfLine, PLAIN_DEPTH } from './heads.js';
import { instructs, type LineJudge, startsWithAmount, wordCount } from './language.js';

/** A block that can hold text; heads have been taken out of paragraphs, and quotes opened. */
export type Content = Exclude<Block, { type: 'heading' | 'quote' | 'break' | 'code' | 'html' }>;

export interface Piece {
  readonly block: Content;
  readonly reads: Evidence;
}

export interface Section {
  readonly head: Head | null;
  /** The part of a recipe in which it stands by its heading or one above it; null where no heading tells. */
  readonly scope: HeadingKind | null;
  /** Whether its head may be the title of a recipe: not a usual one, nor inside of a part. */
  readonly candidate: boolean;
  /** Whether it is a part of the list or method above it, though its heading is a usual one. */
  readonly inner: boolean;
  /** Whether a thematic break stands before it. */
  readonly parted: boolean;
  /** Its place among the page's sections. */
  readonly order: number;
  readonly pieces: Piece[];
}

export function sectionsOf(blocks: readonly Block[], judge: LineJudge): Section[] {
  const entries = entriesOf(blocks);
  const sections: Section[] = [];
  const scopes: { kind: HeadingKind; depth: number }[] = [];
  let current: Section = open(null);
  for (let index = 0; index < entries.length; index++) {
    const entry = entries[index]!;
    if (entry.type === 'head') current = enter(asList(entry.head, index), index);
    else if (entry.type === 'break') {
      // A rule right under a heading only underlines it.
      if (current.head !== null && current.pieces.length === 0) continue;
      // What follows a break is judged by itself; a heading's part goes no further than its rule.
      scopes.length = 0;
      current = open(null, { parted: true });
    } else {
      const head = isPart(current.scope) ? bareHead(entry, entries[index + 1]) : null;
      if (head !== null) current = enter(head, index);
      else current.pieces.push({ block: entry, reads: evidenceOf(entry, current.scope, judge) });
    }
  }
  for (const section of sections) listBeforeSteps(section.pieces);
  return sections;

  function open(
    head: Head | null,
    marks: Partial<Pick<Section, 'candidate' | 'inner' | 'parted'>> = {},
  ): Section {
    const section: Section = {
      head,
      scope: scopes.at(-1)?.kind ?? null,
      candidate: false,
      inner: false,
      parted: false,
      ...marks,
      order: sections.length,
      pieces: [],
    };
    sections.push(section);
    return section;
  }

  function enter(head: Head, index: number): Section {
    let closed: { kind: HeadingKind; depth: number } | undefined;
    while (scopes.length > 0 && scopes.at(-1)!.depth >= head.depth) closed = scopes.pop();
    const within = scopes.at(-1)?.kind ?? null;
    const kind = head.kind;
    if (kind === null || kind === 'serving' || kind === 'alternative') {
      // "For the glaze" beside "Ingredients" instead of below it goes on with the list.
      const part = closed !== undefined && isPart(closed.kind) ? closed : null;
      const beside = part !== null && (head.of !== null || kind !== null || goesOn(part.kind, index));
      if (beside) scopes.push(part);
      else if (within !== null && kind === null && head.of === null && opensRecipe(index)) scopes.length = 0;
      const inside = scopes.length > 0;
      return open(head, { candidate: !inside && kind === null && head.of === null });
    }
    if (kind === 'recipe') {
      scopes.length = 0;
      return open(head);
    }
    // "Preparation" over a list of ingredients, or below a method, is a part of that.
    const stays =
      (kind === within && isPart(kind)) || (kind === 'method' && within === 'list' && listFollows(index));
    if (!stays) scopes.push({ kind, depth: head.depth });
    return open(head, { inner: stays });
  }

  /**
   * Whether a name at the depth of the heading above goes on with what that heads: nothing stands below it yet,
   * or the next usual heading after the list's is the method's.
   */
  function goesOn(kind: HeadingKind, index: number): boolean {
    if (current.scope === kind && current.head?.kind === kind && current.pieces.length === 0)
      return !opensRecipe(index);
    if (kind === 'method') return current.head?.kind !== 'method' && methodFollows(index);
    for (let next = index + 1; next < entries.length; next++) {
      const entry = entries[next]!;
      if (entry.type === 'break') return false;
      if (entry.type === 'head' && entry.head.kind !== null) return entry.head.kind === 'method';
    }
    return false;
  }

  /** Whether numbered steps come next: then a name below the method's heading, among others like it, heads a group of them. */
  function methodFollows(index: number): boolean {
    const next = entries[index + 1];
    return next?.type === 'list' && next.ordered && evidenceOf(next, null, judge).method > NONE;
  }

  /** "Shopping list" right before "Method" is the list of that recipe. */
  function asList(head: Head, index: number): Head {
    if (head.kind !== 'matter') return head;
    const next = entries.slice(index + 1, index + 4).find((entry) => entry.type === 'head');
    return next?.type === 'head' && next.head.kind === 'method' ? { ...head, kind: 'list' } : head;
  }

  /** Whether the next head is a usual one over a list, with no list before it: then this one names a recipe. */
  function opensRecipe(index: number): boolean {
    for (let next = index + 1; next < entries.length; next++) {
      const entry = entries[next]!;
      if (entry.type === 'head') return entry.head.kind === 'list' && entry.head.of === null;
      if (entry.type !== 'paragraph') return false;
    }
    return false;
  }

  function listFollows(index: number): boolean {
    const next = entries[index + 1];
    return next !== undefined && next.type === 'list' && evidenceOf(next, null, judge).list > 0;
  }
}

/** A list with a few foods in it, right before numbered steps, is their ingredients. */
function listBeforeSteps(pieces: Piece[]): void {
  for (let index = 1; index < pieces.length; index++) {
    const before = pieces[index - 1]!;
    if (pieces[index]!.reads.method !== CLEAR || !before.reads.faint) continue;
    pieces[index - 1] = { block: before.block, reads: { ...before.reads, list: POSSIBLE } };
  }
}

/** Below a heading for the list or the method, a few bare words right over a list name a part of it. */
function bareHead(entry: Content, next: Entry | undefined): Head | null {
  if (entry.type !== 'paragraph' || next?.type !== 'list') return null;
  const text = entry.passage.text;
  if (
    !/\p{L}/u.test(text) ||
    wordCount(text) > MOST_BARE_WORDS ||
    /[.!?,;)\n]/.test(text) ||
    startsWithAmount(text) ||
    instructs(text)
  )
    return null;
  if (yieldRemark(entry.passage) !== null) return null;
  return headOf(entry.passage, entry.span, PLAIN_DEPTH);
}

const MOST_BARE_WORDS = 5;

function isPart(kind: HeadingKind | null): boolean {
  return kind === 'list' || kind === 'method';
}

type Entry = Content | { readonly type: 'break' } | { readonly type: 'head'; readonly head: Head };

function entriesOf(blocks: readonly Block[]): Entry[] {
  const entries: Entry[] = [];
  for (let index = 0; index < blocks.length; index++) {
    const block = blocks[index]!;
    if (block.type === 'heading') headingEntries(block, entries);
    else if (block.type === 'paragraph') paragraphEntries(block, blocks[index + 1], entries);
    else if (block.type === 'quote') for (const inner of entriesOf(block.blocks)) entries.push(inner);
    else if (block.type === 'list') listEntries(block, entries);
    else if (block.type === 'table') entries.push(block);
    else if (block.type === 'break') entries.push({ type: 'break' });
  }
  return entries;
}

/** A heading without words parts nothing, and one that states the yield is a line like any other. */
function headingEntries(block: Heading, into: Entry[]): void {
  const { passage, span } = block;
  if (readFields(passage) !== null) into.push({ type: 'paragraph', passage, wrapped: null, span });
  else if (passage.text.trim() !== '') into.push({ type: 'head', head: headOfHeading(block) });
}

/** A paragraph, parted at those of its lines that are heads. */
function paragraphEntries(block: Paragraph, next: Block | undefined, into: Entry[]): void {
  const text = block.passage.text;
  if (text.trim() === '') return;
  let from = 0;
  const flush = (to: number): void => {
    const passage = block.passage.slice(from, to).trim();
    if (passage.text !== '')
      into.push({ type: 'paragraph', passage, wrapped: block.wrapped, span: passage.span() });
  };
  if (!text.includes('\n')) {
    const beforeList = next?.type === 'list' || next?.type === 'table';
    const line = block.passage.trim();
    const head = headOfLine(line, block.span, block.wrapped, beforeList);
    if (head !== null) into.push({ type: 'head', head });
    else flush(text.length);
    return;
  }
  for (let start = 0; start < text.length; ) {
    const end = text.indexOf('\n', start) < 0 ? text.length : text.indexOf('\n', start);
    const head =
      end - start > LONGEST_INNER_HEAD
        ? null
        : innerHead(block.passage.slice(start, end).trim(), text.slice(end + 1));
    if (head !== null) {
      flush(start);
      into.push({ type: 'head', head });
      from = end + 1;
    }
    start = end + 1;
  }
  flush(text.length);
}

const LONGEST_INNER_HEAD = 60;

/** A line within a paragraph is a head only by its words; a component's also needs amounts on the line after it. */
function innerHead(line: Passage, after: string): Head | null {
  const head = headOfLine(line, line.span(), null, startsWithAmount(after));
  if (head === null || head.kind === 'notes') return null;
  return head.kind !== null || startsWithAmount(after) ? head : null;
}

/** A list whose bullets are themselves the heads of lists: "- Ingredients" over bullets of the next level. */
function listEntries(list: List, into: Entry[]): void {
  const heads = list.items.map((item) => {
    const [first, ...rest] = item.blocks;
    if (first?.type !== 'paragraph' || rest.length === 0) return null;
    return headOfLine(first.passage.trim(), first.span, first.wrapped, false);
  });
  if (!heads.some((head) => head?.kind === 'list' || head?.kind === 'method')) {
    into.push(list);
    return;
  }
  list.items.forEach((item, index) => {
    const head = heads[index];
    if (head) {
      into.push({ type: 'head', head: { ...head, depth: Math.max(head.depth, BOLD_DEPTH) } });
      for (const entry of entriesOf(item.blocks.slice(1))) into.push(entry);
    } else into.push({ type: 'list', ordered: list.ordered, items: [item], span: item.span });
  });
}
