/** After any edit, also in the middle of typing, an editor shows what a fresh reading of the same texts gives. */

import { afterEach, expect, it } from 'vitest';
import type { Range, TextDocumentContentChangeEvent } from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { byName } from '../../src/manuscript/order.js';
import { readManuscript } from '../../src/reading/read.js';
import { manuscript } from '../cli/run.js';
import { BUSY, demo, Editor, filesIn, uriOf } from './editor.js';

const EDITS = 1000;
/** The same edits each time, so that a failure can be looked at. */
const SEED = 20240229;

const SOME =
  /(charcoal-barge-chicken|cider-house-mussels|toll-night-chops|turnip-chips|stock-for-the-kettle)\.md$/;

let editor: Editor;
afterEach(() => editor.stop(), BUSY);

it(`${EDITS} random edits of the demo leave the marks of a fresh reading`, async () => {
  // A few recipes that refer to each other, because the fresh readings take the time.
  const files = filesIn(demo('draft'))
    .filter(({ path }) => SOME.test(path))
    .sort((a, b) => byName(a.path, b.path));
  const folder = manuscript(Object.fromEntries(files.map(({ path, text }) => [path, text])));
  const documents = files.map(({ path, text }) =>
    TextDocument.create(uriOf(folder, path), 'markdown', 1, text),
  );
  const random = generator(SEED);
  editor = await Editor.start([folder]);
  for (const document of documents) await editor.open(document.uri, document.getText());

  for (let count = 1; count <= EDITS; count++) {
    const at = random(documents.length);
    const { uri } = documents[at]!;
    // What has been cut to pieces is brought back, so that there is something to be read to the end.
    const isRuined = documents[at]!.getText().length < files[at]!.text.length / 2;
    const changes = isRuined
      ? [bringBack(documents, at, files[at]!.text)]
      : Array.from({ length: 1 + random(3) }, () => randomChange(documents, at, random));
    await editor.change(uri, changes);
    // While the server reads what has changed, all is read here from nothing.
    const fresh = freshly(files, documents);
    await editor.settled(uri);
    // Whatever is asked anywhere in a text that is being typed has an answer.
    const length = documents[at]!.getText().length;
    const [position, end] = [random(length + 1), random(length + 1)].map((offset) =>
      documents[at]!.positionAt(offset),
    );
    await editor.ask(`textDocument/${REQUESTS[random(REQUESTS.length)]}`, {
      textDocument: { uri },
      position,
      range: { start: position, end },
      context: { includeDeclaration: true, diagnostics: [] },
    });
    const seen = documents.flatMap((document) =>
      (editor.shown.get(document.uri)?.diagnostics ?? []).map(
        ({ code, message, range: { start, end } }) =>
          `${document.uri} ${code} ${start.line}:${start.character}-${end.line}:${end.character} ${message}`,
      ),
    );
    expect(seen, `edit ${count}: ${JSON.stringify(changes)}`).toEqual(fresh);
  }
  // Half a minute alone on a machine, and several where it is busy with other tests.
}, 900_000);

/** What a reading from nothing gives, its places worked out by the library that editors keep their texts with. */
function freshly(files: readonly { path: string }[], documents: readonly TextDocument[]): string[] {
  const byPath = new Map(files.map(({ path }, index) => [path, documents[index]!]));
  const texts = files.map(({ path }) => ({ path, text: byPath.get(path)!.getText() }));
  return readManuscript(texts).marks.map(({ rule, file, span, message, advice }) => {
    const document = byPath.get(file)!;
    const [start, end] = [document.positionAt(span.start), document.positionAt(span.end)];
    return `${document.uri} ${rule} ${start.line}:${start.character}-${end.line}:${end.character} ${message} ${advice}`;
  });
}

function bringBack(documents: TextDocument[], at: number, text: string): TextDocumentContentChangeEvent {
  const document = documents[at]!;
  documents[at] = TextDocument.update(document, [{ text }], document.version + 1);
  return { text };
}

/** An edit as authors make them, and as no author would; the text is changed with it. */
function randomChange(
  documents: TextDocument[],
  at: number,
  random: (below: number) => number,
): TextDocumentContentChangeEvent {
  const document = documents[at]!;
  const length = document.getText().length;
  const from = random(length + 1);
  const to = Math.min(length, from + [0, 0, 1, 1, 8, 40, 300][random(7)]!);
  const range: Range = { start: document.positionAt(from), end: document.positionAt(to) };
  const other = documents[random(documents.length)]!.getText();
  const cut = random(other.length);
  const text = random(4) === 0 ? other.slice(cut, cut + random(200)) : PIECES[random(PIECES.length)]!;
  const change = random(50) === 0 ? { text: document.getText().slice(0, from) } : { range, text };
  documents[at] = TextDocument.update(document, [change], document.version + 1);
  return change;
}

const REQUESTS = [
  'hover',
  'definition',
  'references',
  'documentHighlight',
  'documentSymbol',
  'completion',
  'codeAction',
];

/** What breaks words, lines, lists, emphasis, tables, comments, front matter and pairs of UTF-16. */
const PIECES = [
  '',
  'a',
  ' ',
  '\n',
  '\r\n',
  '\n\n',
  '- ',
  '1. ',
  '## Method\n',
  '# ',
  '**',
  '`',
  '|',
  '---\n',
  '> ',
  '<!-- stet ',
  '<!-- stet unlisted-ingredient: it stands -->',
  '-->',
  '🥄',
  '½ cup ',
  '2 cups cream',
  ' with the butter',
  '350 degrees',
  '8 to 5 minutes',
  '&amp;',
  '\t',
  '\\',
];

/** Mulberry32, a small generator of even numbers from a seed (from memory); `below` is exclusive. */
function generator(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296) * below);
  };
}
