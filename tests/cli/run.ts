/** Runs the built command as a person would, and makes small manuscripts for it to read. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const command = fileURLToPath(new URL('../../dist/src/cli.js', import.meta.url));

export interface Run {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Colors and other wishes of the machine that runs the tests do not count. */
export function tamis(
  folder: string,
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
  user: { readonly uid?: number; readonly gid?: number } = {},
): Run {
  const { NO_COLOR: _no, FORCE_COLOR: _force, ...rest } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...args], {
    cwd: folder,
    ...user,
    env: { ...rest, ...env },
    encoding: 'utf8',
    maxBuffer: 256 * 1024 * 1024,
  });
  return { status, stdout, stderr };
}

/** A new folder with these files, gone after the tests. */
export function manuscript(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'manuscript-'));
  folders.push(folder);
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
    writeFileSync(path.join(folder, name), content);
  }
  return folder;
}

const folders: string[] = [];

/** Called after each test file, by `tests/setup.ts`. */
export function clearManuscripts(): void {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
}

/** Cream goes in and is not on the list. */
export const faulty = `# Leek Soup

Serves 4

## Ingredients

- 2 large leeks, sliced
- 1 tablespoon butter
- 4 cups water

## Method

1. Melt the butter in a pot over medium heat. Cook the leeks in it until soft, about 10 minutes.
2. Add the water and simmer until the leeks fall apart, about 20 minutes.
3. Stir in 1/2 cup cream and serve.
`;

/** The same soup with nothing to mend in its list. */
export const sound = faulty.replace('- 4 cups water', '- 4 cups water\n- 1/2 cup cream');
