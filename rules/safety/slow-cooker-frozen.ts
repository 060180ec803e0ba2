/** Marks frozen meat or poultry that goes into a slow cooker. */
import { frozenInSlowCooker } from '../../src/kitchen/slow-cooker.js';
import type { RecipeRule } from '../rule.js';

export const slowCookerFrozen: RecipeRule = {
  scope: 'recipe',
  name: 'slow-cooker-frozen',
  topic: 'safety',
  weight: 'fault',
  summary: 'Frozen meat or poultry goes into a slow cooker.',
  why: 'A slow cooker takes hours to bring frozen meat through the heat at which bacteria grow.',
  sources: [
    'USDA FSIS, Slow Cookers and Food Safety: always thaw meat or poultry before it goes into a slow cooker',
  ],
  beyond:
    'Meals that are sold frozen for the slow cooker; frozen vegetables and fish; pressure cookers; how full the pot is.',
  examples: [
    {
      title: 'frozen chicken on the list',
      text: '# Long Watch Chicken\n\nServes 4\n\n- 2 pounds frozen chicken thighs\n- 2 cups salsa\n\n1. Put the chicken and the salsa into a slow cooker.\n2. Cook on low until the chicken falls apart and a thermometer reads 165°F, 6 hours.\n',
      marks: ['chicken'],
    },
    {
      title: 'a roast put in while it is frozen',
      text: '# Long Watch Beef\n\nServes 4\n\n- 1 beef chuck roast (3 pounds)\n- 2 cups water\n\n1. Place the frozen beef in the slow cooker with the water.\n2. Cook on low until it falls apart, 9 hours.\n',
      marks: ['beef'],
    },
    {
      title: 'thawed chicken',
      text: '# Long Watch Chicken\n\nServes 4\n\n- 2 pounds frozen chicken thighs, thawed\n- 2 cups salsa\n\n1. Put the chicken and the salsa into a slow cooker.\n2. Cook on low until the chicken falls apart and a thermometer reads 165°F, 6 hours.\n',
      marks: [],
    },
    {
      title: 'frozen peas',
      text: '# Long Watch Beef\n\nServes 4\n\n- 1 beef chuck roast (3 pounds)\n- 2 cups water\n- 1 cup frozen peas\n\n1. Place the beef in the slow cooker with the water.\n2. Cook on low until it falls apart, 9 hours.\n3. Stir in the peas, and cook until bright green.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const frozen = frozenInSlowCooker(dish);
    if (frozen === null) return;
    yield {
      span: frozen.passage.span(frozen.start, frozen.end),
      subject: frozen.food,
      message: `The ${frozen.food} goes into the slow cooker frozen.`,
      advice: 'Have it thawed in the refrigerator first.',
    };
  },
};
