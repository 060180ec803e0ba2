/** Where the links of a page lead, as they are written. */
import { expect, test } from 'vitest';
import { openPage } from '../../src/manuscript/page.js';

const linksOf = (text: string) =>
  openPage({ path: 'a.md', text }).links.map(({ target, span }) => [
    target,
    text.slice(span.start, span.end),
  ]);

test('links are found in paragraphs, lists, tables and headings, in the order of the page', () => {
  const text =
    '# On [toast](#toast)\n\nSpread [jam](jam.md) on it.\n\n- 1 cup [stock](../stock.md#clear)\n\n| a | b |\n| - | - |\n| [tea](tea.md) | x |\n';
  expect(linksOf(text)).toEqual([
    ['#toast', '[toast](#toast)'],
    ['jam.md', '[jam](jam.md)'],
    ['../stock.md#clear', '[stock](../stock.md#clear)'],
    ['tea.md', '[tea](tea.md)'],
  ]);
});

test('a link by its label leads where the label is defined, before or after, and a picture is no link', () => {
  const text = 'See [jam][j] and ![a jar](jar.png).\n\n- as in [tea]\n\n[j]: jam.md\n[tea]: tea.md\n';
  expect(linksOf(text)).toEqual([
    ['jam.md', '[jam][j]'],
    ['tea.md', '[tea]'],
  ]);
});

test('in a long file the labels are found as well, and a byte-order mark shifts nothing', () => {
  const filler = 'Toast is eaten with *jam*.\n\n'.repeat(2000);
  const text = `\uFEFFSee [jam][j].\n\n${filler}[j]: jam.md\n`;
  expect(linksOf(text)).toEqual([['jam.md', '[jam][j]']]);
});
