/** Knows whether a raw food is cooked beyond doubt, or shown to be done by the sign that the chart itself accepts. */
import Fraction from 'fraction.js';
import { speaksOf } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Dish, Heating, RawFood } from './types.js';

/** A pot that simmers this long is past every safe minimum (common practice). */
const LONG_SECONDS = new Fraction(3600);

/** The orders that cook a raw food: those of the steps that name it, or all after it is first named. */
export function heatingsFor(dish: Dish, raw: RawFood): Heating[] {
  const first = dish.uses[raw.listing.index]![0]?.step ?? Number.POSITIVE_INFINITY;
  return dish.heatings.filter(
    (heating) => heating.step >= first && (!heating.technique.ends || does(heating.technique, 'dry-heat')),
  );
}

/** Whether the food boils, braises or stews for an hour or more. */
export function isLongCooked(dish: Dish, raw: RawFood): boolean {
  return heatingsFor(dish, raw).some(
    (heating) =>
      heating.durations.some(
        (duration) => duration.seconds?.low.gte(LONG_SECONDS) ?? duration.unit === 'night',
      ) && !does(heating.technique, 'dry-heat'),
  );
}

/** Whether the method gives the chart's own sign for fish and shellfish: opaque flesh that flakes, shells that open. */
export function isShownDone(dish: Dish, raw: RawFood): boolean {
  if (raw.safety !== 'fish' && raw.safety !== 'shellfish') return false;
  const first = dish.uses[raw.listing.index]![0]?.step ?? 0;
  return dish.recipe.steps.some((step) => step.index >= first && speaksOf(step.passage.text, 'opaque-cue'));
}

/** Whether meat in one piece by nature is cut too small for a thermometer: strips for the wok, cubes for a stew. */
export function isCutSmall(dish: Dish, raw: RawFood): boolean {
  if (raw.safety !== 'whole-cut') return false;
  if (speaksOf(raw.listing.passage.text, 'small-piece')) return true;
  return dish.uses[raw.listing.index]!.some((mention) => {
    const technique = mention.verb === null ? null : techniqueOf(fold(mention.verb));
    return technique !== null && does(technique.technique, 'cut') && mention.verb !== 'trim';
  });
}
