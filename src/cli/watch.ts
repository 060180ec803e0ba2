/** Knows when files of a manuscript may have changed, and looks at them then, until it is told to stop. */
import fs from 'node:fs';
import path from 'node:path';
import { watch as watchFiles } from 'chokidar';
import { isMarkdown } from './files.js';
import { houseFile } from './house.js';

export interface Look {
  /** Looks at the manuscript again; looking once too often does no harm. */
  readonly look: () => Promise<void>;
  /** Told once where the system cannot tell of all changes, with the reason; looks still come now and then. */
  readonly onBlind: (reason: string) => void;
}

/** Ends with the first SIGINT (Ctrl-C) or SIGTERM, or with the first error of a look. */
export function watch(named: readonly string[], { look, onBlind }: Look): Promise<void> {
  const paths = named.map((name) => path.resolve(name));
  const firstSeen = new Map<string, string>();
  const watcher = watchFiles([...new Set(paths.map(watchedFor))], {
    ignored: (file, stats) => {
      const absolute = path.resolve(file);
      if (!concerns(paths, absolute, stats?.isFile() ?? false)) return true;
      return stats?.isDirectory() === true && isElsewhere(absolute, firstSeen);
    },
    ignoreInitial: true,
  });
  return new Promise((resolve, reject) => {
    let timer: NodeJS.Timeout | undefined;
    let first: number | undefined;
    let told = false;
    let looking = false;

    const end = (settle: () => void): void => {
      clearTimeout(timer);
      for (const signal of signals) process.off(signal, stop);
      watcher.close().then(settle, reject);
    };
    const stop = (): void => end(resolve);
    const lookNow = (): void => {
      first = undefined;
      const started = performance.now();
      looking = true;
      look().then(
        () => {
          looking = false;
          // A change that came meanwhile waits for its own look.
          if (first === undefined)
            lookIn(Math.max(restMilliseconds, (performance.now() - started) * restPerLook));
          else onChange();
        },
        (error) => end(() => reject(error)),
      );
    };
    const lookIn = (milliseconds: number): void => {
      clearTimeout(timer);
      if (looking) return;
      timer = setTimeout(lookNow, milliseconds);
    };
    const onChange = (): void => {
      first ??= performance.now();
      const waited = performance.now() - first;
      lookIn(Math.max(0, Math.min(settleMilliseconds, patienceMilliseconds - waited)));
    };

    for (const signal of signals) process.once(signal, stop);
    watcher.on('all', onChange);
    watcher.on('error', (error) => {
      if (!told) onBlind((error as NodeJS.ErrnoException).code ?? String(error));
      told = true;
    });
    // What changed before the watcher was ready was not told.
    watcher.on('ready', lookNow);
    lookNow();
  });
}

const signals = ['SIGINT', 'SIGTERM'] as const;

/** An editor writes a file in several strokes: the look comes when it has been quiet for so long. */
const settleMilliseconds = 80;
/** The longest that a look waits while changes keep coming. */
const patienceMilliseconds = 1000;
/**
 * Not every change is told: a folder that is taken away and put back at once, as version control does, is heard of no
 * more, and some disks tell nothing. So there is a look now and then without being told, more seldom the longer it takes.
 */
const restMilliseconds = 2000;
const restPerLook = 50;

/** A folder itself; for a file its folder, since many editors put a new file in the old one's place. */
function watchedFor(absolute: string): string {
  return fs.statSync(absolute, { throwIfNoEntry: false })?.isFile() ? path.dirname(absolute) : absolute;
}

/** Whether a path is named, on the way to a named file, or Markdown or a folder inside a named folder. */
function concerns(named: readonly string[], absolute: string, isFile: boolean): boolean {
  return named.some((name) => {
    if (absolute === name || absolute === path.dirname(name)) return true;
    const inside = path.relative(name, absolute);
    const parts = inside.split(path.sep);
    if (path.isAbsolute(inside) || parts[0] === '..') return false;
    if (parts.some((part) => part.startsWith('.') || part === 'node_modules')) return false;
    return !isFile || isMarkdown(absolute) || path.basename(absolute) === houseFile;
  });
}

/** Whether a folder is watched already under another name: links may lead in circles. `firstSeen` is by real path. */
function isElsewhere(absolute: string, firstSeen: Map<string, string>): boolean {
  try {
    const real = fs.realpathSync(absolute);
    const first = firstSeen.get(real);
    if (first === undefined || !fs.existsSync(first)) firstSeen.set(real, absolute);
    return firstSeen.get(real) !== absolute;
  } catch {
    // It is gone by now, and so needs no watching.
    return true;
  }
}
