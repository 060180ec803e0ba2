/** Marks a raw animal food that is cooked without a thermometer's temperature. */
import { heatingsFor, isCutSmall, isLongCooked, isShownDone } from '../../src/kitchen/doneness.js';
import type { Dish, RawFood } from '../../src/kitchen/types.js';
import { safeTemperature } from '../../src/larder/safety.js';
import type { SafetyClass } from '../../src/larder/types.js';
import type { Finding, RecipeRule } from '../rule.js';

/** Eggs set and shellfish open where the cook can see it; most ham is sold cooked. */
const JUDGED: ReadonlySet<SafetyClass> = new Set(['poultry', 'ground-meat', 'whole-cut', 'fish', 'offal']);

export const safeTemperatureAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'safe-temperature-absent',
  topic: 'safety',
  weight: 'query',
  summary: 'Poultry, meat or fish is cooked, and no temperature on a food thermometer is given.',
  why: 'Color and time do not tell whether the inside is safe to eat; a thermometer does. Local codes and licensed practice come first.',
  sources: [
    'USDA FSIS and foodsafety.gov, Safe Minimum Internal Temperature chart',
    'Partnership for Food Safety Education, Safe Recipe Style Guide, 2019',
  ],
  beyond:
    'Eggs and shellfish, which set or open in sight; ham; meat cut small; pots that simmer for an hour or more; whether the thermometer is read rightly.',
  examples: [
    {
      title: 'chicken that is fried until golden',
      text: '# Pan Chicken\n\nServes 4\n\n- 4 chicken thighs\n- 2 tablespoons olive oil\n\n1. Fry the chicken in the oil until golden brown, 20 minutes.\n',
      marks: ['chicken'],
    },
    {
      title: 'burgers by their color',
      text: '# Burgers\n\nServes 4\n\n- 1 pound ground beef\n- 1 tablespoon oil\n\n1. Shape the beef into patties.\n2. Fry them in the oil until no longer pink, 8 minutes.\n',
      marks: ['beef'],
    },
    {
      title: 'chicken with its temperature',
      text: '# Pan Chicken\n\nServes 4\n\n- 4 chicken thighs\n- 2 tablespoons olive oil\n\n1. Fry the chicken in the oil until golden brown and a thermometer in the thickest part reads 165°F, 20 minutes.\n',
      marks: [],
    },
    {
      title: 'a long braise, and fish that flakes',
      text: '# Two Pots\n\nServes 4\n\n- 2 pounds chicken legs\n- 3 cups vegetable stock\n- 1 pound cod fillets\n\n1. Simmer the chicken in the stock until it falls apart, 1½ hours.\n2. Lay the cod on top and poach until opaque, 8 minutes.\n',
      marks: [],
    },
    {
      title: 'chicken stock is no chicken',
      text: '# Leek Soup\n\nServes 4\n\n- 3 leeks\n- 4 cups chicken stock\n\n1. Simmer the leeks in the stock until soft, 20 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const seen = new Set<SafetyClass>();
    for (const raw of dish.rawFoods) {
      if (!JUDGED.has(raw.safety) || seen.has(raw.safety) || isTold(dish, raw)) continue;
      if (
        heatingsFor(dish, raw).length === 0 ||
        isLongCooked(dish, raw) ||
        isShownDone(dish, raw) ||
        isCutSmall(dish, raw)
      )
        continue;
      seen.add(raw.safety);
      yield findingOf(dish, raw);
    }
  },
};

/** Whether some temperature of the method can be about this food. */
function isTold(dish: Dish, raw: RawFood): boolean {
  return dish.doneTemperatures.some(
    (done) => done.foods.some((food) => food.safety === raw.safety) || done.foods.length === 0,
  );
}

function findingOf(dish: Dish, raw: RawFood): Finding {
  const chart = safeTemperature(raw.safety);
  const steps = new Set(heatingsFor(dish, raw).map((heating) => heating.step));
  const mentions = dish.uses[raw.listing.index]!.filter((mention) => !mention.group);
  const mention = mentions.find((each) => steps.has(each.step)) ?? mentions[0];
  const food = raw.listing.line.foods[0]!;
  const rest = chart.restMinutes > 0 ? ` and rests ${chart.restMinutes} minutes` : '';
  return {
    span:
      mention === undefined
        ? raw.listing.passage.span(food.start, food.end)
        : dish.recipe.steps[mention.step]!.passage.span(mention.start, mention.end),
    subject: food.name,
    message: `The method cooks ${food.text} and gives no temperature on a food thermometer.`,
    advice: `Add that it reaches ${chart.fahrenheit}°F (${chart.celsius}°C)${rest}.`,
    related: [{ file: dish.page.path, span: raw.listing.passage.span(), message: 'the listing' }],
  };
}
