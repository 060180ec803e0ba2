/** Marks a word that the book spells in more than one way. */
import type { BookRule } from '../rule.js';
import { lookAt, quoted, unwantedFindings } from '../style-marks.js';

const look = lookAt(['spelling'], { subject: quoted });

export const spellingVariant: BookRule = {
  scope: 'book',
  name: 'spelling-variant',
  topic: 'wording',
  weight: 'note',
  summary: 'A word is spelled in several ways: "yogurt", "yoghurt".',
  why: 'The index lists both, and a search for one misses the other.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'yogurt and yoghurt',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 1 cup yogurt\n\n1. Boil the rice until tender, 12 minutes, and let cool.\n2. Serve with the yoghurt.\n',
      marks: ['yoghurt'],
    },
    {
      title: 'breadcrumbs in one word and in two',
      text: '# Crisp Noodles\n\nServes 2\n\n- 8 ounces egg noodles\n- 1 cup breadcrumbs\n\n1. Boil the noodles until tender, 6 minutes.\n2. Scatter the bread crumbs over them.\n',
      marks: ['bread crumbs'],
    },
    {
      title: 'one and several of a thing',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 2 tomatoes, chopped\n\n1. Boil the rice until tender, 12 minutes.\n2. Stir in the tomatoes, each tomato in quarters.\n',
      marks: [],
    },
    {
      title: 'a capital at the head of a line',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- Yogurt, to serve\n\n1. Boil the rice until tender, 12 minutes. Serve with the yogurt.\n',
      marks: [],
    },
  ],
  *look(book, style) {
    yield* look(book, style);
    yield* unwantedFindings(book, style, 'spellings');
  },
};
