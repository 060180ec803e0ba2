/** What the grammar makes of amounts and measures, wherever they stand. */
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { readText } from '../../src/grammar/text.js';
import { shown } from './notation.js';

const reads = (table: Record<string, string>) => {
  test.each(Object.entries(table))('%s', (text, tree) => expect(shown(readText(text))).toBe(tree));
};

test('a measure is its amount and unit with the place where they stand', () => {
  const one = { low: new Fraction(3, 2), high: new Fraction(3, 2), approximation: null };
  expect(readText('Add 1 1/2 cups flour')).toEqual([
    { kind: 'word', start: 0, end: 3, text: 'Add', key: 'add', hyphenated: false },
    {
      kind: 'measure',
      start: 4,
      end: 14,
      amount: one,
      unit: 'cup',
      plus: [],
      equals: [],
      pack: null,
      share: false,
    },
    { kind: 'word', start: 15, end: 20, text: 'flour', key: 'flour', hyphenated: false },
  ]);
});

describe('a fraction is the same amount in every form in which cooks write it', () => {
  const half = [
    '1 1/2',
    '1-1/2',
    '1½',
    '1 ½',
    '1 1⁄2',
    '1 & 1/2',
    '1 and 1/2',
    '1-½',
    'one and a half',
    '1 and a half',
    '1.5',
    '1,5',
    '3/2',
    '1 - 1/2',
  ];
  test.each(half)('%s cups', (written) => expect(shown(readText(`${written} cups`))).toBe('[3/2 cup]'));
  reads({
    '½ cup': '[1/2 cup]',
    '.5 cup': '[1/2 cup]',
    '2 and 1/4 teaspoons': '[9/4 teaspoon]',
    '1,000 g': '[1000 gram]',
    '1,5 kg': '[3/2 kilogram]',
  });
});

describe('numbers in words count as figures do', () => {
  reads({
    'two cups': '[2 cup]',
    'half a cup': '[1/2 cup]',
    'Half a pound of butter': '[1/2 pound] of butter',
    'a quarter of a pound of sugar': '[1/4 pound] of sugar',
    'three quarters of a cup': '[3/4 cup]',
    'two-thirds cup': '[2/3 cup]',
    'a cup': '[1 cup]',
    'a dozen eggs': '[12] eggs',
    'half a dozen eggs': '[6] eggs',
    'two dozen eggs': '[24] eggs',
    'a couple of eggs': '[2] eggs',
    'twenty-four oysters': '[24] oysters',
    'three ounces and a half of butter': '[7/2 ounce] of butter',
    'Eight table-spoonfuls of sifted flour': '[8 tablespoon] of sifted flour',
    'a salt-spoonful of salt': '[1 spoon] of salt',
  });
});

describe('a range keeps its two ends in the order in which they were written', () => {
  reads({
    '3 to 5 cups': '[3..5 cup]',
    '3–5 cups': '[3..5 cup]',
    '3-5 cups': '[3..5 cup]',
    '3 — 5 cups': '[3..5 cup]',
    'between 3 and 5 cups': '[3..5 cup]',
    '2 or 3 cups': '[2..3 cup]',
    '1½-2 cups': '[3/2..2 cup]',
    'one to two cups': '[1..2 cup]',
    '1/4-1/2 cup': '[1/4..1/2 cup]',
    '5-3 cups': '[5..3 cup]',
    '1 cup to 2 cups': '[1..2 cup]',
    '2 tablespoons to 1/4 cup': '[2..4 tablespoon]',
  });
});

describe('words of approximation belong to the amount', () => {
  reads({
    'about 2 cups': '[about 2 cup]',
    'Around 2 cups': '[about 2 cup]',
    'approx. 2 cups': '[about 2 cup]',
    '~70g of cheese': '[about 70 gram] of cheese',
    'a scant cup': '[scant 1 cup]',
    '1 heaped tsp': '[heaped 1 teaspoon]',
    'a generous pinch': '[generous 1 pinch]',
    'at least 2 cups': '[at-least 2 cup]',
    'up to 2 cups': '[up-to 2 cup]',
    'a little over 2 cups': '[about 2 cup]',
  });
});

