/** Marks an equivalent that the handbook, or the rest of the book, contradicts. */

import { baseUnits } from '../../src/arithmetic/units.js';
import { writtenAmount } from '../../src/arithmetic/write.js';
import { printFraction } from '../../src/grammar/print.js';
import { type BonedAlternative, wrongAlternatives } from '../../src/kitchen/boned.js';
import { type Drift, driftsOf } from '../../src/kitchen/book-equivalents.js';
import { contradicted } from '../../src/kitchen/duals.js';
import { type Equivalent, equivalentsOf } from '../../src/kitchen/equivalents.js';
import type { Dish } from '../../src/kitchen/types.js';
import { unitById } from '../../src/larder/units.js';
import type { BookRule, Finding } from '../rule.js';

export const equivalentDisagreement: BookRule = {
  scope: 'book',
  name: 'equivalent-disagreement',
  topic: 'measures',
  weight: 'query',
  summary:
    'An equivalent disagrees with the handbook or with the rest of the book: a medium onion is 1 cup here and ½ cup there.',
  why: 'A reader who has the cup shops by the one, and a reader who has the onion by the other.',
  sources: [
    'USDA SR28 for the weight of pieces, of cups, and of bone, shell and peel',
    'src/larder/tolerances.yaml: how far kitchens differ (common practice)',
  ],
  examples: [
    {
      title: 'a medium onion that is 1 cup here and ½ cup there',
      text: '# Onion Soup\n\nServes 4\n\n- 1 medium onion, chopped (about 1 cup)\n- 4 cups vegetable stock\n\n1. Simmer the onion in the stock until soft.\n\n# Onion Rice\n\nServes 4\n\n- 2 medium onions, chopped (about 1 cup)\n- 1 cup rice\n- 2 cups water\n\n1. Simmer the onions and the rice in the water until soft.\n',
      marks: ['2 medium onions, chopped (about 1 cup)'],
    },
    {
      title: 'a medium onion of three cups',
      text: '# Onion Soup\n\nServes 4\n\n- 1 medium onion, chopped (3 cups)\n- 4 cups vegetable stock\n\n1. Simmer the onion in the stock until soft.\n',
      marks: ['1 medium onion, chopped (3 cups)'],
    },
    {
      title: 'as much boneless chicken as chicken with its bones',
      text: '# Chicken Broth\n\nServes 4\n\n- 3 pounds bone-in chicken thighs, or 3 pounds boneless\n- 8 cups water\n\n1. Simmer the chicken in the water until a thermometer reads 165°F.\n',
      marks: ['3 pounds bone-in chicken thighs, or 3 pounds'],
    },
    {
      title: 'the rules of thumb of the kitchen',
      text: '# Tomato Sauce\n\nServes 4\n\n- 1 medium onion, chopped (about 1 cup)\n- 4 cloves garlic, chopped (2 teaspoons)\n- 3 medium tomatoes, chopped (about 3 cups)\n- 2 lemons, juiced (about ⅓ cup)\n- 4 large egg whites (about ½ cup)\n\n1. Simmer the onion, garlic and tomatoes until soft, stir in the lemon juice, and fold in the egg whites, beaten stiff.\n',
      marks: [],
    },
    {
      title: 'half as much boneless chicken as chicken with its bones',
      text: '# Chicken Broth\n\nServes 4\n\n- 3 pounds bone-in chicken, or 1½ pounds boneless\n- 8 cups water\n\n1. Simmer the chicken in the water until a thermometer reads 165°F.\n',
      marks: [],
    },
  ],
  *look(book, style) {
    for (const dish of book.dishes) {
      if (equivalentsOf(dish).length === 0 && wrongAlternatives(dish).length === 0) continue;
      const place = placeOf(dish);
      const wrong = contradicted(dish, style.system);
      let before: Equivalent | null = null;
      for (const each of equivalentsOf(dish)) {
        if (each.agreement === null || each.agreement === 'right' || wrong.has(each.passage)) continue;
        // "12 onions (3 pounds / 1.4 kg)" is one equivalent, said twice.
        if (before?.passage !== each.passage || before.extent.start !== each.extent.start)
          yield { ...place, ...againstHandbook(each) };
        before = each;
      }
      for (const each of wrongAlternatives(dish)) yield { ...place, ...againstRefuse(each) };
    }
    for (const drift of driftsOf(book)) yield { ...placeOf(drift.saying.dish), ...againstBook(drift) };
  },
};

function placeOf(dish: Dish): { file: string; recipe: string | null } {
  return { file: dish.page.path, recipe: dish.recipe.title?.text ?? null };
}

function againstHandbook({
  passage,
  extent,
  count,
  unit,
  amountText,
  food,
  form,
  pieces,
  stated,
}: Equivalent): Finding {
  const said = passage.text.slice(amountText.start, amountText.end);
  const piece = unit === null ? '' : ` ${unitById(unit).names[0]}`;
  const thing = `${food.name}${piece}${form === null ? '' : ` (${form})`}`;
  return {
    span: passage.span(extent.start, closed(passage.text, extent.end)),
    subject: food.name,
    message: `${printFraction(count.high)} × ${thing} weighs about ${writtenAmount(pieces!, baseUnits.mass)} by the handbook; ${said} weighs about ${writtenAmount(stated!, baseUnits.mass)}.`,
    advice: 'Check the number of pieces, their size and the amount.',
  };
}

function againstRefuse({ listing, extent, whole, trimmed, expected, refuse }: BonedAlternative): Finding {
  const { passage } = listing;
  const words = (of: { start: number; end: number }) => passage.text.slice(of.start, of.end);
  return {
    span: passage.span(extent.start, extent.end),
    subject: listing.line.foods[0]!.name,
    message: `${words(whole)} with the ${refuse} give about ${writtenAmount(expected, baseUnits.mass)} without it; the line says ${words(trimmed)}.`,
    advice: 'Allow for what is thrown away.',
  };
}

function againstBook({ saying, usual, expected }: Drift): Finding {
  const { passage, extent } = saying;
  const text = (of: Drift['usual']) =>
    of.passage.text.slice(of.extent.start, closed(of.passage.text, of.extent.end));
  return {
    span: passage.span(extent.start, closed(passage.text, extent.end)),
    subject: saying.food,
    message: `"${text(saying)}" of ${saying.food}; elsewhere the book has "${text(usual)}", by which it would be ${writtenAmount(expected, saying.amountUnit)}.`,
    advice: 'Use one equivalent throughout the book.',
    related: [
      {
        file: usual.dish.page.path,
        span: usual.passage.span(usual.extent.start, closed(usual.passage.text, usual.extent.end)),
        message: 'what the book says elsewhere',
      },
    ],
  };
}

/** With the parenthesis that closes an equivalent. */
function closed(text: string, end: number): number {
  return text[end] === ')' ? end + 1 : end;
}
