/** Compares the marks that rules leave on the corpus with the verdicts of a person, mark by mark. */
import { readFileSync } from 'node:fs';
import type { Weight } from '../../rules/rule.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';

export interface MarkScore {
  readonly byWeight: Readonly<Record<Weight, { judged: number; right: number }>>;
  /** Of all labels, on how many a second person, who did not see them, said the same. */
  readonly agreed: number;
  readonly labels: number;
  /** Marks of the rules that no label speaks of, as "file:line rule subject". */
  readonly unjudged: readonly string[];
  /** Labels whose mark is no longer made. */
  readonly gone: readonly string[];
}

interface Label {
  readonly verdict: string;
  readonly second: string;
}

/** The marks of the rules `only` on the files, each by itself or all as one book, against the labels of a table in this folder. */
export function scoreMarks(
  files: readonly SourceFile[],
  table: string,
  only: readonly string[],
  how: 'one by one' | 'as one book' = 'one by one',
): MarkScore {
  const labels = labelsOf(readFileSync(new URL(`./${table}`, import.meta.url), 'utf8'));
  const byWeight = {
    fault: { judged: 0, right: 0 },
    query: { judged: 0, right: 0 },
    note: { judged: 0, right: 0 },
  };
  const unjudged: string[] = [];
  const seen = new Set<string>();
  for (const book of how === 'as one book' ? [files] : files.map((file) => [file])) {
    const { marks, pages } = readManuscript(book, { only });
    const lines = new Map(pages.map((page) => [page.path, page.lines]));
    for (const mark of marks) {
      const line = lines.get(mark.file)!.line(mark.span.start);
      const key = `${mark.file}:${line} ${mark.rule} ${mark.subject}`;
      const label = labels.get(key);
      seen.add(key);
      if (label === undefined) unjudged.push(key);
      else {
        byWeight[mark.weight].judged++;
        if (label.verdict === 'right') byWeight[mark.weight].right++;
      }
    }
  }
  return {
    byWeight,
    agreed: [...labels.values()].filter(({ verdict, second }) => verdict === second).length,
    labels: labels.size,
    unjudged,
    gone: [...labels.keys()].filter((key) => !seen.has(key)),
  };
}

/** The labels by "file:line rule subject". */
function labelsOf(table: string): Map<string, Label> {
  const rows = table.trimEnd().split('\n').slice(1);
  return new Map(
    rows.map((row) => {
      const [file, line, rule, subject, verdict = '', , second = ''] = row.split('\t');
      return [`${file}:${line} ${rule} ${subject}`, { verdict, second }];
    }),
  );
}
