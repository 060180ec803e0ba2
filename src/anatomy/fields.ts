/** Reads the stated yield and times: labelled lines, bullets, cells and keys of the front matter. */
import { readDuration, readYield } from '../grammar/yield.js';
import { type HeadingKind, type Label, labelOf, longestLabel, startsLabel } from '../larder/headings.js';
import type { Passage } from '../manuscript/passage.js';
import type { FrontField, Table } from '../manuscript/types.js';
import type { StatedTime, StatedYield, TimeKind } from './types.js';

export interface Fields {
  readonly yields: StatedYield[];
  readonly times: StatedTime[];
}

/** What a passage states, if it is nothing but labelled values; null when any part of it is something else. */
export function readFields(passage: Passage): Fields | null {
  if (!mayState(passage.text)) return null;
  // The same line is asked about when blocks are judged and again when they are read.
  let fields = known.get(passage);
  if (fields === undefined) {
    fields = readParts(passage);
    known.set(passage, fields);
  }
  return fields;
}

const known = new WeakMap<Passage, Fields | null>();

function readParts(passage: Passage): Fields | null {
  const fields: Fields = { yields: [], times: [] };
  for (const part of partsOf(passage)) if (!readField(part, fields)) return null;
  return fields.yields.length + fields.times.length > 0 ? fields : null;
}

/** The yield that a sentence of running text states by its opening words: "Serves around 3 people." */
export function yieldSentence(passage: Passage): StatedYield | null {
  for (const match of passage.text.matchAll(SENTENCE)) {
    const sentence = passage.slice(match.index, match.index + match[0].length).trim();
    const open = openLabel(sentence.text);
    if (open === null || open.label.is !== 'yield' || sentence.text.length > LONGEST_LINE) continue;
    const parsed = readYield(sentence.text);
    if (parsed?.amount) return { passage: sentence, parsed };
  }
  return yieldPhrase(passage);
}

/** "for about two portions" within a sentence. */
function yieldPhrase(passage: Passage): StatedYield | null {
  for (const { index, 0: words } of passage.text.matchAll(/\bfor (?:\S+\s){1,4}\S+/gi)) {
    for (const { index: at, 0: word } of words.matchAll(/\p{L}+/gu)) {
      if (at === 0 || labelOf(word)?.is !== 'yield') continue;
      const phrase = passage.slice(index, index + at + word.length);
      const parsed = readYield(phrase.text);
      if (parsed?.amount) return { passage: phrase, parsed };
    }
  }
  return null;
}

/** A line such as "~15 galettes" or "2 loaves", which says no more than how many of what. */
export function countAlone(passage: Passage): StatedYield | null {
  const text = passage.text.trim();
  if (!/^[~≈]?\s*(?:about |around |approx\.? )?\d/i.test(text) || !/^\S+(?:\s+\S+){1,4}$/.test(text))
    return null;
  const parsed = readYield(text);
  if (!parsed?.amount || parsed.of === '' || parsed.measures.length > 0) return null;
  return { passage: passage.trim(), parsed };
}

/** A remark over the list that tells for how much it is: "(for 13 cookies)", "for 1 liter of punch". */
export function yieldRemark(passage: Passage): StatedYield | null {
  const text = passage.text.trim();
  const match = /^\(?for (?=(?:about |around )?\d)/i.exec(text);
  if (match === null || text.length > LONGEST_VALUE) return null;
  const parsed = parse(text.slice(match[0].length).replace(/\)$/, ''));
  return parsed === null ? null : { passage: passage.trim(), parsed };
}

/** The yield in words whose meaning a heading has given: "Servings" over "4 to 6". */
export function yieldValue(passage: Passage): StatedYield {
  return { passage, parsed: parse(passage.text) };
}

export function timeValue(kind: HeadingKind, passage: Passage, value: Passage): StatedTime {
  return { kind: TIME_KINDS[kind] ?? 'other', passage, value };
}

/** The values of a table whose header row holds the labels; null when it is another kind of table. */
export function tableFields(table: Table): Fields | null {
  const [header, ...rows] = table.rows;
  const fields: Fields = { yields: [], times: [] };
  if (header === undefined || rows.length !== 1) return null;
  for (const [column, cell] of header.entries()) {
    const label = labelOf(cell.text);
    const value = rows[0]![column]?.trim();
    if (label === null || value === undefined || !labelled(label, value, value, fields)) return null;
  }
  return fields;
}

/** The yield and times among the front matter's fields. */
export function frontFields(front: readonly FrontField[]): Fields {
  const fields: Fields = { yields: [], times: [] };
  for (const { key, passage } of front) {
    const label = keyLabel(key);
    if (label === null) continue;
    labelled(label, passage, passage, fields);
  }
  return fields;
}

/** A quick look that spares most lines the long one: a labelled value has a colon, a figure first, or one of a few words first. */
function mayState(text: string): boolean {
  if (text.length > LONGEST_LINE) return false;
  if (text.includes(':')) return true;
  const lead = /^[^\p{L}\p{N}]*/u.exec(text)![0].length;
  const first = text.charCodeAt(lead);
  return (first >= 48 && first <= 57) || openLabel(text.slice(lead), true) !== null;
}

const LONGEST_LINE = 160;
const LONGEST_VALUE = 70;
const SENTENCE = /[^.!?\n]+(?:[.!?](?!\s|$)[^.!?\n]*)*/g;

const TIME_KINDS: Partial<Record<HeadingKind, TimeKind>> = {
  'time-prep': 'prep',
  'time-cook': 'cook',
  'time-total': 'total',
  'time-rest': 'rest',
  'time-other': 'other',
};

