/** Marks as an editor shows them: pushed to it or asked for, of the open file and of the book. */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import {
  CancellationTokenSource,
  type Diagnostic,
  type DocumentDiagnosticReport,
  type WorkspaceDiagnosticReport,
} from 'vscode-languageserver-protocol/node';
import { faulty, manuscript, sound } from '../cli/run.js';
import { able, BUSY, Editor, uriOf } from './editor.js';

let editor: Editor;
afterEach(async () => {
  expect(await editor.stop()).toBe(0);
}, BUSY);

const told = (diagnostics: readonly Diagnostic[]) =>
  diagnostics.map(({ code, severity, range }) => [code, severity, range.start.line, range.start.character]);
const cream = ['unlisted-ingredient', 1, 14, 19];

describe('an editor that is sent diagnostics', () => {
  it('is told of the whole book when the folder is opened, and of clean files nothing', async () => {
    const folder = manuscript({ 'leek.md': faulty, 'more/sound.md': sound });
    editor = await Editor.start([folder]);
    await editor.until(() => editor.shown.size > 0);
    expect([...editor.shown.keys()]).toEqual([uriOf(folder, 'leek.md')]);
    expect(told(editor.shown.get(uriOf(folder, 'leek.md'))!.diagnostics)).toEqual([cream]);
  });

  it('sees the mark go when the food is listed, and come back when the line is taken out', async () => {
    const folder = manuscript({ 'leek.md': faulty });
    const uri = uriOf(folder, 'leek.md');
    editor = await Editor.start([folder]);
    await editor.open(uri, faulty);
    expect(told(await editor.settled(uri))).toEqual([cream]);
    const at = { line: 8, character: 0 };
    await editor.change(uri, [{ range: { start: at, end: at }, text: '- 1/2 cup cream\n' }]);
    expect(told(await editor.settled(uri))).toEqual([]);
    await editor.change(uri, [{ range: { start: at, end: { line: 9, character: 0 } }, text: '' }]);
    expect(told(await editor.settled(uri))).toEqual([cream]);
  });

  it('goes by the disk again once the file is closed', async () => {
    const folder = manuscript({ 'leek.md': faulty });
    const uri = uriOf(folder, 'leek.md');
    editor = await Editor.start([folder]);
    await editor.open(uri, sound);
    expect(await editor.settled(uri)).toEqual([]);
    await editor.close(uri);
    await editor.until(() => editor.shown.get(uri)!.diagnostics.length === 1);
  });

  it('is told the rule, its explanation, and the related places', async () => {
    const folder = manuscript({ 'leek.md': faulty.replace('Melt the butter', 'Melt 2 cups butter') });
    const uri = uriOf(folder, 'leek.md');
    editor = await Editor.start([folder]);
    await editor.until(() => editor.shown.size > 0);
    const mark = editor.shown.get(uri)!.diagnostics.find(({ code }) => code === 'amount-disagreement')!;
    expect(mark.message).toBe(
      'The method says 2 cups of butter; the list has 1 tablespoon. Make the two agree.',
    );
    expect(mark.relatedInformation).toEqual([
      {
        location: { uri, range: { start: { line: 7, character: 2 }, end: { line: 7, character: 21 } } },
        message: 'the listed amount',
      },
    ]);
    const page = fileURLToPath(mark.codeDescription!.href);
    expect(path.basename(page)).toBe('amount-disagreement.md');
    expect(readFileSync(page, 'utf8')).toContain('# amount-disagreement');
  });

  it('hears of files that change on the disk, also without watching them itself', async () => {
    const folder = manuscript({ 'leek.md': faulty, 'sound.md': sound });
    const uri = uriOf(folder, 'leek.md');
    editor = await Editor.start([folder]);
    await editor.until(() => editor.shown.has(uri));
    writeFileSync(path.join(folder, 'leek.md'), sound);
    await editor.until(() => editor.shown.get(uri)!.diagnostics.length === 0);
    writeFileSync(path.join(folder, 'new.md'), faulty);
    await editor.until(() => editor.shown.has(uriOf(folder, 'new.md')));
  });
});

describe('a title that changes', () => {
  const pie = (ask: string) =>
    `# Towpath Pie\n\nServes 4\n\n- 1 recipe Kettle Stock\n- 2 pounds leeks\n\n1. ${ask} Simmer the leeks in it until soft, about 20 minutes.\n`;
  const stock = (title: string) =>
    `# ${title}\n\nMakes 4 cups\n\n- 2 onions\n- 6 cups water\n\n1. Simmer the onions in the water for 1 hour, and strain.\n`;
  /** The rules about references that mark a file, with the lines. */
  const broken = (uri: string) =>
    (editor.shown.get(uri)?.diagnostics ?? []).flatMap(({ code, range }) =>
      String(code).startsWith('reference-') ? [`${code} ${range.start.line}`] : [],
    );

  it('breaks the references of other files as it is typed, and mends them when it is put back', async () => {
    const folder = manuscript({
      'mains/pie.md': pie('Bring the stock to a boil.'),
      'basics/stock.md': stock('Kettle Stock'),
    });
    const [main, basic] = [uriOf(folder, 'mains/pie.md'), uriOf(folder, 'basics/stock.md')];
    editor = await Editor.start([folder]);
    await editor.open(main, pie('Bring the stock to a boil.'));
    await editor.open(basic, stock('Kettle Stock'));
    await editor.settled(basic);
    expect(broken(main)).toEqual([]);
    // Letter by letter, as it is typed: "Kettle Stock" becomes "Lantern Broth".
    const line = { line: 0, character: 2 };
    await editor.change(basic, [
      { range: { start: line, end: { line: 0, character: 'Kettle Stock'.length + 2 } }, text: '' },
    ]);
    for (const [index, letter] of [...'Lantern Broth'].entries()) {
      const at = { line: 0, character: 2 + index };
      await editor.change(basic, [{ range: { start: at, end: at }, text: letter }]);
    }
    await editor.settled(basic);
    await editor.until(() => broken(main).length > 0);
    expect(broken(main)).toEqual(['reference-broken 4']);
    await editor.change(basic, [{ text: stock('Kettle Stock') }]);
    await editor.settled(basic);
    await editor.until(() => broken(main).length === 0);
    // One that is only spelled otherwise is another mark, with the title to go to.
    await editor.change(basic, [{ text: stock('Kéttle Stock') }]);
    await editor.settled(basic);
    await editor.until(() => broken(main).length > 0);
    const mark = editor.shown
      .get(main)!
      .diagnostics.find(({ code }) => String(code).startsWith('reference-'))!;
    expect(mark.code).toBe('reference-misspelled');
    expect(mark.relatedInformation!.map(({ location }) => location.uri)).toEqual([basic]);
  });
});

