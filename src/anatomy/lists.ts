/** Takes the listings out of the blocks of an ingredient list, and sorts them into components. */
import { headingKind } from '../larder/headings.js';
import { Passage } from '../manuscript/passage.js';
import type { List, ListItem, Table } from '../manuscript/types.js';
import { readFields } from './fields.js';
import { cleanName, type Head, headOf, headOfLine, PLAIN_DEPTH } from './heads.js';
import { instructs, type LineJudge, startsWithAmount, wordCount } from './language.js';
import type { Content } from './sections.js';
import type { Component, Listing } from './types.js';

export class ListBuilder {
  readonly components: Component[] = [];
  readonly listings: Listing[] = [];
  /** Text among the listings that is none. */
  readonly asides: Passage[] = [];
  private group: Head | null = null;
  private current: { heading: Passage | null; listings: Listing[] } | null = null;
  /** Set once a list in one kind of measures is read: another kind says the same again. */
  private alternative: string | null = null;
  private skipping = false;

  constructor(private readonly judge: LineJudge) {}

  /** What follows belongs to the component under `head`, or to the unnamed one. */
  enter(head: Head | null): void {
    this.skipping = false;
    if (head?.kind === 'alternative') {
      const said = head.passage.text.toLowerCase();
      this.skipping = this.alternative !== null && this.alternative !== said && this.listings.length > 0;
      this.alternative ??= said;
      return;
    }
    if (head === this.group && this.current !== null) return;
    this.group = head;
    this.current = null;
  }

  add(block: Content): void {
    if (block.type === 'list') this.addList(block);
    else if (block.type === 'table') this.addTable(block);
    else this.addParagraph(block.passage);
  }

  private addList(list: List): void {
    for (const item of list.items) this.addItem(item);
  }

  private addItem(item: ListItem): void {
    const [first, ...rest] = item.blocks;
    if (first === undefined) return;
    const inner = rest.some((block) => block.type === 'list');
    if (first.type === 'paragraph' || first.type === 'heading') {
      const wrapped = first.type === 'paragraph' ? first.wrapped : 'strong';
      const colon = first.passage.text.trimEnd().endsWith(':');
      const mayHead = (inner || colon || wrapped !== null) && !first.passage.text.includes('\n');
      const head = mayHead ? headOfLine(first.passage.trim(), first.span, wrapped, true) : null;
      // A bold food without anything below it is a listing; a colon or an inner list makes a component.
      const open = inner && head === null && this.isRemark(first.passage.text);
      if (open) this.asides.push(first.passage);
      else if (head !== null && (inner || head.of !== null || colon)) this.enter(head);
      else this.addLine(first.passage);
    } else if (first.type === 'list') this.addList(first);
    for (const block of rest) {
      if (block.type === 'list') for (const sub of block.items) this.addInner(sub);
      else if (block.type === 'paragraph') this.asides.push(block.passage);
    }
  }

  /** A bullet below a listing is one more listing if it reads so, else a remark on it. */
  private addInner(item: ListItem): void {
    const first = item.blocks[0];
    if (first?.type !== 'paragraph') return;
    const text = first.passage.text.trim();
    const short = !/[.!?]$/.test(text) && wordCount(text) <= LONGEST_INNER && !instructs(text);
    const listing = startsWithAmount(text) || short || this.judge.kind(text) === 'food';
    if (listing) this.addItem(item);
    else this.asides.push(first.passage);
  }

  /** A sentence over inner bullets says something of them and lists nothing: "Use any of these:". */
  private isRemark(text: string): boolean {
    return wordCount(text) > LONGEST_INNER && !startsWithAmount(text);
  }

  /** Lines of a paragraph are listings where it has several, or where its one line opens with an amount. */
  private addParagraph(passage: Passage): void {
    const text = passage.text;
    const parts = linesOf(passage);
    if (parts.length === 1) {
      const kind = this.judge.kind(text);
      if ((kind === 'amount' || kind === 'figure') && wordCount(text) <= LONGEST_LONE_LINE)
        this.addLine(passage);
      else if (kind === 'food' && !/[.!?:]$/.test(text.trim()) && !instructs(text)) this.addLine(passage);
      else this.asides.push(passage);
      return;
    }
    const kinds = parts.map((part) => this.judge.kind(part.text));
    const listed = kinds.filter((kind) => kind === 'amount' || kind === 'figure' || kind === 'food').length;
    if (listed * 2 < parts.length) {
      this.asides.push(passage);
      return;
    }
    for (const part of parts) {
      const head = headOfLine(part, part.span(), null, true);
      if (head !== null) this.enter(head);
      else this.addLine(part);
    }
  }

