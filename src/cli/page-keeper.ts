/** Keeps what each file of a manuscript says by itself, so that only files whose text has changed are read again. */
import type { SourceFile } from '../manuscript/types.js';
import { readPage } from '../reading/read.js';
import type { PageReading } from '../reading/types.js';

export class PageKeeper {
  private kept = new Map<string, PageReading>();

  /** The pages in the order of the files, and whether any differs from what was there before. */
  read(files: readonly SourceFile[]): { readonly pages: readonly PageReading[]; readonly changed: boolean } {
    const before = [...this.kept.values()];
    const pages = files.map((file) => {
      const known = this.kept.get(file.path);
      return known?.page.text === file.text ? known : readPage(file);
    });
    this.kept = new Map(pages.map((page) => [page.page.path, page]));
    const changed = pages.length !== before.length || pages.some((page, index) => page !== before[index]);
    return { pages, changed };
  }
}
