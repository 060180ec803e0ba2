/** The marks of wording on the corpus that a person has judged: nine of ten right, and none unjudged. Skipped without the corpus. */
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
  const lines = new Map(reading.pages.map((page) => [page.path, page.lines]));
  const known = new Map(
    labels.map(([file, line, rule, subject, verdict]) => [`${file}:${line} ${rule} ${subject}`, verdict]),
  );
  const keys = reading.marks.map(
    ({ file, span, rule, subject }) => `${file}:${lines.get(file)!.line(span.start)} ${rule} ${subject}`,
  );

  it('are right nine times out of ten; one that nobody has judged counts as wrong', () => {
    expect(keys.length).toBeGreaterThanOrEqual(100);
    const right = keys.filter((key) => known.get(key) === 'right');
    expect(right.length / keys.length).toBeGreaterThanOrEqual(0.9);
  });

  it('are those that a person judged', () => {
    expect(keys.filter((key) => !known.has(key))).toEqual([]);
    expect([...known.keys()].filter((key) => !keys.includes(key))).toEqual([]);
  });

  it('are no more than two to a recipe without a house style', () => {
    expect(reading.marks.length).toBeLessThanOrEqual(MOST_TO_A_RECIPE * reading.dishes.length);
  });
});
