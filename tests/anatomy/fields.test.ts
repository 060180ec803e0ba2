/** Stated yields and times: where they may stand, and what they say. */
import { describe, expect, it } from 'vitest';
import { contents, only, words } from './pages.js';

const around = (top: string, front = ''): string =>
  `${front}# Soup\n\n${top}\n\n## Ingredients\n\n- leeks\n\n## Method\n\n1. Stew.`;

function stated(text: string): string[] {
  const recipe = only(text);
  const said = recipe.yield === null ? [] : [`yield ${recipe.yield.passage.text}`];
  return [...said, ...recipe.times.map((time) => `${time.kind} ${time.value.text}`)];
}

describe('yield and times', () => {
  it.each([
    ['Serves 4', ['yield Serves 4']],
    ['*Serves 4 to 6*', ['yield Serves 4 to 6']],
    ['**Makes about 2 dozen**', ['yield Makes about 2 dozen']],
    ['Yield: 2 loaves', ['yield Yield: 2 loaves']],
    ['**Yield:** 2 loaves', ['yield Yield: 2 loaves']],
    ['Feeds 6', ['yield Feeds 6']],
    ['45 minutes | Serves 4', ['yield Serves 4', 'total 45 minutes']],
    ['Enough for 8', ['yield Enough for 8']],
    ['4 servings', ['yield 4 servings']],
    ['~15 galettes.', ['yield ~15 galettes.']],
    ['Serves 4 | Prep: 10 minutes | Cook: 1 hour', ['yield Serves 4', 'prep 10 minutes', 'cook 1 hour']],
    ['Prep time: 10 min • Total time: 1 h', ['prep 10 min', 'total 1 h']],
    [
      'Prep time: 10 min  \nBaking time: 20 min  \nServes: 4',
      ['yield Serves: 4', 'prep 10 min', 'cook 20 min'],
    ],
    ['Serves 4 · 45 min', ['yield Serves 4', 'other 45 min']],
    ['Makes 16 · Prep 15 min · Bake 35 min', ['yield Makes 16', 'prep 15 min', 'cook 35 min']],
    ['Prep: 10 min, Cook: 20 min', ['prep 10 min', 'cook 20 min']],
    [
      '- ⏲️ Prep time: 10 min\n- 🍳Cook Time: 1 h\n- 💤 Resting time: overnight\n- 🍽️ Servings: 4',
      ['yield Servings: 4', 'prep 10 min', 'cook 1 h', 'rest overnight'],
    ],
    [
      '| Serves | Prep time | Cook time |\n|---|---|---|\n| 4 | 10 min | 20 min |',
      ['yield 4', 'prep 10 min', 'cook 20 min'],
    ],
    ['| | |\n|---|---|\n| Serves | 4 |\n| Prep time | 10 min |', ['yield Serves: 4', 'prep 10 min']],
    ['## Yield\n\n2 loaves', ['yield 2 loaves']],
    ['## Yield\n\nabout 2 cups', ['yield about 2 cups']],
    ['Makes about 2 cups', ['yield Makes about 2 cups']],
    ['About 2 cups', ['yield About 2 cups']],
    ['1 quart', ['yield 1 quart']],
    ['Serves one', ['yield Serves one']],
    ['Serve 4', ['yield Serve 4']],
    ['Four servings', ['yield Four servings']],
    ['For 4', ['yield For 4']],
    ['For six', ['yield For six']],
    ['One 9-inch cake', ['yield One 9-inch cake']],
    ['Serves 4 – 25 minutes', ['yield Serves 4', 'other 25 minutes']],
    ['Serves 4 / Prep 10 min', ['yield Serves 4', 'prep 10 min']],
    ['Serves 4. Prep 10 min.', ['yield Serves 4', 'prep 10 min.']],
    ['Makes 8 | Ready in 30 mins | Easy', ['yield Makes 8', 'total 30 mins']],
    ['Prep 10 min, cook 20 min', ['prep 10 min', 'cook 20 min']],
    ['Prep time 10 minutes, cooking time 20 minutes', ['prep 10 minutes', 'cook 20 minutes']],
    ['Cooking time 20 minutes plus chilling', ['cook 20 minutes plus chilling']],
    ['**Active:** 20 min **Total:** 1 hr 10 min', ['prep 20 min', 'total 1 hr 10 min']],
    ['Prep: 1 hour, 20 minutes', ['prep 1 hour, 20 minutes']],
    ['Cook: 10 – 20 minutes', ['cook 10 – 20 minutes']],
  ])('are read from "%s"', (top, expected) => {
    expect(stated(around(top))).toEqual(expected);
    expect(only(around(top)).headnote).toEqual([]);
  });

  it('are not read from a sentence that opens with a number', () => {
    expect(stated(around('4 boats came for these.'))).toEqual([]);
  });

  it.each([
    ['serves: 4', ['yield 4']],
    ['servings: 4\nprep_time: PT10M\ncookTime: PT1H', ['yield 4', 'prep PT10M', 'cook PT1H']],
    ['recipe:\n  yield: 2 loaves\ntime:\n  total: 1 h', ['yield 2 loaves', 'total 1 h']],
    ['prep time: 10 min\ndate: 2020-01-01\nauthor: Ada', ['prep 10 min']],
  ])('are read from the front matter "%s"', (yaml, expected) => {
    expect(stated(around('A soup.', `---\n${yaml}\n---\n\n`))).toEqual(expected);
  });

  it('are read from the heading of the list, and from a remark below it', () => {
    expect(stated('# Soup\n\n## Ingredients (serves 4)\n\n- leeks\n\n## Method\n\nStew.')).toEqual([
      'yield serves 4',
    ]);
    expect(stated('# Soup\n\n## Ingredients for 4 people\n\n- leeks\n\n## Method\n\nStew.')).toEqual([
      'yield 4 people',
    ]);
    expect(stated('# Soup\n\n## Ingredients\n\nFor 4 people\n\n- leeks\n\n## Method\n\nStew.')).toEqual([
      'yield For 4 people',
    ]);
  });

  it('are read from a sentence of the headnote', () => {
    const recipe = only(around('A soup of leeks. Serves 4 as a starter. We love it.'));
    expect(recipe.yield?.passage.text).toBe('Serves 4 as a starter');
    expect(words(recipe.headnote)).toEqual(['A soup of leeks. Serves 4 as a starter. We love it.']);
  });

  it('are read where the page ends', () => {
    expect(
      stated(
        '# Soup\n\n## Ingredients\n\n- leeks\n\n## Method\n\nStew the leeks.\n\nServes 8. Keeps two days.',
      ),
    ).toEqual(['yield Serves 8']);
  });

  it('are read from a phrase of a remark on the list', () => {
    expect(
      stated(
        '# Soup\n\n## Ingredients\n\nThese amounts are for about two large portions.\n\n- leeks\n\n## Method\n\nStew.',
      ),
    ).toEqual(['yield for about two large portions']);
  });

  it('are read from a line over the list that promises it', () => {
    const line = 'Here are the ingredients for about two adult portions:';
    expect(stated(`# Soup\n\n## Ingredients\n\n${line}\n\n- leeks\n\n## Method\n\nStew.`)).toEqual([
      'yield for about two adult portions',
    ]);
    const recipe = only(`# Soup\n\n${line}\n\n- 2 leeks\n- 1 cup milk\n\nStew the leeks.`);
    expect(recipe.yield?.passage.text).toBe('for about two adult portions');
    expect(recipe.components.map((component) => component.heading)).toEqual([null]);
  });

  it('are read from parentheses behind the title', () => {
    const recipe = only('# Jam (makes 4 jars)\n\n## Ingredients\n\n- berries\n\n## Method\n\n1. Boil.');
    expect(recipe.title?.text).toBe('Jam');
    expect(recipe.yield?.passage.text).toBe('makes 4 jars');
  });

  it('are not the size of a serving, nor an order to serve', () => {
    const recipe = only(around('Serving size: 1 cup'));
    expect(recipe.yield).toBe(null);
    expect(words(recipe.nutrition)).toEqual(['Serving size: 1 cup']);
    expect(stated(around('Serve with 2 lemons.'))).toEqual([]);
    const eggs = only('# Soup\n\n## Ingredients\n\n- 3 large eggs total\n\n## Method\n\nStew.');
    expect([eggs.listings.length, eggs.times.length]).toEqual([1, 0]);
  });

  it('are not taken from a listing', () => {
    const recipe = only('# Soup\n\n## Ingredients\n\n- 2 potatoes per serving\n\n## Method\n\nStew.');
    expect(recipe.yield).toBe(null);
    expect(recipe.listings).toHaveLength(1);
  });

  it('may say nothing', () => {
    expect(only(around('Serves a crowd')).yield).toMatchObject({ parsed: null });
    expect(only(around('Serves:')).yield?.parsed).toBe(null);
    expect(only(around('Servings: ??')).yield?.parsed).toBe(null);
    expect(only(around('A soup.', '---\nserves:\n---\n')).yield?.parsed).toBe(null);
  });

  it('are not taken from prose', () => {
    expect(
      stated(around('Makes a fine lunch. Serving it cold is fine too. Time flies: eat it at once.')),
    ).toEqual([]);
    expect(contents(around('For the brave: add chili.')).recipes[0]!.yield).toBe(null);
  });
});
