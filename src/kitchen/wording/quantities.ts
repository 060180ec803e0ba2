/** Finds how a passage's quantities are written: units, numbers that are not whole, ranges, temperatures. */
import pluralize from 'pluralize';
import type { Amount, Extent, Item, Measure, Temperature } from '../../grammar/types.js';
import { wordsOfClass } from '../../larder/kitchen-words.js';
import { fold } from '../../larder/names.js';
import type { Unit } from '../../larder/types.js';
import { unitNamed } from '../../larder/units.js';
import type { Passage } from '../../manuscript/passage.js';
import type { Usage } from './types.js';

/** Every form in the quantities among `items`, which are the passage's. */
export function quantityUsages(passage: Passage, items: readonly Item[]): Usage[] {
  const usages: Usage[] = [];
  for (const item of items) {
    if (item.kind === 'word' || item.kind === 'point') continue;
    for (const piece of piecesOf(item, passage.text)) {
      if (piece.heat) pushDegree(usages, passage, piece);
      else {
        pushUnits(usages, passage, piece);
        pushNumbers(usages, passage, piece);
      }
      pushRange(usages, passage, piece);
    }
    if (item.kind === 'temperature') pushScales(usages, passage, item);
  }
  return usages;
}

/** A quantity by itself: what is added to it, equal to it or packed in it is blanked out of `text`, offsets kept. */
interface Piece extends Extent {
  readonly text: string;
  readonly amount: Amount | null;
  readonly heat: boolean;
}

function piecesOf(item: Exclude<Item, { kind: 'word' | 'point' }>, text: string): Piece[] {
  const nested: readonly (Measure | Temperature)[] =
    item.kind === 'measure'
      ? [...item.plus, ...item.equals, ...(item.pack === null ? [] : [item.pack])]
      : item.kind === 'temperature'
        ? item.equals
        : [];
  let own = text.slice(item.start, item.end);
  for (const { start, end } of nested) {
    own = own.slice(0, start - item.start) + ' '.repeat(end - start) + own.slice(end - item.start);
  }
  const amount =
    item.kind === 'duration'
      ? item.seconds
      : item.kind === 'dimension'
        ? (item.lengths.find((length) => isRange(length.amount)) ?? item.lengths[0])!.amount
        : item.amount;
  const piece = { start: item.start, end: item.end, text: own, amount, heat: item.kind === 'temperature' };
  return [piece, ...nested.flatMap((each) => piecesOf(each, text))];
}

function isRange(amount: Amount): boolean {
  return !amount.low.equals(amount.high);
}

