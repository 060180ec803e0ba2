/**
 * Mends a manuscript in memory: sure mends are made, the mended text is read again, and what would leave a new mark on
 * the page is not made. It goes on until there is nothing more to do, so that a second run finds nothing.
 */
import type { Edit, Mark } from '../../rules/rule.js';
import type { SourceFile } from '../manuscript/types.js';
import { type KnownMarks, readBook, readPage } from '../reading/read.js';
import type { PageReading, Reading, ReadingOptions } from '../reading/types.js';
import { type Choice, editsByFile, settleOverlaps, sureChoices } from './choice.js';
import { applyEdits } from './edits.js';
import { leavesNewMarks } from './marks.js';

/** A file's text and the edits that were made to it at once; a later round begins with what came of the one before. */
export interface Round {
  readonly text: string;
  readonly edits: readonly Edit[];
}

export interface MendedFile {
  readonly path: string;
  readonly before: string;
  readonly after: string;
  readonly rounds: readonly Round[];
  /** How many mends were made in it. */
  readonly mends: number;
}

export interface Mending {
  /** Those that change, in the order of the manuscript. */
  readonly files: readonly MendedFile[];
  readonly before: Reading;
  readonly after: Reading;
  /** Sure mends that were not made because a new mark would have come of them. */
  readonly refused: readonly Choice[];
}

/**
 * Makes the sure mends of the manuscript; with `only`, those of these rules. Marks of every rule are looked out for.
 * `choose` takes from the marks what is wished for.
 */
export function mendManuscript(
  files: readonly SourceFile[],
  options: ReadingOptions = {},
  choose: (marks: readonly Mark[]) => readonly Choice[] = sureChoices,
): Mending {
  const { only, onPage, ...rest } = options;
  const draft = new Draft(readPages(files, rest, onPage), rest);
  const before = draft.reading;
  let refused: readonly Choice[] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const wanted = settleOverlaps(
      choose(draft.reading.marks.filter(({ rule }) => only === undefined || only.includes(rule))),
    );
    const made = draft.accept(wanted);
    refused = wanted.filter((choice) => !made.includes(choice));
    if (made.length === 0) break;
    draft.make(made);
  }
  return { files: draft.changed(), before, after: draft.reading, refused };
}

/** Makes these mends, which a person chose, one after the other; `refused` holds what would leave a new mark or no longer fits. */
export function makeChosen(
  files: readonly SourceFile[],
  chosen: readonly Choice[],
  options: ReadingOptions = {},
): Mending {
  const { only: _, onPage, ...rest } = options;
  const draft = new Draft(readPages(files, rest, onPage), rest);
  const before = draft.reading;
  const made = draft.accept(settleOverlaps(chosen));
  if (made.length > 0) draft.make(made);
  return {
    files: draft.changed(),
    before,
    after: draft.reading,
    refused: chosen.filter((choice) => !made.includes(choice)),
  };
}

/**
 * The edits of one file's sure mends that can be made at once, in a book that has been read: those that overlap others or
 * would leave a new mark are not among them.
 */
export function sureEdits(
  pages: readonly PageReading[],
  file: string,
  options: ReadingOptions = {},
  choose: (marks: readonly Mark[]) => readonly Choice[] = sureChoices,
): readonly Edit[] {
  const draft = new Draft(pages, options);
  const wanted = choose(draft.reading.marks.filter((mark) => mark.file === file));
  return editsByFile(draft.accept(settleOverlaps(wanted))).get(file) ?? [];
}

function readPages(
  files: readonly SourceFile[],
  options: ReadingOptions,
  onPage: ReadingOptions['onPage'],
): readonly PageReading[] {
  return files.map((file, index) => {
    const page = readPage(file, options.style);
    onPage?.(index + 1, files.length);
    return page;
  });
}

/** Overlapping mends wait for the next round; more of them on one spot than this is no author's text. */
const MOST_ROUNDS = 100;

/** Some of a page's mends made, all of them, none, and one more. */
const MOST_LATELY = 4;

/** The manuscript as it is after the mends made so far. */
class Draft {
  reading: Reading;
  private pages: readonly PageReading[];
  /** The marks of pages that stay as they are. */
  private readonly known: KnownMarks = new WeakMap();
  private readonly rounds = new Map<string, Round[]>();
  private readonly mends = new Map<string, number>();
  /** The last readings of each page: trying mends by halves, most pages come again as they were. */
  private readonly lately = new Map<string, PageReading[]>();

  constructor(
    private readonly first: readonly PageReading[],
    private readonly options: ReadingOptions,
  ) {
    this.pages = first;
    this.reading = readBook(first, options, this.known);
  }

  /** As many of the choices as can be made without a new mark: all at once, else each half by itself. */
  accept(choices: readonly Choice[], made: readonly Choice[] = []): readonly Choice[] {
    if (choices.length === 0) return made;
    const all = [...made, ...choices];
    if (this.fits(all)) return all;
    if (choices.length === 1) return made;
    const middle = choices.length >> 1;
    return this.accept(choices.slice(middle), this.accept(choices.slice(0, middle), made));
  }

  make(choices: readonly Choice[]): void {
    const edits = editsByFile(choices);
    for (const { page } of this.pages) {
      const own = edits.get(page.path);
      if (own === undefined) continue;
      this.rounds.set(page.path, [...(this.rounds.get(page.path) ?? []), { text: page.text, edits: own }]);
    }
    for (const { mark } of choices) this.mends.set(mark.file, (this.mends.get(mark.file) ?? 0) + 1);
    this.pages = this.pagesWith(edits);
    this.reading = readBook(this.pages, this.options, this.known);
  }

  changed(): MendedFile[] {
    return this.first.flatMap(({ page: { path, text } }, index) => {
      const rounds = this.rounds.get(path);
      if (rounds === undefined) return [];
      const after = this.pages[index]!.page.text;
      return [{ path, before: text, after, rounds, mends: this.mends.get(path) ?? 0 }];
    });
  }

  private fits(choices: readonly Choice[]): boolean {
    const edits = editsByFile(choices);
    const pages = this.pagesWith(edits);
    // An edit that changes nothing would be made again and again.
    const idle = pages.some(
      (page, index) => edits.has(page.page.path) && page.page.text === this.pages[index]!.page.text,
    );
    if (idle) return false;
    const mended: readonly Mark[] = choices.map(({ mark }) => mark);
    return !leavesNewMarks(
      this.reading.marks,
      readBook(pages, this.options, this.known).marks,
      edits,
      mended,
    );
  }

  private pagesWith(edits: ReadonlyMap<string, readonly Edit[]>): PageReading[] {
    return this.pages.map((each) => {
      const own = edits.get(each.page.path);
      return own === undefined
        ? each
        : this.read({ path: each.page.path, text: applyEdits(each.page.text, own) });
    });
  }

  private read(file: SourceFile): PageReading {
    const lately = this.lately.get(file.path) ?? [];
    const same = lately.find(({ page }) => page.text === file.text);
    if (same !== undefined) return same;
    const read = readPage(file, this.options.style);
    this.lately.set(file.path, [read, ...lately].slice(0, MOST_LATELY));
    return read;
  }
}
