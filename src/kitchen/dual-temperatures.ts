/** Finds where a recipe says one temperature on two scales, and which of the two is out where they disagree. */
import { compareHeat, type Nearness } from '../arithmetic/heat.js';
import type { Item, Temperature } from '../grammar/types.js';
import { isWord } from '../larder/kitchen-words.js';
import type { Passage } from '../manuscript/passage.js';
import type { Dish } from './types.js';

/** Two statements of one temperature. */
export interface DualTemperature {
  readonly passage: Passage;
  readonly kept: Temperature;
  readonly other: Temperature;
  readonly nearness: Nearness;
  /** Whether both say how much hotter or cooler: "25°F (15°C) lower". */
  readonly difference: boolean;
  /** Whether a third statement, or the same temperature elsewhere in the recipe, bears out the one that is kept. */
  readonly borneOut: boolean;
}

/** Every temperature that is said twice, in the order of the parts. */
export function dualTemperaturesOf(dish: Dish): DualTemperature[] {
  const found: DualTemperature[] = [];
  for (const { passage, items } of dish.parts) {
    items.forEach((item, at) => {
      if (item.kind === 'temperature' && item.equals.length > 0)
        found.push(...pairsOf(passage, item, isDifference(items, at)));
    });
  }
  return found.map((pair) => (pair.nearness === 'right' ? pair : settled(pair, found)));
}

function pairsOf(passage: Passage, item: Temperature, difference: boolean): DualTemperature[] {
  const [second, ...others] = item.equals;
  if (second !== undefined && others.length === 0) {
    const nearness = compareHeat(item, second, difference);
    if (nearness === null) return [];
    return [{ passage, kept: item, other: second, nearness, difference, borneOut: nearness === 'right' }];
  }
  const statements = [item, ...item.equals];
  const agrees = (one: Temperature): boolean =>
    statements.some((other) => other !== one && compareHeat(one, other, difference) === 'right');
  // Of three the one that stands alone is out; where none agree the first is kept, since the recipe was written in it.
  const agreeing = statements.find(agrees);
  const kept = agreeing ?? item;
  return statements.flatMap((other) => {
    const nearness = other === kept ? null : compareHeat(kept, other, difference);
    if (nearness === null) return [];
    return [{ passage, kept, other, nearness, difference, borneOut: agreeing !== undefined }];
  });
}

/** The pair turned round where the rest of the recipe bears out its second statement and not its first. */
function settled(pair: DualTemperature, all: readonly DualTemperature[]): DualTemperature {
  if (pair.borneOut) return pair;
  const agreeing = all.filter((each) => each.nearness === 'right');
  const states = (one: Temperature): boolean =>
    agreeing.some((each) => isSame(each.kept, one) || isSame(each.other, one));
  const [first, second] = [states(pair.kept), states(pair.other)];
  if (first === second) return pair;
  return first
    ? { ...pair, borneOut: true }
    : { ...pair, kept: pair.other, other: pair.kept, borneOut: true };
}

function isSame(one: Temperature, other: Temperature): boolean {
  return (
    one.scale === other.scale &&
    one.fan === other.fan &&
    one.amount.low.equals(other.amount.low) &&
    one.amount.high.equals(other.amount.high)
  );
}

/** "By 25°F (15°C)", "25°F (15°C) lower". */
function isDifference(items: readonly Item[], at: number): boolean {
  const before = items[at - 1];
  if (before?.kind === 'word' && isWord(before.key, 'by-so-much')) return true;
  const after = items[at + 1];
  return after?.kind === 'word' && isWord(after.key, 'hotter-or-cooler');
}
