/** Reads the YAML tables of this folder and checks every row. Used when the package is built and when it runs from source. */
import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { fold } from './names.js';
import { type Tables, tables } from './schema.js';

/** All tables under `folder` (a file URL ending in "/"), validated. Throws with the file, the row and the reason where one is wrong. */
export function readTables(folder: URL): Tables {
  const rows = (file: string): unknown[] => {
    const value: unknown = parse(readFileSync(new URL(file, folder), 'utf8')) ?? [];
    if (!Array.isArray(value)) throw new Error(`larder: ${file} must be a sequence of rows`);
    return value;
  };
  const foodFiles = readdirSync(new URL('foods/', folder))
    .filter((file) => file.endsWith('.yaml'))
    .sort();
  const result = tables.safeParse({
    foods: foodFiles.flatMap((file) => rows(`foods/${file}`)),
    units: rows('units.yaml'),
    techniques: rows('techniques.yaml'),
    vessels: rows('vessels.yaml'),
    lexicon: rows('lexicon.yaml'),
    kitchenWords: rows('kitchen-words.yaml'),
    hazardWords: rows('hazard-words.yaml'),
    limits: rows('limits.yaml'),
    safeTemperatures: rows('safe-temperatures.yaml'),
    headings: rows('headings.yaml'),
  });
  if (!result.success) {
    const issue = result.error.issues[0]!;
    throw new Error(`larder: ${issue.path.join('.')}: ${issue.message}`);
  }
  checkNames(result.data);
  return result.data;
}

/** Two foods may not share a name, and every kind and whole must be a food. */
function checkNames(data: Tables): void {
  const known = new Map<string, string>();
  for (const food of data.foods) {
    for (const name of [food.name, ...food.also]) {
      const holder = known.get(fold(name));
      if (holder !== undefined && holder !== food.name)
        throw new Error(`larder: "${name}" stands in "${food.name}" and in "${holder}"`);
      known.set(fold(name), food.name);
    }
  }
  const names = new Set(data.foods.map((food) => food.name));
  for (const food of data.foods) {
    for (const other of [
      ...food.kinds,
      ...food.from,
      ...(food.uncounted === undefined ? [] : [food.uncounted]),
    ]) {
      if (!names.has(other)) throw new Error(`larder: "${food.name}" refers to "${other}", which is no food`);
    }
  }
}
