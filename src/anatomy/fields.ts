/** Reads the stated yield and times: labelled lines, bullets, cells and keys of the front matter. */
import { readDuration, readYield } from '../grammar/yield.js';
import { type HeadingKind, type Label, labelOf, longestLabel, startsLabel } from '../larder/headings.js';
import { isWord } from '../larder/kitchen-words.js';
import { lexiconAt } from '../larder/lexicon.js';
import { fold, singular } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';
import { once } from '../manuscript/once.js';
import type { Passage } from '../manuscript/passage.js';
import type { FrontField, Table } from '../manuscript/types.js';
import { wordCount } from './language.js';
import type { StatedTime, StatedYield, TimeKind } from './types.js';

export interface Fields {
  readonly yields: StatedYield[];
  readonly times: StatedTime[];
}

/** What a passage states, if it is nothing but labelled values; null when any part of it is something else. */
export function readFields(passage: Passage): Fields | null {
  if (!mayState(passage.text)) return null;
  return readParts(passage);
}

/** The same line is asked about when blocks are judged and again when they are read. */
const readParts = once((passage: Passage): Fields | null => {
  const fields: Fields = { yields: [], times: [] };
  const barred = /[|•·●]/.test(passage.text);
  let others = 0;
  for (const part of partsOf(passage)) {
    if (readField(part, fields)) continue;
    // "45 minutes | Serves 4": a time beside a yield is that of the whole.
    if (barred && startsWithNumber(part.text) && readDuration(part.text) !== null) {
      fields.times.push({ kind: 'total', passage: part, value: part });
      continue;
    }
    // "Serves 8 | 30 min | Easy": beside values a word or two say something else.
    if (!barred || wordCount(part.text) > 2 || /\d/.test(part.text)) return null;
    others++;
  }
  const stated = fields.yields.length + fields.times.length;
  return stated > 0 && stated >= others ? fields : null;
});

/** The yield that a sentence of running text states by its opening words: "Serves around 3 people." */
export function yieldSentence(passage: Passage): StatedYield | null {
  for (const match of passage.text.matchAll(SENTENCE)) {
    const sentence = passage.slice(match.index, match.index + match[0].length).trim();
    const open = openLabel(sentence.text);
    if (open === null || open.label.is !== 'yield' || sentence.text.length > LONGEST_LINE) continue;
    if (isOrder(sentence.text, open.length)) continue;
    const parsed = readYield(sentence.text);
    // "Makes 2 quarts" says how much; "makes use of 2 cups of rice" does not.
    const poured =
      parsed !== null &&
      parsed.measures.length > 0 &&
      startsWithNumber(sentence.text.slice(open.length).trim());
    if (parsed !== null && (parsed.amount !== null || poured)) return { passage: sentence, parsed };
  }
  return yieldPhrase(passage);
}

/** "for about two portions", "enough for 4 people" within a sentence. */
export function yieldPhrase(passage: Passage): StatedYield | null {
  for (const { index, 0: words } of passage.text.matchAll(/\bfor (?:\S+\s){1,4}\S+/gi)) {
    for (const { index: at, 0: word } of words.matchAll(/\p{L}+/gu)) {
      const fed = isSized(passage.text, index) && isWord(singular(fold(word)), 'serving-word');
      if (at === 0 || !(fed || labelOf(word)?.is === 'yield')) continue;
      const phrase = passage.slice(index, index + at + word.length);
      const parsed = readYield(phrase.text);
      if (parsed?.amount) return { passage: phrase, parsed };
    }
  }
  return null;
}

/** Whether the word before says for how many a recipe is meant: "for 4 people" alone may tell of a party. */
function isSized(text: string, at: number): boolean {
  const before = /(\p{L}+)\s$/u.exec(text.slice(Math.max(0, at - LONGEST_WORD), at));
  return before !== null && isWord(fold(before[1]!), 'sized');
}

const LONGEST_WORD = 20;

