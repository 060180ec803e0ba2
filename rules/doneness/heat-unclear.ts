/** Marks a stove whose heat the method leaves open, or sets two ways at once. */
import { heatMuddles, unsetFrying } from '../../src/kitchen/stove.js';
import type { RecipeRule } from '../rule.js';

export const heatUnclear: RecipeRule = {
  scope: 'recipe',
  name: 'heat-unclear',
  topic: 'doneness',
  weight: 'note',
  summary:
    'A stove is set to two heats at once ("medium to high"), or to none where the recipe sets it elsewhere.',
  why: 'A cook turns a knob to one place; "medium-high" is a place, "medium to high" is two.',
  sources: ['House styles of cookbook publishers'],
  examples: [
    {
      title: 'two heats at once',
      text: '# Onions\n\nServes 2\n\n- 2 onions\n- 1 tablespoon oil\n\n1. Fry the onions in the oil over medium to high heat until golden brown, 8 to 10 minutes.\n',
      marks: ['medium to high'],
    },
    {
      title: 'a first pan without a heat, in a recipe that sets one later',
      text: '# Bank Stew\n\nServes 4\n\n- 2 onions, sliced\n- 1 tablespoon oil\n- 4 potatoes, cubed\n- 3 cups water\n\n1. Fry the onions in the oil until golden.\n2. Add the potatoes and water, and simmer over low heat until tender, 25 minutes.\n',
      marks: ['Fry'],
    },
    {
      title: 'one heat, and a change of heat',
      text: '# Onions\n\nServes 2\n\n- 2 onions\n- 1 tablespoon oil\n\n1. Fry the onions in the oil over medium-high heat until golden. Turn the heat from medium to low, and cook until jammy.\n',
      marks: [],
    },
    {
      title: 'a recipe that leaves the stove to the cook',
      text: '# Onions\n\nServes 2\n\n- 2 onions\n- 1 tablespoon oil\n\n1. Fry the onions in the oil until golden brown, 8 to 10 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { passage, start, end } of heatMuddles(dish)) {
      const words = passage.text.slice(start, end);
      yield {
        span: passage.span(start, end),
        subject: words,
        message: `"${words}" sets two heats at once.`,
        advice: 'Name one setting, such as medium-high, or say when it changes.',
      };
    }
    const frying = unsetFrying(dish);
    if (frying === null) return;
    yield {
      span: dish.recipe.steps[frying.step]!.passage.span(frying.start, frying.end),
      subject: frying.technique.name,
      message: `The step says to ${frying.technique.name}, and at which heat only a later step does.`,
      advice: 'Add the heat here too: "over medium heat".',
    };
  },
};
