/** Answers what can be done about the marks at a place: mend them, let them stand, or mend all that is sure. */
import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  type Diagnostic,
} from 'vscode-languageserver';
import type { Mend } from '../../rules/rule.js';
import { sureChoices } from '../mending/choice.js';
import { sureEdits } from '../mending/mend.js';
import { capitalized } from '../reports/words.js';
import type { Desk, Sheet } from './desk.js';
import { diagnosticOf } from './diagnostics.js';
import { textEdits, workspaceEdit } from './edits.js';
import { stetAction } from './stet.js';

/** All sure mends of the file at once. */
export const FIX_ALL = `${CodeActionKind.SourceFixAll}.tamis`;

export function codeActions(desk: Desk, sheet: Sheet, { range, context }: CodeActionParams): CodeAction[] {
  const marks = sheet.book.marksOn(sheet.file);
  const { start, end } = sheet.places.span(range);
  const actions: CodeAction[] = [];
  if (asks(context.only, CodeActionKind.QuickFix)) {
    for (const mark of marks) {
      const diagnostic = diagnosticOf(desk, sheet, mark);
      const touched = mark.span.start <= end && start <= mark.span.end;
      if (!touched && !context.diagnostics.some((each) => isSame(each, diagnostic))) continue;
      for (const mend of mark.mends)
        actions.push({ ...mendAction(desk, sheet, mend), diagnostics: [diagnostic] });
      actions.push({ ...stetAction(desk, sheet, mark), diagnostics: [diagnostic] });
    }
  }
  if (asks(context.only, FIX_ALL) && sureChoices(marks).length > 0) {
    const action: CodeAction = { title: 'Make all sure mends in this file', kind: FIX_ALL, data: sheet.uri };
    // Each menu asks for actions, few are taken, and these edits have to be tried.
    const made = desk.client.resolvesEdits ? action : mendAll(desk, sheet, action);
    if (made !== null) actions.push(made);
  }
  return actions;
}

/** Kinds are hierarchical: who asks for "source" asks for "source.fixAll.tamis" too. */
function asks(only: readonly string[] | undefined, kind: string): boolean {
  return (
    only === undefined || only.some((each) => each === '' || kind === each || kind.startsWith(`${each}.`))
  );
}

function isSame(one: Diagnostic, other: Diagnostic): boolean {
  return one.code === other.code && JSON.stringify(one.range) === JSON.stringify(other.range);
}

function mendAction({ client }: Desk, sheet: Sheet, { label, sure, edits }: Mend): CodeAction {
  return {
    title: capitalized(label),
    kind: CodeActionKind.QuickFix,
    // Left out rather than false: some editors take any value for yes.
    ...(sure ? { isPreferred: true } : {}),
    edit: workspaceEdit(client, sheet.uri, textEdits(sheet, edits)),
  };
}

/** The action with its edits; null where none of them can be made without a new mark. */
export function mendAll(desk: Desk, sheet: Sheet, action: CodeAction): CodeAction | null {
  const { book, file, uri } = sheet;
  const edits = sureEdits(book.pages(), file, { style: book.style });
  return edits.length === 0
    ? null
    : { ...action, edit: workspaceEdit(desk.client, uri, textEdits(sheet, edits)) };
}
