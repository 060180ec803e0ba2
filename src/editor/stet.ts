/** Offers to let a mark stand: a stet at the end of its line, with the reason left to fill in. */
import {
  type CodeAction,
  CodeActionKind,
  type Connection,
  type Range,
  type SnippetTextEdit,
} from 'vscode-languageserver';
import type { Mark } from '../../rules/rule.js';
import { placeForStet, stetComment } from '../manuscript/stets.js';
import type { Desk, Sheet } from './desk.js';
import { workspaceEdit } from './edits.js';

/** The command that selects the reason to be filled in, for editors that can show a place and know no snippets. */
export const SELECT = 'tamis.select';

const REASON = 'reason';

export function stetAction(
  { client }: Desk,
  sheet: Sheet,
  { rule, span }: Mark,
): Omit<CodeAction, 'diagnostics'> {
  const { text, lines } = sheet.read.page;
  const offset = placeForStet(text, lines.start(lines.line(span.start)));
  const at = sheet.places.position(offset);
  const range: Range = { start: at, end: at };
  const action = { title: `Let "${rule}" stand here (stet)`, kind: CodeActionKind.QuickFix };
  if (client.snippetEdits && client.documentChanges) {
    const value = ` ${stetComment(rule, `\${1:${REASON}}`)}`;
    const edit: SnippetTextEdit = { range, snippet: { kind: 'snippet', value } };
    return {
      ...action,
      edit: { documentChanges: [{ textDocument: { uri: sheet.uri, version: null }, edits: [edit] }] },
    };
  }
  const comment = ` ${stetComment(rule, REASON)}`;
  const edit = workspaceEdit(client, sheet.uri, [{ range, newText: comment }]);
  if (!client.showsDocuments) return { ...action, edit };
  // All of the comment is ASCII, so its characters count one in every encoding.
  const start = { line: at.line, character: at.character + comment.lastIndexOf(REASON) };
  const selection: Range = { start, end: { line: at.line, character: start.character + REASON.length } };
  return {
    ...action,
    edit,
    command: { title: 'Fill in the reason', command: SELECT, arguments: [sheet.uri, selection] },
  };
}

/** Carries the command out. */
export async function select(connection: Connection, [uri, selection]: readonly unknown[]): Promise<void> {
  await connection.window.showDocument({ uri: String(uri), selection: selection as Range, takeFocus: true });
}
