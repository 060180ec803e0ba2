/** Marks raw poultry or meat that is rinsed or washed. */
import type { RecipeRule } from '../rule.js';

export const rawPoultryRinsed: RecipeRule = {
  scope: 'recipe',
  name: 'raw-poultry-rinsed',
  topic: 'safety',
  weight: 'query',
  summary: 'Raw poultry or meat is rinsed or washed.',
  why: 'Water makes nothing safe, and throws what is on the meat over sink, board and salad. Local codes and licensed practice come first.',
  sources: [
    'Partnership for Food Safety Education, Safe Recipe Style Guide, 2019',
    'USDA FSIS, Washing Food: Does it Promote Food Safety? (from memory)',
  ],
  beyond:
    'Fish, shellfish and organs, rinsed by custom; meat that comes out of brine or salt; washing in vinegar or lemon that is not called washing.',
  examples: [
    {
      title: 'a chicken under the tap',
      text: '# Roast Chicken\n\nServes 4\n\n- 1 chicken (4 pounds)\n- 1 teaspoon salt\n\n1. Rinse the chicken, pat it dry, and sprinkle with the salt.\n2. Roast at 400°F until a thermometer in the thigh reads 165°F, 1 hour.\n',
      marks: ['Rinse'],
    },
    {
      title: 'thighs that the list has rinsed',
      text: '# Pan Chicken\n\nServes 4\n\n- 4 chicken thighs, rinsed and patted dry\n- 2 tablespoons olive oil\n\n1. Fry the chicken in the oil until a thermometer reads 165°F, 20 minutes.\n',
      marks: ['rinsed and patted dry'],
    },
    {
      title: 'rice that is rinsed, and a warning',
      text: '# Chicken and Rice\n\nServes 4\n\n- 4 chicken thighs\n- 1 cup rice\n- 2 cups chicken stock\n\n1. Rinse the rice. Do not rinse the chicken.\n2. Simmer the chicken and the rice in the stock until a thermometer in the chicken reads 165°F, 25 minutes.\n',
      marks: [],
    },
    {
      title: 'a brine that is rinsed off, and a board',
      text: '# Brined Turkey\n\nServes 8\n\n- 1 turkey (12 pounds)\n- 1 cup salt\n- 1 gallon water\n\n1. Lay the turkey in a brine of the salt and water overnight, in the refrigerator.\n2. Rinse the brine off the turkey. Wash the board that held the turkey.\n3. Roast at 325°F until a thermometer in the thigh reads 165°F, 3 hours.\n',
      marks: [],
    },
  ],
  *look(dish) {
    // One a recipe: who reads it will look at the other places.
    const [rinsing] = dish.handling.rinsings;
    if (rinsing === undefined) return;
    const { passage, start, end, food } = rinsing;
    const name = food.listing.line.foods[0]!;
    yield {
      span: passage.span(start, end),
      subject: name.name,
      weight: food.safety === 'poultry' ? 'query' : 'note',
      message: `Rinsing raw ${name.text} spreads what clings to the meat and takes nothing away.`,
      advice: 'Take the rinsing out; patting it dry with paper towels is enough.',
    };
  },
};
