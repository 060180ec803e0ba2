/** The extension for Visual Studio Code: starts `tamis serve` for Markdown files, and is nothing more than its client. */
import fs = require('node:fs');
import path = require('node:path');
import vscode = require('vscode');
import languageclient = require('vscode-languageclient/node');

export = { activate, deactivate };

let client: languageclient.LanguageClient | undefined;

async function activate(): Promise<void> {
  const command = commandToRun();
  // On Windows, what npm installs is a script that only a shell can run, and a shell parts a path at its blanks.
  const shell = process.platform === 'win32';
  const run = shell ? `"${command}"` : command;
  client = new languageclient.LanguageClient(
    'tamis',
    'tamis',
    { command: run, args: ['serve'], options: { shell } },
    {
      documentSelector: [
        { language: 'markdown', scheme: 'file' },
        { language: 'markdown', scheme: 'untitled' },
      ],
    },
  );
  try {
    await client.start();
  } catch {
    void vscode.window.showErrorMessage(
      `tamis could not be started with "${command}". Install it, or set "tamis.command" to where it is.`,
    );
  }
}

async function deactivate(): Promise<void> {
  await client?.stop();
}

/** What the settings name; else the tamis of the manuscript's own folder; else the one that is installed for all. */
function commandToRun(): string {
  const set = vscode.workspace.getConfiguration('tamis').get<string>('command');
  if (set) return set;
  const name = process.platform === 'win32' ? 'tamis.cmd' : 'tamis';
  for (const folder of vscode.workspace.workspaceFolders ?? []) {
    const own = path.join(folder.uri.fsPath, 'node_modules', '.bin', name);
    // A folder that nobody has said to trust must not choose what is run.
    if (vscode.workspace.isTrusted && fs.existsSync(own)) return own;
  }
  return 'tamis';
}
