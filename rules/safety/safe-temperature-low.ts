/** Marks a temperature for the food itself that is below the safe minimum. */
import type { DoneTemperature, RawFood } from '../../src/kitchen/types.js';
import { safeTemperature } from '../../src/larder/safety.js';
import type { RecipeRule } from '../rule.js';

export const safeTemperatureLow: RecipeRule = {
  scope: 'recipe',
  name: 'safe-temperature-low',
  topic: 'safety',
  weight: 'fault',
  summary: 'The temperature to which a food is cooked is below its safe minimum.',
  why: 'Below it the bacteria that make people ill survive. Local codes and licensed practice come first.',
  sources: ['USDA FSIS and foodsafety.gov, Safe Minimum Internal Temperature chart'],
  beyond:
    'Longer times at lower heat, as sous vide has them; temperatures that may be those of the oven, the oil or the dough; the rest after cooking.',
  examples: [
    {
      title: 'chicken at 150°F',
      text: '# Roast Chicken\n\nServes 4\n\n- 1 chicken (4 pounds)\n- 1 teaspoon salt\n\n1. Rub the chicken with the salt, and roast at 400°F until a thermometer in the thigh reads 150°F, 1 hour.\n',
      marks: ['150°F'],
    },
    {
      title: 'a burger at 60 degrees Celsius',
      text: '# Burgers\n\nServes 4\n\n- 500 g ground beef\n- 1 teaspoon salt\n\n1. Salt the beef, shape it into patties, and grill until the internal temperature is 60°C, 8 minutes.\n',
      marks: ['60°C'],
    },
    {
      title: 'chicken at the minimum, in a slow oven',
      text: '# Roast Chicken\n\nServes 4\n\n- 1 chicken (4 pounds)\n- 1 teaspoon salt\n\n1. Rub the chicken with the salt, and roast at 275°F until a thermometer in the thigh reads 165°F (74°C), 2 hours.\n',
      marks: [],
    },
    {
      title: 'water for yeast, and a cake’s middle',
      text: '# Buns\n\nMakes 8\n\n- 1 packet (7 g) yeast\n- 1/2 cup water\n- 2 cups flour\n\n1. Heat the water to 110°F, and stir in the yeast and the flour.\n2. Bake at 375°F until a thermometer in the center reads 200°F, 20 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const done of dish.doneTemperatures) {
      const raw = leastDemanding(done);
      if (raw === null) continue;
      const chart = safeTemperature(raw.safety);
      if (done.fahrenheit.gte(chart.fahrenheit) || isRounded(done, chart.celsius)) continue;
      const passage = dish.recipe.steps[done.step]!.passage;
      const text = passage.text.slice(done.temperature.start, done.temperature.end);
      const food = raw.listing.line.foods[0]!;
      yield {
        span: passage.span(done.temperature.start, done.temperature.end),
        subject: food.name,
        weight: raw.safety === 'poultry' || raw.safety === 'ground-meat' ? 'fault' : 'query',
        message: `The method cooks ${food.text} to ${text}; the safe minimum for ${chart.label} is ${chart.fahrenheit}°F (${chart.celsius}°C).`,
        advice: `Raise it to ${chart.fahrenheit}°F${chart.restMinutes > 0 ? ` with ${chart.restMinutes} minutes of rest` : ''}.`,
        related: [{ file: dish.page.path, span: raw.listing.passage.span(), message: 'the listing' }],
      };
    }
  },
};

/** The food with the lowest minimum of those that the temperature can be about: a mark must be beyond doubt. */
function leastDemanding(done: DoneTemperature): RawFood | null {
  const minimum = (raw: RawFood): number => safeTemperature(raw.safety).fahrenheit;
  return done.foods.reduce<RawFood | null>(
    (least, raw) => (least === null || minimum(raw) < minimum(least) ? raw : least),
    null,
  );
}

/** 71°C is 159.8°F: a temperature stated in Celsius is compared with the chart's own Celsius. */
function isRounded(done: DoneTemperature, celsius: number): boolean {
  return (
    done.temperature.scale === 'celsius' &&
    done.temperature.amount.low.gte(celsius) &&
    done.temperature.amount.high.gte(celsius)
  );
}
