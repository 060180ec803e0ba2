/** Prints the tables of the accuracy command: what was planted and caught, or judged and right. */
import type { MarkScore } from './marks.js';

export interface Count {
  readonly planted: number;
  readonly caught: number;
  /** What tells a person where it was missed. */
  readonly missed: readonly string[];
}

/** What a topic is asked to show besides its tables. */
export interface Shown {
  /** What was planted and not caught, or judged otherwise. */
  readonly missed: boolean;
  /** Every single thing that was compared. */
  readonly each: boolean;
}

/** A table of what was planted, kind by kind, with all in the last row. */
export function printPlants(
  what: string,
  counts: Iterable<readonly [string, Count]>,
  { missed }: Shown,
): void {
  console.log(heading(what, 'planted', 'caught', 'recall'));
  let planted = 0;
  let caught = 0;
  for (const [kind, count] of counts) {
    planted += count.planted;
    caught += count.caught;
    console.log(row(kind, count.planted, count.caught));
    if (missed) for (const miss of count.missed) console.log(`    ${miss}`);
  }
  console.log(row('all', planted, caught));
}

/** A table of marks against the labels of a person, and how many of either lack the other. */
export function printMarks(what: string, score: MarkScore, { missed }: Shown): void {
  console.log(heading(what, 'judged', 'right', 'precision'));
  for (const [weight, { judged, right }] of Object.entries(score.byWeight))
    console.log(row(weight, judged, right));
  console.log(
    `${score.unjudged.length} marks have no label; ${score.gone.length} of the ${score.labels} labelled marks are no longer made`,
  );
  if (!missed) return;
  for (const key of score.unjudged) console.log(`    not judged: ${key}`);
  for (const key of score.gone) console.log(`    gone: ${key}`);
}

function heading(what: string, all: string, part: string, share: string): string {
  return `\n${what.padEnd(31)}${all.padStart(10)}${part.padStart(9)}${share.padStart(10)}`;
}

function row(kind: string, all: number, part: number): string {
  const share = all === 0 ? 'none' : `${((100 * part) / all).toFixed(1)} %`;
  return `${kind.padEnd(31)}${String(all).padStart(10)}${String(part).padStart(9)}${share.padStart(10)}`;
}
