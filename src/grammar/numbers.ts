/** The grammar of numbers: figures, fractions in every form, numbers in words. */
import { EmbeddedActionsParser, type IToken, type ParserMethod, type TokenType } from 'chevrotain';
import Fraction from 'fraction.js';
import { ONE, type Style } from './drafts.js';
import { isFigure } from './lexer.js';
import * as t from './tokens.js';
import { endOf, type KitchenToken } from './tokens.js';

/** Whether a quantity may begin with the token; what comes after it decides. */
export function canBegin(token: IToken): boolean {
  return isFigure(token) || BEGINNINGS.has(token.tokenType);
}

export interface Numeral {
  readonly value: Fraction;
  readonly style: Style;
  readonly tokens: readonly KitchenToken[];
}

const BEGINNINGS: ReadonlySet<TokenType> = new Set([
  t.NumberWord,
  t.Multiplier,
  t.HalfWord,
  t.FractionNoun,
  t.Article,
  t.FewWord,
  t.Approximator,
  t.CustomTime,
  t.GasWord,
  t.FanWord,
  t.BetweenWord,
]);
export const UNITS: ReadonlySet<TokenType> = new Set([t.ScaleUnit, t.PackUnit, t.PieceUnit, t.VagueUnit]);
const TEN = 10;
const HUNDRED = 100;

/** Rules for numbers, on which those for quantities are built. */
export abstract class NumberParser extends EmbeddedActionsParser {
  constructor() {
    super(t.vocabulary, { maxLookahead: 1, recoveryEnabled: false });
  }

  protected readonly number: ParserMethod<[], Numeral> = this.RULE('number', () => {
    const number = this.OR([
      { ALT: () => this.SUBRULE(this.figures) },
      { ALT: () => this.SUBRULE(this.spelled) },
      { ALT: () => this.SUBRULE(this.one) },
    ]);
    const tokens: KitchenToken[] = [];
    this.OPTION({
      GATE: () => number.style === 'fraction' && this.portionFollows(),
      DEF: () => {
        this.OPTION2(() => tokens.push(this.CONSUME(t.OfWord)));
        this.OPTION3({
          GATE: () => this.LA(1).payload !== undefined,
          DEF: () => tokens.push(this.CONSUME(t.Article)),
        });
      },
    });
    return this.ACTION(() =>
      tokens.length === 0 ? number : { ...number, tokens: [...number.tokens, ...tokens] },
    );
  });

  /** "2", "1.5", "½", "1 1/2", "1-1/2", "1 & 1/2", "1 and a half", "2 dozen", "2x". */
  private readonly figures: ParserMethod<[], Numeral> = this.RULE('figures', () => {
    const token: KitchenToken = this.CONSUME(t.Figure);
    const tokens = [token];
    const rest: KitchenToken[] = [];
    this.OPTION({
      GATE: () => token.tokenType === t.Integer && this.fractionFollows(),
      DEF: () => {
        const more = this.SUBRULE(this.andFraction);
        this.ACTION(() => append(rest, more));
      },
    });
    this.OPTION2(() =>
      rest.push(
        this.OR([{ ALT: () => this.CONSUME(t.Multiplier) }, { ALT: () => this.CONSUME(t.FractionNoun) }]),
      ),
    );
    this.OPTION3({
      GATE: () => this.timesAlone(),
      DEF: () =>
        this.OR2([
          { ALT: () => tokens.push(this.CONSUME(t.TimesWord)) },
          { ALT: () => tokens.push(this.CONSUME(t.TimesSign)) },
        ]),
    });
    return this.ACTION(() => {
      const value = withRest(token.payload!.value ?? ZERO, rest);
      const style: Style = value.lt(1) ? 'fraction' : 'figure';
      return {
        value,
        style: style === 'fraction' && token.tokenType === t.Decimal ? 'figure' : style,
        tokens: [token, ...rest, ...tokens.slice(1)],
      };
    });
  });

