/** Lists every dual measure of the corpus with what tamis makes of it, and compares that with the labels of a person. */
import { readFileSync } from 'node:fs';
import { dualsOf } from '../../src/kitchen/duals.js';
import { equivalentsOf } from '../../src/kitchen/equivalents.js';
import { sidesOf } from '../../src/kitchen/sides.js';
import type { Dish } from '../../src/kitchen/types.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';

export interface ListedDual {
  readonly file: string;
  readonly line: number;
  /** Its place among the duals of the line, from 1. */
  readonly place: number;
  /** The two measures as written. */
  readonly text: string;
  /** "right", "wrong" (a fault or a query), or "unjudged" where nothing that tamis knows relates the two. */
  readonly verdict: 'right' | 'wrong' | 'unjudged';
}

export interface LabelledDual extends ListedDual {
  /** Null where nobody has judged it. */
  readonly label: string | null;
}

/** Every dual with its label; a label "either" stands where careful editors may part ways. */
export function labelledDuals(files: readonly SourceFile[]): LabelledDual[] {
  const [, ...rows] = readFileSync(new URL('duals.tsv', import.meta.url), 'utf8')
    .trimEnd()
    .split('\n');
  const labels = new Map(
    rows.map((row) => {
      const [file, line, place, label] = row.split('\t');
      return [`${file}:${line}:${place}`, label!];
    }),
  );
  return listDuals(files).map((dual) => ({
    ...dual,
    label: labels.get(`${dual.file}:${dual.line}:${dual.place}`) ?? null,
  }));
}

/** Every amount and length that the corpus gives in two units, in the order of files and lines. */
export function listDuals(files: readonly SourceFile[]): ListedDual[] {
  return readManuscript(files).dishes.flatMap((dish) => {
    const places = new Map<number, number>();
    return pairsIn(dish)
      .sort((a, b) => a.start - b.start)
      .map(({ start, text, verdict }) => {
        const line = dish.page.lines.line(start);
        const place = (places.get(line) ?? 0) + 1;
        places.set(line, place);
        return { file: dish.page.path, line, place, text, verdict };
      });
  });
}

function pairsIn(dish: Dish) {
  const equivalents = equivalentsOf(dish);
  const measures = dualsOf(dish, null).map(({ passage, first, second, judgement }) => {
    const equivalent = equivalents.find((each) => each.passage === passage && each.amountText === second);
    return { passage, first, second, agreement: judgement?.agreement ?? equivalent?.agreement ?? null };
  });
  const sides = sidesOf(dish).map(({ passage, first, second, verdict }) => ({
    passage,
    first,
    second,
    agreement: verdict,
  }));
  return [...measures, ...sides].map(({ passage, first, second, agreement }) => ({
    start: passage.span(second.start, second.end).start,
    text: `${passage.text
      .slice(first.start, second.start)
      .replace(/\s+/g, ' ')
      .replace(/[\s(/|]+$/, '')} = ${passage.text.slice(second.start, second.end)}`,
    verdict:
      agreement === null
        ? ('unjudged' as const)
        : agreement === 'right'
          ? ('right' as const)
          : ('wrong' as const),
  }));
}
