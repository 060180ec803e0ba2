/** The extension for Visual Studio Code is packed whole: it says what it is for, and finds all that it needs in itself. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { version } from '../../src/version.js';
import { manuscript } from '../cli/run.js';

let folder: string;
let names: string[];

beforeAll(() => {
  folder = manuscript({});
  const packed = path.join(folder, 'tamis.vsix');
  const script = fileURLToPath(new URL('../../src/editor/vscode/pack.mjs', import.meta.url));
  const run = spawnSync(process.execPath, [script, packed], { encoding: 'utf8' });
  if (run.status !== 0) throw new Error(run.stderr);
  const files = unzipSync(readFileSync(packed));
  names = Object.keys(files);
  for (const [name, bytes] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
    writeFileSync(path.join(folder, name), bytes);
  }
}, 60_000);

describe('the extension', () => {
  it('begins with Markdown files, brings no grammar, and has the version of the package', () => {
    const { activationEvents, main, contributes, ...own } = JSON.parse(
      readFileSync(path.join(folder, 'extension/package.json'), 'utf8'),
    );
    expect(own.version).toBe(version);
    expect(activationEvents).toEqual(['onLanguage:markdown']);
    expect(names).toContain(`extension/${path.posix.normalize(main)}`);
    expect(contributes).not.toHaveProperty('grammars');
    for (const { fileMatch, url } of contributes.yamlValidation ?? []) {
      expect(fileMatch).toBe('house-style.yaml');
      expect(names).toContain(`extension/${path.posix.normalize(url)}`);
    }
  });

  it('has a manifest that names it, and a type for every kind of file', () => {
    const manifest = readFileSync(path.join(folder, 'extension.vsixmanifest'), 'utf8');
    expect(manifest).toContain(
      `<Identity Language="en-US" Id="tamis" Version="${version}" Publisher="tamis" />`,
    );
    const types = readFileSync(path.join(folder, '[Content_Types].xml'), 'utf8');
    const extensions = new Set(
      names.filter((name) => !name.startsWith('[')).map((name) => path.extname(name)),
    );
    for (const extension of extensions)
      if (extension !== '') expect(types).toContain(`Extension="${extension}"`);
  });

  it('loads with nothing but itself and the editor, and starts the command that the settings name', () => {
    // Stands in for the editor: whatever is asked of it is a class that does nothing.
    const script = `
      const Module = require('node:module');
      const anything = () => new Proxy(class {}, {
        get: (target, name) => name in target || typeof name === 'symbol' ? target[name] : (target[name] = anything()),
        apply: () => anything(),
      });
      const vscode = anything();
      vscode.version = '1.91.0';
      vscode.EventEmitter = class { event = () => ({ dispose() {} }); fire() {} dispose() {} };
      vscode.workspace.getConfiguration = () => ({ get: () => 'no-such-tamis' });
      let told = '';
      vscode.window.showErrorMessage = (message) => { told = message; };
      const load = Module._load;
      Module._load = (name, ...rest) => name === 'vscode' ? vscode : load(name, ...rest);
      const { activate, deactivate } = require('./extension/extension.cjs');
      activate().then(() => console.log(typeof deactivate, told), (error) => console.log(error));
      setTimeout(() => process.exit(), 5000).unref();
    `;
    const run = spawnSync(process.execPath, ['-e', script], { cwd: folder, encoding: 'utf8', env: {} });
    expect(run.stdout, run.stderr).toContain('function tamis could not be started with "no-such-tamis".');
  });
});
