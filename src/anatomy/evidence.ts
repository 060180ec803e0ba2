/** Judges a block: how surely it is a list of ingredients, and how surely a method. */
import { type HeadingKind, headingKind } from '../larder/headings.js';
import type { Passage } from '../manuscript/passage.js';
import type { List, ListItem, Table } from '../manuscript/types.js';
import { readFields } from './fields.js';
import { instructs, type LineJudge, type LineKind, startsWithAmount, wordCount } from './language.js';
import type { Content } from './sections.js';
import { columnKind } from './tables.js';

/** How sure it is: said by a heading, clear by its words, possible, or nothing of the kind. */
export const NONE = 0;
export const POSSIBLE = 1;
export const CLEAR = 2;
export const SAID = 3;
export type Certainty = typeof NONE | typeof POSSIBLE | typeof CLEAR | typeof SAID;

export interface Evidence {
  readonly list: Certainty;
  readonly method: Certainty;
  /** Whether it is three lines or more of nothing but amounts of things, at least half in units: no sentence among them, and no menu. */
  readonly bare: boolean;
  /** Whether a third of its lines name foods and none instructs: too little to tell by itself. */
  readonly faint: boolean;
  /** Lines that list and lines that instruct stand mingled. */
  readonly mingled: boolean;
  /** Whether it is one line alone, an amount of a food. */
  readonly single: boolean;
}

const TEXT: Evidence = { list: NONE, method: NONE, bare: false, faint: false, mingled: false, single: false };
const LIST_SAID: Evidence = { ...TEXT, list: SAID };
const METHOD_SAID: Evidence = { ...TEXT, method: SAID };
const METHOD_POSSIBLE: Evidence = { ...TEXT, method: POSSIBLE };
const METHOD_CLEAR: Evidence = { ...TEXT, method: CLEAR };

export function evidenceOf(block: Content, scope: HeadingKind | null, judge: LineJudge): Evidence {
  if (scope === 'list') return belowListHeading(block, judge);
  if (scope === 'method') return belowMethodHeading(block, judge);
  if (scope !== null) return TEXT;
  if (block.type === 'list') return listEvidence(block, judge);
  if (block.type === 'table') return tableEvidence(block, judge);
  return paragraphEvidence(block.passage, judge);
}

/** Below its heading everything is the list, but for steps: numbered commands, or text that tells what to do. */
function belowListHeading(block: Content, judge: LineJudge): Evidence {
  if (block.type === 'list') {
    if (block.ordered) return listEvidence(block, judge).method > NONE ? METHOD_CLEAR : LIST_SAID;
    const commands = itemTexts(block).every(
      (text) => wordCount(text) > 2 && !startsWithAmount(text) && instructs(text),
    );
    return commands ? METHOD_POSSIBLE : LIST_SAID;
  }
  if (block.type === 'paragraph') {
    const text = block.passage.text;
    if (wordCount(text) <= MOST_LONE_WORDS && !/[.!?:\n]/.test(text)) {
      const kind = judge.kind(text);
      if (kind === 'food' || kind === 'amount') return LIST_SAID;
    }
    const evidence = paragraphEvidence(block.passage, judge);
    return evidence.list > NONE ? LIST_SAID : evidence;
  }
  return LIST_SAID;
}

const MOST_LONE_WORDS = 5;

/** Below its heading everything is the method, but for bullets that are clearly ingredients. */
function belowMethodHeading(block: Content, judge: LineJudge): Evidence {
  if (block.type === 'list' && !block.ordered) {
    const texts = itemTexts(block);
    const amounts = texts.filter((text) => startsWithAmount(text)).length;
    if (amounts * 2 > texts.length && listEvidence(block, judge).list === CLEAR)
      return { ...TEXT, list: POSSIBLE, method: POSSIBLE };
  }
  return METHOD_SAID;
}

function listEvidence(list: List, judge: LineJudge): Evidence {
  const texts: string[] = [];
  for (const item of list.items) {
    const passage = itemPassage(item);
    if (passage === null || readFields(passage) !== null) continue;
    const text = passage.text.trim();
    // A bullet that heads others tells nothing of its own.
    if (text.endsWith(':')) for (const inner of innerTexts(item)) texts.push(inner);
    else texts.push(text);
  }
  return weighLines(texts, list.ordered, judge);
}

