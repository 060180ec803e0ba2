import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { version } from '../src/version.js';
import { faulty } from './cli/run.js';

const project = fileURLToPath(new URL('../', import.meta.url));
const folder = mkdtempSync(path.join(tmpdir(), 'package-'));
const minutes = 60_000;

function run(program: string, args: readonly string[], cwd: string) {
  const { status, stdout, stderr } = spawnSync(program, args, { cwd, encoding: 'utf8' });
  return { status, stdout, stderr };
}

/** The package as a reader gets it: packed, then installed into an empty folder. `pretest` has built it. */
beforeAll(() => {
  const packed = run('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', folder], project);
  const [{ filename }] = JSON.parse(packed.stdout) as [{ filename: string }];
  writeFileSync(path.join(folder, 'package.json'), '{ "private": true }\n');
  writeFileSync(path.join(folder, 'leek.md'), faulty);
  const installed = run(
    'npm',
    [
      'install',
      '--ignore-scripts',
      '--no-audit',
      '--no-fund',
      '--prefer-offline',
      path.join(folder, filename),
    ],
    folder,
  );
  if (installed.status !== 0) throw new Error(`npm install failed: ${installed.stderr}`);
}, 5 * minutes);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the package, installed', () => {
  test('tells its version', () => {
    expect(run('npx', ['tamis', '--version'], folder)).toMatchObject({ status: 0, stdout: `${version}\n` });
  });
  test('reads a manuscript with the larder it brings along', () => {
    const { status, stdout } = run(
      'npx',
      ['tamis', 'read', 'leek.md', '--as', 'plain', '--only', 'unlisted-ingredient'],
      folder,
    );
    expect(stdout).toMatch(/^leek\.md:15:\d+: fault: /);
    expect(status).toBe(1);
  });
  test('is imported as a library, with its types', () => {
    const script = `import { readManuscript } from 'tamis'; console.log(readManuscript([{ path: 'a.md', text: '' }]).marks.length);`;
    expect(run(process.execPath, ['--input-type=module', '-e', script], folder).stdout).toBe('0\n');
    expect(existsSync(path.join(folder, 'node_modules/tamis/dist/src/index.d.ts'))).toBe(true);
  });
  test('brings the JSON Schemas of its reports', () => {
    for (const name of ['reading', 'show']) {
      const script = `import schema from 'tamis/schema/${name}.json' with { type: 'json' }; console.log(schema.type);`;
      expect(run(process.execPath, ['--input-type=module', '-e', script], folder).stdout).toBe('object\n');
    }
  });
  test('brings no source, no test and no manuscript', () => {
    for (const part of ['src', 'tests', 'fixtures', 'rules']) {
      expect(existsSync(path.join(folder, 'node_modules/tamis', part))).toBe(false);
    }
  });
});
