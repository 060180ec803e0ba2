/** Answers where the method uses a listing; asked at a mention, where it uses the same. */
import {
  type DocumentHighlight,
  DocumentHighlightKind,
  type Location,
  type Position,
} from 'vscode-languageserver';
import type { Listing } from '../anatomy/types.js';
import type { Dish } from '../kitchen/types.js';
import type { Span } from '../manuscript/types.js';
import { spanOf, standingAt } from './at.js';
import type { Sheet } from './desk.js';

export function references(sheet: Sheet, position: Position, withListing: boolean): Location[] | null {
  const found = meantAt(sheet, position);
  if (found === null) return null;
  return [...(withListing ? found.listed : []), ...found.used].map((span) => ({
    uri: sheet.uri,
    range: sheet.places.range(span),
  }));
}

export function highlights(sheet: Sheet, position: Position): DocumentHighlight[] | null {
  const found = meantAt(sheet, position);
  if (found === null) return null;
  const highlight = (kind: DocumentHighlightKind) => (span: Span) => ({
    range: sheet.places.range(span),
    kind,
  });
  return [
    ...found.listed.map(highlight(DocumentHighlightKind.Write)),
    ...found.used.map(highlight(DocumentHighlightKind.Read)),
  ];
}

interface Meant {
  readonly listed: readonly Span[];
  readonly used: readonly Span[];
}

function meantAt({ read, places }: Sheet, position: Position): Meant | null {
  const found = standingAt(read, places.offset(position));
  if (found === null || found.kind === 'title') return null;
  const listings = found.kind === 'listing' ? [found.listing] : found.mention.listings;
  return { listed: listings.map(({ passage }) => passage.span()), used: usesOf(found.dish, listings) };
}

/** In the order of the page, each place once. */
function usesOf(dish: Dish, listings: readonly Listing[]): Span[] {
  const mentions = new Set(listings.flatMap(({ index }) => dish.uses[index]!));
  return dish.mentions.filter((mention) => mentions.has(mention)).map((mention) => spanOf(dish, mention));
}
