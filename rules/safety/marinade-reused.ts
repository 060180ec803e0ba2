/** Marks a marinade that held raw food and is used again without having boiled. */
import type { RecipeRule } from '../rule.js';

export const marinadeReused: RecipeRule = {
  scope: 'recipe',
  name: 'marinade-reused',
  topic: 'safety',
  weight: 'fault',
  summary: 'A marinade that held raw meat, poultry or fish goes on food again without having boiled.',
  why: 'It holds what came off the raw food. Local codes and licensed practice come first.',
  sources: [
    'Partnership for Food Safety Education, Safe Recipe Style Guide, 2019',
    'USDA FSIS, Barbecue and Food Safety: a used marinade is boiled before it is used again (from memory)',
  ],
  beyond:
    'A sauce that is not called a marinade; a brine; whether a boil was long enough; a marinade that is used on before the food is cooked.',
  examples: [
    {
      title: 'a marinade that is brushed on at the grill',
      text: '# Grilled Chicken\n\nServes 4\n\n- 4 chicken thighs\n- ½ cup yogurt\n- 1 lemon, juiced\n\n1. Mix the yogurt and lemon juice for the marinade. Lay the chicken in the marinade, and refrigerate for 2 hours.\n2. Grill the chicken until a thermometer reads 165°F, 20 minutes, and brush it with the marinade as it cooks.\n',
      marks: ['marinade'],
    },
    {
      title: 'a marinade that is served',
      text: '# Grilled Chicken\n\nServes 4\n\n- 4 chicken thighs\n- ½ cup yogurt\n- 1 lemon, juiced\n\n1. Mix the yogurt and lemon juice for the marinade. Lay the chicken in the marinade, and refrigerate for 2 hours.\n2. Grill the chicken until a thermometer reads 165°F, 20 minutes. Drizzle the marinade over it, and serve.\n',
      marks: ['marinade'],
    },
    {
      title: 'a marinade that is kept apart from the start',
      text: '# Grilled Chicken\n\nServes 4\n\n- 4 chicken thighs\n- ½ cup yogurt\n- 1 lemon, juiced\n\n1. Mix the yogurt and lemon juice for the marinade, and set half of the marinade aside. Lay the chicken in the rest, and refrigerate for 2 hours.\n2. Grill the chicken until a thermometer reads 165°F, 20 minutes. Drizzle the clean marinade over it, and serve.\n',
      marks: [],
    },
    {
      title: 'a marinade that is boiled, and one that is thrown away',
      text: '# Grilled Chicken\n\nServes 4\n\n- 4 chicken thighs\n- ½ cup orange juice\n- 1 tablespoon honey\n\n1. Mix the orange juice and honey for the marinade. Lay the chicken in the marinade, and refrigerate for 2 hours.\n2. Lift the chicken out of the marinade. Bring the marinade to a boil, and boil it for 1 minute until it thickens.\n3. Grill the chicken until a thermometer reads 165°F, 20 minutes, and brush it with the marinade.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { step, start, end, food, served } of dish.handling.marinades) {
      const { passage } = dish.recipe.steps[step]!;
      const name = food.listing.line.foods[0]!;
      yield {
        span: passage.span(start, end),
        subject: name.name,
        weight: served ? 'fault' : 'query',
        message: `The marinade held raw ${name.text}, and goes on food again without having boiled.`,
        advice: 'Set some aside before the raw food goes in, or bring it to a boil first.',
        related: [{ file: dish.page.path, span: food.listing.passage.span(), message: 'the listing' }],
      };
    }
  },
};
