/**
 * Makes the larder's tables of weights from USDA SR28: run as `npm run sr28 -- FOLDER`, where FOLDER holds foods.tsv and measures.tsv.
 * A larder food is joined to SR28 by the NDB number of its own row, or by a row of joins.yaml.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { measureOf, type PieceWeight, type VolumeWeight } from './measures.js';

interface Join {
  readonly food: string;
  readonly ndb: string;
  /** The food's names, lower case, by which SR28 may call a piece of it. */
  readonly names: readonly string[];
}

const [, , folder] = process.argv;
if (folder === undefined) {
  console.error('make-tables: give the folder that holds foods.tsv and measures.tsv of SR28');
  process.exit(2);
}

const larder = new URL('../', import.meta.url);
const measures = new Map<string, (readonly [number, string, number])[]>();
for (const [ndb, amount, text, grams] of table('measures.tsv')) {
  const rows = measures.get(ndb!) ?? [];
  rows.push([Number(amount), text!, Number(grams)]);
  measures.set(ndb!, rows);
}
const refuse = new Map(
  table('foods.tsv').map(([ndb, , , what, percent]) => [ndb!, { what: what!, percent: Number(percent) }]),
);

const volumes: string[] = [];
const pieces: string[] = [];
const refuses: string[] = [];
for (const { food, ndb, names } of joins()) {
  const found = (measures.get(ndb) ?? []).flatMap((row) => measureOf(...row, names) ?? []);
  const byVolume = found.filter((one) => one.kind === 'volume');
  const byPiece = found.filter((one) => one.kind === 'piece');
  if (byVolume.length > 0) volumes.push(row(food, ndb, `weights: [${distinct(byVolume.map(volumeText))}]`));
  if (byPiece.length > 0) pieces.push(row(food, ndb, `weights: [${distinct(byPiece.map(pieceText))}]`));
  const waste = refuse.get(ndb);
  if (waste !== undefined && waste.percent > 0)
    refuses.push(
      row(food, ndb, `percent: ${waste.percent}, what: ${JSON.stringify(waste.what.toLowerCase())}`),
    );
}

const SOURCE = `# Source: USDA National Nutrient Database for Standard Reference, release 28 (2015), a work of the US government, in the public domain;
# each row has its NDB number. Made by src/larder/sr28/make-tables.ts: change that, or src/larder/sr28/joins.yaml, and not this file.`;
write(
  'volumes.yaml',
  volumes,
  "# What a volume of a food weighs. A weight is [amount, unit (US customary), wording, grams]; the wording is SR28's own: chopped, sifted, packed.",
);
write(
  'pieces.yaml',
  pieces,
  '# What a piece of a food weighs, edible part. A weight is [count, unit ("" for the thing itself), size and wording, grams].',
);
write(
  'refuse.yaml',
  refuses,
  '# What is thrown away of a food as bought, in percent of its weight: bone, shell, peel.',
);
console.log(`volumes ${volumes.length}, pieces ${pieces.length}, refuse ${refuses.length}`);

function joins(): Join[] {
  const foods = readdirSync(new URL('foods/', larder))
    .filter((file) => file.endsWith('.yaml'))
    .sort()
    .flatMap(
      (file) => read(new URL(`foods/${file}`, larder)) as { name: string; also?: string[]; source: string }[],
    );
  const namesOf = new Map(
    foods.map((food) => [food.name, [food.name, ...(food.also ?? [])].map((name) => name.toLowerCase())]),
  );
  const own = foods.flatMap((food) => {
    const ndb = /SR28 (\d{5})/.exec(food.source)?.[1];
    return ndb === undefined ? [] : [{ food: food.name, ndb }];
  });
  const more = read(new URL('joins.yaml', import.meta.url)) as { food: string; ndb: string }[];
  for (const { food } of more)
    if (!namesOf.has(food)) throw new Error(`joins.yaml: "${food}" is no food of the larder`);
  return [...own, ...more]
    .map((one) => ({ ...one, names: namesOf.get(one.food)! }))
    .sort((a, b) => (a.food === b.food ? compare(a.ndb, b.ndb) : compare(a.food, b.food)));
}

function table(file: string): string[][] {
  const [, ...lines] = readFileSync(join(folder!, file), 'utf8').trimEnd().split('\n');
  return lines.map((line) => line.split('\t'));
}

function read(file: URL): unknown {
  return parse(readFileSync(file, 'utf8'));
}

function row(food: string, ndb: string, rest: string): string {
  return `- { food: ${JSON.stringify(food)}, ndb: "${ndb}", ${rest} }`;
}

function volumeText({ amount, unit, wording, grams }: VolumeWeight): string {
  return `[${amount}, ${unit}, ${JSON.stringify(wording)}, ${grams}]`;
}

function pieceText({ count, unit, wording, grams }: PieceWeight): string {
  return `[${count}, ${JSON.stringify(unit)}, ${JSON.stringify(wording)}, ${grams}]`;
}

function distinct(texts: readonly string[]): string {
  return [...new Set(texts)].join(', ');
}

function write(file: string, rows: readonly string[], head: string): void {
  writeFileSync(new URL(`sr28/${file}`, larder), `${head}\n${SOURCE}\n${rows.join('\n')}\n`);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
