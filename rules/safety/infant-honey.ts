/** Marks honey in food for a child in its first year. */
import { honeyForInfants } from '../../src/kitchen/infants.js';
import type { RecipeRule } from '../rule.js';

export const infantHoney: RecipeRule = {
  scope: 'recipe',
  name: 'infant-honey',
  topic: 'safety',
  weight: 'fault',
  summary: 'Food for infants has honey in it.',
  why: 'Honey may carry spores of botulism, which can grow in the gut of a child under 12 months.',
  sources: ['CDC, infant botulism: no honey before 12 months of age'],
  beyond: 'Bought foods that contain honey; corn syrup; other foods that infants should not have.',
  examples: [
    {
      title: 'a puree for babies',
      text: '# Baby Pear Puree\n\nServes 4\n\n- 4 pears, peeled\n- 1 tablespoon honey\n- ½ cup water\n\n1. Simmer the pears in the water until soft, 10 minutes.\n2. Blend with the honey.\n',
      marks: ['1 tablespoon honey'],
    },
    {
      title: 'a headnote that gives it to infants',
      text: '# Oat Mash\n\nServes 4\n\nA first food for an infant who is ready for a spoon.\n\n- 1 cup rolled oats\n- 2 cups water\n- 1 teaspoon honey\n\n1. Simmer the oats in the water until soft, 5 minutes.\n2. Stir in the honey.\n',
      marks: ['1 teaspoon honey'],
    },
    {
      title: 'a note that keeps it from infants',
      text: '# Oat Mash\n\nServes 4\n\n- 1 cup rolled oats\n- 2 cups water\n- 1 teaspoon honey\n\n1. Simmer the oats in the water until soft, 5 minutes.\n2. Stir in the honey.\n\n## Notes\n\nFor a baby under 12 months, leave the honey out.\n',
      marks: [],
    },
    {
      title: 'baby carrots with honey',
      text: '# Honey Carrots\n\nServes 4\n\n- 1 pound baby carrots\n- 1 tablespoon honey\n\n1. Steam the baby carrots until tender, 8 minutes.\n2. Toss with the honey.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const listing = honeyForInfants(dish);
    if (listing === null) return;
    yield {
      span: listing.passage.span(),
      subject: listing.line.foods[0]!.name,
      message: 'The recipe is for infants, and has honey in it.',
      advice: 'Take the honey out, or say that the food is for children over 12 months.',
    };
  },
};
