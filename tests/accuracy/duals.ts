/** Lists every dual measure of the corpus with what tamis makes of it, and compares that with the labels of a person. */
import { dualsOf } from '../../src/kitchen/duals.js';
import { sidesOf } from '../../src/kitchen/sides.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';

export interface ListedDual {
  readonly file: string;
  readonly line: number;
  /** The two measures as written. */
  readonly text: string;
  /** "right", "loose", "wrong", or "unjudged" where nothing relates the two. */
  readonly verdict: string;
}

export function listDuals(files: readonly SourceFile[]): ListedDual[] {
  return readManuscript(files).dishes.flatMap((dish) => {
    const measures = dualsOf(dish, null).map(({ passage, first, second, judgement }) => ({
      passage,
      first,
      second,
      verdict: judgement?.agreement ?? 'unjudged',
    }));
    return [...measures, ...sidesOf(dish)].map(({ passage, first, second, verdict }) => ({
      file: dish.page.path,
      line: dish.page.lines.line(passage.span(second.start, second.end).start),
      text: `${passage.text
        .slice(first.start, second.start)
        .replace(/\s+/g, ' ')
        .replace(/[\s(/]+$/, '')} = ${passage.text.slice(second.start, second.end)}`,
      verdict,
    }));
  });
}
