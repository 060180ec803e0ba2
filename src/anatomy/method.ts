/** Takes the steps out of the blocks of a method, and what stands among them without telling the cook to do anything. */
import { headingKind } from '../larder/headings.js';
import { Passage } from '../manuscript/passage.js';
import type { Block, List, ListItem, Table } from '../manuscript/types.js';
import { type Head, headOfLine } from './heads.js';
import { instructs, opensLikeOrder, tellsOfMaking } from './language.js';
import type { Content } from './sections.js';
import { opensAsStep, withoutMark } from './texts.js';
import type { Step } from './types.js';

interface Draft {
  readonly number: number | null;
  readonly passage: Passage;
  readonly heading: Passage | null;
  /** A paragraph of its own, with no heading to call it method, may yet turn out to be a closing remark. */
  readonly loose: boolean;
  /** Whether its heading stands over the listings right above it as well. */
  readonly shared: boolean;
}

export class MethodBuilder {
  /** Remarks between and after the steps. */
  readonly remarks: Passage[] = [];
  private readonly drafts: Draft[] = [];
  private heading: Passage | null = null;
  private shared = false;
  private numberOfHead: number | null = null;
  private listed = false;
  private numbered = false;

  /** The bold words at the head of a step are told by the text of the page. */
  constructor(private readonly source: string) {}

  get started(): boolean {
    return this.drafts.length > 0;
  }

  enter(head: Head | null): void {
    if (head?.passage !== this.heading) this.numbered = false;
    this.shared = false;
    this.heading = head?.passage ?? null;
    this.numberOfHead = head === null ? null : stepNumber(head.passage.text);
  }

  /** Tells that the heading last entered is that of listings: it says nothing of the steps below them. */
  shareHeading(): void {
    this.shared = true;
  }

  /** Takes the steps out of a block; `said` tells that a heading calls it the method. */
  add(block: Content, said: boolean): void {
    if (block.type === 'list') {
      if (this.numbered && !block.ordered && !this.drafts.at(-1)?.passage.text.endsWith(':')) {
        // Bullets after numbered steps are remarks on them.
        for (const item of block.items) sort(item.blocks, this.remarks, []);
        return;
      }
      this.addList(block);
      this.listed = true;
      this.numbered = block.ordered;
    } else if (block.type === 'table') this.addTable(block);
    else this.addParagraph(withoutMark(block.passage.trim()), said);
  }

  /**
   * The steps, in order; remarks after the last instruction are taken off. `apart` tells that every list has steps
   * of its own, so that the heading over a list is that of its steps as well.
   */
  steps(apart: boolean): Step[] {
    if (this.drafts.some((draft) => instructs(draft.passage.text))) {
      while (
        this.drafts.length > 1 &&
        this.drafts.at(-1)!.loose &&
        !givesOrder(this.drafts.at(-1)!.passage.text)
      ) {
        this.remarks.push(this.drafts.pop()!.passage);
      }
    }
    return this.drafts.map(({ number, passage, heading, shared }, index) => ({
      index,
      number,
      passage,
      heading: shared && !apart ? null : heading,
    }));
  }