describe('units are known by their names and short forms, glued or spaced, with or without a full stop', () => {
  reads({
    '400g': '[400 gram]',
    '½L milk': '[1/2 liter] milk',
    '1½T salt': '[3/2 tablespoon] salt',
    '1 t salt': '[1 teaspoon] salt',
    '2tbsp oil': '[2 tablespoon] oil',
    '2 Tbsp. oil': '[2 tablespoon] oil',
    '2 TBSP oil': '[2 tablespoon] oil',
    '1 lb. butter': '[1 pound] butter',
    '2 fl. oz. rum': '[2 fluid-ounce] rum',
    '1 fluid ounce rum': '[1 fluid-ounce] rum',
    '1 table spoon of honey': '[1 tablespoon] of honey',
    '14-ounce': '[14 ounce]',
    '1 C flour': '[1 cup] flour',
    '2 cup(s) flour': '[2 cup] flour',
    '2–4% salt': '[2..4 percent] salt',
    '2\u00a0cups\tof\nflour': '[2 cup] of \n flour',
    '2\ncups flour': '[2 cup] flour',
    '1 small bunch of parsley': '[1 bunch] of parsley',
    '2 level tablespoons': '[2 tablespoon]',
  });
  test('a full stop that ends the sentence stays a mark', () => {
    expect(shown(readText('Add 2 tbsp. Then stir.'))).toBe('Add [2 tablespoon] . Then stir .');
  });
});

describe('what is added, said again or packed belongs to one measure', () => {
  reads({
    '1 cup plus 2 tablespoons': '[1 cup + [2 tablespoon]]',
    '1 cup + 2 tbsp': '[1 cup + [2 tablespoon]]',
    '1 lb 2 oz': '[1 pound + [2 ounce]]',
    '3 pounds (1.4 kg)': '[3 pound = [7/5 kilogram]]',
    '500 g / 1 lb 2 oz': '[500 gram = [1 pound + [2 ounce]]]',
    '3 tablespoons/~44 milliliters': '[3 tablespoon = [about 44 milliliter]]',
    '24 oz or 700 g': '[24 ounce = [700 gram]]',
    '1-2 cups / 240-480 ml': '[1..2 cup = [240..480 milliliter]]',
    '24-28 oz or 700-800 g': '[24..28 ounce = [700..800 gram]]',
    '7oz [200g]': '[7 ounce = [200 gram]]',
    '1 cup (240 ml) plus 2 tablespoons (30 ml)':
      '[1 cup + [2 tablespoon = [30 milliliter]] = [240 milliliter]]',
    '1 stick (½ cup / 113g) butter': '[1 stick = [1/2 cup = [113 gram]]] butter',
    '2 (14½-ounce) cans': '[2 can of [29/2 ounce]]',
    '1 15 oz can': '[1 can of [15 ounce]]',
    '1 x 400 g tin': '[1 can of [400 gram]]',
    '2 400g tins': '[2 can of [400 gram]]',
    '1 can (10-3/4 ounces)': '[1 can of [43/4 ounce]]',
    'a 14-oz can': '[1 can of [14 ounce]]',
    '400–500 g can': '[1 can of [400..500 gram]]',
    'a 4 to 5 quart pot': 'a [1 container of [4..5 quart]]',
    '2 400g (14oz) cans': '[2 can of [400 gram = [14 ounce]]]',
    '2 x 400g': '[2 of [400 gram]]',
    '4 6-ounce salmon fillets': '[4 of [6 ounce]] salmon fillets',
    '2 (250 g) cups': '[2 cup = [250 gram]]',
  });
});

describe('a share is taken of what is listed, an amount is not', () => {
  reads({
    'half the butter': '[share 1/2] the butter',
    'half of the oil': '[share 1/2] of the oil',
    'a third of the dough': '[share 1/3] of the dough',
    '1/2 of the onions': '[share 1/2] of the onions',
    'two-thirds of the sauce': '[share 2/3] of the sauce',
    'juice of half a lemon': 'juice of [1/2] lemon',
    '1 tablespoon of the oil': '[1 tablespoon] of the oil',
  });
});

describe('a number before a food counts it; before anything else it is only a number', () => {
  reads({
    '2 eggs': '[2] eggs',
    'add 2 large eggs': 'add [2] large eggs',
    'one egg': '[1] egg',
    '2 chicken breasts': '[2] chicken breasts',
    'the 2 remaining garlic cloves': 'the [2 clove] remaining garlic cloves',
    '2 garlic cloves': '[2 clove] garlic cloves',
    'step 3': 'step [3]',
    '4x eggs': '[4] eggs',
  });
  test('eggs are measured, a step is counted', () => {
    expect(readText('2 eggs')[0]!.kind).toBe('measure');
    expect(readText('step 3')[1]!.kind).toBe('count');
  });
});

describe('words that only look like measures stay words', () => {
  reads({
    'you can add salt': 'you can add salt',
    'put 2 in a bowl': 'put [2] in a bowl',
    'in a large bowl': 'in a large bowl',
    'in a bowl of water': 'in [1 bowl] of water',
    'half-and-half': 'half - ~and - ~half',
    'cut in half': 'cut in half',
    'the other half': 'the other half',
    'five-spice powder': 'five - ~spice powder',
    '2% milk': '2% milk',
    '00 flour': '00 flour',
    'the 1st batch': 'the 1st batch',
    'ground beef (90/10)': 'ground beef ( [90] / [10] )',
    'in one bowl': 'in one bowl',
  });
});
