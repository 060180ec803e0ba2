/** A mended file is written whole or not at all, whatever happens on the way. */
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type Disk, writeMended } from '../../src/cli/write-mended.js';
import { manuscript } from './run.js';

const before = '# Toast\r\n\r\n- 1 slice bread\r\n';
const after = before.replace('1 slice', '2 slices');

function toast(name = 'toast.md') {
  const folder = manuscript({ [name]: before });
  const place = path.join(folder, name);
  return { folder, place, file: { name, place, before, after } };
}

/** A disk on which one call fails as a real one would. */
function failing(call: keyof Disk, code: string): Disk {
  return {
    ...fs,
    [call]: () => {
      throw Object.assign(new Error(code), { code });
    },
  };
}

describe('writing a mended file', () => {
  it('changes the text and keeps the permissions', () => {
    const { place, file } = toast();
    fs.chmodSync(place, 0o664);
    writeMended(file);
    expect(fs.readFileSync(place, 'utf8')).toBe(after);
    expect(fs.statSync(place).mode & 0o777).toBe(0o664);
  });

  it.each([
    ['openSync', 'EACCES'],
    ['writeFileSync', 'ENOSPC'],
    ['fsyncSync', 'EIO'],
    ['chmodSync', 'EPERM'],
    ['renameSync', 'EROFS'],
  ] as const)('loses nothing and leaves nothing behind when %s fails with %s', (call, code) => {
    const { folder, place, file } = toast();
    expect(() => writeMended(file, failing(call, code))).toThrow(/^toast\.md: .*as it was/);
    expect(fs.readFileSync(place, 'utf8')).toBe(before);
    expect(fs.readdirSync(folder)).toEqual(['toast.md']);
  });

  it('loses nothing when the disk is full after half of the text', () => {
    const { folder, place, file } = toast();
    const full: Disk = {
      ...fs,
      writeFileSync: ((handle: number, text: string) => {
        fs.writeSync(handle, text.slice(0, text.length / 2));
        throw Object.assign(new Error('ENOSPC'), { code: 'ENOSPC' });
      }) as typeof fs.writeFileSync,
    };
    expect(() => writeMended(file, full)).toThrow(/disk is full/);
    expect(fs.readFileSync(place, 'utf8')).toBe(before);
    expect(fs.readdirSync(folder)).toEqual(['toast.md']);
  });

  it('refuses a file that has changed since it was read', () => {
    const { place, file } = toast();
    fs.appendFileSync(place, 'More.\n');
    expect(() => writeMended(file)).toThrow(/has changed since it was read/);
    expect(fs.readFileSync(place, 'utf8')).toBe(`${before}More.\n`);
  });

  it('refuses a write-protected file, and one that is gone', () => {
    const { place, file } = toast();
    fs.chmodSync(place, 0o444);
    expect(() => writeMended(file)).toThrow(/write-protected/);
    expect(fs.readFileSync(place, 'utf8')).toBe(before);
    fs.rmSync(place, { force: true });
    expect(() => writeMended(file)).toThrow(/no longer there/);
    expect(fs.existsSync(place)).toBe(false);
  });

  it('leaves the old text or the new when the process is killed', { timeout: 60_000 }, async () => {
    const names = Array.from({ length: 40 }, (_, index) => `toast-${index}.md`);
    const folder = manuscript(Object.fromEntries(names.map((name) => [name, before])));
    const module = fileURLToPath(new URL('../../dist/src/cli/write-mended.js', import.meta.url));
    const script = `
      const { writeMended } = await import(${JSON.stringify(module)});
      const [before, after] = JSON.parse(process.argv[1]);
      console.log('ready');
      for (let turn = 0; ; turn++)
        for (const name of ${JSON.stringify(names)})
          writeMended({ name, place: ${JSON.stringify(folder)} + '/' + name, before: turn % 2 ? after : before, after: turn % 2 ? before : after });`;
    for (let run = 0; run < 4; run++) {
      for (const name of names) fs.writeFileSync(path.join(folder, name), before);
      const child = spawn(process.execPath, [
        '--input-type=module',
        '-e',
        script,
        JSON.stringify([before, after]),
      ]);
      await new Promise((resolve) => child.stdout.once('data', resolve));
      await new Promise((resolve) => setTimeout(resolve, 15 + 20 * run));
      child.kill('SIGKILL');
      await new Promise((resolve) => child.once('close', resolve));
      for (const name of names)
        expect([before, after]).toContain(fs.readFileSync(path.join(folder, name), 'utf8'));
    }
  });
});
