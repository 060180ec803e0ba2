/** Makes measures for the tests of arithmetic, as the grammar would. */
import Fraction from 'fraction.js';
import type { Measure } from '../../src/grammar/types.js';

/** `low` and `high` as text: "1/2", "3". */
export function measure(
  low: string,
  unit: string | null,
  more: Partial<Omit<Measure, 'amount'>> & { high?: string } = {},
): Measure {
  const { high = low, ...rest } = more;
  return {
    kind: 'measure',
    start: 0,
    end: 0,
    amount: { low: new Fraction(low), high: new Fraction(high), approximation: null },
    unit,
    plus: [],
    equals: [],
    pack: null,
    share: false,
    ...rest,
  };
}
