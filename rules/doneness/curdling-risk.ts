/** Marks cultured dairy that is stirred at once into something boiling. */
import { curdlingMentions } from '../../src/kitchen/curdling.js';
import type { RecipeRule } from '../rule.js';

export const curdlingRisk: RecipeRule = {
  scope: 'recipe',
  name: 'curdling-risk',
  topic: 'doneness',
  weight: 'query',
  summary: 'Yogurt, sour cream or buttermilk is stirred at once into something boiling.',
  why: 'Cultured dairy curdles when it is heated fast: it goes in off the heat, or a spoonful at a time.',
  sources: ['common practice'],
  examples: [
    {
      title: 'yogurt into a simmering curry',
      text: '# Weir Curry\n\nServes 4\n\n- 2 cups chickpeas, cooked\n- 1 cup tomato puree\n- 1 cup plain yogurt\n\n1. Simmer the chickpeas in the tomato puree over medium heat until thick, 10 minutes.\n2. Stir in the yogurt.\n',
      marks: ['yogurt'],
    },
    {
      title: 'sour cream into a boiling sauce',
      text: '# Sluice Sauce\n\nServes 4\n\n- 1 cup vegetable stock\n- ½ cup sour cream\n\n1. Bring the stock to a boil over high heat. Add the sour cream.\n',
      marks: ['sour cream'],
    },
    {
      title: 'off the heat',
      text: '# Weir Curry\n\nServes 4\n\n- 2 cups chickpeas, cooked\n- 1 cup tomato puree\n- 1 cup plain yogurt\n\n1. Simmer the chickpeas in the tomato puree over medium heat until thick, 10 minutes.\n2. Take off the heat, and stir in the yogurt.\n',
      marks: [],
    },
    {
      title: 'a spoonful at a time',
      text: '# Weir Curry\n\nServes 4\n\n- 2 cups chickpeas, cooked\n- 1 cup tomato puree\n- 1 cup plain yogurt\n\n1. Simmer the chickpeas in the tomato puree over medium heat until thick, 10 minutes.\n2. Stir in the yogurt, a spoonful at a time.\n',
      marks: [],
    },
    {
      title: 'yogurt in a bowl beside the pot',
      text: '# Bank Potatoes\n\nServes 4\n\n- 4 potatoes, cubed\n- 4 cups water\n- 1 cup plain yogurt\n- 1 teaspoon salt\n\n1. Boil the potatoes in the water until tender, 12 minutes, and drain.\n2. In a bowl, stir the yogurt with the salt. Spoon over the potatoes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const mention of curdlingMentions(dish)) {
      yield {
        span: dish.recipe.steps[mention.step]!.passage.span(mention.start, mention.end),
        subject: mention.food!.name,
        message: `The ${mention.text} goes at once into something that boils, and may curdle.`,
        advice: 'Have it stirred in off the heat, or a spoonful at a time.',
      };
    }
  },
};
