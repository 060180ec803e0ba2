/** What an editor offers at a mark: to put the food on the list, to let the mark stand, to mend. */

import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { CodeAction, CodeActionParams, Diagnostic } from 'vscode-languageserver-protocol/node';
import { rules } from '../../rules/index.js';
import { undecided } from '../../src/manuscript/house-style.js';
import { Manuscript } from '../../src/reading/manuscript.js';
import { readManuscript } from '../../src/reading/read.js';
import { faulty, manuscript } from '../cli/run.js';
import { able, BUSY, demo, Editor, filesIn, uriOf } from './editor.js';
import { carriedOut } from './edits.js';

/** Marks for many places go on to the next of them; marks of stets are not silenced by one more. */
const moving = new Set(
  rules.filter(({ topic, scope }) => topic === 'wording' || scope === 'stets').map(({ name }) => name),
);

let editor: Editor;
/** One server for all that ask for nothing special: starting it takes longest. */
let usual: Editor;
beforeAll(async () => {
  usual = await Editor.start([]);
}, BUSY);
afterAll(() => usual.stop(), BUSY);
afterEach(async () => {
  if (editor !== usual) await editor.stop();
}, BUSY);

function actionsAt(uri: string, diagnostic: Diagnostic, only?: string[]): Promise<CodeAction[]> {
  const params: CodeActionParams = {
    textDocument: { uri },
    range: diagnostic.range,
    context: { diagnostics: [diagnostic], ...(only === undefined ? {} : { only }) },
  };
  return editor.ask('textDocument/codeAction', params);
}

/** The one mark of a text, with what is offered for it. */
async function offeredFor(text: string, capabilities = able) {
  const uri = uriOf(manuscript({}), 'leek.md');
  editor = capabilities === able ? usual : await Editor.start([], capabilities);
  await editor.open(uri, text);
  const diagnostic = (await editor.settled(uri)).find(({ code }) => code === 'unlisted-ingredient')!;
  const actions = await actionsAt(uri, diagnostic);
  return { uri, actions, diagnostic };
}

describe('a food that is not on the list', () => {
  const added = async (text: string) => {
    const { uri, actions } = await offeredFor(text);
    const action = actions.find(({ title }) => title.startsWith('Add'))!;
    return { title: action.title, text: carriedOut(action, uri, text) };
  };

  it('is added with the amount of the method, behind what the method used before it', async () => {
    const { title, text } = await added(faulty);
    expect(title).toBe('Add "1/2 cup cream" to the list');
    expect(text).toBe(faulty.replace('- 4 cups water\n', '- 4 cups water\n- 1/2 cup cream\n'));
  });

  it.each([
    [
      'a numbered list',
      '1. 4 cups water',
      '2. 1/2 cup cream',
      (text: string) => text.replace('- 4 cups water', '1. 4 cups water'),
    ],
    [
      'a list of boxes to tick',
      '- [ ] 4 cups water',
      '- [ ] 1/2 cup cream',
      (text: string) => text.replace(/^- (?=\d)/gm, '- [ ] '),
    ],
    [
      'a list in a quotation',
      '> * 4 cups water',
      '> * 1/2 cup cream',
      (text: string) => text.replace(/^- (?=\d)/gm, '> * '),
    ],
    [
      'lines that break',
      '4 cups water  ',
      '1/2 cup cream  ',
      (text: string) => text.replace(/^- (\d.*)$/gm, '$1  '),
    ],
    [
      'emphasized amounts',
      '- **4 cups** water',
      '- 1/2 cup cream',
      (text: string) => text.replace(/^- (\d+ \w+)/gm, '- **$1**'),
    ],
    [
      'Windows line ends',
      '- 4 cups water\r',
      '- 1/2 cup cream\r',
      (text: string) => text.replaceAll('\n', '\r\n'),
    ],
  ])('takes the form of %s', async (_, before, line, write) => {
    const { text } = await added(write(faulty));
    const lines = text.split('\n');
    expect(lines[lines.indexOf(before) + 1]).toBe(line);
    expect(readManuscript([{ path: 'a.md', text }]).marks.map(({ rule }) => rule)).toEqual([]);
  });
});

