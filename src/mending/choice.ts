/** Which mends are made together: one a mark, and of those that overlap the one that comes first. */
import type { Edit, Mark, Mend } from '../../rules/rule.js';
import { overlap } from './edits.js';

/** A mend with the mark that offers it. */
export interface Choice {
  readonly mark: Mark;
  readonly mend: Mend;
}

/** The first sure mend of every mark that has one, in the order of the marks: by file, place and rule. */
export function sureChoices(marks: readonly Mark[]): Choice[] {
  return marks.flatMap((mark) => {
    const mend = mark.mends.find((each) => each.sure && each.edits.length > 0);
    return mend === undefined ? [] : [{ mark, mend }];
  });
}

/**
 * Those choices that can be made at once. Of two that overlap the earlier mark's is kept: marks are in the order of
 * their files, then of their places, then of their rules' names. What is left out has its turn when the text is read again.
 */
export function settleOverlaps(choices: readonly Choice[]): Choice[] {
  const taken = new Map<string, Edit[]>();
  const kept: Choice[] = [];
  for (const choice of choices) {
    const edits = taken.get(choice.mark.file) ?? [];
    taken.set(choice.mark.file, edits);
    const own = choice.mend.edits;
    if (own.some((edit, index) => [...edits, ...own.slice(0, index)].some((other) => overlap(edit, other))))
      continue;
    kept.push(choice);
    edits.push(...own);
  }
  return kept;
}

/** The edits of the choices, by file. */
export function editsByFile(choices: readonly Choice[]): Map<string, Edit[]> {
  const byFile = new Map<string, Edit[]>();
  for (const { mark, mend } of choices) {
    const edits = byFile.get(mark.file);
    if (edits === undefined) byFile.set(mark.file, [...mend.edits]);
    else edits.push(...mend.edits);
  }
  return byFile;
}
