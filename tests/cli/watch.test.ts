/** `tamis read --watch`, driven as a person at a desk would: files are saved, taken away and spoiled, and it is ended with Ctrl-C. */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { PageKeeper } from '../../src/cli/page-keeper.js';
import { command, faulty, manuscript, sound } from './run.js';

const only = ['--only', 'unlisted-ingredient'];
const open: ChildProcess[] = [];
afterEach(() => {
  for (const child of open.splice(0)) child.kill('SIGKILL');
});

/**
 * Starts it. `said` waits until these words have come, one after the other, on either stream, however long the machine
 * takes and whatever else was said before: a look may come upon a file that is half written.
 */
function watching(folder: string, args: readonly string[]) {
  const child = spawn(process.execPath, [command, 'read', '--watch', ...only, ...args], { cwd: folder });
  open.push(child);
  let heard = '';
  let wake = (): void => {};
  const listen = (chunk: Buffer): void => {
    heard += chunk.toString('utf8');
    wake();
  };
  child.stdout.on('data', listen);
  child.stderr.on('data', listen);
  const ended = new Promise<number | null>((resolve) => child.on('close', (code) => resolve(code)));
  return {
    child,
    ended,
    said: async (...words: readonly string[]): Promise<void> => {
      for (const each of words) {
        while (!heard.includes(each)) await new Promise<void>((resolve) => (wake = resolve));
        heard = heard.slice(heard.indexOf(each) + each.length);
      }
    },
  };
}

describe('tamis read --watch', { timeout: 180_000 }, () => {
  test('reads again when a file is saved, comes, goes or is spoiled, and ends with Ctrl-C', async () => {
    const folder = manuscript({ 'leek.md': faulty });
    const { said, child, ended } = watching(folder, []);
    await said('One fault', 'watching one file; Ctrl-C ends');

    writeFileSync(path.join(folder, 'leek.md'), sound);
    await said('No marks in one recipe.', 'watching one file');

    // As many editors save: a new file in the old one's place.
    writeFileSync(path.join(folder, '.leek.md.draft'), faulty);
    renameSync(path.join(folder, '.leek.md.draft'), path.join(folder, 'leek.md'));
    await said('One fault', 'watching one file');

    mkdirSync(path.join(folder, 'soups'));
    writeFileSync(path.join(folder, 'soups/more.md'), faulty);
    await said('soups/more.md', 'watching two files');

    writeFileSync(path.join(folder, 'leek.md'), Buffer.from([0xff, 0xfe, 0x41]));
    await said('leek.md: it is in UTF-16', 'watching one file');

    writeFileSync(path.join(folder, 'leek.md'), sound);
    await said('One fault, no queries and no notes in two recipes.', 'watching two files');

    rmSync(path.join(folder, 'leek.md'));
    rmSync(path.join(folder, 'soups'), { recursive: true });
    await said('holds no Markdown file', 'watching no files');

    writeFileSync(path.join(folder, 'leek.md'), sound);
    await said('watching one file');
    child.kill('SIGINT');
    expect(await ended).toBe(0);
  });
  test('comes back to a named folder that was taken away', async () => {
    const folder = manuscript({ 'book/leek.md': faulty });
    const { said, child, ended } = watching(folder, ['book']);
    await said('watching one file');
    rmSync(path.join(folder, 'book'), { recursive: true });
    await said('there is no such file or folder', 'watching no files');
    mkdirSync(path.join(folder, 'book'));
    writeFileSync(path.join(folder, 'book/leek.md'), sound);
    await said('No marks in one recipe.', 'watching one file');
    writeFileSync(path.join(folder, 'book/leek.md'), faulty);
    await said('One fault', 'watching one file');
    child.kill('SIGTERM');
    expect(await ended).toBe(0);
  });
  test('watches a named file whatever it is called, and writes the report to its file each time', async () => {
    const folder = manuscript({ 'notes.txt': faulty });
    const { said, child, ended } = watching(folder, ['notes.txt', '--as', 'html', '--out', 'sheet.html']);
    await said('watching one file');
    expect(readFileSync(path.join(folder, 'sheet.html'), 'utf8')).toContain('One fault');
    writeFileSync(path.join(folder, 'draft'), sound);
    renameSync(path.join(folder, 'draft'), path.join(folder, 'notes.txt'));
    await said('watching one file');
    expect(readFileSync(path.join(folder, 'sheet.html'), 'utf8')).toContain('No marks');
    child.kill('SIGINT');
    expect(await ended).toBe(0);
  });
  test('ends at once where there is nothing to read, or the report cannot be written', async () => {
    const folder = manuscript({ 'leek.md': faulty });
    expect(await watching(folder, ['lek.md']).ended).toBe(2);
    const nowhere = watching(folder, ['--out', 'nowhere/report.txt']);
    expect(await nowhere.ended).toBe(2);
    expect(existsSync(path.join(folder, 'nowhere'))).toBe(false);
  });
});

describe('a keeper of pages', () => {
  const file = (name: string, text: string) => ({ path: name, text });

  test('reads only files whose text has changed', () => {
    const keeper = new PageKeeper();
    const first = keeper.read([file('a.md', faulty), file('b.md', sound)]);
    const second = keeper.read([file('a.md', sound), file('b.md', sound)]);
    expect(first.changed).toBe(true);
    expect(second.changed).toBe(true);
    expect(second.pages[0]).not.toBe(first.pages[0]);
    expect(second.pages[1]).toBe(first.pages[1]);
  });
  test('sees when nothing has changed, and when a file has gone or changed its place', () => {
    const keeper = new PageKeeper();
    keeper.read([file('a.md', faulty), file('b.md', sound)]);
    expect(keeper.read([file('a.md', faulty), file('b.md', sound)]).changed).toBe(false);
    expect(keeper.read([file('b.md', sound), file('a.md', faulty)]).changed).toBe(true);
    expect(keeper.read([file('a.md', faulty)]).changed).toBe(true);
    expect(keeper.read([]).changed).toBe(true);
  });
});
