/** What an editor is told of a listing, a mention, a title and a link, and what it completes. */

import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type {
  CompletionItem,
  DocumentHighlight,
  DocumentSymbol,
  Hover,
  Location,
  LocationLink,
  MarkupContent,
  Position,
  SymbolInformation,
} from 'vscode-languageserver-protocol/node';
import { manuscript } from '../cli/run.js';
import { able, BUSY, Editor, uriOf } from './editor.js';

const fried = `# Fried Onions

See [the stock](sauces/stock.md#brown-stock).

Serves 4

- 4 tablespoons olive oil, divided
- 2 (14½-ounce) cans onions
- 500 g bread*crumbs*, toasted (optional)

## Method

1. Fry the onions in 1 tablespoon of the oil until golden.
2. Pour 2 tablespoons oil over the breadcrumbs.
3. Stir, and add the cream.
`;
const stock = '# Sauces\n\n## White Stock\n\nWater.\n\n## Brown Stock\n\nBones.\n';

let editor: Editor;
let uri: string;
let folder: string;
/** One server for all that ask for nothing special: starting it takes longest. */
let usual: Editor;
beforeAll(async () => {
  usual = await Editor.start([]);
}, BUSY);
afterAll(() => usual.stop(), BUSY);
afterEach(async () => {
  if (editor !== usual) return void (await editor.stop());
  await editor.close(uri);
  await editor.enter([], [folder]);
}, BUSY);

async function start(capabilities = able, text = fried): Promise<void> {
  folder = manuscript({ 'fried.md': text, 'sauces/stock.md': stock });
  uri = uriOf(folder, 'fried.md');
  editor = capabilities === able ? usual : await Editor.start([folder], capabilities);
  if (editor === usual) await editor.enter([folder], []);
  await editor.open(uri, text);
}

/** The place of the words, `into` characters from where they begin. */
function placeOf(words: string, into = 0, text = fried): Position {
  const before = text.slice(0, text.indexOf(words) + into).split('\n');
  return { line: before.length - 1, character: before.at(-1)!.length };
}

const about = (position: Position) => ({ textDocument: { uri }, position });
const hoverAt = async (position: Position): Promise<string> =>
  ((await editor.ask<Hover>('textDocument/hover', about(position))).contents as MarkupContent).value;

/** The words of the text that a range covers. */
function wordsIn({ start, end }: Location['range'], text = fried): string {
  const lines = text.split('\n');
  return start.line === end.line
    ? lines[start.line]!.slice(start.character, end.character)
    : lines[start.line]!;
}

describe('a hover', () => {
  it('on a listing tells how it was understood, in the other measures too', async () => {
    await start();
    expect((await hoverAt(placeOf('4 tablespoons'))).split('\n')).toEqual([
      '**4 tablespoons olive oil\\, divided**',
      '',
      '- Amount: 4 tablespoons',
      '- In other measures: about 59 milliliters',
      // SR28 04053: a tablespoon is 13.5 g.
      '- Weight: about 54 grams \\(1\\.9 ounces\\)',
      '- Food: olive oil',
      '- Said of it: divided',
      '- Used in: step 1\\, step 2',
    ]);
    expect(await hoverAt(placeOf('2 (14½'))).toContain('- Each: about 410 grams');
    const crumbs = await hoverAt(placeOf('500 g'));
    expect(crumbs).toContain('- In other measures: about 1\\.1 pounds');
    expect(crumbs).toContain('- Said of it: optional');
  });

  it('on a mention tells its listing and what was used before', async () => {
    await start();
    expect((await hoverAt(placeOf('oil over'))).split('\n')).toEqual([
      '**oil**',
      '',
      '- On the list: 4 tablespoons olive oil\\, divided',
      '- Used before: 1 tablespoon in step 1',
      '- Used with this: 3 tablespoons of 4 tablespoons',
      '- Here: 2 tablespoons',
    ]);
    expect(await hoverAt(placeOf('cream'))).toContain('- On the list: no');
  });

  it('is plain text where the editor wants that', async () => {
    await start({ ...able, textDocument: { ...able.textDocument, hover: { contentFormat: ['plaintext'] } } });
    expect(await hoverAt(placeOf('4 tablespoons'))).toMatch(
      /^4 tablespoons olive oil, divided\nAmount: 4 tablespoons\n/,
    );
  });
});

