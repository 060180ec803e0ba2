/** Whose the amounts of a line are, and what is said beside them; every expectation is the whole line. */
import { describe, expect, test } from 'vitest';
import { readListing } from '../../src/grammar/listing.js';
import { shownListing } from './notation.js';

const reads = (table: Record<string, Record<string, unknown>>) => {
  test.each(Object.entries(table))('%s', (text, line) =>
    expect(shownListing(readListing(text))).toEqual(line),
  );
};

describe('what a food is for, or wanted more of for, is no second food', () => {
  reads({
    'Chopped chervil, to garnish': {
      foods: ['chervil (chervil)'],
      states: ['Chopped'],
      purpose: 'to garnish',
    },
    '2 tbsp dill, for garnish': {
      measures: ['[2 tablespoon]'],
      foods: ['dill (dill)'],
      purpose: 'for garnish',
    },
    '2 tbsp dill, plus more for garnish': {
      measures: ['[2 tablespoon]'],
      foods: ['dill (dill)'],
      plusMore: 'plus more for garnish',
    },
    '4 chives, plus extra to garnish': {
      measures: ['[4]'],
      foods: ['chives (chive)'],
      plusMore: 'plus extra to garnish',
    },
    'salt, pepper and oil to taste': {
      foods: ['salt (salt)', 'and pepper (black pepper)', 'and oil (oil)'],
      toTaste: true,
    },
    'Lemon slices, mint and basil, to garnish': {
      foods: ['Lemon slices (lemon slice)', 'and mint (mint)', 'and basil (basil)'],
      purpose: 'to garnish',
    },
    '1/4 cup flour (30 g), plus 2 tablespoons for dusting': {
      measures: ['[1/4 cup = [30 gram]]'],
      foods: ['flour (flour)'],
      plusMore: 'plus 2 tablespoons for dusting',
    },
    '3 tablespoons oil plus 1 tablespoon for frying': {
      measures: ['[3 tablespoon]'],
      foods: ['oil (oil)'],
      plusMore: 'plus 1 tablespoon for frying',
    },
    '1 stick butter, plus 2 tablespoons melted for brushing': {
      measures: ['[1 stick]'],
      foods: ['butter (butter)'],
      plusMore: 'plus 2 tablespoons melted for brushing',
    },
    '1 cup sugar, plus 2 tablespoons': {
      measures: ['[1 cup + [2 tablespoon]]'],
      foods: ['sugar (sugar)'],
    },
  });
});

describe('pepper that is not counted is the spice', () => {
  const meant = (text: string) => readListing(text).foods.map((food) => [food.name, food.row?.name]);
  test.each([
    'Pepper',
    'pepper, to taste',
    '1/2 teaspoon pepper',
    'A pinch of pepper',
    'freshly ground pepper',
    '5 g pepper',
    'coarsely ground pepper',
  ])('%s', (text) => expect(meant(text)).toEqual([['pepper', 'black pepper']]));
  test.each([
    '1 pepper',
    '2 peppers',
    'half a pepper',
    '1 large pepper, seeded',
    '1 cup chopped pepper',
    '300 g pepper',
    'Peppers',
    'pepper, seeded and diced',
  ])('%s is the vegetable', (text) => expect(meant(text)).toEqual([['pepper', 'pepper']]));
  test('pepper counted beside other vegetables is one of them', () => {
    expect(meant('1 onion and 1 pepper')).toEqual([
      ['onion', 'onion'],
      ['pepper', 'pepper'],
    ]);
  });
  test.each([
    ['1 red pepper', 'red pepper', 'red pepper'],
    ['1/4 tsp white pepper', 'white pepper', 'white pepper'],
    ['1 pound ground beef', 'ground beef', 'ground beef'],
    ['1 cup brown sugar', 'brown sugar', 'brown sugar'],
  ])('%s keeps its own name', (text, name, row) => expect(meant(text)).toEqual([[name, row]]));
});

