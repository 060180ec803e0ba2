/** Marks a component that is made and never goes into the dish, or that the method never speaks of. */
import { isForgotten, madeInVain } from '../../src/kitchen/components.js';
import { atListing, stepOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const componentUnused: RecipeRule = {
  scope: 'recipe',
  name: 'component-unused',
  topic: 'listing',
  weight: 'fault',
  summary: 'A component with a list of its own never goes into the dish.',
  why: 'The cook stands with a bowl of sauce and no word of where it goes.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'a dressing that is whisked and forgotten',
      text: '# Cabbage Salad\n\nServes 4\n\n- 1/2 cabbage, shredded\n- 2 carrots, grated\n\n### For the dressing\n\n- 2 tablespoons olive oil\n- 1 tablespoon cider vinegar\n\n1. Whisk the oil with the vinegar in a small bowl.\n2. Toss the cabbage with the carrots, and serve.\n',
      marks: ['For the dressing'],
    },
    {
      title: 'a topping of which no step speaks',
      text: '# Apple Bake\n\nServes 4\n\n- 4 apples, sliced\n- 2 tablespoons honey\n\n### Crumble topping\n\n- 1 cup oats\n- 4 tablespoons butter\n\n1. Toss the apples with the honey.\n2. Bake at 400°F until golden.\n',
      marks: ['Crumble topping'],
    },
    {
      title: 'a dressing poured over by its name',
      text: '# Cabbage Salad\n\nServes 4\n\n- 1/2 cabbage, shredded\n\n### For the dressing\n\n- 2 tablespoons olive oil\n- 1 tablespoon cider vinegar\n\n1. Whisk the oil with the vinegar in a small bowl.\n2. Toss the cabbage with the dressing.\n',
      marks: [],
    },
    {
      title: 'everything together at the end',
      text: '# Cabbage Salad\n\nServes 4\n\n- 1/2 cabbage, shredded\n- 2 carrots, grated\n\n### For the dressing\n\n- 2 tablespoons olive oil\n- 1 tablespoon cider vinegar\n\n1. Whisk the oil with the vinegar in a small bowl.\n2. Put the cabbage and the carrots in another bowl.\n3. Toss everything together.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const component of dish.recipe.components) {
      const step = madeInVain(dish, component);
      if ((step === null && !isForgotten(dish, component)) || component.heading === null) continue;
      yield {
        span: component.heading.span(),
        subject: component.name!,
        // What was made may go in under a name that was not recognized.
        weight: step === null ? 'fault' : 'query',
        message:
          step === null
            ? `The list has ${component.listings.length} lines for the ${component.name}, of which no step speaks.`
            : `The method makes the ${component.name} in ${stepOf(dish, step)}, and no later step uses any.`,
        advice: 'Say where it goes, or take it out.',
        related: component.listings.map((listing) => atListing(dish, listing, 'listed for it')),
      };
    }
  },
};
