/** Marks a reference to a recipe, a file or a heading that the book does not have. */
import { dishAt } from '../../src/kitchen/book.js';
import { namesOf, standingOf } from '../../src/kitchen/book-names.js';
import { brokenLinks, conflictingPages, type Reference, referencesOf } from '../../src/kitchen/references.js';
import type { Title } from '../../src/kitchen/titles.js';
import type { Book } from '../../src/kitchen/types.js';
import { offered, replacing } from '../mends.js';
import type { BookRule, Finding } from '../rule.js';

export const referenceBroken: BookRule = {
  scope: 'book',
  name: 'reference-broken',
  topic: 'structure',
  weight: 'fault',
  summary: 'A reference leads to a recipe, page or file that the book does not have.',
  why: 'The reader leafs through the book for a recipe that was renamed or taken out.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'a recipe that was renamed after it had been referred to',
      text: '# Damson Jam\n\nMakes 2 jars\n\n- 2 pounds damsons\n- 1 pound sugar\n\n1. Simmer the damsons with the sugar until thick, 30 minutes.\n\n# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon Plum Jam (page 12)\n\n1. Toast the bread until golden, 2 minutes, and spread with the jam.\n',
      marks: ['Plum Jam'],
    },
    {
      title: 'a link to a heading that is not there',
      text: '# Damson Jam\n\nMakes 2 jars\n\n- 2 pounds damsons\n- 1 pound sugar\n\n1. Simmer the damsons with the sugar until thick, 30 minutes. Serve it on [toast](#milk-toast).\n',
      marks: ['[toast](#milk-toast)'],
    },
    {
      title: 'one recipe on two pages',
      text: '# Damson Jam\n\nMakes 2 jars\n\n- 2 pounds damsons\n- 1 pound sugar\n\n1. Simmer the damsons with the sugar until thick, 30 minutes.\n\n# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon Damson Jam (page 12)\n\n1. Toast the bread until golden, 2 minutes, and spread with the jam (see Damson Jam, page 21).\n',
      marks: ['Damson Jam'],
    },
    {
      title: 'a recipe under its name, shortened, and under a link',
      text: '# Black Damson Jam\n\nMakes 2 jars\n\n- 2 pounds damsons\n- 1 pound sugar\n\n1. Simmer the damsons with the sugar until thick, 30 minutes.\n\n# Jam Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon damson jam (page 12)\n\n1. Toast the bread until golden, 2 minutes, and spread with the jam (see Damson Jam and [how it is made](#black-damson-jam)).\n',
      marks: [],
    },
    {
      title: 'a link out of the manuscript, and a brand',
      text: '# Damson Jam\n\nMakes 2 jars\n\n- 2 pounds damsons\n- 1 pound sugar\n\n1. Simmer the damsons with the sugar until thick, 30 minutes.\n\n# Jam Toast\n\nServes 1\n\n- 1 slice Old Mill Bread\n- 1 tablespoon damson jam, see [the shop](https://example.org/jam)\n\n1. Toast the bread until golden, 2 minutes, and spread with the jam.\n',
      marks: [],
    },
  ],
  *look(book) {
    yield* lostLinks(book);
    const { titles } = namesOf(book);
    const told = new Set<string>();
    for (const reference of referencesOf(book)) {
      if (reference.targets.length > 0 || reference.sign === 'capitals') continue;
      // A slip of the pen is another rule's; with one recipe there is no book to look in.
      if (titles.recipes.length < 2 || titles.misspelled(reference.name) !== null) continue;
      // A name that the list and a step of one recipe have is asked about once.
      const { from, dish, name } = reference;
      const key = `${dish?.recipe.span.start} ${from.path} ${name.toLowerCase()}`;
      if (told.has(key)) continue;
      told.add(key);
      yield lost(book, reference, titles.nearest(reference.name));
    }
    for (const { reference, other } of conflictingPages(book)) yield twoPages(reference, other);
  },
};

type BookFinding = Finding & { readonly file: string; readonly recipe: string | null };

function* lostLinks(book: Book): Iterable<BookFinding> {
  for (const { link, page, misses, sure } of brokenLinks(book)) {
    yield {
      file: page.path,
      recipe: dishAt(book, page, link.span)?.recipe.title?.text ?? null,
      span: link.span,
      subject: link.target,
      weight: sure ? 'fault' : 'query',
      message:
        misses === 'file'
          ? `The link leads to "${link.target}", and no such file was read.`
          : `The link leads to "${link.target}", and there is no such heading.`,
      advice: 'Mend the link, or take it out.',
    };
  }
}

function lost(book: Book, reference: Reference, nearest: Title | null): BookFinding {
  return {
    ...placeOf(reference),
    // In small letters it may be a bought thing; outside a recipe, a table or an essay.
    weight: reference.proper && reference.dish !== null ? 'fault' : 'query',
    message: `No recipe that was read is called "${reference.name}"${nearest === null ? '' : `; there is "${nearest.text}"`}.`,
    advice: 'Name the recipe as it is titled, or take the reference out.',
    related: nearest === null ? [] : [titled(book, nearest)],
    mends: nearest === null ? [] : renaming(reference, nearest),
  };
}

function twoPages(reference: Reference, other: Reference): BookFinding {
  return {
    ...placeOf(reference),
    weight: 'query',
    message: `"${reference.name}" is said to be on page ${reference.page}, and elsewhere on page ${other.page}.`,
    advice: 'Give one page for one recipe.',
    related: [
      {
        file: other.from.path,
        span: other.passage.span(other.start, other.end),
        message: 'the other page',
      },
    ],
  };
}

function placeOf({ from, dish, passage, start, end, name }: Reference) {
  return {
    file: from.path,
    recipe: dish?.recipe.title?.text ?? null,
    span: passage.span(start, end),
    subject: name,
  };
}

function titled(book: Book, title: Title) {
  const { page, passage } = standingOf(book, title);
  return { file: page.path, span: passage.span(), message: 'the nearest title' };
}

function renaming({ from, passage, start, end }: Reference, { text }: Title) {
  return offered(`name it "${text}"`, replacing(from, passage, [start, end], text));
}
