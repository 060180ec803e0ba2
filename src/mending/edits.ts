/** Changes a text by edits, and nothing outside them; tells where a place of the changed text was before. */
import type { Edit } from '../../rules/rule.js';

/** The text with the edits made. They are given in any order and do not touch each other. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  let made = '';
  let from = 0;
  for (const { span, text: put } of inOrder(edits)) {
    if (span.start < from || span.end < span.start || span.end > text.length)
      throw new Error(
        `applyEdits: expected edits within the text that do not overlap, got ${span.start} to ${span.end}`,
      );
    made += text.slice(from, span.start) + put;
    from = span.end;
  }
  return made + text.slice(from);
}

/** Where each offset of the changed text stood before: all of what an edit put in stands at the edit's start. */
export function placeBefore(edits: readonly Edit[]): (after: number) => number {
  const ordered = inOrder(edits);
  return (after) => {
    let shift = 0;
    for (const { span, text } of ordered) {
      const start = span.start + shift;
      if (after < start) break;
      if (after < start + text.length) return span.start;
      shift += text.length - (span.end - span.start);
    }
    return after - shift;
  };
}

/** Whether two edits change the same characters, or put something in at the same place. */
export function overlap(one: Edit, other: Edit): boolean {
  if (one.span.start === other.span.start) return true;
  const [first, second] = one.span.start < other.span.start ? [one, other] : [other, one];
  return second.span.start < first.span.end;
}

function inOrder(edits: readonly Edit[]): Edit[] {
  return [...edits].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
}
