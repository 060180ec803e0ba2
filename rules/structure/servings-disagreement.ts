/** Marks a number of servings or pieces that is not the yield's. */
import { otherCounts } from '../../src/kitchen/servings.js';
import type { RecipeRule } from '../rule.js';

export const servingsDisagreement: RecipeRule = {
  scope: 'recipe',
  name: 'servings-disagreement',
  topic: 'structure',
  weight: 'fault',
  summary: 'The recipe serves or makes one number by its yield and another elsewhere.',
  why: 'The cook lays the table for four and stands there with six plates.',
  sources: ['Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)', 'common practice'],
  examples: [
    {
      title: 'serves four, divided among six plates',
      text: '# Buttered Peas\n\nServes 4\n\n- 2 cups peas\n- 1 tablespoon butter\n\n1. Toss the peas with the butter, and divide among 6 plates.\n',
      marks: ['6 plates'],
    },
    {
      title: 'twelve biscuits, shaped as eight',
      text: '# Oat Biscuits\n\nMakes 12 biscuits\n\n- 2 cups oats\n- 1/2 cup butter\n\n1. Mix the oats and the butter, shape into 8 biscuits, and bake at 350°F until golden, 15 minutes.\n',
      marks: ['8 biscuits'],
    },
    {
      title: 'one yield above the list and another in the front matter',
      text: '---\nservings: 6\n---\n\n# Buttered Peas\n\nServes 4\n\n- 2 cups peas\n- 1 tablespoon butter\n\n1. Toss the peas with the butter.\n',
      marks: ['6'],
    },
    {
      title: 'as many bowls as servings, within the range',
      text: '# Pea Soup\n\nServes 4 to 6\n\n- 2 cups peas\n- 4 cups vegetable stock\n\n1. Simmer the peas in the stock until soft, 5 minutes, and ladle into 6 bowls.\n',
      marks: [],
    },
    {
      title: 'slices of what serves four, and two bowls on the way',
      text: '# Pea Toast\n\nServes 4\n\n- 2 cups peas\n- 1 tablespoon butter\n- 4 slices bread\n\n1. Divide the peas between 2 bowls, and crush one half with the butter.\n2. Cut the bread into 8 triangles, and top with the peas from both bowls.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { span, text, yield: stated } of otherCounts(dish)) {
      const said = stated.text.trim().replace(/\s+/g, ' ');
      yield {
        span,
        subject: text,
        message: `"${text}" does not go with the yield, "${said}".`,
        advice: 'Make the two numbers agree.',
        related: [{ file: dish.page.path, span: stated.span(), message: 'the yield' }],
      };
    }
  },
};
