/** Marks food that spoils and is kept between refrigerator cold and serving heat for more than two hours, and birds that are stuffed ahead. */
import { warmHolds } from '../../src/kitchen/holding.js';
import type { RecipeRule } from '../rule.js';

export const dangerZoneHold: RecipeRule = {
  scope: 'recipe',
  name: 'danger-zone-hold',
  topic: 'safety',
  weight: 'fault',
  summary:
    'Food that spoils is left between 40°F and 140°F for more than 2 hours, or a bird is stuffed ahead.',
  why: 'Between refrigerator cold and serving heat bacteria double in minutes, and what some leave behind no cooking destroys.',
  sources: [
    'USDA FSIS, Danger Zone (40°F to 140°F): no more than 2 hours, 1 hour above 90°F',
    'USDA FSIS, Stuffing and Food Safety: a bird is stuffed right before it is cooked',
  ],
  beyond:
    'Times of which the place is not said; the limit of 1 hour above 90°F; doughs, ferments, cured and dried food, which are kept warm on purpose; how fast a large pot cools; eggs and butter that are to lose their chill.',
  examples: [
    {
      title: 'cooked rice left overnight',
      text: '# Barge Fried Rice\n\nServes 4\n\n- 2 cups rice\n- 3 cups water\n- 2 tablespoons oil\n\n1. Simmer the rice in the water until tender, 18 minutes.\n2. Leave the rice on the counter overnight.\n3. Fry it in the oil over high heat until crisp.\n',
      marks: ['on the counter overnight'],
    },
    {
      title: 'chicken marinated for hours at room temperature',
      text: '# Tow Chicken\n\nServes 4\n\n- 8 chicken thighs\n- 1 cup plain yogurt\n\n1. Stir the chicken into the yogurt, and let it stand at room temperature for 4 hours.\n2. Grill until a thermometer reads 165°F, about 25 minutes.\n',
      marks: ['at room temperature for 4 hours'],
    },
    {
      title: 'a turkey stuffed the night before',
      text: '# Lock Turkey\n\nServes 4\n\n- 1 turkey (12 pounds)\n- 6 cups bread stuffing\n\n1. Stuff the turkey with the stuffing the night before, wash your hands, and refrigerate it.\n2. Roast at 325°F until a thermometer reads 165°F in the thigh and in the stuffing.\n',
      marks: ['Stuff the turkey with the stuffing the night before'],
    },
    {
      title: 'a pot of stew that waits on the stove',
      text: '# Reed Stew\n\nServes 4\n\n- 2 pounds beef chuck\n- 4 cups water\n\n1. Simmer the beef in the water until very tender, 2 hours.\n2. Let the stew sit out for 5 hours, and reheat it.\n',
      marks: ['out for 5 hours'],
    },
    {
      title: 'a dough that rises overnight',
      text: '# Night Loaf\n\nMakes 1 loaf\n\n- 3 cups flour\n- 1 teaspoon instant yeast\n- 1½ cups water\n\n1. Stir the flour, yeast and water into a dough.\n2. Leave it on the counter overnight.\n3. Bake at 450°F until deep brown, 40 minutes.\n',
      marks: [],
    },
    {
      title: 'meat that only loses its chill, and stew that cools and is then refrigerated',
      text: '# Reed Stew\n\nServes 4\n\n- 2 pounds beef chuck\n- 4 cups water\n\n1. Let the beef stand at room temperature for 30 minutes.\n2. Simmer it in the water until very tender, 2 hours.\n3. Cool to room temperature, then refrigerate overnight.\n',
      marks: [],
    },
    {
      title: 'beans that soak',
      text: '# Bank Beans\n\nServes 4\n\n- 2 cups dried black beans\n- 6 cups water\n\n1. Soak the beans at room temperature overnight, and drain them.\n2. Simmer them in the water until tender, 1½ hours.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { passage, start, end, food, named } of warmHolds(dish)) {
      const words = passage.text.slice(start, end);
      yield {
        span: passage.span(start, end),
        subject: food,
        weight: named ? 'fault' : 'query',
        message: named
          ? `The recipe keeps ${food} too warm for too long: "${words}".`
          : `"${words}": if it is the ${food}, it stays too warm for too long.`,
        advice:
          'Have it refrigerated within 2 hours, or kept at 140°F (60°C) or hotter; stuff a bird right before it goes into the oven.',
      };
    }
  },
};
