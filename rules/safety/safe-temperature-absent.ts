/** Marks a raw animal food that is cooked without a thermometer's temperature. */
import type { Dish, RawCourse } from '../../src/kitchen/types.js';
import { safeTemperature } from '../../src/larder/safety.js';
import type { SafetyClass } from '../../src/larder/types.js';
import type { Finding, RecipeRule, Weight } from '../rule.js';

/** Eggs set and shellfish open where the cook can see it; ham that was cooked is eaten as it is. */
const JUDGED: ReadonlySet<SafetyClass> = new Set([
  'poultry',
  'ground-meat',
  'whole-cut',
  'fish',
  'ham',
  'offal',
]);

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
      title: 'burgers by their crust',
      text: '# Burgers\n\nServes 4\n\n- 1 pound ground beef\n- 1 tablespoon oil\n\n1. Shape the beef into patties, and wash your hands.\n2. Fry them in the oil until brown and crusty, 8 minutes.\n',
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
    const found = new Map<SafetyClass, { course: RawCourse; weight: Weight }>();
    for (const course of dish.courses) {
      const weight = weigh(dish, course);
      const { safety } = course.raw;
      if (weight !== null && (found.get(safety)?.weight ?? 'note') === 'note') {
        if (weight === 'query' || !found.has(safety)) found.set(safety, { course, weight });
      }
    }
    for (const { course, weight } of found.values()) yield findingOf(dish, course, weight);
  },
};

/** A thermometer finds no place in crumbs of ground meat, so that the temperature is advice there; null where nothing is amiss. */
function weigh(dish: Dish, course: RawCourse): Weight | null {
  const { raw, bits } = course;
  if (
    !JUDGED.has(raw.safety) ||
    (course.cookings.length === 0 && course.cooked === null) ||
    course.sure ||
    course.shown
  )
    return null;
  if (isTold(dish, course)) return null;
  if (!bits) return 'query';
  if (raw.safety === 'poultry') return course.ground ? 'note' : 'query';
  return raw.safety === 'ground-meat' ? 'note' : null;
}

/** Whether a temperature of the text can be about this food, or another rule asks about its color or its "medium-rare". */
function isTold(dish: Dish, { raw, color, degree }: RawCourse): boolean {
  const byTemperature = dish.doneTemperatures.some((done) =>
    done.foods.some((food) => food.safety === raw.safety),
  );
  const byColor = color !== null && (raw.safety === 'poultry' || raw.safety === 'ground-meat');
  const byDegree = degree !== null && degree.fahrenheit < safeTemperature(raw.safety).fahrenheit;
  return byTemperature || byColor || byDegree;
}

function findingOf(dish: Dish, { raw, cookings, cooked }: RawCourse, weight: Weight): Finding {
  const chart = safeTemperature(raw.safety);
  const steps = new Set(cookings.map((cooking) => cooking.step));
  const mentions = dish.uses[raw.listing.index]!.filter((mention) => !mention.group);
  const mention = mentions.find((each) => steps.has(each.step)) ?? cooked ?? mentions[0];
  const food = raw.listing.line.foods[0]!;
  const rest = chart.restMinutes > 0 ? ` and rests ${chart.restMinutes} minutes` : '';
  return {
    span:
      mention === undefined
        ? raw.listing.passage.span(food.start, food.end)
        : dish.recipe.steps[mention.step]!.passage.span(mention.start, mention.end),
    subject: food.name,
    weight,
    message: `The method cooks ${food.text} and gives no temperature on a food thermometer.`,
    advice: `Add that it reaches ${chart.fahrenheit}°F (${chart.celsius}°C)${rest}.`,
    related: [{ file: dish.page.path, span: raw.listing.passage.span(), message: 'the listing' }],
  };
}
