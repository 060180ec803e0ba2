/** Carries out the protocol's edits on a text, as an editor would. */
import type { CodeAction, TextDocumentEdit, TextEdit } from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';

/** The text after the action's edits to that file. */
export function carriedOut(action: CodeAction, uri: string, text: string): string {
  const own = (action.edit?.documentChanges as TextDocumentEdit[] | undefined)?.find(
    ({ textDocument }) => textDocument.uri === uri,
  );
  const edits = (own?.edits ?? action.edit?.changes?.[uri] ?? []) as TextEdit[];
  return TextDocument.applyEdits(TextDocument.create(uri, 'markdown', 0, text), edits);
}
