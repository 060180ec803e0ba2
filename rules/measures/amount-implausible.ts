/** Marks a listed amount that no dish takes, or a unit that the food does not come in. */
import { printFraction } from '../../src/grammar/print.js';
import { tooMuch, unsuited } from '../../src/kitchen/plausible.js';
import { unitWord } from '../../src/larder/units.js';
import type { RecipeRule } from '../rule.js';

export const amountImplausible: RecipeRule = {
  scope: 'recipe',
  name: 'amount-implausible',
  topic: 'measures',
  weight: 'query',
  summary: 'An amount is more than any dish takes, or in a unit that the food does not come in.',
  why: 'A cup written for a teaspoon makes a dish that nobody can eat.',
  sources: ['src/larder/limits.yaml and src/larder/suits.yaml: common practice, the figure beside each'],
  examples: [
    {
      title: 'a cup of salt for four',
      text: '# Potato Soup\n\nServes 4\n\n- 2 pounds potatoes\n- 1 cup salt\n- 6 cups water\n\n1. Simmer the potatoes in the water with the salt until soft, and mash.\n',
      marks: ['1 cup'],
    },
    {
      title: 'ten tablespoons of baking soda, and cloves of flour',
      text: '# Soda Bread\n\nMakes 1 loaf\n\n- 3 cloves flour\n- 10 tablespoons baking soda\n- 1 cup buttermilk\n\n1. Stir the flour, soda and buttermilk together, and bake at 350°F (180°C) until brown, 40 minutes.\n',
      marks: ['3 cloves', '10 tablespoons'],
    },
    {
      title: 'salt for a brine',
      text: '# Brined Onions\n\nServes 4\n\n- 1 cup salt\n- 8 cups water\n- 2 pounds pearl onions\n\n1. Stir the salt into the water for the brine, and soak the onions in it overnight.\n',
      marks: [],
    },
    {
      title: 'a great deal of what dishes take a great deal of',
      text: '# Garlic Braise\n\nServes 4\n\n- 40 cloves garlic\n- 2 sticks celery\n- 1 cup olive oil\n- 1 tablespoon salt\n\n1. Cook the garlic and the celery with the salt in the oil over low heat until soft.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { listing, measure, limit, servings } of tooMuch(dish)) {
      const food = listing.line.foods[0]!;
      const text = listing.passage.text.slice(measure.start, measure.end);
      const number = printFraction(limit.most);
      const most =
        limit.unit === undefined ? number : `${number} ${unitWord(limit.unit, limit.most.valueOf())}`;
      yield {
        span: listing.passage.span(measure.start, measure.end),
        subject: food.name,
        message:
          servings === null
            ? `${text} of ${food.text} is more than a recipe takes: ${most} is already a great deal.`
            : `${text} of ${food.text} for ${printFraction(servings)} is more than ${most} each.`,
        advice: 'Check the number and the unit.',
      };
    }
    for (const { listing, measure } of unsuited(dish)) {
      const food = listing.line.foods[0]!;
      const text = listing.passage.text.slice(measure.start, measure.end);
      yield {
        span: listing.passage.span(measure.start, measure.end),
        subject: food.name,
        message: `"${text}" is no measure of ${food.text}.`,
        advice: 'Check the unit.',
      };
    }
  },
};
