/** The grammar of one quantity: a number with its unit, a temperature, a duration, a length. */
import type { ParserMethod, TokenType } from 'chevrotain';
import type Fraction from 'fraction.js';
import { singular } from '../larder/names.js';
import { type Draft, isPackSize, measure, ONE, packOf, type Quantity, secondsOf, single } from './drafts.js';
import { isFigure } from './lexer.js';
import { NumberParser, type Numeral } from './numbers.js';
import * as t from './tokens.js';
import { endOf, type KitchenToken } from './tokens.js';
import type { Amount, Approximation, Scale } from './types.js';

/** What a simple quantity came to: a draft if any, after tokens that turned out to be words. */
export interface Simple {
  readonly draft: Draft | null;
  readonly tokens: readonly KitchenToken[];
}
const BETWEEN_NUMBER_AND_UNIT: ReadonlySet<TokenType> = new Set([t.SizeWord, t.MoreWord, t.Approximator]);
/** A letter F or C after a number below this is no temperature. */
const LEAST_DEGREES = 30;
const LEAST_DEGREES_IN_LOWER_CASE = 60;
const MOST_WORDS_BEFORE_UNIT = 3;

/** Rules for single quantities, on which those for series are built. */
export abstract class SimpleParser extends NumberParser {
  /** Whether the text is an ingredient line, where "a can tomatoes" is one can. */
  listing = false;

  /** One quantity, with what tells how near it is. */
  protected readonly simple: ParserMethod<[], Simple> = this.RULE('simple', () => {
    const before: KitchenToken[] = [];
    let core: Simple = { draft: null, tokens: [] };
    this.OR([
      {
        ALT: () => {
          this.AT_LEAST_ONE(() => before.push(this.CONSUME(t.Approximator)));
          this.OPTION(() => (core = this.SUBRULE(this.core)));
        },
      },
      { ALT: () => (core = this.SUBRULE2(this.core)) },
    ]);
    return this.ACTION(() => approximate(before, core));
  });

  private readonly core: ParserMethod<[], Simple> = this.RULE('core', () =>
    this.OR([
      {
        ALT: () => {
          const token: KitchenToken = this.CONSUME(t.CustomTime);
          return this.ACTION(() =>
            drafted({ kind: 'duration', ...extent([token]), seconds: null, unit: 'night' }),
          );
        },
      },
      { ALT: () => this.SUBRULE(this.gas) },
      { ALT: () => this.SUBRULE(this.fan) },
      { ALT: () => this.SUBRULE(this.few) },
      { ALT: () => this.SUBRULE(this.counted) },
    ]),
  );

  /** "gas mark 4", "gas 4". */
  private readonly gas: ParserMethod<[], Simple> = this.RULE('gas', () => {
    const tokens: KitchenToken[] = [this.CONSUME(t.GasWord)];
    let number: Numeral | null = null;
    this.OPTION(() => tokens.push(this.CONSUME(t.MarkWord)));
    this.OPTION2({ GATE: () => isFigure(this.LA(1)), DEF: () => (number = this.SUBRULE(this.number)) });
    return this.ACTION(() =>
      number === null
        ? words(tokens)
        : drafted(heat([...tokens, ...number.tokens], number.value, 'gas', false)),
    );
  });

  /** "fan 160C". */
  private readonly fan: ParserMethod<[], Simple> = this.RULE('fan', () => {
    const token: KitchenToken = this.CONSUME(t.FanWord);
    let found: Simple = { draft: null, tokens: [] };
    this.OPTION({ GATE: () => isFigure(this.LA(1)), DEF: () => (found = this.SUBRULE(this.counted)) });
    return this.ACTION(() => fanned(token, found));
  });

