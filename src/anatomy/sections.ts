/** Parts a page at its headings, and says of each block what it reads as: a list, a method, or one of the other parts. */
import type { HeadingKind } from '../larder/headings.js';
import type { Passage } from '../manuscript/passage.js';
import type { Block, Heading, List, Paragraph } from '../manuscript/types.js';
import { CLEAR, type Evidence, evidenceOf, itemTexts, NONE, POSSIBLE } from './evidence.js';
import { readFields, yieldRemark } from './fields.js';
import { BOLD_DEPTH, type Head, headOf, headOfHeading, headOfLine, isOrder, PLAIN_DEPTH } from './heads.js';
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
  /** Whether its heading names a part with a list of its own, and perhaps steps, apart from the list and the method of the whole. */
  readonly component: boolean;
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
  let ahead = { at: 0, method: false };
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
      const head = isPart(current.scope) ? bareHead(entry, entries[index + 1], judge) : null;
      if (head !== null) current = enter(head, index);
      else current.pieces.push({ block: entry, reads: evidenceOf(entry, current.scope, judge) });
    }
  }
  for (const section of sections) listBeforeSteps(section.pieces);
  return sections;

  function open(
    head: Head | null,
    marks: Partial<Pick<Section, 'scope' | 'candidate' | 'inner' | 'component' | 'parted'>> = {},
  ): Section {
    const section: Section = {
      head,
      scope: scopes.at(-1)?.kind ?? null,
      candidate: false,
      inner: false,
      component: false,
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
      const after = within ?? closed?.kind ?? null;
      // Past the method, a name over a list of amounts is a part with a list of its own.
      if (kind !== 'alternative' && after !== null && PAST_LIST.has(after) && !opensRecipe(index)) {
        const named = within !== null || kind !== null || head.of !== null;
        if (named && amountsFollow(index)) return open(head, { component: true, scope: null });
      }
      const beside = part !== null && (head.of !== null || kind !== null || goesOn(part.kind, index));
      if (beside) scopes.push(part);
      else if (within !== null && kind === null && head.of === null && opensRecipe(index)) scopes.length = 0;
      const inside = scopes.length > 0;
      return open(head, { candidate: !inside && kind === null && head.of === null });
    }
    // "Assembly" over a list of amounts heads that list, where another heading or text is the method.
    if (
      kind === 'method' &&
      within !== 'list' &&
      (closed !== undefined || within !== null || sections.some(holdsList)) &&
      amountsFollow(index)
    ) {
      const other = closed?.kind === 'method' || within === 'method' || methodElsewhere(index, head.depth);
      if (other) return open(head, { component: true, scope: null });
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
    return methodAhead(index);
  }

  /** Whether the next usual heading is the method's. All heads up to it share one look, for there may be heaps of them. */
  function methodAhead(index: number): boolean {
    if (ahead.at <= index) {
      let at = index + 1;
      for (; at < entries.length; at++) {
        const entry = entries[at]!;
        if (entry.type === 'break' || (entry.type === 'head' && entry.head.kind !== null)) break;
      }
      const entry = entries[at];
      ahead = { at, method: entry?.type === 'head' && entry.head.kind === 'method' };
    }
    return ahead.method;
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

  /** Whether a list of amounts comes next, past remarks and a stated yield. */
  function amountsFollow(index: number): boolean {
    for (let next = index + 1; next < entries.length && next < index + MOST_BEFORE_LIST; next++) {
      const entry = entries[next]!;
      // Steps are the usual case, and need not be read to see that no amount opens any.
      if (entry.type === 'list' && entry.ordered && !itemTexts(entry).some(startsWithAmount)) return false;
      if (entry.type === 'list' || entry.type === 'table') {
        const { list, single } = evidenceOf(entry, null, judge);
        return list === CLEAR || single || ((entry.type === 'table' || !entry.ordered) && list > NONE);
      }
      if (entry.type !== 'paragraph') return false;
      if (evidenceOf(entry, null, judge).list === CLEAR) return true;
      if (instructs(entry.passage.text)) return false;
    }
    return false;
  }

  /** Whether text after the list that comes next, or a heading beside this one, is a method. */
  function methodElsewhere(index: number, depth: number): boolean {
    for (let next = index + 2; next < entries.length; next++) {
      const entry = entries[next]!;
      if (entry.type === 'break') return false;
      if (entry.type === 'head') {
        if (entry.head.depth < depth) return false;
        if (entry.head.kind === 'method') return true;
      } else if (next < index + MOST_BEFORE_LIST && evidenceOf(entry, null, judge).method > NONE) return true;
    }
    return false;
  }

  function listFollows(index: number): boolean {
    const next = entries[index + 1];
    return next !== undefined && next.type === 'list' && evidenceOf(next, null, judge).list > 0;
  }
}

function holdsList(section: Section): boolean {
  return section.pieces.some(({ reads }) => reads.list >= CLEAR);
}

const MOST_BEFORE_LIST = 4;

/** Parts after which the list of the recipe is closed. */
const PAST_LIST: ReadonlySet<HeadingKind> = new Set(['method', 'storage', 'serving']);

/** A list with a few foods in it, right before numbered steps, is their ingredients. */
function listBeforeSteps(pieces: Piece[]): void {
  for (let index = 1; index < pieces.length; index++) {
    const before = pieces[index - 1]!;
    if (pieces[index]!.reads.method !== CLEAR || !before.reads.faint) continue;
    pieces[index - 1] = { block: before.block, reads: { ...before.reads, list: POSSIBLE } };
  }
}

/** Below a heading for the list or the method, a few bare words right over a list name a part of it. */
function bareHead(entry: Content, next: Entry | undefined, judge: LineJudge): Head | null {
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
  // "A cinnamon stick" between two lists is one more listing.
  if (yieldRemark(entry.passage) !== null || judge.kind(text) === 'amount') return null;
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
    // Over bullets that name foods an order is a step; over steps it is their heading.
    const bullets = next?.type === 'list' && !next.ordered && block.wrapped === null ? next : null;
    const order = bullets !== null && isOrder(line.text) && !instructs(firstText(bullets));
    if (head !== null && !order) into.push({ type: 'head', head });
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

function firstText(list: List): string {
  const first = list.items[0]?.blocks[0];
  return first?.type === 'paragraph' ? first.passage.text : '';
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
