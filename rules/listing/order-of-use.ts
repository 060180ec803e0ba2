/** Marks a list whose order is not that of first use. */
import { misplaced } from '../../src/kitchen/order.js';
import { atListing, foodOf, spanOfFood, stepOf, subjectOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const orderOfUse: RecipeRule = {
  scope: 'recipe',
  name: 'order-of-use',
  topic: 'listing',
  weight: 'query',
  summary: 'Two or more listings stand out of the order in which the method uses them.',
  why: 'The cook lays things out by the list and works down it; what is out of place is forgotten.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'the topping listed before what goes into the pan first',
      text: '# Pan Leeks\n\nServes 2\n\n- 1 lemon\n- 1/2 cup grated hard cheese\n- 2 tablespoons butter\n- 4 leeks, sliced\n- 1/2 cup cream\n\n1. Melt the butter and cook the leeks until soft.\n2. Pour in the cream and simmer until thick.\n3. Scatter the cheese over, squeeze the lemon over, and serve.\n',
      marks: ['lemon'],
    },
    {
      title: 'two listings that changed places',
      text: '# Bean Pot\n\nServes 4\n\n- 2 cups stock\n- 1 onion, sliced\n- 2 carrots, diced\n- 2 tablespoons olive oil\n- 2 cups cooked white beans\n\n1. Heat the oil and cook the onion until golden.\n2. Add the carrots and cook until they soften.\n3. Pour in the stock and simmer until tender, 10 minutes.\n4. Stir in the beans and warm through until hot.\n',
      marks: ['stock'],
    },
    {
      title: 'the main ingredient first, by habit',
      text: '# Smothered Leeks\n\nServes 2\n\n- 4 leeks, sliced\n- 2 tablespoons butter\n- 1 onion, sliced\n- 1/2 cup stock\n\n1. Melt the butter and cook the onion until golden.\n2. Pour in the stock.\n3. Add the leeks, and simmer until soft.\n',
      marks: [],
    },
    {
      title: 'salt and pepper last, by habit',
      text: '# Pan Leeks\n\nServes 2\n\n- 4 leeks, sliced\n- 2 tablespoons butter\n- 1/2 cup cream\n- 1/2 teaspoon salt\n- 1/4 teaspoon black pepper\n\n1. Season the leeks with the salt and pepper.\n2. Melt the butter and cook the leeks until soft.\n3. Pour in the cream and simmer until thick.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const component of dish.recipe.components) {
      const found = misplaced(dish, component);
      const [first] = found;
      if (first === undefined) continue;
      const { listing, step, other, otherStep } = first;
      const side = listing.index < other.index ? 'before' : 'after';
      yield {
        span: spanOfFood(listing),
        subject: subjectOf(listing),
        message: `The list has ${foodOf(listing)} ${side} ${foodOf(other)}; the method first uses it in ${stepOf(dish, step)}, and ${foodOf(other)} in ${stepOf(dish, otherStep)}. ${found.length} lines of this list are out of place.`,
        advice: 'List the ingredients in the order of first use.',
        related: found.slice(1).map((each) => atListing(dish, each.listing, 'also out of place')),
      };
    }
  },
};
