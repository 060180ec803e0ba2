/** Marks clear juices or a color as the only sign that poultry or ground meat is safe. */
import type { Dish, RawCourse } from '../../src/kitchen/types.js';
import { safeTemperature } from '../../src/larder/safety.js';
import type { RecipeRule } from '../rule.js';

export const colorCueAlone: RecipeRule = {
  scope: 'recipe',
  name: 'color-cue-alone',
  topic: 'safety',
  weight: 'query',
  summary: 'Clear juices or a color are the only sign that poultry or ground meat is done.',
  why: 'Meat can lose its pink before it is safe, and keep it long after; a thermometer tells. Local codes and licensed practice come first.',
  sources: [
    'USDA FSIS and foodsafety.gov, Safe Minimum Internal Temperature chart',
    'Partnership for Food Safety Education, Safe Recipe Style Guide, 2019',
  ],
  beyond:
    'Whole cuts, fish and shellfish, of which the chart accepts the look or another figure; browned crusts, which safe-temperature-absent asks about; pots that simmer for an hour or more.',
  examples: [
    {
      title: 'a chicken whose juices run clear',
      text: '# Roast Chicken\n\nServes 4\n\n- 1 chicken (4 pounds)\n- 1 teaspoon salt\n\n1. Sprinkle the chicken with the salt.\n2. Roast at 400°F until the juices run clear, 1 hour.\n',
      marks: ['juices run clear'],
    },
    {
      title: 'patties that are no longer pink',
      text: '# Burgers\n\nServes 4\n\n- 1 pound ground beef\n- 1 tablespoon oil\n\n1. Press the beef into patties.\n2. Fry them in the oil until no longer pink inside, 8 minutes.\n',
      marks: ['no longer pink'],
    },
    {
      title: 'clear juices beside a temperature',
      text: '# Roast Chicken\n\nServes 4\n\n- 1 chicken (4 pounds)\n- 1 teaspoon salt\n\n1. Sprinkle the chicken with the salt.\n2. Roast at 400°F until the juices run clear and a thermometer in the thigh reads 165°F, 1 hour.\n',
      marks: [],
    },
    {
      title: 'shrimp, whose color is the chart’s own sign',
      text: '# Shrimp\n\nServes 2\n\n- 1 pound shrimp\n- 1 tablespoon oil\n\n1. Fry the shrimp in the oil until white and opaque, no longer pink-gray, 3 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const seen = new Set<number>();
    for (const course of dish.courses) {
      const { raw, color } = course;
      if (color === null || seen.has(color.step) || !isAlone(dish, course)) continue;
      seen.add(color.step);
      const { passage } = dish.recipe.steps[color.step]!;
      const chart = safeTemperature(raw.safety);
      const food = raw.listing.line.foods[0]!;
      yield {
        span: passage.span(color.start, color.end),
        subject: food.name,
        weight: course.bits && course.ground ? 'note' : 'query',
        message: `"${passage.text.slice(color.start, color.end)}" is the only sign of doneness for ${food.text}, and it does not show that ${chart.label} is done through.`,
        advice: `Add that it reaches ${chart.fahrenheit}°F (${chart.celsius}°C) on a food thermometer.`,
        related: [{ file: dish.page.path, span: raw.listing.passage.span(), message: 'the listing' }],
      };
    }
  },
};

/** Whether no temperature stands beside the color, and the food is not cooked for so long that nobody need ask. */
function isAlone(dish: Dish, { raw, ground, sure, bits }: RawCourse): boolean {
  if (raw.safety !== 'poultry' && raw.safety !== 'ground-meat') return false;
  if (sure && !(bits && ground)) return false;
  return !dish.doneTemperatures.some((done) => done.foods.some((food) => food.safety === raw.safety));
}
