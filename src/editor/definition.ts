/** Answers where a mention is listed, and where the recipe is that a link refers to. */
import path from 'node:path';
import type { Location, LocationLink, Position } from 'vscode-languageserver';
import { headingNamed, type LinkAt, linkAt } from '../manuscript/link-at.js';
import type { Span } from '../manuscript/types.js';
import { standingAt } from './at.js';
import type { Desk, Sheet } from './desk.js';

export function definition(desk: Desk, sheet: Sheet, position: Position): Location[] | LocationLink[] | null {
  const offset = sheet.places.offset(position);
  const link = linkAt(sheet.read.page, offset);
  if (link !== null) return linked(desk, sheet, link);
  const found = standingAt(sheet.read, offset);
  if (found?.kind !== 'mention') return null;
  const targets = found.mention.listings.map(({ passage }) => passage.span());
  return answer(desk, sheet, found.span, sheet, targets);
}

/** The recipe of the file that the link leads to, or the heading that it names there. Links out of the manuscript are not ours. */
function linked(desk: Desk, sheet: Sheet, link: LinkAt): Location[] | LocationLink[] | null {
  const file =
    link.path === ''
      ? sheet.file
      : path.posix.join(path.posix.dirname(sheet.file), link.path.replaceAll('\\', '/'));
  const target = desk.sheetOf(sheet.book, file);
  if (target === null) return null;
  const { page, dishes } = target.read;
  const heading = link.anchor === '' ? null : headingNamed(page, link.anchor);
  const span = heading?.passage.span() ?? dishes[0]?.recipe.title?.span() ?? { start: 0, end: 0 };
  return answer(desk, sheet, link.span, target, [span]);
}

function answer(
  { client }: Desk,
  sheet: Sheet,
  origin: Span,
  target: Sheet,
  spans: readonly Span[],
): Location[] | LocationLink[] {
  const ranges = spans.map((span) => target.places.range(span));
  if (!client.links) return ranges.map((range) => ({ uri: target.uri, range }));
  return ranges.map((range) => ({
    originSelectionRange: sheet.places.range(origin),
    targetUri: target.uri,
    targetRange: range,
    targetSelectionRange: range,
  }));
}
