/** Marks a food that the method uses and the list does not have. */

import { vocabularyOf } from '../../src/kitchen/listed.js';
import { newListing } from '../../src/kitchen/new-listing.js';
import { refersToRecipe } from '../../src/kitchen/references.js';
import { nearestEntry } from '../../src/kitchen/resolve.js';
import type { Dish, Mention } from '../../src/kitchen/types.js';
import { foodsNamed, isAnyOf } from '../../src/larder/food-classes.js';
import { foodNamed, isKindOf } from '../../src/larder/foods.js';
import { isWord } from '../../src/larder/kitchen-words.js';
import { fold, singular } from '../../src/larder/names.js';
import type { Food } from '../../src/larder/types.js';
import { offered } from '../mends.js';
import { atListing, atMention, spanOfMention, stepOf } from '../places.js';
import type { Finding, Mend, RecipeRule, Weight } from '../rule.js';

export const unlistedIngredient: RecipeRule = {
  scope: 'recipe',
  name: 'unlisted-ingredient',
  topic: 'listing',
  weight: 'fault',
  summary: 'The method uses a food that is not on the list.',
  why: 'The cook finds out at the stove that something was not bought.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'New Zealand Guild of Food Writers, Recipe Writing Tips',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'cream that is only in the method',
      text: '# Leek Broth\n\nServes 2\n\n- 2 leeks, sliced\n- 3 cups vegetable stock\n\n1. Simmer the leeks in the stock until soft, 15 minutes.\n2. Swirl in the cream.\n',
      marks: ['cream'],
    },
    {
      title: 'pepper whose salt is listed',
      text: '# Buttered Peas\n\nServes 2\n\n- 2 cups peas\n- 1 tablespoon butter\n- 1/2 teaspoon salt\n\n1. Toss the peas with the butter, salt and pepper.\n',
      marks: ['pepper'],
    },
    {
      title: 'butter named by the verb is a use of the listed butter',
      text: '# Crumble\n\nServes 4\n\n- 4 apples, sliced\n- 2 tablespoons butter\n- 1 cup oats\n\n1. Butter a 9-inch dish, add the apples, top with the oats, and bake at 350°F until golden, 30 minutes.\n',
      marks: [],
    },
    {
      title: 'a walnut that only tells a size, and lemon juice from the listed lemon',
      text: '# Almond Drops\n\nMakes 12\n\n- 2 cups ground almonds\n- 1 lemon\n- 1 egg\n\n1. Mix the almonds, the lemon juice and the egg white.\n2. Roll pieces the size of a walnut, and bake at 350°F until golden, 12 minutes.\n',
      marks: [],
    },
    {
      title: 'a jam that another recipe of the book makes',
      text: '# Plum Jam\n\nMakes 2 jars\n\n- 2 pounds plums\n- 1 pound sugar\n\n1. Simmer the plums with the sugar until thick, 30 minutes.\n\n# Jam Toast\n\nServes 1\n\n- 1 slice bread\n\n1. Toast the bread until golden, 2 minutes, and spread with Plum Jam.\n',
      marks: [],
    },
    {
      title: 'water that pasta is only boiled in',
      text: '# Plain Noodles\n\nServes 2\n\n- 8 ounces egg noodles\n- 1 tablespoon butter\n\n1. Boil the noodles in a large pot of water until tender, 6 minutes, and toss with the butter.\n',
      marks: [],
    },
  ],
  *look(dish, style, names) {
    if (dish.recipe.listings.length === 0) return;
    const needless = style.unlisted.flatMap(foodsNamed);
    const marked = new Map<Food, Mention[]>();
    for (const mention of dish.mentions) {
      if (mention.role !== 'use' || mention.listings.length > 0 || mention.food === null) continue;
      if (isAnyOf(mention.food, needless)) continue;
      const same = marked.get(mention.food) ?? sameThing(marked, mention.food);
      if (same === undefined) marked.set(mention.food, [mention]);
      else same.push(mention);
    }
    const unlisted = [...marked.values()].flatMap((mentions) => {
      const first = mentions.find((mention) => mention.measure !== null) ?? mentions[0]!;
      const weight = weigh(dish, first);
      // What another recipe of the book makes need not be bought.
      const isMade = mentions.some((mention) => refersToRecipe(names, dish, spanOfMention(dish, mention)));
      return weight === null || isMade ? [] : [{ first, mentions, weight }];
    });
    for (const each of unlisted) {
      const beside =
        each.first.verb === 'serve' ? unlisted.filter(({ first }) => isServedBeside(first, each.first)) : [];
      if (beside.length < FEWEST_SERVED) yield findingOf(dish, each.first, each.mentions, each.weight);
      else if (beside[0] === each) {
        const isLeftOpen = beside.every(({ weight }) => weight === 'note');
        const served = beside.map(({ first }) => first);
        yield servedFinding(dish, served, isLeftOpen ? 'note' : 'query');
      }
    }
  },
};

