/** What the editor at the other end says it can do, and what the server offers it. */
import {
  type ClientCapabilities,
  CodeActionKind,
  type ServerCapabilities,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { FIX_ALL } from './code-actions.js';
import type { Encoding } from './places.js';
import { SELECT } from './stet.js';

export interface Client {
  readonly encoding: Encoding;
  /** It asks for diagnostics itself; else they are sent. */
  readonly pulls: boolean;
  readonly refreshesDiagnostics: boolean;
  readonly relatedPlaces: boolean;
  readonly explanations: boolean;
  readonly documentChanges: boolean;
  readonly snippetEdits: boolean;
  /** It asks for the edits of an action when that is taken. */
  readonly resolvesEdits: boolean;
  readonly showsDocuments: boolean;
  readonly links: boolean;
  readonly nestedSymbols: boolean;
  readonly markdown: boolean;
  readonly watchesFiles: boolean;
  readonly progress: boolean;
  readonly folders: boolean;
}

export function clientOf({ general, textDocument, workspace, window }: ClientCapabilities): Client {
  const encodings = general?.positionEncodings ?? [];
  return {
    // The client lists what it likes best first.
    encoding: encodings.find((each): each is Encoding => each === 'utf-16' || each === 'utf-8') ?? 'utf-16',
    pulls: textDocument?.diagnostic !== undefined,
    refreshesDiagnostics: workspace?.diagnostics?.refreshSupport === true,
    relatedPlaces:
      (textDocument?.publishDiagnostics ?? textDocument?.diagnostic)?.relatedInformation === true,
    explanations:
      (textDocument?.publishDiagnostics ?? textDocument?.diagnostic)?.codeDescriptionSupport === true,
    documentChanges: workspace?.workspaceEdit?.documentChanges === true,
    snippetEdits: workspace?.workspaceEdit?.snippetEditSupport === true,
    resolvesEdits: textDocument?.codeAction?.resolveSupport?.properties.includes('edit') === true,
    showsDocuments: window?.showDocument?.support === true,
    links: textDocument?.definition?.linkSupport === true,
    nestedSymbols: textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport === true,
    markdown: textDocument?.hover?.contentFormat?.[0] === 'markdown',
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    progress: window?.workDoneProgress === true,
    folders: workspace?.workspaceFolders === true,
  };
}

export function offered({ encoding, pulls, folders, resolvesEdits }: Client): ServerCapabilities {
  return {
    positionEncoding: encoding,
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    ...(pulls
      ? {
          diagnosticProvider: {
            identifier: 'tamis',
            interFileDependencies: true,
            workspaceDiagnostics: true,
          },
        }
      : {}),
    codeActionProvider: {
      codeActionKinds: [CodeActionKind.QuickFix, FIX_ALL],
      resolveProvider: resolvesEdits,
    },
    executeCommandProvider: { commands: [SELECT] },
    hoverProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    documentSymbolProvider: true,
    workspaceSymbolProvider: true,
    completionProvider: { triggerCharacters: [] },
    workspace: folders ? { workspaceFolders: { supported: true, changeNotifications: true } } : {},
  };
}
