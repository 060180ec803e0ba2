/** The texts of a block one by one, and what a paragraph says of itself. */
import { foodAt } from '../larder/foods.js';
import { type HeadingKind, headingKind } from '../larder/headings.js';
import { phraseAt } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { vesselAt } from '../larder/vessels.js';
import { Passage } from '../manuscript/passage.js';
import type { Block } from '../manuscript/types.js';
import { itemTexts } from './evidence.js';
import { openLabel, readFields } from './fields.js';
import { instructs, opensWithCommand, startsWithAmount, wordCount } from './language.js';
import type { Content } from './sections.js';

/** The part to which a paragraph gives itself by its first words: "Storage: keeps a week". */
export function labelledKind(passage: Passage): HeadingKind | null {
  const label = /^(\p{L}[\p{L}'’ -]{2,30}?)(?::|\s[–—-])\s/u.exec(passage.text);
  const kind = label === null ? null : headingKind(label[1]!);
  return kind === 'notes' || kind === 'storage' || kind === 'nutrition' || kind === 'equipment' ? kind : null;
}

/** The part to which a paragraph among the steps belongs where it remarks instead of telling what to do; null for a step. */
export function remarkKind(text: string): HeadingKind | null {
  const label = openLabel(text)?.label.is;
  if (label === 'notes' || label === 'storage') return label;
  // "We start with the sauce. Melt the butter." remarks, but orders all the same.
  return (label === 'headnote' || label === 'yield') && !instructs(text) ? 'notes' : null;
}

/** Whether a paragraph opens by telling the cook to do something, in a verb of the kitchen or in other words for an order. */
export function opensAsStep(text: string): boolean {
  return openLabel(text)?.label.is === 'method' || opensWithCommand(text);
}

/** A paragraph parted at those of its lines that state the yield or a time. */
export function partedAtFields(passage: Passage): Passage[] {
  const lines = [...passage.text.matchAll(/[^\n]+/g)];
  if (lines.length < 2) return [passage];
  const parts: Passage[] = [];
  let from = 0;
  for (const line of lines) {
    const end = line.index + line[0].length;
    const part = passage.slice(line.index, end).trim();
    if (!/^[^\p{L}]*\p{Lu}/u.test(part.text) || readFields(part) === null) continue;
    parts.push(passage.slice(from, line.index).trim(), part);
    from = end;
  }
  parts.push(passage.slice(from).trim());
  return parts.filter((part) => part.text !== '');
}

const LONGEST_TITLE = 60;
const MOST_TITLE_WORDS = 8;

/** A short line that is no sentence, at the head of a recipe without any heading. */
export function isTitle(passage: Passage): boolean {
  const text = passage.text.trim();
  return (
    text.length <= LONGEST_TITLE &&
    !/[.!?:,\n]$|\n/.test(text) &&
    wordCount(text) <= MOST_TITLE_WORDS &&
    !startsWithAmount(text)
  );
}

/** The texts of a block one by one: paragraphs, items with what is below them, rows. */
export function textsOf(block: Content | Block): Passage[] {
  if (block.type === 'paragraph' || block.type === 'heading')
    return block.passage.text.trim() === '' ? [] : [block.passage.trim()];
  if (block.type === 'list') return block.items.flatMap((item) => item.blocks.flatMap(textsOf));
  if (block.type === 'quote') return block.blocks.flatMap(textsOf);
  if (block.type !== 'table') return [];
  return block.rows.map(rowText).filter((row) => row.text !== '');
}

/** A row of two cells reads as a label with its value. */
function rowText(row: readonly Passage[]): Passage {
  const cells = row.map((cell) => cell.trim()).filter((cell) => cell.text !== '');
  if (cells.length === 0) return EMPTY;
  return Passage.join(cells, cells.length === 2 && !cells[0]!.text.endsWith(':') ? ': ' : ' ');
}

const EMPTY = new Passage('', []);

/** Without a bullet that Markdown does not know ("•"), or the box of a list to be ticked off. */
export function withoutMark(line: Passage): Passage {
  const bullet = /^(?:\[[ xX]?\]|[•·▢☐☑✓□◦‣●○*–—-])\s+/.exec(line.text);
  return bullet === null ? line : line.slice(bullet[0].length);
}

/** "You will need" over nothing but tins and tools is no list of ingredients. */
export function isTools(block: Content): boolean {
  if (block.type !== 'list') return false;
  const texts = itemTexts(block);
  return texts.length > 0 && texts.every(namesTool);
}

/** "Deep 9-inch springform tin with a loose base". */
const MOST_TOOL_WORDS = 8;

/** Whether the words are a vessel's or a tool's, with nothing before it but a number, a size or what it is like. */
function namesTool(text: string): boolean {
  const keys = (text.match(/\p{L}[\p{L}\p{M}'’]*/gu) ?? []).map(fold);
  if (keys.length > MOST_TOOL_WORDS) return false;
  return keys.some((_, at) => {
    const length = vesselAt(keys, at)?.length ?? phraseAt(keys, at, 'special-tool')?.length;
    // "1 onion, chopped (1 cup)" ends in a vessel's name as well.
    const isAlone = keys.slice(0, at).every((_, before) => foodAt(keys, before, at) === null);
    return length !== undefined && isAlone && at + length === keys.length;
  });
}
