import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { gather } from '../../src/cli/files.js';
import { readingReport } from '../../src/reports/schema.js';
import { version } from '../../src/version.js';
import { faulty, manuscript, sound, tamis } from './run.js';

const only = ['--only', 'unlisted-ingredient'];
/** As the report names them, of which the first test makes sure; without a process for each. */
const filesOf = (folder: string, args: readonly string[]): string[] =>
  gather(args.length === 0 ? ['.'] : args, folder).files.map((file) => file.path);

describe('tamis read', () => {
  test('reads the current folder, marks what is wrong and says so in its exit status', () => {
    const folder = manuscript({ 'soups/leek.md': faulty });
    const run = tamis(folder, ['read', ...only]);
    expect(run.stderr).toBe('');
    expect(run.stdout).toMatch(/^Leek Soup {2,}soups\/leek\.md\n {2}Q1 {2}line 15 .*cream.* fault\n/);
    expect(run.stdout).toContain('One fault, no queries and no notes in one recipe.');
    expect(run.status).toBe(1);
  });
  test('is content with a sound recipe', () => {
    const run = tamis(manuscript({ 'leek.md': sound }), ['read', ...only]);
    expect(run).toEqual({ status: 0, stdout: 'No marks in one recipe.\n', stderr: '' });
  });
  test('stops at no mark when told never to', () => {
    const run = tamis(manuscript({ 'leek.md': faulty }), ['read', ...only, '--stop-at', 'never']);
    expect(run.status).toBe(0);
    expect(run.stdout).toContain('One fault');
  });
  test('writes plain lines, and json that keeps its contract', () => {
    const folder = manuscript({ 'leek.md': faulty });
    expect(tamis(folder, ['read', ...only, '--as', 'plain']).stdout).toMatch(
      /^leek\.md:15:\d+: fault: .+ \[unlisted-ingredient\]\n$/,
    );
    const report = readingReport.parse(JSON.parse(tamis(folder, ['read', ...only, '--as', 'json']).stdout));
    expect(report.tamis).toBe(version);
    expect(report.recipes).toEqual([{ title: 'Leek Soup', file: 'leek.md', line: 1 }]);
    expect(report.counts).toEqual({ fault: 1, query: 0, note: 0 });
  });
  test('gives no colors to a pipe, unless they are asked for', () => {
    const folder = manuscript({ 'leek.md': faulty });
    expect(tamis(folder, ['read', ...only]).stdout).not.toContain('\u001B');
    expect(tamis(folder, ['read', ...only], { FORCE_COLOR: '1' }).stdout).toContain('\u001B[');
    expect(tamis(folder, ['read', ...only], { NO_COLOR: '1' }).stdout).not.toContain('\u001B');
    expect(tamis(folder, ['read', ...only, '--out', 'report.txt'], { FORCE_COLOR: '1' }).stdout).toBe('');
    expect(readFileSync(path.join(folder, 'report.txt'), 'utf8')).not.toContain('\u001B');
  });
  test('names the nearest rule for one that is not there', () => {
    const run = tamis(manuscript({ 'leek.md': sound }), ['read', '--only', 'unlisted-ingredents']);
    expect(run.status).toBe(2);
    expect(run.stdout).toBe('');
    expect(run.stderr).toContain('there is no rule "unlisted-ingredents"');
    expect(run.stderr).toContain('"unlisted-ingredient"');
  });
  test.each([
    [['read', '--as', 'parchment']],
    [['read', '--stop-at', 'dawn']],
    [['read', '--only', ',']],
    [['red']],
    [['read', '--unheard-of']],
    [[]],
  ])('answers %j with status 2 and words on stderr', (args) => {
    const run = tamis(manuscript({ 'leek.md': sound }), args);
    expect(run.status).toBe(2);
    expect(run.stderr).not.toBe('');
    expect(run.stderr).not.toContain('    at ');
  });
});

