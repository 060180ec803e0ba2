/** Finds the units of the kitchen by their names, short forms and ids. */
import { larder } from './load.js';
import { fold, plurals } from './names.js';
import type { Unit } from './types.js';

/** A name in words, each folded: "fluid ounces" is ["fluid", "ounces"]. */
export interface UnitName {
  readonly words: readonly string[];
  readonly unit: Unit;
  /** Whether a full stop after it belongs to it: "tbsp." */
  readonly short: boolean;
}

const byId = new Map<string, Unit>();
const byExact = new Map<string, Unit>();
const byKey = new Map<string, Unit>();

/** Every name and short form, with plurals, for those who look for them in a text. */
export const unitNames: readonly UnitName[] = larder.units.flatMap((unit) => {
  byId.set(unit.id, unit);
  for (const exact of unit.exact) byExact.set(exact, unit);
  const long = unit.names.flatMap((name) => [name, ...plurals(name)]);
  const names = [
    ...long.map((name) => nameOf(name, unit, false)),
    ...unit.short.map((name) => nameOf(name, unit, true)),
  ];
  for (const { words } of names) byKey.set(words.join(''), unit);
  return names;
});

/** The unit with that id. Throws where there is none: ids stand in our own tables and code only. */
export function unitById(id: string): Unit {
  const unit = byId.get(id);
  if (unit === undefined)
    throw new Error(`unitById: "${id}" is no unit of the larder; expected an id such as "tablespoon"`);
  return unit;
}

/** The unit of that name, short form or id, singular or plural; null when there is none. "T" and "t" are told apart. */
export function unitNamed(name: string): Unit | null {
  return byExact.get(name) ?? byId.get(name) ?? byKey.get(fold(name)) ?? null;
}

/** The unit's name in the number that so many of it ask for: "1 cup", "2 cups", "½ cup". */
export function unitWord(id: string, howMany: number): string {
  const name = unitById(id).names[0] ?? id;
  return howMany > 1 ? (plurals(name)[0] ?? name) : name;
}

/** The unit whose short form is written with exactly these letters: "T", "g", "L". */
export function unitWritten(exact: string): Unit | null {
  return byExact.get(exact) ?? null;
}

/** How large one of the unit is, as the table's text, in the base of its kind; null where the kind has no base. */
export function sizeOf(unit: Unit): string | null {
  return unit.milliliters ?? unit.grams ?? unit.millimeters ?? unit.seconds ?? null;
}

function nameOf(name: string, unit: Unit, short: boolean): UnitName {
  return { words: name.split(/[\s-]+/).map(fold), unit, short };
}
