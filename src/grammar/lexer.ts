/** Cuts a text into tokens and tells what each word is in a measure: a number, a unit, an approximation, or just a word. */
import { type IToken, Lexer, type TokenType } from 'chevrotain';
import Fraction from 'fraction.js';
import { phrases } from '../larder/lexicon.js';
import { fold } from '../larder/names.js';
import type { Unit, UnitKind } from '../larder/types.js';
import { unitById, unitNames, unitWritten } from '../larder/units.js';
import * as t from './tokens.js';
import { endOf, type KitchenToken, type Meaning } from './tokens.js';
import type { Approximation } from './types.js';

/** The tokens of a text, in order; only white space is left out. */
export function lex(text: string): KitchenToken[] {
  const raw = lexer.tokenize(text).tokens as KitchenToken[];
  const tokens: KitchenToken[] = [];
  let quoted = false;
  for (let at = 0; at < raw.length; ) {
    const token = raw[at]!;
    if (token.tokenType === t.Word) {
      at = tagWord(text, raw, at, tokens);
      continue;
    }
    const last = tokens[tokens.length - 1];
    switch (token.tokenType) {
      case t.Integer:
      case t.Decimal:
      case t.Thousands:
      case t.BareDecimal:
      case t.Vulgar:
        at += tagNumber(text, raw, at, tokens);
        continue;
      case t.Dot:
        if (endsShortForm(last, token, raw[at + 1])) last!.image += '.';
        else tokens.push(token);
        break;
      case t.Quote:
        if (!quoted && token.image !== '“' && isLengthFigure(last, token)) retag(token, t.LengthUnit, INCH);
        else quoted = token.image === '“' || (token.image !== '”' && !quoted);
        tokens.push(token);
        break;
      case t.Hash:
        if (isFigure(last) && endOf(last!) === token.startOffset) retag(token, t.ScaleUnit, POUND);
        tokens.push(token);
        break;
      case t.PercentSign:
        retag(token, t.VagueUnit, PERCENT);
        tokens.push(token);
        break;
      case t.Tilde:
        // "15~20" is a range, "~20" is about twenty.
        if (isFigure(last) && endOf(last!) === token.startOffset && startsNumber(raw[at + 1]))
          retag(token, t.Dash, ABOUT);
        else retag(token, t.Approximator, ABOUT);
        tokens.push(token);
        break;
      case t.Mark:
        if (token.image === '℉') retag(token, t.Fahrenheit, FAHRENHEIT);
        if (token.image === '℃') retag(token, t.Celsius, CELSIUS);
        tokens.push(token);
        break;
      default:
        tokens.push(token);
    }
    at++;
  }
  return tokens;
}

export function isFigure(token: IToken | undefined): boolean {
  return token !== undefined && (token.tokenType.CATEGORIES?.includes(t.Figure) ?? false);
}

/** Whether the token is read as a word rather than a punctuation mark. */
export function isWord(token: KitchenToken): boolean {
  const first = token.image.charCodeAt(0);
  const lower = first | 32;
  if ((lower >= LOWER_A && lower <= LOWER_Z) || (first >= ZERO && first <= NINE)) return true;
  return first >= FIRST_LETTER_PAST_ASCII && !POINTS.has(token.tokenType);
}

const [LOWER_A, LOWER_Z, ZERO, NINE, FIRST_LETTER_PAST_ASCII] = [0x61, 0x7a, 0x30, 0x39, 0xaa];
const POINTS = new Set([
  t.Newline,
  t.Hyphen,
  t.Dash,
  t.Tilde,
  t.Slash,
  t.TimesSign,
  t.DegreeSign,
  t.Quote,
  t.LengthUnit,
  t.Approximator,
  t.Mark,
]);
interface Entry {
  readonly type: TokenType;
  readonly meaning: Meaning;
  /** Whether a full stop right after it may belong to it. */
  readonly short: boolean;
  readonly node: PhraseNode | null;
}

