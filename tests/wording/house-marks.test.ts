/** With a house style every place that departs from it is marked, and what the mends write is the house style's own. */
import { describe, expect, it } from 'vitest';
import { rules } from '../../rules/index.js';
import type { Mark } from '../../rules/rule.js';
import type { HouseStyle } from '../../src/manuscript/house-style.js';
import { readHouseStyle } from '../../src/manuscript/house-style-file.js';
import { readManuscript } from '../../src/reading/read.js';
import { draftHouse } from '../../src/reports/draft-house.js';
import { corpusIn } from '../accuracy/plants.js';

const names = rules.map((rule) => rule.name);
const only = rules.filter((rule) => rule.topic === 'wording').map((rule) => rule.name);

function style(yaml: string): HouseStyle {
  const result = readHouseStyle(yaml, names);
  if ('troubles' in result) throw new Error(JSON.stringify(result.troubles));
  return result.style;
}

const page = (list: string, step: string): string =>
  `# Plain Supper\n\nServes 4\n\n## Ingredients\n\n- ${list}\n- 1 cup rice\n\n## Method\n\n1. Boil the rice.\n2. ${step}\n`;

function marksOn(text: string, house: HouseStyle): readonly Mark[] {
  return readManuscript([{ path: 'supper.md', text }], { only, style: house }).marks;
}

/** The text with every sure mend in it, the last first. */
function mended(text: string, marks: readonly Mark[]): string {
  const edits = marks
    .flatMap((mark) => mark.mends.filter((mend) => mend.sure).flatMap((mend) => mend.edits))
    .toSorted((a, b) => b.span.start - a.span.start);
  let after = text;
  let reached = Number.POSITIVE_INFINITY;
  for (const { span, text: put } of edits) {
    if (span.end > reached) continue;
    after = after.slice(0, span.start) + put + after.slice(span.end);
    reached = span.start;
  }
  return after;
}

const boil = 'Boil the rice until tender, 12 minutes.';

describe('a sure mend', () => {
  const cases: readonly (readonly [
    says: string,
    yaml: string,
    before: readonly [string, string],
    after: readonly [string, string],
  ])[] = [
    [
      'spells a unit out, in the plural that its amount asks for',
      'units: { form: spelled out }',
      ['3 tbsp oil', 'Add 1 tsp salt and ½ lb. leeks.'],
      ['3 tablespoons oil', 'Add 1 teaspoon salt and ½ pound leeks.'],
    ],
    [
      'shortens a unit, and the SI takes no full stop',
      'units: { form: abbreviated with period }',
      ['3 tablespoons oil', 'Add 100 grams leeks.'],
      ['3 tbsp. oil', 'Add 100 g leeks.'],
    ],
    [
      'sets a unit off from its number when it becomes a word',
      'units: { gram: gram }',
      ['200g leeks', boil],
      ['200 grams leeks', boil],
    ],
    [
      'keeps the singular before a thing',
      'units: { ounce: ounce }',
      ['1 (14-oz) can beans', boil],
      ['1 (14-ounce) can beans', boil],
    ],
    [
      'writes a number with its own sign',
      'numbers: ½',
      ['1 1/2 cups stock', 'Add 1/3 cup oil.'],
      ['1½ cups stock', 'Add ⅓ cup oil.'],
    ],
    [
      'writes a number with a stroke',
      'numbers: 1/2',
      ['1½ cups stock', 'Add 0.25 cup oil.'],
      ['1 1/2 cups stock', 'Add 1/4 cup oil.'],
    ],
    [
      'writes a range in words',
      'ranges: 3 to 5',
      ['2-3 leeks', 'Boil for 10–12 minutes.'],
      ['2 to 3 leeks', 'Boil for 10 to 12 minutes.'],
    ],
    [
      'writes degrees in one form and puts Fahrenheit first',
      'temperatures: { form: 350°F, order: Fahrenheit (Celsius) }',
      ['2 leeks', 'Bake at 180 °C / 350 °F until soft.'],
      ['2 leeks', 'Bake at 350°F (180°C) until soft.'],
    ],
    [
      'puts the wanted name, with plural and article',
      'terms: { eggplant: [aubergine], scallion: [] }',
      ['2 Aubergines', 'Chop an aubergine and a green onion.'],
      ['2 Eggplants', 'Chop an eggplant and a scallion.'],
    ],
    [
      'knows a decimal without a figure before its point',
      'numbers: 1/2',
      ['.5 cup stock', boil],
      ['1/2 cup stock', boil],
    ],
    [
      'spells a word as is wanted instead of every other way',
      'spellings: { yogurt: [], color: [] }',
      ['1 cup yoghurt', 'Boil until the colour is gone.'],
      ['1 cup yogurt', 'Boil until the color is gone.'],
    ],
    [
      'changes the article with the name',
      'terms: { zucchini: [courgette], eggplant: [brinjal] }',
      ['1 courgette', 'Slice a brinjal.'],
      ['1 zucchini', 'Slice an eggplant.'],
    ],
    [
      'leaves a name alone that is part of another food’s',
      'terms: { cilantro: [coriander] }',
      ['1 teaspoon coriander seeds', 'Scatter the coriander.'],
      ['1 teaspoon coriander seeds', 'Scatter the cilantro.'],
    ],
    [
      'spells a word with all its endings',
      'spellings: { flavor: [flavour], caramelize: [caramelise], yogurt: [yoghurt] }',
      ['1 cup Yoghurt', 'Flavoured and caramelised, it is done.'],
      ['1 cup Yogurt', 'Flavored and caramelized, it is done.'],
    ],
    [
      'begins a line of the list with a capital',
      'listings: Capital first',
      ['salt, to taste', boil],
      ['Salt, to taste', boil],
    ],
    [
      'spells out the number that opens a sentence',
      'titles: Headline Capitals',
      ['2 eggs', '2 eggs go in last. 12 minutes later it is done.'],
      ['2 eggs', 'Two eggs go in last. Twelve minutes later it is done.'],
    ],
  ];
  it.each(cases)('%s', (_says, yaml, before, after) => {
    const house = style(yaml);
    let text = page(...before);
    // Form and order of one temperature are two mends of the same words: the second reading has the second.
    for (let round = 0; round < 2; round++) text = mended(text, marksOn(text, house));
    expect(text).toBe(page(...after));
    expect(marksOn(text, house)).toEqual([]);
  });

  it('turns a yield round', () => {
    const house = style('yields: "Yield: 4 servings"');
    const text = page('2 leeks', boil);
    expect(mended(text, marksOn(text, house))).toContain('\nYield: 4 servings\n');
  });
});

