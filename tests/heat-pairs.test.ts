/** Every pair of statements of one temperature or time in the corpus is judged as a person judged it. */
import { expect, it } from 'vitest';
import { comparePairs } from './accuracy/heat-pairs.js';
import { corpusIn } from './accuracy/plants.js';

const files = corpusIn('../shared/corpus/public-domain');

/** The whole corpus is read, which on a busy machine takes more than the usual five seconds. */
const LONGEST_WAIT_MS = 300_000;

it.skipIf(files === null)(
  'the corpus’s dual temperatures and times are judged as labelled',
  () => {
    const { pairs, unlabelled, wrong } = comparePairs(files ?? []);
    expect(pairs.length).toBeGreaterThan(200);
    expect(unlabelled).toEqual([]);
    expect(wrong).toEqual([]);
  },
  LONGEST_WAIT_MS,
);
