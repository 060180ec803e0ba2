/** Lists every pair of statements of one temperature or one time in a set of recipes, with tamis's verdict, and compares it with a person's labels. */
import { existsSync, readFileSync } from 'node:fs';
import { timeText } from '../../src/arithmetic/times.js';
import { dualTemperaturesOf } from '../../src/kitchen/dual-temperatures.js';
import { heatTextOf } from '../../src/kitchen/heat-text.js';
import { timePairsOf } from '../../src/kitchen/time-pairs.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';

export interface Pair {
  readonly file: string;
  readonly line: number;
  /** "dual", or what of times is compared. */
  readonly compares: string;
  /** The two statements, as figures: no words of the recipe. */
  readonly figures: string;
  readonly verdict: string;
}

export interface LabelledPairs {
  readonly pairs: readonly Pair[];
  readonly unlabelled: readonly Pair[];
  readonly wrong: readonly Pair[];
}

/** All pairs of the recipes, in the order of the files. */
export function pairsIn(files: readonly SourceFile[]): Pair[] {
  return files.flatMap((file) =>
    readManuscript([file]).dishes.flatMap((dish) => {
      const lineOf = (offset: number): number => dish.page.lines.line(offset);
      const duals = dualTemperaturesOf(dish).map(({ passage, kept, other, nearness }) => ({
        file: file.path,
        line: lineOf(passage.span(other.start, other.end).start),
        compares: 'dual',
        figures: `${heatTextOf(passage.text, kept)} = ${heatTextOf(passage.text, other)}`,
        verdict: nearness,
      }));
      const times = timePairsOf(dish).map(({ compares, agree, certain, marked, stated, reckoned }) => ({
        file: file.path,
        line: lineOf(marked.span.start),
        compares,
        figures: `${timeText(stated.low, stated.high)} / ${timeText(reckoned.low, reckoned.high)}`,
        verdict: agree ? 'right' : certain ? 'wrong' : 'doubtful',
      }));
      return [...duals, ...times];
    }),
  );
}

/** The pairs with what a person said of each; a pair without a label is unlabelled, one with another verdict is wrong. */
export function comparePairs(files: readonly SourceFile[]): LabelledPairs {
  const pairs = pairsIn(files);
  const labels = readLabels();
  const labelOf = (pair: Pair): string | undefined => labels.get(keyOf(pair));
  return {
    pairs,
    unlabelled: pairs.filter((pair) => labelOf(pair) === undefined),
    wrong: pairs.filter((pair) => labelOf(pair) !== undefined && labelOf(pair) !== pair.verdict),
  };
}

const LABELS = new URL('heat-pairs.tsv', import.meta.url);

function readLabels(): Map<string, string> {
  if (!existsSync(LABELS)) return new Map();
  const rows = readFileSync(LABELS, 'utf8').trimEnd().split('\n').slice(1);
  return new Map(
    rows.map((row) => {
      const [file, line, compares, figures, verdict] = row.split('\t');
      return [[file, line, compares, figures].join('\t'), verdict ?? ''];
    }),
  );
}

function keyOf({ file, line, compares, figures }: Pair): string {
  return [file, line, compares, figures].join('\t');
}
