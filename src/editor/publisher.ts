/** Sends diagnostics to editors that do not ask for them, and tells those that do when to ask again. */
import { type Connection, DiagnosticRefreshRequest } from 'vscode-languageserver';
import type { Book } from './book.js';
import type { Desk } from './desk.js';
import { type Diagnostics, NOTHING } from './diagnostics.js';

export class Publisher {
  /** For each book what its files last showed, by the client's names of them. */
  private readonly sent = new Map<Book, Map<string, string>>();
  /** Changed since the last sending: books, and in them the files that were typed in, with the version that the editor knows. */
  private readonly waiting = new Map<Book, Map<string, number>>();
  private timer: NodeJS.Timeout | null = null;
  private lastMilliseconds = 0;

  constructor(
    private readonly connection: Connection,
    private readonly desk: Desk,
    private readonly diagnostics: Diagnostics,
  ) {}

  /** Something in the book has changed; a file that was typed in comes with its version. */
  changed(book: Book, typed?: { readonly uri: string; readonly version: number }): void {
    const files = this.waiting.get(book) ?? new Map<string, number>();
    if (typed !== undefined) files.set(typed.uri, typed.version);
    this.waiting.set(book, files);
    if (this.timer !== null) clearTimeout(this.timer);
    // A book in one large file takes long to read: then the reading waits until the typing pauses.
    const isSlow = this.lastMilliseconds > promptMilliseconds;
    this.timer = setTimeout(() => void this.send(), isSlow ? pauseMilliseconds : 0);
  }

  /** Takes back all that was sent for a book that is gone from the desk. */
  withdraw(book: Book): void {
    for (const uri of this.sent.get(book)?.keys() ?? []) this.clear(uri);
    this.sent.delete(book);
    this.waiting.delete(book);
  }

  private async send(): Promise<void> {
    this.timer = null;
    const waiting = [...this.waiting];
    this.waiting.clear();
    await Promise.all(
      waiting.map(async ([book, typed]) => {
        await book.ready;
        if (book.closed) return;
        const started = performance.now();
        this.show(book, typed);
        this.lastMilliseconds = performance.now() - started;
      }),
    );
  }

  private show(book: Book, typed: ReadonlyMap<string, number>): void {
    const before = this.sent.get(book) ?? new Map<string, string>();
    const now = new Map<string, string>();
    this.sent.set(book, now);
    let elsewhere = false;
    for (const { path: file } of book.reading.pages) {
      const uri = book.uri(file);
      const { id, items } = this.diagnostics.of(book, file);
      const version = typed.get(uri);
      const isNew = (before.get(uri) ?? NOTHING.id) !== id;
      now.set(uri, id);
      before.delete(uri);
      if (isNew && version === undefined) elsewhere = true;
      // Who types is answered each time, so that the editor knows that nothing is out of date.
      if (this.desk.client.pulls || (!isNew && version === undefined)) continue;
      const params = { uri, diagnostics: [...items] };
      void this.connection.sendDiagnostics(version === undefined ? params : { ...params, version });
    }
    for (const [uri, id] of before) if (id !== NOTHING.id) this.clear(uri);
    // An editor that asks does so by itself for the file that is typed in; what changed elsewhere has to be announced.
    if (!elsewhere || !this.desk.client.pulls || !this.desk.client.refreshesDiagnostics) return;
    // An editor that refuses goes on as before.
    this.connection.sendRequest(DiagnosticRefreshRequest.type).catch(() => {});
  }

  private clear(uri: string): void {
    if (!this.desk.client.pulls) void this.connection.sendDiagnostics({ uri, diagnostics: [] });
  }
}

/** A reading that is quicker is not felt, and need not wait for a pause. */
const promptMilliseconds = 100;
/** Who types on presses the next key sooner than that. */
const pauseMilliseconds = 300;