  private addTable(table: Table): void {
    const [header, ...rows] = table.rows;
    const headed = header === undefined || isColumnHeader(header);
    const order = header === undefined ? 'as-is' : columnOrder(header);
    for (const row of headed || header === undefined ? rows : [header, ...rows]) {
      const cells = row.filter((cell) => cell.text.trim() !== '');
      if (cells.length === 1 && row.length > 1 && !startsWithAmount(cells[0]!.text)) {
        const alone = cells[0]!.trim();
        const head = headOf(alone, alone.span(), PLAIN_DEPTH);
        // Words where the amounts should be head what is below them; a food alone in its own column lacks an amount.
        if (head.of !== null || alone.text.endsWith(':') || (order === 'as-is' && row[0] === cells[0]))
          this.enter(head);
        else this.addLine(alone);
      } else this.addRow(row);
    }
  }

  /** One line of a row: amounts side by side say the same, and a comma keeps a food from an amount after it. */
  private addRow(row: readonly Passage[]): void {
    const parts: Passage[] = [];
    const amounts: Passage[] = [];
    const flush = (): void => {
      if (amounts.length > 0) parts.push(Passage.join(amounts.splice(0), ' / '));
    };
    for (const cell of row.map((each) => each.trim()).filter((each) => each.text !== '')) {
      if (startsWithAmount(cell.text)) amounts.push(cell);
      else {
        flush();
        parts.push(cell);
      }
    }
    flush();
    if (parts.length > 0) this.addLine(Passage.join(parts, startsWithAmount(parts[0]!.text) ? ' ' : ', '));
  }

  private addLine(passage: Passage): void {
    const line = withoutBullet(passage.trim());
    if (line.text === '') return;
    if (this.skipping || (!startsWithAmount(line.text) && readFields(line) !== null)) {
      this.asides.push(line);
      return;
    }
    if (this.current === null) {
      const heading = this.group?.passage ?? null;
      this.current = { heading, listings: [] };
      this.components.push({
        index: this.components.length,
        heading,
        name: this.group === null ? null : nameOf(this.group),
        listings: this.current.listings,
      });
    }
    const listing: Listing = {
      index: this.listings.length,
      passage: line,
      line: this.judge.listing(line.text),
      component: this.components.length - 1,
    };
    this.current.listings.push(listing);
    this.listings.push(listing);
  }
}

const LONGEST_INNER = 9;
const LONGEST_LONE_LINE = 14;

/** A heading that says for which steps its listings are names nothing. */
function nameOf(head: Head): string | null {
  const name = head.of ?? (head.kind === 'list' ? null : cleanName(head.passage.text));
  return name === null || /^steps? \d/.test(name) ? null : name;
}

function linesOf(passage: Passage): Passage[] {
  const lines: Passage[] = [];
  for (const match of passage.text.matchAll(/[^\n]+/g)) {
    const line = passage.slice(match.index, match.index + match[0].length).trim();
    if (line.text !== '') lines.push(line);
  }
  return lines;
}

/** Without a bullet that Markdown does not know ("•"), or the box of a list to be ticked off. */
function withoutBullet(line: Passage): Passage {
  const bullet = /^(?:\[[ xX]?\]|[•·▢☐□◦‣●○*–—-])\s+/.exec(line.text);
  return bullet === null ? line : line.slice(bullet[0].length);
}

function isColumnHeader(header: readonly Passage[]): boolean {
  return header.every(
    (cell) => cell.text.trim() === '' || (headingKind(cell.text) !== null && !startsWithAmount(cell.text)),
  );
}

/** Where the food stands before its amount, a comma between them keeps them apart. */
function columnOrder(header: readonly Passage[]): 'as-is' | 'name-first' {
  return header.length > 1 && headingKind(header[0]!.text) === 'list' ? 'name-first' : 'as-is';
}
