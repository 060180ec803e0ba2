/** Marks a component that the method uses and never makes. */
import { hasNameOfItsOwn, unmadePlace } from '../../src/kitchen/components.js';
import { atListing, stepOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const componentUnmade: RecipeRule = {
  scope: 'recipe',
  name: 'component-unmade',
  topic: 'listing',
  weight: 'fault',
  summary: 'The method uses a component with a list of its own, and no step makes it.',
  why: 'The cook needs the dressing now, and has only read what goes into it.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'a dressing that is poured and never stirred together',
      text: '# Cabbage Salad\n\nServes 4\n\n- 1/2 cabbage, shredded\n- 2 carrots, grated\n\n### For the dressing\n\n- 2 tablespoons olive oil\n- 1 tablespoon cider vinegar\n- 1 teaspoon mustard\n\n1. Mix the cabbage and the carrots in a bowl.\n2. Pour over the dressing, toss, and serve.\n',
      marks: ['dressing'],
    },
    {
      title: 'a glaze that nobody makes',
      text: '# Glazed Carrots\n\nServes 4\n\n- 8 carrots\n\n### Honey glaze\n\n- 2 tablespoons honey\n- 1 tablespoon butter\n- 1 tablespoon orange juice\n\n1. Roast the carrots until tender.\n2. Brush with the honey glaze and roast until shiny.\n',
      marks: ['honey glaze'],
    },
    {
      title: 'a dressing whose things are whisked',
      text: '# Cabbage Salad\n\nServes 4\n\n- 1/2 cabbage, shredded\n\n### For the dressing\n\n- 2 tablespoons olive oil\n- 1 tablespoon cider vinegar\n\n1. Whisk the oil and the vinegar.\n2. Pour the dressing over the cabbage, toss, and serve.\n',
      marks: [],
    },
    {
      title: 'a dressing that one order makes',
      text: '# Cabbage Salad\n\nServes 4\n\n- 1/2 cabbage, shredded\n\n### For the dressing\n\n- 2 tablespoons olive oil\n- 1 tablespoon cider vinegar\n\n1. Make the dressing.\n2. Pour it over the cabbage, toss, and serve.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const component of dish.recipe.components) {
      const place = unmadePlace(dish, component);
      if (place === null) continue;
      const { passage } = dish.recipe.steps[place.step]!;
      yield {
        span: passage.span(place.start, place.end),
        subject: component.name!,
        weight: hasNameOfItsOwn(component) ? 'fault' : 'query',
        message: `The method uses the ${component.name} in ${stepOf(dish, place.step)}; no step makes it of its ${component.listings.length} listed ingredients.`,
        advice: 'Say before this step how it is made.',
        related: component.listings.map((listing) => atListing(dish, listing, 'listed for it')),
      };
    }
  },
};
