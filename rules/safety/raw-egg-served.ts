/** Marks eggs that are served raw, and neither pasteurized nor announced. */
import { rawEggs } from '../../src/kitchen/served-raw.js';
import type { RecipeRule } from '../rule.js';

export const rawEggServed: RecipeRule = {
  scope: 'recipe',
  name: 'raw-egg-served',
  topic: 'safety',
  weight: 'query',
  summary: 'Eggs are served raw: not cooked, not pasteurized, and without a caution.',
  why: 'A raw egg may carry salmonella, which is dangerous to the very young, the old, the pregnant and the ill.',
  sources: [
    'FDA Food Code 2022, 3-202.13 and 3-801.11: pasteurized eggs where eggs are served raw',
    'FDA consumer advice on eggs',
  ],
  beyond:
    'Eggs that are lightly cooked: hollandaise, carbonara, soft-boiled and sunny-side-up eggs; eggs in a bought food; whether the guests are at risk.',
  examples: [
    {
      title: 'mayonnaise',
      text: '# Landing Mayonnaise\n\nMakes 1 cup\n\n- 1 egg yolk\n- 1 cup olive oil\n- 1 tablespoon lemon juice\n\n1. Whisk the egg yolk with the lemon juice.\n2. Whisk in the oil drop by drop until thick.\n',
      marks: ['1 egg yolk'],
    },
    {
      title: 'a mousse whose chocolate is melted and whose eggs are not cooked',
      text: '# Dusk Mousse\n\nServes 4\n\n- 6 ounces (170 g) dark chocolate\n- 4 eggs, separated\n\n1. Melt the chocolate.\n2. Beat in the egg yolks. Whip the egg whites until stiff, and fold them in. Chill until set, 4 hours.\n',
      marks: ['4 eggs, separated'],
    },
    {
      title: 'mayonnaise of pasteurized egg yolk',
      text: '# Landing Mayonnaise\n\nMakes 1 cup\n\n- 1 pasteurized egg yolk\n- 1 cup olive oil\n- 1 tablespoon lemon juice\n\n1. Whisk the egg yolk with the lemon juice.\n2. Whisk in the oil drop by drop until thick.\n',
      marks: [],
    },
    {
      title: 'a caution in the notes',
      text: '# Landing Mayonnaise\n\nMakes 1 cup\n\n- 1 egg yolk\n- 1 cup olive oil\n- 1 tablespoon lemon juice\n\n1. Whisk the egg yolk with the lemon juice.\n2. Whisk in the oil drop by drop until thick.\n\n## Notes\n\nThe sauce holds raw egg; for children and the elderly, buy pasteurized ones.\n',
      marks: [],
    },
    {
      title: 'a custard that is cooked, and a cake that is baked',
      text: '# Dusk Custard\n\nServes 4\n\n- 2 cups milk\n- 4 egg yolks\n- ¼ cup sugar\n\n1. Whisk the egg yolks with the sugar.\n2. Whisk in the milk, and cook over low heat until it coats a spoon.\n',
      marks: [],
    },
    {
      title: 'eggs that poach in soup',
      text: '# Reed Broth\n\nServes 4\n\n- 4 cups vegetable stock\n- 2 eggs\n\n1. Simmer the stock over medium heat until it bubbles. Stir in the eggs in a thin stream until set.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const raw = rawEggs(dish);
    if (raw === null) return;
    yield {
      span: raw.passage.span(),
      subject: raw.line.foods[0]!.name,
      message: `"${raw.passage.text}": nothing in the method cooks it.`,
      advice:
        'Ask for pasteurized eggs, have them cooked to 160°F (71°C), or add a caution that the dish holds raw egg.',
    };
  },
};
