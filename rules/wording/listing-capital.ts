/** Marks list lines that begin with a capital here and without one there. */
import type { BookRule } from '../rule.js';
import { lookAt } from '../style-marks.js';

export const listingCapital: BookRule = {
  scope: 'book',
  name: 'listing-capital',
  topic: 'wording',
  weight: 'note',
  summary: 'Lines of a list that open with a word begin with a capital in one place and without in another.',
  why: 'A list is scanned by the openings of its lines; one that begins small looks like the rest of the line above.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'one line small among capitals',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- Salt to taste\n- Oil, for the pan\n- butter, to serve\n\n1. Oil a pan and boil the rice with the salt until tender, 12 minutes. Serve with the butter.\n',
      marks: ['butter'],
    },
    {
      title: 'two recipes that begin their lines otherwise',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- salt to taste\n- pinch of nutmeg\n\n1. Boil the rice with the salt and nutmeg until tender, 12 minutes.\n\n# Plain Noodles\n\nServes 2\n\n- 8 ounces egg noodles\n- Salt to taste\n\n1. Boil the noodles with the salt until tender, 6 minutes.\n',
      marks: ['Salt'],
    },
    {
      title: 'lines that open with numbers',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 2 tablespoons butter\n- Salt to taste\n\n1. Boil the rice with the salt until tender, 12 minutes, and stir in the butter.\n',
      marks: [],
    },
    {
      title: 'all small',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- salt to taste\n- butter, to serve\n\n1. Boil the rice with the salt until tender, 12 minutes. Serve with the butter.\n',
      marks: [],
    },
  ],
  look: lookAt(['capital'], { subject: () => 'The opening of a line of the list' }),
};
