/** The contract of the json reports, in zod; the JSON Schemas of the package are made from it. */
import { z } from 'zod';

const place = z
  .strictObject({
    line: z.int().min(1).describe('from 1'),
    column: z.int().min(1).describe('from 1, in UTF-16 units'),
    offset: z.int().min(0).describe('from 0, in UTF-16 units of the file as decoded'),
  })
  .meta({ id: 'place' });

const file = z.string().min(1).describe('relative to the root that was read, with forward slashes');
const line = z.int().min(1).describe('from 1');
const weight = z.enum(['fault', 'query', 'note']);
const ruleName = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const index = z.int().min(0);
const title = z.string().nullable().describe('null where the page gives none');

const fingerprint = z.string().regex(/^[0-9a-f]{32}$/);

const edit = z.strictObject({ start: place, end: place, text: z.string() });

const mend = z.strictObject({
  label: z.string(),
  sure: z.boolean().describe('whether the meaning cannot change'),
  edits: z.array(edit),
});

const mark = z.strictObject({
  rule: ruleName,
  weight,
  file,
  recipe: z
    .string()
    .nullable()
    .describe('the title; null where the mark is about the file, or the recipe has none'),
  subject: z.string().describe('the food, amount or words that the mark is about'),
  message: z.string().describe('what is there, what it disagrees with, and what to do'),
  start: place,
  end: place.describe('exclusive'),
  related: z.array(z.strictObject({ file, start: place, end: place, message: z.string() })),
  mends: z.array(mend),
  fingerprint: fingerprint.describe(
    'the same in a later reading, wherever the line has moved to in the file',
  ),
});

export const readingReport = z.strictObject({
  tamis: z.string().describe('the version that wrote the report'),
  recipes: z.array(z.strictObject({ title, file, line })),
  marks: z.array(mark),
  counts: z.strictObject({ fault: z.int().min(0), query: z.int().min(0), note: z.int().min(0) }),
  stetted: z
    .array(
      z.strictObject({
        rule: ruleName,
        file,
        line,
        recipe: z.string().nullable(),
        subject: z.string(),
        reason: z.string().describe('as the author gave it; empty where none was given'),
        stet: z.strictObject({ line, scope: z.enum(['line', 'recipe', 'file']) }).describe('where it stands'),
      }),
    )
    .describe('the marks that a stet of the author silences'),
  held: z
    .int()
    .min(0)
    .nullable()
    .describe(
      'how many marks are left out because an earlier reading had them; null when none was compared with',
    ),
  caution: z
    .string()
    .nullable()
    .describe('whose word comes first in food safety; null where no mark is about it'),
  style: z
    .enum(['stated', 'majority'])
    .describe('whether the book has a house style, or its own majority was taken as its style'),
  tolerances: z
    .string()
    .describe('the date of the tolerances by which amounts, temperatures and times were compared'),
});

const fraction = z
  .string()
  .regex(/^-?\d+(\/\d+)?$/)
  .describe('an exact fraction: "3/2", "2"');

const approximation = z.enum(['about', 'scant', 'heaped', 'generous', 'at-least', 'up-to']).nullable();

const measure = z
  .strictObject({
    text: z.string(),
    low: fraction,
    high: fraction.describe('equal to low where it is no range'),
    approximation,
    unit: z.string().nullable().describe("the larder's id; null where the things themselves are counted"),
    share: z.boolean().describe('whether it is a share of something listed: "half the butter"'),
    get plus(): z.ZodArray<typeof measure> {
      return z.array(measure).describe('what is added: "plus 2 tablespoons"');
    },
    get equals(): z.ZodArray<typeof measure> {
      return z.array(measure).describe('the same in other units');
    },
    get pack(): z.ZodNullable<typeof measure> {
      return z.nullable(measure).describe('the size of one pack or piece');
    },
  })
  .meta({ id: 'measure' });

const listedFood = z.strictObject({
  text: z.string().describe('as written'),
  name: z.string().describe('lower case, singular'),
  larder: z.string().nullable().describe("the larder's name of it; null when the larder has none"),
  joined: z.enum(['first', 'and', 'or']),
  form: z.string().nullable().describe('the part asked for: "juice", "zest"'),
  measures: z.array(measure),
});

const listing = z.strictObject({
  index: index.describe("its place among the recipe's listings, from 0"),
  text: z.string(),
  line,
  component: index,
  measures: z.array(measure),
  food: z.string().nullable().describe('the name of the first food; null when none was made out'),
  foods: z.array(listedFood),
  size: z.string().nullable(),
  states: z.array(z.string()).describe('said before the food'),
  preparation: z.array(z.string()).describe('said after the food'),
  optional: z.boolean(),
  divided: z.boolean(),
  toTaste: z.boolean(),
  asNeeded: z.boolean(),
  plusMore: z.string().nullable(),
  purpose: z.string().nullable(),
  unread: z.array(z.string()).describe('what was not understood'),
});

const shownRecipe = z.strictObject({
  title,
  file,
  line,
  yield: z
    .strictObject({
      text: z.string(),
      line,
      amount: z.strictObject({ low: fraction, high: fraction, approximation }).nullable(),
      of: z.string().nullable().describe('what is counted; null when it could not be read'),
    })
    .nullable(),
  times: z.array(
    z.strictObject({
      kind: z.enum(['prep', 'cook', 'total', 'rest', 'other']),
      text: z.string(),
      value: z.string(),
      line,
    }),
  ),
  components: z.array(
    z.strictObject({
      index,
      name: z.string().nullable(),
      heading: z.string().nullable(),
      listings: z.array(index),
    }),
  ),
  listings: z.array(listing),
  steps: z.array(
    z.strictObject({
      index: index.describe('from 0'),
      number: z.int().nullable().describe('as printed before it'),
      heading: z.string().nullable(),
      text: z.string(),
      line,
    }),
  ),
  mentions: z.array(
    z.strictObject({
      step: index.describe('the index of its step'),
      text: z.string(),
      line,
      listings: z.array(index).describe('the listings it means; empty when it is on no list'),
      role: z.enum(['use', 'aside', 'made']),
      measure: measure.nullable(),
    }),
  ),
});

export const showReport = z.strictObject({
  tamis: z.string().describe('the version that wrote the report'),
  recipes: z.array(shownRecipe),
});

export type ReadingReport = z.infer<typeof readingReport>;
export type ShowReport = z.infer<typeof showReport>;
export type ShownRecipe = z.infer<typeof shownRecipe>;
export type ShownListing = z.infer<typeof listing>;
export type ShownMeasure = z.infer<typeof measure>;
