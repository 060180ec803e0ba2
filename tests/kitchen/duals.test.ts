/** What is said twice: the arithmetic, the system it speaks for, its mends, and the corpus as a person judged it. */
import { describe, expect, it, test } from 'vitest';
import { dualMeasureDisagreement } from '../../rules/measures/dual-measure-disagreement.js';
import { wrongAlternatives } from '../../src/kitchen/boned.js';
import { namesOf } from '../../src/kitchen/book-names.js';
import { equivalentsOf } from '../../src/kitchen/equivalents.js';
import type { HouseStyle } from '../../src/manuscript/house-style.js';
import { undecided } from '../../src/manuscript/house-style.js';
import { labelledDuals } from '../accuracy/duals.js';
import { corpusIn } from '../accuracy/plants.js';
import { dish } from './dishes.js';

const stir = ['Stir everything together.'];

function findings(lines: readonly string[], style: HouseStyle = undecided) {
  const read = dish(lines, stir);
  const book = { pages: [read.page], dishes: [read], unclear: [] };
  return [...dualMeasureDisagreement.look(read, style, namesOf(book))];
}

describe('the message shows the arithmetic', () => {
  test.each([
    ['3 pounds (1.1 kg) cabbage', '3 pounds is 1.36 kg; the line says 1.1 kg.'],
    ['1.1 kg (3 pounds) cabbage', '3 pounds is 1.36 kg; the line says 1.1 kg.'],
    ['1 cup (720 mL) vinegar', '1 cup is 237 mL; the line says 720 mL.'],
    [
      '1 (15-ounce / 444 mL) can black beans',
      '15-ounce is a weight, 425 g; the line says 444 mL, as if it were fluid ounces.',
    ],
    ['1 cup (125 g) honey', '1 cup of honey weighs about 336 to 339 g; the line says 125 g.'],
  ])('%s', (line, message) => {
    expect(findings([line]).map((finding) => finding.message)).toEqual([message]);
  });
});

describe('whose cups and spoons are meant', () => {
  const australian: HouseStyle = { ...undecided, system: 'australian' };
  const american: HouseStyle = { ...undecided, system: 'us-customary' };
  it('is what the house style says', () => {
    expect(findings(['2 tablespoons (40 mL) milk'], australian)).toEqual([]);
    expect(findings(['2 tablespoons (40 mL) milk'], american)).toHaveLength(1);
    expect(findings(['2 tablespoons (30 mL) milk'], australian)).toHaveLength(1);
  });
  it('is what most of the recipe says where the house has not decided, and the rest is asked about', () => {
    const lines = ['1 cup (240 mL) water', '½ cup (120 mL) cream', '2 tablespoons (40 mL) milk'];
    const found = findings(lines);
    expect(found.map((finding) => finding.weight)).toEqual(['query']);
    expect(found[0]!.message).toContain('australian');
  });
  it('may be British: metric spoons beside an imperial pint', () => {
    expect(
      findings(['1 pint (570 mL) water', '2 tablespoons (30 mL) oil', '1 teaspoon (5 mL) honey']),
    ).toEqual([]);
  });
});

describe('mends', () => {
  const labels = (line: string, ...others: string[]) =>
    findings([line, ...others])[0]!.mends!.map(({ label, sure, edits }) => [label, sure, edits[0]!.text]);
  it('offers both ways where nothing says which measure is right', () => {
    expect(labels('3 pounds (1.1 kg) cabbage')).toEqual([
      ['Keep 3 pounds, and write 1.4 kg', false, '1.4 kg'],
      ['Keep 1.1 kg, and write 2½ pounds', false, '2½ pounds'],
    ]);
  });
  it('is sure where a third measure confirms the first, or a weight was taken for a volume', () => {
    expect(labels('1 pound (16 ounces / 350 g) butter')[0]).toEqual([
      'Keep 1 pound, and write 455 g',
      true,
      '455 g',
    ]);
    expect(labels('1 (15-ounce / 444 mL) can black beans')[0]).toEqual([
      'Keep 15-ounce, and write 425 g',
      true,
      '425 g',
    ]);
  });
  it('rounds as the recipe does', () => {
    expect(labels('12 ounces (500 g) plums', '1 pound (450 g) pears', '8 ounces (230 g) figs')[0]).toEqual([
      'Keep 12 ounces, and write 340 g',
      false,
      '340 g',
    ]);
    expect(labels('1 pound (700 g) plums', '2 ounces (57 g) figs')[0]![2]).toBe('454 g');
  });
});

describe('rules of practice are within the handbook’s tolerance, and three times as much is not', () => {
  const verdicts = (line: string) => equivalentsOf(dish([line], stir)).map((each) => each.agreement);
  // trade.md's facts of practice: four cloves of garlic are two teaspoons, a medium onion or tomato is a cup.
  test.each([
    ['4 cloves garlic, chopped (2 teaspoons)', '12 cloves garlic, chopped (2 teaspoons)'],
    ['1 medium onion, chopped (1 cup)', '1 medium onion, chopped (3 cups)'],
    ['1 medium tomato, chopped (1 cup)', '1 medium tomato, chopped (3 cups)'],
    ['1 cup chopped onion (about 1 medium)', '3 cups chopped onion (about 1 medium)'],
    ['3 tablespoons lemon juice (from 1 lemon)', '1 cup lemon juice (from 1 lemon)'],
    ['4 large egg whites (½ cup)', '4 large egg whites (2 cups)'],
  ])('%s; not %s', (right, wrong) => {
    expect(verdicts(right)).toEqual(['right']);
    expect(verdicts(wrong)).toEqual(['wrong']);
  });
  test('half of bone-in chicken is meat (SR28 05011: 52 % refuse), and not all of it', () => {
    const wrong = (line: string) => [...wrongAlternatives(dish([line], stir))].length;
    expect(wrong('3 pounds bone-in chicken, or 1½ pounds boneless')).toBe(0);
    expect(wrong('3 pounds bone-in, skin-on chicken thighs, or 1½ pounds boneless')).toBe(0);
    expect(wrong('1½ pounds boneless chicken, or 3 pounds bone-in')).toBe(0);
    expect(wrong('3 pounds bone-in chicken, or 3 pounds boneless')).toBe(1);
    expect(wrong('3 pounds bone-in chicken, or ½ pound boneless')).toBe(1);
  });
});

const files = corpusIn('../shared/corpus/public-domain');

describe.skipIf(files === null)('the dual measures of the corpus', () => {
  test('have the verdict of a person, every one', { timeout: 120_000 }, () => {
    const duals = labelledDuals(files!);
    expect(duals.filter((dual) => dual.label !== dual.verdict)).toEqual([]);
    expect(duals.length).toBeGreaterThan(80);
  });
});
