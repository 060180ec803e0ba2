/** Turns the offsets of a reading's marks into places and words of its pages. */
import type { Recipe } from '../anatomy/types.js';
import type { Place } from '../manuscript/lines.js';
import type { Page, Span } from '../manuscript/types.js';
import type { Reading } from '../reading/types.js';

export interface Places {
  readonly page: (file: string) => Page;
  readonly place: (file: string, offset: number) => Place;
  /** The span's two ends. */
  readonly ends: (file: string, span: Span) => { start: Place; end: Place };
  /** The words of the source that the span covers. */
  readonly words: (file: string, span: Span) => string;
  /** The same with up to three words before them, so that a reader finds the place: "swirl in the cream". */
  readonly passage: (file: string, span: Span) => string;
}

export function placesOf(reading: Pick<Reading, 'pages'>): Places {
  const pages = new Map(reading.pages.map((page) => [page.path, page]));
  const page = (file: string): Page => {
    const found = pages.get(file);
    if (found === undefined) throw new Error(`placesOf: expected a file of the reading, got "${file}"`);
    return found;
  };
  const place = (file: string, offset: number): Place => page(file).lines.place(offset);
  return {
    page,
    place,
    ends: (file, span) => ({ start: place(file, span.start), end: place(file, span.end) }),
    words: (file, span) => page(file).text.slice(span.start, span.end),
    passage: (file, span) => page(file).text.slice(passageStart(page(file).text, span), span.end),
  };
}

/** Words that are read back from the start of a mark; a passage does not reach over punctuation, a bullet or a line's start. */
const wordsBefore = 3;
const longestWord = 20;

function passageStart(text: string, { start, end }: Span): number {
  if (start === end) return start;
  let from = start;
  for (let count = 0; count < wordsBefore; count++) {
    const before = /(?:^|[\s])([\p{L}\p{N}½¼¾⅓⅔’'-]+) $/u.exec(
      text.slice(Math.max(0, from - longestWord), from),
    );
    // A step's number or a bullet is no word of the passage.
    if (before === null || !/[\p{L}½¼¾⅓⅔]/u.test(before[1]!)) break;
    from -= before[1]!.length + 1;
  }
  return from;
}

/** The title as marks give it: on one line. Null where the page gives none. */
export function titleOf(recipe: Recipe): string | null {
  return recipe.title?.text.replace(/\s+/g, ' ').trim() ?? null;
}
