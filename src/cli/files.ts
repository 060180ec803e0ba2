/** Finds the files of a manuscript and decodes them; what cannot be read is told in one line each, and the rest is still read. */
import fs from 'node:fs';
import path from 'node:path';
import { globSync } from 'tinyglobby';
import { byName } from '../manuscript/order.js';
import type { SourceFile } from '../manuscript/types.js';
import { decode } from './decode.js';

/** Something named or found that could not be read: where, what is the matter, what to do. */
export interface Trouble {
  readonly where: string;
  readonly what: string;
  readonly remedy: string;
}

export interface Gathered {
  readonly files: readonly SourceFile[];
  /** The real paths of those files, so that no report is written over them. */
  readonly realPaths: ReadonlySet<string>;
  /** Where each of the files, by its path in reports, really is: through any link. */
  readonly places: ReadonlyMap<string, string>;
  readonly troubles: readonly Trouble[];
  /** For each name, the absolute folder that it leads to, from which on a house style is looked for. */
  readonly folders: readonly string[];
  /** The absolute folder to which the files' paths are relative. */
  readonly root: string;
}

/** Reads every Markdown file under the folders named, and every file named, each once. */
export function gather(named: readonly string[], folder: string = process.cwd()): Gathered {
  const files: SourceFile[] = [];
  const realPaths = new Set<string>();
  const places = new Map<string, string>();
  const troubles: Trouble[] = [];
  const folders: string[] = [];
  let root = folder;
  for (const name of named) {
    const found = find(name, folder, troubles);
    root = named.length > 1 ? folder : found.root;
    folders.push(...found.folder);
    for (const absolute of found.files) {
      const where = path.join(name, path.relative(path.resolve(folder, name), absolute));
      try {
        const real = fs.realpathSync(absolute);
        if (realPaths.has(real)) continue;
        realPaths.add(real);
        const decoded = decode(fs.readFileSync(absolute));
        if ('text' in decoded) {
          const file = { path: slashed(path.relative(root, absolute)), text: decoded.text };
          files.push(file);
          places.set(file.path, real);
        } else troubles.push({ where, ...decoded });
      } catch (error) {
        troubles.push({ where, ...reasonOf(error) });
      }
    }
  }
  return { files, realPaths, places, troubles, folders, root };
}

function slashed(relative: string): string {
  return relative.split(path.sep).join('/');
}

interface Found {
  /** Absolute. */
  readonly files: readonly string[];
  /** The folder to which the paths of reports are relative when nothing else is named. */
  readonly root: string;
  /** The folder named, or that of the file named; none where there is nothing of that name. */
  readonly folder: readonly string[];
}

function find(name: string, folder: string, troubles: Trouble[]): Found {
  const absolute = path.resolve(folder, name);
  const nothing = { files: [], root: folder, folder: [] };
  try {
    const stat = fs.statSync(name === '' ? name : absolute);
    if (stat.isDirectory()) {
      return { files: findMarkdown(absolute, name, troubles), root: absolute, folder: [absolute] };
    }
    if (stat.isFile() || stat.isFIFO()) {
      return { files: [absolute], root: rootOfFile(absolute, folder), folder: [path.dirname(absolute)] };
    }
    troubles.push({
      where: name,
      what: 'it is neither a file nor a folder',
      remedy: 'name a Markdown file or the folder of the manuscript',
    });
    return nothing;
  } catch (error) {
    troubles.push({ where: name === '' ? '""' : name, ...reasonOf(error) });
    return nothing;
  }
}

/** The current folder where the file is inside it, so that the report's path works there; else the file's own folder. */
function rootOfFile(absolute: string, folder: string): string {
  const relative = path.relative(folder, absolute);
  const inside = relative !== '..' && !relative.startsWith(`..${path.sep}`) && !path.isAbsolute(relative);
  return inside ? folder : path.dirname(absolute);
}

export function isMarkdown(file: string): boolean {
  return /\.(md|markdown)$/i.test(file);
}

function findMarkdown(root: string, name: string, troubles: Trouble[]): string[] {
  const before = troubles.length;
  const files = globSync(['**/*.md', '**/*.markdown'], {
    cwd: root,
    ignore: ['**/node_modules/**'],
    caseSensitiveMatch: false,
    expandDirectories: false,
    absolute: true,
    fs: tellingFileSystem(root, name, troubles),
  });
  if (files.length === 0 && troubles.length === before) {
    troubles.push({
      where: name,
      what: 'the folder holds no Markdown file (*.md, *.markdown)',
      remedy: 'name the folder of the manuscript, or a file in it',
    });
  }
  return onceEach(
    files.map((file) => path.normalize(file)),
    fs.realpathSync(root),
    root,
  ).sort(byName);
}

/** A file that links lead to as well goes by its own name, so that a link back to a folder above renames nothing. */
function onceEach(files: readonly string[], realRoot: string, root: string): string[] {
  const chosen = new Map<string, string>();
  for (const file of files) {
    const real = fs.realpathSync(file);
    const direct = path.join(realRoot, path.relative(root, file)) === real;
    if (direct || !chosen.has(real)) chosen.set(real, file);
  }
  return [...chosen.values()];
}

/**
 * The glob library passes over folders it may not open and links that lead nowhere without a word.
 * Left unsaid, a chapter would be missing from the reading, so its calls are watched here.
 */
function tellingFileSystem(root: string, name: string, troubles: Trouble[]) {
  const told = new Set<string>();
  const tell = (absolute: string, error: unknown): void => {
    if (told.has(absolute)) return;
    told.add(absolute);
    troubles.push({ where: path.join(name, path.relative(root, absolute)), ...reasonOf(error) });
  };
  const readdirSync = ((folder: string, options: { withFileTypes: true }) => {
    try {
      return fs.readdirSync(folder, options);
    } catch (error) {
      tell(folder, error);
      throw error;
    }
  }) as typeof fs.readdirSync;
  const realpathSync = ((file: string) => {
    try {
      return fs.realpathSync(file);
    } catch (error) {
      if (isMarkdown(file) && !path.basename(file).startsWith('.')) tell(file, error);
      throw error;
    }
  }) as typeof fs.realpathSync;
  return { readdirSync, realpathSync };
}

/** What is the matter, in words, and what to do. */
export function reasonOf(error: unknown): { what: string; remedy: string } {
  const code = (error as NodeJS.ErrnoException).code ?? String(error);
  return (
    reasons[code] ?? {
      what: `it could not be read (${code})`,
      remedy: 'check the file and the disk it is on',
    }
  );
}

const denied = {
  what: 'you have no permission to read it',
  remedy: 'change its permissions, or leave it out',
};
const reasons: Readonly<Record<string, { what: string; remedy: string }>> = {
  ENOENT: { what: 'there is no such file or folder', remedy: 'check the spelling and the folder you are in' },
  ENOTDIR: {
    what: 'there is no such file or folder',
    remedy: 'check the spelling and the folder you are in',
  },
  EACCES: denied,
  EPERM: denied,
  EISDIR: { what: 'it is a folder', remedy: 'name the folder, or a file in it' },
  ELOOP: { what: 'the link leads back to itself', remedy: 'mend the link or remove it' },
  ENAMETOOLONG: { what: 'the name is too long for a file', remedy: 'check the name' },
  ERR_STRING_TOO_LONG: { what: 'the file is too large to read', remedy: 'part it into chapters' },
  ERR_FS_FILE_TOO_LARGE: { what: 'the file is too large to read', remedy: 'part it into chapters' },
};
