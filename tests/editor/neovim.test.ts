/** Neovim, headless, opens a recipe of the demo, shows its marks, lists a food by a code action, and saves. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readManuscript } from '../../src/reading/read.js';
import { manuscript } from '../cli/run.js';
import { demo, filesIn } from './editor.js';
import { pathWithTamis, settingsFor } from './settings.js';

const missing = spawnSync('nvim', ['--version']).error !== undefined;
if (missing) process.stdout.write('Neovim is not installed (nvim): its test is skipped.\n');

const RECIPE = 'mains/orchard-pork-loin.md';

describe.skipIf(missing)('Neovim', () => {
  it('shows the marks of a recipe, lists its unlisted food and saves it', () => {
    const folder = manuscript(
      Object.fromEntries(filesIn(demo('draft')).map(({ path, text }) => [path, text])),
    );
    const report = path.join(folder, 'report.json');
    const script = fileURLToPath(new URL('neovim.lua', import.meta.url));
    const before = readFileSync(path.join(folder, RECIPE), 'utf8');
    const settings = path.join(folder, 'init.lua');
    writeFileSync(settings, settingsFor('Neovim 0.7 to 0.10'));
    const run = spawnSync('nvim', ['--headless', '--clean', '-u', settings, '-c', `luafile ${script}`], {
      cwd: folder,
      env: {
        ...process.env,
        HOME: folder,
        PATH: pathWithTamis(),
        TAMIS_RECIPE: RECIPE,
        TAMIS_REPORT: report,
      },
      encoding: 'utf8',
      timeout: 150_000,
    });
    expect(existsSync(report), run.stderr).toBe(true);
    const told = JSON.parse(readFileSync(report, 'utf8'));

    const marks = (text: string) =>
      readManuscript([{ path: RECIPE, text }]).marks.map(({ rule, span }) => {
        const lines = text.slice(0, span.start).split('\n');
        return { code: rule, line: lines.length - 1, column: Buffer.byteLength(lines.at(-1)!) };
      });
    expect(
      told.diagnostics.map(({ code, line, column }: { code: string; line: number; column: number }) => ({
        code,
        line,
        column,
      })),
    ).toEqual(marks(before));
    expect(told.offered).toContainEqual(expect.stringMatching(/to the list$/));
    expect(told.cleared).toBe(true);
    const after = readFileSync(path.join(folder, RECIPE), 'utf8');
    expect(after.split('\n').length).toBe(before.split('\n').length + 1);
    const unlisted = (text: string) =>
      marks(text).filter(({ code }) => code === 'unlisted-ingredient').length;
    expect(unlisted(after)).toBe(unlisted(before) - 1);
  }, 180_000);
});
