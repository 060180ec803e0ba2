/** How a reading is put together: stets, order, and only the rules asked for. */
import { describe, expect, it } from 'vitest';
import { readManuscript } from '../../src/reading/read.js';

const soup = (third: string) => `# Leek Soup

Serves 4

- 2 leeks, sliced
- 4 cups vegetable stock

1. Simmer the leeks in the stock until soft, 20 minutes.
2. Season with 1 teaspoon salt.
${third}
`;
const read = (text: string, only?: string[]) =>
  readManuscript([{ path: 'soup.md', text }], only === undefined ? {} : { only });
const words = (text: string, only?: string[]) =>
  read(text, only).marks.map((mark) => text.slice(mark.span.start, mark.span.end));

describe('a stet', () => {
  it('lets the mark of its own line stand, and keeps the reason', () => {
    const text = soup('3. Swirl in the cream. <!-- stet unlisted-ingredient: from the jug on the table -->');
    expect(words(text)).toEqual(['salt']);
    expect(read(text).stetted.map(({ mark, reason }) => [mark.subject, reason])).toEqual([
      ['cream', 'from the jug on the table'],
    ]);
  });

  it('does not silence another rule, and is idle then', () => {
    const stet = '<!-- stet unused-ingredient: no -->';
    expect(words(soup(`3. Swirl in the cream. ${stet}`))).toEqual(['salt', 'cream', stet]);
  });
});

describe('a reading', () => {
  it('gives the marks in the order of their places', () => {
    expect(words(soup('3. Swirl in the cream.'))).toEqual(['salt', 'cream']);
  });

  it('runs only the rules asked for', () => {
    expect(words(soup('3. Swirl in the cream.'), ['unused-ingredient'])).toEqual([]);
  });

  it('is the same for Windows line ends, and finds the same words', () => {
    const text = soup('3. Swirl in the cream.').replaceAll('\n', '\r\n');
    expect(words(text)).toEqual(['salt', 'cream']);
  });

  it('finds the same words behind a byte-order mark', () => {
    expect(words(`\ufeff${soup('3. Swirl in the cream.')}`)).toEqual(['salt', 'cream']);
  });

  it('counts by weight what stands', () => {
    expect(read(soup('3. Swirl in the cream.')).counts).toEqual({ fault: 2, query: 0, note: 0 });
  });

  it('says nothing of a text that is no recipe', () => {
    expect(
      words('# Why we cook\n\nThe kettle is never cold here. Salt, pepper and cream stand on the table.\n'),
    ).toEqual([]);
  });
});
