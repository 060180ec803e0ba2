import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { convert } from '../../src/arithmetic/convert.js';
import { volumeWeightAgreement, weighPieces, weighVolume } from '../../src/arithmetic/weigh.js';
import { foodNamed } from '../../src/larder/foods.js';
import { larder } from '../../src/larder/load.js';
import { partGrams, refuseShares } from '../../src/larder/weights.js';

const single = (value: Fraction | number) => ({ low: new Fraction(value), high: new Fraction(value) });
const milliliters = (amount: string | number, unit: string) =>
  single(convert(new Fraction(amount), unit, 'milliliter')!);

/** USDA SR28, by NDB number: food, amount, unit, wording, grams. */
const cups: readonly (readonly [string, string, string, string, string, number])[] = [
  ['20081', 'all-purpose flour', '1', 'cup', '', 125],
  ['20083', 'bread flour', '1', 'cup', '', 137],
  ['20080', 'whole-wheat flour', '1', 'cup', '', 120],
  ['19335', 'granulated sugar', '1', 'cup', '', 200],
  ['19334', 'brown sugar', '1', 'cup', 'packed', 220],
  ['19336', 'powdered sugar', '1', 'cup', 'sifted', 100],
  ['19336', 'powdered sugar', '1', 'cup', 'unsifted', 120],
  ['19296', 'honey', '1', 'cup', '', 339],
  ['19353', 'maple syrup', '1', 'cup', '', 315],
  ['19304', 'molasses', '1', 'cup', '', 337],
  ['01145', 'unsalted butter', '1', 'cup', '', 227],
  ['01077', 'whole milk', '1', 'quart', '', 976],
  ['01088', 'buttermilk', '1', 'cup', '', 245],
  ['01053', 'heavy cream', '1', 'cup', 'fluid', 238],
  ['01053', 'heavy cream', '1', 'cup', 'whipped', 120],
  ['04053', 'olive oil', '1', 'cup', '', 216],
  ['04053', 'olive oil', '1', 'tablespoon', '', 13.5],
  ['02047', 'salt', '1', 'teaspoon', '', 6],
  ['02047', 'salt', '1', 'cup', '', 292],
  ['18369', 'baking powder', '1', 'teaspoon', '', 4.6],
  ['18372', 'baking soda', '1', 'teaspoon', '', 4.6],
  ['18375', 'active dry yeast', '1', 'tablespoon', '', 12],
  ['19165', 'cocoa powder', '1', 'cup', '', 86],
  ['20027', 'cornstarch', '1', 'cup', '', 128],
  ['20044', 'white rice', '1', 'cup', '', 185],
  ['16098', 'peanut butter', '1', 'cup', '', 258],
  ['12061', 'almond', '1', 'cup', 'sliced', 92],
  ['12061', 'almond', '1', 'cup', 'whole', 143],
  ['11282', 'onion', '1', 'cup', 'chopped', 160],
  ['11282', 'onion', '1', 'cup', 'sliced', 115],
  ['11215', 'garlic', '1', 'teaspoon', '', 2.8],
  ['11529', 'tomato', '1', 'cup', 'chopped', 180],
  ['11124', 'carrot', '1', 'cup', 'grated', 110],
  ['09152', 'lemon juice', '1', 'cup', '', 244],
  ['09040', 'banana', '1', 'cup', 'mashed', 225],
  ['01009', 'cheddar cheese', '1', 'cup', 'shredded', 113],
  ['01019', 'feta', '1', 'cup', 'crumbled', 150],
  ['16069', 'lentil', '1', 'cup', '', 192],
  ['08120', 'rolled oats', '1', 'cup', '', 81],
  ['20020', 'cornmeal', '1', 'cup', '', 122],
  ['02010', 'ground cinnamon', '1', 'teaspoon', '', 2.6],
];

/** USDA SR28, by NDB number: food, count, unit, size, grams. */
const pieces: readonly (readonly [string, string, number, string, string, number])[] = [
  ['11282', 'onion', 1, '', 'medium', 110],
  ['11282', 'onion', 1, '', 'large', 150],
  ['11215', 'garlic', 1, 'clove', '', 3],
  ['11529', 'tomato', 1, '', 'medium', 123],
  ['11124', 'carrot', 1, '', 'medium', 61],
  ['11143', 'celery', 1, 'stalk', 'medium', 40],
  ['11352', 'potato', 1, '', 'large', 369],
  ['01123', 'egg', 1, '', 'large', 50],
  ['01124', 'egg white', 1, '', 'large', 33],
  ['09040', 'banana', 1, '', 'medium', 118],
  ['09003', 'apple', 1, '', 'medium', 182],
  ['01145', 'butter', 1, 'stick', '', 113],
  ['11135', 'cauliflower', 1, 'head', 'medium', 588],
];

