/** `tamis mend` as a person uses it: it shows, it writes what is sure, it asks at a terminal. */

import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { applyPatch, parsePatch } from 'diff';
import { describe, expect, it } from 'vitest';
import { chooseOffered } from '../../src/cli/mend.js';
import { undecided } from '../../src/manuscript/house-style.js';
import { command, manuscript, tamis } from './run.js';

/** The reference lacks the accents of the title, which is a sure mend; the range runs downwards, which is offered. */
const peas = `# Purée of Peas

Serves 4

- 2 cups peas
- 1 tablespoon butter

1. Simmer the peas until soft, 8 to 5 minutes, and crush them with the butter.
`;
const toast = `# Pea Toast

Serves 1

- 1 slice bread
- 1 recipe Puree of Peas

1. Toast the bread until golden, 2 minutes, and spread with the puree.
`;
const mended = toast.replace('Puree of Peas', 'Purée of Peas');
const book = () => manuscript({ 'peas.md': peas, 'toast.md': toast });
const read = (folder: string, name: string): string => fs.readFileSync(path.join(folder, name), 'utf8');

describe('tamis mend', () => {
  it('shows the sure mends as a diff that can be applied, lists the offered ones, and changes nothing', () => {
    const folder = book();
    const run = tamis(folder, ['mend', '.']);
    expect(run.status).toBe(1);
    expect(run.stderr).toBe('');
    const [patch] = parsePatch(run.stdout);
    expect(patch?.newFileName).toBe('b/toast.md');
    expect(applyPatch(toast, patch!)).toBe(mended);
    expect(run.stdout).toContain(
      '# peas.md:8: range-reversed, "8 to 5 minutes": turn it round to "5 to 8 minutes"',
    );
    expect([read(folder, 'peas.md'), read(folder, 'toast.md')]).toEqual([peas, toast]);
  });

  it('writes the sure mends, and a second run finds nothing to do', () => {
    const folder = book();
    const first = tamis(folder, ['mend', '--write', '.']);
    expect(first).toMatchObject({ status: 0, stderr: '' });
    expect(first.stdout).toContain('# toast.md: 1 mend written');
    expect([read(folder, 'peas.md'), read(folder, 'toast.md')]).toEqual([peas, mended]);
    const second = tamis(folder, ['mend', '--write', '.']);
    expect(second.status).toBe(0);
    expect(second.stdout).not.toContain('@@');
    expect(read(folder, 'toast.md')).toBe(mended);
  });

  it('keeps line ends, the byte-order mark and the permissions', () => {
    const odd = `\uFEFF${toast.replaceAll('\n', '\r\n')}`;
    const folder = manuscript({ 'peas.md': peas, 'toast.md': odd });
    fs.chmodSync(path.join(folder, 'toast.md'), 0o640);
    expect(tamis(folder, ['mend', '--write']).status).toBe(0);
    expect(read(folder, 'toast.md')).toBe(odd.replace('Puree of Peas', 'Purée of Peas'));
    expect(fs.statSync(path.join(folder, 'toast.md')).mode & 0o777).toBe(0o640);
  });

  it('writes through a link to its target, and the link stays a link', () => {
    const folder = manuscript({ 'peas.md': peas, 'kept/toast.txt': toast });
    fs.symlinkSync(path.join('kept', 'toast.txt'), path.join(folder, 'toast.md'));
    expect(tamis(folder, ['mend', '--write']).status).toBe(0);
    expect(fs.lstatSync(path.join(folder, 'toast.md')).isSymbolicLink()).toBe(true);
    expect(read(folder, 'kept/toast.txt')).toBe(mended);
  });

  it('leaves a write-protected file, says so, and writes the others', () => {
    const folder = manuscript({
      'peas.md': peas,
      'a.md': toast,
      'b.md': toast.replace('Pea Toast', 'Toast'),
    });
    fs.chmodSync(path.join(folder, 'a.md'), 0o444);
    const run = tamis(folder, ['mend', '--write']);
    expect(run.status).toBe(2);
    expect(run.stderr).toMatch(/^tamis: a\.md: it is write-protected.*\n$/);
    expect(read(folder, 'a.md')).toBe(toast);
    expect(read(folder, 'b.md')).toContain('Purée of Peas');
  });

  it('makes only the mends of the rules that are named', () => {
    const folder = book();
    expect(tamis(folder, ['mend', '--write', '--only', 'range-reversed']).status).toBe(0);
    expect(read(folder, 'toast.md')).toBe(toast);
  });

  it('asks nobody where there is no terminal', () => {
    const run = tamis(book(), ['mend', '--offered', 'range-reversed']);
    expect(run.status).toBe(2);
    expect(run.stderr).toMatch(/^tamis: --offered asks before each mend, and there is nobody to ask/);
  });

  it('takes --offered by itself, and knows its rule', () => {
    expect(tamis(book(), ['mend', '--offered', 'range-reversed', '--write']).status).toBe(2);
    expect(tamis(book(), ['mend', '--offered', 'range-reversd']).stderr).toContain('"range-reversed"');
  });
});

describe('the offered mends of a rule', () => {
  const files = [{ path: 'peas.md', text: peas }];

  it('are shown before each question, and made when chosen', async () => {
    const told: string[] = [];
    const { files: changed } = await chooseOffered(
      files,
      'range-reversed',
      undecided,
      async () => '1',
      (text) => void told.push(text),
    );
    expect(told.join('')).toContain('+1. Simmer the peas until soft, 5 to 8 minutes');
    expect(changed.map(({ after }) => after)).toEqual([peas.replace('8 to 5', '5 to 8')]);
  });

  it.each(['', 'q', 'n', '2', 'what?'])('are left when the answer is "%s"', async (answer) => {
    const { files: changed } = await chooseOffered(
      files,
      'range-reversed',
      undecided,
      async () => answer,
      () => undefined,
    );
    expect(changed).toEqual([]);
  });

  it.skipIf(spawnSync('script', ['--version']).status !== 0)('are asked about at a terminal', () => {
    const folder = book();
    const line = `'${process.execPath}' '${command}' mend --offered range-reversed peas.md`;
    const run = spawnSync('script', ['-qec', line, '/dev/null'], {
      cwd: folder,
      input: '1\n',
      encoding: 'utf8',
    });
    expect(run.stdout).toContain('1 to make it');
    expect(read(folder, 'peas.md')).toBe(peas.replace('8 to 5', '5 to 8'));
  });
});
