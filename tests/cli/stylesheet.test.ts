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
  test('lists every reference under the title that it means, with its page, and says what the book does not have', () => {
    const jam =
      '# Damson Jam\n\nMakes 2 cups\n\n- 2 cups damsons\n- 1 cup sugar\n\n1. Boil until thick, 30 minutes.\n';
    const folder = manuscript({
      'front/welcome.md': '# Welcome\n\nBegin with the Damson Jam (page 12), or see page 40.\n',
      'jam.md': jam,
      'toast.md':
        '# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon Damsen Jam (page 000)\n\n1. Toast the bread until golden, 2 minutes, and spread with [the jam](jam.md). Serve with Lock Chutney (page 14).\n',
    });
    const { references } = stylesheetReport.parse(
      JSON.parse(tamis(folder, ['stylesheet', '--as', 'json']).stdout),
    );
    expect(
      references.map(({ about, found, forms }) => [about, found, forms.map(({ form }) => form)]),
    ).toEqual([
      ['Damson Jam', true, ['[the jam](jam.md)', 'Damsen Jam', 'Damson Jam, page 12']],
      ['Lock Chutney', false, ['Lock Chutney, page 14']],
      ['page 40', false, ['page 40']],
    ]);
    const sheet = tamis(folder, ['stylesheet']).stdout;
    expect(sheet).toContain('| Lock Chutney (not in the book) | Lock Chutney, page 14 (1) |');
    expect(sheet).toContain('| page 40 | page 40 (1) |');
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
