/** Reads a line of an ingredient list: how much of what, in which state, and what the cook is told about it. */
import { foodAt, foodNamed } from '../larder/foods.js';
import { lexiconAt } from '../larder/lexicon.js';
import { unitById, unitNamed } from '../larder/units.js';
import { measure, ONE } from './drafts.js';
import { LineNotes } from './line-notes.js';
import {
  formsIn,
  formsMade,
  isFoodList,
  isStatedFood,
  opensWithPreparation,
  skipForms,
} from './line-phrases.js';
import {
  keysOf,
  type Lead,
  type Piece,
  phraseOf,
  QUANTITY_KEY,
  type Segment,
  segmentsOf,
  textOf,
} from './line-pieces.js';
import { jointOf, looksLikeFood, type Named, namesIn } from './naming.js';
import type { ListedFood, ListingLine, Measure } from './types.js';
import { commonName, rowEndingAt, rowOf, trailingUnit } from './words.js';

/** One ingredient line, without bullet or number. Never throws; what it does not understand stands in `unread`. */
export function readListing(text: string): ListingLine {
  return new LineReader(text).read();
}

class LineReader extends LineNotes {
  read(): ListingLine {
    const segments = segmentsOf(this.text);
    const head = this.headOf(segments.filter((segment) => !isInside(segment)));
    this.readHead(head.pieces);
    const listed = isFoodList(head.rest, this.line.measures.length > 0, this.line.foods.length > 0);
    for (const segment of head.rest.slice(0, listed.length)) {
      const from = jointOf(segment.pieces[0]!) === null ? 0 : 1;
      this.addFoods(namesIn(segment.pieces.slice(from)).foods, listed.joined);
    }
    for (const segment of head.rest.slice(listed.length)) this.readTail(segment.pieces, segment.lead);
    for (const segment of segments) if (isInside(segment)) this.readTail(segment.pieces, segment.lead);
    this.shareNouns();
    return this.line;
  }

  /** The stretch that names the food, with those before it that only measure or describe; a label before a colon is an aside. */
  private headOf(main: readonly Segment[]): { pieces: Piece[]; rest: Segment[] } {
    let pieces: Piece[] = [];
    let at = 0;
    for (; at < main.length; at++) {
      const more = this.withoutFlags(main[at]!.pieces);
      for (const piece of more) pieces.push(piece);
      if (!looksLikeFood(more, keysOf(more), 0)) continue;
      const next = main[at + 1];
      if (next?.lead === 'comma' && isAdjectives(pieces) && endsInFood(next.pieces)) continue;
      if (next?.lead === 'dash' && isBrokenName(pieces, next.pieces)) continue;
      const label = next?.lead === 'colon' && pieces.every((piece) => piece.draft === null);
      if (!label || !looksLikeFood(next.pieces, keysOf(next.pieces), 0)) break;
      this.line.asides.push(phraseOf(this.text, pieces));
      pieces = [];
    }
    return { pieces, rest: main.slice(at + 1) };
  }

  private readHead(all: readonly Piece[]): void {
    const pieces = this.withoutClosing(all, true);
    const keys = keysOf(pieces);
    let at = skipForms(keys, 0);
    let forms = formsIn(keys.slice(0, at));
    for (; at < pieces.length; at++) {
      const piece = pieces[at]!;
      const article = lexiconAt(keys, at, 'article') !== null && lexiconAt(keys, at, 'vague-amount') === null;
      if (piece.draft !== null) this.addQuantity(piece);
      else if (article && this.line.measures.length === 0) {
        if (looksLikeFood(pieces, keys, at + 1))
          this.line.measures.push(measure(ONE, null, piece.start, piece.end));
      } else if (skipForms(keys, at) > at && forms.length === 0) {
        const end = skipForms(keys, at);
        forms = formsIn(keys.slice(at, end));
        at = end - 1;
      } else if (keys[at] !== 'of' && keys[at] !== 'the' && !isBeforeQuantity(keys, at)) break;
    }
    at = this.skipVagueAmount(keys, at);
    const { foods, tail } = namesIn(pieces.slice(at));
    this.addFoods(this.withUnitOfName(foods), null);
    if (this.line.foods.length === 0) this.nameByUnit();
    this.measureByLength();
    this.setForms(forms);
    if (tail.length > 0) this.readTail(tail, 'start');
  }