/** A line such as "~15 galettes" or "One 9-inch cake", which says no more than how many of what. */
export function countAlone(passage: Passage): StatedYield | null {
  const text = passage.text.trim();
  if (!startsWithNumber(text) || !/^\S+(?:\s+\S+){1,4}$/.test(text)) return null;
  const parsed = readYield(text);
  // "About 2 cups": an amount of nothing but the dish.
  if (parsed?.measures.length === 1 && parsed.measures[0]!.end === text.length)
    return { passage: passage.trim(), parsed };
  // "4 boats came for these." is a sentence.
  if (parsed !== null && /[.!?]$/.test(text) && wordCount(parsed.of) > MOST_COUNTED_WORDS) return null;
  if (!parsed?.amount || parsed.of === '' || parsed.measures.length > 0 || /[:,]/.test(text)) return null;
  if (parsed.of.split(' ').some((word) => isWord(singular(fold(word)), 'no-yield'))) return null;
  // "One pot supper" counts nothing; "one 9-inch pie" does.
  if (!/\d/.test(text) && parsed.amount.low.equals(1) && parsed.dimensions.length === 0) return null;
  return { passage: passage.trim(), parsed };
}

/** "12 small rolls." */
const MOST_COUNTED_WORDS = 2;

/** Whether the text opens with a figure or a word for a number, perhaps with "about" before it. */
function startsWithNumber(text: string): boolean {
  const start = /^[~≈]?\s*(?:about |around |approx\.? )?/i.exec(text)![0].length;
  return /\d/.test(text.charAt(start)) || isNumber(/^\p{L}*/u.exec(text.slice(start))![0]);
}

function isNumber(word: string): boolean {
  return word !== '' && lexiconAt([fold(word)], 0, 'number') !== null;
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
  if (first >= 48 && first <= 57) return true;
  const said = text.slice(lead);
  return openLabel(said, true) !== null || (text.length < LONGEST_COUNT && startsWithNumber(said));
}

const LONGEST_LINE = 160;
const LONGEST_COUNT = 40;
const LONGEST_VALUE = 70;
const SENTENCE = /[^.!?\n]+(?:[.!?](?!\s|$)[^.!?\n]*)*/g;

const TIME_KINDS: Partial<Record<HeadingKind, TimeKind>> = {
  'time-prep': 'prep',
  'time-cook': 'cook',
  'time-total': 'total',
  'time-rest': 'rest',
  'time-other': 'other',
};

/**
 * The labelled values of a line: parted by line ends, bars, bullets or semicolons; and by a comma, slash, dash, full stop
 * or blank before the next label.
 */
function partsOf(passage: Passage): Passage[] {
  const { text } = passage;
  if (!/[|•·●;,/–—:.\n]|\s[+-]\s/.test(text)) return [passage.trim()];
  const parts: Passage[] = [];
  let from = 0;
  const cut = (to: number, next: number): void => {
    const part = passage.slice(from, to).trim();
    if (part.text !== '') parts.push(part);
    from = next;
  };
  for (const { index, 0: mark } of text.matchAll(/[|•·●;\n]|[,/]\s*|\s[–—+-]\s|\.\s+|\s(?=\p{Lu})/gu)) {
    const next = index + mark.length;
    if (/[|•·●;\n]/.test(mark) || opensField(text.slice(from, index), mark, text.slice(next)))
      cut(index, next);
  }
  cut(text.length, text.length);
  return parts;
}

