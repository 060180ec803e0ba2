/** Marks a listing that the method never uses. */
import type { Listing } from '../../src/anatomy/types.js';
import { forgottenComponent } from '../../src/kitchen/components.js';
import { withoutListing } from '../../src/kitchen/list-lines.js';
import { preparedInVain } from '../../src/kitchen/prepared.js';
import { isServedAside, mayBeFryingFat } from '../../src/kitchen/purposes.js';
import type { Dish, Mention } from '../../src/kitchen/types.js';
import { offered } from '../mends.js';
import { atMention, foodOf, spanOfFood, stepOf, subjectOf } from '../places.js';
import type { Finding, RecipeRule } from '../rule.js';

export const unusedIngredient: RecipeRule = {
  scope: 'recipe',
  name: 'unused-ingredient',
  topic: 'listing',
  weight: 'fault',
  summary: 'A listed food is never used in the method.',
  why: 'The cook has it measured on the counter when the dish is done, and does not know where it went.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'New Zealand Guild of Food Writers, Recipe Writing Tips',
  ],
  examples: [
    {
      title: 'nutmeg that no step takes up',
      text: '# Custard Toast\n\nServes 2\n\n- 2 slices bread\n- 1 egg\n- 1/2 cup milk\n- 1/4 teaspoon grated nutmeg\n\n1. Beat the egg with the milk, soak the bread in it, and bake at 350°F until golden, 15 minutes.\n',
      marks: ['nutmeg'],
    },
    {
      title: 'an unknown food that is listed and forgotten',
      text: '# Rice Bowl\n\nServes 2\n\n- 2 cups cooked rice\n- 1 tablespoon zorrel leaves\n- 2 eggs\n\n1. Warm the rice, and top it with the eggs.\n',
      marks: ['zorrel leaves'],
    },
    {
      title: 'parsley that is chopped and never scattered',
      text: '# Rice Bowl\n\nServes 2\n\n- 1/2 cup parsley leaves\n- 2 cups cooked rice\n- 2 eggs\n\n1. Chop the parsley.\n2. Warm the rice, and top it with the eggs.\n',
      marks: ['parsley leaves'],
    },
    {
      title: 'a group of the method takes up its members',
      text: '# Plain Scones\n\nMakes 6\n\n- 2 cups all-purpose flour\n- 1 tablespoon baking powder\n- 1/2 teaspoon salt\n- 1 cup heavy cream\n\n1. Whisk the dry ingredients together, stir in the cream, cut into rounds, and bake at 400°F until golden, 15 minutes.\n',
      marks: [],
    },
    {
      title: 'a food known by the last word of its name, and a garnish',
      text: '# Crushed Potatoes\n\nServes 4\n\n- 2 pounds Yukon Gold potatoes\n- 2 tablespoons olive oil\n- Parsley sprigs, for garnish\n\n1. Boil the potatoes until tender, crush them with the oil, and garnish.\n',
      marks: [],
    },
  ],
  *look(dish) {
    if (dish.recipe.steps.length === 0) return;
    for (const listing of dish.recipe.listings) {
      if (listing.line.foods.length === 0) continue;
      const prepared = preparedInVain(dish, listing);
      if (prepared !== null) yield idleFinding(dish, listing, prepared);
      if (dish.uses[listing.index]!.length > 0 || isServedAside(dish, listing)) continue;
      if (forgottenComponent(dish, listing) !== null) continue;
      yield {
        span: spanOfFood(listing),
        subject: subjectOf(listing),
        weight: isLeftOpen(dish, listing) ? 'query' : 'fault',
        message: `The list has ${foodOf(listing)}, which no step uses.`,
        advice: 'Say in the method where it goes, or take it off the list.',
        mends: offered(`take "${listing.passage.text}" off the list`, withoutListing(dish.page, listing)),
      };
    }
  },
};

/** What is made ready and never goes in is as good as unused; words that were not understood may still put it in. */
function idleFinding(dish: Dish, listing: Listing, prepared: Mention): Finding {
  return {
    span: spanOfFood(listing),
    subject: subjectOf(listing),
    weight: 'query',
    message: `${foodOf(listing)} is made ready in ${stepOf(dish, prepared.step)}, and no step puts it in.`,
    advice: 'Say in the method where it goes, or take it off the list.',
    related: [atMention(dish, prepared, 'made ready here')],
  };
}

/** Whether the author leaves the food open ("optional"), or the larder does not know it, so that another name may stand for it. */
function isLeftOpen(dish: Dish, listing: Listing): boolean {
  if (listing.line.optional || listing.line.toTaste || listing.line.asNeeded || mayBeFryingFat(dish, listing))
    return true;
  return (
    listing.line.foods.every((food) => food.row === null) &&
    dish.mentions.some((mention) => mention.listings.length === 0 && mention.role === 'use')
  );
}
