/** Collects what an ingredient line says, and takes from its stretches what stands in the same words everywhere. */
import { lexiconAt } from '../larder/lexicon.js';
import { unitById } from '../larder/units.js';
import { isWeighed, measure } from './drafts.js';
import { isPurpose } from './line-phrases.js';
import { keysOf, type Piece, phraseOf } from './line-pieces.js';
import type { ListingLine, Measure } from './types.js';

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

  protected addQuantity(piece: Piece): void {
    const { item } = piece.draft!;
    const { line } = this;
    if (item.kind === 'dimension') line.dimensions.push(item);
    if (item.kind !== 'measure' && item.kind !== 'count') return;
    const stated = item.kind === 'measure' ? item : measure(item.amount, null, item.start, item.end);
    const first = line.measures[0];
    if (first === undefined) line.measures.push(stated);
    else if (stated.unit !== null) line.measures[0] = alsoSaid(first, stated);
  }

  /** Takes out what leaves the cook free ("optional", "to taste", "as needed") and "divided", wherever it stands. */
  protected withoutFlags(pieces: readonly Piece[]): Piece[] {
    const keys = keysOf(pieces);
    const kept: Piece[] = [];
    for (let at = 0; at < pieces.length; ) {
      // "plus more as needed" is one phrase, and leaves the amount before it as it is.
      if (lexiconAt(keys, at, 'plus-more') !== null) return [...kept, ...pieces.slice(at)];
      const optional = lexiconAt(keys, at, 'optional');
      const toTaste = lexiconAt(keys, at, 'to-taste');
      const asNeeded = lexiconAt(keys, at, 'as-needed');
      const divided = lexiconAt(keys, at, 'divided');
      const flag = optional ?? toTaste ?? asNeeded ?? divided;
      if (flag === null) {
        kept.push(pieces[at]!);
        at++;
        continue;
      }
      if (optional !== null) this.line.optional = true;
      else if (toTaste !== null) this.line.toTaste = true;
      else if (asNeeded !== null) this.line.asNeeded = true;
      else this.line.divided = true;
      at += flag.length;
    }
    return kept;
  }

  /** Cuts off what closes a stretch: "plus more for dusting", "for the pan", "to serve". */
  protected withoutClosing(pieces: readonly Piece[], afterName: boolean): readonly Piece[] {
    const keys = keysOf(pieces);
    for (let at = 0; at < pieces.length; at++) {
      const more = lexiconAt(keys, at, 'plus-more') !== null;
      if (!more && !isPurpose(keys, at, afterName)) continue;
      const phrase = phraseOf(this.text, pieces.slice(at));
      if (more) this.line.plusMore ??= phrase;
      else this.line.purpose ??= phrase;
      return pieces.slice(0, at);
    }
    return pieces;
  }
}

const MOST_EQUALS = 6;

/** A measure said after another of the same thing: the size of a pack, or the same in other units. */
function alsoSaid(first: Measure, next: Measure): Measure {
  const container = first.unit !== null && unitById(first.unit).kind === 'container';
  if (container && first.pack === null && isWeighed(next)) return { ...first, pack: next };
  return first.equals.length >= MOST_EQUALS ? first : { ...first, equals: [...first.equals, next] };
}
