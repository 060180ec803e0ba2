/** What the kitchen takes for a hazard, in many words, and what only sounds like one: the rows of hazardous.yaml and harmless.yaml. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { marksOn } from './dishes.js';

const small = z.strictObject({
  /** What the recipe is an example of, as a statement; where there is none, the recipe speaks for itself. */
  says: z.string().optional(),
  rule: z.string().optional(),
  title: z.string().default('Plain Supper'),
  headnote: z.string().default(''),
  list: z.array(z.string()),
  method: z.array(z.string()),
  note: z.string().optional(),
});
type Small = z.infer<typeof small>;

const rows = (file: string): Small[] =>
  z.array(small).parse(parse(readFileSync(new URL(file, import.meta.url), 'utf8')));
const hazardous = rows('hazardous.yaml');
const rules = [...new Set(hazardous.map(({ rule }) => rule!))];

for (const recipe of hazardous) {
  it(`${recipe.rule} asks about ${nameOf(recipe)}`, () => {
    expect(marksOn(recipe, [recipe.rule!]).length).toBeGreaterThan(0);
  });
}

for (const recipe of rows('harmless.yaml')) {
  it(`${recipe.rule ?? 'every hazard rule'} leaves alone ${nameOf(recipe)}`, () => {
    const marks = marksOn(recipe, recipe.rule === undefined ? rules : [recipe.rule]);
    expect(marks.map(({ rule, message }) => `${rule}: ${message}`)).toEqual([]);
  });
}

function nameOf({ says, title, list, method }: Small): string {
  return says ?? `${title} (${list.join('; ')}): ${method.join(' ')}`;
}
