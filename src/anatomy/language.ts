/** Tells a line that lists something from a line that tells the cook to do something. */
import { readListing } from '../grammar/listing.js';
import type { ListingLine } from '../grammar/types.js';
import { foodNamed } from '../larder/foods.js';
import { isJoiner, isOpener } from '../larder/headings.js';
import { isWord } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';

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

/** Whether the first sentence of the text is a command. */
export function opensWithCommand(text: string): boolean {
  const end = /[.!?](?=\s)/.exec(text)?.index ?? text.length;
  return instructs(text.slice(0, end + 1));
}

/** Whether a sentence or clause of the text opens with a verb of the kitchen in the form of a command. */
export function instructs(text: string): boolean {
  let open = true;
  let words = 0;
  let verb = false;
  for (const [token] of text.matchAll(TOKENS)) {
    if (!isLetter(token)) {
      open = true;
      continue;
    }
    words++;
    const key = fold(token);
    if (verb) {
      // "Butter the pan" is a command, "butter and flour" is not; a verb that names no food needs nothing after it.
      if (isWord(key, 'after-verb')) return true;
      verb = false;
    }
    if (!open) {
      open = isJoiner(key);
      continue;
    }
    if (techniqueOf(key)?.form === 'base') {
      if (foodNamed(key) === null) {
        if (words > 1 || text.length > token.length + 2 || text.trimEnd().endsWith('.')) return true;
      } else verb = true;
      open = false;
    } else open = isOpener(key) || isJoiner(key) || key.endsWith('ly');
  }
  return false;
}

function isLetter(token: string): boolean {
  return token.length > 1 || /\p{L}/u.test(token);
}
