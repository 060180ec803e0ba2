/** Marks a listing that the method takes in parts, and that is not marked "divided". */
import { undividedParts } from '../../src/kitchen/balance.js';
import { atMention, foodOf, spanOfListing, subjectOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const dividedAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'divided-absent',
  topic: 'listing',
  weight: 'query',
  summary: 'A food goes in at two places or more, and the list does not say "divided".',
  why: 'The cook pours all of it in at the first place.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
  ],
  examples: [
    {
      title: 'oil for the onions and oil for the bread',
      text: '# Fried Onions\n\nServes 4\n\n- 3 tablespoons olive oil\n- 2 onions, sliced\n- 4 slices bread\n\n1. Fry the onions in 1 tablespoon of the oil until golden.\n2. Fry the bread in the remaining oil until crisp.\n',
      marks: ['3 tablespoons olive oil'],
    },
    {
      title: 'sugar by the half',
      text: '# Berry Cups\n\nServes 4\n\n- 4 cups berries\n- 1/2 cup sugar\n- 1 cup cream\n\n1. Toss the berries with half the sugar.\n2. Whip the cream with the rest of the sugar until soft peaks form, and spoon it over.\n',
      marks: ['1/2 cup sugar'],
    },
    {
      title: 'an onion that is only spoken of again',
      text: '# Soft Onions\n\nServes 2\n\n- 3 onions, sliced\n- 2 tablespoons butter\n\n1. Cook the onions in the butter until golden.\n2. Cover the onions and cook until soft.\n',
      marks: [],
    },
    {
      title: 'salt to taste, twice',
      text: '# Crushed Peas\n\nServes 2\n\n- 2 cups peas\n- 1 tablespoon butter\n- Salt\n\n1. Boil the peas in salted water until soft.\n2. Crush with the butter, and season with salt.\n',
      marks: [],
    },
  ],
  *look(dish, style) {
    for (const account of dish.accounts) {
      const { listing } = account;
      const parts = undividedParts(account, style.system);
      if (parts.length === 0) continue;
      yield {
        span: spanOfListing(listing),
        subject: subjectOf(listing),
        message: `The method takes ${foodOf(listing)} in ${parts.length} parts; the list does not say "divided".`,
        advice: 'Add "divided" to the line, and say at each use how much goes in.',
        related: parts.map(({ mention }) => atMention(dish, mention, 'used here')),
        mends: [
          {
            label: 'Add ", divided" to the line',
            sure: false,
            edits: [{ span: listing.passage.span(listing.passage.text.length), text: ', divided' }],
          },
        ],
      };
    }
  },
};