describe('what only the author can choose', () => {
  it('is a name that is measured for one that is counted, and the other way round', () => {
    const offers = (list: string, yaml: string): (readonly [string, boolean])[] =>
      marksOn(page(list, boil), style(yaml)).flatMap(({ mends }) =>
        mends.map(({ label, sure }) => [label, sure] as const),
      );
    expect(offers('2 coriander leaves', 'terms: { cilantro: [coriander leaf] }')).toEqual([
      ['Write "cilantro"', false],
    ]);
    expect(offers('1 cup cilantro', 'terms: { coriander leaf: [cilantro] }')).toEqual([
      ['Write "coriander leaves"', false],
    ]);
    expect(offers('1 pound shrimp', 'terms: { prawn: [shrimp] }')).toEqual([['Write "prawn"', false]]);
  });

  it('is never asked about a recipe’s title in a reference', () => {
    const title =
      '# Green Onion Tart\n\nServes 4\n\n- 2 eggs\n- 1 cup milk\n\n1. Boil the eggs in the milk.\n';
    const files = [
      { path: 'tart.md', text: title },
      { path: 'supper.md', text: page('1 Green Onion Tart (page 12)', 'Serve with a green onion.') },
    ];
    const { marks } = readManuscript(files, { only, style: style('terms: { scallion: [green onion] }') });
    expect(marks.map(({ file, mends }) => [file, mends.length])).toEqual([
      ['tart.md', 0],
      ['supper.md', 1],
    ]);
  });

  it('is marked without a sure mend', () => {
    const doubtful = marksOn(page('2 T oil', 'Boil the rice.'), style('units: { tablespoon: tablespoon }'));
    expect(doubtful.map(({ rule, mends }) => [rule, mends.map(({ sure }) => sure)])).toEqual([
      ['unit-style', [false]],
    ]);
    const scale = marksOn(
      page('2 leeks', 'Bake at 180°C.'),
      style('temperatures: { order: Fahrenheit (Celsius) }'),
    );
    expect(scale.map(({ rule, mends }) => [rule, mends])).toEqual([['temperature-style', []]]);
  });
});

const files = corpusIn('../shared/corpus/public-domain');

describe.skipIf(files === null)('a drafted house style', () => {
  it('is a valid one, leaves no decision open, and its sure mends leave nothing to mend', {
    timeout: 280_000,
  }, () => {
    const house = style(draftHouse(readManuscript(files ?? [], { only: [] })));
    const read = (texts: typeof files) => readManuscript(texts ?? [], { only, style: house });
    const first = read(files);
    expect(first.marks.filter(({ related }) => related.some(({ alike }) => alike))).toEqual([]);
    let texts = files ?? [];
    for (let round = 0; round < 2; round++) {
      const { marks } = read(texts);
      texts = texts.map((file) => ({
        path: file.path,
        text: mended(
          file.text,
          marks.filter((mark) => mark.file === file.path),
        ),
      }));
    }
    const left = read(texts).marks.filter(({ mends }) => mends.some(({ sure }) => sure));
    expect(left.map(({ file, rule, message }) => `${file} ${rule} ${message}`)).toEqual([]);
    expect(first.marks.length).toBeGreaterThan(500);
  });
});
