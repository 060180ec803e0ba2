/** What is understood of a line of an ingredient list; every expectation is the whole line. */
import { describe, expect, test } from 'vitest';
import { readListing } from '../../src/grammar/listing.js';
import { shownListing } from './notation.js';

const reads = (table: Record<string, Record<string, unknown>>) => {
  test.each(Object.entries(table))('%s', (text, line) =>
    expect(shownListing(readListing(text))).toEqual(line),
  );
};

describe('a line names an amount, a food, and what is done to it', () => {
  reads({
    '1½ cups flour': { measures: ['[3/2 cup]'], foods: ['flour (flour)'] },
    '1 large egg, beaten': {
      measures: ['[1]'],
      foods: ['egg (egg)'],
      size: 'large',
      preparation: ['beaten'],
    },
    '2 tbsp finely chopped parsley': {
      measures: ['[2 tablespoon]'],
      foods: ['parsley (parsley)'],
      states: ['finely chopped'],
    },
    '1 cup walnuts, chopped': {
      measures: ['[1 cup]'],
      foods: ['walnuts (walnut)'],
      preparation: ['chopped'],
    },
    '1 cup chopped walnuts': { measures: ['[1 cup]'], foods: ['walnuts (walnut)'], states: ['chopped'] },
    '8 bone-in, skin-on chicken thighs': {
      measures: ['[8]'],
      foods: ['chicken thighs (chicken thigh)'],
      states: ['bone-in', 'skin-on'],
    },
    '2 (14½-ounce) cans chickpeas, drained and rinsed': {
      measures: ['[2 can of [29/2 ounce]]'],
      foods: ['chickpeas (chickpea)'],
      preparation: ['drained and rinsed'],
    },
    '2 medium carrots, cut into 1 cm cubes': {
      measures: ['[2]'],
      foods: ['carrots (carrot)'],
      dimensions: ['[1 centimeter]'],
      size: 'medium',
      preparation: ['cut into 1 cm cubes'],
    },
    '1 onion (chopped)': { measures: ['[1]'], foods: ['onion (onion)'], preparation: ['chopped'] },
    '1 heaping cup of blueberries': { measures: ['[heaped 1 cup]'], foods: ['blueberries (blueberry)'] },
    'Pinch of salt': { measures: ['[1 pinch]'], foods: ['salt (salt)'] },
    'a lemon': { measures: ['[1]'], foods: ['lemon (lemon)'] },
    '5 cloves': { measures: ['[5]'], foods: ['cloves (clove)'] },
    '4 garlic cloves, minced': {
      measures: ['[4 clove]'],
      foods: ['garlic (garlic)'],
      preparation: ['minced'],
    },
    '4 thinly cut slices of ham': { measures: ['[4 slice]'], foods: ['ham (ham)'], states: ['thinly cut'] },
    'a 2-inch piece of ginger, grated': {
      measures: ['[1 piece]'],
      foods: ['ginger (ginger)'],
      dimensions: ['[2 inch]'],
      preparation: ['grated'],
    },
  });
});

describe('the amount may stand after the food', () => {
  const flour = { measures: ['[300 gram]'], foods: ['flour (flour)'] };
  reads({
    'flour, 300g': flour,
    'flour: 300 g': flour,
    'flour - 300g': flour,
    'flour (300 g)': flour,
    'flour\t300 g': flour,
    'flour | 300 g': flour,
    '300 g\tflour': flour,
    '300 g | flour': flour,
    'flour ~300 g': { measures: ['[about 300 gram]'], foods: ['flour (flour)'] },
    'Star anise, 2': { measures: ['[2]'], foods: ['Star anise (star anise)'] },
  });
});

describe('a state that makes another food of it stays in its name', () => {
  reads({
    '1 pound ground beef': { measures: ['[1 pound]'], foods: ['ground beef (ground beef)'] },
    '200 g smoked salmon': { measures: ['[200 gram]'], foods: ['smoked salmon (smoked salmon)'] },
    '1 cup brown sugar': { measures: ['[1 cup]'], foods: ['brown sugar (brown sugar)'] },
    '1 cup packed brown sugar': {
      measures: ['[1 cup]'],
      foods: ['brown sugar (brown sugar)'],
      states: ['packed'],
    },
  });
});

