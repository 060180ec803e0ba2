/** The house style's file: what it decides, and how plainly it says what is wrong with it. */
import { describe, expect, it } from 'vitest';
import { rules } from '../../rules/index.js';
import { toleranceEdition } from '../../src/larder/tolerances.js';
import { type HouseStyle, isMatter, rulingOn } from '../../src/manuscript/house-style.js';
import { readHouseStyle } from '../../src/manuscript/house-style-file.js';
import { readManuscript } from '../../src/reading/read.js';

const names = rules.map((rule) => rule.name);

function style(text: string, home = ''): HouseStyle {
  const result = readHouseStyle(text, names, home);
  if ('troubles' in result) throw new Error(JSON.stringify(result.troubles));
  return result.style;
}

function troubles(text: string): string[] {
  const result = readHouseStyle(text, names);
  return 'troubles' in result ? result.troubles.map(({ line, what }) => `${line}: ${what}`) : [];
}

describe('a house style', () => {
  it('decides what it names, and leaves the rest undecided', () => {
    const read = style(
      'system: metric\nunits:\n  form: abbreviated\n  cup: cup\nnumbers: 0.5\nranges: 3–5\nterms:\n  scallion: [green onion]\n',
    );
    expect(read).toMatchObject({
      stated: true,
      system: 'metric',
      hygiene: 'notes',
      units: { form: 'abbreviated', own: { cup: 'cup' } },
      numbers: '0.5',
      ranges: '3–5',
      terms: { scallion: ['green onion'] },
      titles: null,
    });
    expect(style('# nothing yet\n')).toMatchObject({ stated: true, system: null });
  });

  it('tells front matter by file and by folder, from where it stands itself', () => {
    const read = style('matter: [front/, notes.md]\n', 'book');
    expect(['front/a.md', 'notes.md'].map((file) => isMatter(read, file))).toEqual([false, false]);
    expect(['../front/a.md', '../notes.md'].map((file) => isMatter(read, file))).toEqual([true, true]);
    const above = style('matter: [front/]\n');
    expect(['front/a.md', 'front.md', 'frontier/a.md'].map((file) => isMatter(above, file))).toEqual([
      true,
      false,
      false,
    ]);
  });

  it('rules by the longest folder that holds a file', () => {
    const read = style(
      'rules:\n  yield-absent: off\nfolders:\n  drinks/:\n    yield-absent: note\n  drinks/hot:\n    yield-absent: fault\n',
    );
    expect(
      ['a.md', 'drinks/a.md', 'drinks/hot/a.md'].map((file) => rulingOn(read, file, 'yield-absent')),
    ).toEqual(['off', 'note', 'fault']);
    expect(rulingOn(read, 'a.md', 'unit-absent')).toBe(null);
  });
});

describe('what a house style says to no purpose', () => {
  it('is a way of writing a unit that means another one, or none', () => {
    expect(troubles('units:\n  tablespoon: teaspoon\n  cup: kup\n  gram: g.\n')).toEqual([
      '2: "units.tablespoon" is "teaspoon", which means a teaspoon; the nearest is "tablespoon"',
      '3: "units.cup" is "kup", which is no way to write it that can be read; the nearest is "cup"',
    ]);
  });

  it('is an empty list where no other name or spelling is known', () => {
    expect(
      troubles('terms: { scallion: [], lockweed: [] }\nspellings: { yogurt: [], lockweed: [] }\n'),
    ).toEqual([
      '1: "terms.lockweed" is empty, and the larder knows no other name of "lockweed": write those that are not wanted',
      '2: "spellings.lockweed" is empty, and the larder knows no other spelling of "lockweed": write those that are not wanted',
    ]);
  });

  it('is told beside what has the wrong shape', () => {
    expect(troubles('unlisted: [watr]\nmatter: front\n').map((line) => line.slice(0, 2))).toEqual([
      '1:',
      '2:',
    ]);
  });

  it('is the date of tolerances that this version does not have', () => {
    expect(style(`tolerances: ${toleranceEdition}\n`).stated).toBe(true);
    expect(troubles('tolerances: 2020-01-31\n')).toEqual([
      expect.stringMatching(
        new RegExp(`^1: "tolerances" is "2020-01-31", and .* the tolerances of ${toleranceEdition}: `),
      ),
    ]);
  });
});

