/** Takes away the marks that the author has let stand, and keeps the reasons. */
import type { Mark } from '../../rules/rule.js';
import type { Page, Stet } from '../manuscript/types.js';
import type { Reading } from './types.js';

/** The marks that stand, and those that a stet on their line silences. A stet that names no rule silences them all. */
export function applyStets(
  pages: readonly Page[],
  marks: readonly Mark[],
): { standing: Mark[]; stetted: Reading['stetted'] } {
  const byLine = new Map<string, Stet[]>();
  for (const page of pages) {
    for (const stet of page.stets) {
      const key = keyOf(page.path, stet.line);
      byLine.set(key, [...(byLine.get(key) ?? []), stet]);
    }
  }
  const linesOf = new Map(pages.map((page) => [page.path, page.lines]));
  const standing: Mark[] = [];
  const stetted: { mark: Mark; reason: string }[] = [];
  for (const mark of marks) {
    const line = linesOf.get(mark.file)?.line(mark.span.start) ?? 0;
    const stet = byLine
      .get(keyOf(mark.file, line))
      ?.find(({ rules }) => rules.length === 0 || rules.includes(mark.rule));
    if (stet === undefined) standing.push(mark);
    else stetted.push({ mark, reason: stet.reason });
  }
  return { standing, stetted };
}

function keyOf(path: string, line: number): string {
  return `${line} ${path}`;
}
