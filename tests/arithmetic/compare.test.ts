import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { sameAmount, sumMeasures } from '../../src/arithmetic/compare.js';
import { convert } from '../../src/arithmetic/convert.js';
import { measure } from './measures.js';

const total = (...measures: Parameters<typeof sumMeasures>[0]): string | null => {
  const sum = sumMeasures(measures);
  if (sum === null) return null;
  const amount = sum.low.equals(sum.high)
    ? sum.low.toFraction()
    : `${sum.low.toFraction()}–${sum.high.toFraction()}`;
  return `${amount} ${sum.unit ?? 'of them'}`;
};

describe('measures add up', () => {
  test('a pound and eight ounces is a pound and a half', () => {
    const pounds = new Fraction('453.59237').mul(3, 2);
    expect(total(measure('1', 'pound'), measure('8', 'ounce'))).toBe(`${pounds.toFraction()} gram`);
  });
  test('grams and kilograms', () => {
    expect(total(measure('1/2', 'kilogram'), measure('250', 'gram'))).toBe('750 gram');
  });
  test('what stands after "plus" is added', () => {
    const listed = measure('1', 'liter', { plus: [measure('25', 'milliliter')] });
    expect(total(listed, measure('75', 'milliliter'))).toBe('1100 milliliter');
  });
  test('a range adds to both ends, whichever end was written first', () => {
    expect(total(measure('3', null, { high: '2' }), measure('1', null))).toBe('3–4 of them');
  });
  test('cloves and cans are counted', () => {
    expect(total(measure('2', 'clove'), measure('1/2', 'clove'))).toBe('5/2 clove');
    expect(total(measure('2', 'can'), measure('1', 'can'))).toBe('3 can');
  });
  test('cans of one stated size are counted too', () => {
    const can = (count: string) => measure(count, 'can', { pack: measure('400', 'gram') });
    expect(total(can('2'), can('1'), measure('1', 'can'))).toBe('4 can');
  });
  test('cans of two sizes add up by what they hold', () => {
    const small = measure('2', 'can', { pack: measure('200', 'gram') });
    const large = measure('1', 'can', { pack: measure('400', 'gram') });
    expect(total(small, large)).toBe('800 gram');
  });
  test('cans of a known size and grams add up', () => {
    const cans = measure('2', 'can', { pack: measure('400', 'gram') });
    expect(total(cans, measure('100', 'gram'))).toBe('900 gram');
  });
  test('the same said in other units is not added', () => {
    expect(total(measure('1', 'kilogram', { equals: [measure('2', 'pound')] }))).toBe('1000 gram');
  });
});

describe('measures do not add up', () => {
  test('when there are none', () => {
    expect(total()).toBeNull();
  });
  test('of a cup and a gram', () => {
    expect(total(measure('1', 'cup'), measure('100', 'gram'))).toBeNull();
  });
  test('of cans and cloves, and of cans and things', () => {
    expect(total(measure('1', 'can'), measure('1', 'clove'))).toBeNull();
    expect(total(measure('1', 'can'), measure('1', null))).toBeNull();
  });
  test('of a can of unknown size and grams', () => {
    expect(total(measure('1', 'can'), measure('100', 'gram'))).toBeNull();
  });
  test('of cans of two sizes and a can of neither', () => {
    const small = measure('1', 'can', { pack: measure('200', 'gram') });
    const large = measure('1', 'can', { pack: measure('400', 'gram') });
    expect(total(small, large, measure('1', 'can'))).toBeNull();
  });
  test('where a share is taken: half the butter is not half of anything by itself', () => {
    expect(total(measure('1/2', null, { share: true }), measure('1/2', null))).toBeNull();
  });
  test('where "plus" adds another kind', () => {
    expect(total(measure('1', 'cup', { plus: [measure('1', 'gram')] }))).toBeNull();
  });
});

describe('the same amount', () => {
  test('a quarter cup is four tablespoons', () => {
    expect(sameAmount(measure('1/4', 'cup'), measure('4', 'tablespoon'))).toBe(true);
  });
  test('a quarter cup is not three tablespoons', () => {
    expect(sameAmount(measure('1/4', 'cup'), measure('3', 'tablespoon'))).toBe(false);
  });
  test('one pound two ounces is eighteen ounces', () => {
    expect(sameAmount(measure('1', 'pound', { plus: [measure('2', 'ounce')] }), measure('18', 'ounce'))).toBe(
      true,
    );
  });
  test('an Australian tablespoon is four teaspoons, another one three', () => {
    expect(sameAmount(measure('1', 'tablespoon'), measure('4', 'teaspoon'), 'australian')).toBe(true);
    expect(sameAmount(measure('1', 'tablespoon'), measure('3', 'teaspoon'))).toBe(true);
  });
  test('a range is the same only as the same range, written either way', () => {
    expect(sameAmount(measure('2', null, { high: '3' }), measure('2', null))).toBe(false);
    expect(sameAmount(measure('2', null, { high: '3' }), measure('3', null, { high: '2' }))).toBe(true);
  });
  test('cups and grams cannot be compared', () => {
    expect(sameAmount(measure('1', 'cup'), measure('1', 'gram'))).toBeNull();
  });
  test('two cans of 400 g are 800 g', () => {
    expect(sameAmount(measure('2', 'can', { pack: measure('400', 'gram') }), measure('800', 'gram'))).toBe(
      true,
    );
  });
});

describe('for any measures', () => {
  const volumes = fc
    .tuple(
      fc.integer({ min: 1, max: 400 }),
      fc.integer({ min: 1, max: 16 }),
      fc.constantFrom('cup', 'tablespoon', 'teaspoon', 'milliliter', 'pint'),
    )
    .map(([numerator, denominator, id]) => measure(`${numerator}/${denominator}`, id));
  test('the order in which they are added does not matter', () => {
    fc.assert(
      fc.property(fc.array(volumes, { minLength: 1, maxLength: 8 }), (measures) => {
        expect(total(...measures.toReversed())).toBe(total(...measures));
      }),
    );
  });
  test('a measure in two halves is the whole', () => {
    fc.assert(
      fc.property(volumes, (whole) => {
        const half = measure(whole.amount.low.div(2).toFraction(), whole.unit);
        expect(total(half, half)).toBe(total(whole));
      }),
    );
  });
  const exact = (sum: ReturnType<typeof sumMeasures>) => sum?.low;
  const units = fc.constantFrom('cup', 'tablespoon', 'teaspoon', 'milliliter', 'pint', 'fluid-ounce');
  const shares = fc.array(fc.tuple(fc.integer({ min: 1, max: 20 }), units), { minLength: 1, maxLength: 6 });
  test('uses in mixed units equal the listed total exactly when the total is shared out among them', () => {
    fc.assert(
      fc.property(volumes, shares, fc.integer({ min: 1, max: 1000 }), (listed, parts, slip) => {
        const total = exact(sumMeasures([listed]))!;
        const all = parts.reduce((sum, [share]) => sum + share, 0);
        const uses = parts.map(([share, id]) => {
          const amount = convert(total.mul(share).div(all), 'milliliter', id)!;
          return measure(amount.toFraction(), id);
        });
        expect(exact(sumMeasures(uses))!.equals(total)).toBe(true);
        const [first, ...others] = uses;
        const slipped = measure(first!.amount.low.add(new Fraction(1, slip)).toFraction(), first!.unit);
        expect(exact(sumMeasures([slipped, ...others]))!.equals(total)).toBe(false);
      }),
    );
  });
});
