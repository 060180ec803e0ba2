/** Joins the language server to this machine: standard input and output, the disk, and the explanations of the rules. */
import fs from 'node:fs';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { rules } from '../../rules/index.js';
import type { Disk } from '../editor/disk.js';
import { serve } from '../editor/serve.js';
import { undecided } from '../manuscript/house-style.js';
import { decode } from './decode.js';
import { Failure } from './failure.js';
import { gather } from './files.js';
import { houseStyle } from './house.js';

/** Runs until the editor ends it. */
export function serveEditor(): void {
  // A request that the editor refuses must not end the server; what it was is for the editor's log, which stderr goes to.
  process.on('unhandledRejection', (reason) => process.stderr.write(`tamis: ${String(reason)}\n`));
  serve(createConnection(ProposedFeatures.all, process.stdin, process.stdout), disk);
}

const disk: Disk = {
  gather: (folder) => gather([folder]).files,
  text: (file) => {
    try {
      const decoded = decode(fs.readFileSync(file));
      return 'text' in decoded ? decoded.text : null;
    } catch {
      return null;
    }
  },
  style: async (folder) => {
    try {
      const names = rules.map((rule) => rule.name);
      const told: string[] = [];
      const tell = (line: string) => told.push(line);
      const style = await houseStyle({ folders: [folder], root: folder }, undefined, names, tell);
      return { style, trouble: told.length === 0 ? null : told.join('\n') };
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      return { style: undecided, trouble: error.message };
    }
  },
  watch: watchFolder,
  explanation: (rule) => {
    const file = new URL(`../../explanations/${rule}.md`, import.meta.url);
    return fs.existsSync(file) ? file.href : null;
  },
};

/** Files are saved in several strokes; what follows within this time belongs together. */
const strokeMilliseconds = 100;

function watchFolder(folder: string, onChange: () => void): () => void {
  let timer: NodeJS.Timeout | undefined;
  try {
    const watcher = fs.watch(folder, { recursive: true }, (_, name) => {
      if (name !== null && !/\.(md|markdown|yaml)$/i.test(name)) return;
      clearTimeout(timer);
      timer = setTimeout(onChange, strokeMilliseconds);
    });
    // A folder that is taken away under the watch ends it, and not the server.
    watcher.on('error', () => watcher.close());
    return () => {
      clearTimeout(timer);
      watcher.close();
    };
  } catch {
    return () => {};
  }
}
