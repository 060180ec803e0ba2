/** How much is asked of kitchen hygiene, by the house style. */
import { expect, it } from 'vitest';
import { type HouseStyle, undecided } from '../../src/manuscript/house-style.js';
import { readManuscript } from '../../src/reading/read.js';

const text = `# Burgers and Wings

Serves 4

- 1 pound ground beef
- 2 pounds chicken wings
- 1 teaspoon salt

1. Shape the beef into 4 patties with your hands.
2. Cut the wings at the joint. Rub the wings with the salt.
3. Wash your hands with soap and water. Cut up the wing tips for stock.
4. Grill the beef until a thermometer reads 160°F, and the wings until a thermometer reads 165°F.
`;

function marks(hygiene: HouseStyle['hygiene'], page = text): string[] {
  const options = { only: ['hand-washing-absent'], style: { ...undecided, hygiene } };
  return readManuscript([{ path: 'wings.md', text: page }], options).marks.map(
    (mark) => `${mark.weight} ${page.slice(mark.span.start, mark.span.end)}`,
  );
}

const unwashed = text.replace('Wash your hands with soap and water. ', '');

it('a book that has decided nothing gets one note, where no hands are ever washed', () => {
  expect(marks('notes')).toEqual([]);
  expect(marks('notes', unwashed)).toEqual(['note beef']);
});

it('a book that asks for the full wording gets a query at every step without it', () => {
  expect(marks('full')).toEqual(['query beef']);
  expect(marks('full', unwashed)).toEqual(['query beef', 'query wings', 'query wing tips']);
});

it('a book that wants none gets none', () => {
  expect(marks('off', unwashed)).toEqual([]);
});
