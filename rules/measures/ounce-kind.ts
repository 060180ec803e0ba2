/** Marks an ounce that may be a weight or a fluid ounce. */
import { namesFluidOunces, ounceOfEitherKind } from '../../src/kitchen/units.js';
import type { RecipeRule } from '../rule.js';

export const ounceKind: RecipeRule = {
  scope: 'recipe',
  name: 'ounce-kind',
  topic: 'measures',
  weight: 'query',
  summary: 'An ounce may be a weight or a fluid ounce: "8 ounces sour cream".',
  why: 'Eight ounces of honey by weight are two thirds of a cup, and eight fluid ounces are a whole one.',
  sources: ['House styles of cookbook publishers', 'Practice of food magazines'],
  examples: [
    {
      title: 'honey and sour cream in ounces',
      text: '# Honey Cream\n\nServes 4\n\n- 8 ounces sour cream\n- 3 ounces honey\n\n1. Stir the honey into the sour cream.\n',
      marks: ['8 ounces', '3 ounces'],
    },
    {
      title: 'milk in ounces',
      text: '# Milk Rice\n\nServes 4\n\n- 12 ounces milk\n- ½ cup white rice\n\n1. Simmer the rice in the milk until soft.\n',
      marks: ['12 ounces'],
    },
    {
      title: 'fluid ounces, and ounces with their grams',
      text: '# Honey Cream\n\nServes 4\n\n- 8 fluid ounces sour cream\n- 3 ounces (85 g) honey\n\n1. Stir the honey into the sour cream.\n',
      marks: [],
    },
    {
      title: 'what is only weighed, a can by its label, and a drink',
      text: '# Pantry Dip\n\nServes 4\n\n- 8 ounces cream cheese\n- 1 (8-ounce) can tomato sauce\n- 2 ounces gin\n\n1. Beat the cream cheese with the tomato sauce and the gin.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const listing of dish.recipe.listings) {
      const measure = ounceOfEitherKind(listing);
      if (measure === null || namesFluidOunces(dish)) continue;
      const food = listing.line.foods[0]!;
      const text = listing.passage.text.slice(measure.start, measure.end);
      yield {
        span: listing.passage.span(measure.start, measure.end),
        subject: food.name,
        message: `"${text}" of ${food.text} may be a weight or fluid ounces.`,
        advice: 'Write "fluid ounces", or give the weight in grams or the volume in cups too.',
      };
    }
  },
};