  /** "a few minutes": how many is not told. */
  private readonly few: ParserMethod<[], Simple> = this.RULE('few', () => {
    const tokens: KitchenToken[] = [this.CONSUME(t.FewWord)];
    let unit: KitchenToken | null = null;
    this.OPTION({
      GATE: () => this.LA(2).tokenType === t.TimeUnit,
      DEF: () => tokens.push(this.CONSUME(t.MoreWord)),
    });
    this.OPTION2(() => (unit = this.CONSUME(t.TimeUnit)));
    return this.ACTION(() =>
      unit === null
        ? words(tokens)
        : drafted({
            kind: 'duration',
            ...extent([...tokens, unit]),
            seconds: null,
            unit: unit.payload!.unit!.id,
          }),
    );
  });

  /** A number with what it counts or measures. */
  private readonly counted: ParserMethod<[], Simple> = this.RULE('counted', () => {
    const number = this.SUBRULE(this.number);
    let found: Simple | null = null;
    this.OPTION({
      GATE: () => this.unitFollows(number) || this.scaleFollows(number),
      DEF: () => {
        this.OR([
          {
            GATE: () => this.scaleFollows(number),
            ALT: () => (found = this.SUBRULE(this.degrees, { ARGS: [number] })),
          },
          { ALT: () => (found = this.SUBRULE(this.unit, { ARGS: [number] })) },
        ]);
      },
    });
    return this.ACTION(() => found ?? this.bare(number));
  });

  /** "°F", "degrees", "C fan". */
  private readonly degrees: ParserMethod<[Numeral], Simple> = this.RULE('degrees', (number: Numeral) => {
    const tokens: KitchenToken[] = [];
    let letter: KitchenToken | null = null;
    let fan = false;
    this.OPTION(() => tokens.push(this.CONSUME(t.Hyphen)));
    this.OPTION2(() =>
      this.OR([
        { ALT: () => tokens.push(this.CONSUME(t.DegreeSign)) },
        { ALT: () => tokens.push(this.CONSUME(t.DegreeWord)) },
      ]),
    );
    this.OPTION3(() => {
      letter = this.OR2([
        { ALT: () => this.CONSUME(t.Fahrenheit) },
        { ALT: () => this.CONSUME(t.Celsius) },
        { ALT: () => this.CONSUME(t.CelsiusOrCup) },
      ]);
      tokens.push(letter);
    });
    this.OPTION4(() => {
      tokens.push(this.CONSUME(t.FanWord));
      fan = true;
    });
    return this.ACTION(() => {
      const scale = letter === null ? null : letter.tokenType === t.Fahrenheit ? 'fahrenheit' : 'celsius';
      return drafted(heat([...number.tokens, ...tokens], number.value, scale, fan));
    });
  });

  /** "-ounce", "large cloves", "inch", "more minutes"; and the can of "14-ounce can". */
  private readonly unit: ParserMethod<[Numeral], Simple> = this.RULE('unit', (number: Numeral) => {
    const tokens: KitchenToken[] = [];
    let hyphen = false;
    let approximation: Approximation | null = null;
    let pack: KitchenToken | null = null;
    this.OPTION(() => {
      tokens.push(this.CONSUME(t.Hyphen));
      hyphen = true;
    });
    this.MANY(() => {
      this.OR([
        { ALT: () => tokens.push(this.CONSUME(t.SizeWord)) },
        { ALT: () => tokens.push(this.CONSUME(t.MoreWord)) },
        {
          ALT: () => {
            const token: KitchenToken = this.CONSUME(t.Approximator);
            tokens.push(token);
            this.ACTION(() => (approximation = token.payload!.approximation));
          },
        },
      ]);
    });
    const unit: KitchenToken = this.OR2([
      { ALT: () => this.CONSUME(t.UnitWord) },
      { ALT: () => this.CONSUME(t.CelsiusOrCup) },
      { ALT: () => this.CONSUME(t.LengthUnit) },
      { ALT: () => this.CONSUME(t.InWord) },
      { ALT: () => this.CONSUME(t.TimeUnit) },
    ]);
    tokens.push(unit);
    this.OPTION2({
      GATE: () => this.packFollows(unit, hyphen),
      DEF: () => {
        this.OPTION3(() => tokens.push(this.CONSUME2(t.Hyphen)));
        this.OPTION4(() => tokens.push(this.CONSUME2(t.SizeWord)));
        pack = this.CONSUME2(t.UnitWord);
        tokens.push(pack);
      },
    });
    return this.ACTION(() => measured(number, [...number.tokens, ...tokens], unit, pack, approximation));
  });
  private unitFollows(number: Numeral): boolean {
    let at = 1;
    if (this.token(1).tokenType === t.Hyphen) at = 2;
    for (
      let words = 0;
      words < MOST_WORDS_BEFORE_UNIT && BETWEEN_NUMBER_AND_UNIT.has(this.token(at).tokenType);
      words++
    )
      at++;
    const unit = this.token(at);
    switch (unit.tokenType) {
      case t.ScaleUnit:
      case t.CelsiusOrCup:
      case t.LengthUnit:
        return true;
      case t.VagueUnit:
      case t.PackUnit:
      case t.PieceUnit:
        return (
          this.listing || !isLoneOne(number) || !needsOf(unit) || this.token(at + 1).tokenType === t.OfWord
        );
      case t.TimeUnit:
        return (
          number.style !== 'article' ||
          unit.payload?.unit?.id !== 'second' ||
          this.token(at + 1).tokenType !== t.Word
        );
      case t.InWord:
        return this.inchesFollow(at, number);
      default:
        return false;
    }
  }

