/** Which recipe a reference means, and which links lead nowhere. */
import { describe, expect, test } from 'vitest';
import { namesOf } from '../../src/kitchen/book-names.js';
import { brokenLinks, followedLinks, referencesIn, referencesOf } from '../../src/kitchen/references.js';
import type { Book } from '../../src/kitchen/types.js';
import { readPage } from '../../src/reading/read.js';

function bookOf(texts: Readonly<Record<string, string>>): Book {
  const read = Object.entries(texts).map(([path, text]) => readPage({ path, text }));
  return {
    pages: read.map(({ page }) => page),
    dishes: read.flatMap(({ dishes }) => dishes),
    unclear: [],
  };
}

const recipe = (title: string, listing: string, end = '') =>
  `# ${title}\n\nServes 4\n\n- 2 cups peas\n- ${listing}\n\n1. Warm the peas until hot, 3 minutes.${end}\n`;

/** The references of a second recipe, as name, sign, page and the titles that it can mean. */
function named(listing: string, end = '') {
  const book = bookOf({
    'jam.md': recipe('Black Plum Jam', '1 tablespoon butter'),
    'toast.md': recipe('Supper Toast', listing, end),
  });
  return referencesIn(book.dishes[1]!, namesOf(book)).map(({ name, sign, page, targets }) => [
    name,
    sign,
    page,
    ...targets.map(({ text }) => text),
  ]);
}

describe('a recipe is referred to', () => {
  test.each([
    ['1 cup Black Plum Jam (page 12)', ['Black Plum Jam', 'page', 12, 'Black Plum Jam']],
    ['1 cup Black Plum Jam (page 000)', ['Black Plum Jam', 'page', null, 'Black Plum Jam']],
    ['1 cup Tomato Chutney, p. XX', ['Tomato Chutney', 'page', null]],
    ['1 cup plum jam, see page 12', ['plum jam', 'page', 12, 'Black Plum Jam']],
    ['1 cup plum jam (recipe follows)', ['plum jam', 'near', null, 'Black Plum Jam']],
    ['½ recipe Black Plum Jam', ['Black Plum Jam', 'recipe', null, 'Black Plum Jam']],
    ['1 batch of Green Tomato Chutney, p. 7', ['Green Tomato Chutney', 'recipe', 7]],
  ])('in the list: %s', (listing, expected) => expect(named(listing)).toEqual([expected]));

  test.each([
    [' See Black Plum Jam.', ['Black Plum Jam', 'see', null, 'Black Plum Jam']],
    [' (See the recipe for plum jam, page 3.)', ['plum jam', 'see', 3, 'Black Plum Jam']],
    [' Serve with the Black Plum Jam.', ['Black Plum Jam', 'capitals', null, 'Black Plum Jam']],
    [' Serve with “Black Plum Jam” (p. 12).', ['Black Plum Jam', 'page', 12, 'Black Plum Jam']],
    [' Spread with the Quince and Black Plum Jam (page 12).', ['Quince and Black Plum Jam', 'page', 12]],
    [' Begin with the Black Plum Jam (page 12).', ['Black Plum Jam', 'page', 12, 'Black Plum Jam']],
    [' For the Black Plum Jam see p. 12.', ['Black Plum Jam', 'page', 12, 'Black Plum Jam']],
  ])('in a step:%s', (end, expected) => expect(named('1 tablespoon butter', end)).toEqual([expected]));
});

test.each([
  ' See to it that nothing burns.',
  ' Stir until you see bubbles.',
  ' See Notes.',
  ' See below.',
  ' (see page 000)',
  ' Stir in the 2 cups.',
])('nothing is referred to in:%s', (end) => expect(named('1 tablespoon butter', end)).toEqual([]));

test('what is no recipe refers too, by names with capitals only', () => {
  const book = bookOf({
    'jam.md': recipe('Black Plum Jam', '1 tablespoon butter'),
    'toast.md': recipe('Supper Toast', '1 cup milk'),
    'index.md': '# Index\n\n- Black Plum Jam, page 12\n- Lock Chutney, page 14\n- plums, page 12\n',
  });
  const outside = referencesOf(book).filter(({ dish }) => dish === null);
  expect(outside.map(({ from, name, page, targets }) => [from.path, name, page, targets.length])).toEqual([
    ['index.md', 'Black Plum Jam', 12, 1],
    ['index.md', 'Lock Chutney', 14, 0],
  ]);
});

test('a link means the recipe of its page, or the one that its heading names', () => {
  const two = `${recipe('Red Jam', '1 cup sugar')}\n${recipe('Blue Jam', '1 cup sugar')}`;
  const book = bookOf({
    'jams.md': two,
    'toast.md': recipe(
      'Supper Toast',
      '1 cup [jam](jams.md#blue-jam)',
      ' See [all](jams.md) or [this](toast.md).',
    ),
  });
  expect([...followedLinks(book)].map(({ title }) => title?.text ?? null)).toEqual([
    'Blue Jam',
    null,
    'Supper Toast',
  ]);
});

test.each([
  ['jam.md', null],
  ['/jam', null],
  ['jam.html', null],
  ['./jam.md#black-plum-jam', null],
  ['#supper-toast', null],
  ['https://example.org/jam.md', null],
  ['../elsewhere/jam.md', null],
  ['picture.jpg', null],
  ['jelly.md', 'file'],
  ['jam.md#red-plum-jam', 'heading'],
])('a link to %s misses %s', (target, misses) => {
  const book = bookOf({
    'jam.md': recipe('Black Plum Jam', '1 tablespoon butter'),
    'toast.md': recipe('Supper Toast', `1 cup [jam](${target})`),
  });
  expect([...brokenLinks(book)].map((broken) => broken.misses)).toEqual(misses === null ? [] : [misses]);
});
