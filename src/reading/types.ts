/** What comes of reading a manuscript. */
import type { Mark, Weight } from '../../rules/rule.js';
import type { Dish } from '../kitchen/types.js';
import type { Page } from '../manuscript/types.js';

export interface Reading {
  readonly pages: readonly Page[];
  readonly dishes: readonly Dish[];
  /** In the order of files and places. */
  readonly marks: readonly Mark[];
  /** Marks that a stet silences, with the author's reason. */
  readonly stetted: readonly { readonly mark: Mark; readonly reason: string }[];
  readonly counts: Readonly<Record<Weight, number>>;
}

export interface ReadingOptions {
  /** The names of the only rules to run; all when left out. */
  readonly only?: readonly string[];
  /** Called after each file, for progress. */
  readonly onPage?: (done: number, all: number) => void;
}
