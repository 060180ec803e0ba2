/** What the words of a method mean on the list. */
import { describe, expect, it } from 'vitest';
import { readManuscript } from '../../src/reading/read.js';
import { dish, meanings } from './dishes.js';

const means = (listings: string[], step: string, title?: string) => meanings(dish(listings, [step], title));

describe('a mention is', () => {
  it.each<[string, string[], string, string[]]>([
    [
      'the olive oil of the list when it is the only oil',
      ['2 tablespoons olive oil', '1 leek'],
      'Fry the leek in the oil until soft.',
      ['leek = leek', 'oil = olive oil'],
    ],
    [
      'the Parmesan when it says "the cheese"',
      ['1 cup grated Parmesan', '8 ounces spaghetti'],
      'Toss the pasta with the cheese.',
      ['pasta = spaghetti', 'cheese = parmesan'],
    ],
    [
      'a listed food by its last word alone',
      ['2 pounds Yukon Gold potatoes'],
      'Mash the potatoes until smooth.',
      ['potatoes = yukon gold potato'],
    ],
    [
      'a food that no table knows, by the words of the list',
      ['2 tablespoons brindle paste', '1 egg'],
      'Beat the egg with the brindle paste.',
      ['egg = egg', 'brindle paste = brindle paste'],
    ],
    [
      'the juice of a listed lemon',
      ['1 lemon', '1 egg'],
      'Beat the lemon juice with the egg white.',
      ['lemon juice = lemon', 'egg white = egg'],
    ],
    [
      'a chicken thigh when the list says chicken',
      ['1 chicken', '1 onion'],
      'Brown the chicken thighs with the onion.',
      ['chicken thighs = chicken', 'onion = onion'],
    ],
    [
      'the same food under its other name',
      ['4 scallions', '1 egg'],
      'Beat the egg with the green onions.',
      ['egg = egg', 'green onions = scallion'],
    ],
  ])('%s', (_, listings, step, expected) => {
    expect(means(listings, step)).toEqual(expected);
  });

  it('is not the butter when it says peanut butter, nor the chicken when it says chicken stock', () => {
    expect(means(['1 cup butter', '1 chicken'], 'Stir the peanut butter into the chicken stock.')).toEqual([
      'peanut butter = ?',
      'chicken stock = ?',
    ]);
  });
});

describe('a word that looks like a food is told apart when', () => {
  it.each<[string, string, string[]]>([
    ['it names a tool', 'Spread the egg with a butter knife, next to the rice cooker.', ['egg = egg']],
    [
      'it only gives a size',
      'Beat the egg with a piece of leek the size of a walnut.',
      ['egg = egg', 'leek = leek', 'walnut (aside)'],
    ],
    [
      'it is a color that something turns',
      'Melt the butter until it turns hazelnut brown.',
      ['butter = butter', 'hazelnut (aside)'],
    ],
    [
      'it is told of where and not of what',
      'Butter the leek, and season it all over.',
      ['Butter = butter', 'leek = leek'],
    ],
    ['it is a weight to bake with', 'Fill the case with baking beans and beat the egg.', ['egg = egg']],
    ['it is a verb', 'Cream the butter and season the leek.', ['butter = butter', 'leek = leek']],
    [
      'it is a color or a shape',
      'Roll the butter into pea-sized balls until honey-colored.',
      ['butter = butter', 'pea (aside)', 'balls (made)', 'honey (aside)'],
    ],
    [
      'it names a mixture',
      'Add the leek mixture to the egg.',
      ['leek = leek', 'mixture (made)', 'egg = egg'],
    ],
  ])('%s', (_, step, expected) => {
    expect(means(['1 egg', '1 leek', '2 tablespoons butter'], step)).toEqual(expected);
  });

  it('it is a verb and a use at once: flouring a board uses the flour', () => {
    expect(means(['2 cups flour', '1 egg'], 'Flour the board.')).toEqual(['Flour = flour']);
  });
});

describe('a group takes', () => {
  const baking = ['2 cups flour', '1 teaspoon baking powder', '1/2 teaspoon salt', '1 cup milk', '2 eggs'];

  it('the dry ingredients', () => {
    expect(means(baking, 'Whisk the dry ingredients.')).toEqual([
      'dry ingredients = flour, baking powder, salt',
    ]);
  });

  it('what no earlier step has used, when it says "remaining ingredients"', () => {
    expect(
      meanings(dish(baking, ['Whisk the flour with the salt.', 'Stir in the remaining ingredients.'])),
    ).toEqual(['flour = flour', 'salt = salt', 'remaining ingredients = baking powder, milk, egg']);
  });

  it('everything but what is excepted', () => {
    expect(
      means(
        ['1 cup rice', '2 cups stock', '1 bunch parsley'],
        'Boil all the ingredients except the parsley until soft.',
      ),
    ).toEqual(['all the ingredients = rice, stock', 'parsley = parsley']);
  });

  it('all the kinds that its component lists', () => {
    const read = readManuscript([
      {
        path: 'loaf.md',
        text: '# Seed Loaf\n\nMakes 1\n\n## For the seeds\n\n- 40 g linseed\n- 30 g sunflower seeds\n\n## For the bread\n\n- 500 g flour\n- soaked seeds\n\n## Method\n\n### Seeds\n\n1. Soak the seeds overnight.\n\n### Bread\n\n1. Knead the flour with the soaked seeds.\n',
      },
    ]).dishes[0]!;
    expect(meanings(read)[0]).toBe('seeds = linseed, sunflower seed');
  });

  it('nothing where its members are only announced', () => {
    expect(means(['1 leek', '1 onion'], 'Stir the leek while adding the following ingredients.')).toEqual([
      'leek = leek',
      'ingredients (made)',
    ]);
  });

  it('what sweetens, when nothing else is named', () => {
    expect(means(['2 cups tea', '1 tablespoon honey'], 'Pour the tea and sweeten to taste.')).toEqual([
      'tea = tea',
      'sweeten = honey',
    ]);
  });

  it('the spices', () => {
    expect(
      means(['1 onion', '1 teaspoon ground cumin', '1 teaspoon turmeric'], 'Stir the spices into the onion.'),
    ).toEqual(['spices = ground cumin, turmeric', 'onion = onion']);
  });
});

