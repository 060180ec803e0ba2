/** Writes the same in another form, wherever that changes nothing but the form. */
import Fraction from 'fraction.js';
import pluralize from 'pluralize';
import { foodsOfClass, isAnyOf } from '../../larder/food-classes.js';
import { foodNamed } from '../../larder/foods.js';
import { isWord } from '../../larder/kitchen-words.js';
import { larder } from '../../larder/load.js';
import { fold } from '../../larder/names.js';
import { unitById, unitNamed } from '../../larder/units.js';
import { DEGREE, RANGE } from './quantities.js';
import type { Usage } from './types.js';

/** A new text for a stretch of the passage. */
export interface Rewriting {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** Whether the meaning cannot change. */
  readonly sure: boolean;
}

/** The usage in the wanted form; null where that takes a person. */
export function rewrite(usage: Usage, wanted: string): Rewriting | null {
  const { start, end, passage, aspect } = usage;
  const written = passage.text.slice(start, end);
  const put = (text: string | null, sure = true): Rewriting | null =>
    text === null || text === written ? null : { start, end, text, sure };
  switch (aspect) {
    case 'unit':
      return unit(usage, wanted);
    case 'number':
      return put(number(written, wanted));
    case 'range':
      return put(
        passage.text[end] === '-' ? null : written.replace(RANGE, (...found) => range(found, wanted)),
      );
    case 'degree':
      return put(degree(written, wanted));
    case 'scales':
      return put(scales(written, wanted));
    case 'yield':
      return put(yieldText(written, wanted));
    case 'title':
      return put(title(written, wanted), wanted !== 'Sentence capitals');
    case 'capital': {
      const [first = ''] = written;
      const large = wanted === 'Capital first';
      return put((large ? first.toUpperCase() : first.toLowerCase()) + written.slice(first.length), large);
    }
    case 'opening':
      return put(inWords(written));
    default:
      return null;
  }
}

/**
 * Another word in place of a written one, in the number and with the capital that stood there; the article before it
 * follows. A stem has no number. Where the one is counted and the other measured ("coriander leaves" and "cilantro"), verbs
 * and amounts around it may have to follow, and a person has to look.
 */
export function replaceWord(
  text: string,
  start: number,
  written: string,
  wanted: string,
  isStem = false,
): Rewriting {
  const { number, sure } = isStem ? { number: 'one', sure: true } : numberOf(written, wanted);
  const plain = number === 'many' ? pluralize.plural(wanted) : wanted;
  const first = written.charAt(0);
  const large = first !== first.toLowerCase();
  const all = written.length > 1 && written === written.toUpperCase() && large;
  const word = all ? plain.toUpperCase() : large ? plain.charAt(0).toUpperCase() + plain.slice(1) : plain;
  const end = start + written.length;
  const article = /(?<!\p{L})(an?)(\s+)$/iu.exec(text.slice(Math.max(0, start - 5), start));
  const due = /^[aeiou]/i.test(word) ? 'an' : 'a';
  if (article === null || article[1]!.toLowerCase() === due) return { start, end, text: word, sure };
  const cased = article[1]!.startsWith('A') ? due.charAt(0).toUpperCase() + due.slice(1) : due;
  return { start: start - article[0].length, end, text: `${cased}${article[2]!}${word}`, sure };
}

/** The number in which the wanted word stands for the written one, and whether that is beyond doubt. */
function numberOf(written: string, wanted: string): { number: 'one' | 'many'; sure: boolean } {
  const key = written.toLowerCase();
  const many = key !== pluralize.singular(key);
  if (isMeasured(wanted)) return { number: 'one', sure: !many };
  if (many) return { number: 'many', sure: true };
  // "1 cup cilantro" is of many leaves; "1 pound shrimp" may be of one or of many.
  if (isMeasured(written)) return { number: 'many', sure: false };
  return { number: 'one', sure: pluralize.plural(key) !== key };
}

const MEASURED = foodsOfClass('mass');
const COUNTED = [...foodsOfClass('countable'), ...foodsOfClass('mass-plural')];

/** Whether a food's name has no plural: flour, cilantro; but for what its name counts, as "coriander leaf" does. */
function isMeasured(name: string): boolean {
  const food = foodNamed(name);
  if (food === null || !isAnyOf(food, MEASURED) || isAnyOf(food, COUNTED)) return false;
  const last = name.split(/[\s-]+/).at(-1)!;
  return unitNamed(last)?.kind !== 'piece';
}

/** A whole number in words, as far as one word says it. */
export function inWords(figures: string): string | null {
  const word = numberWords.get(figures);
  return word === undefined ? null : word.charAt(0).toUpperCase() + word.slice(1);
}

const numberWords = new Map(
  larder.lexicon.flatMap(({ is, word, means }) =>
    is === 'number' && means !== undefined && /^\p{L}+$/u.test(word) ? [[means, word] as const] : [],
  ),
);

/** One letter that stands for two spoons: the reading may be wrong, so the mend is the author's. */
const DOUBTFUL = new Set(['t', 'T', 'c', 'C', 'm', 'gr', 'tb']);