interface PhraseNode {
  word: {
    type: TokenType;
    value: Fraction | null;
    unit: Unit | null;
    approximation: Approximation | null;
    short: boolean;
  } | null;
  readonly next: Map<string, PhraseNode>;
}

const lexer = new Lexer(t.lexed, { positionTracking: 'onlyOffset', ensureOptimizations: true });

const typeOfClass: Readonly<Record<string, TokenType>> = {
  number: t.NumberWord,
  multiplier: t.Multiplier,
  half: t.HalfWord,
  fraction: t.FractionNoun,
  article: t.Article,
  few: t.FewWord,
  approximation: t.Approximator,
  size: t.SizeWord,
  more: t.MoreWord,
  'custom-time': t.CustomTime,
  degree: t.DegreeWord,
  fahrenheit: t.Fahrenheit,
  celsius: t.Celsius,
  gas: t.GasWord,
  'gas-mark': t.MarkWord,
  fan: t.FanWord,
  to: t.ToWord,
  or: t.OrWord,
  and: t.AndWord,
  plus: t.PlusWord,
  times: t.TimesWord,
  by: t.ByWord,
  of: t.OfWord,
  determiner: t.TheWord,
  each: t.EachWord,
  between: t.BetweenWord,
  plain: t.Word,
};

const typeOfUnit: Readonly<Record<UnitKind, TokenType>> = {
  volume: t.ScaleUnit,
  mass: t.ScaleUnit,
  length: t.LengthUnit,
  time: t.TimeUnit,
  temperature: t.DegreeWord,
  container: t.PackUnit,
  piece: t.PieceUnit,
  vague: t.VagueUnit,
};

const root = new Map<string, PhraseNode>();
for (const { words, unit, short } of unitNames) {
  const type = unit.id === 'inch' && words[0] === 'in' ? t.InWord : typeOfUnit[unit.kind];
  nodeFor(words).word = { type, value: null, unit, approximation: null, short };
}
// After the units, so that a small word ("x", "in a row of its own") is what the lexicon says; classes only listings ask for have no type.
for (const { words, is, means } of phrases) {
  const type = typeOfClass[is];
  if (type === undefined) continue;
  const number = is === 'number' || is === 'multiplier' || is === 'half' || is === 'fraction';
  nodeFor(words).word = {
    type,
    value: number && means !== null ? new Fraction(means) : null,
    unit: null,
    approximation: is === 'approximation' ? (means as Approximation) : null,
    short: is === 'approximation' || is === 'degree',
  };
}

const INCH: Meaning = meaningOf('"', unitById('inch'));
const POUND: Meaning = meaningOf('#', unitById('pound'));
const PERCENT: Meaning = meaningOf('%', unitById('percent'));
const ABOUT: Meaning = { key: '~', value: null, unit: null, approximation: 'about' };
const FAHRENHEIT: Meaning = meaningOf('f', null);
const CELSIUS: Meaning = meaningOf('c', null);
const CUP = unitById('cup');

/** A page is no wider than this; a quotation mark after a larger number closes a quotation. */
const LONGEST_QUOTED_INCHES = 40;
/** "3/2" and "9/4" are written, "90/10" is no fraction. */
const COARSEST_PARTS = 8;
const MOST_WHOLES = 4;
/** Nothing is cut into a hundred parts: "gas 4/160°C" is a mark and a temperature. */
const FINEST_PARTS = 99;
const LONGEST_NUMBER_DIGITS = 9;
const MOST_WORDS_KEPT = 20_000;
const entries = new Map<string, Entry>();

