/** Marks a wait on which the dish hangs that has neither a time nor a sign. */
import { untimedWaits } from '../../src/kitchen/waits.js';
import type { RecipeRule } from '../rule.js';

export const durationAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'duration-absent',
  topic: 'doneness',
  weight: 'query',
  summary: 'A rise, a marinade, a brine or a cure is ordered with neither a time nor a sign of its end.',
  why: 'A dough that waits too short, or meat too long, is spoiled before the stove is lit; heat without a time or cue is another rule’s.',
  sources: ['House styles of cookbook publishers', 'Practice of food magazines'],
  examples: [
    {
      title: 'a dough that rises, nobody knows how long',
      text: '# Night Loaf\n\nMakes 1 loaf\n\n- 3 cups flour\n- 1 teaspoon instant yeast\n- 1½ cups water\n\n1. Stir the flour, yeast and water into a dough. Let rise.\n2. Bake at 450°F until deep brown, 40 minutes.\n',
      marks: ['rise'],
    },
    {
      title: 'a marinade without a time',
      text: '# Tow Tofu\n\nServes 4\n\n- 1 pound tofu, sliced\n- ¼ cup soy sauce\n\n1. Marinate the tofu in the soy sauce.\n2. Grill until charred at the edges.\n',
      marks: ['Marinate'],
    },
    {
      title: 'a sign, a time, and a night',
      text: '# Night Loaf\n\nMakes 1 loaf\n\n- 3 cups flour\n- 1 teaspoon instant yeast\n- 1½ cups water\n\n1. Stir the flour, yeast and water into a dough. Let rise until doubled.\n2. Shape it, and let rise for 1 hour.\n3. Bake at 450°F until deep brown, 40 minutes.\n',
      marks: [],
    },
    {
      title: 'a marinade whose time the next sentence tells',
      text: '# Tow Tofu\n\nServes 4\n\n- 1 pound tofu, sliced\n- ¼ cup soy sauce\n\n1. Marinate the tofu in the soy sauce. Half an hour is enough.\n2. Grill until charred at the edges.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { step, verb, start, end } of untimedWaits(dish)) {
      yield {
        span: dish.recipe.steps[step]!.passage.span(start, end),
        subject: verb,
        message: `The step says to ${verb}, and neither how long nor until when.`,
        advice: 'Add a time or a sign: "for 1 hour", "until doubled".',
      };
    }
  },
};