  /** "a little", "few pinches of": nothing is measured. */
  private skipVagueAmount(keys: readonly string[], from: number): number {
    const vague = this.line.measures.length === 0 ? lexiconAt(keys, from, 'vague-amount') : null;
    if (vague === null) return from;
    const at = from + vague.length;
    return unitNamed(keys[at] ?? '') !== null && keys[at + 1] === 'of' ? at + 2 : at;
  }

  /** "4 thinly cut slices of ham", "1-inch piece of ginger": the unit stands where a name would begin. */
  private withUnitOfName(foods: readonly Named[]): readonly Named[] {
    const [first, ...others] = foods;
    const { measures, dimensions } = this.line;
    if (first === undefined || (measures.length === 0 ? dimensions.length === 0 : measures[0]!.unit !== null))
      return foods;
    const keys = keysOf(first.name);
    const unit = unitNamed(keys[0] ?? '');
    if (unit !== null && keys.length > 1 && (unit.kind === 'piece' || unit.kind === 'container')) {
      const of = keys[1] === 'of' ? 2 : 1;
      const rest = first.name.slice(of);
      if (rest.length > 0 && (of === 2 || rowEndingAt(keys.slice(1)) !== null) && !isRowBeginning(keys)) {
        const stated = measures[0] ?? measure(ONE, null, dimensions[0]!.start, first.name[0]!.end);
        measures[0] = { ...stated, unit: unit.id };
        return [{ ...first, name: rest }, ...others];
      }
    }
    const trailing = measures.length === 0 ? null : trailingUnit(keys);
    if (trailing === null) return foods;
    measures[0] = { ...measures[0]!, unit: trailing };
    return [{ ...first, name: first.name.slice(0, -1) }, ...others];
  }

  private addFoods(foods: readonly Named[], joined: 'and' | 'or' | null): void {
    for (const [index, named] of foods.entries()) {
      const { line } = this;
      const before = line.foods[line.foods.length - 1];
      for (const state of named.states) line.states.push(phraseOf(this.text, state));
      if (named.size !== null && line.size === null) line.size = phraseOf(this.text, named.size);
      const own = this.ownMeasures(named);
      // "diced half onion": the amount stands among the states.
      if (before === undefined && line.measures.length === 0) for (const one of own) line.measures.push(one);
      const measures = before === undefined ? [] : own;
      const how = before === undefined ? 'first' : index === 0 ? (joined ?? named.joined) : named.joined;
      if (named.name.length > 0) line.foods.push(this.foodOf(named, how, measures));
      else if (before !== undefined && (measures.length > 0 || named.states.length > 0) && how !== 'first') {
        line.foods.push({ ...before, joined: how, measures });
      }
    }
  }

  private foodOf(named: Named, joined: ListedFood['joined'], measures: readonly Measure[]): ListedFood {
    const phrase = phraseOf(this.text, named.name);
    const before = this.line.foods[this.line.foods.length - 1];
    let text = textOf(this.text, named.name);
    let row = rowOf(keysOf([...named.name, ...named.shared]));
    if (named.shared.length > 0) text = `${text} ${textOf(this.text, named.shared)}`;
    else if (row === null && before !== undefined) {
      // "black (or green) tea", "bread flour (or all-purpose)": the noun is the one before.
      const whole = `${text} ${before.text.split(' ').at(-1)}`;
      const food = foodNamed(whole);
      if (food !== null) [text, row] = [whole, food];
    }
    return {
      start: phrase.start,
      end: phrase.end,
      text,
      name: commonName(text),
      row,
      joined,
      form: null,
      measures,
    };
  }

  /** "green, red, and yellow bell pepper": a word the larder does not know takes the noun of the food after it. */
  private shareNouns(): void {
    const { foods } = this.line;
    for (let at = foods.length - 2; at >= 0; at--) {
      const food = foods[at]!;
      const after = foods[at + 1]!.text.split(' ');
      for (
        let from = Math.max(1, after.length - MOST_SHARED_WORDS);
        from < after.length && food.row === null;
        from++
      ) {
        const text = [food.text, ...after.slice(from)].join(' ');
        const row = foodNamed(text);
        if (row !== null) foods[at] = { ...food, text, name: commonName(text), row };
        if (row !== null) break;
      }
    }
  }

  private ownMeasures(named: Named): Measure[] {
    return named.quantities.flatMap(({ draft }) => {
      const { item } = draft!;
      if (item.kind === 'measure') return [item];
      return item.kind === 'count' ? [measure(item.amount, null, item.start, item.end)] : [];
    });
  }

