/** Reads the text of a house-style.yaml: the style, or what is wrong with it, each with its line and key. */
import { distance } from 'fastest-levenshtein';
import { isMap, isScalar, LineCounter, type Node, parseDocument } from 'yaml';
import { z } from 'zod';
import { foodNamed, foodNames } from '../larder/foods.js';
import { larder } from '../larder/load.js';
import { otherNames, otherSpellings } from '../larder/other-names.js';
import { toleranceEdition } from '../larder/tolerances.js';
import { unitNamed } from '../larder/units.js';
import { type HouseStyle, type Ruling, undecided } from './house-style.js';
import { type HouseStyleFile, houseStyleSchema } from './house-style-schema.js';

export interface StyleTrouble {
  /** From 1. */
  readonly line: number;
  readonly what: string;
}

/** A file or folder that the style names, and where. */
export interface NamedPath {
  readonly line: number;
  readonly key: string;
  readonly path: string;
}

/** The style that the text states with the paths that it names, or everything that is wrong with it, in the order of its lines. */
export function readHouseStyle(
  text: string,
  rules: readonly string[],
  home = '',
):
  | { readonly style: HouseStyle; readonly paths: readonly NamedPath[] }
  | { readonly troubles: readonly StyleTrouble[] } {
  const lines = new LineCounter();
  // What is odd about the YAML is told below, by line, and not by the library on its own.
  const document = parseDocument(text, { lineCounter: lines, logLevel: 'silent' });
  const troubles: StyleTrouble[] = document.errors.map((error) => ({
    line: lines.linePos(error.pos[0]).line,
    what: `this is not YAML: ${error.message.split('\n')[0]!.replace(/ at line \d+, column \d+:?$/, '')}`,
  }));
  if (troubles.length > 0) return { troubles };
  const schema = houseStyleSchema(rules);
  const value: unknown = document.toJS() ?? {};
  const result = schema.safeParse(value);
  const lineOf = (path: readonly PropertyKey[], key: boolean): number =>
    lines.linePos(placeOf(document.contents, path, key)).line || 1;
  if (!result.success) {
    const shape = z.toJSONSchema(schema) as Shape;
    for (const issue of result.error.issues) {
      if (issue.code === 'unrecognized_keys') {
        for (const key of issue.keys) {
          const line = lineOf([...issue.path, key], true);
          troubles.push({ line, what: unknownKey(key, issue.path, keysAt(shape, issue.path)) });
        }
      } else {
        troubles.push({ line: lineOf(issue.path, false), what: wrongValue(issue, value) });
      }
    }
  }
  for (const { path, what } of unknownWords(value)) troubles.push({ line: lineOf(path, false), what });
  if (!result.success || troubles.length > 0)
    return { troubles: troubles.toSorted((a, b) => a.line - b.line) };
  const { matter = [], folders = {} } = result.data;
  return {
    style: styleOf(result.data, home),
    paths: [
      ...matter.map((path, index) => ({ line: lineOf(['matter', index], false), key: 'matter', path })),
      ...Object.keys(folders).map((path) => ({
        line: lineOf(['folders', path], true),
        key: 'folders',
        path,
      })),
    ],
  };
}

interface Unknown {
  readonly path: readonly PropertyKey[];
  readonly what: string;
}

/** Values that have the right shape and say something that the larder knows nothing of. */
function* unknownWords(file: unknown): Iterable<Unknown> {
  const { unlisted, units, terms, spellings } = isGroup(file) ? file : ({} as Record<string, unknown>);
  for (const [index, name] of (Array.isArray(unlisted) ? unlisted : []).entries()) {
    if (typeof name !== 'string' || foodNamed(name) !== null) continue;
    yield {
      path: ['unlisted', index],
      what: `"unlisted": the larder knows no food "${name}"; the nearest is "${nearest(name, foodNames())}"`,
    };
  }
  for (const [id, form] of Object.entries(isGroup(units) ? units : {})) {
    if (typeof form !== 'string' || !larder.units.some((unit) => unit.id === id)) continue;
    const means = unitNamed(form.replace(/\.$/, ''));
    if (means?.id === id) continue;
    const own = larder.units
      .filter((unit) => unit.id === id)
      .flatMap(({ names, short, exact }) => [...names, ...short, ...exact]);
    yield {
      path: ['units', id],
      what: `"units.${id}" is "${form}", which ${means === null ? 'is no way to write it that can be read' : `means a ${means.id.replaceAll('-', ' ')}`}; the nearest is "${nearest(form, own)}"`,
    };
  }
  yield* withoutOthers('terms', terms, otherNames, 'name');
  yield* withoutOthers('spellings', spellings, otherSpellings, 'spelling');
}

