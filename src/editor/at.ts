/** Finds what stands at a place of a page: a listing, a mention, a title. */
import type { Listing } from '../anatomy/types.js';
import type { Dish, Mention } from '../kitchen/types.js';
import type { Span } from '../manuscript/types.js';
import type { PageReading } from '../reading/types.js';

export type Standing =
  | { readonly kind: 'listing'; readonly dish: Dish; readonly listing: Listing; readonly span: Span }
  | { readonly kind: 'mention'; readonly dish: Dish; readonly mention: Mention; readonly span: Span }
  | { readonly kind: 'title'; readonly dish: Dish; readonly span: Span };

/** What stands there; the end of a word still belongs to it, for that is where a cursor rests. */
export function standingAt({ dishes }: PageReading, offset: number): Standing | null {
  for (const dish of dishes) {
    if (!holds(dish.recipe.span, offset)) continue;
    const { title, listings } = dish.recipe;
    if (title !== null && holds(title.span(), offset)) return { kind: 'title', dish, span: title.span() };
    const listing = listings.find(({ passage }) => holds(passage.span(), offset));
    if (listing !== undefined) return { kind: 'listing', dish, listing, span: listing.passage.span() };
    // A mention may stand inside another ("the stock" in "the stock mixture"): the shortest is meant.
    const mentions = dish.mentions
      .map((mention) => ({ kind: 'mention' as const, dish, mention, span: spanOf(dish, mention) }))
      .filter(({ span }) => holds(span, offset))
      .sort((a, b) => a.span.end - a.span.start - (b.span.end - b.span.start));
    if (mentions[0] !== undefined) return mentions[0];
  }
  return null;
}

/** Where a mention stands in the file. */
export function spanOf({ recipe }: Dish, { step, start, end }: Mention): Span {
  return recipe.steps[step]!.passage.span(start, end);
}

function holds({ start, end }: Span, offset: number): boolean {
  return start <= offset && offset <= end;
}
