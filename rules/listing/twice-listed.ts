/** Marks a food that one list has twice. */
import { listedTwice } from '../../src/kitchen/repeats.js';
import { atListing, foodOf, spanOfListing, subjectOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const twiceListed: RecipeRule = {
  scope: 'recipe',
  name: 'twice-listed',
  topic: 'listing',
  weight: 'query',
  summary: 'A list has the same food twice.',
  why: 'The cook measures one of the two, and cannot tell which use it was for.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
  ],
  examples: [
    {
      title: 'butter at the head and at the foot of a list',
      text: '# Crumble\n\nServes 4\n\n- 2 tablespoons butter\n- 4 apples, sliced\n- 1 cup oats\n- 3 tablespoons butter\n\n1. Melt the butter, toss it with the apples and the oats, and bake at 400°F until golden.\n',
      marks: ['3 tablespoons butter'],
    },
    {
      title: 'milk twice, with its amounts in two units',
      text: '# Oat Drink\n\nServes 2\n\n- 1 cup milk\n- 2 tablespoons oats\n- 3 tablespoons milk\n\n1. Blend the milk with the oats until smooth.\n',
      marks: ['3 tablespoons milk'],
    },
    {
      title: 'two components with a list each',
      text: '# Crumble\n\nServes 4\n\n- 4 apples, sliced\n- 2 tablespoons butter\n\n### For the topping\n\n- 1 cup oats\n- 3 tablespoons butter\n\n1. Toss the apples with the melted butter.\n2. Rub the topping of oats and butter together, scatter it over, and bake at 400°F until golden.\n',
      marks: [],
    },
    {
      title: 'the second one says what it is for',
      text: '# Seed Rolls\n\nMakes 8\n\n- 3 cups flour\n- 1 egg\n- 1 cup warm milk\n- 1 egg, for the glaze\n\n1. Knead the flour, the egg and the milk, and shape rolls.\n2. Glaze with the other egg, and bake at 400°F until golden.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const component of dish.recipe.components) {
      for (const { first, second } of listedTwice(component)) {
        yield {
          span: spanOfListing(second),
          subject: subjectOf(second),
          message: `The list has ${foodOf(second)} twice.`,
          advice: 'Make one line of the two and mark it "divided", or say what each is for.',
          related: [atListing(dish, first, 'listed here before')],
        };
      }
    }
  },
};
