/** Marks a reference to a step that the method does not have. */
import { hasNumbers, lostSteps } from '../../src/kitchen/step-references.js';
import type { RecipeRule } from '../rule.js';

export const stepReferenceBroken: RecipeRule = {
  scope: 'recipe',
  name: 'step-reference-broken',
  topic: 'structure',
  weight: 'fault',
  summary: 'A reference to a step by its number leads to a step that the method does not have.',
  why: 'Steps are put together or taken out, and the cook is sent to one that is gone.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'a step that was taken out',
      text: '# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon jam\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam, and toast again as in step 4.\n',
      marks: ['step 4'],
    },
    {
      title: 'a note that counts one step too many',
      text: '# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon jam\n\n## Method\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam.\n\n## Notes\n\nThe toast can be made through steps 1 and 3 the day before.\n',
      marks: ['steps 1 and 3'],
    },
    {
      title: 'steps that are there, one by one and from here to there',
      text: '# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon jam\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam.\n3. Repeat steps 1 to 2 for a second slice, or only step 2.\n',
      marks: [],
    },
    {
      title: 'a step of another recipe, and a two-step method',
      text: '# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon jam\n\n1. Make toast in the two-step way: toast the bread until golden, 2 minutes.\n2. Spread with the jam, thinned as in step 5 of the plum jam.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const { steps } = dish.recipe;
    const count = steps.length === 1 ? '1 step' : `${steps.length} steps`;
    for (const { span, text, number } of lostSteps(dish)) {
      yield {
        span,
        subject: text,
        // Without printed numbers a reader may count otherwise than we do.
        weight: hasNumbers(dish) ? 'fault' : 'query',
        message: `"${text}" is referred to, and the method, of ${count}, has no step ${number}.`,
        advice: 'Refer to the step that is meant.',
      };
    }
  },
};
