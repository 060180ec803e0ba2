/** Hazards that cooks put in their own words, and what only sounds like one: the rows of wordings.yaml. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { marksOn } from './dishes.js';

const row = z.strictObject({
  rule: z.string(),
  marked: z.boolean(),
  title: z.string(),
  headnote: z.string().default(''),
  list: z.array(z.string()),
  method: z.array(z.string()),
  note: z.string().optional(),
});
const rows = z.array(row).parse(parse(readFileSync(new URL('wordings.yaml', import.meta.url), 'utf8')));

for (const recipe of rows) {
  it(`${recipe.rule} ${recipe.marked ? 'asks about' : 'leaves alone'} ${recipe.title}: ${recipe.method.join(' ')}`, () => {
    expect(marksOn(recipe, [recipe.rule]).length > 0).toBe(recipe.marked);
  });
}
