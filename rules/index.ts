/** All rules, by topic and name. A test compares this list with the folder's files. */
import { curdlingRisk } from './doneness/curdling-risk.js';
import { donenessCueAbsent } from './doneness/doneness-cue-absent.js';
import { durationAbsent } from './doneness/duration-absent.js';
import { heatUnclear } from './doneness/heat-unclear.js';
import { dualTemperatureDisagreement } from './heat/dual-temperature-disagreement.js';
import { ovenTooHot } from './heat/oven-too-hot.js';
import { ovenUnheated } from './heat/oven-unheated.js';
import { panSizeAbsent } from './heat/pan-size-absent.js';
import { scaleAbsent } from './heat/scale-absent.js';
import { timeDisagreement } from './heat/time-disagreement.js';
import { amountDisagreement } from './listing/amount-disagreement.js';
import { amountLeftover } from './listing/amount-leftover.js';
import { amountOverrun } from './listing/amount-overrun.js';
import { componentUnmade } from './listing/component-unmade.js';
import { componentUnused } from './listing/component-unused.js';
import { dividedAbsent } from './listing/divided-absent.js';
import { dividedIdle } from './listing/divided-idle.js';
import { orderOfUse } from './listing/order-of-use.js';
import { preparationDisagreement } from './listing/preparation-disagreement.js';
import { remainingOfNothing } from './listing/remaining-of-nothing.js';
import { twiceListed } from './listing/twice-listed.js';
import { unlistedIngredient } from './listing/unlisted-ingredient.js';
import { unusedIngredient } from './listing/unused-ingredient.js';
import { amountImplausible } from './measures/amount-implausible.js';
import { dualMeasureDisagreement } from './measures/dual-measure-disagreement.js';
import { equivalentDisagreement } from './measures/equivalent-disagreement.js';
import { ounceKind } from './measures/ounce-kind.js';
import { packSizeAbsent } from './measures/pack-size-absent.js';
import { rangeReversed } from './measures/range-reversed.js';
import { spoonSystemMixed } from './measures/spoon-system-mixed.js';
import { unitAbsent } from './measures/unit-absent.js';
import { unitUnclear } from './measures/unit-unclear.js';
import type { Rule } from './rule.js';
import { canningUntested } from './safety/canning-untested.js';
import { colorCueAlone } from './safety/color-cue-alone.js';
import { dangerZoneHold } from './safety/danger-zone-hold.js';
import { garlicOilKept } from './safety/garlic-oil-kept.js';
import { handWashingAbsent } from './safety/hand-washing-absent.js';
import { infantHoney } from './safety/infant-honey.js';
import { kidneyBeansUnboiled } from './safety/kidney-beans-unboiled.js';
import { marinadeReused } from './safety/marinade-reused.js';
import { partialCookingHeld } from './safety/partial-cooking-held.js';
import { rawEggServed } from './safety/raw-egg-served.js';
import { rawFlourServed } from './safety/raw-flour-served.js';
import { rawMilkServed } from './safety/raw-milk-served.js';
import { rawPoultryRinsed } from './safety/raw-poultry-rinsed.js';
import { rawSproutsServed } from './safety/raw-sprouts-served.js';
import { rawSurfaceReused } from './safety/raw-surface-reused.js';
import { restAbsent } from './safety/rest-absent.js';
import { safeTemperatureAbsent } from './safety/safe-temperature-absent.js';
import { safeTemperatureLow } from './safety/safe-temperature-low.js';
import { shellfishUnopened } from './safety/shellfish-unopened.js';
import { slowCookerFrozen } from './safety/slow-cooker-frozen.js';
import { thawUnsafe } from './safety/thaw-unsafe.js';
import { wildFoodCaution } from './safety/wild-food-caution.js';
import { equipmentUnnamed } from './structure/equipment-unnamed.js';
import { headnotePromise } from './structure/headnote-promise.js';
import { placeholderLeft } from './structure/placeholder-left.js';
import { recipeUnclear } from './structure/recipe-unclear.js';
import { referenceBroken } from './structure/reference-broken.js';
import { referenceMisspelled } from './structure/reference-misspelled.js';
import { sectionOrder } from './structure/section-order.js';
import { servingsDisagreement } from './structure/servings-disagreement.js';
import { stepReferenceBroken } from './structure/step-reference-broken.js';
import { stetIdle } from './structure/stet-idle.js';
import { stetUnknown } from './structure/stet-unknown.js';
import { titleTwice } from './structure/title-twice.js';
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
  curdlingRisk,
  donenessCueAbsent,
  dualTemperatureDisagreement,
  ovenTooHot,
  ovenUnheated,
  panSizeAbsent,
  durationAbsent,
  heatUnclear,
  scaleAbsent,
  timeDisagreement,
  amountDisagreement,
  amountLeftover,
  amountOverrun,
  dividedAbsent,
  dividedIdle,
  remainingOfNothing,
  componentUnmade,
  componentUnused,
  orderOfUse,
  preparationDisagreement,
  twiceListed,
  unlistedIngredient,
  unusedIngredient,
  amountImplausible,
  dualMeasureDisagreement,
  equivalentDisagreement,
  ounceKind,
  packSizeAbsent,
  rangeReversed,
  spoonSystemMixed,
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
  equipmentUnnamed,
  headnotePromise,
  canningUntested,
  dangerZoneHold,
  garlicOilKept,
  infantHoney,
  kidneyBeansUnboiled,
  partialCookingHeld,
  rawEggServed,
  rawFlourServed,
  rawMilkServed,
  rawSproutsServed,
  shellfishUnopened,
  slowCookerFrozen,
  thawUnsafe,
  wildFoodCaution,
  placeholderLeft,
  recipeUnclear,
  referenceBroken,
  referenceMisspelled,
  sectionOrder,
  servingsDisagreement,
  stepReferenceBroken,
  titleTwice,
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
