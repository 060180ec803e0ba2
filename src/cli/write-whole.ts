/** Writes a report to a file whole or not at all, and never over the manuscript. */
import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { Failure } from './failure.js';

/** `guarded` holds the real paths of the files that were read. */
export function writeWhole(file: string, text: string, guarded: ReadonlySet<string>): void {
  try {
    write(file, text, guarded);
  } catch (error) {
    if (error instanceof Failure) throw error;
    const code = (error as NodeJS.ErrnoException).code ?? String(error);
    throw new Failure(`${file}: ${reasons[code] ?? `the report could not be written there (${code})`}`);
  }
}

/** Writes a file that there is not yet; one that is there stays as it is. */
export function writeNew(file: string, text: string): void {
  try {
    fs.writeFileSync(file, text, { flag: 'wx' });
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? String(error);
    if (code === 'EEXIST')
      throw new Failure(
        `${file}: it is there already, and was left as it is; move it, or name another with --out`,
      );
    throw new Failure(`${file}: ${reasons[code] ?? `it could not be written there (${code})`}`);
  }
}

function write(file: string, text: string, guarded: ReadonlySet<string>): void {
  const present = fs.statSync(file, { throwIfNoEntry: false });
  const target = present === undefined ? path.resolve(file) : fs.realpathSync(file);
  if (guarded.has(target)) {
    throw new Failure(`${file}: this is a file of the manuscript; name another file for the report`);
  }
  if (present?.isDirectory()) throw new Failure(`${file}: this is a folder; name a file for the report`);
  if (present !== undefined && !present.isFile()) {
    // A pipe or a device cannot be replaced by a file: it is written to.
    fs.writeFileSync(target, text);
    return;
  }
  const draft = path.join(path.dirname(target), `.${path.basename(target)}.${randomUUID()}`);
  try {
    fs.writeFileSync(draft, text, { flag: 'wx', mode: present?.mode ?? 0o666 });
    fs.renameSync(draft, target);
  } catch (error) {
    fs.rmSync(draft, { force: true });
    throw error;
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such folder to write the report in; make it, or name another',
  ENOTDIR: 'there is no such folder to write the report in; make it, or name another',
  EACCES: 'you have no permission to write the report there; name another file',
  EPERM: 'you have no permission to write the report there; name another file',
  EROFS: 'the disk is read-only; name another file for the report',
  ENOSPC: 'the disk is full, and the report was not written; make room, or name another file',
};
