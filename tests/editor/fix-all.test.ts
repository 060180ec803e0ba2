/** All sure mends of a file at once, each whole or not at all. */

import { expect, it } from 'vitest';
import type { CodeActionParams, TextEdit } from 'vscode-languageserver-protocol/node';
import type { Mark, Mend } from '../../rules/rule.js';
import { Book } from '../../src/editor/book.js';
import { clientOf } from '../../src/editor/client.js';
import { codeActions } from '../../src/editor/code-actions.js';
import { Desk } from '../../src/editor/desk.js';
import type { Disk } from '../../src/editor/disk.js';
import { undecided } from '../../src/manuscript/house-style.js';

const text = 'Bake 8-5 minutes at 350 degrees.\n';

/** A book whose marks are given. */
class Marked extends Book {
  constructor(private readonly given: readonly Mark[]) {
    super(null, disk);
    this.type('a.md', 'untitled:a.md', text);
  }

  override marksOn(): readonly Mark[] {
    return this.given;
  }
}

const disk: Disk = {
  gather: () => [],
  text: () => null,
  style: async () => ({ style: undecided, trouble: null }),
  watch: () => () => {},
  explanation: () => null,
};

function markOn(words: string, mends: readonly Mend[]): Mark {
  const start = text.indexOf(words);
  const span = { start, end: start + words.length };
  return {
    rule: 'range-reversed',
    weight: 'fault',
    file: 'a.md',
    recipe: null,
    subject: words,
    message: 'm',
    advice: 'a',
    span,
    related: [],
    mends,
  };
}

function mend(words: string, by: string, sure: boolean): Mend {
  const start = text.indexOf(words);
  return { label: `write ${by}`, sure, edits: [{ span: { start, end: start + words.length }, text: by }] };
}

function actionsFor(marks: readonly Mark[], only?: string[]) {
  const desk = new Desk(clientOf({}), disk);
  const sheet = desk.sheetOf(new Marked(marks), 'a.md')!;
  const params: CodeActionParams = {
    textDocument: { uri: 'untitled:a.md' },
    range: { start: { line: 0, character: 0 }, end: { line: 0, character: 32 } },
    context: { diagnostics: [], ...(only === undefined ? {} : { only }) },
  };
  return codeActions(desk, sheet, params);
}

const marks = [
  markOn('8-5', [mend('8-5', '5-8', true), mend('8-5', '8-9', false)]),
  markOn('8-5 minutes', [mend('8-5 minutes', '5 minutes', true)]),
  markOn('350 degrees', [mend('350 degrees', '350°F', false)]),
];

it('each mend of a mark is offered, the sure one as the one to prefer', () => {
  const mends = actionsFor(marks, ['quickfix']).filter(({ title }) => title.startsWith('Write'));
  expect(mends.map(({ title, isPreferred }) => [title, isPreferred])).toEqual([
    ['Write 5-8', true],
    ['Write 8-9', undefined],
    ['Write 5 minutes', true],
    ['Write 350°F', undefined],
  ]);
});

it('the sure mends are made together, of two that overlap the first', () => {
  const [all, ...others] = actionsFor(marks, ['source.fixAll']);
  expect(others).toEqual([]);
  expect(all!.edit!.changes!['untitled:a.md']!.map(({ newText }: TextEdit) => newText)).toEqual(['5-8']);
});

it('nothing is offered for the whole file where nothing is sure', () => {
  expect(actionsFor([marks[2]!], ['source'])).toEqual([]);
});
