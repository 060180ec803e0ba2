/** Takes the steps out of the blocks of a method, and what stands among them without telling the cook to do anything. */
import { headingKind } from '../larder/headings.js';
import { Passage } from '../manuscript/passage.js';
import type { Block, List, ListItem } from '../manuscript/types.js';
import { type Head, headOfLine } from './heads.js';
import { instructs, opensWithCommand } from './language.js';
import type { Content } from './sections.js';
import type { Step } from './types.js';

interface Draft {
  readonly number: number | null;
  readonly passage: Passage;
  readonly heading: Passage | null;
  /** A paragraph of its own may yet turn out to be a closing remark. */
  readonly loose: boolean;
}

export class MethodBuilder {
  /** Remarks between and after the steps. */
  readonly remarks: Passage[] = [];
  private readonly drafts: Draft[] = [];
  private heading: Passage | null = null;
  private numberOfHead: number | null = null;
  private listed = false;
  private numbered = false;

  get started(): boolean {
    return this.drafts.length > 0;
  }

  enter(head: Head | null): void {
    if (head?.passage !== this.heading) this.numbered = false;
    this.heading = head?.passage ?? null;
    this.numberOfHead = head === null ? null : stepNumber(head.passage.text);
  }

  add(block: Content): void {
    if (block.type === 'list') {
      if (this.numbered && !block.ordered && !this.drafts.at(-1)?.passage.text.endsWith(':')) {
        // Bullets after numbered steps are remarks on them.
        for (const item of block.items) sort(item.blocks, this.remarks, []);
        return;
      }
      this.addList(block);
      this.listed = true;
      this.numbered = block.ordered;
    } else if (block.type === 'table') {
      for (const row of block.rows) {
        const cells = row.map((cell) => cell.trim()).filter((cell) => cell.text !== '');
        if (cells.length > 0 && !cells.every((cell) => headingKind(cell.text) !== null))
          this.addText(Passage.join(cells, ' '), null, false);
      }
    } else this.addParagraph(block.passage.trim());
  }

  /** The steps, in order; remarks after the last instruction are taken off. */
  steps(): Step[] {
    if (this.drafts.some((draft) => instructs(draft.passage.text))) {
      while (
        this.drafts.length > 1 &&
        this.drafts.at(-1)!.loose &&
        !instructs(this.drafts.at(-1)!.passage.text)
      ) {
        this.remarks.push(this.drafts.pop()!.passage);
      }
    }
    return this.drafts.map(({ number, passage, heading }, index) => ({ index, number, passage, heading }));
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

  private addParagraph(passage: Passage): void {
    const text = passage.text;
    if (text === '') return;
    if (this.listed && !opensWithCommand(text)) {
      this.remarks.push(passage);
      return;
    }
    const starts = [...text.matchAll(NUMBERED_LINE)].map((match) => match.index);
    if (starts.length > 1) {
      if (starts[0]! > 0) this.addText(passage.slice(0, starts[0]!).trim(), null, true);
      for (const [index, start] of starts.entries()) {
        this.addText(passage.slice(start, starts[index + 1] ?? text.length).trim(), null, false);
      }
    } else this.addText(passage, null, true);
  }

  private addText(passage: Passage, number: number | null, loose: boolean): void {
    const printed = number ?? stepNumber(passage.text) ?? this.numberOfHead;
    this.numberOfHead = null;
    this.drafts.push({ number: printed, passage, heading: this.heading, loose });
  }
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