function weighLines(texts: readonly string[], ordered: boolean, judge: LineJudge): Evidence {
  const count: Record<LineKind, number> = {
    amount: 0,
    figure: 0,
    food: 0,
    instruction: 0,
    equal: 0,
    other: 0,
  };
  for (const text of texts) count[judge.kind(text)]++;
  const all = texts.length;
  if (all === 0) return TEXT;
  const { food, instruction, figure } = count;
  // Things that the larder does not know are taken for foods where as many others are foods; else they are tools, or books.
  const amount = count.amount >= figure ? count.amount + figure : count.amount;
  const listed = amount + food;
  if (instruction * 2 >= all && (ordered ? instruction >= listed : instruction > listed))
    return ordered ? METHOD_CLEAR : METHOD_POSSIBLE;
  // Numbered sentences without an amount are steps, whatever their verbs.
  const sentences =
    ordered && amount === 0 ? texts.filter((text) => /[.!]$/.test(text) && wordCount(text) > 2).length : 0;
  if (sentences > 1 && sentences * 2 >= all) return METHOD_CLEAR;
  if (all === 1 && count.amount === 1 && !ordered) return { ...TEXT, list: POSSIBLE, single: true };
  if (all > 1 && listed * 3 >= all * 2) {
    const measured = texts.filter((text) =>
      judge.listing(text).measures.some((measure) => measure.unit !== null),
    ).length;
    const bare =
      amount === all &&
      all >= FEWEST_BARE &&
      measured * 2 >= all &&
      !texts.some((text) => /[.!?]$/.test(text));
    return { ...TEXT, list: amount * 2 >= all ? CLEAR : POSSIBLE, bare };
  }
  if (!ordered && instruction === 0 && listed * 3 >= all) return { ...TEXT, faint: true };
  return all > 3 && amount * 3 >= all && instruction * 3 >= all ? { ...TEXT, mingled: true } : TEXT;
}

const FEWEST_BARE = 3;

function tableEvidence(table: Table, judge: LineJudge): Evidence {
  const [header = [], ...rows] = table.rows;
  const columns = header.map((cell) => columnKind(cell.text));
  const listed = header.some((cell) => headingKind(cell.text) === 'list');
  if (columns.includes('method')) return listed ? { ...TEXT, mingled: true } : METHOD_CLEAR;
  if (listed) return { ...TEXT, list: CLEAR, bare: rows.length >= FEWEST_BARE };
  // "Item" may stand over foods or tools; so may "what".
  const told = columns.includes('food') && columns.includes('amount');
  const evidence = weighLines(
    (told ? rows : table.rows).map((row) =>
      row
        .map((cell) => cell.text)
        .join(' ')
        .trim(),
    ),
    false,
    judge,
  );
  // A table of equivalents looks the same, so a table alone is never certain.
  if (evidence.list === NONE) return TEXT;
  return told ? evidence : { ...evidence, list: POSSIBLE };
}

function paragraphEvidence(passage: Passage, judge: LineJudge): Evidence {
  if (readFields(passage) !== null) return TEXT;
  const text = passage.text;
  if (text.includes('\n')) {
    const lines = text.split('\n').filter((line) => line.trim() !== '');
    if (lines.some((line) => startsWithAmount(line)) || lines.every((line) => wordCount(line) < 6)) {
      const evidence = weighLines(lines, false, judge);
      if (evidence.list > NONE) return evidence;
    }
  } else if (startsWithAmount(text) && wordCount(text) < 12 && judge.kind(text) === 'amount') {
    return { ...TEXT, list: POSSIBLE };
  }
  return instructs(text) ? METHOD_POSSIBLE : TEXT;
}

/** The first text of an item, which is its line. */
export function itemPassage(item: ListItem): Passage | null {
  const first = item.blocks[0];
  return first?.type === 'paragraph' || first?.type === 'heading' ? first.passage.trim() : null;
}

export function itemTexts(list: List): string[] {
  return list.items.map((item) => itemPassage(item)?.text ?? '').filter((text) => text !== '');
}

function innerTexts(item: ListItem): string[] {
  return item.blocks.flatMap((block) => (block.type === 'list' ? itemTexts(block) : []));
}
