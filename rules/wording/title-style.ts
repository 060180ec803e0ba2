/** Marks titles capitalized in more than one way. */
import type { BookRule } from '../rule.js';
import { lookAt } from '../style-marks.js';

export const titleStyle: BookRule = {
  scope: 'book',
  name: 'title-style',
  topic: 'wording',
  weight: 'note',
  summary: 'Recipe titles are capitalized in several ways.',
  why: 'The contents page and the index print the titles one under the other, where every difference shows.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'headline capitals and sentence capitals',
      text: '# Boiled Rice with Butter\n\nServes 2\n\n- 1 cup rice\n- 1 tablespoon butter\n\n1. Boil the rice until tender, 12 minutes, and stir in the butter.\n\n# Egg noodles in cream\n\nServes 2\n\n- 8 ounces egg noodles\n- 1 cup cream\n\n1. Boil the noodles until tender, 6 minutes, and stir in the cream.\n',
      marks: ['Egg noodles in cream'],
    },
    {
      title: 'one title in capitals throughout',
      text: '# Boiled Rice with Butter\n\nServes 2\n\n- 1 cup rice\n- 1 tablespoon butter\n\n1. Boil the rice until tender, 12 minutes, and stir in the butter.\n\n# EGG NOODLES\n\nServes 2\n\n- 8 ounces egg noodles\n\n1. Boil the noodles until tender, 6 minutes.\n',
      marks: ['EGG NOODLES'],
    },
    {
      title: 'small words in a headline',
      text: '# Boiled Rice with Butter\n\nServes 2\n\n- 1 cup rice\n- 1 tablespoon butter\n\n1. Boil the rice until tender, 12 minutes, and stir in the butter.\n\n# Noodles in the Pot\n\nServes 2\n\n- 8 ounces egg noodles\n\n1. Boil the noodles until tender, 6 minutes.\n',
      marks: [],
    },
    {
      title: 'a title of one word',
      text: '# Boiled rice\n\nServes 2\n\n- 1 cup rice\n\n1. Boil the rice until tender, 12 minutes.\n\n# Noodles\n\nServes 2\n\n- 8 ounces egg noodles\n\n1. Boil the noodles until tender, 6 minutes.\n',
      marks: [],
    },
  ],
  look: lookAt(['title'], { subject: () => 'A title' }),
};