  /** "in" is an inch when hyphen or nothing joins it to the number, or a piece, a side or the closing parenthesis follows: "9-in.", "1 in piece", "(3 in)". */
  private inchesFollow(at: number, number: Numeral): boolean {
    if (at === 2 && this.token(1).tokenType === t.Hyphen) return true;
    const before = number.tokens[number.tokens.length - 1]!;
    const unit = this.token(at);
    const after = this.token(at + 1).tokenType;
    return (
      endOf(before) === unit.startOffset ||
      unit.image.endsWith('.') ||
      after === t.PieceUnit ||
      after === t.Close ||
      after === t.TimesWord ||
      after === t.TimesSign
    );
  }

  private scaleFollows(number: Numeral): boolean {
    const next = this.token(1);
    const { tokenType } = next;
    if (tokenType === t.DegreeSign || tokenType === t.DegreeWord || tokenType === t.Celsius) return true;
    if (tokenType === t.Hyphen) return this.token(2).tokenType === t.DegreeWord;
    if (tokenType !== t.Fahrenheit && tokenType !== t.CelsiusOrCup) return false;
    const long = next.image.length > 2;
    const least = long ? 0 : next.image.startsWith('c') ? LEAST_DEGREES_IN_LOWER_CASE : LEAST_DEGREES;
    return number.value.gte(least);
  }

  private packFollows(unit: KitchenToken, hyphen: boolean): boolean {
    const of = unit.payload?.unit ?? null;
    if (of === null || !isPackSize(of)) return false;
    const at = this.token(1).tokenType === t.Hyphen ? 2 : 1;
    const next = this.token(at).tokenType === t.SizeWord ? at + 1 : at;
    const { tokenType } = this.token(next);
    if (tokenType === t.PackUnit) return true;
    if (tokenType !== t.PieceUnit) return false;
    // "500 g piece of salmon" is one piece; "500 g slices of ham" are as many as it takes.
    const one = this.token(next + 1).tokenType === t.OfWord && isOne(this.token(next));
    return hyphen || one;
  }

  private bare(number: Numeral): Simple {
    const { value, style, tokens } = number;
    const start = tokens[0]!;
    const next = this.token(1);
    const definite =
      next.tokenType === t.TheWord || (next.tokenType === t.OfWord && this.token(2).tokenType === t.TheWord);
    const portion = number.style === 'fraction';
    if (portion && definite)
      return drafted({ ...measure(single(value), null, ...bounds(tokens)), share: true });
    const article =
      portion &&
      tokens[tokens.length - 1]!.tokenType === t.Article &&
      tokens[0] !== tokens[tokens.length - 1];
    if (article) return drafted(measure(single(value), null, ...bounds(tokens)));
    if (start.tokenType === t.FractionNoun) return words(tokens);
    return {
      draft: {
        item: { kind: 'count', ...extent(tokens), amount: single(value) },
        style,
        tokens,
        implied: false,
      },
      tokens: [],
    };
  }
}

