/** What holds for every text, sensible or hostile. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readListing } from '../../src/grammar/listing.js';
import { readText } from '../../src/grammar/text.js';
import { readDuration, readYield } from '../../src/grammar/yield.js';
import { shown } from './notation.js';

test('punctuation, line breaks and hyphens are marks of their own', () => {
  expect(shown(readText('Sift all-purpose flour;\nstir!'))).toBe('Sift all - ~purpose flour ; \n stir !');
});

test('a word is asked of the larder in lower case, without accents and apostrophes', () => {
  const words = readText("Baker's CRÈME brûlée").map((item) => (item.kind === 'word' ? item.key : item.kind));
  expect(words).toEqual(['bakers', 'creme', 'brulee']);
});

const kitchen = fc.constantFrom(
  '1',
  '2',
  '12',
  '350',
  '1/2',
  '½',
  '1.5',
  '1,000',
  '400',
  ' ',
  ' ',
  ' ',
  '-',
  '–',
  '/',
  '(',
  ')',
  '[',
  ']',
  ',',
  '.',
  '+',
  '&',
  '~',
  '°',
  '"',
  '%',
  '#',
  '=',
  '×',
  'x',
  'a',
  'an',
  'half',
  'one',
  'two',
  'third',
  'dozen',
  'few',
  'cup',
  'cups',
  'g',
  'oz',
  'can',
  'cloves',
  'inch',
  'in',
  'minutes',
  'hour',
  'F',
  'C',
  'degrees',
  'gas',
  'mark',
  'fan',
  'to',
  'or',
  'and',
  'plus',
  'by',
  'of',
  'the',
  'about',
  'scant',
  'large',
  'more',
  'between',
  'each',
  'overnight',
  'salt',
  'eggs',
  'chopped',
  'finely',
  'for',
  'optional',
  '\n',
  '\t',
  'juice',
  'zest',
  ':',
  ';',
  '|',
  '😀',
  'é',
);
const hostile = fc.oneof(
  fc.array(kitchen, { maxLength: 40 }).map((parts) => parts.join('')),
  fc.string({ unit: 'binary', maxLength: 40 }),
);
const spaced = fc.array(kitchen, { maxLength: 40 }).map((parts) => parts.join(' '));

test('items follow one another and leave out nothing but white space', () => {
  fc.assert(
    fc.property(fc.oneof(hostile, spaced), (text) => {
      let end = 0;
      for (const item of readText(text)) {
        expect(item.start).toBeGreaterThanOrEqual(end);
        expect(item.end).toBeGreaterThan(item.start);
        expect(text.slice(end, item.start)).toMatch(/^[\s\u200b\u2060]*$/);
        end = item.end;
      }
      expect(text.slice(end)).toMatch(/^[\s\u200b\u2060]*$/);
    }),
    { numRuns: 3000 },
  );
});

test('a word and a mark are the letters that stand in their place', () => {
  fc.assert(
    fc.property(fc.oneof(hostile, spaced), (text) => {
      for (const item of readText(text)) {
        if (item.kind === 'word') expect(item.text).toBe(text.slice(item.start, item.end));
        if (item.kind === 'point' && item.text !== '\n')
          expect(item.text).toBe(text.slice(item.start, item.end));
      }
    }),
    { numRuns: 1000 },
  );
});

test('every line is read as a listing, a yield and a time without failing, and phrases lie inside it', () => {
  fc.assert(
    fc.property(fc.oneof(hostile, spaced), (text) => {
      const line = readListing(text);
      readYield(text);
      readDuration(text);
      const phrases = [
        ...line.states,
        ...line.preparation,
        ...line.asides,
        ...line.unread,
        ...line.foods,
        ...line.measures,
      ];
      for (const { start, end } of phrases) {
        expect(start).toBeGreaterThanOrEqual(0);
        expect(end).toBeLessThanOrEqual(text.length);
      }
    }),
    { numRuns: 2000 },
  );
});

describe('a line of 100,000 characters takes no more than its share of time', () => {
  const units = [
    '1',
    '1/2 ',
    '(',
    '1 (2 g) ',
    '/',
    '-',
    '1-',
    '1 ',
    'a ',
    '1 cup plus ',
    'half of a ',
    ',000',
    '350°F/',
    '1,',
    'and 1 ',
    'salt or ',
    '(1 g (',
    '½',
    'finely ',
    '2 x ',
    '"',
    "a'",
    'a-',
    '(s)',
    'a or b c d ',
    'or 1 g ',
  ];
  const LENGTH = 100_000;
  // A short text costs what its share of the long one is; the factor allows for a busy machine and small numbers.
  const SHARE = 4;
  const SLACK = 6;
  const SLACK_MS = 400;
  const milliseconds = (length: number, unit: string, read: (text: string) => unknown) => {
    const text = unit.repeat(Math.ceil(length / unit.length));
    const start = performance.now();
    read(text);
    return performance.now() - start;
  };
  test.each(units)('%j over and over', (unit) => {
    for (const read of [readText, readListing]) {
      const short = milliseconds(LENGTH / SHARE, unit, read);
      expect(milliseconds(LENGTH, unit, read)).toBeLessThan(short * SHARE * SLACK + SLACK_MS);
    }
  });
});
