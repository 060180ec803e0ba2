/** Reads a line of an ingredient list: how much of what, in which state, and what the cook is told about it. */
import { foodNamed } from '../larder/foods.js';
import { lexiconAt } from '../larder/lexicon.js';
import { unitById, unitNamed } from '../larder/units.js';
import { measure, ONE } from './drafts.js';
import {
  countedPieces,
  eachMeasured,
  isSaidAgain,
  meantFood,
  type Sized,
  sizedAlternative,
  unitOfName,
} from './line-amounts.js';
import { endsInFood, isAdjectives, isBrokenName, withSharedNouns } from './line-names.js';
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
import { jointOf, looksLikeFood, type Named, namesIn, vagueMeasureLength } from './naming.js';
import { difference } from './sums.js';
import type { ListedFood, ListingLine, Measure } from './types.js';
import { commonName, rowOf, stateLength } from './words.js';

/** One ingredient line, without bullet or number. Never throws; what it does not understand stands in `unread`. */
export function readListing(text: string): ListingLine {
  return new LineReader(text).read();
}

class LineReader extends LineNotes {
  read(): ListingLine {
    const segments = segmentsOf(this.text);
    const head = this.headOf(segments.filter((segment) => !isInside(segment)));
    this.readHead(head.pieces);
    const listed = isFoodList(
      head.rest,
      this.line.measures.length > 0,
      this.line.foods.length > 0,
      this.each,
    );
    for (const segment of head.rest.slice(0, listed.length)) {
      const from = jointOf(segment.pieces[0]!) === null ? 0 : 1;
      const pieces = this.withoutClosing(this.withoutFlags(segment.pieces.slice(from)), true);
      this.addFoods(namesIn(pieces).foods, listed.joined);
    }
    for (const segment of head.rest.slice(listed.length)) this.readTail(segment.pieces, segment.lead);
    for (const segment of segments) if (isInside(segment)) this.readTail(segment.pieces, segment.lead);
    const { line } = this;
    line.foods = withSharedNouns(line.foods).map((food, index) => meantFood(food, index, line));
    if (this.each) line.foods = line.foods.map((food, index) => eachMeasured(food, index, line.measures));
    return line;
  }

  /** Whether the amount is of each of the foods: "1 tsp each cumin and paprika". */
  private each = false;

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
    const each = lexiconAt(keys, at, 'each')?.length ?? 0;
    this.each = (each > 0 && this.line.measures.length > 0) || lexiconAt(keys, at - 1, 'each') !== null;
    const sized = sizedAlternative(pieces, at + each);
    const { foods, tail } = namesIn(sized?.rest ?? pieces.slice(at + each));
    const own = foods[0] && unitOfName(foods[0].name, this.line, this.text);
    if (own) this.line.measures[0] = own.measure;
    this.addFoods(own ? [{ ...foods[0]!, name: own.name }, ...foods.slice(1)] : foods, null);
    if (sized !== null) this.addSized(sized);
    if (this.line.foods.length === 0) this.nameByUnit();
    this.measureByLength();
    this.setForms(forms);
    if (tail.length > 0) this.readTail(tail, 'start');
  }

  /** "a little", "few pinches of": nothing is measured. */
  private skipVagueAmount(keys: readonly string[], from: number): number {
    const vague = this.line.measures.length === 0 ? lexiconAt(keys, from, 'vague-amount') : null;
    if (vague === null) return from;
    return from + (vagueMeasureLength(keys, from) || vague.length);
  }

  /** "3 large or 4 small zucchini": the size is of the first amount, and the other is an alternative. */
  private addSized({ size, amount }: Sized): void {
    const [first] = this.line.foods;
    if (first === undefined) return;
    this.line.size = phraseOf(this.text, size);
    this.line.foods.splice(1, 0, { ...first, joined: 'or', measures: [amount] });
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
    if (measures.length > 0 || only === undefined || others.length > 0) return;
    const counted = countedPieces(only, this.text, this.line.foods[0]);
    if (counted !== null) [measures[0], dimensions[0]] = [counted.count, counted.side];
    if (only.lengths.length > 1) return;
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
    else if (lexiconAt(keys, 0, 'each') !== null && pieces[1]?.draft) this.readSizes(pieces.slice(1));
    else if (lexiconAt(keys, 0, 'less') !== null && pieces[1]?.draft && this.takeLess(pieces[1]))
      this.readTail(pieces.slice(2), 'start');
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
    const each = lexiconAt(keysOf(rest), 0, 'each')?.length ?? 0;
    const next = rest[each];
    const sized = each > 0 && (next === undefined || next.draft !== null || jointOf(next) !== null);
    const food = !sized && looksLikeFood(rest, keysOf(rest), 0);
    const inside = lead === 'paren' || lead === 'inner';
    const first = line.measures[0];
    const { item } = pieces[0]!.draft!;
    const total = lexiconAt(keysOf(rest), 0, 'total')?.length === rest.length;
    const same =
      joint === 'or' && inside && rest.length === 0 && item.kind === 'measure' && isSaidAgain(first, item);
    if (first !== undefined && count === 1 && (total || same)) {
      this.addQuantity(pieces[0]!, total);
      return;
    }
    if (sized && next !== undefined && first !== undefined) {
      this.readSizes(pieces);
      return;
    }
    const more = first !== undefined || line.foods.length > (joint === 'and' ? 0 : 1);
    if (joint === 'or' || (food && !inside && more)) {
      this.addAlternatives(pieces, joint ?? 'and');
      return;
    }
    if ((food && first !== undefined) || (lead === 'inner' && first === undefined)) {
      line.asides.push(phraseOf(this.text, pieces));
      return;
    }
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
    } else if (item.kind === 'measure' && each > 0 && first?.pack === null) {
      line.measures[0] = { ...first, pack: item };
    } else for (const piece of pieces.slice(0, count)) if (piece.draft !== null) this.addQuantity(piece);
    if (each > 0 && first === undefined) this.each = true;
    if (rest.length > each) this.readTail(rest.slice(each), lead);
  }

  /** "1 cup flour minus 2 tablespoons" */
  private takeLess(piece: Piece): boolean {
    const [first] = this.line.measures;
    const less = first === undefined ? null : difference(first, piece.draft!.item);
    // What was taken stands apart in the line, so the extent stays that of the amount.
    if (less !== null) this.line.measures[0] = { ...less, end: first!.end };
    return less !== null;
  }

  /** "each about 8 ounces and 1 inch thick": the weight and the length of one piece. */
  private readSizes(pieces: readonly Piece[]): void {
    const { line } = this;
    const rest: Piece[] = [];
    for (const piece of pieces) {
      const item = piece.draft?.item;
      const first = line.measures[0];
      if (item?.kind === 'dimension') line.dimensions.push(item);
      else if (item?.kind === 'measure' && first?.pack === null) line.measures[0] = { ...first, pack: item };
      else if (piece.draft === null && jointOf(piece) === null && lexiconAt([piece.key], 0, 'each') === null)
        rest.push(piece);
    }
    if (rest.length > 0 && stateLength(keysOf(rest), 0) < rest.length)
      line.unread.push(phraseOf(this.text, rest));
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
