/** Answers what can be done about the marks at a place: mend them, let them stand, or mend all that is sure. */
import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  type Diagnostic,
} from 'vscode-languageserver';
import type { Edit, Mark, Mend } from '../../rules/rule.js';
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
  const sure = asks(context.only, FIX_ALL) ? sureEdits(marks) : [];
  if (sure.length > 0) {
    actions.push({
      title: 'Make all sure mends in this file',
      kind: FIX_ALL,
      edit: workspaceEdit(desk.client, sheet.uri, textEdits(sheet, sure)),
    });
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

/** The edits of all sure mends, each whole or not at all: where two overlap, the first on the page is made. */
function sureEdits(marks: readonly Mark[]): Edit[] {
  const taken: Edit[] = [];
  for (const mend of marks.flatMap((mark) => mark.mends.filter(({ sure }) => sure).slice(0, 1))) {
    const clashes = mend.edits.some(({ span }) =>
      taken.some((other) => span.start <= other.span.end && other.span.start <= span.end),
    );
    if (!clashes) taken.push(...mend.edits);
  }
  return taken;
}