describe('going from place to place', () => {
  it('leads from a mention to its listing, and from a link to the heading it names', async () => {
    await start();
    const [listing] = await editor.ask<LocationLink[]>(
      'textDocument/definition',
      about(placeOf('oil over', 2)),
    );
    expect(wordsIn(listing!.targetSelectionRange)).toBe('4 tablespoons olive oil, divided');
    const [heading] = await editor.ask<LocationLink[]>(
      'textDocument/definition',
      about(placeOf('the stock]')),
    );
    expect(heading!.targetUri).toBe(uriOf(folder, 'sauces/stock.md'));
    expect(wordsIn(heading!.targetSelectionRange, stock)).toBe('Brown Stock');
  });

  it('finds the uses of a listing, with the listing where it is wanted', async () => {
    await start();
    const at = about(placeOf('olive'));
    const used = await editor.ask<Location[]>('textDocument/references', {
      ...at,
      context: { includeDeclaration: false },
    });
    expect(used.map(({ range }) => [range.start.line, wordsIn(range)])).toEqual([
      [12, 'oil'],
      [13, 'oil'],
    ]);
    const all = await editor.ask<Location[]>('textDocument/references', {
      ...at,
      context: { includeDeclaration: true },
    });
    expect(all).toHaveLength(3);
    const lit = await editor.ask<DocumentHighlight[]>(
      'textDocument/documentHighlight',
      about(placeOf('oil over')),
    );
    expect(lit.map(({ range, kind }) => [range.start.line, kind])).toEqual([
      [6, 3],
      [12, 2],
      [13, 2],
    ]);
  });

  it('shows the outline: recipe, lists with their lines, method with its steps', async () => {
    await start();
    const [recipe] = await editor.ask<DocumentSymbol[]>('textDocument/documentSymbol', {
      textDocument: { uri },
    });
    expect(recipe!.name).toBe('Fried Onions');
    expect(recipe!.children!.map(({ name, children }) => [name, children!.length])).toEqual([
      ['List', 3],
      ['Method', 3],
    ]);
  });

  it('shows a flat outline to an editor that knows no other', async () => {
    await start({});
    const symbols = await editor.ask<SymbolInformation[]>('textDocument/documentSymbol', {
      textDocument: { uri },
    });
    expect(symbols.map(({ name, containerName }) => `${containerName ?? ''}/${name}`).slice(0, 3)).toEqual([
      '/Fried Onions',
      'Fried Onions/List',
      'List/4 tablespoons olive oil, divided',
    ]);
  });

  it('finds recipes by letters of their titles', async () => {
    await start();
    const found = await editor.ask<SymbolInformation[]>('workspace/symbol', { query: 'fron' });
    expect(found.map(({ name }) => name)).toEqual(['Fried Onions']);
    expect(await editor.ask('workspace/symbol', { query: 'cake' })).toEqual([]);
  });
});

describe('completion', () => {
  const typed = async (text: string, after: string): Promise<CompletionItem[]> => {
    await start(able, text);
    return editor.ask('textDocument/completion', about(placeOf(after, after.length, text)));
  };

  it('has the listed foods inside the method, in place of what is typed of them', async () => {
    const items = await typed(
      fried.replace('Stir, and add the cream.', 'Stir in the olive o'),
      'the olive o',
    );
    expect(items.map(({ label }) => label)).toEqual(['olive oil', 'onions', 'breadcrumbs']);
    expect(
      wordsIn(
        (items[0]!.textEdit as { range: Location['range'] }).range,
        fried.replace('Stir, and add the cream.', 'Stir in the olive o'),
      ),
    ).toBe('olive o');
  });

  it('has them in a step that is just begun', async () => {
    const text = `${fried}4. `;
    expect(await typed(text, '\n4. ')).toHaveLength(3);
  });

  it('has the names of the rules inside a stet that is not closed yet', async () => {
    const items = await typed(
      fried.replace('the cream.', 'the cream. <!-- stet unlisted-in'),
      '<!-- stet unlisted-in',
    );
    expect(items.map(({ label }) => label)).toContain('unlisted-ingredient');
    expect(items.map(({ label }) => label)).toContain('unused-ingredient');
  });

  it('has nothing on the list or in the headnote', async () => {
    expect(await typed(fried, '- 2 (14½-ounce) cans')).toEqual([]);
    expect(await typed(fried, 'Serves')).toEqual([]);
  });
});

describe('positions', () => {
  const text = fried.replace('Stir, and', '🥄 Rühren, and');
  it.each([
    ['utf-16', ['utf-16', 'utf-8'], '3. 🥄 Rühren, and add the '.length],
    ['utf-8', ['utf-8', 'utf-16'], Buffer.byteLength('3. 🥄 Rühren, and add the ')],
  ])('count in %s where the editor likes that best', async (encoding, positionEncodings, column) => {
    await start({ ...able, general: { positionEncodings } }, text);
    expect(editor.answer.capabilities.positionEncoding).toBe(encoding);
    const cream = (await editor.settled(uri)).find(({ code }) => code === 'unlisted-ingredient')!;
    expect(cream.range.start.character).toBe(column);
    const spoon = (at: number, length = 0) => ({
      start: { line: 14, character: at },
      end: { line: 14, character: at + length },
    });
    // One spoon more before the cream, and the first taken away: each change counts in the text that the one before left.
    const wide = encoding === 'utf-8' ? Buffer.byteLength('🥄 ') : '🥄 '.length;
    await editor.change(uri, [
      { range: spoon(column), text: '🥄 ' },
      { range: spoon(3, wide), text: '' },
    ]);
    const later = (await editor.settled(uri)).find(({ code }) => code === 'unlisted-ingredient')!;
    expect(later.range).toEqual(cream.range);
    await editor.change(uri, [{ range: spoon(column, 'cream'.length), text: 'butter' }]);
    expect((await editor.settled(uri)).map(({ message }) => message)).toContainEqual(
      expect.stringMatching(/^"butter"/),
    );
  });
});
