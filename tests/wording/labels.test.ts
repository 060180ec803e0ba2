/** The marks of wording on the corpus that a person has judged: nine of ten right, and still made. Skipped without the corpus. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { rules } from '../../rules/index.js';
import { readManuscript } from '../../src/reading/read.js';
import { corpusIn } from '../accuracy/plants.js';

const files = corpusIn('../shared/corpus/public-domain');
const labels = readFileSync(new URL('../accuracy/wording-marks.tsv', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n')
  .slice(1)
  .map(
    (row) => row.split('\t') as [file: string, line: string, rule: string, subject: string, verdict: string],
  );
const MOST_TO_A_RECIPE = 2;

describe.skipIf(files === null)('the marks of wording on the corpus', () => {
  const only = rules.filter((rule) => rule.topic === 'wording').map((rule) => rule.name);
  const reading = readManuscript(files ?? [], { only });
  const made = new Set(reading.marks.map(({ rule, file, subject }) => `${file} ${rule} ${subject}`));
  const judged = labels.filter(([file, , rule, subject]) => made.has(`${file} ${rule} ${subject}`));

  it('are those that were judged, fifty or nearly so', () => {
    expect(labels.length).toBeGreaterThanOrEqual(50);
    expect(judged.length).toBeGreaterThanOrEqual(45);
  });

  it('are right nine times out of ten', () => {
    const right = judged.filter(([, , , , verdict]) => verdict === 'right');
    expect(right.length / judged.length).toBeGreaterThanOrEqual(0.9);
  });

  it('are no more than two to a recipe without a house style', () => {
    expect(reading.marks.length).toBeLessThanOrEqual(MOST_TO_A_RECIPE * reading.dishes.length);
  });
});
