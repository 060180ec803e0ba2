/** Marks clams, mussels and oysters cooked in their shells, where those that stay shut are not thrown out. */
import { unsortedShells } from '../../src/kitchen/shells.js';
import type { RecipeRule } from '../rule.js';

export const shellfishUnopened: RecipeRule = {
  scope: 'recipe',
  name: 'shellfish-unopened',
  topic: 'safety',
  weight: 'query',
  summary: 'Clams, mussels or oysters cook in their shells, and those that stay shut are not thrown out.',
  why: 'A shell that opens is the sign that the mollusk was alive and is cooked.',
  sources: [
    'USDA FSIS and foodsafety.gov, Safe Minimum Internal Temperature chart: clams, oysters, mussels until their shells open',
    'FDA, Selecting and Serving Fresh and Frozen Seafood Safely',
  ],
  beyond:
    'Mollusks eaten raw, and those sold shucked; dead ones to be thrown out before cooking; scallops, snails and crabs.',
  examples: [
    {
      title: 'mussels steamed in cider',
      text: '# Cider Mussels\n\nServes 4\n\n- 2 pounds mussels, scrubbed\n- 1 cup hard cider\n\n1. Steam the mussels in the cider over high heat until they open, 6 minutes.\n2. Serve at once.\n',
      marks: ['mussels'],
    },
    {
      title: 'clams with pasta',
      text: '# Sluice Clams\n\nServes 4\n\n- 3 dozen littleneck clams\n- 1 cup white wine\n\n1. Simmer the wine over high heat until hot. Add the clams, cover, and cook until open, 8 minutes.\n',
      marks: ['clams'],
    },
    {
      title: 'mussels that stay shut are thrown out',
      text: '# Cider Mussels\n\nServes 4\n\n- 2 pounds mussels, scrubbed\n- 1 cup hard cider\n\n1. Steam the mussels in the cider over high heat until they open, 6 minutes.\n2. Throw out any that do not open.\n',
      marks: [],
    },
    {
      title: 'clams from a can',
      text: '# Sluice Chowder\n\nServes 4\n\n- 2 cans (6½ ounces each) clams\n- 2 cups milk\n- 2 potatoes, cubed\n\n1. Simmer the potatoes in the milk over low heat until tender, 15 minutes. Stir in the clams.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const listing = unsortedShells(dish);
    if (listing === null) return;
    const uses = dish.uses[listing.index]!.filter(({ group }) => !group);
    const use = uses.find(({ step }) => dish.heatings.some((heating) => heating.step === step)) ?? uses[0];
    const food = listing.line.foods[0]!;
    yield {
      span:
        use === undefined
          ? listing.passage.span(food.start, food.end)
          : dish.recipe.steps[use.step]!.passage.span(use.start, use.end),
      subject: food.name,
      message: `The ${food.text} cook in their shells, and the method does not say what becomes of those that stay shut.`,
      advice: 'Add: "Throw out any that have not opened."',
    };
  },
};
