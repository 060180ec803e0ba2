/** Puts edits into the form that the client takes. */
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { Edit } from '../../rules/rule.js';
import type { Client } from './client.js';
import type { Sheet } from './desk.js';

export function workspaceEdit({ documentChanges }: Client, uri: string, edits: TextEdit[]): WorkspaceEdit {
  return documentChanges
    ? { documentChanges: [{ textDocument: { uri, version: null }, edits }] }
    : { changes: { [uri]: edits } };
}

export function textEdits({ places }: Sheet, edits: readonly Edit[]): TextEdit[] {
  return edits.map(({ span, text }) => ({ range: places.range(span), newText: text }));
}