describe('what is wrong with a house style', () => {
  it('is said with the line, the key and the nearest key', () => {
    expect(troubles('system: metric\n\nunts:\n  form: abbreviated\n')).toEqual([
      '3: "unts" is no key of a house style; the nearest is "units"',
    ]);
    expect(troubles('units:\n  tablespon: tbsp\n')).toEqual([
      '2: "tablespon" is no key of a house style under "units"; the nearest is "tablespoon"',
    ]);
    expect(troubles('rules:\n  yield-absent: off\n  yeild-absent: off\n')).toEqual([
      '3: "yeild-absent" is no key of a house style under "rules"; the nearest is "yield-absent"',
    ]);
    expect(troubles('folders:\n  drinks/:\n    unit-unclaer: off\n')).toEqual([
      '3: "unit-unclaer" is no key of a house style under "folders.drinks/"; the nearest is "unit-unclear"',
    ]);
  });

  it('is said with the values that there are', () => {
    expect(troubles('numbers: 1/3\n')).toEqual([
      '1: "numbers" is "1/3", and must be one of "½", "1/2", "0.5"; the nearest is "1/2"',
    ]);
    expect(troubles('\nsystem: metrik\n')[0]).toMatch(/^2: "system" is "metrik", .* nearest is "metric"$/);
    expect(troubles('matter: front\n')).toEqual([
      '1: "matter" is "front", and must be a list in square brackets',
    ]);
    expect(troubles('yields: Serves some\n')).toEqual([
      '1: "yields" is "Serves some": it must be an example with a number, such as "Serves 4"',
    ]);
    expect(troubles('unlisted:\n  - water\n  - cookin spray\n')).toEqual([
      '3: "unlisted": the larder knows no food "cookin spray"; the nearest is "cooking spray"',
    ]);
  });

  it('is all said at once, in the order of the lines', () => {
    expect(troubles('numbers: 7\ncolour: red\nranges: many\n').map((each) => each.slice(0, 2))).toEqual([
      '1:',
      '2:',
      '3:',
    ]);
  });

  it('may be that it is no YAML, or no group of keys', () => {
    expect(troubles('units: [\n')[0]).toMatch(/^\d: this is not YAML: /);
    expect(troubles('- a\n')).toEqual([
      '1: the file is a list, and must be a group of keys with their values',
    ]);
  });
});

describe('a reading by a house style', () => {
  const soup =
    '# Leek Soup\n\n- 2 leeks, sliced\n\n1. Boil the leeks in 4 cups water until soft, 20 minutes.\n';
  const marks = (text: string) =>
    readManuscript([{ path: 'soups/leek.md', text: soup }], { style: style(text) }).marks.map(
      ({ rule, weight }) => `${rule} ${weight}`,
    );

  it('leaves unlisted what needs no listing', () => {
    expect(marks('system: metric\n')).toEqual(['yield-absent query', 'unlisted-ingredient fault']);
    expect(marks('unlisted: [water]\n')).toEqual(['yield-absent query']);
  });

  it('has rules off or weighing otherwise, by folder too', () => {
    expect(marks('rules: { yield-absent: off, unlisted-ingredient: note }\n')).toEqual([
      'unlisted-ingredient note',
    ]);
    expect(marks('folders: { soups: { yield-absent: off } }\n')).toEqual(['unlisted-ingredient fault']);
    expect(marks('folders: { cakes: { yield-absent: off } }\n')).toHaveLength(2);
  });

  it('finds no recipe in front matter', () => {
    const reading = readManuscript([{ path: 'soups/leek.md', text: soup }], {
      style: style('matter: [soups/]\n'),
    });
    expect([reading.dishes.length, reading.marks.length]).toEqual([0, 0]);
  });
});