describe('several folders', () => {
  const leek = () => manuscript({ 'leek.md': faulty });
  it('are books side by side, and one that is closed takes its marks along', async () => {
    const [one, other] = [leek(), leek()];
    editor = await Editor.start([one, other]);
    await editor.until(() => editor.shown.size === 2);
    await editor.enter([], [other]);
    await editor.until(() => editor.shown.get(uriOf(other, 'leek.md'))!.diagnostics.length === 0);
    expect(editor.shown.get(uriOf(one, 'leek.md'))!.diagnostics).toHaveLength(1);
  });

  it('inside each other keep their own files', async () => {
    const outer = manuscript({ 'leek.md': faulty, 'inner/leek.md': faulty });
    editor = await Editor.start([outer, path.join(outer, 'inner')]);
    await editor.until(() => editor.shown.size === 2);
    const own = await editor.ask<{ containerName: string }[]>('workspace/symbol', { query: 'lksp' });
    expect(own.map(({ containerName }) => containerName)).toEqual(['leek.md', 'leek.md']);
  });

  it('need not hold an open file: one that lies in none is read by itself, and one never saved too', async () => {
    const folder = manuscript({ 'leek.md': faulty });
    editor = await Editor.start([]);
    for (const uri of [uriOf(folder, 'leek.md'), 'untitled:Untitled-1']) {
      await editor.open(uri, faulty);
      expect(told(await editor.settled(uri))).toEqual([cream]);
      await editor.close(uri);
      await editor.until(() => editor.shown.get(uri)!.diagnostics.length === 0);
    }
  });
});

describe('an editor that asks for diagnostics', () => {
  const asking = {
    ...able,
    textDocument: { ...able.textDocument, diagnostic: { relatedDocumentSupport: false } },
    workspace: { ...able.workspace, diagnostics: { refreshSupport: true } },
  };

  it('gets those of a file, and is told when nothing has changed', async () => {
    const folder = manuscript({ 'leek.md': faulty });
    const textDocument = { uri: uriOf(folder, 'leek.md') };
    editor = await Editor.start([folder], asking);
    await editor.open(textDocument.uri, faulty);
    const first = await editor.ask<DocumentDiagnosticReport>('textDocument/diagnostic', { textDocument });
    if (first.kind !== 'full') throw new Error('expected a full report');
    expect(told(first.items)).toEqual([cream]);
    const previousResultId = first.resultId;
    expect(await editor.ask('textDocument/diagnostic', { textDocument, previousResultId })).toEqual({
      kind: 'unchanged',
      resultId: previousResultId,
    });
    expect(editor.shown.size).toBe(0);
  });

  it('gets those of the book, and is told to ask again when a file changes on the disk', async () => {
    // Two recipes of one title would be marked for that.
    const folder = manuscript({ 'leek.md': faulty, 'sound.md': sound.replace('# Leek Soup', '# Lock Soup') });
    editor = await Editor.start([folder], asking);
    const book = await editor.ask<WorkspaceDiagnosticReport>('workspace/diagnostic', {
      previousResultIds: [],
    });
    expect(
      book.items.map((item) => [item.uri, item.kind === 'full' ? item.items.length : item.kind]),
    ).toEqual([
      [uriOf(folder, 'leek.md'), 1],
      [uriOf(folder, 'sound.md'), 0],
    ]);
    const before = editor.refreshed;
    writeFileSync(path.join(folder, 'sound.md'), faulty);
    await editor.until(() => editor.refreshed > before);
    const previousResultIds = book.items.map(({ uri, resultId }) => ({ uri, value: resultId! }));
    const later = await editor.ask<WorkspaceDiagnosticReport>('workspace/diagnostic', { previousResultIds });
    expect(later.items.map(({ kind }) => kind)).toEqual(['unchanged', 'full']);
  });
});

it('a request that is taken back is not answered', async () => {
  const folder = manuscript({ 'leek.md': faulty });
  editor = await Editor.start([folder]);
  await editor.open(uriOf(folder, 'leek.md'), faulty);
  const source = new CancellationTokenSource();
  const asked = editor.connection.sendRequest('workspace/symbol', { query: '' }, source.token);
  source.cancel();
  await expect(asked).rejects.toMatchObject({ code: -32800 });
});
