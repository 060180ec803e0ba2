/** Shows the marks of a book as the protocol's diagnostics, and knows for each file when they have changed. */
import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver';
import type { Mark, Weight } from '../../rules/rule.js';
import type { Book } from './book.js';
import type { Desk, Sheet } from './desk.js';

/** What a file shows, and a name for it that changes whenever it does. */
export interface Shown {
  readonly id: string;
  readonly items: readonly Diagnostic[];
}

interface Kept extends Shown {
  readonly marks: readonly Mark[];
  readonly text: string;
}

/** What a file shows of which nothing was ever said. */
export const NOTHING: Kept = { id: '0', items: [], marks: [], text: '[]' };

export class Diagnostics {
  private readonly kept = new WeakMap<Book, Map<string, Kept>>();
  private count = 0;

  constructor(private readonly desk: Desk) {}

  /** What a file of the book shows now. */
  of(book: Book, file: string): Shown {
    const files = this.kept.get(book) ?? new Map<string, Kept>();
    this.kept.set(book, files);
    const marks = book.marksOn(file);
    const before = files.get(file) ?? NOTHING;
    // The marks of a page that did not change are the very same objects, so most files cost no more than this.
    if (same(before.marks, marks)) return before;
    const sheet = this.desk.sheetOf(book, file);
    const items = sheet === null ? [] : marks.map((mark) => diagnosticOf(this.desk, sheet, mark));
    const text = JSON.stringify(items);
    const unchanged = before.text === text;
    if (!unchanged) this.count++;
    const now: Kept = unchanged ? { ...before, marks } : { id: String(this.count), items, marks, text };
    files.set(file, now);
    return now;
  }
}

function same(one: readonly Mark[], other: readonly Mark[]): boolean {
  return one.length === other.length && one.every((mark, index) => mark === other[index]);
}

export function diagnosticOf(desk: Desk, { book, file, places }: Sheet, mark: Mark): Diagnostic {
  const { client, disk } = desk;
  const explanation = client.explanations ? disk.explanation(mark.rule) : null;
  return {
    range: places.range(mark.span),
    severity: severities[mark.weight],
    code: mark.rule,
    ...(explanation === null ? {} : { codeDescription: { href: explanation } }),
    source: 'tamis',
    message: `${mark.message} ${mark.advice}`,
    ...(client.relatedPlaces && mark.related.length > 0
      ? {
          relatedInformation: mark.related.flatMap((related) => {
            const other =
              related.file === file ? { uri: book.uri(file), places } : desk.sheetOf(book, related.file);
            if (other === null) return [];
            return [
              {
                location: { uri: other.uri, range: other.places.range(related.span) },
                message: related.message,
              },
            ];
          }),
        }
      : {}),
  };
}

const severities: Readonly<Record<Weight, DiagnosticSeverity>> = {
  fault: DiagnosticSeverity.Error,
  query: DiagnosticSeverity.Warning,
  note: DiagnosticSeverity.Information,
};
