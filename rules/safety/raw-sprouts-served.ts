/** Marks sprouts of beans and seeds that are served raw without a caution. */
import { rawSprouts } from '../../src/kitchen/sprouts.js';
import type { RecipeRule } from '../rule.js';

export const rawSproutsServed: RecipeRule = {
  scope: 'recipe',
  name: 'raw-sprouts-served',
  topic: 'safety',
  weight: 'note',
  summary: 'Sprouts of beans or seeds are served raw, without a caution.',
  why: 'Seeds sprout in the warmth and damp in which germs grow too, and washing does not reach what is inside the seed.',
  sources: [
    'FDA consumer advice on sprouts: children, the old, the pregnant and the ill should eat none that are raw or lightly cooked (from memory)',
    'FDA Food Code 2022, 3-801.11: raw seed sprouts are not served to those at risk (from memory)',
  ],
  beyond:
    'Sprouts that are cooked, however lightly; a listing of "sprouts" alone, which may be Brussels sprouts; shoots, cress and microgreens; how sprouts are grown at home; whether the guests are at risk.',
  examples: [
    {
      title: 'a sandwich',
      text: '# Lock-Side Sandwich\n\nServes 1\n\n- 2 slices bread\n- 2 ounces cheese\n- ½ cup alfalfa sprouts\n\n1. Lay the cheese on the bread, and top with the alfalfa sprouts.\n',
      marks: ['alfalfa sprouts'],
    },
    {
      title: 'half of them are fried, and the rest is a garnish',
      text: '# Reed Noodles\n\nServes 4\n\n- 8 ounces rice noodles\n- 2 cups bean sprouts, divided\n- 2 tablespoons oil\n\n1. Boil the noodles until tender, 6 minutes, and drain.\n2. Heat the oil in a wok over high heat until it shimmers. Stir-fry the noodles and 1 cup of the bean sprouts until hot, 2 minutes.\n3. Garnish with the remaining bean sprouts.\n',
      marks: ['bean sprouts'],
    },
    {
      title: 'sprouts that are all fried',
      text: '# Reed Noodles\n\nServes 4\n\n- 8 ounces rice noodles\n- 2 cups bean sprouts\n- 2 tablespoons oil\n\n1. Boil the noodles until tender, 6 minutes, and drain.\n2. Heat the oil in a wok over high heat until it shimmers. Add the noodles, and toss for 2 minutes, until hot. Add the bean sprouts, and toss for 1 minute more, until they wilt. Serve.\n',
      marks: [],
    },
    {
      title: 'sprouts that are blanched for a salad',
      text: '# Landing Salad\n\nServes 4\n\n- 3 cups bean sprouts\n- 1 tablespoon soy sauce\n\n1. Blanch the bean sprouts in boiling water for 1 minute, until they are limp, and drain.\n2. Toss with the soy sauce.\n',
      marks: [],
    },
    {
      title: 'a caution in the notes',
      text: '# Lock-Side Sandwich\n\nServes 1\n\n- 2 slices bread\n- 2 ounces cheese\n- ½ cup alfalfa sprouts\n\n1. Lay the cheese on the bread, and top with the alfalfa sprouts.\n\n## Notes\n\nLeave out the raw sprouts for small children and the elderly.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const raw = rawSprouts(dish);
    if (raw === null) return;
    yield {
      span: raw.passage.span(raw.start, raw.end),
      subject: raw.food,
      message: 'These sprouts are served raw, and raw sprouts can carry germs that washing does not remove.',
      advice:
        'Have them cooked until they steam, or add a caution for the very young, the old, the pregnant and the ill.',
    };
  },
};
