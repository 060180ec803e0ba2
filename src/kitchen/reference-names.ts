/** Finds where a text sends the reader to another recipe: "see Plum Jam", "plum jam (page 12)", "1 recipe Plum Jam". */
import type { Listing } from '../anatomy/types.js';
import type { Extent, Item } from '../grammar/types.js';
import { foodAt } from '../larder/foods.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { techniqueOf } from '../larder/techniques.js';

/** What shows that a name is a recipe's: "see", a page, "1 recipe", "(recipe follows)", or only its capitals. */
export type ReferenceSign = 'see' | 'page' | 'recipe' | 'near' | 'capitals';

export interface NamedReference extends Extent {
  /** As written. */
  readonly name: string;
  readonly sign: ReferenceSign;
  /** Whether the name has a title's capitals. */
  readonly proper: boolean;
  /** The page that is printed with it. */
  readonly page: number | null;
}

/** What every reference has some of; a text without it need not be read word by word. */
const SIGNS = /\b(?:[Ss]ee|[Rr]efer|[Pp]ages?|[Pp]p?\.? ?(?:\d+|X+|x+|N+|TK)|[Rr]ecipe|as in)\b/;
const CAPITALS = /\p{Lu}[\p{L}'’-]+(?: (?:\p{Ll}{1,4} ){0,2}\p{Lu}[\p{L}'’-]+)+/gu;

/** Whether a text has one of the words that send a reader elsewhere. */
export function hasSign(text: string): boolean {
  return SIGNS.test(text);
}

/** The capitalized words of a text that stand side by side, run by run. */
export function capitalRuns(text: string): string[] {
  return text.match(CAPITALS) ?? [];
}

/** The references of a text by name. `listing` is the line when it is one; capitals alone count in listings and steps. */
export function namedReferences(
  text: string,
  items: readonly Item[],
  listing: Listing | null,
  inDish: boolean,
): NamedReference[] {
  const scan = new Scan(text, items, listing);
  const found: NamedReference[] = [];
  const add = (reference: NamedReference | null): void => {
    if (reference !== null && !found.some((other) => touches(other, reference))) found.push(reference);
  };
  add(scan.counted());
  for (let at = 0; at < items.length; at++) {
    add(scan.seen(at));
    add(scan.paged(at));
    if (inDish) add(scan.near(at));
  }
  if (inDish) for (const reference of scan.capitals()) add(reference);
  return found.sort((a, b) => a.start - b.start);
}

function touches(one: Extent, other: Extent): boolean {
  return one.start < other.end && other.start < one.end;
}

/** A page as it is printed with a reference; its number is null where it is still to be filled in. */
interface PrintedPage {
  readonly number: number | null;
}

/** Letters that stand for a page: "XX", "NN", "TK". */
const BLANK = /^(?:0+|x+|n+|tk)$/;
const LONGEST_INITIALS = 4;
const MOST_LOWER_WORDS = 5;
const MOST_BEFORE_PAGE = 4;

class Scan {
  private readonly keys: readonly string[];

  constructor(
    private readonly text: string,
    private readonly items: readonly Item[],
    private readonly listing: Listing | null,
  ) {
    this.keys = items.map((item) => (item.kind === 'word' ? item.key : ''));
  }

  /** "1 recipe Plum Jam", "½ batch of pie dough". */
  counted(): NamedReference | null {
    const line = this.listing?.line;
    const unit = line?.measures[0]?.unit;
    const food = line?.foods[0];
    if (food === undefined || (unit !== 'recipe' && unit !== 'batch')) return null;
    const after = this.items.findIndex(({ start }) => start >= food.end);
    return this.reference(food, 'recipe', after < 0 ? null : this.pageAfter(after));
  }

  /** "see Plum Jam", "(see the recipe for plum jam)", "see plum jam, page 12". */
  seen(at: number): NamedReference | null {
    const opening = phraseAt(this.keys, at, 'refers');
    if (opening === null) return null;
    let from = at + opening.length;
    let named = false;
    for (; isWord(this.keys[from], 'reference-filler'); from++) named ||= this.keys[from] === 'recipe';
    if (isQuote(this.items[from])) from++;
    if (isWord(this.keys[from], 'not-recipe')) return null;
    const end = this.properEnd(from);
    if (end > from) return this.reference(this.extent(from, end), 'see', this.pageAfter(end));
    return this.opensClause(at) ? this.seenSmall(from, named) : null;
  }

  /** "plum jam (page 12)", "Plum Jam, p. 12", "Plum Jam on page 12". */
  paged(at: number): NamedReference | null {
    const page = this.pageAt(at);
    if (page === null) return null;
    let last = at - 1;
    while (last >= 0 && this.isBetween(last)) last--;
    if (this.items[last]?.kind !== 'word') return null;
    let first = this.properStart(last);
    if (first > last && this.listing !== null) {
      const food = this.listing.line.foods.find(({ end }) => end <= this.items[at]!.start);
      return food === undefined ? null : this.reference(food, 'page', page);
    }
    if (first > last) first = this.foodStart(last);
    return first > last ? null : this.reference(this.extent(first, last + 1), 'page', page);
  }

  /** "plum jam (recipe follows)". */
  near(at: number): NamedReference | null {
    if (this.listing === null || phraseAt(this.keys, at, 'recipe-near') === null) return null;
    const food = this.listing.line.foods.find(({ end }) => end <= this.items[at]!.start);
    return food === undefined ? null : this.reference(food, 'near', null);
  }

