/** Marks meat, poultry or fish that is thawed on the counter, in the sink or in warm water. */
import { unsafeThaws } from '../../src/kitchen/thawing.js';
import type { RecipeRule } from '../rule.js';

export const thawUnsafe: RecipeRule = {
  scope: 'recipe',
  name: 'thaw-unsafe',
  topic: 'safety',
  weight: 'fault',
  summary: 'Meat, poultry or fish is thawed on the counter, in the sink or in warm water.',
  why: 'The outside is warm enough for bacteria to multiply long before the middle has thawed.',
  sources: ['USDA FSIS, The Big Thaw: safe defrosting methods', 'USDA FSIS, Danger Zone (40°F to 140°F)'],
  beyond:
    'Thawing of which the place is not said; dough, fruit, vegetables and dishes that are cooked already; how long a thaw in the refrigerator takes.',
  examples: [
    {
      title: 'chicken thawed on the counter',
      text: '# Kiln Chicken\n\nServes 4\n\n- 4 chicken legs, frozen\n- 1 teaspoon salt\n\n1. Leave the chicken on the counter overnight to thaw.\n2. Salt it, and roast at 400°F until a thermometer reads 165°F, about 50 minutes.\n',
      marks: ['on the counter overnight to thaw'],
    },
    {
      title: 'shrimp in warm water',
      text: '# Weir Shrimp\n\nServes 4\n\n- 1 pound frozen shrimp\n- 2 tablespoons butter\n\n1. Defrost the shrimp in a bowl of hot water.\n2. Fry in the butter over medium heat until opaque, 3 minutes.\n',
      marks: ['Defrost the shrimp in a bowl of hot water'],
    },
    {
      title: 'a roast left out of the refrigerator until it has thawed',
      text: '# Mill Roast\n\nServes 4\n\n- 1 frozen pork loin (3 pounds)\n- 2 teaspoons salt\n\n1. Let the pork sit out until completely thawed.\n2. Rub it with the salt, and roast at 375°F until a thermometer reads 145°F. Rest it 3 minutes.\n',
      marks: ['out until completely thawed'],
    },
    {
      title: 'thawing in the refrigerator',
      text: '# Kiln Chicken\n\nServes 4\n\n- 4 chicken legs, frozen\n- 1 teaspoon salt\n\n1. Thaw the chicken in the refrigerator overnight, never on the counter.\n2. Salt it, and roast at 400°F until a thermometer reads 165°F, about 50 minutes.\n',
      marks: [],
    },
    {
      title: 'pastry and berries on the counter',
      text: '# Berry Parcels\n\nServes 4\n\n- 1 sheet (9 ounces) frozen puff pastry\n- 1 cup frozen raspberries\n\n1. Thaw the puff pastry at room temperature for 40 minutes, and the raspberries on the counter.\n2. Fold the pastry over the raspberries, and bake at 400°F until golden, 20 minutes.\n',
      marks: [],
    },
    {
      title: 'cold water that is changed',
      text: '# Weir Shrimp\n\nServes 4\n\n- 1 pound frozen shrimp\n- 2 tablespoons butter\n\n1. Set the shrimp in the sink in a bowl of cold water to thaw, and change the water every 30 minutes.\n2. Fry in the butter over medium heat until opaque, 3 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { passage, start, end, food } of unsafeThaws(dish)) {
      yield {
        span: passage.span(start, end),
        subject: food,
        message: `The recipe thaws ${food} where it gets too warm: "${passage.text.slice(start, end)}".`,
        advice:
          'Have it thaw in the refrigerator, in cold water that is changed every 30 minutes, or in a microwave and then cooked at once.',
      };
    }
  },
};
