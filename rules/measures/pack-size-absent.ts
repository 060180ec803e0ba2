/** Marks a can, packet or jar whose size the list does not give. */
import { packWithoutSize } from '../../src/kitchen/units.js';
import type { RecipeRule } from '../rule.js';

export const packSizeAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'pack-size-absent',
  topic: 'measures',
  weight: 'query',
  summary: 'A can, packet or jar is listed without its size: "1 can tomatoes".',
  why: 'Cans and packets differ by a factor of four from shop to shop, and by country.',
  sources: ['House styles of cookbook publishers', 'Practice of food magazines'],
  examples: [
    {
      title: 'a can without its size',
      text: '# Tomato Soup\n\nServes 4\n\n- 1 can tomatoes\n- 2 cups vegetable stock\n\n1. Simmer the tomatoes in the stock until soft.\n',
      marks: ['1 can'],
    },
    {
      title: 'a packet and a jar without their sizes',
      text: '# Pantry Pasta\n\nServes 4\n\n- 1 packet spaghetti\n- ½ jar capers\n- 2 tablespoons olive oil\n\n1. Boil the spaghetti until al dente, and toss it with the oil and the capers.\n',
      marks: ['1 packet', '½ jar'],
    },
    {
      title: 'a can with its size',
      text: '# Tomato Soup\n\nServes 4\n\n- 1 (14½-ounce) can tomatoes\n- 2 cups vegetable stock\n\n1. Simmer the tomatoes in the stock until soft.\n',
      marks: [],
    },
    {
      title: 'a packet that is weighed, and a can drained to a cup',
      text: '# Bean Pancakes\n\nServes 4\n\n- 1 packet (7 g) dried yeast\n- 1 can white beans (about 1½ cups)\n- 2 cups flour\n\n1. Mash the beans, beat in the yeast and the flour, and fry until golden.\n',
      marks: [],
    },
  ],
  *look({ recipe }) {
    for (const listing of recipe.listings) {
      const measure = packWithoutSize(listing);
      if (measure === null) continue;
      const food = listing.line.foods[0]!;
      const text = listing.passage.text.slice(measure.start, measure.end);
      yield {
        span: listing.passage.span(measure.start, measure.end),
        subject: food.name,
        message: `"${text}" of ${food.text} comes in several sizes, and the line does not say which.`,
        advice: 'Give the weight or the volume of one.',
      };
    }
  },
};