  /** Two capitalized words or more within a sentence: "spread with the Plum Jam". */
  *capitals(): Iterable<NamedReference> {
    for (let at = 0; at < this.items.length; at++) {
      const end = this.properEnd(at, false);
      if (end === at) continue;
      // The first word of a sentence is capitalized anyway, and is most often its verb.
      const from = this.opensSentence(at) && this.listing === null ? this.nextWord(at, end) : at;
      const words = this.keys.slice(from, end).filter((key) => key !== '');
      if (words.length > 1) yield this.reference(this.extent(from, end), 'capitals', null);
      at = end - 1;
    }
  }

  private seenSmall(from: number, named: boolean): NamedReference | null {
    let end = from;
    while (end < this.items.length && end < from + MOST_LOWER_WORDS && this.keys[end] !== '') {
      if (isWord(this.keys[end], 'recipe-word') || isWord(this.keys[end], 'page-word')) break;
      if (isWord(this.keys[end], 'not-recipe')) return null;
      end++;
    }
    const page = this.pageAfter(end);
    const says = named || isWord(this.keys[end], 'recipe-word') || page !== null;
    while (end > from && isWord(this.keys[end - 1], 'preposition')) end--;
    return says && end > from ? this.reference(this.extent(from, end), 'see', page) : null;
  }

  /** The page that a reference gives at `at`: "page 12", "p. 12", or one that is still to be filled in: "page 000", "p. XX". */
  private pageAt(at: number): PrintedPage | null {
    if (!isWord(this.keys[at], 'page-word')) return null;
    const next = this.items[at + 1];
    const count = next?.kind === 'point' && next.text === '.' ? this.items[at + 2] : next;
    if (count?.kind === 'word') return BLANK.test(count.key) ? { number: null } : null;
    if (count?.kind !== 'count' || count.amount.low.d !== 1n) return null;
    const page = Number(count.amount.low.n);
    return { number: page > 0 ? page : null };
  }

  /** The page that follows a name, past ", on" or an opening bracket. */
  private pageAfter(end: number): PrintedPage | null {
    let at = end;
    while (at < end + MOST_BEFORE_PAGE && this.isBetween(at)) at++;
    return this.pageAt(at);
  }

  /** What may stand between a name and its page. */
  private isBetween(at: number): boolean {
    const item = this.items[at];
    if (item?.kind === 'point') return /^[(,"“”’\]–—-]$/.test(item.text);
    return item?.kind === 'word' && (isWord(item.key, 'reference-filler') || isWord(item.key, 'refers'));
  }

  /** Where the run of capitalized words that begins at `at` ends: "Jam of Green Plums & Quinces". */
  private properEnd(at: number, shown = true): number {
    let end = at;
    for (let next = at; next < this.items.length; next++) {
      const item = this.items[next]!;
      if (this.isCapital(item)) end = next + 1;
      else if (end === at || next - end >= 2) break;
      else if (!isJoint(item) && !isSmall(item, shown)) break;
    }
    return end;
  }

  /** Where the run of capitalized words that ends with `last` begins; after `last` where there is none. */
  private properStart(last: number): number {
    let start = last + 1;
    for (let next = last; next >= 0; next--) {
      const item = this.items[next]!;
      if (this.isCapital(item)) start = next;
      else if (start > last || start - next > 2) break;
      else if (!isJoint(item) && !isSmall(item, true)) break;
    }
    return start <= last &&
      this.listing === null &&
      this.opensSentence(start) &&
      (techniqueOf(this.keys[start]!) || isWord(this.keys[start], 'preposition'))
      ? this.nextWord(start, last + 1)
      : start;
  }

  /** Where the longest food name that ends with `last` begins; after `last` where none does. */
  private foodStart(last: number): number {
    for (let first = Math.max(0, last - 3); first <= last; first++) {
      if (this.keys.slice(first, last + 1).includes('')) continue;
      if (foodAt(this.keys, first, last + 1)?.length === last + 1 - first) return first;
    }
    return last + 1;
  }

  private nextWord(at: number, end: number): number {
    let next = at + 1;
    while (next < end && !this.isCapital(this.items[next]!)) next++;
    return next;
  }

  /** A word with a capital that is no shout: "Jam", "B", "Three", and not "IMPORTANT". */
  private isCapital(item: Item): boolean {
    if (item.kind !== 'word' && item.kind !== 'count') return false;
    const text = this.text.slice(item.start, item.end);
    return /^\p{Lu}/u.test(text) && (text.length < LONGEST_INITIALS || /\p{Ll}/u.test(text));
  }

  private opensSentence(at: number): boolean {
    const before = this.items[at - 1];
    return before === undefined || (before.kind === 'point' && /[.!?:;\n()"“•–—]/.test(before.text));
  }

  private opensClause(at: number): boolean {
    const before = this.items[at - 1];
    return before === undefined || before.kind === 'point';
  }

  private extent(from: number, end: number): Extent {
    return { start: this.items[from]!.start, end: this.items[end - 1]!.end };
  }

  private reference({ start, end }: Extent, sign: ReferenceSign, page: PrintedPage | null): NamedReference {
    const name = this.text.slice(start, end);
    return { start, end, name, sign, proper: /^\p{Lu}/u.test(name), page: page?.number ?? null };
  }
}

/** "of", "with"; where something else shows that a name stands here, any word so short, which may be a slip ("ad" for "and"). */
function isSmall(item: Item, shown: boolean): boolean {
  if (item.kind !== 'word') return false;
  return isWord(item.key, 'title-small') || (shown && item.text.length <= LONGEST_SMALL);
}

const LONGEST_SMALL = 3;

function isJoint(item: Item): boolean {
  return item.kind === 'point' && (item.text === '-' || item.text === '&');
}

function isQuote(item: Item | undefined): boolean {
  return item?.kind === 'point' && /^["“‘']$/.test(item.text);
}
