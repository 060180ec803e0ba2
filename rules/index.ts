/** All rules, by topic and name. A test compares this list with the folder's files. */
import { donenessCueAbsent } from './doneness/doneness-cue-absent.js';
import { scaleAbsent } from './heat/scale-absent.js';
import { amountDisagreement } from './listing/amount-disagreement.js';
import { unlistedIngredient } from './listing/unlisted-ingredient.js';
import { unusedIngredient } from './listing/unused-ingredient.js';
import { rangeReversed } from './measures/range-reversed.js';
import { unitAbsent } from './measures/unit-absent.js';
import { unitUnclear } from './measures/unit-unclear.js';
import type { Rule } from './rule.js';
import { colorCueAlone } from './safety/color-cue-alone.js';
import { handWashingAbsent } from './safety/hand-washing-absent.js';
import { marinadeReused } from './safety/marinade-reused.js';
import { rawPoultryRinsed } from './safety/raw-poultry-rinsed.js';
import { rawSurfaceReused } from './safety/raw-surface-reused.js';
import { restAbsent } from './safety/rest-absent.js';
import { safeTemperatureAbsent } from './safety/safe-temperature-absent.js';
import { safeTemperatureLow } from './safety/safe-temperature-low.js';
import { placeholderLeft } from './structure/placeholder-left.js';
import { recipeUnclear } from './structure/recipe-unclear.js';
import { yieldAbsent } from './structure/yield-absent.js';

export const rules: readonly Rule[] = [
  donenessCueAbsent,
  scaleAbsent,
  amountDisagreement,
  unlistedIngredient,
  unusedIngredient,
  rangeReversed,
  unitAbsent,
  unitUnclear,
  colorCueAlone,
  handWashingAbsent,
  marinadeReused,
  rawPoultryRinsed,
  rawSurfaceReused,
  restAbsent,
  safeTemperatureAbsent,
  safeTemperatureLow,
  placeholderLeft,
  recipeUnclear,
  yieldAbsent,
];
