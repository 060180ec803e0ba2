/** Adds measures up and tells whether two say the same amount, exactly and across the units of one kind. */
import type Fraction from 'fraction.js';
import type { Measure } from '../grammar/types.js';
import { toBase } from './convert.js';
import { baseUnits, type System } from './units.js';

/**
 * A sum: from `low` to `high` (equal where nothing was a range, and never the other way round) of `unit`.
 * Of sized units it is in the base of their kind (milliliter, gram, …); of cans, cloves and pinches in those;
 * null where the things themselves are counted.
 */
export interface Sum {
  readonly unit: string | null;
  readonly low: Fraction;
  readonly high: Fraction;
}

/**
 * Whether two measures come to exactly the same amount: 1 cup is 16 tablespoons, 1 pound 2 ounces is 18 ounces.
 * Null when they cannot be compared: cups with grams, cans with cloves, a share with anything.
 */
export function sameAmount(one: Measure, other: Measure, system: System = 'us-customary'): boolean | null {
  const pair = inOneUnit([one, other], system);
  if (pair === null) return null;
  const [first, second] = pair as [Sum, Sum];
  return first.low.equals(second.low) && first.high.equals(second.high);
}

/**
 * All of the measures together, each with what is said to be added to it (`plus`).
 * Null when they cannot be added: none given, two kinds, different containers, or a share ("half the butter").
 * Packs count as themselves ("2 cans") while all are of one size, else by what they hold.
 */
export function sumMeasures(measures: readonly Measure[], system: System = 'us-customary'): Sum | null {
  const parts = inOneUnit(measures, system);
  return parts === null ? null : addSums(parts);
}

function addSums(parts: readonly Sum[]): Sum | null {
  const [first, ...others] = parts;
  if (first === undefined) return null;
  return others.reduce<Sum>(
    (sum, part) => ({ unit: sum.unit, low: sum.low.add(part.low), high: sum.high.add(part.high) }),
    first,
  );
}

/** Each measure as a sum, all in the same unit; null when there is none that fits them all. */
function inOneUnit(measures: readonly Measure[], system: System): Sum[] | null {
  const asWritten = samePack(measures, system)
    ? measures.map((measure) => total(measure, system, false))
    : [];
  if (asWritten.length > 0 && agree(asWritten)) return asWritten;
  const byContent = measures.map((measure) => total(measure, system, true));
  return byContent.length > 0 && agree(byContent) ? byContent : null;
}

function agree(sums: readonly (Sum | null)[]): sums is Sum[] {
  return sums.every((sum) => sum !== null && sum.unit === sums[0]?.unit);
}

/** Whether every pack whose size is stated has the same size, so that packs can be counted. */
function samePack(measures: readonly Measure[], system: System): boolean {
  const packs = measures.flatMap((measure) =>
    measure.pack === null ? [] : [total(measure.pack, system, true)],
  );
  const first = packs[0];
  if (first === undefined) return true;
  return (
    first !== null &&
    agree(packs) &&
    packs.every((pack) => pack.low.equals(first.low) && pack.high.equals(first.high))
  );
}

/** One measure with its additions; null for a share, and when an addition is of another kind ("1 cup plus 1 egg"). */
function total(measure: Measure, system: System, byContent: boolean): Sum | null {
  if (measure.share) return null;
  const own = alone(measure, system, byContent);
  const added = measure.plus.map((part) => total(part, system, byContent));
  const parts = [own, ...added];
  return agree(parts) ? addSums(parts) : null;
}

function alone(measure: Measure, system: System, byContent: boolean): Sum | null {
  const [low, high] = ordered(measure.amount.low, measure.amount.high);
  if (byContent && measure.pack !== null) {
    const pack = total(measure.pack, system, true);
    return pack === null ? null : { unit: pack.unit, low: low.mul(pack.low), high: high.mul(pack.high) };
  }
  if (measure.unit === null) return { unit: null, low, high };
  const lowBase = toBase(low, measure.unit, system);
  const highBase = toBase(high, measure.unit, system);
  if (lowBase === null || highBase === null) return { unit: measure.unit, low, high };
  return { unit: baseUnits[lowBase.kind], low: lowBase.value, high: highBase.value };
}

function ordered(one: Fraction, other: Fraction): [Fraction, Fraction] {
  return one.lte(other) ? [one, other] : [other, one];
}