/** The labelled values of a line: parted by line ends, bars, bullets, semicolons, or a comma before the next label. */
function partsOf(passage: Passage): Passage[] {
  if (!/[|•·●;,/–.\n]/.test(passage.text)) return [passage.trim()];
  const parts: Passage[] = [];
  let from = 0;
  const cut = (to: number, next: number): void => {
    const part = passage.slice(from, to).trim();
    if (part.text !== '') parts.push(part);
    from = next;
  };
  for (const match of passage.text.matchAll(
    /[|•·●;\n]|[,/]\s*(?=[\p{L} ]{3,30}:)|\s–\s(?=[\p{L} ]{3,30}:)|\.\s+(?=[\p{L} ]{3,30}:)/gu,
  )) {
    cut(match.index, match.index + match[0].length);
  }
  cut(passage.text.length, passage.text.length);
  return parts;
}

function readField(part: Passage, into: Fields): boolean {
  const start = /^[^\p{L}\p{N}~]*/u.exec(part.text)?.[0].length ?? 0;
  const said = part.slice(start).trim();
  const colon = said.text.indexOf(':');
  if (colon > 0) {
    const label = labelOf(said.text.slice(0, colon).replace(/\s*\([^)]*\)/, ''));
    if (label !== null) return labelled(label, said, said.slice(colon + 1).trim(), into);
  }
  const open = openLabel(said.text);
  if (open !== null && open.label.is === 'yield') {
    // What goes on with another sentence is running text.
    if (/[.!?]\s+\p{L}/u.test(said.text)) return false;
    const parsed = parse(said.text);
    if (parsed === null || open.length === said.text.length) return false;
    into.yields.push({ passage: said, parsed });
    return true;
  }
  // "Prep 15 min": nothing but a label and a length of time.
  const bare = openLabel(said.text, true);
  if (bare !== null && bare.label.is in TIME_KINDS) {
    const value = said.slice(bare.length).trim();
    if (isDuration(value.text)) {
      into.times.push(timeValue(bare.label.is, said, value));
      return true;
    }
  }
  // A length of time alone, beside other values: "Serves 4 | 45 min".
  if (into.yields.length + into.times.length > 0 && isDuration(said.text)) {
    into.times.push(timeValue('time-other', said, said));
    return true;
  }
  // "4 servings", "45 minutes total": the label stands last.
  const last =
    /^[~≈]?\s*(?:about |around |approx\.? )?\d[\d\s.,/–-]*(?:to \d+ ?)?(?:\p{L}+ )?(\p{L}+)\.?$/u.exec(
      said.text,
    );
  const label = last === null ? null : labelOf(last[1]!);
  if (label === null || said.text.length > LONGEST_VALUE) return false;
  if (label.is === 'yield') into.yields.push({ passage: said, parsed: parse(said.text) });
  else into.times.push(timeValue(label.is, said, said.slice(0, said.text.lastIndexOf(last![1]!)).trim()));
  return true;
}

/** Whether the text is a length of time and nothing else. */
function isDuration(text: string): boolean {
  return /^[~≈\d¼-¾]/.test(text) && readDuration(text)?.end === text.length;
}

function labelled(label: Label, said: Passage, value: Passage, into: Fields): boolean {
  if (value.text.length > LONGEST_VALUE) return false;
  if (label.is === 'yield') {
    const parsed = parse(value.text);
    // "For: the brave" is no yield; "Serves: ??" is one that says nothing.
    if (parsed === null && !label.open && value.text !== '') return false;
    into.yields.push({ passage: said, parsed });
    return true;
  }
  if (!(label.is in TIME_KINDS) || (value.text !== '' && !TIME.test(value.text))) return false;
  into.times.push(timeValue(label.is, said, value));
  return true;
}

/** A value that can be a time: a figure, an ISO 8601 duration, a word for one, or a placeholder. */
const TIME = /\d|[¼-¾]|\?|^[^\p{L}]*$|\b(?:hour|minute|night|overnight|day|week|none|tbd|tk)/iu;

/** A label that needs no colon, at the beginning of the text; with `any`, one that elsewhere does. */
function openLabel(text: string, any = false): { label: Label; length: number } | null {
  if (!startsLabel(/^[^\s:-]*/.exec(text)![0])) return null;
  const words = /^(?:\S+\s*){1,4}/.exec(text.slice(0, LONGEST_LINE))?.[0] ?? '';
  const ends = [...words.matchAll(/\S+/g)].slice(0, longestLabel);
  for (let count = ends.length; count > 0; count--) {
    const end = ends[count - 1]!.index + ends[count - 1]![0].length;
    const label = labelOf(text.slice(0, end));
    if (label !== null && (any || label.open)) return { label, length: end };
  }
  return null;
}

/** Keys are written in many ways: "prepTime", "prep_time", "recipe.yield", "time.prep". */
function keyLabel(key: string): Label | null {
  const words = key.replace(/([a-z])([A-Z])/g, '$1 $2').split(/[\s._-]+/);
  const tail = words.slice(-2);
  return (
    labelOf(words.join(' ')) ??
    labelOf(tail.join(' ')) ??
    labelOf([...tail].reverse().join(' ').replace(/s$/, '')) ??
    labelOf(words.at(-1)!)
  );
}

function parse(text: string): StatedYield['parsed'] {
  const parsed = text.trim() === '' ? null : readYield(text);
  return parsed !== null && (parsed.amount !== null || parsed.measures.length > 0) ? parsed : null;
}
