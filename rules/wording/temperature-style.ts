/** Marks temperatures written in more than one way. */
import type { BookRule } from '../rule.js';
import { lookAt } from '../style-marks.js';

export const temperatureStyle: BookRule = {
  scope: 'book',
  name: 'temperature-style',
  topic: 'wording',
  weight: 'note',
  summary: 'Temperatures are written in several ways, or their scales stand in several orders.',
  why: 'A cook looks for one scale, in one place; where the order changes, the wrong number is set.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'degrees as a sign and as a word',
      text: '# Dry Bread\n\nServes 2\n\n- 4 slices bread\n\n1. Heat the oven to 300°F.\n2. Dry the bread until crisp, 20 minutes.\n3. Lower the oven to 200 degrees F and keep the bread warm.\n',
      marks: ['200 degrees F'],
    },
    {
      title: 'Fahrenheit first and Celsius first',
      text: '# Dry Bread\n\nServes 2\n\n- 4 slices bread\n\n1. Heat the oven to 300°F (150°C).\n2. Dry the bread until crisp, 20 minutes.\n3. Lower the oven to 90°C (200°F) and keep the bread warm.\n',
      marks: ['90°C (200°F)'],
    },
    {
      title: 'one form and one order',
      text: '# Dry Bread\n\nServes 2\n\n- 4 slices bread\n\n1. Heat the oven to 300°F (150°C).\n2. Dry the bread until crisp, 20 minutes.\n3. Lower the oven to 200°F (90°C) and keep the bread warm.\n',
      marks: [],
    },
    {
      title: 'a single temperature',
      text: '# Dry Bread\n\nServes 2\n\n- 4 slices bread\n\n1. Heat the oven to 300 degrees Fahrenheit.\n2. Dry the bread until crisp, 20 minutes.\n',
      marks: [],
    },
  ],
  look: lookAt(['degree', 'scales'], { subject: (about) => `A ${about}` }),
};
