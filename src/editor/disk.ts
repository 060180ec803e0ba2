/** What the server asks of the machine it runs on; the command line has the answers, a test may have others. */
import type { HouseStyle } from '../manuscript/house-style.js';
import type { SourceFile } from '../manuscript/types.js';

export interface Disk {
  /** The manuscript in a folder, as `tamis read` would find it. */
  readonly gather: (folder: string) => readonly SourceFile[];
  /** The text of a file; null where it is gone or is no text. */
  readonly text: (file: string) => string | null;
  /** The house style that holds in a folder, and what is the matter with its file where something is. */
  readonly style: (
    folder: string,
  ) => Promise<{ readonly style: HouseStyle; readonly trouble: string | null }>;
  /** Calls back when anything in the folder has changed, for clients that do not watch files; gives the way to stop. */
  readonly watch: (folder: string, onChange: () => void) => () => void;
  /** Where the explanation of a rule can be opened; null where the package has none. */
  readonly explanation: (rule: string) => string | null;
}
