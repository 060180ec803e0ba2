/** Marks an amount in the method that is not the list's. */
import { compareWithListing } from '../../src/kitchen/amounts.js';
import { amountOf, atListing, foodOf, ofFood, spanOfAmount, subjectOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const amountDisagreement: RecipeRule = {
  scope: 'recipe',
  name: 'amount-disagreement',
  topic: 'listing',
  weight: 'fault',
  summary: 'The method states another amount than the list.',
  why: 'The cook who measured by the list stands at the stove with too much or too little.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
  ],
  examples: [
    {
      title: 'two cups of flour where the list has one',
      text: '# Batter\n\nServes 4\n\n- 1 cup flour\n- 2 eggs\n- 1 cup milk\n\n1. Whisk 2 cups flour with the eggs and the milk.\n',
      marks: ['2 cups'],
    },
    {
      title: 'three eggs where the list has two',
      text: '# Batter\n\nServes 4\n\n- 1 cup flour\n- 2 eggs\n- 1 cup milk\n\n1. Beat the 3 eggs with the milk, and stir in the flour.\n',
      marks: ['3'],
    },
    {
      title: 'the same amount in other units',
      text: '# Batter\n\nServes 4\n\n- 1/2 cup sugar\n- 2 eggs\n\n1. Beat the eggs with 8 tablespoons sugar.\n',
      marks: [],
    },
    {
      title: 'a part of a listing, with the rest used later',
      text: '# Fried Onions\n\nServes 4\n\n- 3 tablespoons olive oil, divided\n- 2 onions, sliced\n- 4 slices bread\n\n1. Fry the onions in 1 tablespoon of the oil until golden.\n2. Fry the bread in the remaining oil until crisp.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const mention of dish.mentions) {
      const listing = compareWithListing(dish, mention);
      if (listing === null || mention.measure === null) continue;
      const { start, end } = mention.measure;
      const stated = dish.recipe.steps[mention.step]!.passage.text.slice(start, end);
      yield {
        span: spanOfAmount(dish, mention),
        subject: subjectOf(listing),
        message: `The method says ${ofFood(stated, mention.measure, foodOf(listing))}; the list has ${amountOf(listing)}.`,
        advice: 'Make the two agree.',
        related: [atListing(dish, listing, 'the listed amount')],
      };
    }
  },
};