/** An empty list stands for all others that are known: where none is, it says nothing. */
function* withoutOthers(
  key: string,
  decided: unknown,
  others: (wanted: string) => readonly string[],
  what: string,
): Iterable<Unknown> {
  for (const [wanted, unwanted] of Object.entries(isGroup(decided) ? decided : {})) {
    if (!Array.isArray(unwanted) || unwanted.length > 0 || others(wanted).length > 0) continue;
    yield {
      path: [key, wanted],
      what: `"${key}.${wanted}" is empty, and the larder knows no other ${what} of "${wanted}": write those that are not wanted`,
    };
  }
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function styleOf(file: HouseStyleFile, home: string): HouseStyle {
  const { form = null, ...own } = file.units ?? {};
  const rulings = (within: string, rules: Readonly<Record<string, Ruling['weight'] | undefined>>): Ruling[] =>
    Object.entries(rules).flatMap(([rule, weight]) =>
      weight === undefined ? [] : [{ within, rule, weight }],
    );
  return {
    ...undecided,
    stated: true,
    home,
    system: file.system ?? undecided.system,
    hygiene: file.hygiene ?? undecided.hygiene,
    units: { form, own: own as Record<string, string> },
    numbers: file.numbers === 0.5 ? '0.5' : (file.numbers ?? null),
    ranges: file.ranges ?? null,
    temperatures: { form: file.temperatures?.form ?? null, order: file.temperatures?.order ?? null },
    terms: file.terms ?? {},
    spellings: file.spellings ?? {},
    yields: file.yields ?? null,
    titles: file.titles ?? null,
    listings: file.listings ?? null,
    unlisted: file.unlisted ?? [],
    matter: file.matter ?? [],
    rulings: [
      ...rulings('', file.rules ?? {}),
      ...Object.entries(file.folders ?? {}).flatMap(([within, rules]) => rulings(within, rules)),
    ],
  };
}

/** Where in the text the value at `path` stands, or its key. */
function placeOf(contents: Node | null, path: readonly PropertyKey[], key: boolean): number {
  let node: Node | null = contents;
  let place = contents?.range?.[0] ?? 0;
  path.forEach((part, index) => {
    if (isMap(node)) {
      const pair = node.items.find((each) => isScalar(each.key) && String(each.key.value) === String(part));
      const at = key && index === path.length - 1 ? pair?.key : (pair?.value ?? pair?.key);
      place = (at as Node | undefined)?.range?.[0] ?? place;
      node = (pair?.value as Node | null | undefined) ?? null;
    } else if (node !== null && 'items' in node) {
      const item = (node.items as unknown[])[Number(part)] as Node | undefined;
      place = item?.range?.[0] ?? place;
      node = item ?? null;
    }
  });
  return place;
}

/** As much of a JSON Schema as names the keys of its objects. */
interface Shape {
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly additionalProperties?: Shape | boolean;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Shape>>;
}

function keysAt(root: Shape, path: readonly PropertyKey[]): readonly string[] {
  const resolved = (shape: Shape | undefined): Shape | undefined =>
    shape?.$ref === undefined ? shape : root.$defs?.[shape.$ref.split('/').at(-1)!];
  let shape: Shape | undefined = root;
  for (const part of path) {
    const further: Shape | boolean | undefined =
      shape?.properties?.[String(part)] ?? shape?.additionalProperties;
    shape = typeof further === 'object' ? resolved(further) : undefined;
  }
  return Object.keys(shape?.properties ?? {});
}

function unknownKey(key: string, path: readonly PropertyKey[], keys: readonly string[]): string {
  const within = path.length === 0 ? '' : ` under "${path.join('.')}"`;
  const near = nearest(key, keys);
  return `"${key}" is no key of a house style${within}${near === null ? '' : `; the nearest is "${near}"`}`;
}

function wrongValue(issue: z.core.$ZodIssue, root: unknown): string {
  const key = issue.path.length === 0 ? 'the file' : `"${issue.path.join('.')}"`;
  const value = issue.path.reduce<unknown>(
    (at, part) =>
      typeof at === 'object' && at !== null ? (at as Record<PropertyKey, unknown>)[part] : undefined,
    root,
  );
  if (issue.path[0] === 'tolerances')
    return `${key} is ${said(value)}, and this version compares amounts by the tolerances of ${toleranceEdition}: read with a version that has the other, or look through the marks and set the date anew`;
  const choices = choicesOf(issue);
  if (choices !== null) {
    const near = nearest(String(value), choices);
    return `${key} is ${said(value)}, and must be one of ${choices.map((each) => `"${each}"`).join(', ')}; the nearest is "${near}"`;
  }
  if (issue.code === 'invalid_type')
    return `${key} is ${said(value)}, and must be ${KINDS[issue.expected] ?? issue.expected}`;
  return `${key} is ${said(value)}: ${issue.message}`;
}

function choicesOf(issue: z.core.$ZodIssue): readonly string[] | null {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  if (issue.code !== 'invalid_union') return null;
  const first = issue.errors[0]?.[0];
  return first?.code === 'invalid_value' ? first.values.map(String) : null;
}

const KINDS: Readonly<Record<string, string>> = {
  object: 'a group of keys with their values',
  record: 'a group of keys with their values',
  array: 'a list in square brackets',
  string: 'a word or words',
};

function said(value: unknown): string {
  if (value === undefined || value === null) return 'empty';
  return typeof value === 'object'
    ? Array.isArray(value)
      ? 'a list'
      : 'a group of keys'
    : `"${String(value)}"`;
}

function nearest(word: string, among: readonly string[]): string | null {
  let best: string | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const each of among) {
    const away = distance(word.toLowerCase(), each.toLowerCase());
    if (away < least) {
      best = each;
      least = away;
    }
  }
  return best;
}
