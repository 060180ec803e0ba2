/** Knows in which order the files of a manuscript stand. */

/** "2-soups.md" stands before "10-cakes.md"; the language is fixed so that the order is the same on every machine. */
export function byName(one: string, other: string): number {
  return collator.compare(one, other) || (one < other ? -1 : one > other ? 1 : 0);
}

const collator = new Intl.Collator('en', { numeric: true });
