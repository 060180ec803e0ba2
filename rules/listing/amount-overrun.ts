/** Marks a use with which the method has taken more than is listed. */
import { compareWithListing } from '../../src/kitchen/amounts.js';
import { balanceOf, printSum } from '../../src/kitchen/balance.js';
import { amountOf, atListing, atMention, spanOfAmount, subjectOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const amountOverrun: RecipeRule = {
  scope: 'recipe',
  name: 'amount-overrun',
  topic: 'listing',
  weight: 'fault',
  summary: 'The uses of a food add up to more than the list has.',
  why: 'The cook who measured by the list has none left when the last use comes.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
  ],
  examples: [
    {
      title: 'four tablespoons of oil poured where three are listed',
      text: '# Fried Onions\n\nServes 4\n\n- 3 tablespoons olive oil, divided\n- 2 onions, sliced\n- 4 slices bread\n\n1. Fry the onions in 2 tablespoons of the oil until golden.\n2. Fry the bread in 2 tablespoons of the oil until crisp.\n',
      marks: ['2 tablespoons'],
    },
    {
      title: 'the remaining butter, when two halves have gone in',
      text: '# Buttered Cabbage\n\nServes 4\n\n- 4 tablespoons butter, divided\n- 1 cabbage, shredded\n- 1 cup breadcrumbs\n\n1. Melt half of the butter in a pan and cook the cabbage until soft.\n2. Melt half of the butter in a second pan and fry the breadcrumbs until golden.\n3. Scatter the crumbs over the cabbage, and dot with the remaining butter.\n',
      marks: ['butter'],
    },
    {
      title: 'spoons that add up to the cup',
      text: '# Sugared Berries\n\nServes 4\n\n- 1/2 cup sugar, divided\n- 4 cups berries\n- 1 cup cream\n\n1. Toss the berries with 6 tablespoons of the sugar.\n2. Whip the cream with 2 tablespoons of the sugar until soft peaks form, and spoon it over the berries.\n',
      marks: [],
    },
    {
      title: 'more than is listed, where the list allows for more',
      text: '# Rolled Flatbreads\n\nMakes 8\n\n- 2 cups flour, plus more for dusting\n- 3/4 cup hot water\n\n1. Stir 2 cups of the flour with the water, and knead until smooth.\n2. Dust the board with 1/4 cup of the flour, roll out thin rounds, and cook in a dry pan until spotted.\n',
      marks: [],
    },
  ],
  *look(dish, style) {
    for (const account of dish.accounts) {
      const { listing, takings } = account;
      const balance = balanceOf(account, style.system);
      if (balance === null || listing.line.plusMore !== null) continue;
      const rest = takings.find(
        (taking) =>
          taking.how === 'rest' && takings.indexOf(taking) > takings.indexOf(balance.stated.at(-1)!),
      );
      const over = balance.over ?? (balance.nothingLeft ? rest : undefined);
      if (over == null || takings.length < 2) continue;
      // One use that alone takes another amount than the list is a disagreement of its own.
      if (balance.stated.some(({ mention }) => compareWithListing(dish, mention) !== null)) continue;
      const used = printSum(balance.used, listing, style.system);
      yield {
        span: spanOfAmount(dish, over.mention),
        subject: subjectOf(listing),
        weight: balance.over !== null && balance.slight ? 'query' : 'fault',
        message:
          balance.over === null
            ? `The uses before this one take ${used}, all that the list has; nothing remains.`
            : `The uses take ${used} together; the list has ${amountOf(listing)}.`,
        advice: 'List as much as the method uses, or use less.',
        related: [
          atListing(dish, listing, 'the listed amount'),
          ...takings
            .filter((taking) => taking !== over)
            .map(({ mention }) => atMention(dish, mention, 'used here')),
        ],
      };
    }
  },
};