/** Words and signs that may be a unit, with the full stop behind. */
const UNIT_WORDS = /\p{L}+\.?|[#"”″]/gu;

/** Names of a unit that mean another vessel or tool, so that they are no way of writing it: "teacup". */
const otherMeasures = new Set(wordsOfClass('other-measure').map(fold));

function pushUnits(usages: Usage[], passage: Passage, piece: Piece): void {
  const words = [...piece.text.matchAll(UNIT_WORDS)];
  for (let at = 0; at < words.length; at++) {
    const word = words[at]!;
    const next = words[at + 1];
    const pair = next === undefined ? null : `${bare(word[0])} ${bare(next[0])}`;
    const two = pair === null ? null : sizedUnit(pair);
    const unit = two ?? sizedUnit(bare(word[0]));
    if (unit === null || otherMeasures.has(fold(two === null ? bare(word[0]) : pair!))) continue;
    const last = two === null ? word : next!;
    if (two !== null) at++;
    const start = piece.start + word.index;
    const stop = piece.start + last.index + last[0].length;
    // A full stop behind it may be the abbreviation's, the sentence's, or both.
    const unclear = last[0].endsWith('.') && endsSentence(passage.text, stop);
    const end = unclear ? stop - 1 : stop;
    const form = unitForm(unit, passage.text.slice(start, end));
    usages.push({
      aspect: 'unit',
      about: unit.id,
      form,
      passage,
      start,
      end,
      ...(unclear ? { either: `${form}.` } : {}),
      ...(piece.amount === null ? {} : { amount: piece.amount }),
    });
  }
}

function bare(word: string): string {
  return word.endsWith('.') ? word.slice(0, -1) : word;
}

/** The unit with a size that words name; null where they name none. */
function sizedUnit(words: string): Unit | null {
  let unit = sizedUnits.get(words);
  if (unit === undefined) {
    const found = unitNamed(words);
    unit = found !== null && SIZED.has(found.kind) ? found : null;
    if (sizedUnits.size < MOST_KNOWN) sizedUnits.set(words, unit);
  }
  return unit;
}

const SIZED: ReadonlySet<string> = new Set(['volume', 'mass', 'length', 'time']);
/** The same few words stand beside all amounts of a book. */
const sizedUnits = new Map<string, Unit | null>();
const MOST_KNOWN = 10_000;

function endsSentence(text: string, end: number): boolean {
  const rest = text.slice(end).trimStart();
  return rest === '' || /^\p{Lu}/u.test(rest);
}

/** Without its plural; a name in full in small letters, a short form in its own. */
function unitForm(unit: Unit, written: string): string {
  const text = written.replace(/[\s-]+/g, ' ');
  if (unit.names.some((name) => fold(pluralize.singular(text.toLowerCase())) === fold(name)))
    return pluralize.singular(text.toLowerCase());
  const dot = text.endsWith('.') ? '.' : '';
  const stem = dot === '' ? text : text.slice(0, -1);
  const one = stem.slice(0, -1);
  const known = unit.short.includes(one.toLowerCase()) || unit.exact.includes(one);
  const plural = /s$/i.test(stem) && known && !shortens(stem.toLowerCase(), unit);
  return (plural ? one : stem) + dot;
}

const FEWEST_LETTERS = 3;

/** Whether the letters are some of the unit's name: the s of "tbs" is the spoon's, and that of "lbs" makes a plural. */
function shortens(letters: string, unit: Unit): boolean {
  if (letters.length < FEWEST_LETTERS) return false;
  return unit.names.some((name) => {
    let at = -1;
    return [...letters].every((letter) => {
      at = name.indexOf(letter, at + 1);
      return at >= 0;
    });
  });
}

/** A number that is not whole: with a sign of its own, with a stroke, with a point. */
const NUMBERS =
  /(?:\d+\s?)?[¼-¾⅐-⅞]|(?:\d+[\s-]+(?:and\s+)?)?\d+\s?[/⁄]\s?\d+|(?<![\d.,])(?:\d+[.,]|(?<!\p{L})\.)\d{1,2}(?![\d.,])/gu;

function pushNumbers(usages: Usage[], passage: Passage, piece: Piece): void {
  for (const found of piece.text.matchAll(NUMBERS)) {
    const [text] = found;
    const form = /[¼-¾⅐-⅞]/.test(text) ? '½' : /[/⁄]/.test(text) ? '1/2' : '0.5';
    // Metric amounts are decimals by nature.
    if (form === '0.5' && METRIC.test(unitBehind(piece.text, found.index + text.length))) continue;
    const start = piece.start + found.index;
    usages.push({ aspect: 'number', about: 'number', form, passage, start, end: start + text.length });
  }
}

const METRIC = /(gram|liter|meter)$/;

function unitBehind(text: string, at: number): string {
  for (const [word] of text.slice(at).matchAll(UNIT_WORDS)) {
    const unit = sizedUnit(bare(word));
    if (unit !== null) return unit.id;
  }
  return '';
}

const NUMBER = String.raw`(?:\d+(?:[.,]\d+)?(?:[\s-]\d+\s?[/⁄]\s?\d+|\s?[/⁄]\s?\d+|\s?[¼-¾⅐-⅞])?|[¼-¾⅐-⅞])`;
export const RANGE = new RegExp(String.raw`(${NUMBER})(\s*)(–|—|-|‐|‑|−|to)(\s*)(${NUMBER})`, 'u');
const NO_STYLE_BEFORE = /\b(?:from|between)\s+$/i;

function pushRange(usages: Usage[], passage: Passage, piece: Piece): void {
  if (piece.amount === null || !isRange(piece.amount)) return;
  const found = RANGE.exec(piece.text);
  if (found === null || NO_STYLE_BEFORE.test(passage.text.slice(0, piece.start))) return;
  const start = piece.start + found.index;
  const form = rangeForm(found[2]!, found[3]!);
  usages.push({ aspect: 'range', about: 'range', form, passage, start, end: start + found[0].length });
}

function rangeForm(space: string, joint: string): string {
  if (joint === 'to') return '3 to 5';
  const dash = joint === '–' || joint === '—' ? joint : '-';
  return space === '' ? `3${dash}5` : `3 ${dash} 5`;
}

/** How the degrees and the scale stand behind the number. */
export const DEGREE =
  /(\d+(?:[.,]\d+)?)(\s*)(°|º|˚|degrees?|deg\.?)?(\s*)(f(?:ahrenheit)?|c(?:elsius|entigrade)?)(?!\p{L})/iu;

function pushDegree(usages: Usage[], passage: Passage, piece: Piece): void {
  const found = DEGREE.exec(piece.text);
  if (found === null) return;
  const [text, , before = '', sign = '', after = '', scale = ''] = found;
  const start = piece.start + found.index;
  usages.push({
    aspect: 'degree',
    about: 'temperature',
    form: degreeForm(before, sign, after, scale),
    passage,
    start,
    end: start + text.length,
  });
}

function degreeForm(before: string, sign: string, after: string, scale: string): string {
  const letter = scale.length === 1 ? (scale === scale.toLowerCase() ? 'f' : 'F') : 'Fahrenheit';
  const degree = sign === '' ? '' : /^d/i.test(sign) ? 'degrees' : '°';
  return `350${space(before)}${degree}${degree === '' ? '' : space(after)}${letter}`;
}

function space(text: string): string {
  return text === '' ? '' : ' ';
}

function pushScales(usages: Usage[], passage: Passage, item: Temperature): void {
  const other = item.equals.find((each) => each.scale !== item.scale && each.scale !== 'gas');
  const first = scaleName(item);
  if (first === null || (other !== undefined && scaleName(other) === null)) return;
  const { start, end } = item;
  const joint = other === undefined ? '' : passage.text.slice(start, other.start);
  const second = other === undefined ? null : scaleName(other)!;
  const form = second === null ? first : joint.includes('(') ? `${first} (${second})` : `${first}/${second}`;
  // That one place has a second scale and another none is for the author to weigh; which one comes first is style.
  const about = second === null ? 'temperature on one scale' : 'temperature on two scales';
  usages.push({ aspect: 'scales', about, form, passage, start, end });
}

function scaleName({ scale }: Temperature): string | null {
  return scale === 'fahrenheit' ? 'Fahrenheit' : scale === 'celsius' ? 'Celsius' : null;
}
