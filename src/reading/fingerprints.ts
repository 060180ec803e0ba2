/** Knows a mark again in a later reading, wherever its line has moved to in the file. */
import { createHash } from 'node:crypto';
import type { Mark } from '../../rules/rule.js';
import type { Reading } from './types.js';

/**
 * A fingerprint for every mark of the reading, silenced and held-back ones included. It is made of the rule, the
 * recipe (the file where there is none), the subject and the marked words, and says nothing of lines or files, so
 * that it stays the same when a line is moved or a file renamed. Marks that are alike in all of these are counted
 * in the order of the book.
 */
export function fingerprintsOf(
  reading: Pick<Reading, 'pages' | 'marks' | 'stetted' | 'held'>,
): ReadonlyMap<Mark, string> {
  const order = new Map(reading.pages.map((page, index) => [page.path, { index, text: page.text }]));
  const all = [...reading.marks, ...reading.stetted.map(({ mark }) => mark), ...(reading.held ?? [])].sort(
    (a, b) =>
      order.get(a.file)!.index - order.get(b.file)!.index ||
      a.span.start - b.span.start ||
      a.span.end - b.span.end,
  );
  const seen = new Map<string, number>();
  return new Map(
    all.map((mark) => {
      const words = order.get(mark.file)!.text.slice(mark.span.start, mark.span.end);
      const alike = JSON.stringify([
        mark.rule,
        mark.recipe === null ? ['file', mark.file] : ['recipe', normal(mark.recipe)],
        normal(mark.subject),
        normal(words),
      ]);
      const ordinal = (seen.get(alike) ?? 0) + 1;
      seen.set(alike, ordinal);
      return [mark, digest(`${alike} ${ordinal}`)];
    }),
  );
}

/** Letters, figures and what changes an amount; how they are spaced, wrapped, cased or emphasized does not count. */
function normal(text: string): string {
  return (
    text
      .normalize('NFKC')
      .toLowerCase()
      .match(/[\p{L}\p{M}\p{N}°%/⁄.,-]+/gu) ?? []
  ).join(' ');
}

/** Half of a SHA-256: long enough that two marks of one book are never taken for each other. */
function digest(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 32);
}
