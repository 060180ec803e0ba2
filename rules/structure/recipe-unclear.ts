/** Marks, once, a stretch that looks like a recipe and cannot be told apart. */
import type { BookRule } from '../rule.js';

export const recipeUnclear: BookRule = {
  scope: 'book',
  name: 'recipe-unclear',
  topic: 'structure',
  weight: 'query',
  summary: 'A page looks like a recipe, but its list and its method cannot be told apart.',
  why: 'What a reader cannot see as a list cannot be shopped for, and nothing else can be checked in it.',
  sources: ['common practice'],
  examples: [
    {
      title: 'amounts that run through paragraphs, without a list',
      text: '# Lock-side Punch\n\nTake 2 cups of cold tea, 1 cup of apple juice and 3 tablespoons of honey, stir in the juice of 1 lemon, and pour over 2 cups of ice.\n',
      marks: ['Lock-side Punch'],
    },
    {
      title: 'another recipe told as one long sentence',
      text: '# Drop Scones\n\nBeat 2 eggs into 1 cup of flour with 1/2 cup of milk, 2 tablespoons of sugar and 1 teaspoon of baking powder, drop spoonfuls on a hot griddle and turn when bubbles rise.\n',
      marks: ['Drop Scones'],
    },
    {
      title: 'an introduction',
      text: '# Why we cook\n\nThe kettle is never cold in a lock-keeper’s house. Boats come at all hours, and so do their crews.\n',
      marks: [],
    },
    {
      title: 'a glossary of terms',
      text: '# Words we use\n\n- Simmer: small bubbles at the edge.\n- Fold: turn over gently with a spoon.\n',
      marks: [],
    },
  ],
  *look(book) {
    for (const { file, span, why } of book.unclear) {
      const page = book.pages.find((each) => each.path === file)!;
      const first = page.blocks.find((block) => block.span.start >= span.start);
      const title = first?.type === 'heading' ? first.passage : null;
      yield {
        file,
        recipe: null,
        span: title?.span() ?? span,
        subject: title?.text ?? 'recipe',
        message: `This looks like a recipe, but ${why}.`,
        advice: 'Give it a list of ingredients and a method of its own, or leave it as prose if it is none.',
      };
    }
  },
};
