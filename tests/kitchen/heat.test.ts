/** What the kitchen makes of ovens, tins and times. */
import { describe, expect, test } from 'vitest';
import { timeText } from '../../src/arithmetic/times.js';
import { unsizedPanOf } from '../../src/kitchen/baking-pans.js';
import { coldOvenOf } from '../../src/kitchen/oven.js';
import { stepTimesOf } from '../../src/kitchen/step-times.js';
import { timePairsOf } from '../../src/kitchen/time-pairs.js';
import { readManuscript } from '../../src/reading/read.js';
import { dish } from './dishes.js';

const LIST = ['2 cups flour', '1 cup milk'];

describe('a bake needs a hot oven', () => {
  const need = (...steps: string[]): string | null => {
    const cold = coldOvenOf(dish(LIST, steps));
    if (cold === null) return null;
    const text = steps[cold.need.step]!.slice(cold.need.start, cold.need.end);
    return cold.heatedAt === null ? text : `${text}, hot at ${cold.heatedAt + 1}`;
  };
  test.each<[string, string[], string | null]>([
    ['none is heated', ['Mix.', 'Bake until golden.'], 'Bake'],
    ['heated in time', ['Heat the oven to 350°F.', 'Bake until golden.'], null],
    ['heated too late', ['Bake until golden.', 'Preheat the oven.'], 'Bake, hot at 2'],
    ['told in the bake', ['Bake at 350°F until golden.'], null],
    ['told as a moderate oven', ['Bake in a moderate oven.'], null],
    ['taken for granted', ['Bake in the preheated oven.'], 'Bake'],
    ['put in unlit', ['Put the dish into the oven for an hour.'], 'into the oven'],
    ['only a warm place', ['Leave the dough to rise in the oven.'], null],
    ['a tray for it', ['Lay the squares on an oven tray, and chill.'], null],
    ['a Dutch oven', ['Heat the oil in a Dutch oven and fry the squares.'], null],
    ['a cold start', ['Set the loaf in a cold oven.', 'Bake until brown.'], null],
    ['spices in a pan', ['Roast the seeds in a dry pan for 20 minutes.'], null],
    ['the package tells', ['Bake according to the package directions.'], null],
    ['before you start', ['Bake until golden.', 'Heat the oven before you start.'], null],
  ])('%s', (_, steps, expected) => expect(need(...steps)).toBe(expected));
});

describe('the size of a tin is sought wherever it may stand', () => {
  const unsized = (title: string, listings: string[], ...steps: string[]): string | null => {
    const pan = unsizedPanOf(dish([...LIST, ...listings], ['Heat the oven to 350°F.', ...steps], title));
    return pan === null ? null : ['Heat the oven to 350°F.', ...steps][pan.step]!.slice(pan.start, pan.end);
  };
  test.each<[string, string, string[], string[], string | null]>([
    ['a cake tin', 'Oat Cake', [], ['Pour into a cake tin, and bake.'], 'cake tin'],
    ['a greased tin', 'Oat Cake', [], ['Pour into a greased tin, and bake.'], 'tin'],
    ['its sides', 'Oat Cake', [], ['Pour into a 20 cm tin, and bake.'], null],
    ['its volume', 'Oat Pudding', [], ['Pour into a 1.5-litre baking dish, and bake.'], null],
    ['sides in parentheses', 'Oat Cake', [], ['Pour into a tin (20 by 30 cm), and bake.'], null],
    ['its dough', 'Oat Loaf', [], ['Press into a 2 lb loaf tin, and bake.'], null],
    ['the size of the cake in the title', '9-inch Oat Cake', [], ['Pour into a tin, and bake.'], null],
    ['a saucepan beside', 'Oat Cake', [], ['Melt the butter in a pan.', 'Bake on a sheet.'], null],
    ['cookies on pans', 'Oat Cookies', [], ['Line two pans with parchment, and bake the dough.'], null],
    ['a batter that goes nowhere', 'Oat Cake', [], ['Beat to a batter, and bake.'], 'bake'],
  ])('%s', (_, title, listings, steps, expected) =>
    expect(unsized(title, listings, ...steps)).toBe(expected),
  );
});

