/** Says measures in words for a hover. */
import pluralize from 'pluralize';
import type { Sum } from '../arithmetic/compare.js';
import { unit as unitRow } from '../arithmetic/units.js';
import { printAmount } from '../grammar/print.js';
import type { Amount, Measure } from '../grammar/types.js';

/** "1 1/2 cups plus 2 tablespoons = 390 milliliters". */
export function measureWords(measure: Measure): string {
  const { amount, unit, share, plus, equals, pack } = measure;
  const said = share ? `${printAmount(amount)} of it` : amountWords(amount, unit);
  return [
    pack === null ? said : `${said} of ${measureWords(pack)} each`,
    ...plus.map((part) => ` plus ${measureWords(part)}`),
    ...equals.map((other) => ` = ${measureWords(other)}`),
  ].join('');
}

/** "2 to 3 cups"; the number alone where the things themselves are counted. */
export function sumWords({ low, high, unit }: Sum): string {
  return amountWords({ low, high, approximation: null }, unit);
}

/** "4.2 to 5 ounces": decimals, as a scale shows them. */
export function scaleWords({ low, high, unit }: Sum): string {
  const shown = low.equals(high) ? `${low.valueOf()}` : `${low.valueOf()} to ${high.valueOf()}`;
  return `${shown} ${unitName(unit!, high.gt(1))}`;
}

function amountWords(amount: Amount, unit: string | null): string {
  if (unit === null) return printAmount(amount);
  return `${printAmount(amount)} ${unitName(unit, amount.high.gt(1))}`;
}

function unitName(unit: string, several: boolean): string {
  return pluralize(unitRow(unit)?.names[0] ?? unit, several ? 2 : 1);
}
