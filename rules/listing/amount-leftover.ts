/** Marks a listing of which the method takes less than there is, and says nothing of the rest. */
import { compareWithListing } from '../../src/kitchen/amounts.js';
import { balanceOf, printSum } from '../../src/kitchen/balance.js';
import { amountOf, atMention, spanOfListing, subjectOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const amountLeftover: RecipeRule = {
  scope: 'recipe',
  name: 'amount-leftover',
  topic: 'listing',
  weight: 'fault',
  summary: 'The uses of a food add up to less than the list has.',
  why: 'The cook is left with a measured food and does not know where it was to go.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
  ],
  examples: [
    {
      title: 'a tablespoon of oil that no step pours',
      text: '# Fried Onions\n\nServes 4\n\n- 4 tablespoons olive oil, divided\n- 2 onions, sliced\n- 4 slices bread\n\n1. Fry the onions in 2 tablespoons of the oil until golden.\n2. Fry the bread in 1 tablespoon of the oil until crisp.\n',
      marks: ['4 tablespoons olive oil'],
    },
    {
      title: 'half of the cheese',
      text: '# Cheese Toast\n\nServes 2\n\n- 4 slices bread\n- 1 cup grated cheddar cheese\n\n1. Heap half of the cheese on the bread, and broil until melted.\n',
      marks: ['1 cup grated cheddar cheese'],
    },
    {
      title: 'the remaining oil takes what is left',
      text: '# Fried Onions\n\nServes 4\n\n- 4 tablespoons olive oil, divided\n- 2 onions, sliced\n- 4 slices bread\n\n1. Fry the onions in 1 tablespoon of the oil until golden.\n2. Fry the bread in the remaining oil until crisp.\n',
      marks: [],
    },
    {
      title: 'two halves are a whole',
      text: '# Layered Potatoes\n\nServes 4\n\n- 2 pounds potatoes, sliced, divided\n- 2 cups cream, divided\n\n1. Lay half of the potatoes in a dish and pour over half of the cream.\n2. Lay the other half of the potatoes on top, pour over the rest of the cream, and bake at 400°F until tender.\n',
      marks: [],
    },
  ],
  *look(dish, style) {
    for (const account of dish.accounts) {
      const { listing, takings } = account;
      const balance = balanceOf(account, style.system);
      if (balance === null || balance.stated.length < takings.length) continue;
      // A single use may be spoken of again: "all the tomatoes".
      if (takings.length === 1 && dish.uses[listing.index]!.length > 1) continue;
      if (balance.used.high.gte(balance.listed.low)) continue;
      if (balance.stated.some(({ mention }) => compareWithListing(dish, mention) !== null)) continue;
      yield {
        span: spanOfListing(listing),
        subject: subjectOf(listing),
        // A single use may be meant to leave some, for the table or for another day.
        weight: takings.length > 1 && !balance.slight ? 'fault' : 'query',
        message: `The method takes ${printSum(balance.used, listing, style.system)}; the list has ${amountOf(listing)}.`,
        advice: 'Say where the rest goes, or list less.',
        related: takings.map(({ mention }) => atMention(dish, mention, 'used here')),
      };
    }
  },
};
