/** The contract of `tamis stylesheet --as json`, in zod; the JSON Schema of the package is made from it. */
import { z } from 'zod';

const places = z.array(
  z.strictObject({
    file: z.string().describe('relative to the root that was read, with forward slashes'),
    line: z.int().min(1).describe('from 1'),
  }),
);

const form = z.strictObject({
  form: z.string().describe('as it is written'),
  count: z.int().min(1),
  places,
});

const entry = z.strictObject({
  about: z.string().describe('what is written in these forms'),
  forms: z.array(form).describe('the most used first'),
});

export const stylesheetReport = z.strictObject({
  tamis: z.string().describe('the version that wrote it'),
  recipes: z.int().min(0).describe('how many were read'),
  tolerances: z
    .string()
    .describe('the date of the tolerances by which amounts, temperatures and times are compared'),
  foods: z.array(entry).describe('every food by each name and spelling that it goes under'),
  spellings: z.array(entry).describe('other words that are spelled in more than one way'),
  units: z.array(entry),
  numbers: z.array(entry),
  ranges: z.array(entry),
  temperatures: z.array(entry).describe('how degrees are written, and in which order the scales stand'),
  yields: z.array(entry),
  listings: z.array(entry).describe('how a line of a list that opens with a word begins'),
  equivalents: z.array(entry).describe('amounts that are given in a second unit twice or more'),
  pans: z.array(entry).describe('vessels with their sizes'),
  references: z
    .array(
      entry.extend({
        found: z.boolean().describe('whether the book has it; false for a page that is given without a name'),
      }),
    )
    .describe('recipes and pages that are referred to'),
  foreign: z.array(entry).describe('words from other languages'),
  titles: z.array(
    z.strictObject({
      title: z.string(),
      capitals: z.string().nullable(),
      file: z.string(),
      line: z.int().min(1),
    }),
  ),
});

export type StylesheetReport = z.infer<typeof stylesheetReport>;
export type StylesheetEntry = z.infer<typeof entry>;
