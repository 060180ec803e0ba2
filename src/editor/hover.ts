/** Answers what a listing or a mention was understood as. */
import type { Hover, Position } from 'vscode-languageserver';
import { standingAt } from './at.js';
import type { Desk, Sheet } from './desk.js';
import { hoverOf } from './facts.js';
import { listingFacts } from './hover-listing.js';
import { mentionFacts } from './hover-mention.js';

export function hover({ client }: Desk, { book, read, places }: Sheet, position: Position): Hover | null {
  const found = standingAt(read, places.offset(position));
  if (found === null || found.kind === 'title') return null;
  const range = places.range(found.span);
  return found.kind === 'listing'
    ? hoverOf(
        client,
        found.listing.passage.text,
        listingFacts(found.dish, found.listing, book.style.system ?? undefined),
        range,
      )
    : hoverOf(client, found.mention.text, mentionFacts(found.dish, found.mention), range);
}
