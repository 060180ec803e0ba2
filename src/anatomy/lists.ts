/** Takes the listings out of the blocks of an ingredient list, and sorts them into components. */
import { isJoiner } from '../larder/headings.js';
import { fold } from '../larder/names.js';
import type { Passage } from '../manuscript/passage.js';
import type { List, ListItem, Table } from '../manuscript/types.js';
import { readFields } from './fields.js';
import { cleanName, type Head, headOf, headOfLine, namesPart, PLAIN_DEPTH } from './heads.js';
import { instructs, type LineJudge, startsWithAmount, wordCount } from './language.js';
import type { Content } from './sections.js';
import { rowsOf } from './tables.js';
import { withoutMark } from './texts.js';
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
    const inner = rest.flatMap((block) => (block.type === 'list' ? block.items : []));
    const before = this.group;
    let headed = false;
    let amount = false;
    if (first.type === 'paragraph' || first.type === 'heading') {
      const wrapped = first.type === 'paragraph' ? first.wrapped : 'strong';
      const { text } = first.passage;
      amount = startsWithAmount(text);
      const colon = text.trimEnd().endsWith(':');
      const mayHead = (inner.length > 0 || colon || wrapped !== null) && !text.includes('\n');
      const head = mayHead ? headOfLine(first.passage.trim(), first.span, wrapped, true) : null;
      // A bold food without anything below it is a listing; a colon or an inner list makes a component.
      headed = head !== null && (inner.length > 0 || head.of !== null || colon);
      if (headed) this.enter(head);
      else if (inner.length > 0 && this.isRemark(text)) this.asides.push(first.passage);
      else if (
        inner.length > 0 &&
        !amount &&
        (mostlyAmounts(inner) || (namesPart(text) && inner.some(opensWithAmount)))
      ) {
        this.enter(headOf(first.passage.trim(), first.span, PLAIN_DEPTH));
        headed = true;
      } else this.addLine(first.passage);
    } else if (first.type === 'list') this.addList(first);
    for (const block of rest) if (block.type === 'paragraph') this.asides.push(block.passage);
    for (const sub of inner) this.addInner(sub, amount);
    // The bullets of the next item are no longer inside.
    if (headed && inner.length > 0) this.enter(before);
  }

  /** A bullet below a listing is one more listing if it reads so, else a remark on it. */
  private addInner(item: ListItem, ofAmount: boolean): void {
    const first = item.blocks[0];
    if (first?.type !== 'paragraph') return;
    const text = first.passage.text.trim();
    const short = !/[.!?]$/.test(text) && wordCount(text) <= LONGEST_INNER && !instructs(text);
    // "Or spelt flour" and "fresh if possible" say something of the listing above.
    const aside = isJoiner(fold(/^\p{L}*/u.exec(text)![0]));
    const named = short && !ofAmount && !/\bif\b/i.test(text);
    const listing = !aside && (startsWithAmount(text) || named || this.judge.kind(text) === 'food');
    if (listing) this.addItem(item);
    else this.asides.push(first.passage);
  }

  /** A sentence over inner bullets says something of them and lists nothing: "Use any of these:". */
  private isRemark(text: string): boolean {
    return wordCount(text) > LONGEST_INNER && !startsWithAmount(text);
  }

  /** Lines of a paragraph are listings where it has several, or where its one line opens with an amount. */
  private addParagraph(passage: Passage): void {
    const lines = linesOf(passage);
    const parts = lines.length === 1 ? this.series(lines[0]!) : lines;
    if (parts.length === 1) {
      const { text } = passage;
      const kind = this.judge.kind(text);
      const food = kind === 'food' || kind === 'amount';
      if (
        (kind === 'amount' || kind === 'figure') &&
        startsWithAmount(text) &&
        wordCount(text) <= LONGEST_LONE_LINE
      )
        this.addLine(passage);
      else if (food && !/[.!?:]$/.test(text.trim()) && !instructs(text)) this.addLine(passage);
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

  /** "2 lb apples, 2 cups vinegar, salt" in one line is a list: its parts, where two of them or more open with an amount. */
  private series(line: Passage): Passage[] {
    const { text } = line;
    const starts = [0];
    let amounts = startsWithAmount(text) ? 1 : 0;
    for (const { index, 0: comma } of text.matchAll(/[,;]\s+(?:and\s+)?/g)) {
      const next = index + comma.length;
      const part = /^[^,;]*/.exec(text.slice(next))![0];
      const amount = startsWithAmount(part);
      if (amount) amounts++;
      // What names no food goes on with the listing before it: "2 onions, sliced".
      if (amount || this.judge.kind(part.replace(/\.$/, '')) === 'food') starts.push(next);
    }
    if (amounts < 2) return [line];
    return starts.map((start, index) => {
      const part = line.slice(start, starts[index + 1] ?? text.length);
      return part.slice(0, part.text.replace(/[,;.]?\s*(?:\band)?\s*$/, '').length);
    });
  }

  private addTable(table: Table): void {
    for (const { is, passage } of rowsOf(table)) {
      const head = headOf(passage, passage.span(), PLAIN_DEPTH);
      if (is === 'sum') this.asides.push(passage);
      else if (is === 'head' || this.headsRows(head)) this.enter(head);
      else this.addLine(passage);
    }
  }

  /** Words alone in their row are a heading by what they say: "For the cake", "Topping", "Dough:". */
  private headsRows(head: Head): boolean {
    const { text } = head.passage;
    if (startsWithAmount(text) || text.includes(',')) return false;
    if (head.of !== null || head.kind === 'serving' || text.endsWith(':')) return true;
    return namesPart(text) && this.judge.kind(text) !== 'food';
  }

  private addLine(passage: Passage): void {
    const line = withoutMark(passage.trim());
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

function mostlyAmounts(items: readonly ListItem[]): boolean {
  return items.filter(opensWithAmount).length * 2 > items.length;
}

function opensWithAmount({ blocks: [first] }: ListItem): boolean {
  return first?.type === 'paragraph' && startsWithAmount(first.passage.text);
}

function linesOf(passage: Passage): Passage[] {
  const lines: Passage[] = [];
  for (const match of passage.text.matchAll(/[^\n]+/g)) {
    const line = passage.slice(match.index, match.index + match[0].length).trim();
    if (line.text !== '') lines.push(line);
  }
  return lines;
}
