/** Marks wheat flour in a dough or batter that is eaten raw. */
import { rawFlour } from '../../src/kitchen/served-raw.js';
import type { RecipeRule } from '../rule.js';

export const rawFlourServed: RecipeRule = {
  scope: 'recipe',
  name: 'raw-flour-served',
  topic: 'safety',
  weight: 'query',
  summary: 'A dough or batter with raw flour is meant to be eaten as it is.',
  why: 'Flour is a raw food: it is milled from grain as it comes from the field, and no mill kills the germs in it.',
  sources: ['FDA consumer advice on flour and raw dough', 'CDC, Raw Flour and Dough'],
  beyond:
    'Tasting a dough that is then baked; flour that only dusts a board; how flour could be heat-treated at home, for which there is no tested way.',
  examples: [
    {
      title: 'edible cookie dough',
      text: '# Spoon Cookie Dough\n\nServes 6\n\n- ½ cup (115 g) butter\n- ½ cup sugar\n- 1 cup flour\n- ¼ cup milk\n\n1. Beat the butter with the sugar until fluffy.\n2. Stir in the flour and the milk. Eat the dough with a spoon.\n',
      marks: ['1 cup flour'],
    },
    {
      title: 'no-bake bites',
      text: '# No-Bake Towpath Bites\n\nMakes 16\n\n- 1 cup flour\n- ½ cup honey\n- ½ cup peanut butter\n\n1. Mix the flour, honey and peanut butter, and roll into balls.\n2. Chill until firm.\n',
      marks: ['1 cup flour'],
    },
    {
      title: 'flour that is heat-treated',
      text: '# Spoon Cookie Dough\n\nServes 6\n\n- ½ cup (115 g) butter\n- ½ cup sugar\n- 1 cup heat-treated flour\n- ¼ cup milk\n\n1. Beat the butter with the sugar until fluffy.\n2. Stir in the flour and the milk. Eat the dough with a spoon.\n',
      marks: [],
    },
    {
      title: 'a dough that is baked',
      text: '# Towpath Cookies\n\nMakes 12\n\n- ½ cup (115 g) butter\n- ½ cup sugar\n- 1 cup flour\n\n1. Beat the butter with the sugar until fluffy. Stir in the flour.\n2. Bake at 350°F until golden, 12 minutes.\n',
      marks: [],
    },
    {
      title: 'no-bake bites of oats',
      text: '# No-Bake Towpath Bites\n\nMakes 16\n\n- 1 cup rolled oats\n- ½ cup honey\n- ½ cup peanut butter\n\n1. Mix the oats, honey and peanut butter, and roll into balls.\n2. Chill until firm.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const raw = rawFlour(dish);
    if (raw === null) return;
    yield {
      span: raw.passage.span(),
      subject: raw.line.foods[0]!.name,
      message: `The recipe is eaten unbaked, and its flour is raw.`,
      advice:
        'Ask for flour that is sold heat-treated, or replace it, for example with oats that are made to be eaten raw.',
    };
  },
};
