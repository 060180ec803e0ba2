/** Emacs with eglot opens a recipe of the demo, shows its marks, lists a food by a code action, and saves. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readManuscript } from '../../src/reading/read.js';
import { manuscript } from '../cli/run.js';
import { demo, filesIn } from './editor.js';
import { pathWithTamis, settingsFor } from './settings.js';

const needed = "(progn (package-initialize) (require 'eglot) (require 'markdown-mode))";
const missing = spawnSync('emacs', ['--batch', '--eval', needed]).status !== 0;
if (missing)
  process.stdout.write('Emacs with eglot and markdown-mode is not installed: its test is skipped.\n');

const RECIPE = 'mains/orchard-pork-loin.md';

describe.skipIf(missing)('Emacs', () => {
  it('shows the marks of a recipe, lists its unlisted food and saves it', () => {
    const folder = manuscript(
      Object.fromEntries(filesIn(demo('draft')).map(({ path, text }) => [path, text])),
    );
    const report = path.join(folder, 'report.json');
    const script = fileURLToPath(new URL('emacs.el', import.meta.url));
    const before = readFileSync(path.join(folder, RECIPE), 'utf8');
    const settings = path.join(folder, 'init.el');
    writeFileSync(settings, settingsFor('**Emacs**'));
    const run = spawnSync('emacs', ['--batch', '-l', script], {
      cwd: folder,
      env: {
        ...process.env,
        TAMIS_FOLDER: folder,
        TAMIS_RECIPE: RECIPE,
        PATH: pathWithTamis(),
        TAMIS_SETTINGS: settings,
        TAMIS_REPORT: report,
      },
      encoding: 'utf8',
      timeout: 200_000,
    });
    expect(existsSync(report), run.stderr).toBe(true);
    const told = JSON.parse(readFileSync(report, 'utf8'));

    const { marks, pages } = readManuscript([{ path: RECIPE, text: before }]);
    const lines = (each: readonly { line: number }[]) => each.map(({ line }) => line).sort((a, b) => a - b);
    expect(lines(told.marks)).toEqual(
      lines(marks.map(({ span }) => ({ line: pages[0]!.lines.line(span.start) - 1 }))),
    );
    expect(told.offered).toContainEqual(expect.stringMatching(/to the list$/));
    expect(told.cleared).toBe(true);
    const after = readManuscript([{ path: RECIPE, text: readFileSync(path.join(folder, RECIPE), 'utf8') }]);
    const unlisted = (each: readonly { rule: string }[]) =>
      each.filter(({ rule }) => rule === 'unlisted-ingredient').length;
    expect(unlisted(after.marks)).toBe(unlisted(marks) - 1);
  }, 240_000);
});