describe('a name keeps the words that tell one kind from another', () => {
  test.each([
    ['2 Yukon Gold potatoes', 'Yukon Gold potatoes', 'yukon gold potato'],
    ['1 cup unsalted butter, softened', 'unsalted butter', 'unsalted butter'],
    ['2 tbsp extra-virgin olive oil', 'extra-virgin olive oil', 'extra-virgin olive oil'],
    ['3 tbsp Sandmill Chili Oil', 'Sandmill Chili Oil', 'sandmill chili oil'],
    ['Chorizo Sausage(s)', 'Chorizo Sausage(s)', 'chorizo sausage'],
  ])('%s', (text, written, name) => {
    expect(readListing(text).foods.map((food) => [food.text, food.name])).toEqual([[written, name]]);
  });
  test('a food that the larder does not know is still the food', () => {
    expect(shownListing(readListing('2 cups shredded gribblewort'))).toEqual({
      measures: ['[2 cup]'],
      foods: ['gribblewort (?)'],
      states: ['shredded'],
    });
  });
});

describe('several foods in a line are told apart, and how they are joined', () => {
  reads({
    'salt and pepper': { foods: ['salt (salt)', 'and pepper (black pepper)'] },
    'Onion, celery, carrot and garlic': {
      foods: ['Onion (onion)', 'and celery (celery)', 'and carrot (carrot)', 'and garlic (garlic)'],
    },
    'butter or lard': { foods: ['butter (butter)', 'or lard (lard)'] },
    'milk, or cold water': { foods: ['milk (milk)', 'or water (water)'], states: ['cold'] },
    '2 Tbsp maple syrup, agave nectar, or honey': {
      measures: ['[2 tablespoon]'],
      foods: ['maple syrup (maple syrup)', 'or agave nectar (agave nectar)', 'or honey (honey)'],
    },
    '2 tablespoons vegetable or canola oil': {
      measures: ['[2 tablespoon]'],
      foods: ['vegetable oil (vegetable oil)', 'or canola oil (canola oil)'],
    },
    'onion/garlic powder': { foods: ['onion powder (onion powder)', 'or garlic powder (garlic powder)'] },
    'black (or green) tea': { foods: ['black tea (black tea)', 'or green tea (green tea)'] },
    'Thyme, rosemary and some bay leaves': {
      foods: ['Thyme (thyme)', 'and rosemary (rosemary)', 'and bay leaves (bay leaf)'],
    },
    '1 cup half-and-half': { measures: ['[1 cup]'], foods: ['half-and-half (half-and-half)'] },
    '3 lb bone-in chicken thighs, or 1½ pounds boneless': {
      measures: ['[3 pound]'],
      foods: ['chicken thighs (chicken thigh)', 'or chicken thighs [3/2 pound] (chicken thigh)'],
      states: ['bone-in', 'boneless'],
    },
    '2 tbsp ketchup or 3 tbsp honey': {
      measures: ['[2 tablespoon]'],
      foods: ['ketchup (ketchup)', 'or honey [3 tablespoon] (honey)'],
    },
  });
});

describe('a part that is asked for is the form of the food', () => {
  reads({
    'juice of 2 limes': { measures: ['[2]'], foods: ['limes juice (lime)'] },
    'the juice of half a lemon': { measures: ['[1/2]'], foods: ['lemon juice (lemon)'] },
    '2 limes, juiced': { measures: ['[2]'], foods: ['limes juice (lime)'], preparation: ['juiced'] },
    'Finely grated zest and juice of 1 lemon': {
      measures: ['[1]'],
      foods: ['lemon zest (lemon)', 'and lemon juice (lemon)'],
    },
    'The whites only of six eggs': { measures: ['[6]'], foods: ['eggs white (egg)'] },
  });
});