/** Tags the word at `raw[at]`, or the fixed phrase that begins with it; returns the index after what was taken. */
function tagWord(text: string, raw: KitchenToken[], at: number, tokens: KitchenToken[]): number {
  const token = raw[at]!;
  const entry = entryOf(token.image);
  if (entry.node !== null && entry.node.next.size > 0) {
    const end = phraseEnd(raw, at, entry.node);
    if (end > at + 1) {
      const parts = raw.slice(at, end);
      for (const part of parts) {
        if (part.tokenType === t.Word) part.payload = entryOf(part.image).meaning;
      }
      const word = phraseWord(parts, entry.node);
      if (word.type === t.Word) tokens.push(...parts);
      else {
        const image = text.slice(token.startOffset, endOf(raw[end - 1]!));
        const { value, unit, approximation, type } = word;
        const merged: KitchenToken = { ...token, image, parts };
        tokens.push(retag(merged, type, { key: entry.meaning.key, value, unit, approximation }));
      }
      return end;
    }
  }
  retag(token, entry.type, entry.meaning);
  if (entry.type === t.TimesWord && !isFigure(tokens[tokens.length - 1]) && !startsNumber(raw[at + 1])) {
    retag(token, t.Word, entry.meaning);
  }
  tokens.push(token);
  return at + 1;
}

/** Tags the number at `raw[at]`, joining "3/4"; returns how many tokens were taken. */
function tagNumber(text: string, raw: KitchenToken[], at: number, tokens: KitchenToken[]): number {
  const token = raw[at]!;
  const last = tokens[tokens.length - 1];
  const glued = last !== undefined && endOf(last) === token.startOffset;
  if (token.tokenType === t.Integer) {
    const fraction = fractionAt(text, raw, at);
    if (fraction !== null) {
      const image = text.slice(token.startOffset, endOf(raw[at + 2]!));
      tokens.push(retag({ ...token, image }, t.Fractional, numeral(image, fraction)));
      return 3;
    }
    const { image } = token;
    const code = image.length > LONGEST_NUMBER_DIGITS || (image.length > 1 && image.startsWith('0'));
    if (code || (glued && (last.tokenType === t.Word || last.tokenType === t.Hash))) {
      tokens.push(retag(token, t.Code, numeral(image, null)));
      return 1;
    }
  }
  const next = raw[at + 1];
  // "2% milk" is a kind of milk: a percentage with no space before the sign and a word after it is a name.
  const dash = last?.tokenType === t.Hyphen || last?.tokenType === t.Dash;
  const ends = dash && isFigure(tokens[tokens.length - 2]);
  const percent = next?.tokenType === t.PercentSign && endOf(token) === next.startOffset;
  if (percent && !ends && raw[at + 2]?.tokenType === t.Word) {
    const image = text.slice(token.startOffset, endOf(next));
    tokens.push(retag({ ...token, image }, t.Code, numeral(image, null)));
    return 2;
  }
  tokens.push(retag(token, token.tokenType, numeral(token.image, numberOf(token))));
  return 1;
}

/** The value of "3/4" at `raw[at]`; null where the two numbers are no fraction a cook would write ("180/160", "90/10", a date). */
function fractionAt(text: string, raw: readonly KitchenToken[], at: number): Fraction | null {
  const [above, slash, below, after] = [raw[at]!, raw[at + 1], raw[at + 2], raw[at + 3]];
  if (slash?.tokenType !== t.Slash || below?.tokenType !== t.Integer) return null;
  if (below.startOffset - endOf(above) > 3 || text.slice(endOf(above), below.startOffset).trim().length !== 1)
    return null;
  if (after?.tokenType === t.Slash && startsNumber(raw[at + 4])) return null;
  const [numerator, denominator] = [Number(above.image), Number(below.image)];
  if (denominator === 0 || numerator === 0 || denominator > FINEST_PARTS || above.image.length > 4)
    return null;
  if (numerator >= denominator && (denominator > COARSEST_PARTS || numerator > denominator * MOST_WHOLES))
    return null;
  return new Fraction(numerator, denominator);
}

function numberOf(token: KitchenToken): Fraction {
  const { image } = token;
  if (token.tokenType === t.Vulgar) {
    const [above, below] = image.normalize('NFKD').split('⁄');
    return new Fraction(Number(above), Number(below));
  }
  if (token.tokenType === t.Thousands) return new Fraction(Number(image.replaceAll(',', '')));
  return token.tokenType === t.Integer ? new Fraction(Number(image)) : new Fraction(image.replace(',', '.'));
}

