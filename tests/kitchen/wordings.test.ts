/** Hazards that cooks put in their own words, and what only sounds like one: the rows of wordings.yaml. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { readManuscript } from '../../src/reading/read.js';

const row = z.strictObject({
  rule: z.string(),
  marked: z.boolean(),
  title: z.string(),
  headnote: z.string().default(''),
  list: z.array(z.string()),
  method: z.array(z.string()),
  note: z.string().optional(),
});
type Row = z.infer<typeof row>;

const rows = z.array(row).parse(parse(readFileSync(new URL('wordings.yaml', import.meta.url), 'utf8')));

for (const recipe of rows) {
  it(`${recipe.rule} ${recipe.marked ? 'asks about' : 'leaves alone'} ${recipe.title}: ${recipe.method.join(' ')}`, () => {
    expect(marksOn(recipe).length > 0).toBe(recipe.marked);
  });
}

function marksOn({ rule, title, headnote, list, method, note }: Row): readonly unknown[] {
  const text = [
    `# ${title}`,
    headnote,
    'Serves 4',
    '## Ingredients',
    list.map((line) => `- ${line}`).join('\n'),
    '## Method',
    method.map((line, index) => `${index + 1}. ${line}`).join('\n'),
    note === undefined ? '' : `## Notes\n\n${note}`,
  ].join('\n\n');
  return readManuscript([{ path: 'page.md', text }], { only: [rule] }).marks;
}
