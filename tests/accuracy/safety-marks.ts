/** Compares the marks of the safety rules on the corpus with the verdicts of a person, mark by mark. */
import { readFileSync } from 'node:fs';
import type { Weight } from '../../rules/rule.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';

/** The rules whose marks are judged. */
export const judgedRules: readonly string[] = [
  'color-cue-alone',
  'hand-washing-absent',
  'marinade-reused',
  'raw-poultry-rinsed',
  'raw-surface-reused',
  'rest-absent',
  'safe-temperature-absent',
  'safe-temperature-low',
];

export interface SafetyScore {
  readonly byWeight: Readonly<Record<Weight, { judged: number; right: number }>>;
  /** Marks that no label speaks of, as "file:line rule subject". */
  readonly unjudged: readonly string[];
  /** Labels whose mark is no longer made. */
  readonly gone: readonly string[];
  readonly medianNotes: number;
  readonly mostNotes: number;
}

export function scoreSafetyMarks(files: readonly SourceFile[]): SafetyScore {
  const labels = labelsOf(readFileSync(new URL('./safety-marks.tsv', import.meta.url), 'utf8'));
  const byWeight = {
    fault: { judged: 0, right: 0 },
    query: { judged: 0, right: 0 },
    note: { judged: 0, right: 0 },
  };
  const unjudged: string[] = [];
  const seen = new Set<string>();
  const notes: number[] = [];
  for (const file of files) {
    const reading = readManuscript([file], { only: judgedRules });
    for (const mark of reading.marks) {
      const key = `${file.path}:${reading.pages[0]!.lines.line(mark.span.start)} ${mark.rule} ${mark.subject}`;
      const verdict = labels.get(key);
      seen.add(key);
      if (verdict === undefined) unjudged.push(key);
      else {
        byWeight[mark.weight].judged++;
        if (verdict === 'right') byWeight[mark.weight].right++;
      }
    }
    const hasRawFood = reading.dishes.some((dish) => dish.rawFoods.some((raw) => raw.safety !== 'egg'));
    if (hasRawFood) notes.push(reading.marks.filter((mark) => mark.weight === 'note').length);
  }
  notes.sort((a, b) => a - b);
  return {
    byWeight,
    unjudged,
    gone: [...labels.keys()].filter((key) => !seen.has(key)),
    medianNotes: notes[Math.floor(notes.length / 2)] ?? 0,
    mostNotes: notes.at(-1) ?? 0,
  };
}

/** The verdicts by "file:line rule subject". */
function labelsOf(table: string): Map<string, string> {
  const rows = table.trimEnd().split('\n').slice(1);
  return new Map(
    rows.map((row) => {
      const [file, line, rule, subject, verdict] = row.split('\t');
      return [`${file}:${line} ${rule} ${subject}`, verdict!];
    }),
  );
}
