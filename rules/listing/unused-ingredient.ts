/** Marks a listing that the method never uses. */
import type { Listing } from '../../src/anatomy/types.js';
import { withoutListing } from '../../src/kitchen/list-lines.js';
import { isServedAside, mayBeFryingFat } from '../../src/kitchen/purposes.js';
import type { Dish } from '../../src/kitchen/types.js';
import { offered } from '../mends.js';
import type { RecipeRule } from '../rule.js';

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
      text: '# Custard Toast\n\nServes 2\n\n- 2 slices bread\n- 1 egg\n- 1/2 cup milk\n- 1/4 teaspoon grated nutmeg\n\n1. Beat the egg with the milk, soak the bread in it, and bake until golden, 15 minutes.\n',
      marks: ['nutmeg'],
    },
    {
      title: 'an unknown food that is listed and forgotten',
      text: '# Rice Bowl\n\nServes 2\n\n- 2 cups cooked rice\n- 1 tablespoon zorrel leaves\n- 2 eggs\n\n1. Warm the rice, and top it with the eggs.\n',
      marks: ['zorrel leaves'],
    },
    {
      title: 'a group of the method takes up its members',
      text: '# Plain Scones\n\nMakes 6\n\n- 2 cups all-purpose flour\n- 1 tablespoon baking powder\n- 1/2 teaspoon salt\n- 1 cup heavy cream\n\n1. Whisk the dry ingredients together, stir in the cream, cut into rounds, and bake until golden, 15 minutes.\n',
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
      if (
        dish.uses[listing.index]!.length > 0 ||
        listing.line.foods.length === 0 ||
        isServedAside(dish, listing)
      )
        continue;
      yield {
        span: listing.passage.span(listing.line.foods[0]!.start, listing.line.foods[0]!.end),
        subject: listing.line.foods[0]!.name,
        weight: isLeftOpen(dish, listing) ? 'query' : 'fault',
        message: `The list has ${listing.line.foods[0]!.text}, which no step uses.`,
        advice: 'Say in the method where it goes, or take it off the list.',
        mends: offered(`take "${listing.passage.text}" off the list`, withoutListing(dish.page, listing)),
      };
    }
  },
};

/** Whether the author leaves the food open ("optional"), or the larder does not know it, so that another name may stand for it. */
function isLeftOpen(dish: Dish, listing: Listing): boolean {
  if (listing.line.optional || listing.line.toTaste || listing.line.asNeeded || mayBeFryingFat(dish, listing))
    return true;
  return (
    listing.line.foods.every((food) => food.row === null) &&
    dish.mentions.some((mention) => mention.listings.length === 0 && mention.role === 'use')
  );
}
