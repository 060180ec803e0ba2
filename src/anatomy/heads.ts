/** Recognises the lines that stand over a part of a page: headings, bold lines, lines in capitals or with a colon at their end. */

import { foodNamed } from '../larder/foods.js';
import { type HeadingKind, headingKind, isConnector, isLead, labelOf } from '../larder/headings.js';
import { phraseAt } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';
import type { Passage } from '../manuscript/passage.js';
import type { Heading, Paragraph, Span } from '../manuscript/types.js';
import { readFields, yieldPhrase, yieldRemark } from './fields.js';
import { instructs, wordCount } from './language.js';

export interface Head {
  readonly passage: Passage;
  readonly span: Span;
  /** 1 to 6 as Markdown has it; below these, a line that only looks like a heading. */
  readonly depth: number;
  /** What it usually stands over; null for a title or a name. */
  readonly kind: HeadingKind | null;
  /** What is made, where it says so: "glaze" in "For the glaze" and in "Glaze ingredients". */
  readonly of: string | null;
  /** What it says besides: "serves 4" in "Ingredients (serves 4)". */
  readonly extra: Passage | null;
}

export const BOLD_DEPTH = 7;
export const PLAIN_DEPTH = 8;
const LONGEST_HEAD = 90;
/** A heading beyond this is a title at most, and is not looked into. */
const LONGEST_HEADING = 200;
const MOST_WORDS = 9;

export function headOfHeading(block: Heading): Head {
  const head = headOf(block.passage.trim(), block.span, block.depth);
  // "Recipe: Rye Crackers" is a title with a label before it.
  if (head.kind !== 'recipe' || head.extra === null || readFields(head.extra) !== null) return head;
  return { ...head, passage: head.extra, kind: null, of: null, extra: null };
}

/**
 * The head that a paragraph of one line is, or null. `beforeList` says whether a list or table comes next, which makes
 * a head of any line with a colon that gives no instruction.
 */
export function headOfLine(
  line: Passage,
  span: Span,
  wrapped: Paragraph['wrapped'],
  beforeList: boolean,
): Head | null {
  if (line.text.length > LONGEST_HEAD) return null;
  const text = line.text.trim();
  if (!/\p{L}/u.test(text) || startsWithFigure(text)) return null;
  const words = text.split(/\s+/).length;
  if (words > MOST_WORDS || readFields(line) !== null || yieldRemark(line) !== null) return null;
  const colon = text.endsWith(':');
  // "These are the amounts for two portions:" tells the yield, and names nothing.
  if (colon && yieldPhrase(line) !== null) return null;
  if (wrapped === 'strong') return isSentence(text, words) ? null : headOf(line, span, BOLD_DEPTH);
  if (isCapitals(text)) return headOf(line, span, BOLD_DEPTH);
  const head = headOf(line, span, PLAIN_DEPTH);
  const usual = head.kind !== null && head.kind !== 'matter' && head.kind !== 'recipe';
  if (colon && (usual || head.of !== null || (beforeList && !instructs(text)))) return head;
  if (wrapped === 'emphasis' && (usual || head.of !== null))
    return /[.!]$/.test(text) && words > 2 ? null : head;
  // Bare words are a heading only where hardly anything else can be meant.
  const bare =
    (head.kind === 'list' || head.kind === 'method') &&
    headingKind(text) === head.kind &&
    !/[.!?]$/.test(text);
  return bare || (beforeList && head.of !== null && !/[.!?,]$/.test(text)) ? head : null;
}

