/** Lays out mends: what is made as a unified diff, what is offered as a list for a person to choose from. */
import { createTwoFilesPatch, FILE_HEADERS_ONLY } from 'diff';
import type { Mark, Mend } from '../../rules/rule.js';
import type { MendedFile } from '../mending/mend.js';
import type { Reading } from '../reading/types.js';
import { placesOf } from './places.js';
import { oneLine, visible } from './text.js';

/** The changes of all files as one unified diff, to the letter, so that it can be applied with a patch tool (`-p1`). */
export function mendsDiff(files: readonly Pick<MendedFile, 'path' | 'before' | 'after'>[]): string {
  return files
    .map(({ path, before, after }) =>
      createTwoFilesPatch(`a/${path}`, `b/${path}`, before, after, undefined, undefined, {
        headerOptions: FILE_HEADERS_ONLY,
      }),
    )
    .join('');
}

/** The same for a terminal, which no character of the author's text may steer. */
export function visibleDiff(diff: string): string {
  return diff
    .split('\n')
    .map((line) => visible(line.replace(/\r$/, '')))
    .join('\n');
}

/** A mark's offered mends, and whether there are any. */
export function offeredMends(mark: Mark): Mend[] {
  return mark.mends.filter(({ sure }) => !sure);
}

/** The offered mends, a line each, in lines that a patch tool passes over; empty where there are none. */
export function offeredList(reading: Reading, only?: readonly string[]): string {
  const places = placesOf(reading);
  const offering = reading.marks.filter(
    (mark) => (only === undefined || only.includes(mark.rule)) && offeredMends(mark).length > 0,
  );
  if (offering.length === 0) return '';
  const lines = offering.flatMap((mark) => {
    const { line } = places.place(mark.file, mark.span.start);
    return offeredMends(mark).map(
      ({ label }) =>
        `# ${oneLine(mark.file)}:${line}: ${mark.rule}, "${oneLine(places.words(mark.file, mark.span))}": ${oneLine(label)}`,
    );
  });
  const marks = offering.length === 1 ? '1 mark' : `${offering.length} marks`;
  return `# Offered for ${marks}; choose with tamis mend --offered RULE:\n${lines.join('\n')}\n`;
}