function approximate(before: readonly KitchenToken[], core: Simple): Simple {
  const { draft } = core;
  if (before.length === 0) return core;
  if (draft === null || core.tokens.length > 0) return { draft, tokens: [...before, ...core.tokens] };
  const approximation = before[before.length - 1]!.payload!.approximation;
  const { startOffset } = before[0]!;
  const item = withApproximation({ ...draft.item, start: startOffset }, approximation);
  return { draft: { ...draft, item, tokens: [...before, ...draft.tokens] }, tokens: [] };
}

function withApproximation(item: Quantity, approximation: Approximation | null): Quantity {
  if (item.kind === 'duration')
    return { ...item, seconds: item.seconds && { ...item.seconds, approximation } };
  if (item.kind === 'dimension') {
    const [first, ...others] = item.lengths;
    return { ...item, lengths: [{ ...first!, amount: { ...first!.amount, approximation } }, ...others] };
  }
  return { ...item, amount: { ...item.amount, approximation } };
}

function measured(
  number: Numeral,
  tokens: readonly KitchenToken[],
  unitToken: KitchenToken,
  pack: KitchenToken | null,
  approximation: Approximation | null,
): Simple {
  const unit = unitToken.payload!.unit!;
  const amount: Amount = single(number.value, approximation);
  const [start, end] = bounds(tokens);
  if (unit.kind === 'time') {
    const seconds = secondsOf(amount, unit.id);
    return drafted({ kind: 'duration', start, end, seconds, unit: unit.id });
  }
  if (unit.kind === 'length')
    return drafted({ kind: 'dimension', start, end, lengths: [{ amount, unit: unit.id }] });
  const item = measure(amount, unit.id, start, end);
  if (pack === null) return drafted(item);
  const whole = packOf(ONE, { ...item, end: endOf(unitToken) }, pack.payload!.unit!.id, start, end);
  return { draft: { item: whole, style: 'figure', tokens: [], implied: true }, tokens: [] };
}

function heat(tokens: readonly KitchenToken[], value: Fraction, scale: Scale | null, fan: boolean): Quantity {
  return { kind: 'temperature', ...extent(tokens), amount: single(value), scale, fan, equals: [] };
}

function fanned(fan: KitchenToken, found: Simple): Simple {
  const { draft } = found;
  if (draft === null) return words([fan, ...found.tokens]);
  if (draft.item.kind !== 'temperature') return { draft, tokens: [fan] };
  return { draft: { ...draft, item: { ...draft.item, start: fan.startOffset, fan: true } }, tokens: [] };
}

function isLoneOne(number: Numeral): boolean {
  return number.style === 'article' || (number.style === 'word' && number.value.equals(1));
}

function isOne({ payload }: KitchenToken): boolean {
  return payload !== undefined && singular(payload.key) === payload.key;
}

/** A bowl or a can is a measure of what is in it only with "of". */
function needsOf(token: KitchenToken): boolean {
  const unit = token.payload?.unit ?? null;
  return unit !== null && (unit.kind === 'container' || unit.kind === 'piece' || unit.unclear);
}

function drafted(item: Quantity): Simple {
  return { draft: { item, style: 'figure', tokens: [], implied: false }, tokens: [] };
}

function words(tokens: readonly KitchenToken[]): Simple {
  return { draft: null, tokens };
}

function bounds(tokens: readonly KitchenToken[]): [number, number] {
  return [tokens[0]!.startOffset, endOf(tokens[tokens.length - 1]!)];
}

function extent(tokens: readonly KitchenToken[]): { start: number; end: number } {
  const [start, end] = bounds(tokens);
  return { start, end };
}
