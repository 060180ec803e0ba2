/** The grammar of quantities side by side: sums, ranges, packs, the same said twice, and what stands between quantities. */
import type { ParserMethod, TokenType } from 'chevrotain';
import type { Draft, Quantity } from './drafts.js';
import { type Connector, join, joinGroup, joinPack } from './joins.js';
import { append, canBegin, UNITS } from './numbers.js';
import { type Simple, SimpleParser } from './simples.js';
import * as t from './tokens.js';
import { endOf, type KitchenToken } from './tokens.js';

/** A piece of what was read: a quantity, or a token that belongs to none. */
export type Part = Draft | KitchenToken;

export function isDraft(part: Part): part is Draft {
  return 'item' in part;
}

/** Reads a run of tokens. `listing` tells that it stands in an ingredient line, where "a can tomatoes" is one can. */
export function parseRun(tokens: KitchenToken[], listing: boolean): Part[] {
  parser.input = tokens;
  parser.listing = listing;
  // Every token can be read as a word, so nothing fails; were it to, the tokens stay words.
  return parser.run() ?? tokens;
}

const CONNECTORS: ReadonlyMap<TokenType, Connector> = new Map<TokenType, Connector>([
  [t.Slash, 'slash'],
  [t.OrWord, 'or'],
  [t.AndWord, 'and'],
  [t.Ampersand, 'and'],
  [t.PlusSign, 'plus'],
  [t.PlusWord, 'plus'],
  [t.ToWord, 'to'],
  [t.Hyphen, 'dash'],
  [t.Dash, 'dash'],
  [t.TimesSign, 'times'],
  [t.TimesWord, 'times'],
  [t.ByWord, 'by'],
  [t.Equals, 'equals'],
  [t.Comma, 'comma'],
]);
/** Connectors that a hyphen may stand before ("1- to 2-inch") or after ("9-by-13"). */
const HYPHENATED: ReadonlySet<TokenType> = new Set([t.ToWord, t.OrWord, t.ByWord, t.TimesWord]);
/** "2 pounds, 3 ounces", "1 hour, 10 minutes", "350°F, 180°C". */
const COMMA_JOINS: ReadonlySet<Quantity['kind']> = new Set<Quantity['kind']>([
  'measure',
  'temperature',
  'duration',
]);
class QuantityParser extends SimpleParser {
  private grouped = false;

  constructor() {
    super();
    this.performSelfAnalysis();
  }

  /** All of the tokens: quantities, and between them what belongs to none. */
  readonly run: ParserMethod<[], Part[]> = this.RULE('run', () => {
    const parts: Part[] = [];
    this.MANY(() => {
      this.OR([
        {
          ALT: () => {
            const found = this.SUBRULE(this.quantity);
            this.ACTION(() => append(parts, found));
          },
        },
        { ALT: () => parts.push(this.CONSUME(t.Loose)) },
        { ALT: () => parts.push(this.CONSUME(t.Open)) },
        { ALT: () => parts.push(this.CONSUME(t.Close)) },
      ]);
    });
    return parts;
  });

  /** "between 3 and 5 minutes", or any series. */
  private readonly quantity: ParserMethod<[], Part[]> = this.RULE('quantity', () => {
    let parts: Part[] = [];
    this.OR([
      {
        ALT: () => {
          const between: KitchenToken = this.CONSUME(t.BetweenWord);
          this.OPTION(() => (parts = this.SUBRULE(this.series, { ARGS: [true] })));
          this.ACTION(() => (parts = opened(between, parts)));
        },
      },
      { ALT: () => (parts = this.SUBRULE2(this.series, { ARGS: [false] })) },
    ]);
    return parts;
  });

  /** Quantities side by side, joined from the left where two are one: "1 lb 2 oz", "3 to 5 minutes", "2 (14-ounce) cans". */
  private readonly series: ParserMethod<[boolean], Part[]> = this.RULE('series', (between: boolean) => {
    const parts: Part[] = [];
    let current: Draft | null = null;
    let bounded = between;
    const first = this.SUBRULE(this.simple);
    this.ACTION(() => {
      current = first.draft;
      append(parts, first.tokens);
    });
    this.MANY({
      GATE: () => current !== null && this.goesOn(current),
      DEF: () => {
        this.OR([
          {
            ALT: () => {
              const { how, tokens } = this.SUBRULE(this.connector);
              const next = this.SUBRULE2(this.simple);
              this.ACTION(() => {
                current = advance(parts, current!, bounded && how === 'and' ? 'to' : how, tokens, next);
                bounded = false;
              });
            },
          },
          {
            ALT: () => {
              const next = this.SUBRULE3(this.simple);
              this.ACTION(() => (current = advance(parts, current!, 'next', [], next)));
            },
          },
          {
            ALT: () => {
              const group = this.SUBRULE(this.group);
              this.ACTION(() => (current = enclose(parts, current!, group)));
            },
          },
          {
            ALT: () => {
              const unit: KitchenToken = this.CONSUME(t.UnitWord);
              this.ACTION(() => (current = joinPack(current!, unit)));
            },
          },
        ]);
      },
    });
    this.ACTION(() => {
      if (current !== null) parts.push(current);
    });
    return parts;
  });

