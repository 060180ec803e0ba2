/** Marks a plate, board or tool that held raw food and then holds food that is ready. */
import type { RecipeRule } from '../rule.js';

export const rawSurfaceReused: RecipeRule = {
  scope: 'recipe',
  name: 'raw-surface-reused',
  topic: 'safety',
  weight: 'query',
  summary: 'A plate, board or tool that held raw meat, poultry or fish then holds food that is ready to eat.',
  why: 'What dripped from the raw food gets on the cooked, which is heated no more. Local codes and licensed practice come first.',
  sources: ['Partnership for Food Safety Education, Safe Recipe Style Guide, 2019'],
  beyond:
    'Surfaces that the method does not name; pans and pots, which are heated again; vegetables that are cut on the same board and cooked.',
  examples: [
    {
      title: 'cooked chicken that goes back on its plate',
      text: '# Grilled Chicken\n\nServes 4\n\n- 4 chicken thighs\n- 1 teaspoon salt\n\n1. Lay the chicken on a plate and sprinkle with the salt.\n2. Grill the chicken until a thermometer reads 165°F, 20 minutes. Return the chicken to the plate, and serve.\n',
      marks: ['plate'],
    },
    {
      title: 'lettuce on the board of the raw fish',
      text: '# Fish Bowls\n\nServes 2\n\n- 1 pound cod fillets\n- 1 head lettuce\n- 1 tablespoon oil\n\n1. Cut the cod into cubes on a board.\n2. On the same board, shred the lettuce into strips.\n3. Fry the cod in the oil until opaque, 5 minutes, and serve it on the lettuce.\n',
      marks: ['board'],
    },
    {
      title: 'a clean plate',
      text: '# Grilled Chicken\n\nServes 4\n\n- 4 chicken thighs\n- 1 teaspoon salt\n\n1. Lay the chicken on a plate and sprinkle with the salt.\n2. Grill the chicken until a thermometer reads 165°F, 20 minutes. Move the chicken to a clean plate, and serve.\n',
      marks: [],
    },
    {
      title: 'meat that is seared, waits on a plate, and goes back into the pot',
      text: '# Braised Chicken\n\nServes 4\n\n- 4 chicken thighs\n- 1 tablespoon oil\n- 1 cup chicken stock\n\n1. Brown the chicken in the oil until golden, 10 minutes, and move it to a plate.\n2. Return the chicken from the plate to the pot with the stock, and simmer until a thermometer reads 165°F, 30 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    // One a recipe: who reads it will look at the other places.
    const [surface] = dish.handling.surfaces;
    if (surface === undefined) return;
    const { passage } = dish.recipe.steps[surface.step]!;
    const food = surface.food.listing.line.foods[0]!;
    const word = passage.text.slice(surface.start, surface.end);
    yield {
      span: passage.span(surface.start, surface.end),
      subject: food.name,
      message: `The ${word} held raw ${food.text}, and now holds food that is ready to eat.`,
      advice: `Write "a clean ${word}", or have it washed in between.`,
    };
  },
};