/** The index after the longest phrase that begins at `raw[at]`; words may be joined by a space or a hyphen. */
function phraseEnd(raw: readonly KitchenToken[], at: number, first: PhraseNode): number {
  let node = first;
  let end = first.word === null ? at : at + 1;
  for (let next = at + 1; next < raw.length; next++) {
    const joint = raw[next]!;
    const joins = joint.tokenType === t.Hyphen || joint.tokenType === t.Dot;
    if (joins && endOf(raw[next - 1]!) === joint.startOffset) next++;
    const word = raw[next];
    if (word?.tokenType !== t.Word) break;
    const deeper = node.next.get(entryOf(word.image).meaning.key);
    if (deeper === undefined) break;
    node = deeper;
    if (node.word !== null) end = next + 1;
  }
  return end;
}

function phraseWord(parts: readonly KitchenToken[], first: PhraseNode): NonNullable<PhraseNode['word']> {
  let node = first;
  for (const part of parts.slice(1)) {
    if (part.tokenType === t.Word) node = node.next.get(part.payload!.key)!;
  }
  return node.word!;
}

function entryOf(image: string): Entry {
  let entry = entries.get(image);
  if (entry === undefined) {
    const key = fold(image.endsWith(')') ? image.slice(0, image.indexOf('(')) : image);
    const node = root.get(key) ?? null;
    const written = image.length <= 3 ? unitWritten(image) : null;
    entry = written !== null ? writtenUnit(key, written, node) : plainEntry(key, node);
    if (entries.size >= MOST_WORDS_KEPT) entries.clear();
    entries.set(image, entry);
  }
  return entry;
}

function writtenUnit(key: string, unit: Unit, node: PhraseNode | null): Entry {
  const type = unit === CUP ? t.CelsiusOrCup : typeOfUnit[unit.kind];
  return { type, meaning: meaningOf(key, unit), short: true, node };
}

function plainEntry(key: string, node: PhraseNode | null): Entry {
  const word = node?.word ?? null;
  if (word === null) return { type: t.Word, meaning: meaningOf(key, null), short: false, node };
  const { type, value, unit, approximation, short } = word;
  return { type, meaning: { key, value, unit, approximation }, short, node };
}

function nodeFor(words: readonly string[]): PhraseNode {
  let level = root;
  let node: PhraseNode | undefined;
  for (const word of words) {
    node = level.get(word);
    if (node === undefined) {
      node = { word: null, next: new Map() };
      level.set(word, node);
    }
    level = node.next;
  }
  return node!;
}

function retag(token: KitchenToken, type: TokenType, meaning: Meaning): KitchenToken {
  token.tokenType = type;
  token.tokenTypeIdx = type.tokenTypeIdx!;
  token.payload = meaning;
  return token;
}

function meaningOf(key: string, unit: Unit | null): Meaning {
  return { key, value: null, unit, approximation: null };
}

function numeral(key: string, value: Fraction | null): Meaning {
  return { key, value, unit: null, approximation: null };
}

function startsNumber(token: KitchenToken | undefined): boolean {
  return token !== undefined && (isFigure(token) || token.tokenType === t.Tilde);
}

function isLengthFigure(last: KitchenToken | undefined, mark: KitchenToken): boolean {
  if (!isFigure(last) || endOf(last!) !== mark.startOffset) return false;
  return last!.payload?.value?.lte(LONGEST_QUOTED_INCHES) ?? false;
}

/** A full stop belongs to the short form before it unless a sentence seems to end there: at the end, or before a capital. */
function endsShortForm(
  last: KitchenToken | undefined,
  dot: KitchenToken,
  next: KitchenToken | undefined,
): boolean {
  if (last === undefined || endOf(last) !== dot.startOffset || next === undefined) return false;
  if (next.tokenType === t.Newline) return false;
  const head = next.image[0]!;
  if (head !== head.toLowerCase()) return false;
  return last.parts === undefined
    ? (entries.get(last.image)?.short ?? false)
    : (last.payload?.unit ?? null) !== null;
}
