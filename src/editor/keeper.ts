/** Keeps the books on the desk in step: with what is typed, with the folders of the workspace, with the disk and its house style. */
import path from 'node:path';
import {
  type Connection,
  DidChangeWatchedFilesNotification,
  FileChangeType,
  type FileEvent,
  MessageType,
  ShowMessageNotification,
  type ShowMessageParams,
  type TextDocuments,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Book } from './book.js';
import { type Desk, pathOf } from './desk.js';
import type { Publisher } from './publisher.js';

export class Keeper {
  /** The book that each open file lies in. */
  private readonly lying = new Map<string, { readonly book: Book; readonly file: string }>();
  private readonly stopWatching = new Map<Book, () => void>();
  private readonly told = new Map<Book, string>();

  constructor(
    private readonly connection: Connection,
    private readonly documents: TextDocuments<TextDocument>,
    private readonly desk: Desk,
    private readonly publisher: Publisher,
  ) {
    documents.onDidChangeContent(({ document }) => this.type(document));
    documents.onDidClose(({ document }) => this.close(document.uri));
    connection.onDidChangeWatchedFiles(({ changes }) => this.touched(changes));
  }

  /** The editor is ready to be asked and told. */
  begin(folders: readonly string[]): void {
    const { client } = this.desk;
    if (client.watchesFiles) {
      void this.connection.client.register(DidChangeWatchedFilesNotification.type, {
        watchers: [{ globPattern: '**/*.{md,markdown}' }, { globPattern: `**/${HOUSE_STYLE}` }],
      });
    }
    if (client.folders) {
      this.connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
        for (const { uri } of removed) this.removeFolder(uri);
        this.addFolders(added.map(({ uri }) => uri));
      });
    }
    this.addFolders(folders);
  }

  private addFolders(uris: readonly string[]): void {
    const added = uris.flatMap((uri) => this.desk.addFolder(uri) ?? []);
    this.moveOpenFiles();
    for (const book of added) {
      if (!this.desk.client.watchesFiles && book.folder !== null)
        this.stopWatching.set(
          book,
          this.desk.disk.watch(book.folder, () => this.gather(book)),
        );
      this.gather(book, this.desk.client.progress);
    }
    if (added.length > 0) this.gatherAgain((book) => !added.includes(book));
  }

  /** A folder further in takes its files out of the book around it, and gives them back when it goes. */
  private gatherAgain(which: (book: Book) => boolean): void {
    for (const book of this.desk.folderBooks) if (which(book)) this.gather(book);
  }

  private removeFolder(uri: string): void {
    const book = this.desk.removeFolder(uri);
    if (book === null) return;
    this.stopWatching.get(book)?.();
    this.stopWatching.delete(book);
    this.publisher.withdraw(book);
    this.moveOpenFiles();
    this.gatherAgain(() => true);
  }

  /** Open files lie in the book of the innermost folder around them, also when folders come and go. */
  private moveOpenFiles(): void {
    for (const document of this.documents.all()) {
      const before = this.lying.get(document.uri);
      const now = this.desk.find(document.uri);
      if (before?.book === now.book) continue;
      if (before !== undefined) this.takeOut(document.uri, before);
      this.type(document);
    }
  }

  private type(document: TextDocument): void {
    const { uri, version } = document;
    const place = this.desk.find(uri);
    const isNew = this.lying.get(uri)?.book !== place.book;
    this.lying.set(uri, place);
    place.book.type(place.file, uri, document.getText());
    this.publisher.changed(place.book, { uri, version });
    // A folder's book has its style already; that of a single file begins with it.
    if (isNew && this.desk.isLoose(uri)) this.next(place.book, () => place.book.decide());
  }

  private close(uri: string): void {
    const place = this.lying.get(uri);
    this.lying.delete(uri);
    if (place !== undefined) this.takeOut(uri, place);
  }

  private takeOut(uri: string, { book, file }: { readonly book: Book; readonly file: string }): void {
    if (this.desk.forget(uri) === book) {
      this.publisher.withdraw(book);
      return;
    }
    book.close(file);
    this.publisher.changed(book);
  }

  /** Reads a book's folder, again where it has been read before. */
  private gather(book: Book, shown = false): void {
    this.next(book, () =>
      this.telling(shown, async (onSlice) => {
        await book.decide();
        await book.gather((file) => this.desk.belongs(book, file), onSlice);
      }),
    );
  }

  /** Does something that takes its time with a book, after what is still being done; then shows what came of it. */
  private next(book: Book, work: () => Promise<void>): void {
    book.ready = book.ready
      .then(work)
      .catch((error) => this.connection.console.error(`The folder could not be read: ${String(error)}`))
      .then(() => this.tellTrouble(book));
    this.publisher.changed(book);
  }

  /** Does the work, with its progress shown in the editor where that is wanted. */
  private async telling(
    shown: boolean,
    work: (onSlice: (done: number, all: number) => void) => Promise<void>,
  ): Promise<void> {
    const progress = shown ? await this.connection.window.createWorkDoneProgress() : null;
    progress?.begin('Reading the manuscript', 0);
    try {
      await work((done, all) => progress?.report(Math.floor((100 * done) / all), `${done} of ${all} files`));
    } finally {
      progress?.done();
    }
  }

  /** The editor saw files change on the disk. */
  private touched(changes: readonly FileEvent[]): void {
    const paths = changes.flatMap(({ uri }) => pathOf(uri) ?? []);
    if (paths.some((absolute) => path.basename(absolute) === HOUSE_STYLE)) this.restyle();
    // Files come and go by the hundred when a book's versions are changed: each folder is read once then.
    const again = new Set<Book>();
    for (const { uri, type } of changes) {
      const absolute = pathOf(uri);
      const book = absolute === null ? null : this.desk.bookOf(absolute);
      if (book === null) continue;
      if (type !== FileChangeType.Changed) again.add(book);
      else {
        book.reload(this.desk.find(uri).file);
        this.publisher.changed(book);
      }
    }
    for (const book of again) this.gather(book);
  }

  /** The nearest house style upwards holds, so one that comes or goes may concern any book. */
  private restyle(): void {
    for (const book of this.desk.books) this.next(book, () => book.decide());
  }

  /** What is the matter with the house style is told once, and again when it changes. */
  private tellTrouble(book: Book): void {
    if (book.trouble === (this.told.get(book) ?? null)) return;
    if (book.trouble === null) this.told.delete(book);
    else {
      this.told.set(book, book.trouble);
      const params: ShowMessageParams = { type: MessageType.Warning, message: book.trouble };
      void this.connection.sendNotification(ShowMessageNotification.type, params);
    }
  }
}

const HOUSE_STYLE = 'house-style.yaml';
