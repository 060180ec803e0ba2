import { readFileSync } from 'node:fs';
import { Chalk } from 'chalk';
import { describe, expect, test } from 'vitest';
import { rules as allRules } from '../../rules/index.js';
import type { Mark } from '../../rules/rule.js';
import { readManuscript } from '../../src/reading/read.js';
import type { Reading } from '../../src/reading/types.js';
import { caution } from '../../src/reports/caution.js';
import { galley } from '../../src/reports/galley.js';
import { displayWidth } from '../../src/reports/text.js';
import { broth, brothDish, leaflet, mark, page, reading, rule, spanOf, stetted } from './fake.js';

const recipe = 'Charred Leek Broth';
const rules = [rule('unlisted-ingredient', 'listing'), rule('safe-temperature', 'safety')];
const print = (what: Reading, width = 72): string =>
  galley(what, { color: new Chalk({ level: 0 }), width, rules });
const lines = (what: Reading, width = 72): string[] => print(what, width).split('\n');

describe('a galley', () => {
  test('of the demo is what the README shows', () => {
    const path = 'mains/orchard-pork-loin.md';
    const from = (file: string) => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
    const demo = readManuscript([{ path, text: from(`fixtures/lock-keepers-table/draft/${path}`) }]);
    const shown = galley(demo, { color: new Chalk({ level: 0 }), width: 80, rules: allRules });
    const readme = from('README.md');
    const begin = readme.indexOf('    Orchard Pork Loin');
    const example = readme.slice(begin, readme.indexOf('\n\nThe last word', begin)).replace(/^ {4}/gm, '');
    expect(example.split('\n').length).toBeGreaterThan(8);
    expect(shown).toContain(example);
  });
  test('is laid out as an editor lists queries', () => {
    const fault = mark(broth, 'swirl in the cream', { recipe });
    expect(print(reading([fault]))).toBe(
      `
Charred Leek Broth                                   soups/leek-broth.md
  Q1  line 11   "swirl in the cream"                               fault
      Cream goes in at step 2 and is not on the list.
      List it, or take it out of the step.           unlisted-ingredient

One fault, no queries and no notes in one recipe.
`.slice(1),
    );
  });

  test('numbers the marks of each recipe, and heads those of no recipe with the file', () => {
    const marks = [
      mark(broth, 'Serves 4', {
        recipe,
        rule: 'servings-agree',
        weight: 'query',
        message: 'The yield is four servings and step 2 fills six bowls.',
        advice: 'Make the two numbers agree.',
      }),
      mark(broth, 'swirl in the cream', {
        recipe,
        related: [{ file: broth.path, span: spanOf(broth, '1½ cups'), message: 'The list divides it.' }],
      }),
      mark(leaflet, 'page 000', {
        rule: 'placeholder',
        weight: 'note',
        message: 'A page number is still missing.',
        advice: 'Put it in before the book goes out.',
      }),
    ];
    expect(print(reading(marks))).toBe(
      `
Charred Leek Broth                                   soups/leek-broth.md
  Q1  line 3    "Serves 4"                                         query
      The yield is four servings and step 2 fills six bowls.
      Make the two numbers agree.                         servings-agree

  Q2  line 11   "swirl in the cream"                               fault
      Cream goes in at step 2 and is not on the list.
      Compare line 6: The list divides it.
      List it, or take it out of the step.           unlisted-ingredient

front/leaflet.md
  Q1  line 1   "See page 000"                                       note
      A page number is still missing.
      Put it in before the book goes out.                    placeholder

One fault, one query and one note in one recipe.
`.slice(1),
    );
  });

  test('wraps at the width and puts the rule on its own line where the advice leaves no room', () => {
    const fault = mark(broth, 'swirl in the cream', { recipe });
    expect(print(reading([fault]), 48)).toBe(
      `
Charred Leek Broth           soups/leek-broth.md
  Q1  line 11   "swirl in the cream"       fault
      Cream goes in at step 2 and is not on the
      list.
      List it, or take it out of the step.
                             unlisted-ingredient

One fault, no queries and no notes in one
recipe.
`.slice(1),
    );
  });

  test('keeps every line within the width, whatever the passage, the title and the words are', () => {
    const wild = page(
      `deep/${'folder/'.repeat(20)}x.md`,
      `${'crème '.repeat(400)}${'x'.repeat(3000)} 汤 ${'汤'.repeat(200)}`,
    );
    const marks = [
      mark(wild, wild.text, {
        recipe: 'A title '.repeat(30),
        message: 'word '.repeat(90),
        advice: 'y'.repeat(400),
      }),
      mark(wild, '汤'.repeat(200), { recipe: 'A title '.repeat(30) }),
    ];
    const what = reading(marks, { pages: [wild], dishes: [] });
    for (const width of [40, 61, 80]) {
      const tooWide = lines(what, width).filter(
        (line) => displayWidth(line) > width && !line.includes('folder/'),
      );
      expect(tooWide).toEqual([]);
    }
  });

  test('quotes a passage of several lines on one line, cut to fit', () => {
    const words = broth.text.slice(broth.text.indexOf('- 2 large'), broth.text.indexOf('1. Char') + 10);
    const quoted = lines(reading([mark(broth, words, { recipe })]))[1];
    expect(quoted).toBe('  Q1  line 5   "- 2 large leeks, split lengthwise - 1½ cups (36…"  fault');
  });

  test('quotes nothing where the mark is about what is missing', () => {
    const missing: Mark = { ...mark(broth, 'Serves 4', { recipe }), span: { start: 0, end: 0 } };
    expect(lines(reading([missing]))[1]).toBe(`  Q1  line 1   ${' '.repeat(52)}fault`);
  });

  test('tells two recipes of one title in one file apart', () => {
    const dish = brothDish();
    const half = broth.text.indexOf('- 2 large');
    const first = { ...dish, recipe: { ...dish.recipe, span: { start: 0, end: half } } };
    const second = { ...dish, recipe: { ...dish.recipe, span: { start: half, end: broth.text.length } } };
    const marks = [mark(broth, 'Serves 4', { recipe }), mark(broth, 'swirl', { recipe })];
    const heads = lines(reading(marks, { dishes: [first, second] })).filter((line) =>
      line.startsWith(recipe),
    );
    expect(heads).toHaveLength(2);
  });
});

