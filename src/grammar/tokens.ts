/** The vocabulary of kitchen language: what a cook would call each piece of "1½ cups (about 200 g)". */
import { createToken, type IToken, Lexer, type TokenType } from 'chevrotain';
import type Fraction from 'fraction.js';
import type { Unit } from '../larder/types.js';
import type { Approximation } from './types.js';

/** What a token stands for in a measure. Words share one value for all their places in a text. */
export interface Meaning {
  /** The word as the larder is asked: lower case, no accents, no apostrophes. */
  readonly key: string;
  readonly value: Fraction | null;
  readonly unit: Unit | null;
  readonly approximation: Approximation | null;
}

export interface KitchenToken extends IToken {
  payload?: Meaning;
  /** The words of a fixed phrase ("a couple of"), which go back to being words where no quantity comes of it. */
  parts?: readonly KitchenToken[];
}

/** What cannot begin a quantity: it is emitted as a word or a punctuation mark unless a quantity has taken it. */
export const Loose = createToken({ name: 'Loose', pattern: Lexer.NA });

// As the lexer finds them.
export const Space = createToken({
  name: 'Space',
  pattern: /[ \t\v\f\u00A0\u1680\u2000-\u200B\u202F\u205F\u2060\u3000\uFEFF]+/,
  group: Lexer.SKIPPED,
});
export const Newline = createToken({ name: 'Newline', pattern: /[\n\r\u2028\u2029]/, categories: Loose });
export const Figure = createToken({ name: 'Figure', pattern: Lexer.NA });
// Groups and digits are bounded, so that a line of nothing but digits and commas is read in one pass.
export const Thousands = createToken({
  name: 'Thousands',
  pattern: /[1-9]\d{0,2}(?:,\d{3}){1,3}(?!,?\d)/,
  categories: Figure,
});
export const Decimal = createToken({ name: 'Decimal', pattern: /\d{1,9}[.,]\d{1,9}/, categories: Figure });
export const BareDecimal = createToken({ name: 'BareDecimal', pattern: /\.\d{1,9}/, categories: Figure });
export const Ordinal = createToken({
  name: 'Ordinal',
  pattern: /\d{1,4}(?:st|nd|rd|th)(?![A-Za-z])/i,
  categories: Loose,
});
export const Integer = createToken({ name: 'Integer', pattern: /\d+/, categories: Figure });
export const Vulgar = createToken({ name: 'Vulgar', pattern: /[¼-¾⅐-⅞↉]/, categories: Figure });
// Letters of any script, with apostrophes inside, and "(s)" for a plural left open.
export const Word = createToken({
  name: 'Word',
  pattern:
    // biome-ignore lint/suspicious/noMisleadingCharacterClass: a combining mark belongs to the word it stands in.
    /[A-Za-zªµÀ-ÖØ-öø-ʯ\u0300-῿Ⰰ-⷟぀-퟿\uF900-﷿ﹰ-ﻼ]+(?:['’ʼ][A-Za-zÀ-ÖØ-öø-ʯ\u0300-῿]+)*(?:\((?:s|es)\))?/,
  categories: Loose,
});
export const Hyphen = createToken({ name: 'Hyphen', pattern: /[-‐‑]/, categories: Loose });
export const Dash = createToken({ name: 'Dash', pattern: /[–—−―]/, categories: Loose });
export const Tilde = createToken({ name: 'Tilde', pattern: /[~≈∼]/, categories: Loose });
export const Slash = createToken({ name: 'Slash', pattern: /[/⁄∕]/, categories: Loose });
export const Open = createToken({ name: 'Open', pattern: /[([]/ });
export const Close = createToken({ name: 'Close', pattern: /[)\]]/ });
export const Comma = createToken({ name: 'Comma', pattern: /,/, categories: Loose });
export const Dot = createToken({ name: 'Dot', pattern: /\./, categories: Loose });
export const PlusSign = createToken({ name: 'PlusSign', pattern: /\+/, categories: Loose });
export const Ampersand = createToken({ name: 'Ampersand', pattern: /&/, categories: Loose });
export const Equals = createToken({ name: 'Equals', pattern: /=/, categories: Loose });
export const TimesSign = createToken({ name: 'TimesSign', pattern: /[×✕✖]/, categories: Loose });
export const DegreeSign = createToken({ name: 'DegreeSign', pattern: /[°˚º]/, categories: Loose });
export const PercentSign = createToken({ name: 'PercentSign', pattern: /%/, categories: Loose });
export const Quote = createToken({ name: 'Quote', pattern: /["“”″]/, categories: Loose });
export const Hash = createToken({ name: 'Hash', pattern: /#/, categories: Loose });
export const Mark = createToken({
  name: 'Mark',
  pattern: /[\uD800-\uDBFF][\uDC00-\uDFFF]|[\0-\uFFFF]/,
  line_breaks: true,
  categories: Loose,
});

// As words are known once the lexicon and the units have been asked.
const known = (name: string, ...categories: TokenType[]): TokenType =>
  createToken({ name, pattern: Lexer.NA, categories });

export const Fractional = known('Fractional', Figure);
/** A digit group that is no quantity: "00" flour, a barcode. It is emitted as a word. */
export const Code = known('Code', Loose);
export const NumberWord = known('NumberWord');
export const Multiplier = known('Multiplier');
export const HalfWord = known('HalfWord');
export const FractionNoun = known('FractionNoun');
export const Article = known('Article');
export const FewWord = known('FewWord');
export const Approximator = known('Approximator');
export const SizeWord = known('SizeWord', Loose);
export const MoreWord = known('MoreWord', Loose);
export const UnitWord = known('UnitWord', Loose);
export const ScaleUnit = known('ScaleUnit', UnitWord);
export const PackUnit = known('PackUnit', UnitWord);
export const PieceUnit = known('PieceUnit', UnitWord);
export const VagueUnit = known('VagueUnit', UnitWord);
export const LengthUnit = known('LengthUnit', Loose);
/** "in", which is an inch only where the words around it leave no doubt. */
export const InWord = known('InWord', Loose);
export const TimeUnit = known('TimeUnit', Loose);
export const CustomTime = known('CustomTime');
export const DegreeWord = known('DegreeWord', Loose);
export const Fahrenheit = known('Fahrenheit', Loose);
export const Celsius = known('Celsius', Loose);
/** "C" and "c", a cup or Celsius by their number. */
export const CelsiusOrCup = known('CelsiusOrCup', Loose);
export const GasWord = known('GasWord');
export const MarkWord = known('MarkWord', Loose);
export const FanWord = known('FanWord');
export const ToWord = known('ToWord', Loose);
export const OrWord = known('OrWord', Loose);
export const AndWord = known('AndWord', Loose);
export const PlusWord = known('PlusWord', Loose);
export const TimesWord = known('TimesWord', Loose);
export const ByWord = known('ByWord', Loose);
export const OfWord = known('OfWord', Loose);
export const TheWord = known('TheWord', Loose);
export const EachWord = known('EachWord', Loose);
export const BetweenWord = known('BetweenWord');

/** In the order in which the lexer tries them. */
export const lexed: TokenType[] = [
  Space,
  Word,
  Newline,
  Ordinal,
  Thousands,
  Decimal,
  Integer,
  BareDecimal,
  Vulgar,
  Hyphen,
  Dash,
  Tilde,
  Slash,
  Open,
  Close,
  Comma,
  Dot,
  PlusSign,
  Ampersand,
  Equals,
  TimesSign,
  DegreeSign,
  PercentSign,
  Quote,
  Hash,
  Mark,
];

export const vocabulary: TokenType[] = [
  ...lexed,
  Loose,
  Figure,
  Fractional,
  Code,
  NumberWord,
  Multiplier,
  HalfWord,
  FractionNoun,
  Article,
  FewWord,
  Approximator,
  SizeWord,
  MoreWord,
  UnitWord,
  ScaleUnit,
  PackUnit,
  PieceUnit,
  VagueUnit,
  LengthUnit,
  InWord,
  TimeUnit,
  CustomTime,
  DegreeWord,
  Fahrenheit,
  Celsius,
  CelsiusOrCup,
  GasWord,
  MarkWord,
  FanWord,
  ToWord,
  OrWord,
  AndWord,
  PlusWord,
  TimesWord,
  ByWord,
  OfWord,
  TheWord,
  EachWord,
  BetweenWord,
];

/** Offset after the token's last character. */
export function endOf(token: IToken): number {
  return token.startOffset + token.image.length;
}
