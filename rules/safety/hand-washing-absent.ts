/** Marks raw food that is worked with the hands where the recipe never has them washed. */
import type { Dish, RawHandling } from '../../src/kitchen/types.js';
import type { Finding, RecipeRule } from '../rule.js';

export const handWashingAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'hand-washing-absent',
  topic: 'safety',
  weight: 'note',
  summary: 'Raw meat, poultry or fish is worked with the hands, and the recipe never has them washed.',
  why: 'What clings to the hands goes to the salt cellar, the tap and the salad. Local codes and licensed practice come first.',
  sources: ['Partnership for Food Safety Education, Safe Recipe Style Guide, 2019'],
  beyond:
    'Cutting, seasoning and breading with tools, unless the house style asks for the full wording; eggs and shellfish by default; whether the hands were washed well.',
  examples: [
    {
      title: 'meatballs that are shaped by hand',
      text: '# Meatballs\n\nServes 4\n\n- 1 pound ground beef\n- 1 tablespoon oil\n\n1. Shape the beef into 12 balls.\n2. Fry them in the oil until a thermometer reads 160°F, 12 minutes.\n',
      marks: ['beef'],
    },
    {
      title: 'a chicken that is rubbed with salt',
      text: '# Roast Chicken\n\nServes 4\n\n- 1 chicken (4 pounds)\n- 1 teaspoon salt\n\n1. Rub the chicken with the salt.\n2. Roast at 400°F until a thermometer in the thigh reads 165°F, 1 hour.\n',
      marks: ['chicken'],
    },
    {
      title: 'meatballs, and then soap',
      text: '# Meatballs\n\nServes 4\n\n- 1 pound ground beef\n- 1 tablespoon oil\n\n1. Shape the beef into 12 balls. Wash your hands with soap and hot water.\n2. Fry the balls in the oil until a thermometer reads 160°F, 12 minutes.\n',
      marks: [],
    },
    {
      title: 'chicken that goes from the pack into the pan, and a dough',
      text: '# Pan Chicken\n\nServes 4\n\n- 4 chicken thighs\n- 2 cups flour\n- 1 cup water\n\n1. Knead the flour and the water with your hands, and shape the dough into flat cakes.\n2. Lay the chicken in a hot pan and fry until a thermometer reads 165°F, 20 minutes. Fry the cakes beside it until brown.\n',
      marks: [],
    },
  ],
  *look(dish, { hygiene }) {
    const { touches, handsWashed } = dish.handling;
    if (hygiene === 'off') return;
    if (hygiene === 'notes') {
      const touch = touches.find(({ bare }) => bare);
      if (touch !== undefined && handsWashed.length === 0) yield findingOf(dish, touch);
      return;
    }
    const seen = new Set<number>();
    for (const touch of touches) {
      const isWashed = handsWashed.includes(touch.step) || handsWashed.includes(touch.step + 1);
      if (isWashed || seen.has(touch.step)) continue;
      seen.add(touch.step);
      yield { ...findingOf(dish, touch), weight: 'query' };
    }
  },
};

function findingOf(dish: Dish, touch: RawHandling['touches'][number]): Finding {
  const { passage } = dish.recipe.steps[touch.step]!;
  const food = touch.food.listing.line.foods[0]!;
  return {
    span: passage.span(touch.start, touch.end),
    subject: food.name,
    message: `Hands touch raw ${food.text} here, and nothing says to wash them afterwards.`,
    advice: 'Add "wash your hands with soap and water" before the next thing is touched.',
  };
}
