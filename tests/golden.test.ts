/** The demo manuscript: the draft gets exactly the marks that an editor expects, the corrected book gets none. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readManuscript } from '../src/reading/read.js';

const fixtures = new URL('../fixtures/lock-keepers-table/', import.meta.url);

function bookIn(folder: string) {
  const root = new URL(`${folder}/`, fixtures);
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.md'))
    .sort()
    .map((path) => ({ path, text: readFileSync(new URL(path, root), 'utf8') }));
}

function marksOn(folder: string): string[] {
  const reading = readManuscript(bookIn(folder));
  const pages = new Map(reading.pages.map((page) => [page.path, page]));
  return reading.marks.map(({ rule, file, span }) => {
    const page = pages.get(file)!;
    return [rule, file, page.lines.line(span.start), page.text.slice(span.start, span.end)].join('\t');
  });
}

it('the draft gets the marks that an editor expects, and no others', () => {
  const expected = readFileSync(new URL('draft.expected.tsv', fixtures), 'utf8')
    .trimEnd()
    .split('\n')
    .slice(1)
    .map((row) => row.split('\t').slice(0, 4).join('\t'));
  expect(marksOn('draft').sort()).toEqual(expected.sort());
});

it('the corrected book gets none', () => {
  expect(marksOn('corrected')).toEqual([]);
});
