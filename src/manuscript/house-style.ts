/** What a book has decided for itself: its house style, and what of it holds in which file. */
import type { System } from '../arithmetic/units.js';

export interface HouseStyle {
  /** What a bare "cup", "pint" or "tablespoon" means; null where the book has not said. */
  readonly system: System | null;
  /** How much is asked of kitchen hygiene: notes of the worst, the full wording at every touch, or nothing. */
  readonly hygiene: 'notes' | 'full' | 'off';
  /** Whether the book has a house style at all; without one its own majority is taken as its style. */
  readonly stated: boolean;
  readonly units: UnitStyle;
  /** An example of the form: "½", "1/2" or "0.5"; null where the book has not said. */
  readonly numbers: NumberForm | null;
  readonly ranges: RangeForm | null;
  readonly temperatures: { readonly form: DegreeForm | null; readonly order: ScaleOrder | null };
  /** By the form that is wanted, those that are not; an empty list means every other that the larder knows. */
  readonly terms: Readonly<Record<string, readonly string[]>>;
  readonly spellings: Readonly<Record<string, readonly string[]>>;
  /** An example: "Serves 4". */
  readonly yields: string | null;
  readonly titles: TitleForm | null;
  readonly listings: ListingForm | null;
  /** Foods that a method may use without their standing on the list. */
  readonly unlisted: readonly string[];
  /** Files and folders that are not read as recipes. */
  readonly matter: readonly string[];
  /** What is decided about rules, the widest first. */
  readonly rulings: readonly Ruling[];
  /** The way from the folder of the house style to the root that is read, with forward slashes; empty where they are one. */
  readonly home: string;
}

export interface UnitStyle {
  readonly form: UnitForm | null;
  /** By the larder's id: the form of that unit, whatever the others have. */
  readonly own: Readonly<Record<string, string>>;
}

/** A rule is off, or has another weight, in a folder or everywhere. */
export interface Ruling {
  /** A file or folder; empty for the whole book. */
  readonly within: string;
  readonly rule: string;
  readonly weight: 'fault' | 'query' | 'note' | 'off';
}

export const unitForms = ['spelled out', 'abbreviated', 'abbreviated with period'] as const;
export const numberForms = ['½', '1/2', '0.5'] as const;
export const rangeForms = ['3 to 5', '3–5', '3-5', '3 – 5', '3 - 5'] as const;
export const degreeForms = [
  '350°F',
  '350° F',
  '350 °F',
  '350 degrees F',
  '350 degrees Fahrenheit',
  '350F',
  '350 F',
] as const;
export const scaleOrders = [
  'Fahrenheit',
  'Celsius',
  'Fahrenheit (Celsius)',
  'Celsius (Fahrenheit)',
  'Fahrenheit/Celsius',
  'Celsius/Fahrenheit',
] as const;
export const titleForms = ['Headline Capitals', 'Sentence capitals', 'ALL CAPITALS'] as const;
export const listingForms = ['Capital first', 'small first'] as const;

export type UnitForm = (typeof unitForms)[number];
export type NumberForm = (typeof numberForms)[number];
export type RangeForm = (typeof rangeForms)[number];
export type DegreeForm = (typeof degreeForms)[number];
export type ScaleOrder = (typeof scaleOrders)[number];
export type TitleForm = (typeof titleForms)[number];
export type ListingForm = (typeof listingForms)[number];

/** The style of a book that has decided nothing. */
export const undecided: HouseStyle = {
  system: null,
  hygiene: 'notes',
  stated: false,
  units: { form: null, own: {} },
  numbers: null,
  ranges: null,
  temperatures: { form: null, order: null },
  terms: {},
  spellings: {},
  yields: null,
  titles: null,
  listings: null,
  unlisted: [],
  matter: [],
  rulings: [],
  home: '',
};

/** The weight that the book gives a rule in a file: the ruling of the longest folder that holds it; null where none does. */
export function rulingOn(style: HouseStyle, file: string, rule: string): Ruling['weight'] | null {
  let found: Ruling | null = null;
  for (const ruling of style.rulings) {
    if (ruling.rule !== rule || !holds(ruling.within, placeOf(style, file))) continue;
    if (found === null || ruling.within.length >= found.within.length) found = ruling;
  }
  return found?.weight ?? null;
}

/** Whether a file is front or back matter, in which no recipe is sought. */
export function isMatter(style: HouseStyle, file: string): boolean {
  return style.matter.length > 0 && style.matter.some((each) => holds(each, placeOf(style, file)));
}

/** The file's path as the house style would name it. */
function placeOf(style: HouseStyle, file: string): string {
  const parts: string[] = [];
  for (const part of [...style.home.split('/'), ...file.split('/')]) {
    if (part === '..' && parts.length > 0 && parts.at(-1) !== '..') parts.pop();
    else if (part !== '' && part !== '.') parts.push(part);
  }
  return parts.join('/');
}

/** Whether a file is `within`, or in the folder of that name; `within` is empty for everything. */
function holds(within: string, place: string): boolean {
  const name = within.replace(/^\.\//, '').replace(/\/$/, '');
  return name === '' || name === '.' || place === name || place.startsWith(`${name}/`);
}
