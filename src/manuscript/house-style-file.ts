/** Reads the text of a house-style.yaml: the style, or what is wrong with it, each with its line and key. */
import { distance } from 'fastest-levenshtein';
import { isMap, isScalar, LineCounter, type Node, parseDocument } from 'yaml';
import { z } from 'zod';
import { foodNamed, foodNames } from '../larder/foods.js';
import { type HouseStyle, type Ruling, undecided } from './house-style.js';
import { type HouseStyleFile, houseStyleSchema } from './house-style-schema.js';

export interface StyleTrouble {
  /** From 1. */
  readonly line: number;
  readonly what: string;
}

/** The style that the text states, or everything that is wrong with it, in the order of its lines. */
export function readHouseStyle(
  text: string,
  rules: readonly string[],
  home = '',
): { readonly style: HouseStyle } | { readonly troubles: readonly StyleTrouble[] } {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines });
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
  } else {
    for (const [index, name] of (result.data.unlisted ?? []).entries()) {
      if (foodNamed(name) !== null) continue;
      const near = nearest(name, foodNames());
      troubles.push({
        line: lineOf(['unlisted', index], false),
        what: `"unlisted": the larder knows no food "${name}"; the nearest is "${near}"`,
      });
    }
    if (troubles.length === 0) return { style: styleOf(result.data, home) };
  }
  return { troubles: troubles.toSorted((a, b) => a.line - b.line) };
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
    tolerances: file.tolerances ?? null,
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