  /** What may join two quantities, with the hyphens of "1- to 2-inch" and "9-by-13". */
  private readonly connector: ParserMethod<[], { how: Connector; tokens: KitchenToken[] }> = this.RULE(
    'connector',
    () => {
      const tokens: KitchenToken[] = [];
      this.OPTION({
        GATE: () => HYPHENATED.has(this.LA(2).tokenType),
        DEF: () => tokens.push(this.CONSUME(t.Hyphen)),
      });
      const token: KitchenToken = this.OR([
        { ALT: () => this.CONSUME(t.Slash) },
        { ALT: () => this.CONSUME(t.OrWord) },
        { ALT: () => this.CONSUME(t.AndWord) },
        { ALT: () => this.CONSUME(t.Ampersand) },
        { ALT: () => this.CONSUME(t.PlusSign) },
        { ALT: () => this.CONSUME(t.PlusWord) },
        { ALT: () => this.CONSUME(t.ToWord) },
        { ALT: () => this.CONSUME2(t.Hyphen) },
        { ALT: () => this.CONSUME(t.Dash) },
        { ALT: () => this.CONSUME(t.TimesSign) },
        { ALT: () => this.CONSUME(t.TimesWord) },
        { ALT: () => this.CONSUME(t.ByWord) },
        { ALT: () => this.CONSUME(t.Equals) },
        { ALT: () => this.CONSUME(t.Comma) },
      ]);
      tokens.push(token);
      this.OPTION2(() => tokens.push(this.CONSUME3(t.Hyphen)));
      return { how: CONNECTORS.get(token.tokenType) ?? 'next', tokens };
    },
  );

  /** Parentheses right after a quantity. */
  private readonly group: ParserMethod<[], Part[]> = this.RULE('group', () => {
    const parts: Part[] = [this.CONSUME(t.Open)];
    this.ACTION(() => (this.grouped = true));
    this.MANY(() => {
      this.OR([
        {
          ALT: () => {
            const found = this.SUBRULE(this.quantity);
            this.ACTION(() => append(parts, found));
          },
        },
        { ALT: () => parts.push(this.CONSUME(t.Loose)) },
      ]);
    });
    this.OPTION(() => parts.push(this.CONSUME(t.Close)));
    this.ACTION(() => (this.grouped = false));
    return parts;
  });

  /** Whether a series goes on: with a quantity, a connector before one, parentheses, or the unit of a pack. */
  private goesOn(current: Draft): boolean {
    const next = this.token(1);
    if (UNITS.has(next.tokenType)) return takesPackUnit(current, next);
    if (next.tokenType === t.Open) return !this.grouped && this.quantityAt(2);
    if (canBegin(next)) return this.quantityAt(1);
    const how = CONNECTORS.get(next.tokenType);
    if (how === undefined) return false;
    if (how === 'comma' && !COMMA_JOINS.has(current.item.kind)) return false;
    let at = 2;
    if (next.tokenType === t.Hyphen && HYPHENATED.has(this.token(2).tokenType)) at = 3;
    if (this.token(at).tokenType === t.Hyphen) at++;
    return this.quantityAt(at);
  }
}

const parser = new QuantityParser();

/** The current quantity with the next: one, or the first put aside and the second current. */
function advance(
  parts: Part[],
  current: Draft,
  how: Connector,
  tokens: readonly KitchenToken[],
  next: Simple,
): Draft | null {
  const joined = next.draft === null || next.tokens.length > 0 ? null : join(current, how, next.draft);
  if (joined !== null) return joined.ranged ? withWaiting(parts, joined) : joined;
  parts.push(current);
  append(parts, tokens);
  append(parts, next.tokens);
  return next.draft;
}

/** "1-2 cups / 240-480 ml": the second range is complete only now, and the first waits before the slash. */
function withWaiting(parts: Part[], range: Draft): Draft {
  const [waiting, connector] = parts.slice(-2);
  if (waiting === undefined || connector === undefined || !isDraft(waiting) || isDraft(connector))
    return range;
  const how = CONNECTORS.get(connector.tokenType);
  const whole = how === 'slash' || how === 'or' || how === 'equals' ? join(waiting, how, range) : null;
  if (whole === null) return range;
  parts.length -= 2;
  return whole;
}

/** The current quantity with the parentheses after it, if they say the same or the size of a pack. */
function enclose(parts: Part[], current: Draft, group: readonly Part[]): Draft | null {
  const close = group[group.length - 1]!;
  const inside = group.slice(1, -1);
  const drafts = inside.filter(isDraft);
  const closed = !isDraft(close) && close.tokenType === t.Close;
  if (closed && inside.every((part) => isDraft(part) || SEPARATORS.has(part.tokenType))) {
    const joined = joinGroup(current, drafts, endOf(close));
    if (joined !== null) return joined;
  }
  parts.push(current);
  append(parts, group);
  return null;
}

const SEPARATORS: ReadonlySet<TokenType> = new Set([
  t.Slash,
  t.OrWord,
  t.Comma,
  t.Equals,
  t.EachWord,
  t.Dot,
  t.Hyphen,
  t.Dash,
]);

/** "between" before a range belongs to it; before anything else it is a word. */
function opened(between: KitchenToken, parts: readonly Part[]): Part[] {
  const [first, ...others] = parts;
  if (first !== undefined && isDraft(first) && spansTwo(first.item)) {
    return [{ ...first, item: { ...first.item, start: between.startOffset } }, ...others];
  }
  return [between, ...parts];
}

function spansTwo(item: Quantity): boolean {
  const amount =
    item.kind === 'duration'
      ? item.seconds
      : item.kind === 'dimension'
        ? item.lengths[0]!.amount
        : item.amount;
  return amount !== null && !amount.low.equals(amount.high);
}

function takesPackUnit(current: Draft, token: KitchenToken): boolean {
  return joinPack(current, token) !== null;
}
