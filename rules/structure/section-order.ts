/** Marks a recipe whose list stands after its method. */
import type { RecipeRule } from '../rule.js';

export const sectionOrder: RecipeRule = {
  scope: 'recipe',
  name: 'section-order',
  topic: 'structure',
  weight: 'note',
  summary: 'The list of ingredients stands after the method.',
  why: 'A cook reads from top to bottom, and shops before cooking.',
  sources: ['Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)', 'common practice'],
  examples: [
    {
      title: 'a list at the end',
      text: '# Toast\n\nServes 1\n\n## Method\n\n1. Toast the bread until golden, 2 minutes.\n\n## Ingredients\n\n- 1 slice bread\n',
      marks: ['1 slice bread'],
    },
    {
      title: 'another list at the end, under another heading',
      text: '# Jam Toast\n\nServes 1\n\n## Directions\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam.\n\n## You will need\n\n- 1 slice bread\n- 1 tablespoon jam\n',
      marks: ['1 slice bread'],
    },
    {
      title: 'list, then method',
      text: '# Toast\n\nServes 1\n\n## Ingredients\n\n- 1 slice bread\n\n## Method\n\n1. Toast the bread until golden, 2 minutes.\n',
      marks: [],
    },
    {
      title: 'each component with its list and its steps',
      text: '# Jam Toast\n\nServes 1\n\n## Toast\n\n- 1 slice bread\n\n1. Toast the bread until golden, 2 minutes.\n\n## Jam\n\n- 2 plums\n- 1 tablespoon sugar\n\n1. Simmer the plums with the sugar until thick, 10 minutes, and spread on the toast.\n',
      marks: [],
    },
  ],
  *look({ recipe }) {
    const first = recipe.listings[0];
    const last = recipe.steps.at(-1);
    if (first === undefined || last === undefined) return;
    if (first.passage.span().start < last.passage.span().end) return;
    yield {
      span: first.passage.span(),
      subject: 'list',
      message: 'The list of ingredients stands after the method.',
      advice: 'Put the list first.',
    };
  },
};
