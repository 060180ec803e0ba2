/** What is read of a yield and of a stated time. */
import { describe, expect, test } from 'vitest';
import { printAmount } from '../../src/grammar/print.js';
import type { Yield } from '../../src/grammar/types.js';
import { readDuration, readYield } from '../../src/grammar/yield.js';
import { shown, shownMeasure } from './notation.js';

const shownYield = (found: Yield | null) =>
  found && [
    found.amount === null ? null : printAmount(found.amount),
    found.of,
    ...found.measures.map(shownMeasure),
    ...found.dimensions.map((one) => shown([one])),
  ];

describe('a yield counts what the recipe gives, with or without its label', () => {
  test.each([
    ['Serves 4', ['4', '']],
    ['Makes about 2 dozen', ['about 24', '']],
    ['4 to 6 servings', ['4 to 6', 'servings']],
    ['2 loaves', ['2', 'loaves']],
    ['one 9-inch pie', ['1', 'pie', '[9 inch]']],
    ['4', ['4', '']],
    ['8 bowls', ['8', 'bowls']],
    ['4-6', ['4 to 6', '']],
    ['about 1 quart', [null, '', '[about 1 quart]']],
    ['1 loaf (about 12 slices)', ['1', 'loaf']],
    ['Makes 24 small cookies', ['24', 'small cookies']],
    ['Yield: 1 1/2 cups', [null, '', '[3/2 cup]']],
    ['Two 8-inch rounds', ['2', 'rounds', '[8 inch]']],
    ['Serves one', ['1', '']],
    ['Serves six', ['6', '']],
    ['Serve 4', ['4', '']],
    ['For 4', ['4', '']],
    ['For six', ['6', '']],
    ['Four servings', ['4', 'servings']],
    ['One 9-inch cake', ['1', 'cake', '[9 inch]']],
    ['about two adult portions', ['about 2', 'adult portions']],
    ['An average-sized jar', ['1', 'average-sized jar']],
    ['Makes 12 large or 24 small muffins', ['12', 'muffins']],
    ['Makes 12 muffins or 24 mini muffins', ['12', 'muffins']],
  ])('%s', (text, expected) => expect(shownYield(readYield(text))).toEqual(expected));
});

test('2/3 servings are two to three, since nobody is fed by less than one', () => {
  expect(shownYield(readYield('2/3'))).toEqual(['2 to 3', '']);
});

test.each(['', '??', 'depends', 'serves a crowd', 'Serves a crowd'])('a yield of "%s" is none', (text) =>
  expect(readYield(text)).toBeNull(),
);

describe('a stated time is a duration', () => {
  test.each([
    ['10 min', '[600 s in minutes]'],
    ['1 hr 25 min', '[5100 s in hours]'],
    ['15-30 min', '[900..1800 s in minutes]'],
    ['1h', '[3600 s in hours]'],
    ['1½-2 hours', '[5400..7200 s in hours]'],
    ['overnight', '[some in nights]'],
    ['30 min (plus one hour rising)', '[1800 s in minutes]'],
    ['at least 4 hours', '[at-least 14400 s in hours]'],
  ])('%s', (text, expected) => expect(shown([readDuration(text)!])).toBe(expected));
  test.each(['', 'depends', 'see below', '4'])('"%s" states no time', (text) =>
    expect(readDuration(text)).toBeNull(),
  );
});
