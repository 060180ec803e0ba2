/** Faults planted into the corpus as one book are caught, and the marks on the corpus itself are those that a person judged. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readManuscript } from '../../src/reading/read.js';
import { countBookPlants } from './book-plants.js';
import { corpusIn } from './plants.js';

const corpus = corpusIn('../shared/corpus/public-domain');
const LEAST_RECALL = 0.95;
const LEAST_RIGHT = 0.9;
const FEWEST_PLANTS = 60;
/** The table of `npm run accuracy -- book` has more of them; a test is to be quick. */
const EVERY = 30;

it.skipIf(corpus === null)(
  'at least 95 in 100 of the planted faults are marked',
  { timeout: 240_000 },
  () => {
    const counts = [...countBookPlants(corpus!, EVERY).values()];
    const planted = counts.reduce((sum, count) => sum + count.planted, 0);
    const caught = counts.reduce((sum, count) => sum + count.caught, 0);
    expect(planted).toBeGreaterThanOrEqual(FEWEST_PLANTS);
    expect(caught / planted).toBeGreaterThanOrEqual(LEAST_RECALL);
  },
);

it.skipIf(corpus === null)('of the marks of structure on the corpus a person found nine in ten right', () => {
  const labels = readFileSync(new URL('structure-marks.tsv', import.meta.url), 'utf8')
    .trimEnd()
    .split('\n')
    .slice(1)
    .map((row) => row.split('\t'));
  const known = new Map(labels.map(([file, line, rule, , verdict]) => [`${file} ${line} ${rule}`, verdict]));
  const rules = [
    'yield-absent',
    'placeholder-left',
    'recipe-unclear',
    'headnote-promise',
    'equipment-unnamed',
    'section-order',
    'servings-disagreement',
    'reference-broken',
    'reference-misspelled',
    'step-reference-broken',
    'title-twice',
  ];
  const { pages, marks } = readManuscript(corpus!, { only: rules });
  const lines = new Map(pages.map((page) => [page.path, page.lines]));
  const verdicts = marks.map(
    ({ file, span, rule }) => known.get(`${file} ${lines.get(file)!.line(span.start)} ${rule}`) ?? 'unjudged',
  );
  // A mark that nobody has judged yet counts as wrong.
  expect(verdicts.filter((verdict) => verdict === 'right').length / verdicts.length).toBeGreaterThanOrEqual(
    LEAST_RIGHT,
  );
});
