/** The README's pipeline and pre-commit hook, run as they are printed, in a book's repository with a backlog. */
import { execFileSync, spawnSync } from 'node:child_process';
import { appendFileSync, chmodSync, cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { command, faulty, manuscript, sound } from './cli/run.js';

const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8');
const blocks = [...readme.matchAll(/^```(\w+)\n(.*?)^```$/gms)].map(([, language, text]) => ({
  language,
  text: text!,
}));
const blockWith = (words: string): string => blocks.find(({ text }) => text.includes(words))!.text;

const baseline = blockWith('--as json --out marks.json')
  .split('\n')
  .find((line) => line.startsWith('npx'))!;
const pipeline = parse(blockWith('jobs:')) as { jobs: { read: { steps: { run?: string }[] } } };
const steps = pipeline.jobs.read.steps.flatMap(({ run }) => (run?.startsWith('npx tamis') ? [run] : []));

/** A repository whose book has the demo's marks as its backlog; `npx` runs the tamis that has just been built. */
function repository() {
  const folder = manuscript({
    'bin/npx': `#!/bin/sh\nshift\nexec "${process.execPath}" "${command}" "$@"\n`,
  });
  chmodSync(path.join(folder, 'bin/npx'), 0o755);
  const root = path.join(folder, 'book');
  cpSync(fileURLToPath(new URL('../fixtures/lock-keepers-table/draft/', import.meta.url)), root, {
    recursive: true,
  });
  const env = { ...process.env, PATH: `${path.join(folder, 'bin')}${path.delimiter}${process.env.PATH}` };
  const run = (line: string) => {
    const { status, stdout, stderr } = spawnSync('sh', ['-c', line], { cwd: root, env, encoding: 'utf8' });
    return { status, words: stdout + stderr };
  };
  const git = (...args: string[]) =>
    execFileSync('git', ['-c', 'user.name=Editor', '-c', 'user.email=editor@example.org', ...args], {
      cwd: root,
      env,
      stdio: 'pipe',
      encoding: 'utf8',
    });
  git('init', '--quiet');
  expect(run(baseline).status).toBe(0);
  return { root, run, git };
}

// Each test starts tamis half a dozen times.
const minutes = 60_000;

describe('the README’s pipeline', { timeout: 4 * minutes }, () => {
  test('passes a book that has its backlog only, and stops at a new fault', () => {
    const { root, run } = repository();
    expect(steps).toHaveLength(3);
    expect(steps.map((step) => run(step).status)).toEqual([0, 0, 0]);
    writeFileSync(path.join(root, 'soups/leek.md'), faulty);
    expect(steps.map((step) => run(step).status)).toEqual([0, 0, 1]);
    const { runs } = JSON.parse(readFileSync(path.join(root, 'marks.sarif'), 'utf8'));
    const files = runs[0].results.map(
      (result: { locations: { physicalLocation: { artifactLocation: { uri: string } } }[] }) =>
        result.locations[0]!.physicalLocation.artifactLocation.uri,
    );
    expect(new Set(files)).toEqual(new Set(['soups/leek.md']));
    expect(readFileSync(path.join(root, 'query-sheet.html'), 'utf8')).toContain('Leek Soup');
  });
});

describe('the README’s pre-commit hook', { timeout: 4 * minutes }, () => {
  test('reads what is staged, and lets no new fault through', () => {
    const { root, git } = repository();
    mkdirSync(path.join(root, '.githooks'));
    const hook = path.join(root, '.githooks/pre-commit');
    writeFileSync(hook, blockWith('checkout-index'));
    chmodSync(hook, 0o755);
    git('config', 'core.hooksPath', '.githooks');
    git('add', '--all');
    git('commit', '--quiet', '--message', 'The book as it is');

    writeFileSync(path.join(root, 'soups/leek.md'), faulty);
    git('add', 'soups/leek.md');
    expect(() => git('commit', '--message', 'A soup')).toThrow(/cream/);

    // What is staged is sound; what lies in the folder is not, and is not asked.
    writeFileSync(path.join(root, 'soups/leek.md'), sound);
    git('add', 'soups/leek.md');
    appendFileSync(path.join(root, 'soups/leek.md'), '4. Add 1 cup milk.\n');
    git('commit', '--quiet', '--message', 'A soup');
    expect(git('log', '--format=%s')).toBe('A soup\nThe book as it is\n');
  });
});
