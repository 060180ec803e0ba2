/** Tells a line that lists something from a line that tells the cook to do something. */
import { readListing } from '../grammar/listing.js';
import type { ListingLine } from '../grammar/types.js';
import { foodNamed } from '../larder/foods.js';
import { isConnector, isJoiner, isOpener } from '../larder/headings.js';
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Technique } from '../larder/types.js';

/** What a line reads as. An `amount` and a `food` are listings; a `figure` counts a thing that the larder does not know; `equal` says that one measure is another. */
export type LineKind = 'amount' | 'figure' | 'food' | 'instruction' | 'equal' | 'other';

/** Reads each line of a list once, however often it is asked for. */
export class LineJudge {
  private readonly known = new Map<string, ListingLine>();

  listing(text: string): ListingLine {
    let line = this.known.get(text);
    if (line === undefined) {
      line = readListing(text);
      this.known.set(text, line);
    }
    return line;
  }

  kind(text: string): LineKind {
    if (text.includes('=')) return 'equal';
    const figure = startsWithAmount(text);
    if (text.length > LONGEST_LISTING && !(figure && text.length < 2 * LONGEST_LISTING)) {
      return instructs(text) ? 'instruction' : 'other';
    }
    if (!figure && instructs(text)) return 'instruction';
    const line = this.listing(text);
    // Finished dishes stand in menus, not in lists of ingredients.
    const known = line.foods.some((food) => food.row !== null && !food.row.dish);
    if (line.measures.length > 0 && (known || figure)) return known ? 'amount' : 'figure';
    return known && wordCount(text.replace(/\([^)]*\)/g, '')) <= MOST_WORDS ? 'food' : 'other';
  }
}

const LONGEST_LISTING = 120;
const MOST_WORDS = 9;

/** Whether the line opens with a figure or a fraction, perhaps with "about" or a sign before it. */
export function startsWithAmount(text: string): boolean {
  return /^[\s~≈]*(?:about |around |approx\.? |ca\.? )?[\d¼-¾⅐-⅞]/i.test(text);
}

export function wordCount(text: string): number {
  let count = 0;
  let inside = false;
  for (let at = 0; at < text.length; at++) {
    const blank = text.charCodeAt(at) <= 32;
    if (!blank && !inside) count++;
    inside = !blank;
  }
  return count;
}

const TOKENS = /[\p{L}'’-]+|[.!?;:,()\n]/gu;

/** Whether the first sentence of the text is a command, an unmarked clause before it or not: "In a bowl combine the flour". */
export function opensWithCommand(text: string): boolean {
  const end = /[.!?](?=\s)/.exec(text)?.index ?? text.length;
  const sentence = text.slice(0, Math.min(end, LONGEST_SENTENCE) + 1);
  return instructs(sentence) || commandsAfterClause(sentence);
}

const LONGEST_SENTENCE = 400;

/** Whether a sentence or clause of the text opens with a verb of the kitchen in the form of a command. */
export function instructs(text: string): boolean {
  let open = true;
  let words = 0;
  let verb: Technique | null = null;
  // A verb that is no food gives an order, unless "of" makes a noun of it: "a drizzle of oil".
  let pending = false;
  for (const [token] of text.matchAll(TOKENS)) {
    if (pending && fold(token) !== 'of') return true;
    pending = false;
    if (!isLetter(token)) {
      open = true;
      verb = null;
      continue;
    }
    words++;
    const key = fold(token);
    if (verb !== null) {
      if (makesCommand(verb, key)) return true;
      verb = null;
    }
    if (!open) {
      open = isJoiner(key);
      continue;
    }
    const match = techniqueOf(key);
    if (match?.form === 'base') {
      if (foodNamed(key) === null) {
        pending = words > 1 || text.length > token.length + 2 || text.trimEnd().endsWith('.');
      } else verb = match.technique;
      open = false;
    } else open = isOpener(key) || isJoiner(key) || key.endsWith('ly');
  }
  return pending;
}

/** "Get the pan hot", "Position a rack": an unknown word at the head, with what it is done to behind it. */
export function opensLikeOrder(text: string): boolean {
  const [first, second] = [...text.slice(0, LONGEST_LISTING).matchAll(/\p{L}[\p{L}'’-]*/gu)].map(([word]) =>
    fold(word),
  );
  if (first === undefined || !isWord(second, 'order-opening')) return false;
  return (
    !isWord(first, 'before-noun') &&
    !isWord(first, 'subject') &&
    !isWord(first, 'preposition') &&
    foodNamed(first) === null
  );
}

/** "Butter the pan" is a command, "butter and flour" is not; "roast in the oven" is one, "oil for the pan" is not. */
function makesCommand(verb: Technique, next: string): boolean {
  if (isWord(next, 'after-verb') || isWord(next, 'object') || next.endsWith('ly')) return true;
  if (!isWord(next, 'preposition') || verb.implies !== undefined || next === 'from') return false;
  return does(verb, 'heat', 'dry-heat') || (!verb.noun && next !== 'for' && next !== 'as');
}

/** "Plum crumble is made with half the oats": a thing told of as made, and no order to make it. */
export function tellsOfMaking(text: string): boolean {
  const keys = [...text.slice(0, LONGEST_LISTING).matchAll(/\p{L}[\p{L}'’-]*/gu)].map(([word]) => fold(word));
  return keys.slice(1, LONGEST_CLAUSE_WORDS).some((_, at) => phraseAt(keys, at + 1, 'told-as-made') !== null);
}

const LONGEST_CLAUSE_WORDS = 8;

/** "While still warm brush with syrup": a clause without a comma, then a verb with what it is done to. */
function commandsAfterClause(sentence: string): boolean {
  const keys = [...sentence.matchAll(/\p{L}[\p{L}'’-]*/gu)]
    .slice(0, LONGEST_CLAUSE_WORDS + 2)
    .map(([word]) => fold(word));
  if (keys[0] === undefined || (!isWord(keys[0], 'preposition') && !isConnector(keys[0]))) return false;
  return keys.some((key, at) => {
    const match =
      at > 1 && !isWord(keys[at - 1], 'before-noun') && keys[at - 1] !== 'to' ? techniqueOf(key) : null;
    const next = keys[at + 1];
    if (match?.form !== 'base' || next === undefined || isWord(keys[at - 1], 'object')) return false;
    return makesCommand(match.technique, next) || (foodNamed(key) === null && foodNamed(next) !== null);
  });
}

function isLetter(token: string): boolean {
  return token.length > 1 || /\p{L}/u.test(token);
}
