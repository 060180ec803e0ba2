/** Writes a mended file over the author's: whole or not at all, and only while it is still the file that was read. */
import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { Failure } from './failure.js';

/** What the disk is asked to do; the tests put a full disk in its place. */
export type Disk = Pick<
  typeof fs,
  | 'accessSync'
  | 'chmodSync'
  | 'chownSync'
  | 'closeSync'
  | 'fsyncSync'
  | 'openSync'
  | 'readFileSync'
  | 'renameSync'
  | 'rmSync'
  | 'statSync'
  | 'writeFileSync'
>;

export interface MendedText {
  /** As reports name it. */
  readonly name: string;
  /** Where it really is, through any link. */
  readonly place: string;
  readonly before: string;
  readonly after: string;
}

/** Throws a Failure, with the file as it was, where it cannot be written. */
export function writeMended(file: MendedText, disk: Disk = fs): void {
  try {
    write(file, disk);
  } catch (error) {
    if (error instanceof Failure) throw error;
    const code = (error as NodeJS.ErrnoException).code ?? String(error);
    throw new Failure(
      `${file.name}: ${reasons[code] ?? `it could not be written (${code})`}; it is as it was`,
    );
  }
}

function write({ name, place, before, after }: MendedText, disk: Disk): void {
  const present = disk.statSync(place);
  if (!present.isFile()) throw new Failure(`${name}: this is no file that can be written; it is as it was`);
  // A new file may be put in the place of one that may not be written, but its author has said no.
  if ((present.mode & ANY_WRITE) === 0) throw readOnly(name);
  disk.accessSync(place, fs.constants.W_OK);
  const draft = path.join(path.dirname(place), `.${path.basename(place)}.${randomUUID()}`);
  try {
    const handle = disk.openSync(draft, 'wx', present.mode);
    try {
      disk.writeFileSync(handle, after);
      // On the disk before it takes the name, so that a power cut leaves the one or the other.
      disk.fsyncSync(handle);
    } finally {
      disk.closeSync(handle);
    }
    keepOwner(draft, present, disk);
    // The mode asked for at opening is cut by the user's mask.
    disk.chmodSync(draft, present.mode);
    if (!disk.readFileSync(place).equals(Buffer.from(before)))
      throw new Failure(
        `${name}: the file has changed since it was read and is left as it is; run this again`,
      );
    disk.renameSync(draft, place);
  } catch (error) {
    disk.rmSync(draft, { force: true });
    throw error;
  }
}

const ANY_WRITE = 0o222;

/** Only a superuser may give a file away; anybody else's draft is as good as his own file. */
function keepOwner(draft: string, { uid, gid }: fs.Stats, disk: Disk): void {
  const own = disk.statSync(draft);
  if (own.uid === uid && own.gid === gid) return;
  try {
    disk.chownSync(draft, uid, gid);
  } catch {
    // The text is what matters.
  }
}

function readOnly(name: string): Failure {
  return new Failure(`${name}: it is write-protected and is left as it is; unlock it, or leave it out`);
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'it is no longer there',
  EACCES: 'you have no permission to write it',
  EPERM: 'you have no permission to write it',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full: make room and run this again',
  EDQUOT: 'your share of the disk is full: make room and run this again',
  EFBIG: 'the file is larger than may be written here',
};