  /** "5 cloves", with no other food: the unit is the food. */
  private nameByUnit(): void {
    const first = this.line.measures[0];
    if (first === undefined || first.unit === null || unitById(first.unit).kind !== 'piece') return;
    const row = rowOf([unitById(first.unit).names[0]!]);
    if (row === null) return;
    const words = this.text.slice(first.start, first.end).trimEnd();
    const start = first.start + words.lastIndexOf(' ') + 1;
    const end = first.start + words.length;
    const text = this.text.slice(start, end);
    this.line.measures[0] = { ...first, unit: null };
    this.line.foods.push({
      start,
      end,
      text,
      name: commonName(text),
      row,
      joined: 'first',
      form: null,
      measures: [],
    });
  }

  /** "2 inches fresh ginger" is a measure where nothing else is. */
  private measureByLength(): void {
    const { measures, dimensions } = this.line;
    const [only, ...others] = dimensions;
    if (measures.length > 0 || only === undefined || others.length > 0 || only.lengths.length > 1) return;
    const { amount, unit } = only.lengths[0]!;
    measures.push(measure(amount, unit, only.start, only.end));
  }

  private setForms(forms: readonly string[]): void {
    if (forms.length === 0) return;
    this.line.foods = this.line.foods.flatMap((food) =>
      // "juice of 1 lemon or 1 tsp vinegar": what has its own measure is asked for as it is.
      (food.measures.length > 0 ? [null] : forms).map((form, index) => ({
        ...food,
        form,
        joined: index > 0 ? ('and' as const) : food.joined,
      })),
    );
  }

  private depth = 0;

  /** A stretch after the name; what is nested deeper than anyone writes is left unread. */
  private readTail(pieces: readonly Piece[], lead: Lead): void {
    if (this.depth >= DEEPEST_TAIL && pieces.length > 0) {
      this.line.unread.push(phraseOf(this.text, pieces));
      return;
    }
    this.depth++;
    this.readOneTail(pieces, lead);
    this.depth--;
  }

  /** A stretch after the name: free choices, a measure, a preparation, another food, or a comment. */
  private readOneTail(all: readonly Piece[], lead: Lead): void {
    const free = this.withoutFlags(all);
    let pieces = this.withoutClosing(free, lead === 'start' && !opensWithPreparation(keysOf(free)));
    const joint = pieces[0] === undefined ? null : jointOf(pieces[0]);
    let end = pieces.length;
    while (end > 0 && jointOf(pieces[end - 1]!) !== null) end--;
    pieces = pieces.slice(joint === null ? 0 : 1, Math.max(end, joint === null ? 0 : 1));
    if (pieces.length === 0) return;
    const keys = keysOf(pieces);
    const { line } = this;
    if (pieces[0]!.draft !== null) this.readMeasuredTail(pieces, lead, joint);
    else if (joint === 'or' && lead !== 'inner' && looksLikeFood(pieces, keys, 0))
      this.addAlternatives(pieces, 'or');
    else if (opensWithPreparation(keys) && !isStatedFood(keys)) this.addPreparation(pieces, keys);
    else if (isStatedFood(keys) && lead === 'comma' && line.measures.length === 0)
      this.addAlternatives(pieces, 'and');
    else if (lead === 'cell' && line.foods.length === 0) this.addFoods(namesIn(pieces).foods, null);
    else if (
      lexiconAt(keys, 0, 'aside') !== null ||
      STANDS_ASIDE.has(lead) ||
      joint === 'or' ||
      free.length < all.length ||
      isStatedFood(keys)
    ) {
      line.asides.push(phraseOf(this.text, pieces));
    } else if (lexiconAt(keys, 0, 'attachment') !== null) this.addPreparation(pieces, keys);
    else line.unread.push(phraseOf(this.text, pieces));
  }

