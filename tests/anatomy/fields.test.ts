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
  ])('are read from "%s"', (top, expected) => {
    expect(stated(around(top))).toEqual(expected);
    expect(only(around(top)).headnote).toEqual([]);
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

  it('are not taken from a listing', () => {
    const recipe = only('# Soup\n\n## Ingredients\n\n- 2 potatoes per serving\n\n## Method\n\nStew.');
    expect(recipe.yield).toBe(null);
    expect(recipe.listings).toHaveLength(1);
  });

  it('may say nothing', () => {
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
