/** A manuscript that changes is read no more than it has to be, and as if it were read from nothing. */
import { expect, it } from 'vitest';
import { undecided } from '../../src/manuscript/house-style.js';
import { Manuscript } from '../../src/reading/manuscript.js';
import { readManuscript } from '../../src/reading/read.js';
import { faulty, sound } from '../cli/run.js';

function book(files: Readonly<Record<string, string>>): Manuscript {
  const manuscript = new Manuscript(undecided);
  for (const [path, text] of Object.entries(files)) manuscript.set({ path, text });
  return manuscript;
}

it('a page that did not change stays the same, with its marks', () => {
  const idle = faulty.replace('- 4 cups water', '- 4 cups water\n- 1 lemon');
  const manuscript = book({ 'a.md': idle, 'b.md': sound });
  const unused = () => manuscript.reading().marks.find(({ rule }) => rule === 'unused-ingredient');
  const [page, mark] = [manuscript.page('a.md'), unused()];
  expect(mark?.file).toBe('a.md');
  manuscript.set({ path: 'b.md', text: faulty });
  expect(manuscript.page('a.md')).toBe(page);
  expect(unused()).toBe(mark);
});

it('the same text again changes nothing at all', () => {
  const manuscript = book({ 'a.md': faulty });
  const reading = manuscript.reading();
  manuscript.set({ path: 'a.md', text: faulty });
  expect(manuscript.reading()).toBe(reading);
});

it('files stand in the order of their names, in whatever order they came', () => {
  const texts = { '10.md': faulty, '2.md': faulty };
  const inOrder = ['2.md', '10.md'].map((path) => ({ path, text: faulty }));
  expect(book(texts).reading().marks).toEqual(readManuscript(inOrder).marks);
});

it('a file that is taken out is gone', () => {
  const manuscript = book({ 'a.md': faulty, 'b.md': faulty });
  manuscript.reading();
  manuscript.remove('a.md');
  expect(manuscript.page('a.md')).toBe(null);
  expect(manuscript.reading().marks.map(({ file }) => file)).toEqual(['b.md']);
});
