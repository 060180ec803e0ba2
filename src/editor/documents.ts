/** Keeps the texts that are open in the editor in step with it, whatever unit its positions count in. */
import type { TextDocumentContentChangeEvent, TextDocumentsConfiguration } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { type Encoding, Places } from './places.js';

/** The library counts in UTF-16 only, so other positions are turned into its own, change by change. */
export function documentsIn(encoding: () => Encoding): TextDocumentsConfiguration<TextDocument> {
  return {
    create: TextDocument.create,
    update: (document, changes, version) => {
      if (encoding() === 'utf-16') return TextDocument.update(document, changes, version);
      return changes.reduce(
        (before, change) => TextDocument.update(before, [inUtf16(before, change)], version),
        document,
      );
    },
  };
}

function inUtf16(
  document: TextDocument,
  change: TextDocumentContentChangeEvent,
): TextDocumentContentChangeEvent {
  if (!('range' in change)) return change;
  const text = document.getText();
  const { start, end } = new Places(text, 'utf-8').span(change.range);
  return { range: new Places(text, 'utf-16').range({ start, end }), text: change.text };
}
