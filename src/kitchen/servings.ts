/** Finds how many a recipe serves or makes where something besides its yield says so. */
import type Fraction from 'fraction.js';
import { readText } from '../grammar/text.js';
import type { Amount, Item, Yield } from '../grammar/types.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { unitById } from '../larder/units.js';
import type { Passage } from '../manuscript/passage.js';
import type { Span } from '../manuscript/types.js';
import type { Dish } from './types.js';

/** Words that give another number than the yield. */
export interface OtherCount {
  readonly span: Span;
  readonly text: string;
  /** The yield that they disagree with, as written. */
  readonly yield: Passage;
}

/** The places whose number of servings, or of pieces that the yield counts, is not the yield's. */
export function* otherCounts(dish: Dish): Iterable<OtherCount> {
  const [first, ...others] = dish.recipe.yields;
  if (first?.parsed == null) return;
  for (const { passage, parsed } of others) {
    if (parsed !== null && thingsOf(parsed) === thingsOf(first.parsed) && disagree(parsed, first.parsed))
      yield { span: passage.span(), text: passage.text.trim(), yield: first.passage };
  }
  yield* titleCount(dish);
  const last = dish.steps.length - 1;
  for (const [index, { step, items }] of dish.steps.entries()) {
    for (const claim of claimsIn(items, index === last)) {
      const against = dish.recipe.yields.filter(
        ({ parsed }) => parsed?.amount != null && thingsOf(parsed) === claim.things,
      );
      // Where two yields count the same things, their own disagreement is marked.
      if (against.length !== 1 || agree(claim.amount, against[0]!.parsed!.amount!)) continue;
      yield {
        span: step.passage.span(claim.start, claim.end),
        text: step.passage.text.slice(claim.start, claim.end),
        yield: against[0]!.passage,
      };
    }
  }
}

/** "Supper for Two". */
function* titleCount({ recipe: { title, yields } }: Dish): Iterable<OtherCount> {
  const servings = yields.filter(({ parsed }) => parsed !== null && thingsOf(parsed) === '');
  if (title === null || servings.length !== 1) return;
  const [before, count] = readText(title.text).slice(-2);
  if (before?.kind !== 'word' || before.key !== 'for' || count?.kind !== 'count') return;
  const amount = servings[0]!.parsed!.amount;
  if (amount === null || agree(count.amount, amount)) return;
  yield {
    span: title.span(before.start, count.end),
    text: title.text.slice(before.start, count.end),
    yield: servings[0]!.passage,
  };
}