  /** "two", "twenty-four", "two thirds", "one and a half", "two dozen", "half", "a dozen". */
  private readonly spelled: ParserMethod<[], Numeral> = this.RULE('spelled', () => {
    const token: KitchenToken = this.OR([
      { ALT: () => this.CONSUME(t.NumberWord) },
      { ALT: () => this.CONSUME(t.Multiplier) },
      { ALT: () => this.CONSUME(t.HalfWord) },
      { ALT: () => this.CONSUME(t.FractionNoun) },
    ]);
    const rest: KitchenToken[] = [];
    let units: KitchenToken | null = null;
    this.OPTION({
      GATE: () => this.LA(1).tokenType === t.Hyphen && isTens(token) && this.LA(2).tokenType === t.NumberWord,
      DEF: () => {
        rest.push(this.CONSUME(t.Hyphen));
        units = this.CONSUME2(t.NumberWord);
        rest.push(units);
      },
    });
    this.OPTION2({
      GATE: () => token.tokenType === t.NumberWord && (this.fractionFollows() || this.fractionNounFollows()),
      DEF: () => {
        const more = this.SUBRULE(this.andFraction);
        this.ACTION(() => append(rest, more));
      },
    });
    this.OPTION3({
      GATE: () => token.tokenType === t.NumberWord,
      DEF: () => rest.push(this.CONSUME2(t.Multiplier)),
    });
    return this.ACTION(() => {
      const value = withRest(token.payload!.value!, rest);
      const style: Style = value.lt(1) ? 'fraction' : 'word';
      return { value, style, tokens: [token, ...rest] };
    });
  });

  /** "a", "a half", "a quarter", "a dozen". */
  private readonly one: ParserMethod<[], Numeral> = this.RULE('one', () => {
    const token: KitchenToken = this.CONSUME(t.Article);
    let other: KitchenToken | null = null;
    this.OPTION(() => {
      other = this.OR([
        { ALT: () => this.CONSUME(t.HalfWord) },
        { ALT: () => this.CONSUME(t.FractionNoun) },
        { ALT: () => this.CONSUME(t.Multiplier) },
      ]);
    });
    return this.ACTION((): Numeral => {
      if (other === null) return { value: ONE.low, style: 'article', tokens: [token] };
      const value = other.payload!.value!;
      return { value, style: value.lt(1) ? 'fraction' : 'word', tokens: [token, other] };
    });
  });

  /** The rest of a mixed number, or the fraction after a number word: "1/2", "-1/2", "and a half", "thirds". */
  private readonly andFraction: ParserMethod<[], KitchenToken[]> = this.RULE('andFraction', () => {
    const tokens: KitchenToken[] = [];
    this.OPTION(() =>
      tokens.push(
        this.OR([
          { ALT: () => this.CONSUME(t.Hyphen) },
          { ALT: () => this.CONSUME(t.Dash) },
          { ALT: () => this.CONSUME(t.AndWord) },
          { ALT: () => this.CONSUME(t.Ampersand) },
          { ALT: () => this.CONSUME(t.PlusSign) },
        ]),
      ),
    );
    this.OPTION2(() =>
      tokens.push(
        this.OR2([{ ALT: () => this.CONSUME(t.Article) }, { ALT: () => this.CONSUME(t.NumberWord) }]),
      ),
    );
    tokens.push(
      this.OR3([
        { ALT: () => this.CONSUME(t.Figure) },
        { ALT: () => this.CONSUME(t.HalfWord) },
        { ALT: () => this.CONSUME(t.FractionNoun) },
      ]),
    );
    return tokens;
  });