describe('letting a mark stand', () => {
  const stet = (actions: CodeAction[]) => actions.find(({ title }) => title.includes('stet'))!;

  it('leaves the reason to fill in as a snippet, where the editor knows snippets', async () => {
    const workspaceEdit = { documentChanges: true, snippetEditSupport: true };
    const { uri, actions } = await offeredFor(faulty, {
      ...able,
      workspace: { ...able.workspace, workspaceEdit },
    });
    const at = { line: 14, character: 35 };
    expect(stet(actions).edit).toEqual({
      documentChanges: [
        {
          textDocument: { uri, version: null },
          edits: [
            {
              range: { start: at, end: at },
              snippet: { kind: 'snippet', value: ` <!-- stet unlisted-ingredient: \${1:reason} -->` },
            },
          ],
        },
      ],
    });
  });

  it('selects the reason, where the editor can only show places', async () => {
    const { uri, actions } = await offeredFor(faulty, {
      ...able,
      window: { showDocument: { support: true } },
    });
    const { command, arguments: given } = stet(actions).command!;
    const line = carriedOut(stet(actions), uri, faulty).split('\n')[14]!;
    expect(line).toBe('3. Stir in 1/2 cup cream and serve. <!-- stet unlisted-ingredient: reason -->');
    let asked: { selection: { start: { character: number }; end: { character: number } } } | undefined;
    editor.connection.onRequest('window/showDocument', (params) => {
      asked = params;
      return { success: true };
    });
    await editor.ask('workspace/executeCommand', { command, arguments: given });
    expect(line.slice(asked!.selection.start.character, asked!.selection.end.character)).toBe('reason');
  });

  it('silences each mark of the demo, and nothing on another line', async () => {
    const folder = demo('draft');
    const files = filesIn(folder);
    editor = await Editor.start([folder]);
    await editor.ask('workspace/symbol', { query: '' });
    // What is kept from change to change is a fresh reading of it all, says random-edits.test.ts.
    const manuscript = new Manuscript(undecided);
    for (const file of files) manuscript.set(file);
    const placed = (text: string, path: string) => {
      manuscript.set({ path, text });
      const reading = manuscript.reading();
      const lines = new Map(reading.pages.map((page) => [page.path, page.lines]));
      return reading.marks.map(
        ({ rule, file, span }) => `${rule} ${file} ${lines.get(file)!.line(span.start)}`,
      );
    };
    let tried = 0;
    for (const { path, text } of files) {
      const before = placed(text, path);
      for (const diagnostic of editor.shown.get(uriOf(folder, path))?.diagnostics ?? []) {
        const action = stet(
          (await actionsAt(uriOf(folder, path), diagnostic)).filter(({ title }) =>
            title.includes(`"${diagnostic.code}"`),
          ),
        );
        if (moving.has(String(diagnostic.code))) continue;
        const key = `${diagnostic.code} ${path} ${diagnostic.range.start.line + 1}`;
        const after = placed(carriedOut(action, uriOf(folder, path), text), path);
        expect(after, key).toEqual(before.filter((each) => each !== key));
        tried++;
      }
      manuscript.set({ path, text });
    }
    expect(tried).toBeGreaterThan(10);
  }, 300_000);
});

it('only what is asked for is offered', async () => {
  const { uri, diagnostic } = await offeredFor(faulty);
  expect(await actionsAt(uri, diagnostic, ['refactor'])).toEqual([]);
  expect((await actionsAt(uri, diagnostic, ['quickfix'])).map(({ title }) => title)).toEqual([
    'Add "1/2 cup cream" to the list',
    'Let "unlisted-ingredient" stand here (stet)',
  ]);
});
