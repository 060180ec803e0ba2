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
import { safeTemperatureAbsent } from './safety/safe-temperature-absent.js';
import { safeTemperatureLow } from './safety/safe-temperature-low.js';
import { equipmentUnnamed } from './structure/equipment-unnamed.js';
import { headnotePromise } from './structure/headnote-promise.js';
import { placeholderLeft } from './structure/placeholder-left.js';
import { recipeUnclear } from './structure/recipe-unclear.js';
import { referenceBroken } from './structure/reference-broken.js';
import { referenceMisspelled } from './structure/reference-misspelled.js';
import { sectionOrder } from './structure/section-order.js';
import { servingsDisagreement } from './structure/servings-disagreement.js';
import { stepReferenceBroken } from './structure/step-reference-broken.js';
import { titleTwice } from './structure/title-twice.js';
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
  safeTemperatureAbsent,
  safeTemperatureLow,
  equipmentUnnamed,
  headnotePromise,
  placeholderLeft,
  recipeUnclear,
  referenceBroken,
  referenceMisspelled,
  sectionOrder,
  servingsDisagreement,
  stepReferenceBroken,
  titleTwice,
  yieldAbsent,
];
