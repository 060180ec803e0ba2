import { chmodSync, mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { readingReport } from '../../src/reports/schema.js';
import { faulty, manuscript, sound, tamis } from './run.js';

const only = ['--only', 'unlisted-ingredient'];

/** The superuser may read everything, so there is nothing to refuse it: "nobody" (65534 on Linux) reads in its place. */
const commonUser = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
/** Not where the tests stand in a folder that is closed to others, nor where permissions mean nothing. */
const commonUserCanRun =
  process.platform !== 'win32' && tamis(tmpdir(), ['--version'], {}, commonUser).status === 0;

/** The one line that stderr must hold, and the report that must come all the same. */
function readBeside(name: string, content: Uint8Array | string, named: readonly string[] = ['.']) {
  const folder = manuscript({ 'leek.md': faulty, [name]: content });
  const run = tamis(folder, ['read', ...named, ...only, '--as', 'plain']);
  return { ...run, complaints: run.stderr.trimEnd().split('\n') };
}

describe('what cannot be read is told in one line, the rest is read, and the exit status is 2', () => {
  test('a path that does not exist', () => {
    const run = readBeside('other.md', sound, ['leek.md', 'leeks.md']);
    expect(run.complaints).toEqual([
      'tamis: leeks.md: there is no such file or folder; check the spelling and the folder you are in',
    ]);
    expect(run.stdout).toMatch(/^leek\.md:15:/);
    expect(run.status).toBe(2);
  });
  test('a file that is not text', () => {
    const run = readBeside('photo.md', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 13]));
    expect(run.complaints).toEqual([
      'tamis: photo.md: it is not text (byte 5 is NUL); name Markdown files, or leave it out',
    ]);
    expect(run.stdout).toMatch(/^leek\.md:15:/);
    expect(run.status).toBe(2);
  });
  test('a file in UTF-16', () => {
    const run = readBeside('wide.md', Buffer.from(`\uFEFF${sound}`, 'utf16le'));
    expect(run.complaints).toEqual(['tamis: wide.md: it is in UTF-16; save it as UTF-8']);
    expect(run.status).toBe(2);
  });
  test('a file that is not UTF-8, with the line', () => {
    const run = readBeside('latin.md', Buffer.from('# Cr\u00E8me\n', 'latin1'));
    expect(run.complaints).toEqual(['tamis: latin.md: line 1 is not valid UTF-8; save the file as UTF-8']);
    const later = readBeside('latin.md', Buffer.from('# Cream\n\ncrème\n\nCr\u00E8me', 'latin1'));
    expect(later.complaints).toEqual(['tamis: latin.md: line 3 is not valid UTF-8; save the file as UTF-8']);
    expect(later.stdout).toMatch(/^leek\.md:15:/);
    expect(later.status).toBe(2);
  });
  test('a folder without Markdown', () => {
    const folder = manuscript({ 'leek.md': sound });
    mkdirSync(path.join(folder, 'x.md'));
    const run = tamis(folder, ['read', 'x.md', 'leek.md', ...only]);
    expect(run.stderr).toBe(
      'tamis: x.md: the folder holds no Markdown file (*.md, *.markdown); name the folder of the manuscript, or a file in it\n',
    );
    expect(run.stdout).toBe('No marks in one recipe.\n');
    expect(run.status).toBe(2);
  });
  test('nothing at all: there is no report that could be taken for a good one', () => {
    const run = tamis(manuscript({ 'notes.txt': 'x' }), ['read', '--out', 'report.txt']);
    expect(run.status).toBe(2);
    expect(run.stdout).toBe('');
  });
  test('a path with a control character does not reach the terminal raw', () => {
    const run = tamis(manuscript({ 'leek.md': sound }), ['read', 'a\u001B[2J.md']);
    expect(run.stderr).toMatch(/^tamis: a␛\[2J\.md: /);
    expect(run.status).toBe(2);
  });
  test.skipIf(!commonUserCanRun)('a file and a folder without permission', () => {
    const folder = manuscript({ 'leek.md': faulty, 'locked.md': sound, 'closed/in.md': sound });
    chmodSync(folder, 0o755);
    chmodSync(path.join(folder, 'locked.md'), 0);
    chmodSync(path.join(folder, 'closed'), 0);
    const run = tamis(folder, ['read', ...only, '--as', 'plain'], {}, commonUser);
    chmodSync(path.join(folder, 'closed'), 0o700);
    expect(run.stderr.trimEnd().split('\n').sort()).toEqual([
      'tamis: closed: you have no permission to read it; change its permissions, or leave it out',
      'tamis: locked.md: you have no permission to read it; change its permissions, or leave it out',
    ]);
    expect(run.stdout).toMatch(/^leek\.md:15:/);
    expect(run.status).toBe(2);
  });
});

describe('odd but readable', () => {
  const counts = (name: string, content: string) => {
    const run = tamis(manuscript({ [name]: content }), ['read', ...only, '--as', 'json']);
    expect(run.stderr).toBe('');
    return readingReport.parse(JSON.parse(run.stdout));
  };

  test('an empty file is read, and has no marks', () => {
    const run = tamis(manuscript({ 'empty.md': '' }), ['read']);
    expect(run).toEqual({
      status: 0,
      stdout: 'No marks in one file, and no recipe was found.\n',
      stderr: '',
    });
  });
  test.each([
    ['\\r\\n', '\r\n'],
    ['\\r', '\r'],
  ])('lines that end in %s are counted the same', (_name, end) => {
    const [marked] = counts('leek.md', faulty.replaceAll('\n', end)).marks;
    expect(marked?.start.line).toBe(15);
  });
  test('a byte-order mark shifts no column', () => {
    const [plain] = counts('leek.md', faulty).marks;
    const [marked] = counts('leek.md', `\uFEFF${faulty}`).marks;
    expect(marked?.start).toEqual({ ...plain!.start, offset: plain!.start.offset + 1 });
    expect(counts('leek.md', `\uFEFF${faulty}`).recipes[0]?.title).toBe('Leek Soup');
  });
  test('a manuscript of 5 MB is read to its end', () => {
    const copies = Math.ceil((5 * 1024 * 1024) / faulty.length);
    const report = counts('book.md', faulty.repeat(copies));
    expect(report.recipes).toHaveLength(copies);
    expect(report.counts.fault).toBe(copies);
  }, 300_000);
  test('a line of 100,000 characters is read, and the galley stays within its width', () => {
    const long = faulty.replace('and serve.', `and serve${' and stir'.repeat(12_500)}.`);
    expect(counts('long.md', long).counts.fault).toBe(1);
    const galley = tamis(manuscript({ 'long.md': long }), ['read', ...only]).stdout;
    expect(Math.max(...galley.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });
});
