/** Keeps what has been read of a manuscript while it changes, so that a change costs no more than the page it is on and the rules of the book. */
import type { HouseStyle } from '../manuscript/house-style.js';
import { byName } from '../manuscript/order.js';
import type { SourceFile } from '../manuscript/types.js';
import { type KnownMarks, readBook, readPage } from './read.js';
import type { PageReading, Reading } from './types.js';

export class Manuscript {
  private readonly texts = new Map<string, SourceFile>();
  /** Read when somebody asks: several changes of one text may come before that. */
  private readonly pages = new Map<string, PageReading>();
  /** The marks of recipe rules, which stay while page and style do. */
  private known: KnownMarks = new WeakMap();
  /** The paths in their order, until a file comes or goes. */
  private inOrder: readonly string[] | null = null;
  private whole: Reading | null = null;

  constructor(private style: HouseStyle) {}

  /** Puts a file in, or its new text in place of the old one. */
  set(file: SourceFile): void {
    if (this.texts.get(file.path)?.text === file.text) return;
    if (!this.texts.has(file.path)) this.inOrder = null;
    this.texts.set(file.path, file);
    this.pages.delete(file.path);
    this.whole = null;
  }

  remove(path: string): void {
    if (!this.texts.delete(path)) return;
    this.inOrder = null;
    this.pages.delete(path);
    this.whole = null;
  }

  /** Reads by another style from now on: all anew, for a style may say what is read at all. */
  decide(style: HouseStyle): void {
    this.style = style;
    this.pages.clear();
    this.known = new WeakMap();
    this.whole = null;
  }

  /** The paths of its files, in no order. */
  files(): Iterable<string> {
    return this.texts.keys();
  }

  /** What has been read of a file; null where the manuscript has none of that name. */
  page(path: string): PageReading | null {
    const file = this.texts.get(path);
    if (file === undefined) return null;
    let page = this.pages.get(path);
    if (page === undefined) {
      page = readPage(file, this.style);
      this.pages.set(path, page);
    }
    return page;
  }

  /** The same as a fresh reading of all its files in their order. */
  reading(): Reading {
    if (this.whole === null) {
      this.inOrder ??= [...this.texts.keys()].sort(byName);
      const pages = this.inOrder.map((path) => this.page(path)!);
      this.whole = readBook(pages, { style: this.style }, this.known);
    }
    return this.whole;
  }
}
