/** Finds in a text the runs of words that can hold a quantity, and has only those parsed; plain words pass by. */
import { isFigure, lex } from './lexer.js';
import { canBegin } from './numbers.js';
import { type Part, parseRun } from './quantities.js';
import type { KitchenToken } from './tokens.js';
import * as t from './tokens.js';

/** A passage as quantities and tokens, in order. */
export function partsOfText(text: string): Part[] {
  return partsOf(lex(text), false);
}

/** One ingredient line, where line breaks are spaces and a unit may stand for one of it ("Pinch of salt"). */
export function partsOfLine(text: string): Part[] {
  const tokens = lex(text).filter((token) => token.tokenType !== t.Newline);
  return partsOf(withOnes(tokens), true);
}

const ENDS_RUN = new Set([t.Word, t.Newline, t.Dot, t.Mark, t.Ordinal, t.Code, t.Quote]);

function partsOf(tokens: readonly KitchenToken[], listing: boolean): Part[] {
  const parts: Part[] = [];
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at]!;
    if (!canBegin(token) || !begins(tokens, at)) {
      spread(parts, token);
      at++;
      continue;
    }
    const run: KitchenToken[] = [];
    for (; at < tokens.length && !ENDS_RUN.has(tokens[at]!.tokenType); at++) {
      run.push(tokens[at]!);
      // A line break between a number and its unit is a space.
      if (tokens[at + 1]?.tokenType === t.Newline && awaitsMore(tokens[at]!) && continues(tokens[at + 2]))
        at++;
    }
    for (const part of parseRun(run, listing)) {
      if ('item' in part) parts.push(part);
      else spread(parts, part);
    }
  }
  return parts;
}

/** A fixed phrase that no quantity took is words again; an article that was put in disappears. */
function spread(parts: Part[], token: KitchenToken): void {
  if (token.parts !== undefined) for (const part of token.parts) parts.push(part);
  else if (token.image !== '') parts.push(token);
}

/** A first look at what follows saves starting the parser at every "a" and "about". */
function begins(tokens: readonly KitchenToken[], at: number): boolean {
  const { tokenType } = tokens[at]!;
  if (tokenType !== t.Article && tokenType !== t.Approximator && tokenType !== t.BetweenWord) return true;
  const next = tokens[at + 1];
  return next !== undefined && !ENDS_RUN.has(next.tokenType);
}

function awaitsMore(token: KitchenToken): boolean {
  return (
    canBegin(token) ||
    token.tokenType === t.ToWord ||
    token.tokenType === t.OrWord ||
    token.tokenType === t.MoreWord
  );
}

function continues(token: KitchenToken | undefined): boolean {
  if (token === undefined || token.tokenType === t.Hyphen || token.tokenType === t.Dash) return false;
  return !ENDS_RUN.has(token.tokenType);
}

/** Where a line opens with a unit, or an approximation stands right before one, an empty article is put before the unit. */
function withOnes(tokens: readonly KitchenToken[]): KitchenToken[] {
  const result: KitchenToken[] = [];
  let opening = true;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    const unitAt = token.tokenType === t.SizeWord ? at + 1 : at;
    const unit = tokens[unitAt];
    if (unit !== undefined && isUnit(unit)) {
      const near =
        unitAt === at && tokens[at - 1]?.tokenType === t.Approximator && !isCounted(tokens[at - 2]);
      if (near || (opening && opensMeasure(unit, tokens[unitAt + 1], tokens[unitAt + 2]))) {
        result.push(emptyArticle(token));
        opening = false;
      }
    }
    if (token.tokenType === t.Word || token.tokenType === t.SizeWord || canBegin(token) || isUnit(token))
      opening = false;
    result.push(token);
  }
  return result;
}

function isCounted(token: KitchenToken | undefined): boolean {
  return token !== undefined && canBegin(token);
}

function opensMeasure(
  unit: KitchenToken,
  next: KitchenToken | undefined,
  after: KitchenToken | undefined,
): boolean {
  // "Leaves of 1 bunch parsley" asks for a part of what is measured after it.
  if (next?.tokenType === t.OfWord) return after === undefined || !canBegin(after);
  if (next?.tokenType === t.EachWord) return unit.tokenType === t.VagueUnit;
  return (
    unit.tokenType === t.VagueUnit && unit.payload?.unit?.unclear === false && next?.tokenType === t.Word
  );
}

function isUnit(token: KitchenToken): boolean {
  return !isFigure(token) && (token.tokenType.CATEGORIES?.includes(t.UnitWord) ?? false);
}

function emptyArticle(before: KitchenToken): KitchenToken {
  return {
    image: '',
    startOffset: before.startOffset,
    tokenType: t.Article,
    tokenTypeIdx: t.Article.tokenTypeIdx!,
  };
}
