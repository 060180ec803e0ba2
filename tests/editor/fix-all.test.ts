/** All sure mends of a file at once, as `tamis mend` would make them: driven over the protocol, with the rules themselves. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CodeAction } from 'vscode-languageserver-protocol/node';
import type { Choice, sureChoices } from '../../src/mending/choice.js';
import { sureEdits } from '../../src/mending/mend.js';
import { readPage } from '../../src/reading/read.js';
import { manuscript, tamis } from '../cli/run.js';
import { able, BUSY, Editor, uriOf } from './editor.js';
import { carriedOut } from './edits.js';

const house = 'spellings: { yogurt: [yoghurt] }\nunits: { form: spelled out }\nranges: 3 to 5\n';
/** Five places that depart from the house style, and a range that runs downwards, of which only the author knows. */
const dip = `# Sluice-Keeper's Dip

Serves 4

- 1 cup yoghurt
- 2 tbsp olive oil
- 1 tsp salt

1. Whisk the yoghurt, the oil and the salt. Bake in a small dish at 350°F until set, 8 to 5 minutes.
2. Rest the dip 3–5 minutes.
`;
const mended = `# Sluice-Keeper's Dip

Serves 4

- 1 cup yogurt
- 2 tablespoons olive oil
- 1 teaspoon salt

1. Whisk the yogurt, the oil and the salt. Bake in a small dish at 350°F until set, 8 to 5 minutes.
2. Rest the dip 3 to 5 minutes.
`;

let editor: Editor;
let folder: string;
let uri: string;
/** One server for all that ask for nothing special: starting it takes longest. */
let usual: Editor;
beforeAll(async () => {
  usual = await Editor.start([]);
}, BUSY);
afterAll(() => usual.stop(), BUSY);

async function open(text: string, capabilities = able) {
  folder = manuscript({ 'house-style.yaml': house, 'dip.md': text, 'more.md': dip });
  uri = uriOf(folder, 'dip.md');
  editor = capabilities === able ? usual : await Editor.start([folder], capabilities);
  if (editor === usual) await editor.enter([folder], []);
  await editor.open(uri, text);
  await editor.settled(uri);
  const end = { line: text.split('\n').length - 1, character: 0 };
  const actions = (only?: string[]): Promise<CodeAction[]> =>
    editor.ask('textDocument/codeAction', {
      textDocument: { uri },
      range: { start: { line: 0, character: 0 }, end },
      context: { diagnostics: [], ...(only === undefined ? {} : { only }) },
    });
  return actions;
}

describe('all sure mends of a file', () => {
  it('are made together, and are those that the command makes; what is offered is left', async () => {
    const actions = await open(dip);
    for (const only of [['source.fixAll'], ['source'], ['source.fixAll.tamis']]) {
      const [all, ...others] = await actions(only);
      expect(others).toEqual([]);
      expect(all!.title).toBe('Make all sure mends in this file');
      expect(carriedOut(all!, uri, dip)).toBe(mended);
    }
    tamis(folder, ['mend', '--write', 'dip.md']);
    expect(readFileSync(path.join(folder, 'dip.md'), 'utf8')).toBe(mended);
  });

  it('are made when the action is taken, where the editor can ask for them then', async () => {
    const textDocument = { ...able.textDocument, codeAction: { resolveSupport: { properties: ['edit'] } } };
    const actions = await open(dip, { ...able, textDocument });
    const [all] = await actions(['source.fixAll']);
    expect(all!.edit).toBeUndefined();
    expect(carriedOut(await editor.ask('codeAction/resolve', all), uri, dip)).toBe(mended);
    await editor.stop();
  });

  it('are not offered where nothing is sure', async () => {
    const actions = await open(mended);
    expect(await actions(['source'])).toEqual([]);
  });

  it('are not made where a new mark would come of them', () => {
    const pages = [readPage({ path: 'dip.md', text: mended })];
    const worse = (marks: Parameters<typeof sureChoices>[0]): Choice[] =>
      marks.map((mark) => ({
        mark,
        mend: { label: 'worse', sure: true, edits: [{ span: mark.span, text: 'TK minutes' }] },
      }));
    expect(sureEdits(pages, 'dip.md', {}, worse)).toEqual([]);
  });

  it('each is offered by itself too, as the one to prefer; one that is not sure is not preferred', async () => {
    const actions = await open(dip);
    const mends = (await actions(['quickfix'])).filter(({ title }) => !title.includes('stet'));
    expect(mends.map(({ isPreferred }) => isPreferred ?? false)).toEqual([
      true,
      true,
      true,
      true,
      false,
      true,
    ]);
    expect(carriedOut(mends[4]!, uri, dip)).toBe(dip.replace('8 to 5', '5 to 8'));
  });
});
