/** What a line weighs, against USDA SR28 (its NDB number beside each) and the sums that a cook does with it. */
import { expect, test } from 'vitest';
import { weightOfListing } from '../../src/kitchen/listing-weight.js';
import { readManuscript } from '../../src/reading/read.js';

function weigh(line: string) {
  const text = `# Stew\n\nServes 4\n\n- ${line}\n- 1 cup water\n\n1. Boil all, 10 minutes.\n`;
  const [dish] = readManuscript([{ path: 'a.md', text }]).dishes;
  const weight = weightOfListing(dish!.recipe.listings[0]!);
  if (weight === null) return null;
  const { low, high } = weight.sum;
  return [low, high].map((grams) => Number(grams.valueOf().toFixed(1)));
}

test.each([
  ['1 cup all-purpose flour', 125, '20081: 1 cup is 125 g'],
  ['2 cups plus 2 tablespoons all-purpose flour', 265.6, '20081: 2⅛ times 125 g'],
  ['1 cup (240 mL) honey', 339, '19296: 1 cup is 339 g'],
  ['1 cup packed brown sugar', 220, '19334: 1 cup packed is 220 g'],
  ['2 medium onions, chopped', 220, '11282: a medium one is 110 g'],
  ['3 large eggs', 150, '01123: a large one is 50 g'],
  ['1 large tomato', 182, '11529: a large whole one is 182 g'],
])('%s', (line, grams) => {
  const [low, high] = weigh(line)!;
  expect(low!).toBeLessThanOrEqual(grams);
  expect(high!).toBeGreaterThanOrEqual(grams);
  // A cup and sixteen tablespoons of the handbook differ by what it rounds.
  expect(high! - low!).toBeLessThan(grams / 100);
});

test('a size that is not said leaves a range', () => {
  // 11282: 70 g when small, 150 g when large.
  expect(weigh('1 onion')).toEqual([70, 150]);
});

test.each([
  ['several foods in one measure', '1 cup walnuts and raisins'],
  ['a part of a food', 'juice of 2 lemons'],
  ['a food that was changed before it is measured', '1 cup cooked lentils'],
  ['packs', '2 (14½-ounce) cans tomatoes'],
  ['no amount', 'salt'],
  ['a food that the larder does not know', '2 cups moonwort'],
])('no weight is given for %s', (_, line) => {
  expect(weigh(line)).toBeNull();
});
