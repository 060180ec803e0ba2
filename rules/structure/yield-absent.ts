/** Marks a recipe that does not say how many it serves or how much it makes. */
import { speaksOf } from '../../src/larder/kitchen-words.js';
import type { RecipeRule } from '../rule.js';

export const yieldAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'yield-absent',
  topic: 'structure',
  weight: 'query',
  summary: 'The recipe states no yield, or one that says nothing.',
  why: 'Without it nobody knows how much to shop for, or whether one pan is enough.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'a recipe that states no yield',
      text: '# Toast\n\n## Ingredients\n\n- 1 slice bread\n\n## Method\n\n1. Toast the bread until golden, 2 minutes.\n',
      marks: ['Toast'],
    },
    {
      title: 'a yield that was left blank',
      text: '# Toast\n\nServes:\n\n## Ingredients\n\n- 1 slice bread\n\n## Method\n\n1. Toast the bread until golden, 2 minutes.\n',
      marks: ['Serves:'],
    },
    {
      title: 'a yield in a line of its own',
      text: '# Toast\n\nMakes about 2 dozen fingers\n\n- 12 slices bread\n\n1. Toast the bread until golden, 2 minutes.\n',
      marks: [],
    },
    {
      title: 'a headnote that says for how many it is meant',
      text: '# Toast\n\nThe amounts are calculated for one person.\n\n## Ingredients\n\n- 1 slice bread\n\n## Method\n\n1. Toast the bread until golden, 2 minutes.\n',
      marks: [],
    },
    {
      title: 'amounts per person',
      text: '# Toast\n\n## Ingredients\n\n- 2 slices bread per person\n\n## Method\n\n1. Toast the bread until golden, 2 minutes.\n',
      marks: [],
    },
    {
      title: 'a yield in the front matter',
      text: '---\ntitle: Toast\nserves: 4\n---\n\n- 4 slices bread\n\n1. Toast the bread until golden, 2 minutes.\n',
      marks: [],
    },
  ],
  *look({ recipe }) {
    if (recipe.yield?.parsed != null || recipe.listings.length === 0) return;
    // Amounts for one serving say how many they are for.
    if (recipe.listings.some(({ passage }) => speaksOf(passage.text, 'per-serving'))) return;
    const passage = recipe.yield?.passage ?? recipe.title ?? recipe.listings[0]!.passage;
    yield {
      span: passage.span(),
      subject: recipe.yield?.passage.text ?? 'yield',
      message:
        recipe.yield === null
          ? 'The recipe does not say how many it serves or how much it makes.'
          : 'The yield does not say how many or how much.',
      advice: 'State it: "Serves 4", "Makes 2 loaves".',
    };
  },
};
