/** Marks a listed amount that has no unit and cannot be a count. */
import { lacksUnit } from '../../src/kitchen/units.js';
import type { RecipeRule } from '../rule.js';

export const unitAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'unit-absent',
  topic: 'measures',
  weight: 'query',
  summary: 'An amount has a number and no unit: "2 flour".',
  why: 'Two of what? Cups, spoons and grams give three different dishes.',
  sources: ['House styles of cookbook publishers', 'Practice of food magazines'],
  examples: [
    {
      title: 'flour and salt by the number',
      text: '# Flatbread\n\nMakes 4\n\n- 2 flour\n- 1 salt\n- 1/2 cup water\n\n1. Knead the flour, salt and water, roll out, and fry until brown, 2 minutes.\n',
      marks: ['2', '1'],
    },
    {
      title: 'butter by the hundred',
      text: '# Shortbread\n\nMakes 12\n\n- 250 butter\n- 300 g flour\n- 100 g sugar\n\n1. Cream the butter and sugar, work in the flour, and bake at 325°F until golden, 30 minutes.\n',
      marks: ['250'],
    },
    {
      title: 'things that are counted',
      text: '# Plate Supper\n\nServes 2\n\n- 2 eggs\n- 3 medium onions\n- 1 lemon\n- 2 chicken breasts\n\n1. Fry the onions and chicken until a thermometer reads 165°F, then the eggs until set, and serve with the lemon.\n',
      marks: [],
    },
    {
      title: 'units short and long',
      text: '# Batter\n\nServes 4\n\n- 2 c. flour\n- 1 T sugar\n- 2 sticks butter\n\n1. Rub the butter into the flour and sugar.\n',
      marks: [],
    },
  ],
  *look({ recipe }) {
    for (const listing of recipe.listings) {
      const measure = lacksUnit(listing);
      if (measure === null) continue;
      const food = listing.line.foods[0]!;
      const text = listing.passage.text.slice(measure.start, measure.end);
      yield {
        span: listing.passage.span(measure.start, measure.end),
        subject: food.name,
        message: `"${text} ${food.text}" has a number and no unit.`,
        advice: 'Say of what: cups, tablespoons, grams.',
      };
    }
  },
};