describe('the paths of reports', () => {
  const folder = manuscript({
    'book/soups/leek.md': sound,
    'book/10-cakes.markdown': sound,
    'book/2-pies.MD': sound,
    'book/.draft.md': sound,
    'book/.drafts/old.md': sound,
    'book/node_modules/x/readme.md': sound,
    'book/notes.txt': sound,
    'elsewhere/leek.md': sound,
  });

  test('are relative to the folder named; hidden files and installed packages are passed over', () => {
    const run = tamis(folder, ['read', 'book', ...only, '--as', 'json', '--stop-at', 'never']);
    expect(readingReport.parse(JSON.parse(run.stdout)).recipes.map((recipe) => recipe.file)).toEqual(
      filesOf(folder, ['book']),
    );
    expect(filesOf(folder, ['book'])).toEqual(['2-pies.MD', '10-cakes.markdown', 'soups/leek.md']);
    expect(filesOf(path.join(folder, 'book'), [])).toEqual([
      '2-pies.MD',
      '10-cakes.markdown',
      'soups/leek.md',
    ]);
  });
  test('are relative to the current folder for a file in it, and to its own folder for one outside', () => {
    expect(filesOf(folder, ['book/soups/leek.md'])).toEqual(['book/soups/leek.md']);
    expect(filesOf(path.join(folder, 'elsewhere'), ['../book/soups/leek.md'])).toEqual(['leek.md']);
  });
  test('are relative to the current folder when several are named, and no file is read twice', () => {
    expect(filesOf(folder, ['book/soups', 'elsewhere', 'book/soups/leek.md'])).toEqual([
      'book/soups/leek.md',
      'elsewhere/leek.md',
    ]);
  });
  test('a file that is named is read whatever it is called', () => {
    expect(filesOf(folder, ['book/notes.txt'])).toEqual(['book/notes.txt']);
  });
});

describe('a report that goes to a file', () => {
  test('is written whole, over an older one, and leaves nothing beside it', () => {
    const folder = manuscript({ 'leek.md': faulty, 'marks.json': 'older' });
    const run = tamis(folder, ['read', ...only, '--as', 'json', '--out', 'marks.json']);
    expect(run).toEqual({ status: 1, stdout: '', stderr: '' });
    const report = readingReport.parse(JSON.parse(readFileSync(path.join(folder, 'marks.json'), 'utf8')));
    expect(report.counts.fault).toBe(1);
    expect(readdirSync(folder).sort()).toEqual(['leek.md', 'marks.json']);
  });
  test('is never written over the manuscript', () => {
    const folder = manuscript({ 'leek.md': faulty });
    const run = tamis(folder, ['read', ...only, '--out', 'leek.md']);
    expect(run.status).toBe(2);
    expect(run.stderr).toMatch(/^tamis: leek\.md: .*manuscript.*\n$/);
    expect(readFileSync(path.join(folder, 'leek.md'), 'utf8')).toBe(faulty);
  });
  test.each(['nowhere/marks.txt', '.'])('says why it cannot be written to %s', (out) => {
    const folder = manuscript({ 'leek.md': sound });
    const run = tamis(folder, ['read', '--out', out]);
    expect(run.status).toBe(2);
    expect(run.stderr.startsWith(`tamis: ${out}: `)).toBe(true);
    expect(readdirSync(folder)).toEqual(['leek.md']);
  });
  test('leaves a device a device', () => {
    const run = tamis(manuscript({ 'leek.md': sound }), ['read', ...only, '--out', '/dev/null']);
    expect(run).toEqual({ status: 0, stdout: '', stderr: '' });
    writeFileSync('/dev/null', 'still swallowed');
    expect(readFileSync('/dev/null', 'utf8')).toBe('');
  });
});

describe('links', () => {
  test('that lead back to a folder above change nothing', () => {
    const folder = manuscript({ 'zest.md': sound, 'a/leek.md': sound });
    symlinkSync('..', path.join(folder, 'a/above'));
    symlinkSync('.', path.join(folder, 'again'));
    expect(filesOf(folder, ['.'])).toEqual(['a/leek.md', 'zest.md']);
  });
  test('to files and folders outside are followed', () => {
    const folder = manuscript({ 'book/one.md': sound, 'store/two.md': sound, 'store/more/three.md': sound });
    symlinkSync('../store/two.md', path.join(folder, 'book/linked.md'));
    symlinkSync('../store/more', path.join(folder, 'book/more'));
    expect(filesOf(folder, ['book'])).toEqual(['linked.md', 'more/three.md', 'one.md']);
  });
  test('that lead nowhere or to themselves are told, and the rest is read', () => {
    const folder = manuscript({ 'leek.md': sound });
    symlinkSync('gone.md', path.join(folder, 'dangling.md'));
    symlinkSync('self.md', path.join(folder, 'self.md'));
    const run = tamis(folder, ['read', ...only]);
    expect(run.stdout).toBe('No marks in one recipe.\n');
    expect(run.stderr.trimEnd().split('\n').sort()).toEqual([
      expect.stringMatching(/^tamis: dangling\.md: there is no such file/),
      expect.stringMatching(/^tamis: self\.md: the link leads back to itself/),
    ]);
    expect(run.status).toBe(2);
  });
  test('a folder called x.md is a folder', () => {
    const folder = manuscript({ 'leek.md': sound });
    mkdirSync(path.join(folder, 'x.md'));
    writeFileSync(path.join(folder, 'x.md/y.md'), sound);
    expect(filesOf(folder, ['.'])).toEqual(['leek.md', 'x.md/y.md']);
    expect(existsSync(path.join(folder, 'x.md'))).toBe(true);
  });
});
