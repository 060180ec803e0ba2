/** Marks a cup, spoon or pint whose size is not the one that the rest of the book gives it. */

import Fraction from 'fraction.js';
import { significant } from '../../src/arithmetic/write.js';
import { mixedUnits, type SizedUnit } from '../../src/kitchen/book-systems.js';
import type { BookRule } from '../rule.js';

export const spoonSystemMixed: BookRule = {
  scope: 'book',
  name: 'spoon-system-mixed',
  topic: 'measures',
  weight: 'query',
  summary: 'A cup, spoon or pint has another size here than in the rest of the book.',
  why: 'Cups, pints and tablespoons differ by country: a reader owns one set, and needs to know which is meant.',
  sources: [
    'NIST Handbook 44, appendix C; 21 CFR 101.9(b)(5)(viii)',
    'Weights and Measures Act 1985 (UK); AS 1325 for the Australian tablespoon (from memory)',
  ],
  examples: [
    {
      title: 'a tablespoon of 15 mL and one of 20 mL',
      text: '# Dressing\n\nServes 4\n\n- 2 tablespoons (30 mL) vinegar\n- 3 tablespoons (45 mL) olive oil\n\n1. Whisk the vinegar and the oil.\n\n# Glaze\n\nServes 4\n\n- 2 tablespoons (40 mL) milk\n- 1 cup honey\n\n1. Stir the milk into the honey.\n',
      marks: ['2 tablespoons (40 mL)'],
    },
    {
      title: 'a cup of 240 mL and one of 250 mL',
      text: '# Batter\n\nServes 4\n\n- 1 cup (240 mL) milk\n- ½ cup (125 mL) water\n- 2 cups flour\n\n1. Whisk the milk and the water into the flour.\n',
      marks: ['½ cup (125 mL)'],
    },
    {
      title: 'one set of spoons',
      text: '# Dressing\n\nServes 4\n\n- 2 tablespoons (30 mL) vinegar\n- 1 cup (240 mL) olive oil\n- ⅓ cup (80 mL) milk\n- 2 teaspoons (10 mL) honey\n\n1. Whisk the vinegar, oil, milk and honey.\n',
      marks: [],
    },
    {
      title: 'figures rounded so far that either cup may be meant',
      text: '# Batter\n\nServes 4\n\n- 1 cup (240 mL) milk\n- 1½ cups (365 mL) water\n- 2 cups flour\n\n1. Whisk the milk and the water into the flour.\n',
      marks: [],
    },
  ],
  *look(book, style) {
    // Where the book has said whose spoons it means, the arithmetic of each dual is judged by them.
    if (style.system !== null) return;
    for (const { unit, usual, others } of mixedUnits(book)) {
      for (const { first, count } of others) {
        const { dish, dual } = first;
        const more =
          count > 2 ? `, and in ${count - 1} more places` : count > 1 ? ', and in one more place' : '';
        yield {
          file: dish.page.path,
          recipe: dish.recipe.title?.text ?? null,
          span: dual.passage.span(dual.first.start, Math.max(dual.first.end, dual.second.end)),
          subject: unit,
          message: `A ${unit} is ${milliliters(first)} here${more}; elsewhere in the book it is ${milliliters(usual)}.`,
          advice: 'Use one set of cups and spoons, and say in front which.',
          related: [
            {
              file: usual.dish.page.path,
              span: usual.dual.passage.span(usual.dual.first.start, usual.dual.second.end),
              message: `a ${unit} of ${milliliters(usual)}`,
            },
          ],
        };
      }
    }
  },
};

function milliliters({ stated }: SizedUnit): string {
  return `${significant(new Fraction(stated))} mL`;
}
