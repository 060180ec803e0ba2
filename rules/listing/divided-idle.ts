/** Marks a listing that is marked "divided" and used once. */
import { isUsedOnce } from '../../src/kitchen/accounts.js';
import { atMention, foodOf, spanOfListing, subjectOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const dividedIdle: RecipeRule = {
  scope: 'recipe',
  name: 'divided-idle',
  topic: 'listing',
  weight: 'query',
  summary: 'The list says "divided", and the method uses the food once.',
  why: 'The cook keeps some back for a second use that never comes.',
  sources: ['Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)'],
  examples: [
    {
      title: 'divided oil that goes in at one step',
      text: '# Fried Onions\n\nServes 4\n\n- 3 tablespoons olive oil, divided\n- 2 onions, sliced\n\n1. Heat the oil and fry the onions until golden.\n',
      marks: ['3 tablespoons olive oil'],
    },
    {
      title: 'divided sugar of which the second use was cut',
      text: '# Berry Cups\n\nServes 4\n\n- 4 cups berries\n- 1/2 cup sugar, divided\n- 1 cup cream\n\n1. Toss the berries with the sugar.\n2. Whip the cream until soft peaks form, and spoon it over.\n',
      marks: ['1/2 cup sugar'],
    },
    {
      title: 'divided and used twice',
      text: '# Fried Onions\n\nServes 4\n\n- 3 tablespoons olive oil, divided\n- 2 onions, sliced\n- 4 slices bread\n\n1. Fry the onions in half of the oil until golden.\n2. Fry the bread in the rest of the oil until crisp.\n',
      marks: [],
    },
    {
      title: 'divided among other ingredients',
      text: '# Plain Scones\n\nMakes 6\n\n- 2 cups flour\n- 1 tablespoon baking powder\n- 3 tablespoons sugar, divided\n- 1 cup heavy cream\n\n1. Whisk the dry ingredients together, stir in the cream, and cut into rounds.\n2. Sprinkle with sugar, and bake at 400°F until golden, 15 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const account of dish.accounts) {
      const { listing, takings } = account;
      const [only] = takings;
      if (!listing.line.divided || only === undefined || !isUsedOnce(dish, account)) continue;
      yield {
        span: spanOfListing(listing),
        subject: subjectOf(listing),
        message: `The list divides ${foodOf(listing)}; the method uses it once.`,
        advice: 'Say where the other part goes, or take "divided" off the line.',
        related: [atMention(dish, only.mention, 'the only use')],
      };
    }
  },
};
