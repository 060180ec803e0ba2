/** Marks a listed amount whose size the reader cannot know. */
import { unclearAmount } from '../../src/kitchen/units.js';
import type { RecipeRule } from '../rule.js';

export const unitUnclear: RecipeRule = {
  scope: 'recipe',
  name: 'unit-unclear',
  topic: 'measures',
  weight: 'query',
  summary: 'An amount gives a bunch, a glass, a knob or "some", without its size.',
  why: 'Bunches, knobs and glasses differ by a factor of four from kitchen to kitchen.',
  sources: ['House styles of cookbook publishers', 'Practice of food magazines'],
  examples: [
    {
      title: 'a bunch, and a knob',
      text: '# Parsley Potatoes\n\nServes 4\n\n- 1 bunch parsley\n- 1 knob butter\n- 2 pounds potatoes\n\n1. Boil the potatoes until soft, and toss them with the butter and the parsley.\n',
      marks: ['1 bunch', '1 knob'],
    },
    {
      title: 'a glass, and some',
      text: '# Braised Leeks\n\nServes 4\n\n- 4 leeks\n- 1 glass white wine\n- Some flour\n\n1. Dust the leeks with the flour, add the wine, and braise until soft.\n',
      marks: ['1 glass', 'Some'],
    },
    {
      title: 'a can with its size',
      text: '# Tomato Soup\n\nServes 4\n\n- 1 (14½-ounce) can tomatoes\n- 2 cups vegetable stock\n\n1. Simmer the tomatoes in the stock until soft.\n',
      marks: [],
    },
    {
      title: 'a packet weighed, a pinch, and herbs to serve',
      text: '# Pancakes\n\nServes 4\n\n- 1 packet (7 g) dried yeast\n- 2 cups flour\n- 1 pinch salt\n- Some mint, to serve\n\n1. Mix the yeast, flour and salt, and serve with the mint.\n',
      marks: [],
    },
  ],
  *look({ recipe }) {
    for (const listing of recipe.listings) {
      const extent = unclearAmount(listing);
      if (extent === null) continue;
      const text = listing.passage.text.slice(extent.start, extent.end);
      yield {
        span: listing.passage.span(extent.start, extent.end),
        subject: listing.line.foods[0]!.name,
        message: `"${text}" does not tell how much ${listing.line.foods[0]!.text} is meant.`,
        advice: 'Give a weight or a volume.',
      };
    }
  },
};
