/** The shape of every table of the larder: what a row must say, checked by zod when the tables are compiled and in the tests. */
import { z } from 'zod';

const source = z.string().min(4);
const name = z.string().regex(/^[\p{L}\p{N}][\p{L}\p{N} '’&.%/-]*$/u);
const names = z.array(name).default([]);
/** An exact rational, as text: "5", "236.5882365", "5/9". */
const rational = z.string().regex(/^\d+(\.\d+)?(\/\d+)?$/);

export const safetyClasses = [
  'poultry',
  'ground-meat',
  'whole-cut',
  'fish',
  'shellfish',
  'egg',
  'ham',
  'offal',
] as const;

export const foodRow = z.strictObject({
  name,
  also: names,
  /** Only where it is not made by rule from the last word. */
  plural: name.optional(),
  /** The foods of which this is a kind. */
  kinds: names,
  /** The whole foods from whose listing this can be had in the kitchen. */
  from: names,
  /** Names a class without telling the food. */
  generic: z.boolean().default(false),
  /** The food that the bare word means where it is not counted: "pepper" in "salt and pepper". */
  uncounted: name.optional(),
  /** An animal food eaten as bought. */
  ready: z.boolean().default(false),
  /** A finished dish rather than an ingredient. */
  dish: z.boolean().default(false),
  safety: z.enum(safetyClasses).optional(),
  source,
});

export const unitKinds = [
  'volume',
  'mass',
  'length',
  'time',
  'temperature',
  'container',
  'piece',
  'vague',
] as const;

export const unitRow = z.strictObject({
  /** Singular, in full, words joined by hyphens: "fluid-ounce". */
  id: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  /** The names that mean it in any case of letters; plurals of the last word are made by rule. */
  names: z.array(z.string().min(1)),
  /** Short forms, with no full stop; a plural s is accepted too where `plural` says so. */
  short: z.array(z.string().min(1)).default([]),
  /** Short forms whose letter case tells: "T" is not "t". */
  exact: z.array(z.string().min(1)).default([]),
  kind: z.enum(unitKinds),
  /** In the base of its kind: millilitres, grams, millimetres, seconds. */
  milliliters: rational.optional(),
  grams: rational.optional(),
  millimeters: rational.optional(),
  seconds: rational.optional(),
  /** Other sizes of the same name, by the system that has them, in the same base. */
  elsewhere: z.partialRecord(z.enum(['us-legal', 'metric', 'imperial', 'australian']), rational).default({}),
  /** A container or piece whose size the reader cannot know: "can", "bunch". */
  unclear: z.boolean().default(false),
  source,
});

export const techniqueRow = z.strictObject({
  /** The verb's base form. */
  name,
  /** Other verbs that mean the same. */
  also: names,
  /** Forms that are not made by rule: past, participle. */
  forms: names,
  /** The food that the verb itself puts on: "butter the dish" is a use of butter. */
  implies: name.optional(),
  /** Is more often the food than the verb: "cream", "bread". */
  noun: z.boolean().default(false),
  /** Says by itself when to stop: "brown", "melt", "reduce". */
  ends: z.boolean().default(false),
  /** What the verb does with what it names. */
  does: z.array(
    z.enum([
      'add',
      'cut',
      'combine',
      'season',
      'coat',
      'garnish',
      'heat',
      'dry-heat',
      'chill',
      'rest',
      'remove',
      'drain',
      'serve',
      'shape',
      'fill',
      'prepare',
      'oven',
      'hold',
    ]),
  ),
  source,
});

export const vesselRow = z.strictObject({
  name,
  also: names,
  /** Used in the oven, so that its size matters for a bake. */
  baking: z.boolean().default(false),
  source,
});

export const lexiconRow = z.strictObject({
  /** A word or a fixed phrase, lower case. */
  word: z.string().min(1),
  /** What it is: see the head of lexicon.yaml. */
  is: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  /** What it stands for, where that is a value: "3" for "three", "about" for "roughly". */
  means: z.string().optional(),
  source,
});

export const safeTemperatureRow = z.strictObject({
  safety: z.enum(safetyClasses),
  /** Whole degrees Fahrenheit and Celsius as the chart prints them. */
  fahrenheit: z.number().int(),
  celsius: z.number().int(),
  restMinutes: z.number().int().default(0),
  label: z.string(),
  source,
});

/** A figure that a published source sets for time, in one unit. */
export const limitRow = z.strictObject({
  /** What is limited, words joined by hyphens: "hold-at-room-temperature". */
  limit: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  minutes: z.number().int().optional(),
  hours: z.number().int().optional(),
  days: z.number().int().optional(),
  /** For heat limits, in whole degrees Fahrenheit. */
  fahrenheit: z.number().int().optional(),
  source,
});

export const headingKinds = [
  'list',
  'method',
  'notes',
  'storage',
  'nutrition',
  'equipment',
  'yield',
  'times',
  'headnote',
  'serving',
  'recipe',
  'matter',
  'alternative',
  'amounts',
  'connector',
  'lead',
  'opener',
  'joiner',
  'time-prep',
  'time-cook',
  'time-total',
  'time-rest',
  'time-other',
] as const;

export const headingRow = z.strictObject({
  heading: z.string().min(1),
  /** What it stands over: see the head of headings.yaml. */
  is: z.enum(headingKinds),
  /** Where it stands before a value on one line: only with a colon, or without one too. */
  label: z.enum(['colon', 'open']).optional(),
  source,
});

export type SafetyClass = (typeof safetyClasses)[number];
export type UnitKind = (typeof unitKinds)[number];
export type FoodRow = z.infer<typeof foodRow>;
export type Food = FoodRow;
export type Unit = z.infer<typeof unitRow>;
export type Technique = z.infer<typeof techniqueRow>;
export type Vessel = z.infer<typeof vesselRow>;
export type LexiconWord = z.infer<typeof lexiconRow>;
export type Limit = z.infer<typeof limitRow>;
export type SafeTemperature = z.infer<typeof safeTemperatureRow>;

/** All tables, as compiled. */
export const tables = z.strictObject({
  foods: z.array(foodRow),
  units: z.array(unitRow),
  techniques: z.array(techniqueRow),
  vessels: z.array(vesselRow),
  lexicon: z.array(lexiconRow),
  kitchenWords: z.array(lexiconRow),
  hazardWords: z.array(lexiconRow),
  limits: z.array(limitRow),
  safeTemperatures: z.array(safeTemperatureRow),
  headings: z.array(headingRow),
});
export type Tables = z.infer<typeof tables>;
