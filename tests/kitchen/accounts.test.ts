/** What the method takes of each listing, and how that compares with what is listed. */
import { describe, expect, it } from 'vitest';
import { balanceOf, undividedParts } from '../../src/kitchen/balance.js';
import { dish } from './dishes.js';

/** How each use of the first listing takes it, with its words. */
function takings(listing: string, steps: string[]): string[] {
  const [account] = dish([listing, '4 slices bread', '1 onion'], steps).accounts;
  return account!.takings.map(({ how, mention }) => `${how}: ${mention.text}`);
}

describe('a use takes', () => {
  it.each<[string, string, string[], string[]]>([
    ['an amount', '3 tablespoons olive oil', ['Heat 1 tablespoon of the oil.'], ['amount: oil']],
    ['a count', '6 eggs', ['Beat 4 of the eggs.'], ['amount: eggs']],
    ['a share', '1 cup butter', ['Melt half the butter.'], ['share: butter']],
    [
      'what is left',
      '1 cup stock',
      ['Add 1/2 cup of the stock.', 'Add the remaining stock.'],
      ['amount: stock', 'rest: stock'],
    ],
    [
      'what was reserved',
      '1 cup stock',
      ['Add 1/2 cup of the stock.', 'Pour in the reserved stock.'],
      ['amount: stock', 'rest: stock'],
    ],
    ['all but an amount', '2 cups stock', ['Pour in all but 1/4 cup of the stock.'], ['but: stock']],
    [
      'more than was listed',
      '1 cup stock',
      ['Add the stock.', 'Add more stock.'],
      ['some: stock', 'extra: stock'],
    ],
    [
      'nothing where it only says when to stop',
      '1 cup lentils',
      ['Add the lentils.', 'Simmer until the lentils are soft.'],
      ['some: lentils'],
    ],
    [
      'nothing where something else goes into it',
      '2 leeks',
      ['Fry the leeks.', 'Add the onion to the leeks.'],
      ['some: leeks'],
    ],
    [
      'nothing out of the pot that it went into',
      '4 cups stock',
      ['Pour the stock into a medium pot.', 'Add 1 cup stock from the pot to the rice.'],
      ['some: stock'],
    ],
    [
      'nothing where the rest is what was reserved',
      '1/3 cup oil',
      ['Warm the oil.', 'Strain, and reserve the oil.', 'Whisk in the remaining oil.'],
      ['some: oil'],
    ],
    ['nothing as a pinch', '1 teaspoon salt', ['Add the salt.', 'Add a pinch of salt.'], ['some: salt']],
    [
      'nothing when it is first made ready',
      '2 leeks',
      ['Wash and slice the leeks.', 'Fry the leeks.'],
      ['some: leeks'],
    ],
  ])('%s', (_, listing, steps, expected) => {
    expect(takings(listing, steps)).toEqual(expected);
  });

  it('what is left of two foods, where one word speaks for both', () => {
    const { accounts } = dish(
      ['3 teaspoons soy sauce', '1/4 cup lime juice'],
      [
        'Mix 2 teaspoons of the soy sauce with 2 tablespoons of the lime juice.',
        'Add the remaining soy sauce and lime juice.',
      ],
    );
    expect(accounts.map(({ takings: all }) => all.map(({ how }) => how))).toEqual([
      ['amount', 'rest'],
      ['amount', 'rest'],
    ]);
  });
});

/** What the uses of a listing come to beside what is listed: over, even, under, or null where it cannot be said. */
function balance(listing: string, steps: string[]): string | null {
  const [account] = dish([listing, '4 slices bread'], steps).accounts;
  const found = balanceOf(account!, null);
  if (found === null) return null;
  if (found.over !== null) return 'over';
  return found.used.high.lt(found.listed.low) ? 'under' : 'even';
}

describe('the uses of a listing come to', () => {
  it.each<[string, string, string[], string | null]>([
    [
      'a cup, in spoons',
      '1 cup sugar',
      ['Add 8 tablespoons of the sugar.', 'Add 1/2 cup of the sugar.'],
      'even',
    ],
    [
      'a pound, in ounces',
      '1 pound butter',
      ['Melt 12 ounces of the butter.', 'Add 4 ounces of the butter.'],
      'even',
    ],
    ['more than a cup', '1 cup sugar', ['Add 3/4 cup of the sugar.', 'Add 1/2 cup of the sugar.'], 'over'],
    ['less than a cup', '1 cup sugar', ['Add 1/4 cup of the sugar.', 'Add 1/2 cup of the sugar.'], 'under'],
    [
      'thirds that make a whole',
      '1 cup sugar',
      ['Add one third of the sugar.', 'Add two thirds of the sugar.'],
      'even',
    ],
    [
      'a cup and what is added to it',
      '1 cup plus 2 tablespoons sugar',
      ['Add 1 cup of the sugar.', 'Add 2 tablespoons of the sugar.'],
      'even',
    ],
    [
      'all, with what was held back',
      '2 cups stock',
      ['Add all but 1/2 cup of the stock.', 'Add 1/2 cup of the stock.'],
      'even',
    ],
    [
      'nothing that can be said, a slice at a time',
      '12 slices ham',
      ['Lay 2 slices of the ham on each piece of bread.'],
      null,
    ],
    [
      'nothing that can be said in another kind of unit',
      '1 cup sugar',
      ['Add 100 grams of the sugar.'],
      null,
    ],
    [
      'what the weight in parentheses says',
      '1 cup (200 g) sugar',
      ['Add 150 grams of the sugar.', 'Add 50 grams of the sugar.'],
      'even',
    ],
  ])('%s', (_, listing, steps, expected) => {
    expect(balance(listing, steps)).toBe(expected);
  });
});

describe('a listing is taken in parts', () => {
  const parts = (listing: string, steps: string[]): number =>
    undividedParts(dish([listing, '4 slices bread'], steps).accounts[0]!, null).length;

  it('by an amount and by what is left of it', () => {
    expect(
      parts('3 tablespoons oil', ['Heat 1 tablespoon of the oil.', 'Fry the bread in the remaining oil.']),
    ).toBe(2);
  });
  it('not where it goes in by halves within one step', () => {
    expect(parts('1 cup flour', ['Stir in half of the flour. Stir in the rest of the flour.'])).toBe(0);
  });
  it('not where the whole amount is said again', () => {
    expect(parts('3 tablespoons oil', ['Heat the 3 tablespoons oil.', 'Fry the bread in the oil.'])).toBe(0);
  });
  it('not where one lemon gives its zest and then the rest', () => {
    expect(parts('1 lemon', ['Grate the lemon zest.', 'Add the remaining lemon.', 'Juice the lemon.'])).toBe(
      0,
    );
  });
  it('not where two batches come back together', () => {
    expect(
      parts('2 pounds veal', [
        'Brown half the veal. Brown the remaining veal.',
        'Return the veal to the pan.',
      ]),
    ).toBe(0);
  });
  it('with nothing counted after the rest, nor what only keeps from sticking', () => {
    expect(
      parts('3 tablespoons oil', [
        'Heat 1 tablespoon of the oil.',
        'Fry the bread in the remaining oil.',
        'Scrape it onto an oiled plate.',
      ]),
    ).toBe(2);
  });
  it('where a share of one lemon goes in first', () => {
    expect(parts('1 lemon', ['Squeeze half the lemon.', 'Slice the remaining lemon.'])).toBe(2);
  });
  it('not where the remaining oil is what stands in the pan', () => {
    expect(
      parts('3 tablespoons oil', ['Fry the bread in the oil.', 'Stir flour into the remaining oil.']),
    ).toBe(0);
  });
});
