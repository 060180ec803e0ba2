/** Marks numbers that are not whole, written in more than one way. */
import type { BookRule } from '../rule.js';
import { lookAt } from '../style-marks.js';

export const numberStyle: BookRule = {
  scope: 'book',
  name: 'number-style',
  topic: 'wording',
  weight: 'note',
  summary: 'Numbers that are not whole are written in several ways: "½", "1/2", "0.5".',
  why: 'Mixed forms look like different amounts, and a half that is missed halves the dish.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'a half with its own sign and with a stroke',
      text: '# Sweet Rice\n\nServes 2\n\n- ½ cup rice\n- 1/2 cup cream\n- 1½ cups milk\n\n1. Simmer the rice in the milk and cream until tender, 25 minutes.\n',
      marks: ['1/2'],
    },
    {
      title: 'a decimal of cups among signs',
      text: '# Sweet Rice\n\nServes 2\n\n- ½ cup rice\n- 1.5 cups milk\n- 1¼ cups cream\n\n1. Simmer the rice in the milk and cream until tender, 25 minutes.\n',
      marks: ['1.5'],
    },
    {
      title: 'decimals of metric units beside signs',
      text: '# Sweet Rice\n\nServes 2\n\n- ½ cup rice\n- 1½ pounds (0.7 kg) pears, sliced\n- 1½ cups milk\n\n1. Simmer the rice and pears in the milk until tender, 25 minutes.\n',
      marks: [],
    },
    {
      title: 'one form throughout',
      text: '# Sweet Rice\n\nServes 2\n\n- 1/2 cup rice\n- 1 1/2 cups milk\n\n1. Simmer the rice in the milk until tender, 25 minutes.\n',
      marks: [],
    },
  ],
  look: lookAt(['number'], { subject: () => 'A number that is not whole' }),
};
