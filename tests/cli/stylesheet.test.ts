/** The style sheet and the drafted house style, from the command line. */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { stylesheetReport } from '../../src/reports/stylesheet-schema.js';
import { manuscript, sound, tamis } from './run.js';

const other = sound.replace('# Leek Soup', '# Second Soup').replaceAll('tablespoon', 'tbsp');

describe('tamis stylesheet', () => {
  test('writes Markdown, and json that keeps its contract', () => {
    const folder = manuscript({ 'a.md': sound, 'b.md': other });
    const run = tamis(folder, ['stylesheet']);
    expect(run.stderr).toBe('');
    expect(run.stdout).toMatch(/^# Style sheet\n/);
    expect(run.stdout).toContain('\n## Foods\n');
    const report = stylesheetReport.parse(JSON.parse(tamis(folder, ['stylesheet', '--as', 'json']).stdout));
    expect(report.titles.map(({ title }) => title)).toEqual(['Leek Soup', 'Second Soup']);
    expect(report.foods.find(({ about }) => about === 'leek')?.forms[0]?.places[0]?.file).toBe('a.md');
  });
  test('writes to a file, and never over the manuscript', () => {
    const folder = manuscript({ 'a.md': sound });
    expect(tamis(folder, ['stylesheet', '--out', 'style.txt'])).toMatchObject({ status: 0, stdout: '' });
    expect(readFileSync(path.join(folder, 'style.txt'), 'utf8')).toContain('# Style sheet');
    expect(tamis(folder, ['stylesheet', '--out', 'a.md']).status).toBe(2);
    expect(readFileSync(path.join(folder, 'a.md'), 'utf8')).toBe(sound);
  });
  test('drafts a house style that can be read by, and never writes over one', () => {
    const folder = manuscript({ 'book/a.md': sound, 'book/b.md': other });
    const file = path.join(folder, 'book/house-style.yaml');
    expect(tamis(folder, ['stylesheet', '--draft-house', 'book']).stdout).toMatch(
      /^book\/house-style\.yaml was written/,
    );
    expect(existsSync(file)).toBe(true);
    const draft = readFileSync(file, 'utf8');
    expect(tamis(folder, ['read', 'book', '--stop-at', 'never'])).toMatchObject({ status: 0, stderr: '' });
    const again = tamis(folder, ['stylesheet', '--draft-house', 'book']);
    expect(again.status).toBe(2);
    expect(again.stderr).toContain('house-style.yaml: it is there already');
    expect(readFileSync(file, 'utf8')).toBe(draft);
  });
});
