/** Marks a reference that spells a recipe's name otherwise than its title does. */
import { standingOf } from '../../src/kitchen/book-names.js';
import { misspelledReferences } from '../../src/kitchen/references.js';
import { replacing } from '../mends.js';
import type { BookRule } from '../rule.js';

export const referenceMisspelled: BookRule = {
  scope: 'book',
  name: 'reference-misspelled',
  topic: 'structure',
  weight: 'fault',
  summary: 'A reference spells a recipe’s name otherwise than its title.',
  why: 'A reader who looks the name up in the index does not find it as it is printed.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'a letter too few',
      text: '# Brined Radishes\n\nServes 4\n\n- 2 cups radishes\n- 1 cup vinegar\n\n1. Cover the radishes with the vinegar.\n\n# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon Brined Radihes (page 12)\n\n1. Toast the bread until golden, 2 minutes, and top with the remaining ingredients.\n',
      marks: ['Brined Radihes'],
    },
    {
      title: 'accents that the title has',
      text: '# Belvédère Relish\n\nServes 4\n\n- 2 cups peas\n- 1 tablespoon butter\n\n1. Simmer the peas until soft, 5 minutes, and crush them with the butter.\n\n# Lock Toast\n\nServes 1\n\n- 1 slice bread\n- 1 recipe Belvedere Relish\n\n1. Toast the bread until golden, 2 minutes, and spread with the relish.\n',
      marks: ['Belvedere Relish'],
    },
    {
      title: 'another case of letters, and the plural',
      text: '# Drop Scone\n\nMakes 8\n\n- 2 cups flour\n- 1 cup milk\n\n1. Mix the flour and the milk, drop on a griddle, and cook until golden, 4 minutes.\n\n# Scones and Jam\n\nMakes 4\n\n- 4 drop scones (page 12)\n- 1 tablespoon jam\n\n1. Spread the Drop Scones with the jam.\n',
      marks: [],
    },
    {
      title: 'a name that is near a title and is a food of its own',
      text: '# Bean Stew\n\nServes 4\n\n- 2 cups cooked beans\n- 1 cup cream\n\n1. Simmer the beans in the cream until thick, 10 minutes.\n\n# Buttered Rice\n\nServes 2\n\n- 2 cups cooked rice\n- 1 tablespoon butter\n- 1 tablespoon Lemon Juice\n\n1. Toss the rice with the butter and the Lemon Juice.\n',
      marks: [],
    },
  ],
  *look(book) {
    for (const { reference, title, sameWords } of misspelledReferences(book)) {
      const { from, dish, passage, start, end, name } = reference;
      const titled = standingOf(book, title);
      const edit = replacing(from, passage, [start, end], title.text);
      yield {
        file: from.path,
        recipe: dish?.recipe.title?.text ?? null,
        span: passage.span(start, end),
        subject: name,
        weight: reference.sign === 'capitals' && !sameWords ? 'query' : 'fault',
        message: `"${name}" is spelled "${title.text}" where it is the title.`,
        advice: 'Spell both alike.',
        related: [{ file: title.path, span: titled.passage.span(), message: 'the title' }],
        // Accents and hyphens are all that changes; another letter may be the title's slip.
        mends: edit === null ? [] : [{ label: `spell it "${title.text}"`, sure: sameWords, edits: [edit] }],
      };
    }
  },
};