  /** "(about 150 g)", ", 2 cups", "plus 2 tablespoons", "or 1½ pounds boneless". */
  private readMeasuredTail(pieces: readonly Piece[], lead: Lead, joint: 'and' | 'or' | null): void {
    const { line } = this;
    let count = pieces.findIndex((piece) => piece.draft === null && !piece.mark);
    if (count < 0) count = pieces.length;
    const rest = pieces.slice(count);
    const food = looksLikeFood(rest, keysOf(rest), 0);
    const inside = lead === 'paren' || lead === 'inner';
    const first = line.measures[0];
    if (joint === 'or' || (food && !inside && first !== undefined)) {
      this.addAlternatives(pieces, joint ?? 'and');
      return;
    }
    if ((food && first !== undefined) || (lead === 'inner' && first === undefined)) {
      line.asides.push(phraseOf(this.text, pieces));
      return;
    }
    const { item } = pieces[0]!.draft!;
    if (item.kind === 'dimension' && rest.length === 0) {
      this.addQuantity(pieces[0]!);
      if (!inside) this.measureByLength();
      return;
    }
    if (item.kind === 'dimension') {
      this.addPreparation(pieces, keysOf(pieces));
      return;
    }
    if (first !== undefined && item.kind === 'measure' && isShareOfWhole(item)) {
      line.asides.push(phraseOf(this.text, pieces));
      return;
    }
    if (joint === 'and' && first !== undefined && item.kind === 'measure') {
      line.measures[0] = { ...first, plus: [...first.plus, item] };
    } else if (
      item.kind === 'measure' &&
      lexiconAt(keysOf(rest), 0, 'each') !== null &&
      first?.pack === null
    ) {
      line.measures[0] = { ...first, pack: item };
    } else for (const piece of pieces.slice(0, count)) if (piece.draft !== null) this.addQuantity(piece);
    if (rest.length > 0 && lexiconAt(keysOf(rest), 0, 'each') === null) this.readTail(rest, lead);
  }

  private addAlternatives(pieces: readonly Piece[], joint: 'and' | 'or'): void {
    const { foods, tail } = namesIn(pieces);
    this.addFoods(foods, joint);
    if (tail.length > 0) this.readTail(tail, 'start');
  }

  private addPreparation(pieces: readonly Piece[], keys: readonly string[]): void {
    this.line.preparation.push(phraseOf(this.text, pieces));
    for (const { draft } of pieces)
      if (draft?.item.kind === 'dimension') this.line.dimensions.push(draft.item);
    if (this.line.foods.every((food) => food.form === null)) this.setForms(formsMade(keys));
  }
}

/** A tail within a tail: "cut in half, or 2 cups frozen (thawed)". */
const DEEPEST_TAIL = 8;
const MOST_SHARED_WORDS = 2;
/** "from 30 to 70 g", "use 2 cups": a small word with a quantity right after it. */
function isBeforeQuantity(keys: readonly string[], at: number): boolean {
  if (keys[at + 1] !== QUANTITY_KEY) return false;
  return lexiconAt(keys, at, 'filler') !== null || lexiconAt(keys, at, 'attachment') !== null;
}

/** Words after these marks are a comment unless they are known for something else. */
const STANDS_ASIDE: ReadonlySet<Lead> = new Set<Lead>(['paren', 'inner', 'stop', 'dash']);

function isInside(segment: Segment): boolean {
  return segment.lead === 'paren' || segment.lead === 'inner';
}

/** "(70%)" tells of what is inside, not how much of it there is. */
function isShareOfWhole(item: Measure): boolean {
  return item.unit !== null && item.unit === unitNamed('%')?.id;
}

function isRowBeginning(keys: readonly string[]): boolean {
  return rowEndingAt(keys) !== null && rowEndingAt(keys) !== rowEndingAt(keys.slice(1));
}

/** "unflavored, unsweetened gelatin": one word after the amount that the larder does not know, before a name that it does. */
function isAdjectives(pieces: readonly Piece[]): boolean {
  if (pieces[0]?.draft === null) return false;
  const { foods, tail } = namesIn(pieces.filter((piece) => piece.draft === null));
  const name = foods[0]?.name ?? [];
  return tail.length === 0 && foods.length === 1 && name.length === 1 && rowOf(keysOf(name)) === null;
}

function endsInFood(pieces: readonly Piece[]): boolean {
  const { foods, tail } = namesIn(pieces);
  return (
    tail.length === 0 &&
    foods.every(({ name }) => name.length > 0) &&
    rowEndingAt(keysOf(foods.at(-1)?.name ?? [])) !== null
  );
}

/** "active dry - yeast": a dash inside a name that the larder knows. */
function isBrokenName(before: readonly Piece[], after: readonly Piece[]): boolean {
  const own = keysOf(before).filter((key) => key !== QUANTITY_KEY);
  const keys = keysOf(after);
  if (rowEndingAt(own) !== null || rowEndingAt(keys) === null) return false;
  return rowEndingAt([...own.slice(-1), ...keys]) !== null && foodAt([...own.slice(-1), ...keys], 0) !== null;
}
