import { spawn, spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { rules } from '../../rules/index.js';
import { showReport } from '../../src/reports/schema.js';
import { version } from '../../src/version.js';
import { command, faulty, manuscript, sound, tamis } from './run.js';

describe('tamis', () => {
  const folder = manuscript({ 'leek.md': sound });

  test('tells its version', () => {
    expect(tamis(folder, ['--version'])).toEqual({ status: 0, stdout: `${version}\n`, stderr: '' });
  });
  test.each([['read'], ['mend'], ['show'], ['explain'], ['serve']])('%s has help with examples', (name) => {
    const help = tamis(folder, [name, '--help']);
    expect(help.status).toBe(0);
    expect(help.stdout).toContain(`tamis ${name}`);
    expect(help.stdout).toContain('Examples:');
  });
  test('offers no command that is not there', () => {
    const offered = tamis(folder, ['--help']).stdout.matchAll(/^ {2}(\w+) \[/gm);
    expect([...offered].map((match) => match[1]).sort()).toEqual([
      'explain',
      'help',
      'mend',
      'read',
      'serve',
      'show',
      'stylesheet',
    ]);
  });
  test('ends quietly when the reader of its pipe has gone', async () => {
    const big = manuscript({ 'book.md': faulty.repeat(400) });
    const child = spawn(process.execPath, [command, 'show', '--as', 'json', 'book.md'], { cwd: big });
    let stderr = '';
    child.stderr.on('data', (data: Buffer) => {
      stderr += data.toString();
    });
    child.stdout.once('data', () => child.stdout.destroy());
    const status = await new Promise((resolve) => child.on('close', resolve));
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  });
  test.skipIf(!existsSync('/dev/full'))('says so when the disk behind its output is full', () => {
    const full = openSync('/dev/full', 'w');
    const run = spawnSync(process.execPath, [command, 'explain'], {
      stdio: ['ignore', full, 'pipe'],
      encoding: 'utf8',
    });
    closeSync(full);
    expect(run.stderr).toMatch(/^tamis: the report could not be written out \(ENOSPC\); .*\n$/);
    expect(run.status).toBe(2);
  });
});

describe('tamis show', () => {
  test('prints each recipe as it was understood', () => {
    const run = tamis(manuscript({ 'leek.md': sound }), ['show', 'leek.md']);
    expect(run.status).toBe(0);
    expect(run.stdout).toMatch(/^Leek Soup {2,}leek\.md:1\n/);
    expect(run.stdout).toContain(
      'line 8    1 tablespoon butter\n              1 tablespoon; butter; in step 1\n',
    );
  });
  test('keeps the json contract', () => {
    const run = tamis(manuscript({ 'leek.md': sound }), ['show', '--as', 'json']);
    const [recipe] = showReport.parse(JSON.parse(run.stdout)).recipes;
    expect(recipe?.listings.map((listing) => listing.food)).toEqual(['leek', 'butter', 'water', 'cream']);
    expect(recipe?.listings[3]?.measures[0]).toMatchObject({ low: '1/2', high: '1/2', unit: 'cup' });
    expect(recipe?.mentions.find((mention) => mention.text === 'cream')?.listings).toEqual([3]);
  });
  test('shows what is wrong with a path, and ends with 2', () => {
    const run = tamis(manuscript({ 'leek.md': sound }), ['show', 'leek.md', 'gone.md']);
    expect(run.status).toBe(2);
    expect(run.stderr).toMatch(/^tamis: gone\.md: /);
    expect(run.stdout).toContain('Leek Soup');
  });
});

describe('tamis explain', () => {
  const folder = manuscript({});

  test('lists every rule', () => {
    const { stdout, status } = tamis(folder, ['explain']);
    expect(status).toBe(0);
    const listed = [...stdout.matchAll(/^ {2}([a-z-]+) +(?:fault|query|note) {2}/gm)].map(
      (match) => match[1],
    );
    expect(listed.sort()).toEqual(rules.map((rule) => rule.name).sort());
  });
  test('tells about one', () => {
    const { stdout, status } = tamis(folder, ['explain', 'unlisted-ingredient']);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^unlisted-ingredient .*listing, fault\n/);
    expect(stdout).toContain('Marked: ');
  });
  test('names the nearest for one that is not there', () => {
    const { stderr, status } = tamis(folder, ['explain', 'unlisted']);
    expect(status).toBe(2);
    expect(stderr).toContain('there is no rule "unlisted". The nearest is "unlisted-ingredient".');
  });
});