/** Whether the mark between two stretches of a line parts two values. */
function opensField(before: string, mark: string, after: string): boolean {
  if (mark.trim() === '') {
    // "Active: 20 min Total: 1 h" has two values, "Total Time: 1 h" has one.
    const label = /\d/.test(before) ? /^(\p{L}[\p{L} -]{2,30}):/u.exec(after) : null;
    return label !== null && labelOf(label[1]!) !== null;
  }
  if (/^[\p{L} ]{3,30}:/u.test(after)) return true;
  const label = openLabel(after, true);
  if (label !== null && /^\s*[~≈\d¼-¾]/.test(after.slice(label.length))) return true;
  return /^\s/.test(mark) && isDuration(after.trim()) && openLabel(before.trim())?.label.is === 'yield';
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
    const after = said.text.slice(open.length);
    // What goes on with another sentence is running text.
    if (/[.!?]\s+\p{L}/u.test(said.text)) return false;
    if (isOrder(said.text, open.length)) return false;
    const parsed = after === '' ? null : parse(said.text);
    // "Serves a crowd" is a label that says all it has to say.
    if (parsed === null && (after.trim() !== '' || wordCount(said.text) < FEWEST_CROWD_WORDS)) return false;
    into.yields.push({ passage: said, parsed });
    return true;
  }
  // "Prep 15 min": nothing but a label and a length of time. "For six": nothing but a label and a number.
  const bare = openLabel(said.text, true);
  if (bare !== null) {
    const value = said.slice(bare.length).trim();
    // A full stop ends an order, "Bake 20 minutes.", unless a value stands before it.
    const timed = into.yields.length + into.times.length > 0 ? value.text.replace(/\.$/, '') : value.text;
    if (
      bare.label.is in TIME_KINDS &&
      (isDuration(timed) || isExtended(said.text.slice(0, bare.length), value.text))
    ) {
      into.times.push(timeValue(bare.label.is, said, value));
      return true;
    }
    if (bare.label.is === 'yield' && isCount(value.text)) {
      into.yields.push({ passage: said, parsed: parse(value.text) });
      return true;
    }
  }
  // A length of time alone, beside other values: "Serves 4 | 45 min".
  if (into.yields.length + into.times.length > 0 && isDuration(said.text)) {
    into.times.push(timeValue('time-other', said, said));
    return true;
  }
  // "4 servings", "four servings", "45 minutes total": the label stands last.
  if (!startsWithNumber(said.text)) return false;
  const last = /^(?:\S+\s+){1,6}(\p{L}+)\.?$/u.exec(said.text);
  const label =
    last === null || !/^\P{L}*(?:\p{L}+\P{L}+){1,4}$/u.test(`${said.text} `) ? null : labelOf(last[1]!);
  if (label === null || said.text.length > LONGEST_VALUE) return false;
  if (label.is === 'yield') into.yields.push({ passage: said, parsed: parse(said.text) });
  else {
    const value = said.slice(0, said.text.lastIndexOf(last![1]!)).trim();
    if (!(label.is in TIME_KINDS) || !isDuration(value.text.replace(/^(?:about|around)\s+/i, '')))
      return false;
    into.times.push(timeValue(label.is, said, value));
  }
  return true;
}

const FEWEST_CROWD_WORDS = 3;

/** "Serve 4" says how many, "serve with 2 lemons" is an order. */
function isOrder(text: string, label: number): boolean {
  return (
    techniqueOf(fold(text.slice(0, label)))?.form === 'base' && !/^\s*\d[\d\s–-]*\.?$/.test(text.slice(label))
  );
}

/** "4", "about six", "4 to 6 people". */
function isCount(text: string): boolean {
  if (!startsWithNumber(text)) return false;
  const words = text.replace(/^(?:about|around)\s+/i, '').split(/[\s–-]+/);
  return (
    words.length < 6 &&
    words.every(
      (word) =>
        /^\d+\.?$/.test(word) ||
        isNumber(word) ||
        word === 'to' ||
        word === 'or' ||
        labelOf(word)?.is === 'yield',
    )
  );
}

/** "20 minutes plus chilling", behind a label that is no order. */
function isExtended(label: string, value: string): boolean {
  if (techniqueOf(fold(label)) !== null || !/^[~≈\d¼-¾]/.test(value)) return false;
  const end = readDuration(value)?.end;
  const tail = end === undefined ? '' : value.slice(end);
  return /^,?\s*(?:plus\b|\+|\()/i.test(tail) && wordCount(tail) <= LONGEST_TAIL && !/[.!?]\s/.test(tail);
}

const LONGEST_TAIL = 6;

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
export function openLabel(text: string, any = false): { label: Label; length: number } | null {
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