describe('fifty and more measures of SR28 come out as SR28 has them', () => {
  test.each(cups)('%s %s, %s %s %s', (ndb, name, amount, unit, wording, grams) => {
    const food = foodNamed(name)!;
    const weighed = weighVolume(food, milliliters(amount, unit), wording === '' ? [] : [wording])!;
    expect(weighed.each.some((one) => Math.abs(one.low.valueOf() - grams) < 0.001)).toBe(true);
    expect(larder.volumeWeights.some((row) => row.food === food.name && row.ndb === ndb)).toBe(true);
  });
  test.each(pieces)('%s %s, %d %s %s', (ndb, name, count, unit, size, grams) => {
    const food = foodNamed(name)!;
    const weighed = weighPieces(food, single(count), unit, size === '' ? [] : [size])!;
    expect(weighed.each.some((one) => one.low.equals(new Fraction(String(grams))))).toBe(true);
    expect(larder.pieceWeights.some((row) => row.food === food.name && row.ndb === ndb)).toBe(true);
  });
});

describe('the tables are as large as they must be', () => {
  const distinct = (rows: readonly { readonly ndb: string }[]) => new Set(rows.map((row) => row.ndb)).size;
  test('300 foods and more have a weight by the volume', () => {
    expect(distinct(larder.volumeWeights)).toBeGreaterThanOrEqual(300);
  });
  test('150 foods and more have a weight by the piece', () => {
    expect(distinct(larder.pieceWeights)).toBeGreaterThanOrEqual(150);
  });
});

describe('the weight of a volume depends on the food', () => {
  const verdict = (name: string, amount: string, unit: string, grams: number, words: string[] = []) =>
    volumeWeightAgreement(foodNamed(name)!, milliliters(amount, unit), single(grams), words);
  test('a cup of flour may be sifted or dipped, and is no cup of honey', () => {
    for (const grams of [113, 120, 125, 140, 150]) expect(verdict('flour', '1', 'cup', grams)).toBe('right');
    expect(verdict('flour', '1', 'cup', 339)).toBe('wrong');
  });
  test('a cup of honey is not a cup of water', () => {
    expect(verdict('honey', '1', 'cup', 340)).toBe('right');
    expect(verdict('honey', '1', 'cup', 240)).not.toBe('right');
  });
  test('a cup of cream is no cup of whipped cream unless the line says so', () => {
    expect(verdict('heavy cream', '1', 'cup', 120)).toBe('wrong');
    expect(verdict('heavy cream', '1', 'cup', 120, ['whipped'])).toBe('right');
  });
  test('a kind without a row of its own weighs what its class does', () => {
    expect(verdict('red onion', '1', 'cup', 160, ['chopped'])).toBe('right');
  });
  test('a kind that has only its class to go by is judged more leniently than the class', () => {
    expect(verdict('flour', '1', 'cup', 80)).toBe('loose');
    expect(verdict('chestnut flour', '1', 'cup', 80)).toBe('right');
  });
  test('a food that no table weighs is not judged', () => {
    expect(verdict('rose water', '1', 'cup', 999)).toBeNull();
  });
});

describe('parts', () => {
  test('half of a bone-in chicken is bone and skin (common practice), as SR28 05011 has 52 % of refuse', () => {
    const shares = refuseShares(foodNamed('chicken')!);
    expect(Math.max(...shares)).toBe(0.52);
    expect(shares.every((share) => share > 0.3 && share < 0.55)).toBe(true);
  });
  test('a lemon gives 48 g of juice (SR28 09152), an egg 33 g of white and 17 g of yolk (SR28 01124, 01125)', () => {
    expect(partGrams(foodNamed('lemon juice')!, foodNamed('lemon')!)).toBe(48);
    const egg = foodNamed('egg')!;
    expect(partGrams(foodNamed('egg white')!, egg)).toBe(33);
    expect(partGrams(foodNamed('egg yolk')!, egg)).toBe(17);
  });
  test('an onion gives no lemon juice', () => {
    expect(partGrams(foodNamed('lemon juice')!, foodNamed('onion')!)).toBeNull();
  });
});
