/** The layers import downwards only, as DEVELOPERS.md lists them. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const root = new URL('../', import.meta.url);
/** From the ground up. A layer imports from itself and from those before it. */
const layers = [
  'src/larder',
  'src/arithmetic',
  'src/grammar',
  'src/manuscript',
  'src/anatomy',
  'src/kitchen',
  'rules',
  'src/reading',
  'src/mending',
  'src/reports',
  'src/editor',
  'src/cli',
];
/** Arithmetic works on the grammar's measures; it may know their type, and nothing that runs. */
const TYPES_ONLY = [['src/arithmetic', 'src/grammar']];

const files = ['src', 'rules'].flatMap((top) =>
  readdirSync(new URL(`${top}/`, root), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => `${top}/${file}`),
);

const layerOf = (path: string): number =>
  layers.findIndex((layer) => path.startsWith(`${layer}/`) || path === `${layer}.ts`);

it('no file imports from a layer above its own', () => {
  const wrong: string[] = [];
  for (const file of files) {
    const own = layerOf(file);
    if (own < 0) continue;
    const text = readFileSync(new URL(file, root), 'utf8');
    for (const [, type, target] of text.matchAll(/^(?:import|export)( type)?[^;]*? from '(\.[^']+)'/gm)) {
      const path = new URL(target!, new URL(file, root)).href.slice(root.href.length);
      const other = layerOf(path.replace(/\.js$/, '.ts'));
      const allowed = TYPES_ONLY.some(
        ([from, to]) => layers[own] === from && layers[other] === to && type !== undefined,
      );
      if (other > own && !allowed) wrong.push(`${file} imports ${path}`);
    }
  }
  expect(wrong).toEqual([]);
});

it('only the command line touches files, and no layer below it prints', () => {
  const touching = files.filter((file) => {
    const text = readFileSync(new URL(file, root), 'utf8');
    return /from 'node:fs|(?<!connection\.)console\.|process\.std/.test(text);
  });
  const allowed =
    /^src\/(cli|larder\/(load|read-yaml|compile|sr28\/make-tables)|reports\/write-schemas|editor\/write-explanations|version)/;
  expect(touching.filter((file) => !allowed.test(file))).toEqual([]);
});

it('what only an editor needs is not loaded for a reading', () => {
  const loaded = new Set<string>();
  const packages = new Set<string>();
  const load = (file: string): void => {
    if (loaded.has(file)) return;
    loaded.add(file);
    const text = readFileSync(new URL(file, root), 'utf8');
    for (const [, type, target] of text.matchAll(/^(?:import|export)( type)?[^;]*? from '([^']+)'/gm)) {
      if (type !== undefined) continue;
      if (target!.startsWith('.'))
        load(new URL(target!, new URL(file, root)).href.slice(root.href.length).replace(/\.js$/, '.ts'));
      else packages.add(target!);
    }
  };
  load('src/cli.ts');
  expect(loaded.size).toBeGreaterThan(50);
  expect([...loaded].filter((file) => file.startsWith('src/editor/'))).toEqual([]);
  expect([...packages].filter((name) => name.startsWith('vscode-'))).toEqual([]);
});