describe('what a recipe makes', () => {
  const meat = ['1 pound pork belly', '1 tablespoon oil'];

  it('is not asked for when a step names a piece of what is listed', () => {
    expect(means(meat, 'Brown the pork cubes in the oil.')).toEqual(['pork cubes = pork belly', 'oil = oil']);
  });

  it('is the broth, once listed water has gone in with the meat', () => {
    const read = dish(
      ['1 chicken', '8 cups water'],
      ['Simmer the chicken in the water until tender.', 'Strain the broth.'],
    );
    expect(meanings(read).at(-1)).toBe('broth (made)');
  });

  it('is the bread that is kneaded and sliced, but not the butter that is melted', () => {
    expect(means(['3 cups flour', '1 cup water'], 'Knead the bread, and melt the butter.')).toEqual([
      'bread (made)',
      'butter = ?',
    ]);
  });
});

describe('what the steps themselves name is not asked for', () => {
  const pantry = ['1 cup yogurt', '1 lemon', '2 tablespoons olive oil', '2 tablespoons hot sauce'];

  it.each<[string, string[], string]>([
    ['a sauce called after what is listed', ['Spoon the yogurt sauce over the lemon.'], 'sauce (made)'],
    ['a dressing called after two of them', ['Top with the lemon herb vinaigrette.'], 'vinaigrette (made)'],
    [
      'a name given where it is made',
      ['Prepare hot sauce by stirring the oil and the lemon.', 'Drizzle the hot sauce over all.'],
      'hot sauce (made)',
    ],
    [
      'what a food is beaten into',
      ['Beat the yogurt with the oil into whipped cream.'],
      'whipped cream (made)',
    ],
  ])('%s', (_, steps, expected) => {
    expect(meanings(dish(pantry, steps))).toContain(expected);
  });

  it.each<[string, string, string]>([
    ['a sauce that nothing listed could make', 'Top the lemon with tomato sauce.', 'tomato sauce = ?'],
    ['what something else is stirred into', 'Fold the yogurt into the whipped cream.', 'whipped cream = ?'],
  ])('but %s is', (_, step, expected) => {
    expect(means(pantry, step)).toContain(expected);
  });
});

describe('what is left to the cook', () => {
  const asked = (step: string): boolean[] =>
    dish(['1 leek'], [step])
      .mentions.filter(({ listings }) => listings.length === 0)
      .map(({ optional, role }) => optional || role === 'aside');

  it('is a choice of what to serve it with', () => {
    expect(asked('Serve the leek with pasta or on a toasted roll.')).toEqual([true, true]);
  });
  it('is what its sentence has left open before', () => {
    expect(asked('Serve it with syrup if you like, and warm the plate before adding syrup.')).toEqual([
      true,
      true,
    ]);
  });
  it('is not the one thing that it is served with', () => {
    expect(asked('Serve the leek with pasta.')).toEqual([false]);
  });
});

describe('a slip of the pen', () => {
  it('in the last word of the list is still the food', () => {
    expect(means(['2 sweet pototoes'], 'Chop the potatoes.')).toEqual(['potatoes = sweet pototoe']);
  });
  it('or in the method, of two letters in the wrong order', () => {
    expect(means(['1 bunch parsley'], 'Chop the parsely.')).toEqual(['parsely = parsley']);
  });
  it('holds for the other names of the food', () => {
    expect(
      meanings(
        dish(
          ['1 teaspoon red paper flakes', '1 leek'],
          ['Add the red pepper flakes.', 'Add more pepper flakes.'],
        ),
      ),
    ).toEqual(['red pepper flakes = red paper flake', 'pepper flakes = red paper flake']);
  });
});

describe('a word of two halves', () => {
  it('orders, and names no roast', () => {
    expect(means(['1 cup almonds'], 'Place the almonds in a pan and dry roast them until golden.')).toEqual([
      'almonds = almond',
    ]);
  });
  it('is a tool where the step works with it', () => {
    expect(means(['4 veal cutlets'], 'Beat the veal with a meat tenderizer.')).toEqual([
      'veal = veal cutlet',
    ]);
  });
});

describe('an amount in the method', () => {
  it('belongs to the food behind it, over "of the" and its adjectives', () => {
    const [oil] = dish(
      ['3 tablespoons olive oil', '1 leek'],
      ['Warm 1 tablespoon of the olive oil.'],
    ).mentions;
    expect([oil!.measure?.amount.low.toFraction(), oil!.measure?.unit]).toEqual(['1', 'tablespoon']);
  });

  it('is not carried over a comma to the next food', () => {
    const mentions = dish(['2 eggs', '1 cup milk'], ['Beat 2 eggs, milk and nothing else.']).mentions;
    expect(mentions.map((mention) => mention.measure?.amount.low.toFraction() ?? null)).toEqual(['2', null]);
  });
});
