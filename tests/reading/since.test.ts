import { describe, expect, test } from 'vitest';
import { fingerprintsOf } from '../../src/reading/fingerprints.js';
import { readManuscript } from '../../src/reading/read.js';
import { newSince } from '../../src/reading/since.js';

const soup = `# Leek Soup

Serves 4

- 2 large leeks, sliced
- 1 tablespoon butter
- 4 cups water

1. Melt the butter in a pot, and cook the leeks in it until soft, 10 minutes.
2. Add the water and simmer until the leeks fall apart, 20 minutes.
3. Stir in the cream and serve.
`;
const only = ['unlisted-ingredient', 'unit-unclear'];
const read = (...texts: string[]) =>
  readManuscript(
    texts.map((text, index) => ({ path: `${index}.md`, text })),
    { only },
  );
const printsOf = (...texts: string[]) => {
  const reading = read(...texts);
  const prints = fingerprintsOf(reading);
  return reading.marks.map((mark) => prints.get(mark)!);
};

describe('a fingerprint', () => {
  const [cream] = printsOf(soup);
  test('stays when the step moves, other lines come before it, or its words are wrapped and emphasized anew', () => {
    const moved = soup
      .replace('3. Stir in the cream and serve.\n', '')
      .replace('1. Melt', '1. Stir in the *cream*.\n2. Melt');
    expect(printsOf(moved)).toEqual([cream]);
    expect(printsOf(soup.replace('Serves 4', 'A soup for wet days.\n\nServes 4'))).toEqual([cream]);
    expect(printsOf(soup.replace(/\n/g, '\r\n'))).toEqual([cream]);
  });
  test('stays when the file is called otherwise or stands elsewhere in the book', () => {
    expect(printsOf('# Introduction\n', soup)).toEqual([cream]);
  });
  test('is another for another food, another recipe, and another rule', () => {
    const [milk] = printsOf(soup.replace('cream', 'milk'));
    const [other] = printsOf(soup.replace('Leek Soup', 'Towpath Soup'));
    const [unclear] = printsOf(
      soup.replace('1 tablespoon butter', '1 knob butter').replace(' the cream', ''),
    );
    expect(new Set([cream, milk, other, unclear]).size).toBe(4);
    expect(unclear).toBeDefined();
  });
  test('counts marks that are alike', () => {
    const twice = printsOf(soup, soup);
    expect(twice).toHaveLength(2);
    expect(twice[0]).toBe(cream);
    expect(twice[1]).not.toBe(cream);
  });
  test('does not change when a mark like it is silenced before it', () => {
    const stetted = soup.replace('3. Stir', '<!-- stet: a garnish -->\n3. Stir');
    expect(printsOf(stetted, soup)).toEqual([printsOf(soup, soup)[1]]);
  });
});

describe('a reading since an earlier one', () => {
  const known = new Set(printsOf(soup));
  test('holds back what was known, and counts what is new', () => {
    const both = newSince(read(soup.replace('the cream', 'the cream, a splash of vinegar')), known);
    expect(both.marks.map((mark) => mark.subject)).toEqual(['vinegar']);
    expect(both.held?.map((mark) => mark.subject)).toEqual(['cream']);
    expect(both.counts.fault + both.counts.query + both.counts.note).toBe(1);
  });
  test('reports the second of two marks that are alike when only one was known', () => {
    const { marks, held } = newSince(read(soup, soup), known);
    expect(marks.map((mark) => mark.file)).toEqual(['1.md']);
    expect(held?.map((mark) => mark.file)).toEqual(['0.md']);
  });
  test('keeps the fingerprints that the whole reading has', () => {
    const whole = read(soup, soup);
    const since = newSince(whole, known);
    expect(fingerprintsOf(since).get(since.marks[0]!)).toBe(fingerprintsOf(whole).get(whole.marks[1]!));
  });
  test('reports a mark again when its stet is taken away', () => {
    const stetted = read(soup.replace('3. Stir', '<!-- stet: a garnish -->\n3. Stir'));
    const prints = fingerprintsOf(stetted);
    expect(newSince(read(soup), new Set(stetted.marks.map((mark) => prints.get(mark)!))).marks).toHaveLength(
      1,
    );
  });
});
