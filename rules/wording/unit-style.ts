/** Marks a unit that the book writes in more than one way. */
import type { BookRule } from '../rule.js';
import { lookAt, quoted } from '../style-marks.js';

export const unitStyle: BookRule = {
  scope: 'book',
  name: 'unit-style',
  topic: 'wording',
  weight: 'note',
  summary: 'A unit is written in several ways: "tablespoon", "tbsp", "T".',
  why: 'A cook who meets "T" after "tbsp" stops to ask whether it is another spoon.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
    'NIST SP 811, 6.1.5 (symbols of the SI take no full stop)',
  ],
  examples: [
    {
      title: 'a tablespoon in full and abbreviated',
      text: '# Dressed Leeks\n\nServes 2\n\n- 2 leeks\n- 2 tablespoons olive oil\n- 1 tbsp vinegar\n- 1 tablespoon capers\n\n1. Boil the leeks until tender, 12 minutes.\n2. Dress with the oil, vinegar and capers.\n',
      marks: ['tbsp'],
    },
    {
      title: 'one recipe in grams and the next in g',
      text: '# Plain Rice\n\nServes 2\n\n- 200 g rice\n- 20 g butter\n\n1. Boil the rice until tender, 12 minutes, and stir in the butter.\n\n# Plain Noodles\n\nServes 2\n\n- 200 grams egg noodles\n- 20 g butter\n\n1. Boil the noodles until tender, 6 minutes, and toss with the butter.\n',
      marks: ['grams'],
    },
    {
      title: 'singular and plural of one form',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 2 cups vegetable stock\n- 1 tbsp butter\n- 2 tbsp cream\n\n1. Simmer the rice in the stock until tender, 18 minutes, and stir in the butter and cream.\n',
      marks: [],
    },
    {
      title: 'two units that are each written in one way',
      text: '# Plain Rice\n\nServes 2\n\n- 200 g rice\n- 2 cups (480 mL) vegetable stock\n- 1 tablespoon butter\n\n1. Simmer the rice in the stock until tender, 18 minutes, and stir in the butter.\n',
      marks: [],
    },
  ],
  look: lookAt(['unit'], { subject: quoted }),
};
