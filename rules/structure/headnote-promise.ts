/** Marks a title or headnote that promises what the recipe does not have. */
import { foodsMissing } from '../../src/kitchen/promised-foods.js';
import { waysBroken } from '../../src/kitchen/promised-ways.js';
import type { RecipeRule } from '../rule.js';

export const headnotePromise: RecipeRule = {
  scope: 'recipe',
  name: 'headnote-promise',
  topic: 'structure',
  weight: 'query',
  summary:
    'The title or headnote names a food, a count of ingredients or a pot that the recipe does not bear out.',
  why: 'A reader who chose the walnut cake for its walnuts, or the one-pot supper for its one pot, is let down.',
  sources: ['Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)', 'common practice'],
  examples: [
    {
      title: 'a walnut cake without walnuts',
      text: '# Walnut Cake\n\nServes 8\n\n- 2 cups flour\n- 1 cup sugar\n- 3 eggs\n\n1. Beat the eggs with the sugar, fold in the flour, and bake at 350°F until golden, 30 minutes.\n',
      marks: ['Walnut'],
    },
    {
      title: 'a headnote whose dates are not on the list',
      text: '# Towpath Bars\n\nThese bars are packed with walnuts and dates.\n\nMakes 8 bars\n\n- 2 cups rolled oats\n- 1 cup walnuts\n- 1/2 cup honey\n\n1. Mix the oats, walnuts and honey, and bake at 350°F until golden, 20 minutes.\n',
      marks: ['dates'],
    },
    {
      title: 'five ingredients that are seven, one pot that is two, and baking that there was to be none of',
      text: '# One-Pot Five-Ingredient Beans\n\nA no-bake supper.\n\nServes 4\n\n- 2 cups cooked beans\n- 1 onion, sliced\n- 1 cup tomato puree\n- 1 carrot, diced\n- 2 tablespoons butter\n- 1 tablespoon honey\n- 1 tablespoon mustard\n\n1. Fry the onion and the carrot in the butter in a skillet until soft, 5 minutes.\n2. In a saucepan, stir in the beans, tomato puree, honey and mustard, and bake at 350°F until thick, 30 minutes.\n',
      marks: ['One-Pot', 'Five-Ingredient', 'no-bake'],
    },
    {
      title: 'a kind of the food, a part of it, and names that only sound like food',
      text: '# Plum Pudding with Nuts and Lemon\n\nServes 8\n\n- 2 cups flour\n- 1 cup raisins\n- 1 cup walnuts\n- 1 tablespoon lemon zest\n- 3 eggs\n\n1. Beat the eggs, and stir in the flour, raisins, walnuts and lemon zest. Steam until firm, 2 hours.\n',
      marks: [],
    },
    {
      title: 'what the dish does without, what goes on a steak, and what others put in',
      text: '# Egg-Free Steak Sauce\n\nOthers make it full of garlic.\n\nMakes 1 cup\n\n- 1 cup tomato puree\n- 2 tablespoons vinegar\n- 1 tablespoon molasses\n\n1. Simmer the tomato puree with the vinegar and molasses until thick, 20 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { passage, start, end, food, where } of foodsMissing(dish)) {
      const text = passage.text.slice(start, end);
      yield {
        span: passage.span(start, end),
        subject: food.name,
        message: `The ${where} promises "${text}", and nothing on the list bears it out.`,
        advice: 'List it, or take it out of the promise.',
      };
    }
    for (const { passage, start, end, but, against } of waysBroken(dish)) {
      const text = passage.text.slice(start, end);
      yield {
        span: passage.span(start, end),
        subject: text,
        message: `"${text}" is promised, and the ${but}.`,
        advice: 'Keep the promise, or take it back.',
        related:
          against === null ? [] : [{ file: dish.page.path, span: against, message: 'what the recipe says' }],
      };
    }
  },
};
