/** Marks a sentence that opens with a numeral. */
import { decisionsOf, openDecisions } from '../../src/kitchen/wording/decisions.js';
import { rewrite } from '../../src/kitchen/wording/rewrite.js';
import type { BookRule } from '../rule.js';
import { mendsOf, placeOf } from '../style-marks.js';

export const openingNumber: BookRule = {
  scope: 'book',
  name: 'opening-number',
  topic: 'wording',
  weight: 'note',
  summary: 'A sentence opens with a numeral.',
  why: 'After the number of a step, or a full stop, a numeral is read as part of what stands before it.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'a step that opens with a number of eggs',
      text: '# Egg Rice\n\nServes 2\n\n- 1 cup rice\n- 2 eggs\n\n1. Boil the rice until tender, 12 minutes.\n2. 2 eggs go in last; stir until they are set.\n',
      marks: ['2'],
    },
    {
      title: 'a second sentence that opens with a time',
      text: '# Egg Rice\n\nServes 2\n\n- 1 cup rice\n- 2 eggs\n\n1. Boil the rice until tender. 5 minutes before it is done, break in the eggs.\n',
      marks: ['5'],
    },
    {
      title: 'numbers spelled out, and numbers inside a sentence',
      text: '# Egg Rice\n\nServes 2\n\n- 1 cup rice\n- 2 eggs\n\n1. Boil the rice until tender, 12 minutes. Two eggs go in last; stir until they are set, 2 minutes.\n',
      marks: [],
    },
    {
      title: 'a decimal and an abbreviation before a number',
      text: '# Egg Rice\n\nServes 2\n\n- 1 cup rice\n- 2 eggs\n\n1. Boil the rice in approx. 3 times its volume of water until tender, 12 minutes. Break in the eggs and stir until set.\n',
      marks: [],
    },
  ],
  *look(book, style) {
    const decisions = style.stated
      ? decisionsOf(book).filter(({ aspect }) => aspect === 'opening')
      : openDecisions(book, style).filter(({ aspect }) => aspect === 'opening');
    for (const { forms } of decisions) {
      const places = forms.flatMap((form) => form.places);
      const [first, ...more] = places;
      // With a house style every place is marked by itself; without one a recipe gets one mark.
      for (const place of style.stated ? places : [first!]) {
        const { usage } = place;
        const figures = usage.passage.text.slice(usage.start, usage.end);
        yield {
          ...placeOf(place),
          subject: figures,
          message: `A sentence opens with the numeral ${figures}.`,
          advice: 'Spell it out, or turn the sentence round.',
          related: style.stated
            ? []
            : more.map(({ dish, span }) => ({
                file: dish.page.path,
                span,
                message: 'here too',
                alike: true,
              })),
          mends: mendsOf(usage.passage, rewrite(usage, 'words')),
        };
      }
    }
  },
};
