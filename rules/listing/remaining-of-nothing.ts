/** Marks "the remaining stock" where none was used before. */
import { restsOfNothing } from '../../src/kitchen/accounts.js';
import { atListing, foodOf, spanOfMention, stepOf, subjectOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const remainingOfNothing: RecipeRule = {
  scope: 'recipe',
  name: 'remaining-of-nothing',
  topic: 'listing',
  weight: 'query',
  summary: 'The method takes "the remaining" of a food of which nothing was used before.',
  why: 'The cook searches the steps above for the use that is missing.',
  sources: ['common practice'],
  examples: [
    {
      title: 'the remaining stock, at its first use',
      text: '# Braised Leeks\n\nServes 4\n\n- 4 leeks\n- 2 tablespoons butter\n- 2 cups vegetable stock\n\n1. Brown the leeks in the butter until golden.\n2. Pour in the remaining stock and simmer until tender, 20 minutes.\n',
      marks: ['stock'],
    },
    {
      title: 'the rest of the sugar, at its first use',
      text: '# Berry Cups\n\nServes 4\n\n- 4 cups berries\n- 1/2 cup sugar\n- 1 cup cream\n\n1. Crush the berries.\n2. Whip the cream with the rest of the sugar until soft peaks form, and spoon it over the berries.\n',
      marks: ['sugar'],
    },
    {
      title: 'some went in before',
      text: '# Braised Leeks\n\nServes 4\n\n- 4 leeks\n- 2 tablespoons butter\n- 2 cups vegetable stock, divided\n\n1. Brown the leeks in the butter, and add 1 cup of the stock.\n2. Pour in the remaining stock and simmer until tender, 20 minutes.\n',
      marks: [],
    },
    {
      title: 'the remaining ingredients, some of which have no earlier use',
      text: '# Chopped Salad\n\nServes 4\n\n- 1 cucumber, diced\n- 2 tomatoes, diced\n- 1 cup parsley leaves\n- 2 tablespoons olive oil\n\n1. Drain the cucumber and the tomatoes in a colander.\n2. Toss with the remaining ingredients.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { listing, mention } of restsOfNothing(dish)) {
      yield {
        span: spanOfMention(dish, mention),
        subject: subjectOf(listing),
        message: `${stepOf(dish, mention.step).replace('s', 'S')} takes the remaining ${foodOf(listing)}; no step before it uses any.`,
        advice: 'Say where the first part goes, or take "remaining" out.',
        related: [atListing(dish, listing, 'the listing')],
      };
    }
  },
};