describe('what the cook is free to do is told apart from the food', () => {
  reads({
    'Parsley (optional)': { foods: ['Parsley (parsley)'], optional: true },
    'Salt, to taste': { foods: ['Salt (salt)'], toTaste: true },
    '1 cup butter, at room temperature, divided': {
      measures: ['[1 cup]'],
      foods: ['butter (butter)'],
      preparation: ['at room temperature'],
      divided: true,
    },
    'Water, as needed': { foods: ['Water (water)'], asNeeded: true },
    '2 tablespoons flour, plus more for dusting': {
      measures: ['[2 tablespoon]'],
      foods: ['flour (flour)'],
      plusMore: 'plus more for dusting',
    },
    '1 cup flour, plus 2 tablespoons for the pan': {
      measures: ['[1 cup]'],
      foods: ['flour (flour)'],
      plusMore: 'plus 2 tablespoons for the pan',
    },
    '3 cups flour, plus more as needed': {
      measures: ['[3 cup]'],
      foods: ['flour (flour)'],
      plusMore: 'plus more as needed',
    },
    'Oil for frying the chicken': { foods: ['Oil (oil)'], purpose: 'for frying the chicken' },
    'Lemon wedges, to serve': { foods: ['Lemon wedges (lemon wedge)'], purpose: 'to serve' },
    '(Optional) a bottle of stout or porter for more depth.': {
      measures: ['[1 bottle]'],
      foods: ['stout (stout)', 'or porter (porter)'],
      optional: true,
      purpose: 'for more depth',
    },
  });
});

describe('the same said twice belongs to the measure, the size of a piece to the piece', () => {
  reads({
    '2 ripe bananas (250 g/9 oz peeled)': {
      measures: ['[2 = [250 gram = [9 ounce]]]'],
      foods: ['bananas (banana)'],
      states: ['ripe'],
      preparation: ['peeled'],
    },
    '4 chicken breasts (about 6 oz each)': {
      measures: ['[4 of [about 6 ounce]]'],
      foods: ['chicken breasts (chicken breast)'],
    },
    '8 tablespoons (1 stick; 113 g) cold butter': {
      measures: ['[8 tablespoon = [1 stick] = [113 gram]]'],
      foods: ['butter (butter)'],
      states: ['cold'],
    },
  });
});

describe('comments are kept aside, marks of lists are passed over', () => {
  reads({
    '100 g grain of choice (e.g. rye, spelt)': {
      measures: ['[100 gram]'],
      foods: ['grain (grain)'],
      asides: ['of choice', 'e.g. rye', 'spelt'],
    },
    '1 tbsp soy sauce, preferably dark': {
      measures: ['[1 tablespoon]'],
      foods: ['soy sauce (soy sauce)'],
      asides: ['preferably dark'],
    },
    'Seasoning: salt and pepper': {
      foods: ['salt (salt)', 'and pepper (black pepper)'],
      asides: ['Seasoning'],
    },
    '☐ [ ] ~2 cups rice*': { measures: ['[about 2 cup]'], foods: ['rice (rice)'] },
    '': {},
  });
  test('what is not understood is left unread', () => {
    expect(readListing('1 egg, of a deep colour').unread.map(({ text }) => text)).toEqual([
      'of a deep colour',
    ]);
  });
});

test('every phrase and food knows its place in the line', () => {
  const text = '2 large eggs, lightly  beaten (optional)';
  const line = readListing(text);
  const at = (one: { start: number; end: number }) => text.slice(one.start, one.end);
  expect(line.measures.map(at)).toEqual(['2']);
  expect(line.foods.map(at)).toEqual(['eggs']);
  expect(line.size && at(line.size)).toBe('large');
  expect(line.preparation.map(at)).toEqual(['lightly  beaten']);
  expect(line.preparation.map((phrase) => phrase.text)).toEqual(['lightly beaten']);
});