/** From so many on, what a step serves beside the dish is one question and not one a food. */
const FEWEST_SERVED = 3;

function isServedBeside(one: Mention, other: Mention): boolean {
  return one.verb === 'serve' && one.step === other.step;
}

function servedFinding(dish: Dish, mentions: readonly Mention[], weight: Weight): Finding {
  const [first, ...others] = mentions as [Mention, ...Mention[]];
  return {
    span: spanOfMention(dish, first),
    subject: nameOf(first),
    weight,
    message: `The dish is served with ${mentions.map(({ text }) => text).join(', ')} in ${stepOf(dish, first.step)}; the list has none of them.`,
    advice: 'List them with "to serve", or leave the choice to the cook in so many words.',
    related: others.map((mention) => atMention(dish, mention, 'served as well')),
  };
}

/** "The oil", after an unlisted olive oil, is that. */
function sameThing(marked: ReadonlyMap<Food, Mention[]>, food: Food): Mention[] | undefined {
  for (const [other, mentions] of marked) if (isKindOf(other, food)) return mentions;
  return undefined;
}

/** How sure it is that the list lacks something; null where the author leaves it to the cook. */
function weigh(dish: Dish, mention: Mention): Weight | null {
  const food = mention.food!;
  if (is(mention, 'salt') || isPepper(mention)) {
    if (mention.measure !== null && mention.measure.unit !== null) return 'fault';
    const other = dish.recipe.listings.some((listing) =>
      listing.line.foods.some(
        (each) =>
          each.row !== null && isKindOf(each.row, foodNamed(is(mention, 'salt') ? 'black pepper' : 'salt')!),
      ),
    );
    return other ? 'fault' : 'note';
  }
  if (mention.optional || mention.surface) return 'note';
  // A class may mean a listed food that the larder does not know.
  const unknown = dish.recipe.listings.some((listing) =>
    listing.line.foods.some((each) => each.row === null),
  );
  if (food.generic && unknown && mention.determiner !== null) return null;
  if (isWord(fold(food.name), 'vague')) return mention.determiner !== null || unknown ? null : 'query';
  if (mention.verb === null && mention.measure === null) return null;
  if (is(mention, 'water') && isSpokenOfBefore(dish, mention)) return null;
  if (is(mention, 'water') && mention.measure === null) return 'query';
  if (is(mention, 'ice')) return 'query';
  if (mention.verb === 'serve' || mention.toTaste) return 'query';
  return food.generic && mention.determiner !== null ? 'query' : 'fault';
}

/** "The water" that an earlier step has boiled something in. */
function isSpokenOfBefore(dish: Dish, mention: Mention): boolean {
  return (
    mention.determiner !== null &&
    dish.mentions.some((other) => is(other, 'water') && other.step <= mention.step && other !== mention)
  );
}

function is(mention: Mention, name: string): boolean {
  const food = foodNamed(name);
  return mention.food !== null && food !== null && isKindOf(mention.food, food);
}

/** The spice and not the vegetable. */
function isPepper(mention: Mention): boolean {
  return mention.food?.name === 'pepper'
    ? singular(fold(mention.text)) === fold(mention.text)
    : is(mention, 'black pepper') || is(mention, 'white pepper');
}

/** The food in the author's own words, as the names of listings are compared: lower case, singular. */
function nameOf({ text }: Mention): string {
  const words = text.toLowerCase().split(/[\s-]+/);
  return [...words.slice(0, -1), singular(words.at(-1)!)].join(' ');
}

function findingOf(dish: Dish, first: Mention, mentions: readonly Mention[], weight: Weight): Finding {
  const near = nearestEntry(first.food!, vocabularyOf(dish.recipe.listings));
  return {
    span: spanOfMention(dish, first),
    subject: nameOf(first),
    weight,
    message: `"${first.text}" is used in ${stepOf(dish, first.step)} and is not on the list${near === null ? '' : `, which has ${near.food.text}`}.`,
    advice: near === null ? 'List it, or take it out of the step.' : 'List it, or use one name for both.',
    mends: listed(dish, first),
    related: [
      ...mentions
        .filter((mention) => mention !== first)
        .map((mention) => atMention(dish, mention, 'used here too')),
      ...(near === null ? [] : [atListing(dish, near.listing, 'the nearest listing')]),
    ],
  };
}

/** One more listing with the method's own amount. */
function listed(dish: Dish, mention: Mention): readonly Mend[] {
  const line = newListing(dish, mention);
  return line === null
    ? []
    : offered(`add "${line.listing}" to the list`, {
        span: { start: line.at, end: line.at },
        text: line.text,
      });
}
