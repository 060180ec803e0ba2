/** Writes a listing for a food that only the method names, in the form of the list's own lines. */
import type { Listing } from '../anatomy/types.js';
import { endOfLine } from '../manuscript/lines.js';
import type { Dish, Mention } from './types.js';

/** A line to put into the page at `at`, with the line end that parts it from its neighbour. */
export interface NewLine {
  readonly at: number;
  readonly text: string;
  /** The listing alone: "1/2 cup cream". */
  readonly listing: string;
}

/**
 * The line for an unlisted food, with the method's own amount and name, behind the listings that the method has used before
 * it, because a list stands in the order of first use. Null where the list has a form that a line cannot be added to (a table).
 */
export function newListing(dish: Dish, mention: Mention): NewLine | null {
  const neighbour = listingBefore(dish, mention);
  const step = dish.recipe.steps[mention.step];
  if (neighbour === undefined || step === undefined) return null;
  const form = formOf(dish.page.text, neighbour);
  if (form === null) return null;
  const amount =
    mention.measure === null || mention.measure.share
      ? ''
      : `${step.passage.text.slice(mention.measure.start, mention.measure.end)} `;
  const listing = asListed(dish, amount + nameOf(mention, step.passage.text));
  const { text } = dish.page;
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const end = endOfLine(text, neighbour.passage.span().end);
  return { at: end, text: newline + form.before + listing + form.after, listing };
}

/** Of the listings that the method has used before this mention the last on the list; where it begins with it, the list's last. */
function listingBefore(dish: Dish, mention: Mention): Listing | undefined {
  const earlier = dish.mentions.filter(
    (each) =>
      each.listings.length > 0 &&
      (each.step < mention.step || (each.step === mention.step && each.start < mention.start)),
  );
  const used = new Set(earlier.flatMap((each) => each.listings));
  return dish.recipe.listings.findLast((listing) => used.has(listing)) ?? dish.recipe.listings.at(-1);
}

/** What stands around the listing on its line: bullet, number, quotation mark, the spaces that break the line. */
function formOf(text: string, { passage }: Listing): { before: string; after: string } | null {
  const { start, end } = passage.span();
  let from = start;
  while (from > 0 && text[from - 1] !== '\n' && text[from - 1] !== '\r') from--;
  // Emphasis around the neighbour's first words is the neighbour's own.
  const before = text.slice(from, start).replace(/(?<=\s|^)[*_[]+$/, '');
  const form = FORM.exec(before);
  if (form === null) return null;
  const rest = text.slice(end, endOfLine(text, end));
  const after = /^(?:["']|\s*|\s*\\)$/.test(rest) ? rest : '';
  const number = form[2];
  return {
    before:
      number === undefined
        ? before
        : `${form[1]}${Number(number) + 1}${before.slice(form[1]!.length + number.length)}`,
    after,
  };
}

/** Quotes, then a bullet or a number, then a box to tick, then a quotation mark of YAML; each may be missing. */
const FORM = /^([\s>]*)(?:[-*+•–]\s+|(\d+)[.)]\s+)?(?:\[[ xX]?\]\s+)?["']?$/;

/** With a capital where all lines of the list that open with a word have one. */
function asListed({ recipe }: Dish, text: string): string {
  const words = recipe.listings.map(({ passage }) => passage.text).filter((line) => /^\p{L}/u.test(line));
  const isCapital = words.length > 0 && words.every((line) => /^\p{Lu}/u.test(line));
  return isCapital ? text.charAt(0).toUpperCase() + text.slice(1) : text;
}

/** As the method has it, without the capital that only opens a sentence. */
function nameOf(mention: Mention, step: string): string {
  const opens = /(?:^|[.!?:]\s+)$/.test(step.slice(Math.max(0, mention.start - 3), mention.start));
  return opens ? mention.text.charAt(0).toLowerCase() + mention.text.slice(1) : mention.text;
}
