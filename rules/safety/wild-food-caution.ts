/** Marks wild food that is gathered without a caution, or served raw where it must be cooked. */
import { foragedFoods } from '../../src/kitchen/foraged.js';
import type { RecipeRule } from '../rule.js';

export const wildFoodCaution: RecipeRule = {
  scope: 'recipe',
  name: 'wild-food-caution',
  topic: 'safety',
  weight: 'query',
  summary: 'Wild food is gathered without a caution, or is served raw where it must be cooked.',
  why: 'Some wild plants and mushrooms have poisonous doubles, and some are poisonous themselves until they are cooked.',
  sources: [
    'FDA, Bad Bug Book, 2nd ed., mushroom toxins',
    'CDC MMWR 33(13), 1984: poisoning from elderberry juice',
    'FDA Food Code 2022, 3-201.16: wild mushrooms identified by an expert',
    'CDC MMWR 43(37), 1994: fiddleheads are boiled 10 minutes (from memory)',
  ],
  beyond:
    'Mushrooms and greens of which the recipe does not say that they are gathered; seaweed, shellfish gathered at the shore, and game; whether a plant was named rightly.',
  examples: [
    {
      title: 'raw elderberries',
      text: '# Hedge Smoothie\n\nServes 2\n\n- 1 cup elderberries\n- 1 cup apple juice\n\n1. Blend the elderberries with the apple juice until smooth.\n',
      marks: ['1 cup elderberries'],
    },
    {
      title: 'mushrooms from the woods',
      text: '# Towpath Toasts\n\nServes 4\n\n- 8 ounces foraged mushrooms\n- 2 tablespoons butter\n- 4 slices bread\n\n1. Fry the mushrooms in the butter over medium heat until golden, 8 minutes.\n2. Spoon onto the bread.\n',
      marks: ['8 ounces foraged mushrooms'],
    },
    {
      title: 'elderberries that are simmered',
      text: '# Hedge Syrup\n\nMakes 2 cups\n\n- 2 cups elderberries\n- 1 cup sugar\n- 1 cup water\n\n1. Simmer the elderberries with the sugar and water until soft, 20 minutes, and strain.\n',
      marks: [],
    },
    {
      title: 'mushrooms from the woods, with a caution',
      text: '# Towpath Toasts\n\nServes 4\n\n- 8 ounces foraged mushrooms\n- 2 tablespoons butter\n- 4 slices bread\n\n1. Fry the mushrooms in the butter over medium heat until golden, 8 minutes.\n2. Spoon onto the bread.\n\n## Notes\n\nHave an expert identify whatever you bring home, or buy cultivated mushrooms.\n',
      marks: [],
    },
    {
      title: 'wild mushrooms as they are sold',
      text: '# Market Toasts\n\nServes 4\n\n- 8 ounces chanterelles\n- 2 tablespoons butter\n- 4 slices bread\n\n1. Fry the chanterelles in the butter over medium heat until golden, 8 minutes.\n2. Spoon onto the bread.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const wild = foragedFoods(dish);
    if (wild === null) return;
    const food = wild.listing.line.foods[0];
    const text = food?.text ?? wild.listing.passage.text;
    yield {
      span: wild.listing.passage.span(),
      subject: food?.name ?? text,
      message:
        wild.why === 'raw'
          ? `The recipe serves ${text} raw; they are harmful until they are cooked.`
          : `The recipe uses ${text} gathered wild, and says nothing of knowing them.`,
      advice:
        wild.why === 'raw'
          ? 'Have them cooked through, or name another food.'
          : 'Add that an expert must identify them, or that cultivated ones will do.',
    };
  },
};
