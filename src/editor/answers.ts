/** Hands each request of the editor to the file that answers it; no request can break the server. */
import {
  type CancellationToken,
  type Connection,
  type DocumentDiagnosticReport,
  LSPErrorCodes,
  ResponseError,
  type WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import { codeActions, mendAll } from './code-actions.js';
import { completion } from './completion.js';
import { definition } from './definition.js';
import type { Desk, Sheet } from './desk.js';
import type { Diagnostics, Shown } from './diagnostics.js';
import { hover } from './hover.js';
import { highlights, references } from './references.js';
import { SELECT, select } from './stet.js';
import { documentSymbols, workspaceSymbols } from './symbols.js';

export function answerRequests(connection: Connection, desk: Desk, diagnostics: Diagnostics): void {
  /** The handler of a request about one document. */
  const about =
    <Params extends { readonly textDocument: { readonly uri: string } }, Answer>(
      answer: (sheet: Sheet, params: Params) => Answer,
    ) =>
    async (params: Params, token: CancellationToken): Promise<Answer | null> => {
      const place = desk.look(params.textDocument.uri);
      if (place === null) return null;
      await place.book.ready;
      await turn(token);
      const sheet = desk.sheetOf(place.book, place.file);
      return sheet === null ? null : answer(sheet, params);
    };

  connection.onHover(about((sheet, { position }) => hover(desk, sheet, position)));
  connection.onDefinition(about((sheet, { position }) => definition(desk, sheet, position)));
  connection.onReferences(
    about((sheet, { position, context }) => references(sheet, position, context.includeDeclaration)),
  );
  connection.onDocumentHighlight(about((sheet, { position }) => highlights(sheet, position)));
  connection.onDocumentSymbol(about((sheet) => documentSymbols(desk, sheet)));
  connection.onCompletion(about((sheet, { position }) => completion(sheet, position)));
  connection.onCodeAction(about((sheet, params) => codeActions(desk, sheet, params)));
  connection.onCodeActionResolve(async (action, token) => {
    const uri: unknown = action.data;
    if (typeof uri !== 'string') return action;
    const mended = await about((sheet) => mendAll(desk, sheet, action))({ textDocument: { uri } }, token);
    return mended ?? { ...action, edit: {} };
  });
  connection.onExecuteCommand(async ({ command, arguments: given = [] }) => {
    if (command === SELECT) await select(connection, given);
    return null;
  });
  connection.onWorkspaceSymbol(async ({ query }, token) => {
    await Promise.all(desk.books.map(({ ready }) => ready));
    await turn(token);
    return workspaceSymbols(desk, query);
  });
  connection.languages.diagnostics.on(async ({ textDocument: { uri }, previousResultId }, token) => {
    const place = desk.look(uri);
    if (place === null) return { kind: 'full', items: [] };
    await place.book.ready;
    await turn(token);
    return report(diagnostics.of(place.book, place.file), previousResultId);
  });
  connection.languages.diagnostics.onWorkspace(async ({ previousResultIds }, token) => {
    const before = new Map(previousResultIds.map(({ uri, value }) => [uri, value]));
    const items: WorkspaceDocumentDiagnosticReport[] = [];
    for (const book of desk.books) {
      await book.ready;
      await turn(token);
      for (const { path: file } of book.reading.pages) {
        const uri = book.uri(file);
        items.push({ ...report(diagnostics.of(book, file), before.get(uri)), uri, version: null });
        before.delete(uri);
      }
    }
    for (const uri of before.keys()) items.push({ kind: 'full', uri, version: null, items: [] });
    return { items };
  });
}

function report({ id, items }: Shown, previous: string | undefined): DocumentDiagnosticReport {
  return id === previous
    ? { kind: 'unchanged', resultId: id }
    : { kind: 'full', resultId: id, items: [...items] };
}

/** Lets what else has arrived be heard first: it may take this request back. */
async function turn(token: CancellationToken): Promise<void> {
  await new Promise(setImmediate);
  if (token.isCancellationRequested)
    throw new ResponseError(LSPErrorCodes.RequestCancelled, 'The editor has taken the request back.');
}
