/** Marks a recipe whose title another recipe of the book has as well. */
import { namesOf, standingOf } from '../../src/kitchen/book-names.js';
import type { Title } from '../../src/kitchen/titles.js';
import type { BookRule } from '../rule.js';

export const titleTwice: BookRule = {
  scope: 'book',
  name: 'title-twice',
  topic: 'structure',
  weight: 'query',
  summary: 'Two recipes of the book have the same title.',
  why: 'A reference to it leads to one of two recipes, and the index has it twice.',
  sources: ['House styles of cookbook publishers', 'common practice'],
  examples: [
    {
      title: 'two recipes for jam toast',
      text: '# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon jam\n\n1. Toast the bread until golden, 2 minutes, and spread with the jam.\n\n# Jam Toast\n\nServes 2\n\n- 2 slices bread\n- 1 tablespoon jam\n- 1 tablespoon butter\n\n1. Fry the bread in the butter until golden, 2 minutes, and spread with the jam.\n',
      marks: ['Jam Toast'],
    },
    {
      title: 'the same title in other letters',
      text: "# The Lock-Keeper’s Toast\n\nServes 1\n\n- 1 slice bread\n\n1. Toast the bread until golden, 2 minutes.\n\n# Lock Keeper's TOAST\n\nServes 2\n\n- 2 slices bread\n- 1 tablespoon butter\n\n1. Fry the bread in the butter until golden, 2 minutes.\n",
      marks: ["Lock Keeper's TOAST"],
    },
    {
      title: 'two toasts that are told apart',
      text: '# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon jam\n\n1. Toast the bread until golden, 2 minutes, and spread with the jam.\n\n# Jam Toast with Butter\n\nServes 2\n\n- 2 slices bread\n- 1 tablespoon jam\n- 1 tablespoon butter\n\n1. Fry the bread in the butter until golden, 2 minutes, and spread with the jam.\n',
      marks: [],
    },
    {
      title: 'a component with the name of a recipe',
      text: '# Glaze\n\nMakes 1 cup\n\n- 1 cup sugar\n- 2 tablespoons milk\n\n1. Stir the sugar into the milk until smooth.\n\n# Glazed Toast\n\nServes 1\n\n- 1 slice bread\n\n## For the glaze\n\n- 1 tablespoon sugar\n- 1 teaspoon milk\n\n## Method\n\n1. Toast the bread until golden, 2 minutes.\n2. Stir the sugar into the milk, and brush the bread with the glaze.\n',
      marks: [],
    },
  ],
  *look(book) {
    const first = new Map<string, Title>();
    for (const title of namesOf(book).titles.recipes) {
      // A title without a letter is no name.
      if (title.key === '') continue;
      const before = first.get(title.key);
      if (before === undefined) {
        first.set(title.key, title);
        continue;
      }
      const elsewhere = before.path === title.path ? 'on this page' : `in ${before.path}`;
      yield {
        file: title.path,
        recipe: title.text,
        span: standingOf(book, title).passage.span(),
        subject: title.text,
        message: `Another recipe, ${elsewhere}, has the title "${before.text}".`,
        advice: 'Give one of them another title, or take one out.',
        related: [
          { file: before.path, span: standingOf(book, before).passage.span(), message: 'the other recipe' },
        ],
      };
    }
  },
};
