/** Marks a bake or roast for which no oven has been heated. */
import { coldOvenOf } from '../../src/kitchen/oven.js';
import type { RecipeRule } from '../rule.js';

export const ovenUnheated: RecipeRule = {
  scope: 'recipe',
  name: 'oven-unheated',
  topic: 'heat',
  weight: 'query',
  summary: 'Something is baked or roasted and no step heats the oven, or one does so too late.',
  why: 'An oven takes a quarter of an hour to heat: the batter waits and falls, or the cook guesses how hot.',
  sources: ['House styles of cookbook publishers', 'common practice'],
  examples: [
    {
      title: 'a bake without any heat',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread.\n2. Bake until crisp, 10 minutes.\n',
      marks: ['Bake'],
    },
    {
      title: 'an oven that is heated after the bake',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Bake the bread until crisp, 10 minutes.\n2. Heat the oven to 400°F, spread the butter on the bread, and bake until it bubbles, 2 minutes.\n',
      marks: ['Bake'],
    },
    {
      title: 'a dish put into an oven that nobody has lit',
      text: '# Pears in the Dish\n\nServes 4\n\n- 4 pears\n- 1 tablespoon butter\n\n1. Lay the pears in a dish, and dot them with the butter.\n2. Put the dish in the oven until the pears are soft, 40 minutes.\n',
      marks: ['in the oven'],
    },
    {
      title: 'a heat given in the bake itself, and a roast on the stove',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon sesame seeds\n\n1. Roast the sesame seeds in a dry pan until brown, 2 minutes.\n2. Sprinkle the seeds over the bread, and bake in a 350°F oven until crisp, 10 minutes.\n',
      marks: [],
    },
    {
      title: 'a cold oven by the author’s word',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and set it in a cold oven.\n2. Bake until crisp, 20 minutes.\n',
      marks: [],
    },
    {
      title: 'an air fryer',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and lay it in the basket of an air fryer.\n2. Bake until crisp, 5 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const cold = coldOvenOf(dish);
    if (cold === null) return;
    const { need, heatedAt } = cold;
    const { passage } = dish.recipe.steps[need.step]!;
    const late = heatedAt === null ? null : dish.recipe.steps[heatedAt]!.passage;
    const words = passage.text.slice(need.start, need.end);
    yield {
      span: passage.span(need.start, need.end),
      subject: words,
      weight: late === null ? 'query' : 'fault',
      message:
        late === null
          ? `Step ${need.step + 1} needs a hot oven, and nothing says that it is heated or how hot.`
          : `Step ${need.step + 1} needs a hot oven, and it is heated only at step ${heatedAt! + 1}.`,
      advice:
        late === null
          ? 'Add a step that heats the oven, with its temperature.'
          : 'Heat the oven in an earlier step.',
      related:
        late === null ? [] : [{ file: dish.page.path, span: late.span(), message: 'the step that heats it' }],
    };
  },
};
