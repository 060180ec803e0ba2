/** Knows the usual headings over the parts of a recipe, and the labels before its yield and times. */
import { larder } from './load.js';
import { fold } from './names.js';
import type { headingKinds } from './schema.js';

export type HeadingKind = (typeof headingKinds)[number];

export interface Label {
  readonly is: HeadingKind;
  /** Whether it may stand before its value without a colon: "Serves 4". */
  readonly open: boolean;
}

const keys = new Map<string, string>();
const MOST_KEYS = 5000;
/** Rows that are no headings, but words in or around one. */
const WORDS: ReadonlySet<HeadingKind> = new Set(['connector', 'lead', 'opener', 'joiner']);
const words = new Set<string>();
const headings = new Map<string, HeadingKind>();
const labels = new Map<string, Label>();
/** The first words of all labels: a quick no for most lines. */
const labelStarts = new Set<string>();

for (const row of larder.headings) {
  const key = headingKey(row.heading);
  if (WORDS.has(row.is)) words.add(`${row.is} ${key}`);
  else if (row.label === undefined) headings.set(key, row.is);
  else {
    labels.set(key, { is: row.is, open: row.label === 'open' });
    labelStarts.add(headingKey(row.heading.split(/[\s-]+/)[0]!));
  }
}

/** What a heading with exactly these words stands over; null when it is none of the usual ones. */
export function headingKind(text: string): HeadingKind | null {
  return headings.get(headingKey(text)) ?? null;
}

/** The label with exactly these words. */
export function labelOf(text: string): Label | null {
  return labels.get(headingKey(text)) ?? null;
}

/** Whether a label may begin with the word. */
export function startsLabel(word: string): boolean {
  return labelStarts.has(headingKey(word));
}

/** Whether the word may carry a heading on: "Notes on the flour". */
export function isConnector(word: string): boolean {
  return words.has(`connector ${headingKey(word)}`);
}

/** Whether the folded word may stand before the verb of a command: "then". */
export function isOpener(key: string): boolean {
  return words.has(`opener ${key}`);
}

/** Whether another command may follow the folded word within a sentence: "and". */
export function isJoiner(key: string): boolean {
  return words.has(`joiner ${key}`);
}

/** Whether the words open the name of a component: "for the". */
export function isLead(opening: string): boolean {
  return words.has(`lead ${headingKey(opening)}`);
}

/** The longest label has this many words. */
export const longestLabel = Math.max(
  ...larder.headings.filter((row) => row.label).map((row) => row.heading.split(/\s+/).length),
);

/** The same few words are asked for on every page, so their keys are kept. */
function headingKey(text: string): string {
  let key = keys.get(text);
  if (key === undefined) {
    key = fold(text.replace(/&/g, ' and ')).replace(/[^\p{L}\p{N}]+/gu, '');
    if (keys.size >= MOST_KEYS) keys.clear();
    keys.set(text, key);
  }
  return key;
}
