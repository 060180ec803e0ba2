/** Compares the marks after a mend with those before it. */
import type { Edit, Mark, Weight } from '../../rules/rule.js';
import { placeBefore } from './edits.js';

/**
 * Whether a mark stands after the edits that did not stand before, or one of the `mended` still stands where it stood.
 * A mark is the same when its rule marks the same place, or elsewhere the same subject (a mark for many places stands
 * at the first of them, and moves on when that is mended), with no more weight. Each mark before answers for one after.
 */
export function leavesNewMarks(
  before: readonly Mark[],
  after: readonly Mark[],
  edits: ReadonlyMap<string, readonly Edit[]>,
  mended: readonly Mark[],
): boolean {
  const places = new Map([...edits].map(([file, own]) => [file, placesOf(own)]));
  const ends = new Set(mended.map((mark) => `${keyOf(mark, placeIn(places, mark, true))} ${mark.subject}`));
  const known = new Map<string, Mark[]>();
  for (const mark of before) push(known, keyOf(mark, placeIn(places, mark, true)), mark);
  const moved: Mark[] = [];
  const answered = new Set<Mark>();
  for (const mark of after) {
    const key = keyOf(mark, placeIn(places, mark, false));
    if (ends.has(`${key} ${mark.subject}`)) return true;
    const same = take(known.get(key) ?? [], mark, answered);
    if (!same) moved.push(mark);
  }
  const bySubject = new Map<string, Mark[]>();
  for (const mark of before) if (!answered.has(mark)) push(bySubject, `${mark.rule} ${mark.subject}`, mark);
  return moved.some((mark) => !take(bySubject.get(`${mark.rule} ${mark.subject}`) ?? [], mark, answered));
}

interface Places {
  /** For a mark of the text before: the start of the edit that it stands in, else its own place. */
  readonly old: (offset: number) => number;
  /** For a mark of the text after. */
  readonly back: (offset: number) => number;
}

function placesOf(edits: readonly Edit[]): Places {
  return {
    old: (offset) =>
      edits.find(({ span }) => span.start <= offset && offset < span.end)?.span.start ?? offset,
    back: placeBefore(edits),
  };
}

function placeIn(places: ReadonlyMap<string, Places>, mark: Mark, old: boolean): number {
  const { start } = mark.span;
  const own = places.get(mark.file);
  return own === undefined ? start : old ? own.old(start) : own.back(start);
}

function keyOf(mark: Mark, place: number): string {
  return `${mark.rule} ${mark.file} ${place}`;
}

function push(into: Map<string, Mark[]>, key: string, mark: Mark): void {
  const same = into.get(key);
  if (same === undefined) into.set(key, [mark]);
  else same.push(mark);
}

const HEAVINESS: Readonly<Record<Weight, number>> = { note: 0, query: 1, fault: 2 };

function take(known: readonly Mark[], mark: Mark, answered: Set<Mark>): boolean {
  const same = known.find((each) => !answered.has(each) && HEAVINESS[each.weight] >= HEAVINESS[mark.weight]);
  if (same === undefined) return false;
  answered.add(same);
  return true;
}
