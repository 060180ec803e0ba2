/** Reads the YAML tables of this folder and checks every row. Used when the package is built and when it runs from source. */
import { createHash } from 'node:crypto';
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
    kitchenWords: ['kitchen-words.yaml', 'heat-words.yaml', 'safety-words.yaml'].flatMap((file) =>
      rows(file),
    ),
    hazardWords: rows('hazard-words.yaml'),
    hazardLimits: rows('hazard-limits.yaml'),
    safeTemperatures: rows('safe-temperatures.yaml'),
    ovenScale: rows('oven-scale.yaml'),
    ovenLimits: rows('oven-limits.yaml'),
    heatTolerances: rows('heat-tolerances.yaml'),
    timeTolerances: rows('time-tolerances.yaml'),
    headings: rows('headings.yaml'),
    volumeWeights: rows('sr28/volumes.yaml'),
    moreWeights: rows('more-weights.yaml'),
    pieceWeights: rows('sr28/pieces.yaml'),
    refuse: rows('sr28/refuse.yaml'),
    parts: rows('parts.yaml'),
    tolerances: rows('tolerances.yaml'),
    roundings: rows('roundings.yaml'),
    toleranceEditions: rows('tolerance-editions.yaml'),
    limits: rows('limits.yaml'),
    suits: rows('suits.yaml'),
  });
  if (!result.success) {
    const issue = result.error.issues[0]!;
    throw new Error(`larder: ${issue.path.join('.')}: ${issue.message}`);
  }
  checkNames(result.data);
  checkEdition(result.data);
  return result.data;
}

/** Whoever changes a tolerance changes how books are marked that others pinned to it: the change has a date. */
function checkEdition(data: Tables): void {
  const { edition, figures } = data.toleranceEditions.at(-1)!;
  const now = figuresOf(data);
  if (now !== figures)
    throw new Error(
      `larder: tolerances have changed since the edition of ${edition}: add one with the day's date and figures "${now}" to tolerance-editions.yaml`,
    );
}

/** The figures of all tolerances in twelve digits; their reasons may be put better without a new edition. */
export function figuresOf({
  tolerances,
  roundings,
  heatTolerances,
  timeTolerances,
}: Pick<Tables, 'tolerances' | 'roundings' | 'heatTolerances' | 'timeTolerances'>): string {
  const text = JSON.stringify(
    [tolerances, roundings, heatTolerances, timeTolerances],
    (key, value: unknown) => (key === 'why' || key === 'source' ? undefined : value),
  );
  return createHash('sha256').update(text).digest('hex').slice(0, FIGURES);
}

const FIGURES = 12;

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
  const units = new Set(data.units.map((unit) => unit.id));
  checkReferences('food', names, [
    ...data.volumeWeights.map((row) => row.food),
    ...data.moreWeights.map((row) => row.food),
    ...data.pieceWeights.map((row) => row.food),
    ...data.refuse.map((row) => row.food),
    ...data.parts.flatMap((row) => [row.part, row.whole]),
    ...data.tolerances.flatMap((row) => row.foods),
    ...data.limits.map((row) => row.food),
    ...data.suits.flatMap((row) => row.never),
  ]);
  checkReferences('unit', units, [
    ...[...data.volumeWeights, ...data.moreWeights].flatMap((row) => row.weights.map(([, unit]) => unit)),
    ...data.pieceWeights.flatMap((row) => row.weights.flatMap(([, unit]) => (unit === '' ? [] : [unit]))),
    ...data.roundings.flatMap((row) => [row.unit, row.of]),
    ...data.limits.flatMap((row) => row.unit ?? []),
    ...data.suits.map((row) => row.unit),
  ]);
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

/** The tables of weights, tolerances and limits speak of foods and units that the larder has. */
function checkReferences(what: string, known: ReadonlySet<string>, named: readonly string[]): void {
  for (const one of named)
    if (!known.has(one)) throw new Error(`larder: a table speaks of "${one}", which is no ${what}`);
}
