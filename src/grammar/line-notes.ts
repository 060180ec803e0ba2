/** Collects what an ingredient line says, and takes from its stretches what stands in the same words everywhere. */
import Fraction from 'fraction.js';
import { lexiconAt } from '../larder/lexicon.js';
import { unitById } from '../larder/units.js';
import { isWeighed, measure, sizeNumber } from './drafts.js';
import { closingAt, flagAt } from './line-phrases.js';
import { keysOf, type Piece, phraseOf } from './line-pieces.js';
import { jointOf } from './naming.js';
import type { ListingLine, Measure } from './types.js';
import { stateLength } from './words.js';

type Writable<T> = { -readonly [K in keyof T]: T[K] extends readonly (infer E)[] ? E[] : T[K] };

/** The line so far; the reader of lines is built on it. */
export abstract class LineNotes {
  protected readonly line: Writable<ListingLine>;

  constructor(protected readonly text: string) {
    this.line = {
      text,
      measures: [],
      foods: [],
      dimensions: [],
      size: null,
      states: [],
      preparation: [],
      optional: false,
      divided: false,
      toTaste: false,
      asNeeded: false,
      plusMore: null,
      purpose: null,
      asides: [],
      unread: [],
    };
  }

  /** A quantity of the whole; `total` where the line says that it is of all the pieces together. */
  protected addQuantity(piece: Piece, total = false): void {
    const { item } = piece.draft!;
    const { line } = this;
    if (item.kind === 'dimension') line.dimensions.push(item);
    if (item.kind !== 'measure' && item.kind !== 'count') return;
    const stated = item.kind === 'measure' ? item : measure(item.amount, null, item.start, item.end);
    const first = line.measures[0];
    if (first === undefined) line.measures.push(stated);
    else if (stated.unit !== null) line.measures[0] = alsoSaid(first, stated, total);
  }

  /** Takes out what leaves the cook free ("optional", "to taste", "as needed") and "divided", wherever it stands. */
  protected withoutFlags(pieces: readonly Piece[]): Piece[] {
    const keys = keysOf(pieces);
    const kept: Piece[] = [];
    for (let at = 0; at < pieces.length; ) {
      // "plus more as needed" is one phrase, and leaves the amount before it as it is.
      if (lexiconAt(keys, at, 'plus-more') !== null) return [...kept, ...pieces.slice(at)];
      const flag = flagAt(keys, at);
      if (flag === null) {
        kept.push(pieces[at]!);
        at++;
        continue;
      }
      if (flag.is === 'optional') this.line.optional = true;
      else if (flag.is === 'to-taste') this.line.toTaste = true;
      else if (flag.is === 'as-needed') this.line.asNeeded = true;
      else this.line.divided = true;
      at += flag.length;
    }
    return kept;
  }

  /** Cuts off what closes a stretch: "plus more for dusting", "for the pan", "to serve". */
  protected withoutClosing(pieces: readonly Piece[], afterName: boolean): readonly Piece[] {
    const keys = keysOf(pieces);
    let at = closingAt(keys, afterName);
    if (at < 0) return pieces;
    let more = lexiconAt(keys, at, 'plus-more') !== null;
    const sum = more ? -1 : extraBefore(pieces, keys, at);
    if (sum >= 0) {
      more = true;
      at = sum;
    }
    const phrase = phraseOf(this.text, pieces.slice(at));
    if (more) this.line.plusMore ??= phrase;
    else this.line.purpose ??= phrase;
    return pieces.slice(0, at);
  }
}

/** Where "plus 2 tablespoons" or "plus 2 tablespoons melted" begins before a purpose at `at`; -1 where it does not stand there. */
function extraBefore(pieces: readonly Piece[], keys: readonly string[], at: number): number {
  const amount = pieces.slice(0, at).findLastIndex((piece) => piece.draft !== null);
  if (amount < 1 || jointOf(pieces[amount - 1]!) !== 'and') return -1;
  const between = at - amount - 1;
  return between === 0 || stateLength(keys, amount + 1) === between ? amount - 1 : -1;
}

const MOST_EQUALS = 6;

/** A measure said after another of the same thing: the size of a pack, or the same in other units. */
function alsoSaid(first: Measure, next: Measure, total: boolean): Measure {
  const container = first.unit !== null && unitById(first.unit).kind === 'container';
  if (container && !total && isWeighed(next)) {
    if (first.pack === null) return { ...first, pack: next };
    if (isAlike(first.pack, next))
      return { ...first, pack: { ...first.pack, equals: [...first.pack.equals, next] } };
  }
  return first.equals.length >= MOST_EQUALS ? first : { ...first, equals: [...first.equals, next] };
}

/** "8 oz; 227 g": the sizes differ by no more than rounding does. */
function isAlike(one: Measure, other: Measure): boolean {
  if (one.unit === null || other.unit === null || one.equals.length >= MOST_EQUALS) return false;
  if (unitById(one.unit).kind !== unitById(other.unit).kind) return false;
  const [a, b] = [one, other].map(({ amount, unit }) => amount.low.mul(sizeNumber(unit!)));
  return a!.lt(b!.mul(ROUNDING)) && b!.lt(a!.mul(ROUNDING));
}

const ROUNDING = new Fraction(11, 10);