  /** Whether a quantity begins at the token `at` ahead. An article or an approximation needs more than itself. */
  protected quantityAt(at: number): boolean {
    const { tokenType } = this.token(at);
    if (tokenType === t.Approximator) return this.quantityAt(at + 1);
    if (tokenType === t.Article) {
      const after = this.token(at + 1).tokenType;
      return isFigure(this.token(at + 1)) || UNITS.has(after) || ARTICLE_FOLLOWERS.has(after);
    }
    return tokenType !== t.BetweenWord && canBegin(this.token(at));
  }

  /** After "half" or "1/4": an article, or "of" and a unit or article: "half a cup", "3/4 of a cup", "a quarter of a lemon". */
  private portionFollows(): boolean {
    const first = this.token(1).tokenType;
    if (first === t.Article) return true;
    if (first !== t.OfWord) return false;
    const second = this.token(2).tokenType;
    return second === t.Article || UNITS.has(second) || second === t.TimeUnit || second === t.LengthUnit;
  }

  /** After a whole number: a fraction below one that belongs to it. */
  private fractionFollows(): boolean {
    const [last, first, second, third] = [this.token(0), this.token(1), this.token(2), this.token(3)];
    // "2 ½-inch slices" are two slices, "2½-inch" is a length.
    const apart = first.tokenType === t.Vulgar && endOf(last) < first.startOffset;
    if (apart && second.tokenType === t.Hyphen && third.tokenType === t.LengthUnit) return false;
    if (isProperFraction(first)) return true;
    switch (first.tokenType) {
      case t.Hyphen:
      case t.Dash:
        return (
          isProperFraction(second) && endOf(last) === first.startOffset && endOf(first) === second.startOffset
        );
      case t.PlusSign:
        return isProperFraction(second);
      case t.AndWord:
      case t.Ampersand:
        if (isProperFraction(second)) return true;
        if (second.tokenType !== t.Article && second.tokenType !== t.NumberWord) return false;
        return third.tokenType === t.HalfWord || third.tokenType === t.FractionNoun;
      default:
        return false;
    }
  }

  private fractionNounFollows(): boolean {
    const at = this.token(1).tokenType === t.Hyphen ? 2 : 1;
    const { tokenType } = this.token(at);
    return tokenType === t.FractionNoun || tokenType === t.HalfWord;
  }

  /** "4x" before no other number. */
  private timesAlone(): boolean {
    return !this.quantityAt(2) && endOf(this.token(0)) === this.token(1).startOffset;
  }

  protected token(ahead: number): KitchenToken {
    return this.LA(ahead);
  }
}

const ARTICLE_FOLLOWERS: ReadonlySet<TokenType> = new Set([
  t.HalfWord,
  t.FractionNoun,
  t.Multiplier,
  t.TimeUnit,
  t.LengthUnit,
  t.SizeWord,
  t.Approximator,
]);
const ZERO = new Fraction(0);

export function append<T>(list: T[], more: readonly T[]): void {
  for (const one of more) list.push(one);
}

/** A whole number with what follows it: a fraction is added or, as a noun, multiplied; "dozen" multiplies. */
function withRest(first: Fraction, rest: readonly KitchenToken[]): Fraction {
  let value = first;
  let added = false;
  for (const token of rest) {
    const next = token.payload?.value ?? null;
    if (token.tokenType === t.AndWord || token.tokenType === t.Ampersand) added = true;
    if (next === null) continue;
    if (token.tokenType === t.Multiplier) value = value.mul(next);
    else if (token.tokenType === t.FractionNoun || token.tokenType === t.HalfWord)
      value = added ? value.add(next) : value.mul(next);
    else if (token.tokenType !== t.NumberWord || !added) value = value.add(next);
  }
  return value;
}

function isProperFraction(token: KitchenToken): boolean {
  if (token.tokenType !== t.Vulgar && token.tokenType !== t.Fractional) return false;
  return token.payload?.value?.lt(1) ?? false;
}

function isTens(token: KitchenToken): boolean {
  const value = token.payload?.value ?? ZERO;
  return value.gt(TEN) && value.lt(HUNDRED) && value.mod(TEN).equals(0);
}
