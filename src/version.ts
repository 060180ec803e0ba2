/** Knows the version of the package, as its package.json states it. */
import { existsSync, readFileSync } from 'node:fs';

/** Beside the sources, and two folders up from the built code. */
const places = ['../package.json', '../../package.json'];

export const version: string = readVersion();

function readVersion(): string {
  for (const place of places) {
    const url = new URL(place, import.meta.url);
    if (!existsSync(url)) continue;
    const value = JSON.parse(readFileSync(url, 'utf8')) as { name?: unknown; version?: unknown };
    if (value.name === 'tamis' && typeof value.version === 'string') return value.version;
  }
  throw new Error('version: expected the package.json of tamis above this file');
}
