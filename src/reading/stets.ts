/** Takes away the marks that the author has let stand, and keeps the reasons. */
import type { Mark } from '../../rules/rule.js';
import type { Page } from '../manuscript/types.js';
import type { Reading } from './types.js';

/** The marks that stand, and those that a stet on their line silences. A stet that names no rule silences them all. */
export function applyStets(
  pages: readonly Page[],
  marks: readonly Mark[],
): { standing: Mark[]; stetted: Reading['stetted'] } {
  const byPath = new Map(pages.map((page) => [page.path, page]));
  const standing: Mark[] = [];
  const stetted: { mark: Mark; reason: string }[] = [];
  for (const mark of marks) {
    const page = byPath.get(mark.file);
    const line = page?.lines.line(mark.span.start);
    const stet = page?.stets.find(
      (each) => each.line === line && (each.rules.length === 0 || each.rules.includes(mark.rule)),
    );
    if (stet === undefined) standing.push(mark);
    else stetted.push({ mark, reason: stet.reason });
  }
  return { standing, stetted };
}
