/** What comes of reading a manuscript. */
import type { Mark, Weight } from '../../rules/rule.js';
import type { Book, Dish } from '../kitchen/types.js';
import type { HouseStyle } from '../manuscript/house-style.js';
import type { Page, Stet } from '../manuscript/types.js';

/** What one file says by itself: it stays as it is while other files change. */
export interface PageReading {
  readonly page: Page;
  readonly dishes: readonly Dish[];
  readonly unclear: Book['unclear'];
}

export interface Stetted {
  readonly mark: Mark;
  readonly reason: string;
  readonly stet: Stet;
}

export interface Reading {
  readonly pages: readonly Page[];
  readonly dishes: readonly Dish[];
  /** In the order of files and places. */
  readonly marks: readonly Mark[];
  /** Marks that a stet silences, with the author's reason and the stet itself. */
  readonly stetted: readonly Stetted[];
  /** Of the standing marks. */
  readonly counts: Readonly<Record<Weight, number>>;
  /** Marks that an earlier reading had already; left out where there was none to compare with. */
  readonly held?: readonly Mark[];
  /** The decisions by which it was read. */
  readonly style: HouseStyle;
}

export interface ReadingOptions {
  /** The names of the only rules to run; all when left out. */
  readonly only?: readonly string[];
  /** The book's decisions; a book that has made none when left out. */
  readonly style?: HouseStyle;
  /** Called after each file, for progress. */
  readonly onPage?: (done: number, all: number) => void;
}