describe('a length of time is told apart by what goes on in it', () => {
  const times = (step: string): string[] =>
    stepTimesOf(dish(LIST, [step])).map(
      ({ kind, low, high, beside }) => `${kind} ${timeText(low, high)}${beside ? ' beside' : ''}`,
    );
  test.each([
    ['Simmer for 20 to 25 minutes.', ['heat 20 to 25 minutes']],
    ['Simmer, stirring often, for 20 minutes.', ['heat 20 minutes']],
    ['Simmer for 1½ hours, stirring every 10 minutes.', ['heat 1 hour 30 minutes']],
    ['Bake 30 minutes at 350°F or 25 minutes at 375°F.', ['heat 30 minutes']],
    ['Let the dough rise for 2 hours.', ['waiting 2 hours']],
    ['Let it rest 10 minutes before serving.', ['waiting 10 minutes']],
    ['Knead for 8 minutes.', ['work 8 minutes']],
    ['Meanwhile, boil the eggs for 9 minutes.', ['heat 9 minutes beside']],
    ['After simmering for 2 hours, add the milk.', []],
    ['It keeps for 3 days.', []],
    ['For the last 10 minutes, uncover.', []],
    ['If it is thin, simmer 10 minutes more.', []],
  ])('%s', (step, expected) => expect(times(step)).toEqual(expected));
});

describe('times that a recipe tells twice', () => {
  const verdicts = (head: string, steps: string): string[] => {
    const text = `${head}\n\n- 2 cups flour\n- 1 cup milk\n\n## Method\n\n${steps}\n`;
    return timePairsOf(readManuscript([{ path: 'supper.md', text }]).dishes[0]!)
      .filter(({ agree }) => !agree)
      .map(({ compares, certain }) => `${compares}${certain ? '!' : ''}`);
  };
  const stated = (...times: string[]): string => ['# Supper', 'Serves 4', ...times].join('\n\n');
  test.each([
    [
      'parts beyond the total',
      stated('Prep: 20 min', 'Cook: 40 min', 'Total: 45 min'),
      '1. Simmer 40 minutes.',
      ['sum!'],
    ],
    [
      'parts that make the total',
      stated('Prep: 20 min', 'Cook: 40 min', 'Total: 1 hour'),
      '1. Simmer 40 minutes.',
      [],
    ],
    [
      'more than parts and waits',
      stated('Prep: 20 min', 'Cook: 40 min', 'Total: 2 hours'),
      '1. Simmer 40 minutes.',
      ['unexplained'],
    ],
    [
      'a total with a wait in it',
      stated('Prep: 20 min', 'Cook: 40 min', 'Total: 3 hours'),
      '1. Simmer 40 minutes.\n2. Chill 2 hours.',
      [],
    ],
    [
      'an open total',
      stated('Prep: 20 min', 'Cook: 40 min', 'Total: 30 min plus chilling'),
      '1. Simmer 20 minutes.',
      [],
    ],
    [
      'active time and total',
      stated('Active time: 40 min', 'Total time: 30 min'),
      '1. Simmer 20 minutes.',
      ['sum!'],
    ],
    ['a step beyond the total', stated('Total: 30 min'), '1. Simmer 2 hours.', ['step!']],
    ['a step beyond the cooking', stated('Prep: 30 min', 'Cook: 20 min'), '1. Simmer 45 minutes.', ['step']],
    [
      'a wait beyond the total',
      stated('Total: 30 min'),
      '1. Simmer 20 minutes.\n2. Chill 4 hours.',
      ['waiting'],
    ],
    [
      'a wait left out of prep and cook',
      stated('Prep: 10 min', 'Cook: 20 min'),
      '1. Simmer 20 minutes.\n2. Chill 4 hours.',
      [],
    ],
    ['a promise in the title', '# 20-Minute Supper\n\nServes 4', '1. Simmer 2 hours.', ['promise!']],
    ['a promise kept', '# 20-Minute Supper\n\nServes 4', '1. Simmer 18 minutes.', []],
    [
      'a promise of the work alone',
      '# Supper\n\nTakes 10 minutes to prepare.\n\nServes 4',
      '1. Simmer 2 hours.',
      [],
    ],
    [
      'a step told in the headnote',
      '# Supper\n\nIt simmers for 4 hours.\n\nServes 4',
      '1. Simmer 2 hours.',
      ['same-step'],
    ],
    ['keeping is no step', '# Supper\n\nIt keeps for 4 days.\n\nServes 4', '1. Simmer 2 hours.', []],
  ])('%s', (_, head, steps, expected) => expect(verdicts(head, steps)).toEqual(expected));
});
