/** Marks a stet that names a rule which there is not. */
import type { StetRule } from '../rule.js';

export const stetUnknown: StetRule = {
  scope: 'stets',
  name: 'stet-unknown',
  topic: 'structure',
  weight: 'query',
  summary: 'A stet names a rule that does not exist.',
  why: 'With its name misspelled a stet silences nothing, and the author believes that it does.',
  sources: ['Common practice: a mark on the page that nobody can follow is queried'],
  examples: [
    {
      title: 'a rule whose name is misspelled',
      text: '# Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon jam\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam. <!-- stet unlisted-ingredent: from the jar -->\n',
      marks: ['<!-- stet unlisted-ingredent: from the jar -->'],
    },
    {
      title: 'one name of two that no rule has',
      text: '# Toast\n\nServes 1\n\n- 1 slice bread\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam. <!-- stet unlisted-ingredient, jam-missing: from the jar -->\n',
      marks: ['<!-- stet unlisted-ingredient, jam-missing: from the jar -->'],
    },
    {
      title: 'a stet that names a rule as it is called',
      text: '# Toast\n\nServes 1\n\n- 1 slice bread\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam. <!-- stet unlisted-ingredient: from the jar -->\n',
      marks: [],
    },
    {
      title: 'a stet that names none',
      text: '# Toast\n\nServes 1\n\n- 1 slice bread\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam. <!-- stet: from the jar -->\n',
      marks: [],
    },
  ],
  *look(stets) {
    for (const { page, stet, recipe, unknown } of stets) {
      for (const { name, nearest } of unknown) {
        yield {
          file: page.path,
          recipe,
          span: stet.span,
          subject: name,
          message: `There is no rule "${name}", so this stet does not silence it.`,
          advice: `Name the rule as the marks do; the nearest is "${nearest}".`,
        };
      }
    }
  },
};
