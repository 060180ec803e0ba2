/** One manuscript on the desk: the files of a folder, with the texts that are open in the editor in place of those on the disk. */
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Mark } from '../../rules/rule.js';
import { type HouseStyle, undecided } from '../manuscript/house-style.js';
import { byName } from '../manuscript/order.js';
import { Manuscript } from '../reading/manuscript.js';
import type { PageReading, Reading } from '../reading/types.js';
import type { Disk } from './disk.js';

export class Book {
  private readonly manuscript = new Manuscript(undecided);
  /** Paths to the client's own names of the files that are open. */
  private readonly open = new Map<string, string>();
  /** The same for files that are not, made once: at each keystroke every file is asked for. */
  private readonly names = new Map<string, string>();
  private marks = new WeakMap<Reading, ReadonlyMap<string, readonly Mark[]>>();
  /** The house style as it was last decided. */
  style: HouseStyle = undecided;
  /** What is the matter with the house style's file. */
  trouble: string | null = null;
  /** The house style and the files of the folder have been read, and nothing else is being read. */
  ready: Promise<void> = Promise.resolve();
  /** It was taken from the desk. */
  closed = false;

  /** A file that belongs to no folder of the editor is a book by itself, with the folder it lies in; null for one that was never saved. */
  constructor(
    readonly folder: string | null,
    private readonly disk: Disk,
  ) {}

  get reading(): Reading {
    return this.manuscript.reading();
  }

  page(file: string) {
    return this.manuscript.page(file);
  }

  files(): Iterable<string> {
    return this.manuscript.files();
  }

  /** What has been read of each file, in the order of the manuscript. */
  pages(): readonly PageReading[] {
    return [...this.manuscript.files()].sort(byName).map((file) => this.manuscript.page(file)!);
  }

  /** The marks on a page, in their order. */
  marksOn(file: string): readonly Mark[] {
    const { reading } = this;
    let byFile = this.marks.get(reading);
    if (byFile === undefined) {
      const grouped = new Map<string, Mark[]>();
      for (const mark of reading.marks) {
        const others = grouped.get(mark.file);
        if (others === undefined) grouped.set(mark.file, [mark]);
        else others.push(mark);
      }
      byFile = grouped;
      this.marks.set(reading, byFile);
    }
    return byFile.get(file) ?? [];
  }

  /** The client's name of a file. */
  uri(file: string): string {
    const known = this.open.get(file) ?? this.names.get(file);
    if (known !== undefined) return known;
    const name = pathToFileURL(path.join(this.folder ?? '', file)).href;
    this.names.set(file, name);
    return name;
  }

  /** The editor's text of a file, which wins over the disk's until it is closed. */
  type(file: string, uri: string, text: string): void {
    this.open.set(file, uri);
    this.manuscript.set({ path: file, text });
  }

  close(file: string): void {
    this.open.delete(file);
    this.reload(file);
  }

  /** Takes a file's text from the disk, unless it is open. */
  reload(file: string): void {
    if (this.open.has(file)) return;
    const text = this.folder === null ? null : this.disk.text(path.join(this.folder, file));
    if (text === null) this.manuscript.remove(file);
    else this.manuscript.set({ path: file, text });
  }

  /** Reads the folder, in slices so that the editor is answered in between; what is gone from it goes from the book. */
  async gather(
    belongs: (file: string) => boolean,
    onSlice: (done: number, all: number) => void,
  ): Promise<void> {
    if (this.folder === null) return;
    const files = this.disk.gather(this.folder).filter((file) => belongs(file.path));
    const gone = new Set(this.manuscript.files());
    let rested = performance.now();
    for (const [index, file] of files.entries()) {
      gone.delete(file.path);
      if (!this.open.has(file.path)) this.manuscript.set(file);
      this.manuscript.page(file.path);
      if (performance.now() - rested < sliceMilliseconds) continue;
      onSlice(index + 1, files.length);
      await new Promise(setImmediate);
      if (this.closed) return;
      rested = performance.now();
    }
    for (const file of gone) if (!this.open.has(file)) this.manuscript.remove(file);
  }

  /** Asks for the house style, again when it may have changed. */
  async decide(): Promise<void> {
    if (this.folder === null) return;
    const { style, trouble } = await this.disk.style(this.folder);
    this.trouble = trouble;
    if (JSON.stringify(style) === JSON.stringify(this.style)) return;
    this.style = style;
    this.manuscript.decide(style);
  }
}

/** An answer that waits this long is still felt as prompt. */
const sliceMilliseconds = 50;
