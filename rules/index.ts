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
import { placeholderLeft } from './structure/placeholder-left.js';
import { recipeUnclear } from './structure/recipe-unclear.js';
import { stetIdle } from './structure/stet-idle.js';
import { stetUnknown } from './structure/stet-unknown.js';
import { yieldAbsent } from './structure/yield-absent.js';
import { listingCapital } from './wording/listing-capital.js';
import { numberStyle } from './wording/number-style.js';
import { openingNumber } from './wording/opening-number.js';
import { rangeStyle } from './wording/range-style.js';
import { spellingVariant } from './wording/spelling-variant.js';
import { temperatureStyle } from './wording/temperature-style.js';
import { termVariant } from './wording/term-variant.js';
import { titleStyle } from './wording/title-style.js';
import { unitStyle } from './wording/unit-style.js';
import { yieldStyle } from './wording/yield-style.js';

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
  placeholderLeft,
  recipeUnclear,
  yieldAbsent,
  stetIdle,
  stetUnknown,
  listingCapital,
  numberStyle,
  openingNumber,
  rangeStyle,
  spellingVariant,
  temperatureStyle,
  termVariant,
  titleStyle,
  unitStyle,
  yieldStyle,
];
