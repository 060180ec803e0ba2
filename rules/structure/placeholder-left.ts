/** Marks what was left to be filled in before the book goes out. */
import { dishAt } from '../../src/kitchen/book.js';
import { placeholdersOf } from '../../src/kitchen/placeholders.js';
import type { BookRule } from '../rule.js';

export const placeholderLeft: BookRule = {
  scope: 'book',
  name: 'placeholder-left',
  topic: 'structure',
  weight: 'fault',
  summary: 'A placeholder was left in: "page 000", "TK", "XX minutes", "??", "[check]".',
  why: 'A reader who is sent to page 000, or told to bake for XX minutes, has nowhere to go.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'a cross-reference to page 000',
      text: '# Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon plum jam (page 000)\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam.\n',
      marks: ['page 000'],
    },
    {
      title: 'a time that was never filled in',
      text: '# Toast\n\nServes 1\n\n- 1 slice bread\n\n1. Toast the bread for TK minutes, until golden.\n',
      marks: ['TK'],
    },
    {
      title: 'a yield of question marks, and a note to oneself',
      text: '# Rusks\n\nMakes ??\n\n- 8 slices bread\n\n1. Dry the bread in the oven until crisp [check].\n',
      marks: ['??', '[check]'],
    },
    {
      title: 'a page of signs, a blank time and a picture that was to follow',
      text: '# Toast\n\nServes 1\n\nPhoto to come.\n\n- 1 slice bread (page ###)\n\n1. Toast the bread for _ minutes, until golden.\n',
      marks: ['Photo to come', 'page ###', '_'],
    },
    {
      title: 'a page that exists and a question of the author',
      text: '# Toast\n\nServes 1\n\n- 1 slice bread (page 200)\n\nWho does not like toast?\n\n1. Toast the bread until golden, 2 minutes.\n',
      marks: [],
    },
    {
      title: 'a round number with zeros',
      text: '# Toast\n\nServes 100\n\n- 100 slices bread\n\n1. Toast the bread until golden, 2 minutes.\n',
      marks: [],
    },
  ],
  *look(book) {
    for (const page of book.pages) {
      for (const { span, text } of placeholdersOf(page)) {
        yield {
          file: page.path,
          recipe: dishAt(book, page, span)?.recipe.title?.text ?? null,
          span,
          subject: text,
          message: `"${text}" stands where something was to be filled in.`,
          advice: 'Fill it in, or take it out.',
        };
      }
    }
  },
};
