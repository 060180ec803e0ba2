/** An editor for tests: starts the built server and speaks to it over stdio with a client library of the protocol. */
import { type ChildProcess, spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import {
  type ClientCapabilities,
  createProtocolConnection,
  type Diagnostic,
  type InitializeResult,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  type TextDocumentContentChangeEvent,
} from 'vscode-languageserver-protocol/node';
import { command } from '../cli/run.js';

/** The demo manuscript, draft or corrected. */
export const demo = (which: 'draft' | 'corrected'): string =>
  fileURLToPath(new URL(`../../fixtures/lock-keepers-table/${which}/`, import.meta.url));

/** How many milliseconds a server may take to start or stop on a machine that is busy with other tests. */
export const BUSY = 60_000;

export const uriOf = (...parts: string[]): string => pathToFileURL(path.join(...parts)).href;

/** What a modern editor can do; tests take away what they try without. */
export const able: ClientCapabilities = {
  general: { positionEncodings: ['utf-16'] },
  textDocument: {
    publishDiagnostics: { relatedInformation: true, codeDescriptionSupport: true, versionSupport: true },
    definition: { linkSupport: true },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    hover: { contentFormat: ['markdown', 'plaintext'] },
  },
  workspace: { workspaceFolders: true, workspaceEdit: { documentChanges: true } },
};

export class Editor {
  /** The last diagnostics of each file, and the version that they are about. */
  readonly shown = new Map<string, PublishDiagnosticsParams>();
  readonly versions = new Map<string, number>();
  /** How often the server asked that diagnostics be asked for again. */
  refreshed = 0;
  private waiting: (() => void)[] = [];

  private constructor(
    readonly server: ChildProcess,
    readonly connection: ProtocolConnection,
    readonly answer: InitializeResult,
  ) {}

  static async start(folders: readonly string[], capabilities: ClientCapabilities = able): Promise<Editor> {
    const server = spawn(process.execPath, [command, 'serve', '--stdio'], {
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    const connection = createProtocolConnection(server.stdout, server.stdin);
    connection.listen();
    const answer: InitializeResult = await connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: null,
      capabilities,
      workspaceFolders: folders.map((folder) => ({ uri: uriOf(folder), name: path.basename(folder) })),
    });
    const editor = new Editor(server, connection, answer);
    const wakeAll = () => {
      for (const wake of editor.waiting.splice(0)) wake();
    };
    connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
      editor.shown.set(params.uri, params);
      wakeAll();
    });
    connection.onRequest('workspace/diagnostic/refresh', () => {
      editor.refreshed++;
      wakeAll();
      return null;
    });
    connection.onRequest('client/registerCapability', () => null);
    await connection.sendNotification('initialized', {});
    return editor;
  }

  /** Opens these folders, and leaves those. */
  async enter(added: readonly string[], removed: readonly string[]): Promise<void> {
    const named = (folder: string) => ({ uri: uriOf(folder), name: path.basename(folder) });
    await this.connection.sendNotification('workspace/didChangeWorkspaceFolders', {
      event: { added: added.map(named), removed: removed.map(named) },
    });
  }

  ask<Answer>(method: string, params: unknown): Promise<Answer> {
    return this.connection.sendRequest(method, params);
  }

  async open(uri: string, text: string): Promise<void> {
    this.versions.set(uri, 1);
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'markdown', version: 1, text },
    });
  }

  async change(uri: string, contentChanges: TextDocumentContentChangeEvent[]): Promise<void> {
    const version = this.versions.get(uri)! + 1;
    this.versions.set(uri, version);
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges,
    });
  }

  async close(uri: string): Promise<void> {
    await this.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  }

  /** The diagnostics of the file as it was typed last. */
  async settled(uri: string): Promise<readonly Diagnostic[]> {
    await this.until(() => this.shown.get(uri)?.version === this.versions.get(uri));
    return this.shown.get(uri)!.diagnostics;
  }

  /** Waits until what the server sent is as wished. */
  async until(wished: () => boolean): Promise<void> {
    while (!wished()) await new Promise<void>((wake) => this.waiting.push(wake));
  }

  async stop(): Promise<number | null> {
    const ended = new Promise<number | null>((done) => this.server.once('exit', done));
    await this.connection.sendRequest('shutdown');
    await this.connection.sendNotification('exit');
    const code = await ended;
    this.connection.dispose();
    return code;
  }
}

/** The files of a manuscript, as paths with slashes and texts. */
export function filesIn(folder: string): { path: string; text: string }[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.md'))
    .map((file) => ({ path: file, text: readFileSync(path.join(folder, file), 'utf8') }));
}