function unit({ about, passage, start, end, amount, form }: Usage, wanted: string): Rewriting {
  const { text } = passage;
  const before = text.charAt(start - 1);
  const inFull = unitById(about).names.some((name) => fold(name) === fold(wanted));
  const many = amount?.high.compare(1) === 1 && before !== '-' && text.charAt(end) !== '-';
  const word = inFull && many ? pluralize.plural(wanted) : wanted;
  const joint = inFull && /[\d¼-¾⅐-⅞]/.test(before) ? ' ' : '';
  // A short form that lost its full stop may be followed by another; the sign of an inch has no space of its own.
  const gap = /^["”″#]/.test(form) && /\p{L}/u.test(text.charAt(end)) ? ' ' : '';
  return { start, end, text: `${joint}${word}${gap}`, sure: !DOUBTFUL.has(form.replace('.', '')) };
}

const SIGNS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/3': '⅓',
  '2/3': '⅔',
  '1/4': '¼',
  '3/4': '¾',
  '1/5': '⅕',
  '2/5': '⅖',
  '3/5': '⅗',
  '4/5': '⅘',
  '1/6': '⅙',
  '5/6': '⅚',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};
const STROKES = new Map(Object.entries(SIGNS).map(([strokes, sign]) => [sign, strokes]));

function number(written: string, wanted: string): string | null {
  const value = fractionIn(written);
  if (value === null) return null;
  const whole = value.floor();
  const part = value.sub(whole).toFraction();
  const opening = whole.equals(0) ? '' : whole.toFraction();
  if (wanted === '½') return part in SIGNS ? opening + SIGNS[part]! : null;
  if (wanted === '1/2') return part in SIGNS ? `${opening}${opening === '' ? '' : ' '}${part}` : null;
  // A third has no decimal that a cook would write.
  return 1000n % value.d === 0n ? value.toString() : null;
}

function fractionIn(written: string): Fraction | null {
  const plain = written
    .replace(/[¼-¾⅐-⅞]/gu, (sign) => ` ${STROKES.get(sign) ?? '?'}`)
    .replace('⁄', '/')
    .replace(',', '.');
  const found = /^(?:(\d+)[\s-]+(?:and\s+)?)?(\d+)\s?\/\s?(\d+)$/.exec(plain.trim());
  if (found !== null) {
    return found[3] === '0' ? null : new Fraction(`${found[2]}/${found[3]}`).add(Number(found[1] ?? 0));
  }
  return /^\d*\.\d+$/.test(plain.trim()) ? new Fraction(plain.trim()) : null;
}

function range(found: readonly string[], wanted: string): string {
  const joint = wanted.slice(1, -1);
  return `${found[1]}${joint}${found[5]}`;
}

function degree(written: string, wanted: string): string | null {
  const found = DEGREE.exec(written);
  if (found === null) return null;
  const fahrenheit = /^f/i.test(found[5]!);
  const scale = wanted.endsWith('Fahrenheit')
    ? fahrenheit
      ? 'Fahrenheit'
      : 'Celsius'
    : fahrenheit
      ? 'F'
      : 'C';
  return found[1]! + wanted.slice('350'.length).replace(/F(ahrenheit)?$/, scale);
}

/** Only the order and the mark between can be mended: a scale that is missing has to be reckoned. */
function scales(written: string, wanted: string): string | null {
  const found = /^([^(/]+?)\s*(?:\(([^()/]+)\)|\/\s*([^()/]+?))\s*$/.exec(written);
  const second = found?.[2] ?? found?.[3];
  if (found === null || second === undefined || !/[(/]/.test(wanted)) return null;
  const fahrenheitFirst = wanted.startsWith('Fahrenheit');
  const isFahrenheit = /f/i.test(found[1]!.replace(/\d/g, '').replace(/deg\w*/i, ''));
  const [one, other] = isFahrenheit === fahrenheitFirst ? [found[1]!, second] : [second, found[1]!];
  return wanted.includes('(') ? `${one.trim()} (${other.trim()})` : `${one.trim()}/${other.trim()}`;
}

/** Only a plain statement is turned round: a label, a number or a range, and perhaps a word for helpings. */
function yieldText(written: string, wanted: string): string | null {
  const found =
    /^[\p{L} ]+?\s*:?\s*((?:(?:about|around|approx\.?|approximately|roughly|up to|at least) )?[\d½¼¾][\d\s½¼¾–-]*(?:to \d+)?)(?:\s+(\p{L}+))?$/iu.exec(
      written.trim(),
    );
  if (found === null || (found[2] !== undefined && !isWord(fold(found[2]), 'helping'))) return null;
  return wanted.replace(/\d+/, found[1]!.trim());
}

function title(written: string, wanted: string): string | null {
  if (wanted === 'ALL CAPITALS') return written.toUpperCase();
  if (wanted === 'Sentence capitals') return null;
  if (written === written.toUpperCase()) return null;
  return written.replace(/\p{L}[\p{L}\p{M}'’]*/gu, (word, at: number) =>
    at > 0 && isWord(fold(word), 'small-in-title') ? word : word.charAt(0).toUpperCase() + word.slice(1),
  );
}
