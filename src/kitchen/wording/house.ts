/** Knows which form the house style wants. */
import { foodNamed } from '../../larder/foods.js';
import { larder } from '../../larder/load.js';
import { fold } from '../../larder/names.js';
import { unitNamed } from '../../larder/units.js';
import type { HouseStyle } from '../../manuscript/house-style.js';
import { yieldForm } from './statements.js';
import type { Aspect } from './types.js';

/** The form that the house style wants of a decision; null where it leaves it open. Terms and spellings are looked for by their words. */
export function wantedForm(style: HouseStyle, aspect: Aspect, about: string): string | null {
  switch (aspect) {
    case 'unit':
      return wantedUnit(style, about);
    case 'number':
      return style.numbers;
    case 'range':
      return style.ranges;
    case 'degree':
      return style.temperatures.form;
    case 'scales':
      return style.temperatures.order;
    case 'title':
      return style.titles;
    case 'capital':
      return style.listings;
    case 'yield': {
      const example = style.yields === null ? null : yieldForm(style.yields);
      return example?.about === about ? example.form : null;
    }
    default:
      return null;
  }
}

/** Whether the house style has decided it. */
export function isDecided(style: HouseStyle, aspect: Aspect, about: string): boolean {
  if (aspect === 'term') return Object.keys(style.terms).some((term) => foodNamed(term)?.name === about);
  if (aspect !== 'spelling') return wantedForm(style, aspect, about) !== null;
  // "Tomato purée" is decided where "purée" is.
  const words = new Set([about, ...about.split(' ')].map(fold));
  return Object.entries(style.spellings).some((decided) =>
    decided.flat().some((word) => words.has(fold(word))),
  );
}

/** By the larder's id: the short form that most books have. */
const symbols = new Map(
  larder.kitchenWords.flatMap(({ is, word, means }) =>
    is === 'unit-symbol' && means !== undefined ? [[unitNamed(word)?.id ?? word, means]] : [],
  ),
);

function wantedUnit(style: HouseStyle, id: string): string | null {
  const own = style.units.own[id];
  if (own !== undefined) return own;
  const { form } = style.units;
  if (form === null) return null;
  const name = id.replaceAll('-', ' ');
  const symbol = symbols.get(id);
  if (form === 'spelled out' || symbol === undefined) return name;
  // Symbols of the SI take no full stop (NIST SP 811, 6.1.5).
  return form === 'abbreviated' || METRIC.test(id) ? symbol : `${symbol}.`;
}

const METRIC = /(gram|liter|meter)$/;
