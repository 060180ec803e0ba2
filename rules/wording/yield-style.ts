/** Marks yields stated in more than one way. */
import type { BookRule } from '../rule.js';
import { lookAt } from '../style-marks.js';

export const yieldStyle: BookRule = {
  scope: 'book',
  name: 'yield-style',
  topic: 'wording',
  weight: 'note',
  summary: 'Yields are stated in several ways: "Serves 4", "Servings: 4", "Makes 4 servings".',
  why: 'A reader who looks for the yield looks for the same word in the same place.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'one recipe serves and the next has servings',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n\n1. Boil the rice until tender, 12 minutes.\n\n# Plain Noodles\n\nServings: 2\n\n- 8 ounces egg noodles\n\n1. Boil the noodles until tender, 6 minutes.\n',
      marks: ['Servings: 2'],
    },
    {
      title: 'rolls that one recipe makes and another yields',
      text: '# Rolls\n\nMakes 12 rolls\n\n- 1 pound bread dough\n\n1. Shape the dough and bake at 400°F until brown, 20 minutes.\n\n# Buns\n\nYields 8 buns\n\n- 1 pound bread dough\n\n1. Shape the dough and bake at 400°F until brown, 25 minutes.\n',
      marks: ['Yields 8 buns'],
    },
    {
      title: 'a recipe that serves and one that makes rolls',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n\n1. Boil the rice until tender, 12 minutes.\n\n# Rolls\n\nMakes 12 rolls\n\n- 1 pound bread dough\n\n1. Shape the dough and bake at 400°F until brown, 20 minutes.\n',
      marks: [],
    },
    {
      title: 'one form throughout',
      text: '# Plain Rice\n\nServes 2\n\n- 1 cup rice\n\n1. Boil the rice until tender, 12 minutes.\n\n# Plain Noodles\n\nServes 3\n\n- 8 ounces egg noodles\n\n1. Boil the noodles until tender, 6 minutes.\n',
      marks: [],
    },
  ],
  look: lookAt(['yield'], { subject: (about) => `A ${about}` }),
};
