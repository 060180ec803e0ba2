/** Marks ranges written in more than one way. */
import type { BookRule } from '../rule.js';
import { lookAt } from '../style-marks.js';

export const rangeStyle: BookRule = {
  scope: 'book',
  name: 'range-style',
  topic: 'wording',
  weight: 'note',
  summary: 'Ranges are written in several ways: "3 to 5", "3–5", "3-5".',
  why: 'A hyphen that means "to" in one line is read as a minus or a misprint in the next.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'a range in words and one with a dash',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 2 cups vegetable stock\n\n1. Warm the stock until it steams, 3 to 5 minutes.\n2. Add the rice and simmer until tender, 18–20 minutes.\n3. Let it stand, 5 to 10 minutes.\n',
      marks: ['18–20'],
    },
    {
      title: 'a hyphen and a dash',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 2–3 cups vegetable stock\n\n1. Simmer the rice in the stock until tender, 18-20 minutes.\n',
      marks: ['18-20'],
    },
    {
      title: 'a range between two named ends',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 2–3 cups vegetable stock\n\n1. Simmer the rice in the stock until tender, from 18 to 20 minutes.\n',
      marks: [],
    },
    {
      title: 'a number of parts joined by a hyphen',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n- 1-1/2 cups vegetable stock\n\n1. Simmer the rice in the stock until tender, 18 to 20 minutes.\n',
      marks: [],
    },
  ],
  look: lookAt(['range'], { subject: () => 'A range' }),
};
