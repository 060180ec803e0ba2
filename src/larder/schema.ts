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
  'cooked-ham',
  'offal',
  'leftover',
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
      'pieces',
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
  /** Whole degrees Fahrenheit from which the rest is not needed. */
  restless: z.number().int().optional(),
  label: z.string(),
  source,
});

/** A figure that a published source sets for time, in one unit. */
export const hazardLimitRow = z.strictObject({
  /** What is limited, words joined by hyphens: "hold-at-room-temperature". */
  limit: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  minutes: z.number().int().optional(),
  hours: z.number().int().optional(),
  days: z.number().int().optional(),
  /** For heat limits, in whole degrees Fahrenheit. */
  fahrenheit: z.number().int().optional(),
  source,
});

export const ovenMarkRow = z.strictObject({
  /** The mark of a gas oven, as a fraction. */
  mark: rational,
  fahrenheit: z.number().int(),
  /** The usual figure first. */
  celsius: z.array(z.number().int()).min(1),
  source,
});

export const heatToleranceRow = z.strictObject({
  compares: z.enum(['food', 'oven', 'gas', 'fan', 'difference']),
  /** Degrees Celsius up to which two statements agree, and beyond which they disagree. */
  right: z.number().positive(),
  wrong: z.number().positive(),
  source,
});

export const ovenLimitRow = z.strictObject({
  what: z.enum(['fan-drop', 'coolest', 'hottest']),
  celsius: z.number().int(),
  fahrenheit: z.number().int(),
  source,
});

export const timeToleranceRow = z.strictObject({
  compares: z.enum(['sum', 'unexplained', 'steps', 'steps-in-all', 'same-step', 'promise']),
  minutes: z.number().int().nonnegative(),
  /** Of the longer of the two. */
  share: rational,
  source,
});

/** A row of SR28: five digits. */
const ndb = z.string().regex(/^\d{5}$/);

export const volumeWeightRow = z.strictObject({
  food: name,
  ndb,
  /** Amount, unit of volume (US customary), SR28's wording, grams. */
  weights: z.array(z.tuple([z.number().positive(), z.string(), z.string(), z.number().positive()])).min(1),
});

/** A weight that SR28 does not have. */
export const moreWeightRow = z.strictObject({
  food: name,
  weights: z.array(z.tuple([z.number().positive(), z.string(), z.string(), z.number().positive()])).min(1),
  source,
});

export const pieceWeightRow = z.strictObject({
  food: name,
  ndb,
  /** Count, unit of a piece (empty for the thing itself), size and wording, grams of the edible part. */
  weights: z.array(z.tuple([z.number().positive(), z.string(), z.string(), z.number().positive()])).min(1),
});

export const refuseRow = z.strictObject({
  food: name,
  ndb,
  /** What is thrown away, in percent of the weight as bought. */
  percent: z.number().min(1).max(99),
  what: z.string(),
});

export const partRow = z.strictObject({ part: name, whole: name, grams: z.number().positive(), source });

export const toleranceNames = [
  'mass',
  'volume',
  'length',
  'weight-of-volume',
  'weight-of-pieces',
  'drift',
  'weight-drift',
  'boned',
] as const;

export const toleranceRow = z.strictObject({
  tolerance: z.enum(toleranceNames),
  /** The largest difference that passes, as a share of the larger amount. */
  share: rational,
  /** A difference that always passes: milliliters, grams or millimeters. */
  step: rational,
  /** The share from which on no rounding explains the difference. */
  query: rational,
  /** The foods, with their kinds, of which the row holds; none for all others. */
  foods: names,
  why: z.string().min(10),
  source,
});

/** A conversion that whole books use: `amount` of `unit` is `is` of `of`. */
export const roundingRow = z.strictObject({
  amount: rational,
  unit: z.string(),
  is: rational,
  of: z.string(),
  /** So many of the unit at most, whatever else the recipe keeps to. */
  always: rational.optional(),
  source,
});

/** The tables of tolerances and roundings as they stand from a day on. */
export const toleranceEditionRow = z.strictObject({
  edition: z.string().regex(/^\d{4}-\d\d-\d\d$/),
  /** What their figures come to, so that none changes without a new edition. */
  figures: z.string().regex(/^[\da-f]{12}$/),
  changed: z.string().min(4),
});

export const limitRow = z.strictObject({
  food: name,
  most: rational,
  /** A unit of volume; none where pieces are counted. */
  unit: z.string().optional(),
  per: z.enum(['serving', 'recipe']),
  /** Whether the limit does not hold where food is brined, cured, pickled or preserved. */
  kept: z.boolean().default(false),
  source,
});

export const suitRow = z.strictObject({
  unit: z.string(),
  /** The foods, with their kinds, that do not come in this unit. */
  never: z.array(name).min(1),
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
export type SafeTemperature = z.infer<typeof safeTemperatureRow>;
export type ToleranceName = (typeof toleranceNames)[number];
export type Limit = z.infer<typeof limitRow>;

/** All tables, as compiled. */
export const tables = z.strictObject({
  foods: z.array(foodRow),
  units: z.array(unitRow),
  techniques: z.array(techniqueRow),
  vessels: z.array(vesselRow),
  lexicon: z.array(lexiconRow),
  kitchenWords: z.array(lexiconRow),
  hazardWords: z.array(lexiconRow),
  hazardLimits: z.array(hazardLimitRow),
  safeTemperatures: z.array(safeTemperatureRow),
  ovenScale: z.array(ovenMarkRow),
  ovenLimits: z.array(ovenLimitRow),
  heatTolerances: z.array(heatToleranceRow),
  timeTolerances: z.array(timeToleranceRow),
  headings: z.array(headingRow),
  volumeWeights: z.array(volumeWeightRow),
  moreWeights: z.array(moreWeightRow),
  pieceWeights: z.array(pieceWeightRow),
  refuse: z.array(refuseRow),
  parts: z.array(partRow),
  tolerances: z.array(toleranceRow),
  roundings: z.array(roundingRow),
  toleranceEditions: z.array(toleranceEditionRow).min(1),
  limits: z.array(limitRow),
  suits: z.array(suitRow),
});
export type Tables = z.infer<typeof tables>;