/** What a yield counts, as one folded singular word; empty for servings. */
function thingsOf({ of }: Yield): string {
  const words = of
    .split(/[^\p{L}\p{M}'’]+/u)
    .map((word) => singular(fold(word)))
    .filter((word) => word !== '');
  // "Serves 4 as a main course": what follows a preposition tells of something else.
  const end = words.findIndex((word) => isWord(word, 'preposition'));
  const things = end < 0 ? words : words.slice(0, end);
  return things.length === 0 || things.some((word) => isWord(word, 'serving-word')) ? '' : things.at(-1)!;
}

function disagree(one: Yield, other: Yield): boolean {
  return one.amount !== null && other.amount !== null && !agree(one.amount, other.amount);
}

/** "About 24" is met by a few more or less. */
const ABOUT = 1.25;

function agree(one: Amount, other: Amount): boolean {
  const wide = one.approximation !== null || other.approximation !== null ? ABOUT : 1;
  return reaches(one.high.mul(wide), other.low) && reaches(other.high.mul(wide), one.low);
}

function reaches(high: Fraction, low: Fraction): boolean {
  return high.gte(low);
}

interface Claim {
  readonly start: number;
  readonly end: number;
  readonly amount: Amount;
  /** As in thingsOf. */
  readonly things: string;
}

/** "divide among 6 plates", "shape into 12 patties". */
function* claimsIn(items: readonly Item[], isLast: boolean): Iterable<Claim> {
  const keys = items.map((item) => (item.kind === 'word' ? item.key : ''));
  for (let at = 1; at < items.length; at++) {
    const amount = countOf(items[at]!);
    if (amount === null || isFilled(items, at)) continue;
    const [from, to] = sentenceAround(items, at);
    const sentence = keys.slice(from, to);
    // "Two pieces each", "in batches of 6": not all of them at once.
    if (sentence.some((key) => isWord(key, 'each-word'))) continue;
    const noun = nounAfter(items, keys, at);
    if (noun === null) continue;
    const claim = { start: items[at]!.start, end: Math.max(items[at]!.end, noun.end), amount };
    const isParted = sentence.slice(0, at - from).some((key) => isWord(key, 'parting'));
    const before = keys[at - 1]!;
    if (isWord(before, 'among') && (isParted || sentence.some(portions))) {
      const serves = sentence.some((key) => techniqueOf(key)?.technique.name === 'serve');
      const served = isLast || serves;
      const isPlace = isWord(noun.word, 'serving-place') || noun.place;
      // "Put the flour on 2 plates" serves nobody yet.
      if (isPlace && (isParted || served)) yield { ...claim, things: '' };
      else if (isWord(noun.word, 'serving-vessel') && served) yield { ...claim, things: '' };
      else if (isParted) yield { ...claim, things: noun.word };
    } else if (isWord(before, 'parting')) yield { ...claim, things: noun.word };
  }
}

/** "Ladle", "spoon", "pour": how a dish comes to the plate. */
function portions(key: string): boolean {
  const match = techniqueOf(key);
  return match !== null && does(match.technique, 'serve', 'fill', 'add');
}

/** A whole number of things; a poured or weighed amount is none. */
function countOf(item: Item): Amount | null {
  if (item.kind !== 'count' && item.kind !== 'measure') return null;
  if (item.kind === 'measure' && item.unit !== null) {
    const { kind } = unitById(item.unit);
    const counts = kind === 'container' || kind === 'piece' || isWord(item.unit, 'serving-vessel');
    if (!counts) return null;
  }
  return item.kind === 'measure' && item.share ? null : item.amount;
}

/** "Stir in ½ cup cream": a cup of something is an amount of it, and no cup on the table. */
function isFilled(items: readonly Item[], at: number): boolean {
  const item = items[at]!;
  if (item.kind !== 'measure' || item.unit === null || unitById(item.unit).kind !== 'volume') return false;
  const next = items[at + 1];
  return item.amount.low.d !== 1n || next?.kind === 'word';
}

interface Noun {
  readonly word: string;
  /** Whether its words together name a place at the table: "serving bowls". */
  readonly place: boolean;
  readonly end: number;
}

const MOST_BEFORE_NOUN = 3;

/** What is counted: the measure's own unit, or the last of the words that follow as one. */
function nounAfter(items: readonly Item[], keys: readonly string[], at: number): Noun | null {
  const item = items[at]!;
  if (item.kind === 'measure' && item.unit !== null) return { word: item.unit, place: false, end: item.end };
  let first: Noun | null = null;
  for (let next = at + 1; next <= at + MOST_BEFORE_NOUN; next++) {
    const words = items[next];
    // "12 (3-inch) patties", "8 equal pieces".
    if (words?.kind === 'dimension' || (words?.kind === 'point' && /[()-]/.test(words.text))) continue;
    if (words?.kind !== 'word' || isWord(words.key, 'preposition')) break;
    const place = phraseAt(keys.map(singular), next, 'serving-place');
    if (place !== null)
      return {
        word: singular(keys[next + place.length - 1]!),
        place: true,
        end: items[next + place.length - 1]!.end,
      };
    const word = singular(words.key);
    const noun = { word, place: false, end: words.end };
    if (isWord(word, 'serving-vessel')) return noun;
    // "5 shallow bowls", "12 round biscuits": a word that is no adjective to us may be one.
    first ??= isAdjective(words.key) ? null : noun;
  }
  return first;
}

function isAdjective(key: string): boolean {
  return isWord(key, 'adjective') || techniqueOf(key)?.form === 'past';
}

function sentenceAround(items: readonly Item[], at: number): [from: number, to: number] {
  const ends = (item: Item): boolean => item.kind === 'point' && /[.;!?\n]/.test(item.text);
  let from = at;
  while (from > 0 && !ends(items[from - 1]!)) from--;
  let to = at;
  while (to < items.length && !ends(items[to]!)) to++;
  return [from, to];
}
