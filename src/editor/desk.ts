/** The books that the editor has open: one for each folder of its workspace, and one for each file that lies in none. */
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PageReading } from '../reading/types.js';
import { Book } from './book.js';
import type { Client } from './client.js';
import type { Disk } from './disk.js';
import { Places } from './places.js';

/** A file of a book, read: what every request looks at. */
export interface Sheet {
  readonly book: Book;
  readonly file: string;
  readonly uri: string;
  readonly read: PageReading;
  readonly places: Places;
}

export class Desk {
  private readonly folders = new Map<string, Book>();
  private readonly loose = new Map<string, Book>();

  constructor(
    readonly client: Client,
    readonly disk: Disk,
  ) {}

  get books(): Book[] {
    return [...this.folders.values(), ...this.loose.values()];
  }

  /** The books of folders. */
  get folderBooks(): Book[] {
    return [...this.folders.values()];
  }

  /** Opens a folder's book; its files are still to be gathered. Null where it is open, or is no folder of this machine. */
  addFolder(uri: string): Book | null {
    const folder = pathOf(uri);
    if (folder === null || this.folders.has(folder)) return null;
    const book = new Book(folder, this.disk);
    this.folders.set(folder, book);
    return book;
  }

  removeFolder(uri: string): Book | null {
    const folder = pathOf(uri);
    const book = folder === null ? undefined : this.folders.get(folder);
    if (folder === null || book === undefined) return null;
    book.closed = true;
    this.folders.delete(folder);
    return book;
  }

  /** The book that a file belongs to, and its path in it; a file of no folder gets a book of its own. */
  find(uri: string): { book: Book; file: string } {
    const absolute = pathOf(uri);
    const around = absolute === null ? null : this.bookOf(absolute);
    if (absolute !== null && around?.folder != null)
      return { book: around, file: relative(around.folder, absolute) };
    let book = this.loose.get(uri);
    if (book === undefined) {
      book = new Book(absolute === null ? null : path.dirname(absolute), this.disk);
      this.loose.set(uri, book);
    }
    return { book, file: absolute === null ? uri : path.basename(absolute) };
  }

  /** The same for a request, which opens no book: null where the file is in none. */
  look(uri: string): { book: Book; file: string } | null {
    const absolute = pathOf(uri);
    return this.loose.has(uri) || (absolute !== null && this.bookOf(absolute) !== null)
      ? this.find(uri)
      : null;
  }

  /** The book of the folder that a Markdown file lies in. */
  bookOf(absolute: string): Book | null {
    const folder = isMarkdown(absolute) ? this.folderOf(absolute) : null;
    return folder === null ? null : this.folders.get(folder)!;
  }

  /** Whether a file is a book by itself. */
  isLoose(uri: string): boolean {
    return this.loose.has(uri);
  }

  /** Forgets the book of a loose file, and gives it. */
  forget(uri: string): Book | null {
    const book = this.loose.get(uri) ?? null;
    if (book !== null) book.closed = true;
    this.loose.delete(uri);
    return book;
  }

  /** Whether a file found in the book's folder is its own, and not that of a folder of the workspace further in. */
  belongs(book: Book, file: string): boolean {
    return book.folder !== null && this.folderOf(path.join(book.folder, file)) === book.folder;
  }

  /** What has been read of a file; null where nothing has. */
  sheetOf(book: Book, file: string): Sheet | null {
    const read = book.page(file);
    if (read === null) return null;
    const places = new Places(read.page.text, this.client.encoding, read.page.lines);
    return { book, file, uri: book.uri(file), read, places };
  }

  /** The innermost folder of the workspace around a file. */
  private folderOf(absolute: string): string | null {
    let found: string | null = null;
    for (const folder of this.folders.keys()) {
      if (!isInside(folder, absolute) || relative(folder, absolute).split('/').includes('node_modules'))
        continue;
      if (found === null || folder.length > found.length) found = folder;
    }
    return found;
  }
}

/** The path of a file or folder; null for a name that is none, as of a file that was never saved. */
export function pathOf(uri: string): string | null {
  if (!uri.startsWith('file:')) return null;
  try {
    return path.resolve(fileURLToPath(uri));
  } catch {
    return null;
  }
}

function isMarkdown(file: string): boolean {
  return /\.(md|markdown)$/i.test(file);
}

function isInside(folder: string, absolute: string): boolean {
  const from = path.relative(folder, absolute);
  return from !== '' && from !== '..' && !from.startsWith(`..${path.sep}`) && !path.isAbsolute(from);
}

function relative(folder: string, absolute: string): string {
  return path.relative(folder, absolute).split(path.sep).join('/');
}
