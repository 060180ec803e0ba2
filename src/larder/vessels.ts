/** Finds vessels and tools by name. */
import { larder } from './load.js';
import { fold, plurals } from './names.js';
import type { Vessel } from './types.js';

const byKey = new Map<string, Vessel>();
for (const vessel of larder.vessels) {
  for (const name of [vessel.name, ...vessel.also]) {
    for (const form of [name, ...plurals(name)]) byKey.set(fold(form), vessel);
  }
}

const LONGEST_NAME = 3;

/** The longest vessel name that begins at `words[at]` (folded keys), with how many words it takes; null when there is none. */
export function vesselAt(words: readonly string[], at: number): { vessel: Vessel; length: number } | null {
  let key = '';
  let found: { vessel: Vessel; length: number } | null = null;
  for (let next = at; next < Math.min(words.length, at + LONGEST_NAME); next++) {
    key += words[next];
    const vessel = byKey.get(key);
    if (vessel !== undefined) found = { vessel, length: next - at + 1 };
  }
  return found;
}
