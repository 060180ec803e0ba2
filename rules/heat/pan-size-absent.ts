/** Marks a baking tin or dish whose size is not given. */
import { unsizedPanOf } from '../../src/kitchen/baking-pans.js';
import type { RecipeRule } from '../rule.js';

export const panSizeAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'pan-size-absent',
  topic: 'heat',
  weight: 'query',
  summary: 'A cake, loaf or pie is baked in a tin or dish whose size is not given.',
  why: 'In a smaller tin the batter runs over and stays raw inside; in a larger one it is dry and flat.',
  sources: ['House styles of cookbook publishers', 'Recipe-writing handbooks (common practice)'],
  examples: [
    {
      title: 'a cake tin of any size',
      text: '# Honey Cake\n\nServes 8\n\n- 2 cups cake batter\n- 2 tablespoons honey\n- 1 tablespoon butter\n\n1. Heat the oven to 350°F, and butter a cake tin.\n2. Stir the honey into the batter, pour it in, and bake until golden, 40 minutes.\n',
      marks: ['cake tin'],
    },
    {
      title: 'a pie in its dish',
      text: '# Plum Pie\n\nServes 8\n\n- 1 pound pastry\n- 2 pounds plums, halved\n\n1. Heat the oven to 400°F.\n2. Line a pie dish with the pastry, add the plums, and bake until golden, 40 minutes.\n',
      marks: ['pie dish'],
    },
    {
      title: 'a tin with its sides, and one by the dough that it holds',
      text: '# Honey Cake\n\nServes 8\n\n- 2 cups cake batter\n- 2 tablespoons honey\n- 1 tablespoon butter\n\n1. Heat the oven to 350°F, and butter a 9 by 5-inch (23 by 13 cm) loaf tin.\n2. Stir the honey into the batter, pour it in, and bake until golden, 40 minutes.\n',
      marks: [],
    },
    {
      title: 'a muffin tin, which comes in one size',
      text: '# Honey Muffins\n\nMakes 12\n\n- 2 cups cake batter\n- 2 tablespoons honey\n- 1 tablespoon butter\n\n1. Heat the oven to 350°F, and butter a muffin tin.\n2. Stir the honey into the batter, spoon it in, and bake until golden, 20 minutes.\n',
      marks: [],
    },
    {
      title: 'bread that stands free on a sheet',
      text: '# Hearth Bread\n\nMakes 1 loaf\n\n- 1 pound bread dough\n- 1 tablespoon flour\n\n1. Heat the oven to 450°F, and dust a baking sheet with the flour.\n2. Shape the dough into a ball, set it on the sheet, and bake until brown, 40 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const pan = unsizedPanOf(dish);
    if (pan === null) return;
    const { passage } = dish.recipe.steps[pan.step]!;
    const words = passage.text.slice(pan.start, pan.end);
    yield {
      span: passage.span(pan.start, pan.end),
      subject: words,
      message: pan.named
        ? `The recipe does not say how large the ${words.toLowerCase()} is.`
        : `Step ${pan.step + 1} bakes a batter, and the recipe names no tin for it.`,
      advice: 'Give its size, or how much it holds.',
    };
  },
};
