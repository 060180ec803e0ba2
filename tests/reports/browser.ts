/** Finds a Chromium that the machine has; none is ever fetched. */
import { accessSync, constants } from 'node:fs';
import path from 'node:path';

/** Its path, or null where there is none: the tests of the page then say that they are skipped. */
export function chromiumPath(): string | null {
  const folders = (process.env.PATH ?? '').split(path.delimiter).filter((folder) => folder !== '');
  for (const folder of folders) {
    for (const name of ['chromium', 'chromium-browser', 'google-chrome']) {
      const file = path.join(folder, name);
      try {
        accessSync(file, constants.X_OK);
        return file;
      } catch {}
    }
  }
  return null;
}
