/** The table of usual headings: each is there once, and heads that carry it on are understood. */
import { describe, expect, it } from 'vitest';
import { headOf } from '../../src/anatomy/heads.js';
import { larder } from '../../src/larder/load.js';
import { Passage } from '../../src/manuscript/passage.js';

function said(text: string): [string | null, string | null] {
  const head = headOf(Passage.verbatim(text, 0, text.length), { start: 0, end: text.length }, 2);
  return [head.kind, head.of];
}

describe('the table of headings', () => {
  it('has no heading and no label twice', () => {
    const keys = larder.headings.map((row) => {
      const words = ['connector', 'lead', 'opener', 'joiner'].includes(row.is);
      const use = words ? row.is : row.label === undefined ? 'heading' : 'label';
      return `${use} ${row.heading.toLowerCase().replace(/[^a-z]/g, '')}`;
    });
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
  });
});

describe('a heading', () => {
  it.each([
    ['Ingredients', 'list', null],
    ['## Ingredients ##', 'list', null],
    ['What You’ll Need', 'list', null],
    ['Ingredients for the sauce', 'list', 'sauce'],
    ['Sauce Ingredients', 'list', 'sauce'],
    ['Ingredients: pastry', 'list', null],
    ['Directions for the dumplings', 'method', 'dumplings'],
    ['Make-ahead', 'storage', null],
    ['Storage & reheating', 'storage', null],
    ['Notes on the flour', 'notes', null],
    ['Nutrition (per serving)', 'nutrition', null],
    ['For the Glaze:', null, 'glaze'],
    ['To make the custard', null, 'custard'],
    ['For 4 people', null, null],
    ['Leek Broth', null, null],
    ['Noted Soups of the North', null, null],
    ['Time for Tea', null, null],
  ])('says what it stands over: "%s"', (text, kind, of) => {
    expect(said(text)).toEqual([kind, of]);
  });
});