  /** A row is a step; a first cell with nothing but a figure is its number. */
  private addTable(table: Table): void {
    for (const [index, row] of table.rows.entries()) {
      const cells = row.map((cell) => cell.trim()).filter((cell) => cell.text !== '');
      if (cells.length === 0 || cells.every((cell) => headingKind(cell.text) !== null)) continue;
      const joined = Passage.join(cells, ' ');
      if (index === 0 && !instructs(joined.text)) continue;
      const number = cells.length > 1 ? /^(?:step\s+)?(\d{1,2})[.)]?$/i.exec(cells[0]!.text)?.[1] : undefined;
      if (number === undefined) this.addText(joined, null, false);
      else this.addText(Passage.join(cells.slice(1), ' '), Number(number), false);
    }
  }

  private addList(list: List): void {
    for (const item of list.items) this.addItem(item);
  }

  private addItem(item: ListItem): void {
    const first = item.blocks[0];
    const inner = item.blocks.some((block) => block.type === 'list');
    if (first?.type === 'paragraph' && inner && !first.passage.text.includes('\n')) {
      const head = headOfLine(first.passage.trim(), first.span, first.wrapped, true);
      // A numbered line is a step, even where it opens the steps below it.
      if (head !== null && (item.number === null || first.wrapped === 'strong' || head.of !== null)) {
        this.enter(head);
        for (const block of item.blocks.slice(1)) if (block.type === 'list') this.addList(block);
        return;
      }
    }
    const parts: Passage[] = [];
    const lists: List[] = [];
    sort(item.blocks, parts, lists);
    for (const list of lists) {
      // Bullets that only name things, or remark, belong to the sentence above them; those that tell what to do are steps.
      if (!commands(list)) for (const sub of list.items) sort(sub.blocks, parts, []);
    }
    const texts = parts.filter((part) => part.text.trim() !== '');
    if (texts.length > 0)
      this.addText(
        Passage.join(
          texts.map((part) => part.trim()),
          '\n',
        ),
        item.number,
        false,
      );
    for (const list of lists) if (commands(list)) this.addInner(list);
  }

  /** Steps within a step carry no number of their own: theirs would be taken for the method's. */
  private addInner(list: List): void {
    for (const item of list.items) this.addItem({ ...item, number: null });
  }

  private addParagraph(passage: Passage, said: boolean): void {
    const text = passage.text;
    if (text === '') return;
    // What follows numbered steps closes them, unless it gives an order.
    if (
      (said ? this.numbered : this.listed) &&
      stepNumber(text) === null &&
      (tellsOfMaking(text) || (!opensAsStep(text) && !opensLikeOrder(text)))
    ) {
      this.remarks.push(passage);
      return;
    }
    const starts = [...text.matchAll(NUMBERED_LINE)].map((match) => match.index);
    if (starts.length > 1) {
      if (starts[0]! > 0) this.addText(passage.slice(0, starts[0]!).trim(), null, !said);
      for (const [index, start] of starts.entries()) {
        this.addText(passage.slice(start, starts[index + 1] ?? text.length).trim(), null, false);
      }
    } else this.addText(passage, null, !said);
  }

  private addText(marked: Passage, number: number | null, loose: boolean): void {
    const whole = withoutMark(marked);
    const printed = number ?? stepNumber(whole.text) ?? this.numberOfHead;
    this.numberOfHead = null;
    const label = leadInLength(whole, this.source);
    const heading = label === 0 ? this.heading : (this.heading ?? labelOnly(whole.slice(0, label)));
    const shared = this.shared && heading === this.heading;
    this.drafts.push({ number: printed, passage: whole.slice(label).trim(), heading, loose, shared });
  }
}

const LONGEST_LEAD_IN = 60;

/** The length of bold words that end in a colon or full stop before the text of a step: "**Make the crumb.** Rub ..."; else 0. */
function leadInLength(passage: Passage, source: string): number {
  const { start } = passage.span();
  const mark = source.slice(start - 2, start);
  if (mark !== '**' && mark !== '__') return 0;
  const end = source.indexOf(mark, start);
  const bold = end < 0 || end - start > LONGEST_LEAD_IN ? '' : source.slice(start, end);
  // What is written otherwise than it reads, or gives a figure, is no mere label.
  if (bold === '' || !passage.text.startsWith(bold) || /[\d\n¼-¾]/.test(bold)) return 0;
  const colon = passage.text.charAt(bold.length) === ':';
  const length = bold.length + (colon ? 1 : 0);
  if (!colon && !/[.:]\s*$/.test(bold)) return 0;
  const rest = passage.text.slice(length);
  // "**Rest:** 10 minutes" has its verb in the label.
  return rest.trim() === '' || (instructs(`${bold.replace(/[.:\s]+$/, '')} it.`) && !instructs(rest))
    ? 0
    : length;
}

function labelOnly(passage: Passage): Passage {
  return passage.slice(0, passage.text.replace(/[\s.:]+$/, '').length);
}

/** "Step 3", "3." or "3)" at the beginning of a line that Markdown has not taken for a list. */
const NUMBERED_LINE = /^(?:step\s+)?\d{1,2}(?:[.):]|\s[–-])\s+/gim;

function stepNumber(text: string): number | null {
  const match = /^(?:step\s+(\d{1,2})\b|(\d{1,2})[.)]\s)/i.exec(text);
  return match === null ? null : Number(match[1] ?? match[2]);
}

/** Parts the blocks of an item into its paragraphs and its lists. */
function sort(blocks: readonly Block[], paragraphs: Passage[], lists: List[]): void {
  for (const block of blocks) {
    if (block.type === 'paragraph' || block.type === 'heading') paragraphs.push(block.passage);
    else if (block.type === 'list') lists.push(block);
    else if (block.type === 'quote') sort(block.blocks, paragraphs, lists);
    else if (block.type === 'table')
      for (const row of block.rows) paragraphs.push(Passage.join([...row], ' '));
  }
}

/** Whether at least two in three bullets tell what to do. */
function commands(list: List): boolean {
  return list.items.filter((item) => instructs(textOf(item))).length * 3 >= list.items.length * 2;
}

function textOf(item: ListItem): string {
  const first = item.blocks[0];
  return first?.type === 'paragraph' ? first.passage.text : '';
}

/** Whether the text tells the cook to do something, in a verb of the kitchen or in another. */
function givesOrder(text: string): boolean {
  return instructs(text) || opensLikeOrder(text);
}
