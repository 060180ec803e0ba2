/** Knows the exact size of every unit of the larder, in the base of its kind and in the system of the book. */
import Fraction from 'fraction.js';
import { larder } from '../larder/load.js';
import type { Unit } from '../larder/types.js';

/** Whose cups and spoons are meant. A unit that the system does not size keeps its US customary or SI size. */
export type System = 'us-customary' | 'us-legal' | 'metric' | 'imperial' | 'australian';

export const SYSTEMS: readonly System[] = ['us-customary', 'us-legal', 'metric', 'imperial', 'australian'];

/** The kinds whose units have a size; amounts of one kind can be turned into each other. */
export type SizedKind = 'volume' | 'mass' | 'length' | 'time';

/** The unit in which each kind is summed and compared. */
export const baseUnits: Readonly<Record<SizedKind, string>> = {
  volume: 'milliliter',
  mass: 'gram',
  length: 'millimeter',
  time: 'second',
};

/** The larder's row of a unit, or null when it has none of that id. */
export function unit(id: string): Unit | null {
  return rows.get(id) ?? null;
}

/**
 * How much of its base one such unit is: milliliters, grams, millimeters or seconds.
 * Null for a unit without a size of its own (a can, a pinch) and for an id that is not in the larder.
 */
export function unitSize(
  id: string,
  system: System = 'us-customary',
): { kind: SizedKind; value: Fraction } | null {
  const key = `${system} ${id}`;
  const known = sizes.get(key);
  if (known !== undefined) return known;
  const size = sizeOf(unit(id), system);
  sizes.set(key, size);
  return size;
}

/** A number of the larder's: a decimal, or a decimal divided by a whole number where it has no end. */
export function rational(text: string): Fraction {
  const [numerator, denominator = '1'] = text.split('/');
  return new Fraction(numerator!).div(denominator);
}

const rows: ReadonlyMap<string, Unit> = new Map(larder.units.map((row) => [row.id, row]));

/** Sizes already worked out: every rule asks for the same few, and parsing a fraction costs more than a look-up. */
const sizes = new Map<string, { kind: SizedKind; value: Fraction } | null>();

function sizeOf(row: Unit | null, system: System): { kind: SizedKind; value: Fraction } | null {
  if (row === null) return null;
  const elsewhere = system === 'us-customary' ? undefined : row.elsewhere[system];
  const sized: readonly (readonly [SizedKind, string | undefined])[] = [
    ['volume', row.milliliters],
    ['mass', row.grams],
    ['length', row.millimeters],
    ['time', row.seconds],
  ];
  for (const [kind, here] of sized) {
    if (here !== undefined) return { kind, value: rational(elsewhere ?? here) };
  }
  return null;
}