describe('one amount may be of each of several foods', () => {
  reads({
    '1 tsp each: cumin, paprika, turmeric': {
      measures: ['[1 teaspoon]'],
      foods: ['cumin (cumin)', 'and paprika [1 teaspoon] (paprika)', 'and turmeric [1 teaspoon] (turmeric)'],
    },
    '2 tbsp each butter and flour': {
      measures: ['[2 tablespoon]'],
      foods: ['butter (butter)', 'and flour [2 tablespoon] (flour)'],
    },
    'Pinch each of salt and sugar': {
      measures: ['[1 pinch]'],
      foods: ['salt (salt)', 'and sugar [1 pinch] (sugar)'],
    },
    'A few pinches each – mace; allspice; cloves': {
      foods: ['mace (mace)', 'and allspice (allspice)', 'and cloves (clove)'],
    },
    'salt and sugar, 1 tsp each': {
      measures: ['[1 teaspoon]'],
      foods: ['salt (salt)', 'and sugar [1 teaspoon] (sugar)'],
    },
  });
});

describe('a food further on in a line may have an amount of its own', () => {
  reads({
    'salt, white pepper and a grating of nutmeg': {
      foods: ['salt (salt)', 'and white pepper (white pepper)', 'and nutmeg [1 grating] (nutmeg)'],
    },
    'Salt, paprika, and a pinch of cayenne': {
      foods: ['Salt (salt)', 'and paprika (paprika)', 'and cayenne [1 pinch] (cayenne)'],
    },
    'salt, pepper, 1/4 cup oil': {
      foods: ['salt (salt)', 'and pepper (black pepper)', 'and oil [1/4 cup] (oil)'],
    },
    'Generous grating of nutmeg': { measures: ['[generous 1 grating]'], foods: ['nutmeg (nutmeg)'] },
  });
});

describe('an amount less another is their difference', () => {
  reads({
    '1 cup minus 1 tablespoon flour': { measures: ['[15/16 cup]'], foods: ['flour (flour)'] },
    '1 cup flour less 2 tablespoons': { measures: ['[7/8 cup]'], foods: ['flour (flour)'] },
  });
});

describe('a comma or a plus inside an amount adds, another unit of its size says the same', () => {
  reads({
    '2 pounds, 3 ounces clams': { measures: ['[2 pound + [3 ounce]]'], foods: ['clams (clam)'] },
    '2 lb, 900 g carrots': { measures: ['[2 pound = [900 gram]]'], foods: ['carrots (carrot)'] },
    '2 + 1/2 cups flour': { measures: ['[5/2 cup]'], foods: ['flour (flour)'] },
    '1 cup sugar (200 grams, or 7 ounces)': {
      measures: ['[1 cup = [200 gram] = [7 ounce]]'],
      foods: ['sugar (sugar)'],
    },
    '2 sticks butter (1 cup, or 226 g)': {
      measures: ['[2 stick = [1 cup] = [226 gram]]'],
      foods: ['butter (butter)'],
    },
    '1 cup milk (or 1 cup water)': {
      measures: ['[1 cup]'],
      foods: ['milk (milk)', 'or water [1 cup] (water)'],
    },
  });
});

describe('a size belongs to the amount before it, and the other amount is an alternative', () => {
  reads({
    '3 large or 4 small zucchini': {
      measures: ['[3]'],
      foods: ['zucchini (zucchini)', 'or zucchini [4] (zucchini)'],
      size: 'large',
    },
    '4 large/6 medium tomatoes, sliced': {
      measures: ['[4]'],
      foods: ['tomatoes (tomato)', 'or tomatoes [6] (tomato)'],
      size: 'large',
      preparation: ['sliced'],
    },
  });
});

describe('a total is of all the pieces, a weight "each" is of one', () => {
  reads({
    '2 racks ribs (about 5 pounds total)': {
      measures: ['[2 rack = [about 5 pound]]'],
      foods: ['ribs (rib)'],
    },
    '3 cans tomatoes (1.2 kg in all)': {
      measures: ['[3 can = [6/5 kilogram]]'],
      foods: ['tomatoes (tomato)'],
    },
    '4 pork chops, each about 8 ounces and 1 inch thick': {
      measures: ['[4 of [about 8 ounce]]'],
      foods: ['pork chops (pork chop)'],
      dimensions: ['[1 inch]'],
    },
    '4 pork chops, about 8 ounces each and 1 inch thick': {
      measures: ['[4 of [about 8 ounce]]'],
      foods: ['pork chops (pork chop)'],
      dimensions: ['[1 inch]'],
    },
  });
});

