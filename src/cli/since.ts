/** Reads the earlier reading that `--since` names, and says what is the matter with a file that is none. */
import fs from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { readingReport } from '../reports/schema.js';
import { Failure } from './failure.js';
import { reasonOf } from './files.js';

/** The fingerprints of its marks. `out` is where the new report goes: never over the earlier one, which it does not hold. */
export function knownSince(file: string, out: string | undefined): ReadonlySet<string> {
  if (out !== undefined && isSame(file, out)) {
    throw new Failure(
      `${out}: this is the earlier reading, and the report of new marks would replace it; name another file with --out`,
    );
  }
  const report = parse(file, readText(file));
  if (report.held !== null) {
    throw new Failure(
      `${file}: this reading holds new marks only, since it was made with --since itself; make one without`,
    );
  }
  return new Set(report.marks.map((mark) => mark.fingerprint));
}

/** Only what is compared: a reading of another version may say more or less elsewhere. */
const earlier = z.object({
  tamis: z.string(),
  marks: z.array(z.object({ fingerprint: readingReport.shape.marks.element.shape.fingerprint })),
  held: readingReport.shape.held,
});

const remedy = 'make one with `tamis read --as json --out FILE --stop-at never`';

function readText(file: string): string {
  try {
    return fs.readFileSync(file, 'utf8');
  } catch (error) {
    const { what, remedy: other } = reasonOf(error);
    const missing = (error as NodeJS.ErrnoException).code === 'ENOENT';
    throw new Failure(`${file}: ${what}; ${missing ? remedy : other}`);
  }
}

function parse(file: string, text: string) {
  let value: unknown;
  try {
    // A byte-order mark is not JSON, and some shells put one before what they write.
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    throw new Failure(`${file}: it is not JSON, and so no earlier reading; ${remedy}`);
  }
  const parsed = earlier.safeParse(value);
  if (parsed.success) return parsed.data;
  const older = z.object({ tamis: z.string(), marks: z.array(z.unknown()) }).safeParse(value).success;
  throw new Failure(
    older
      ? `${file}: marks of this reading have no fingerprint, so they cannot be known again; ${remedy}`
      : `${file}: it is JSON, and no reading of tamis; ${remedy}`,
  );
}

function isSame(one: string, other: string): boolean {
  return path.resolve(one) === path.resolve(other) || (real(one) !== null && real(one) === real(other));
}

function real(file: string): string | null {
  try {
    return fs.realpathSync(file);
  } catch {
    return null;
  }
}
