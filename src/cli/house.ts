/** Finds and reads the house style of what is read: the one named, or the nearest house-style.yaml upward. */
import fs from 'node:fs';
import path from 'node:path';
import { type HouseStyle, undecided } from '../manuscript/house-style.js';
import type { NamedPath } from '../manuscript/house-style-file.js';
import { decode } from './decode.js';
import { Failure } from './failure.js';
import type { Gathered } from './files.js';

export const houseFile = 'house-style.yaml';

/**
 * The style by which to read; that of a book without decisions where there is no file. Throws with every line that is
 * wrong, and tells of paths that are not there. What it says of folders is meant from its own folder on; one that is named from elsewhere speaks of the root.
 */
export async function houseStyle(
  gathered: Pick<Gathered, 'folders' | 'root'>,
  named: string | undefined,
  rules: readonly string[],
  tell: (line: string) => void,
): Promise<HouseStyle> {
  const file = named === undefined ? nearestOf(gathered.folders) : path.resolve(named);
  if (file === null) return undecided;
  const shown = named ?? (path.relative(process.cwd(), file) || file);
  const text = read(file, shown);
  const home = path.relative(path.dirname(file), gathered.root).split(path.sep).join('/');
  const outside = named !== undefined && home.startsWith('..') && !isInside(gathered.root, file);
  // Most manuscripts have none, and zod and YAML take longer to load than a chapter to read.
  const { readHouseStyle } = await import('../manuscript/house-style-file.js');
  const result = readHouseStyle(text, rules, outside ? '' : home);
  if ('style' in result) {
    if (!outside) for (const line of idlePaths(result.paths, path.dirname(file))) tell(`${shown}:${line}`);
    return result.style;
  }
  throw new Failure(result.troubles.map(({ line, what }) => `${shown}:${line}: ${what}`).join('\n'));
}

/** What the style says of files and folders that are not there does nothing, and most often is a slip of the pen. */
function idlePaths(paths: readonly NamedPath[], folder: string): string[] {
  return paths
    .filter((named) => !fs.existsSync(path.join(folder, named.path)))
    .map(
      ({ line, key, path: name }) => `${line}: "${key}" names "${name}", and there is no such file or folder`,
    );
}

function isInside(folder: string, file: string): boolean {
  const relative = path.relative(folder, file);
  return !relative.startsWith('..') && !path.isAbsolute(relative);
}

function nearestOf(folders: readonly string[]): string | null {
  const found = new Set(folders.map(nearest));
  const [first = null, second] = [...found];
  if (found.size < 2) return first;
  const names = [first, second].map((each) => each ?? 'none at all').join('" and "');
  throw new Failure(
    `what was named has two house styles, "${names}"; read one book at a time, or name one with --house`,
  );
}

function nearest(folder: string): string | null {
  for (let at = folder; ; at = path.dirname(at)) {
    const file = path.join(at, houseFile);
    if (fs.statSync(file, { throwIfNoEntry: false })?.isFile() === true) return file;
    if (path.dirname(at) === at) return null;
  }
}

function read(file: string, shown: string): string {
  let bytes: Uint8Array;
  try {
    bytes = fs.readFileSync(file);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? String(error);
    const what =
      code === 'ENOENT' ? 'there is no such house style' : `the house style could not be read (${code})`;
    throw new Failure(`${shown}: ${what}; check the name after --house`);
  }
  const decoded = decode(bytes);
  if ('text' in decoded) return decoded.text.replace(/^\uFEFF/, '');
  throw new Failure(`${shown}: ${decoded.what}; ${decoded.remedy}`);
}
