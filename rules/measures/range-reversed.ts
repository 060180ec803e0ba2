/** Marks a range that runs downwards. */
import { reversedRanges, turnedRound } from '../../src/kitchen/ranges.js';
import { offered, replacing } from '../mends.js';
import type { RecipeRule } from '../rule.js';

export const rangeReversed: RecipeRule = {
  scope: 'recipe',
  name: 'range-reversed',
  topic: 'measures',
  weight: 'fault',
  summary: 'A range runs downwards: "8 to 5 minutes".',
  why: 'One of the two numbers is a slip, and the cook cannot know which.',
  sources: ['common practice'],
  examples: [
    {
      title: 'a time that runs backwards',
      text: '# Toast\n\nServes 1\n\n- 1 slice bread\n- 1 teaspoon butter\n\n1. Butter the bread, and toast it until golden, 8 to 5 minutes.\n',
      marks: ['8 to 5 minutes'],
    },
    {
      title: 'a listed amount that runs backwards',
      text: '# Soup\n\nServes 4\n\n- 4–3 cups vegetable stock\n- 2 leeks\n\n1. Simmer the leeks in the stock until soft.\n',
      marks: ['4–3 cups'],
    },
    {
      title: 'a mixed number written with a hyphen',
      text: '# Batter\n\nServes 4\n\n- 2-1/2 cups flour\n- 2 eggs\n\n1. Beat the flour and the eggs until smooth, 3 to 5 minutes.\n',
      marks: [],
    },
    {
      title: 'an oven that is turned down',
      text: '# Loaf\n\nMakes 1 loaf\n\n- 1 pound bread dough\n- 1 tablespoon milk\n\n1. Brush the dough with the milk, and bake, lowering the oven from 450°F to 400°F after 10 minutes, until brown.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { passage, item } of reversedRanges(dish)) {
      const text = passage.text.slice(item.start, item.end);
      const turned = turnedRound(text);
      yield {
        span: passage.span(item.start, item.end),
        subject: text,
        message: `The range "${text}" runs downwards.`,
        advice: 'Put the smaller number first, or mend the one that is wrong.',
        mends:
          turned === null
            ? []
            : offered(
                `turn it round to "${turned}"`,
                replacing(dish.page, passage, [item.start, item.end], turned),
              ),
      };
    }
  },
};
