import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { readingReport } from '../../src/reports/schema.js';
import { faulty, manuscript, sound, tamis } from './run.js';

const only = ['--only', 'unlisted-ingredient'];
const milky = sound.replace('Stir in', 'Pour in the milk. Stir in').replace('# Leek Soup', '# Milk Soup');

/** A book with one known fault, and its earlier reading beside it. */
function backlog(): string {
  const folder = manuscript({ 'book/leek.md': faulty });
  tamis(folder, ['read', 'book', ...only, '--as', 'json', '--out', 'marks.json', '--stop-at', 'never']);
  return folder;
}

describe('tamis read --since', () => {
  test('is content when only known marks are there, wherever their lines have moved to', () => {
    const folder = backlog();
    writeFileSync(path.join(folder, 'book/leek.md'), faulty.replace('Serves 4', 'For wet days.\n\nServes 4'));
    const run = tamis(folder, ['read', 'book', ...only, '--since', 'marks.json']);
    expect(run).toEqual({
      status: 0,
      stdout: 'No new marks in one recipe. One mark held back, known from the earlier reading.\n',
      stderr: '',
    });
  });
  test('reports what is new, and stops at it', () => {
    const folder = backlog();
    writeFileSync(path.join(folder, 'book/milk.md'), milky);
    const run = tamis(folder, ['read', 'book', ...only, '--since', 'marks.json']);
    expect(run.status).toBe(1);
    expect(run.stdout).toMatch(/^Milk Soup /);
    expect(run.stdout).not.toContain('Leek Soup');
    expect(run.stdout.replace(/\s+/g, ' ')).toContain(
      'New: one fault, no queries and no notes in two recipes. One mark held back',
    );
  });
  test('tells the count on stderr beside plain lines, and in json', () => {
    const folder = backlog();
    expect(tamis(folder, ['read', 'book', ...only, '--since', 'marks.json', '--as', 'plain'])).toEqual({
      status: 0,
      stdout: '',
      stderr: 'tamis: One mark held back, known from the earlier reading.\n',
    });
    const { stdout } = tamis(folder, ['read', 'book', ...only, '--since', 'marks.json', '--as', 'json']);
    expect(readingReport.parse(JSON.parse(stdout))).toMatchObject({ marks: [], held: 1 });
  });
  test.each([
    ['a file that is not there', null, /^tamis: since\.json: there is no such file.*--as json/],
    ['words', 'no marks at all', /^tamis: since\.json: it is not JSON/],
    [
      'other JSON',
      '{"version": "2.1.0", "runs": []}',
      /^tamis: since\.json: it is JSON, and no reading of tamis/,
    ],
    ['JSON that is no object', '[]', /^tamis: since\.json: it is JSON, and no reading of tamis/],
    [
      'a reading without fingerprints',
      '{"tamis": "0.0.1", "recipes": [], "marks": [{"rule": "x"}], "counts": {}}',
      /^tamis: since\.json: marks of this reading have no fingerprint/,
    ],
  ])('says what is the matter with %s, and reads nothing', (_name, text, words) => {
    const folder = manuscript(
      text === null ? { 'leek.md': faulty } : { 'leek.md': faulty, 'since.json': text },
    );
    const run = tamis(folder, ['read', '--since', 'since.json']);
    expect(run).toMatchObject({ status: 2, stdout: '' });
    expect(run.stderr).toMatch(words);
    expect(run.stderr).not.toContain('    at ');
  });
  test('takes no reading that holds new marks only, nor writes over the earlier one', () => {
    const folder = backlog();
    const since = ['read', 'book', ...only, '--since', 'marks.json', '--as', 'json', '--out'];
    expect(tamis(folder, [...since, 'new.json']).status).toBe(0);
    expect(tamis(folder, ['read', 'book', '--since', 'new.json']).stderr).toContain('holds new marks only');
    const before = readFileSync(path.join(folder, 'marks.json'), 'utf8');
    expect(tamis(folder, [...since, './marks.json'])).toMatchObject({ status: 2, stdout: '' });
    expect(readFileSync(path.join(folder, 'marks.json'), 'utf8')).toBe(before);
  });
});
