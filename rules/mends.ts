/** Makes the mends that rules offer; where the page writes the words otherwise than they read (an entity, emphasis within), none is made. */
import type { Passage } from '../src/manuscript/passage.js';
import type { Page, Span } from '../src/manuscript/types.js';
import type { Mend } from './rule.js';

/** An offered mend of one edit, as a list to put into a finding: empty where there is no such edit. */
export function offered(
  label: string,
  edit: { readonly span: Span; readonly text: string } | null,
): readonly Mend[] {
  return edit === null ? [] : [{ label, sure: false, edits: [edit] }];
}

/** The stretch of the passage, to be replaced by `text`. */
export function replacing(
  page: Page,
  passage: Passage,
  [start, end]: readonly [number, number],
  text: string,
): { readonly span: Span; readonly text: string } | null {
  const span = passage.span(start, end);
  return page.text.slice(span.start, span.end) === passage.text.slice(start, end) ? { span, text } : null;
}
