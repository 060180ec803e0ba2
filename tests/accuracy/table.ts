/** Prints a row of a table of what was planted and caught, or judged and right. */
export function row(kind: string, all: number, part: number): string {
  const share = all === 0 ? 'none' : `${((100 * part) / all).toFixed(1)} %`;
  return `${kind.padEnd(31)}${String(all).padStart(10)}${String(part).padStart(9)}${share.padStart(9)}`;
}