/** What a heading says: its usual meaning, the thing it is for, and what else it tells. */
export function headOf(passage: Passage, span: Span, depth: number): Head {
  const text = passage.text;
  if (text.length > LONGEST_HEADING) return { passage, span, depth, kind: null, of: null, extra: null };
  const start = leadIn(text);
  const end = text.length - (/[\s:.–—-]*$/.exec(text.slice(start))?.[0].length ?? 0);
  const made = (kind: HeadingKind | null, of: string | null, extra: Passage | null): Head => ({
    passage,
    span,
    depth,
    kind,
    of,
    extra,
  });
  const whole = text.slice(start, end);
  const exact = headingKind(whole);
  if (exact !== null) return made(exact, null, null);
  const cut = /\s*(?:[([:,|]|\s[–—-]\s)/.exec(whole);
  if (cut !== null && cut.index > 0) {
    const kind = headingKind(whole.slice(0, cut.index));
    if (kind !== null) {
      const extra = passage
        .slice(
          start + cut.index + cut[0].length,
          end - (/[([]$/.test(cut[0].trim()) && /[)\]]$/.test(whole) ? 1 : 0),
        )
        .trim();
      return made(kind, componentName(extra.text), extra);
    }
  }
  const named = componentName(whole);
  if (named !== null) return made(null, named, null);
  const carried = carriedOn(whole);
  if (carried === null) return made(null, null, null);
  return made(carried.kind, carried.of, carried.rest === 0 ? null : passage.slice(start + carried.rest, end));
}

/** A usual heading with words before it ("Sauce ingredients") or after it ("Ingredients for the sauce", "Notes on flour"). */
function carriedOn(text: string): { kind: HeadingKind; of: string | null; rest: number } | null {
  const words = text.split(/\s+/);
  for (let count = Math.min(3, words.length - 1); count > 0; count--) {
    const kind = headingKind(words.slice(-count).join(' '));
    if (kind === 'list' || (kind === 'method' && words.length <= 3)) {
      // "Dry ingredients" is what the method calls them; "Sauce ingredients" is the sauce.
      const group = phraseAt(words.map(fold), 0, 'group')?.length === words.length;
      return { kind, of: cleanName((group ? words : words.slice(0, -count)).join(' ')), rest: 0 };
    }
  }
  for (let count = Math.min(4, words.length - 2); count > 0; count--) {
    const kind = headingKind(words.slice(0, count).join(' '));
    if (kind === null || !CARRIED_ON.has(kind) || !isConnector(words[count]!)) continue;
    const said = words.slice(count + 1).join(' ');
    const part = kind === 'list' || kind === 'method';
    // "Ingredients for 4 people" tells the yield.
    if (part && /^\d/.test(said)) return { kind, of: null, rest: text.length - said.length };
    return { kind, of: part ? cleanName(said) : null, rest: 0 };
  }
  return null;
}

/** Kinds whose headings are often longer than the usual words: "Notes on the flour". */
const CARRIED_ON: ReadonlySet<HeadingKind> = new Set([
  'list',
  'method',
  'notes',
  'storage',
  'nutrition',
  'equipment',
]);

/** "glaze" for "For the glaze", null for what does not begin so. */
function componentName(text: string): string | null {
  const words = text.trim().split(/\s+/);
  for (let count = Math.min(3, words.length - 1); count > 0; count--) {
    if (!isLead(words.slice(0, count).join(' '))) continue;
    const rest = words.slice(count);
    // "For 4 people" tells the yield.
    return /^\d/.test(rest[0]!) ? null : cleanName(rest.join(' '));
  }
  return null;
}

/** The name as it is compared and shown: lower case, without what stands in parentheses, "the" or "ingredients". */
export function cleanName(text: string): string | null {
  const said = text
    .slice(leadIn(text))
    .replace(/\s*[([,;].*$/, '')
    .replace(/\s+in steps? \d.*$/i, '')
    .replace(/^(?:the|a|an|for)\s+/i, '');
  // A sentence names nothing.
  if (wordCount(said) > LONGEST_NAME) return null;
  const bare = said
    .replace(/(\p{L})\s+for\s.*$/iu, '$1')
    .replace(/["“”]/g, '')
    .replace(/[\s:.,–—-]+$/, '')
    .toLowerCase();
  return bare === '' || /^\d+$/.test(bare) || isLead(bare) ? null : bare;
}

const LONGEST_NAME = 6;

/** Whether the words name a part of a dish rather than a dish: "custard", "lemon glaze". */
export function namesPart(text: string): boolean {
  const words = cleanName(text)?.split(' ') ?? [];
  const last = words.slice(-1).join(' ');
  return (
    words.length > 0 &&
    words.length <= MOST_PART_WORDS &&
    (labelOf(last)?.is === 'list' || labelOf(words.join(' '))?.is === 'list')
  );
}

const MOST_PART_WORDS = 3;

/** How much stands before the first letter or figure: emoji, bullets, "1." before a word. */
function leadIn(text: string): number {
  return /^[^\p{L}\p{N}]*(?:\d{1,2}[.)]\s+)?/u.exec(text)?.[0].length ?? 0;
}

function startsWithFigure(text: string): boolean {
  return /^[~≈\s]*[\d¼-¾⅐-⅞]/.test(text) && !/^\d{1,2}[.)]\s/.test(text);
}

const LONGEST_BOLD_SENTENCE = 4;

/** A bold sentence is emphasis, not a heading. */
function isSentence(text: string, words: number): boolean {
  return words > LONGEST_BOLD_SENTENCE && /[.!]$/.test(text);
}

/** "Add:" is one verb of the kitchen that names neither a food nor a part of a dish. */
export function isOrder(text: string): boolean {
  if (!text.endsWith(':')) return false;
  const word = fold(text.slice(0, -1).trim());
  if (techniqueOf(word)?.form !== 'base' || foodNamed(word) !== null) return false;
  return headingKind(word) === null && labelOf(word) === null;
}

function isCapitals(text: string): boolean {
  return text === text.toUpperCase() && (text.match(/\p{Lu}/gu)?.length ?? 0) >= 4 && !/[.!?]$/.test(text);
}