describe('a galley closes', () => {
  const manyDishes = (count: number) => Array.from({ length: count }, () => brothDish());

  test('in one line when there is nothing to mark', () => {
    expect(print(reading([]))).toBe('No marks in one recipe.\n');
    expect(print(reading([], { dishes: manyDishes(21) }))).toBe('No marks in twenty-one recipes.\n');
  });
  test('by saying that no recipe was found, where there was none', () => {
    expect(print(reading([], { dishes: [] }))).toBe('No marks in two files, and no recipe was found.\n');
  });
  test('with the counts in words, and in figures from a hundred on', () => {
    const what = reading([mark(broth, 'swirl', { recipe })], {
      dishes: manyDishes(40),
      counts: { fault: 12, query: 99, note: 100 },
    });
    expect(lines(what).at(-2)).toBe('Twelve faults, ninety-nine queries and 100 notes in forty recipes.');
  });
  test('with what stets have silenced', () => {
    const silenced = [stetted(mark(broth, 'cream'), 'the pan')];
    expect(print(reading([], { stetted: silenced }))).toBe(
      'No marks in one recipe. One mark silenced by stet.\n',
    );
  });
  test('with one caution where a mark is about food safety, and with none elsewhere', () => {
    const unsafe = [
      mark(broth, 'swirl', { recipe, rule: 'safe-temperature' }),
      mark(broth, 'Char', { recipe, rule: 'safe-temperature' }),
    ];
    const flat = (what: Reading): string => print(what).replaceAll('\n', ' ');
    expect(flat(reading(unsafe)).split(caution)).toHaveLength(2);
    expect(flat(reading([mark(broth, 'swirl', { recipe })]))).not.toContain('USDA');
  });
});

describe('a galley in a terminal', () => {
  const esc = '\u001B';

  test('never passes on what the author wrote as a command to the terminal', () => {
    const hostile = page(`a${esc}]0;x\u0007.md`, `# T${esc}[2J\n\n${esc}[31mred\u009B1m \u202Etxet\u0000\n`);
    const fault = mark(hostile, `${esc}[31mred\u009B1m \u202Etxet\u0000`, {
      recipe: `T${esc}[2J`,
      message: `The word "${esc}[31m" stands here.`,
      advice: 'Take it\rout.',
      rule: 'placeholder',
    });
    const printed = print(reading([fault], { pages: [hostile], dishes: [] }));
    expect(printed).not.toMatch(/[^\P{Cc}\n]|\u202E/u);
    expect(printed).toContain('"␛[31mred␦1m ␦txet␀"');
    expect(printed).toContain('T␛[2J');
  });
  test('says in words what it says in color', () => {
    const what = reading([mark(broth, 'swirl in the cream', { recipe })]);
    const colored = galley(what, { color: new Chalk({ level: 1 }), width: 72, rules });
    expect(colored).toContain(`${esc}[`);
    expect(colored.replaceAll(new RegExp(`${esc}\\[[0-9;]*m`, 'g'), '')).toBe(print(what));
  });
});
