/** The README's settings for editors, as a reader copies them, and a `tamis` for them to start. */
import { chmodSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { command, manuscript } from '../cli/run.js';

/** The indented block after the line of the README that begins so. */
export function settingsFor(editor: string): string {
  const lines = readFileSync(new URL('../../README.md', import.meta.url), 'utf8').split('\n');
  const named = lines.findIndex((line) => line.startsWith(editor));
  if (named < 0) throw new Error(`settingsFor: the README has no settings for "${editor}"`);
  const begin = named + 2;
  const end = lines.findIndex((line, index) => index > begin && line !== '' && !line.startsWith('    '));
  return lines
    .slice(begin, end)
    .map((line) => line.replace(/^ {4}/, ''))
    .join('\n');
}

/** The PATH on which `tamis` is the one that was built. */
export function pathWithTamis(): string {
  const folder = manuscript({ tamis: `#!/bin/sh\nexec "${process.execPath}" "${command}" "$@"\n` });
  chmodSync(path.join(folder, 'tamis'), 0o755);
  return `${folder}${path.delimiter}${process.env.PATH}`;
}
