import { Chalk } from 'chalk';
import { describe, expect, test } from 'vitest';
import { showReport } from '../../src/reports/schema.js';
import { reportShow, showJson } from '../../src/reports/show.js';
import { showText } from '../../src/reports/show-text.js';
import { brothDish } from './fake.js';

const measure = (text: string, low: string, unit: string | null, more: object = {}) => ({
  text,
  low,
  high: low,
  approximation: null,
  unit,
  share: false,
  plus: [],
  equals: [],
  pack: null,
  ...more,
});

describe('a recipe shown as json', () => {
  const [recipe] = reportShow([brothDish()]).recipes;

  test('keeps the contract of the schema', () => {
    expect(showReport.safeParse(JSON.parse(showJson([brothDish()]))).success).toBe(true);
  });
  test('has its title, place and yield', () => {
    expect(recipe).toMatchObject({
      title: 'Charred Leek Broth',
      file: 'soups/leek-broth.md',
      line: 1,
      yield: { text: 'Serves 4', line: 3, amount: { low: '4', high: '4', approximation: null }, of: '' },
    });
  });
  test('has each listing with its line, exact measures and food', () => {
    expect(recipe?.listings.map(({ line, food, measures }) => ({ line, food, measures }))).toEqual([
      { line: 5, food: 'leek', measures: [measure('2', '2', null)] },
      {
        line: 6,
        food: 'cream',
        measures: [measure('1½ cups', '3/2', 'cup', { equals: [measure('360 ml', '360', 'milliliter')] })],
      },
      {
        line: 7,
        food: 'white bean',
        measures: [measure('2 (400-gram) cans', '2', 'can', { pack: measure('400-gram', '400', 'gram') })],
      },
      { line: 8, food: 'lemon', measures: [measure('1', '1', null)] },
    ]);
  });
  test('has size, preparation, "divided" and "optional" where they are said', () => {
    expect(
      recipe?.listings.map(({ size, preparation, divided, optional }) => [
        size,
        preparation,
        divided,
        optional,
      ]),
    ).toEqual([
      ['large', ['split lengthwise'], false, false],
      [null, [], true, false],
      [null, [], false, false],
      [null, [], false, true],
    ]);
  });
  test('has each mention with its step, line and the listings it means', () => {
    expect(recipe?.mentions).toEqual([
      { step: 0, text: 'leeks', line: 10, listings: [0], role: 'use', measure: null },
      { step: 1, text: 'beans', line: 11, listings: [2], role: 'use', measure: null },
      { step: 1, text: 'cream', line: 11, listings: [], role: 'use', measure: null },
    ]);
  });
  test('has its components by the listings in them, and its steps by number', () => {
    expect(recipe?.components).toEqual([{ index: 0, name: null, heading: null, listings: [0, 1, 2, 3] }]);
    expect(recipe?.steps.map(({ index, number, line }) => [index, number, line])).toEqual([
      [0, 1, 10],
      [1, 2, 11],
    ]);
  });
});

describe('a recipe shown as text', () => {
  const print = (width = 72): string => showText([brothDish()], { color: new Chalk({ level: 0 }), width });

  test('has each line as written, and below it as understood', () => {
    expect(print()).toBe(
      `
Charred Leek Broth                                 soups/leek-broth.md:1
  yield: Serves 4 (4 servings)

  List
    line 5    2 large leeks, split lengthwise
              2; leek; large; split lengthwise; in step 1
    line 6    1½ cups (360 ml) cream, divided
              3/2 cup = 360 milliliter; cream; divided; in no step
    line 7    2 (400-gram) cans white beans
              2 can of 400 gram each; white bean; in step 2
    line 8    1 lemon, optional
              1; lemon; optional; in no step

  Method
    1  Char the leeks in a dry pan, 6 to 8 minutes.
         "leeks": line 5
    2  Add the beans and simmer; swirl in the cream.
         "beans": line 7
         "cream": on no list
`.slice(1),
    );
  });
  test('says so when there is none', () => {
    expect(showText([], { color: new Chalk({ level: 0 }), width: 72 })).toBe('No recipe was found.\n');
  });
});
