/** Lists what a file holds, by recipe, component, list and method; and the recipes of all books by their titles. */
import {
  type DocumentSymbol,
  type SymbolInformation,
  SymbolKind,
  type WorkspaceSymbol,
} from 'vscode-languageserver';
import type { Component, Recipe } from '../anatomy/types.js';
import { fold } from '../larder/names.js';
import type { Passage } from '../manuscript/passage.js';
import type { Span } from '../manuscript/types.js';
import type { Desk, Sheet } from './desk.js';

export function documentSymbols({ client }: Desk, sheet: Sheet): DocumentSymbol[] | SymbolInformation[] {
  const symbols = sheet.read.dishes.map(({ recipe }) => recipeSymbol(sheet, recipe));
  return client.nestedSymbols ? symbols : symbols.flatMap((symbol) => flat(sheet.uri, symbol));
}

/** The recipes whose titles have the letters of the query in this order, whatever stands between them. */
export function workspaceSymbols(desk: Desk, query: string): WorkspaceSymbol[] {
  const letters = [...fold(query).replace(/\s/g, '')];
  return desk.books.flatMap((book) =>
    [...book.files()].flatMap((file) => {
      const sheet = desk.sheetOf(book, file);
      return (sheet?.read.dishes ?? []).flatMap(({ recipe: { title } }) =>
        title === null || !hasInOrder(fold(title.text), letters)
          ? []
          : [
              {
                name: oneLine(title.text),
                kind: SymbolKind.Class,
                location: { uri: sheet!.uri, range: sheet!.places.range(title.span()) },
                containerName: file,
              },
            ],
      );
    }),
  );
}

function hasInOrder(text: string, letters: readonly string[]): boolean {
  let at = 0;
  for (const letter of letters) {
    at = text.indexOf(letter, at) + letter.length;
    if (at < letter.length) return false;
  }
  return true;
}

function recipeSymbol(sheet: Sheet, recipe: Recipe): DocumentSymbol {
  const { title, steps } = recipe;
  const method: DocumentSymbol[] =
    steps.length === 0
      ? []
      : [
          symbolOf(sheet, 'Method', SymbolKind.Function, around(steps.map(({ passage }) => passage)), null, [
            ...steps.map(({ passage }, index) =>
              symbolOf(
                sheet,
                `${steps[index]!.number ?? index + 1}. ${passage.text}`,
                SymbolKind.Event,
                passage.span(),
                null,
                [],
              ),
            ),
          ]),
        ];
  const children = [
    ...recipe.components.flatMap((component) => componentSymbol(sheet, component)),
    ...method,
  ];
  return symbolOf(
    sheet,
    title?.text ?? 'Recipe without a title',
    SymbolKind.Class,
    recipe.span,
    title,
    children,
  );
}

function componentSymbol(sheet: Sheet, { heading, listings }: Component): DocumentSymbol[] {
  if (listings.length === 0) return [];
  const passages = listings.map(({ passage }) => passage);
  const children = passages.map((passage) =>
    symbolOf(sheet, passage.text, SymbolKind.Field, passage.span(), null, []),
  );
  const span = around(heading === null ? passages : [heading, ...passages]);
  return [symbolOf(sheet, heading?.text ?? 'List', SymbolKind.Array, span, heading, children)];
}

/** `named` is where its name stands, where it has one on the page. */
function symbolOf(
  { places }: Sheet,
  name: string,
  kind: SymbolKind,
  span: Span,
  named: Passage | null,
  children: DocumentSymbol[],
): DocumentSymbol {
  const own = named?.span() ?? { start: span.start, end: span.start };
  // The protocol wants the name inside the whole.
  const whole = { start: Math.min(span.start, own.start), end: Math.max(span.end, own.end) };
  return {
    name: clipped(oneLine(name)) || '…',
    kind,
    range: places.range(whole),
    selectionRange: places.range(own),
    children,
  };
}

function flat(
  uri: string,
  { name, kind, range, children = [] }: DocumentSymbol,
  within?: string,
): SymbolInformation[] {
  const own: SymbolInformation = {
    name,
    kind,
    location: { uri, range },
    ...(within === undefined ? {} : { containerName: within }),
  };
  return [own, ...children.flatMap((child) => flat(uri, child, name))];
}

function around(passages: readonly Passage[]): Span {
  const spans = passages.map((passage) => passage.span());
  return {
    start: Math.min(...spans.map(({ start }) => start)),
    end: Math.max(...spans.map(({ end }) => end)),
  };
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

/** An outline is a narrow column. */
const LONGEST_NAME = 80;

function clipped(text: string): string {
  return text.length > LONGEST_NAME ? `${text.slice(0, LONGEST_NAME - 1).trimEnd()}…` : text;
}