describe('a pack is known by its unit, with its size before, after or inside', () => {
  reads({
    '1 (8 oz; 227 g) package cream cheese': {
      measures: ['[1 packet of [8 ounce = [227 gram]]]'],
      foods: ['cream cheese (cream cheese)'],
    },
    'half a 400 g tin of beans': { measures: ['[1/2 can of [400 gram]]'], foods: ['beans (bean)'] },
    '320g sheet puff pastry': { measures: ['[1 sheet of [320 gram]]'], foods: ['puff pastry (puff pastry)'] },
    '200g block feta': { measures: ['[1 block of [200 gram]]'], foods: ['feta (feta)'] },
    '125g ball mozzarella': {
      measures: ['[1 ball of [125 gram]]'],
      foods: ['mozzarella (mozzarella cheese)'],
    },
    '200 g slices of ham': { measures: ['[200 gram]'], foods: ['slices of ham (ham)'] },
    '150 g leaf spinach': { measures: ['[150 gram]'], foods: ['leaf spinach (spinach)'] },
    '1 bar (100 g) chocolate': { measures: ['[1 bar of [100 gram]]'], foods: ['chocolate (chocolate)'] },
    '1 env. gelatin': { measures: ['[1 packet]'], foods: ['gelatin (gelatin)'] },
    '3 wide strips lemon zest': {
      measures: ['[3 strip]'],
      foods: ['lemon zest (lemon zest)'],
      states: ['wide'],
    },
  });
});

describe('a length before a piece is the size of that one piece', () => {
  reads({
    '5 cm cinnamon stick': {
      measures: ['[1 stick]'],
      foods: ['cinnamon (cinnamon)'],
      dimensions: ['[5 centimeter]'],
    },
    '1½-inch knob ginger': { measures: ['[1 knob]'], foods: ['ginger (ginger)'], dimensions: ['[3/2 inch]'] },
    '1-inch knob of ginger': { measures: ['[1 knob]'], foods: ['ginger (ginger)'], dimensions: ['[1 inch]'] },
    '6 x 15 cm tortillas': {
      measures: ['[6]'],
      foods: ['tortillas (tortilla)'],
      dimensions: ['[15 centimeter]'],
    },
    '9 x 13 inch puff pastry': {
      foods: ['puff pastry (puff pastry)'],
      dimensions: ['[9 inch x 13 inch]'],
    },
  });
});

describe('a part of a food is measured by the food it comes from', () => {
  reads({
    'Seeds of 1 vanilla bean': { measures: ['[1]'], foods: ['vanilla bean seed (vanilla bean)'] },
    'Leaves from 3 sprigs thyme': { measures: ['[3 sprig]'], foods: ['thyme leaf (thyme)'] },
    'Leaves of 1 bunch parsley': { measures: ['[1 bunch]'], foods: ['parsley leaf (parsley)'] },
    'Kernels from 4 ears corn': { measures: ['[4 ear]'], foods: ['corn kernel (corn)'] },
    '1 tbsp sesame seeds': { measures: ['[1 tablespoon]'], foods: ['sesame seeds (sesame seed)'] },
    'cucumber, rind removed': { foods: ['cucumber (cucumber)'], preparation: ['rind removed'] },
  });
});

describe('what is done to a food may be said of a part of it', () => {
  reads({
    '1 can coconut milk, shaken': {
      measures: ['[1 can]'],
      foods: ['coconut milk (coconut milk)'],
      preparation: ['shaken'],
    },
    '1 bunch asparagus, woody ends snapped off': {
      measures: ['[1 bunch]'],
      foods: ['asparagus (asparagus)'],
      preparation: ['woody ends snapped off'],
    },
  });
});

describe('a picture before a line is passed over', () => {
  reads({
    '🧄 2 cloves garlic': { measures: ['[2 clove]'], foods: ['garlic (garlic)'] },
    '🥚2 eggs': { measures: ['[2]'], foods: ['eggs (egg)'] },
  });
});
