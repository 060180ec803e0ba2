/** Marks a food that the method cuts after the list has cut it, or takes as cut when nothing has cut it. */
import { type Disagreement, preparationDisagreements } from '../../src/kitchen/preparation.js';
import { unitById } from '../../src/larder/units.js';
import { atListing, foodOf, stepOf, subjectOf } from '../places.js';
import type { RecipeRule } from '../rule.js';

export const preparationDisagreement: RecipeRule = {
  scope: 'recipe',
  name: 'preparation-disagreement',
  topic: 'listing',
  weight: 'query',
  summary: 'The list and the method do not agree on how a food is cut.',
  why: 'A cup of walnuts, chopped, is not a cup of chopped walnuts; and what was chopped on the counter is not chopped again.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'New Zealand Guild of Food Writers, Recipe Writing Tips',
  ],
  examples: [
    {
      title: 'an onion chopped on the list and chopped again',
      text: '# Onion Toast\n\nServes 2\n\n- 2 onions, finely chopped\n- 2 tablespoons butter\n- 4 slices bread\n\n1. Chop the onions and cook them in the butter until golden.\n2. Spoon onto the bread.\n',
      marks: ['Chop'],
    },
    {
      title: 'sliced on the list and grated in the method',
      text: '# Carrot Salad\n\nServes 2\n\n- 4 carrots, sliced\n- 1 lemon\n\n1. Grate the carrots and squeeze the lemon over.\n',
      marks: ['Grate'],
    },
    {
      title: 'a cup of walnuts that turn up chopped',
      text: '# Leek Pasta\n\nServes 2\n\n- 8 ounces pasta\n- 2 leeks, sliced\n- 2 tablespoons butter\n- 1 cup walnuts\n\n1. Boil the pasta until tender.\n2. Cook the leeks in the butter until soft, and toss with the pasta.\n3. Scatter the chopped walnuts over.\n',
      marks: ['chopped walnuts'],
    },
    {
      title: 'peeled on the list, sliced in the method',
      text: '# Garlic Toast\n\nServes 2\n\n- 2 cloves garlic, peeled\n- 4 slices bread\n- 2 tablespoons olive oil\n\n1. Slice the garlic, fry it in the oil until golden, and spoon over the bread.\n',
      marks: [],
    },
    {
      title: 'diced to be boiled, then mashed',
      text: '# Crushed Potatoes\n\nServes 4\n\n- 2 pounds potatoes, diced\n- 3 tablespoons butter\n\n1. Boil the potatoes until tender, and drain.\n2. Mash the potatoes with the butter.\n',
      marks: [],
    },
    {
      title: 'chopped by the method itself',
      text: '# Walnut Leeks\n\nServes 2\n\n- 2 leeks, sliced\n- 2 tablespoons butter\n- 1 cup walnuts\n\n1. Chop the walnuts.\n2. Cook the leeks in the butter until soft, and scatter the chopped walnuts over.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const found of preparationDisagreements(dish)) {
      const { listing, mention, start, end } = found;
      yield {
        span: dish.recipe.steps[mention.step]!.passage.span(start, end),
        subject: subjectOf(listing),
        weight: found.how === 'undone' && !isMeasured(found) ? 'note' : 'query',
        ...wording(found, stepOf(dish, mention.step)),
        related: [atListing(dish, listing, 'the listing')],
      };
    }
  },
};

/** A cup of it whole is not a cup of it cut; an onion is the same onion. */
function isMeasured({ listing }: Disagreement): boolean {
  const unit = listing.line.measures[0]?.unit ?? null;
  return unit !== null && unitById(unit).kind === 'volume';
}

function wording(
  { listing, technique, how, listed }: Disagreement,
  step: string,
): { message: string; advice: string } {
  const food = foodOf(listing);
  if (how === 'undone')
    return {
      message: `The method has ${food} cut up by ${step}; the list has it whole, and no step cuts it.`,
      advice: 'Say on the list how it is cut, after the amount if it is measured whole.',
    };
  return {
    message: `The list has ${food} "${listed!.text}" already; ${step} says to ${technique.name} it${how === 'again' ? ' again' : ''}.`,
    advice: 'Keep one of the two.',
  };
}
