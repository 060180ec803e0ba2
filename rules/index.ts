/** All rules, by topic and name. A test compares this list with the folder's files. */
import { curdlingRisk } from './doneness/curdling-risk.js';
import { donenessCueAbsent } from './doneness/doneness-cue-absent.js';
import { durationAbsent } from './doneness/duration-absent.js';
import { heatUnclear } from './doneness/heat-unclear.js';
import { scaleAbsent } from './heat/scale-absent.js';
import { amountDisagreement } from './listing/amount-disagreement.js';
import { unlistedIngredient } from './listing/unlisted-ingredient.js';
import { unusedIngredient } from './listing/unused-ingredient.js';
import { rangeReversed } from './measures/range-reversed.js';
import { unitAbsent } from './measures/unit-absent.js';
import { unitUnclear } from './measures/unit-unclear.js';
import type { Rule } from './rule.js';
import { canningUntested } from './safety/canning-untested.js';
import { dangerZoneHold } from './safety/danger-zone-hold.js';
import { garlicOilKept } from './safety/garlic-oil-kept.js';
import { infantHoney } from './safety/infant-honey.js';
import { kidneyBeansUnboiled } from './safety/kidney-beans-unboiled.js';
import { partialCookingHeld } from './safety/partial-cooking-held.js';
import { rawEggServed } from './safety/raw-egg-served.js';
import { rawFlourServed } from './safety/raw-flour-served.js';
import { rawMilkServed } from './safety/raw-milk-served.js';
import { safeTemperatureAbsent } from './safety/safe-temperature-absent.js';
import { safeTemperatureLow } from './safety/safe-temperature-low.js';
import { shellfishUnopened } from './safety/shellfish-unopened.js';
import { slowCookerFrozen } from './safety/slow-cooker-frozen.js';
import { thawUnsafe } from './safety/thaw-unsafe.js';
import { wildFoodCaution } from './safety/wild-food-caution.js';
import { placeholderLeft } from './structure/placeholder-left.js';
import { recipeUnclear } from './structure/recipe-unclear.js';
import { yieldAbsent } from './structure/yield-absent.js';

export const rules: readonly Rule[] = [
  curdlingRisk,
  donenessCueAbsent,
  durationAbsent,
  heatUnclear,
  scaleAbsent,
  amountDisagreement,
  unlistedIngredient,
  unusedIngredient,
  rangeReversed,
  unitAbsent,
  unitUnclear,
  canningUntested,
  dangerZoneHold,
  garlicOilKept,
  infantHoney,
  kidneyBeansUnboiled,
  partialCookingHeld,
  rawEggServed,
  rawFlourServed,
  rawMilkServed,
  safeTemperatureAbsent,
  safeTemperatureLow,
  shellfishUnopened,
  slowCookerFrozen,
  thawUnsafe,
  wildFoodCaution,
  placeholderLeft,
  recipeUnclear,
  yieldAbsent,
];
