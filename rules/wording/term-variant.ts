/** Marks a food that the book calls by more than one name. */
import type { BookRule } from '../rule.js';
import { lookAt, quoted, unwantedFindings } from '../style-marks.js';

const look = lookAt(['term'], { subject: quoted });

export const termVariant: BookRule = {
  scope: 'book',
  name: 'term-variant',
  topic: 'wording',
  weight: 'note',
  summary: 'One food goes by several names: "scallions" here, "green onions" there.',
  why: 'A cook who reads two names buys two things, or looks in vain for the second.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'scallions in one recipe and green onions in the next',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 2 scallions, sliced\n\n1. Boil the rice until tender, 12 minutes.\n2. Stir in the scallions.\n\n# Plain Noodles\n\nServes 2\n\n- 8 ounces egg noodles\n- 2 green onions, sliced\n\n1. Boil the noodles with the green onions until tender, 6 minutes. Serve.\n',
      marks: ['green onions'],
    },
    {
      title: 'a list with cilantro and a method with coriander leaves',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 1 cup cilantro\n\n1. Boil the rice until tender, 12 minutes.\n2. Stir in the coriander leaves.\n',
      marks: ['coriander leaves'],
    },
    {
      title: 'a name that only says more of the food',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 1 teaspoon ground black pepper\n\n1. Boil the rice until tender, 12 minutes, and stir in the black pepper.\n',
      marks: [],
    },
    {
      title: 'two foods that are kin',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 2 scallions, sliced\n- 1 shallot, minced\n\n1. Boil the rice with the shallot until tender, 12 minutes. Stir in the scallions.\n',
      marks: [],
    },
  ],
  *look(book, style) {
    yield* look(book, style);
    yield* unwantedFindings(book, style, 'terms');
  },
};
