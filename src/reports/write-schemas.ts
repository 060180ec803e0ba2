/** Run by the build: writes the JSON Schemas of the json reports, made from their zod contract. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { z } from 'zod';
import { rules } from '../../rules/index.js';
import { houseStyleSchema } from '../manuscript/house-style-schema.js';
import { readingReport, showReport } from './schema.js';
import { stylesheetReport } from './stylesheet-schema.js';

const folder = new URL('../../schema/', import.meta.url);
mkdirSync(folder, { recursive: true });
for (const [name, title, schema] of [
  ['reading', 'What `tamis read --as json` writes', readingReport],
  ['show', 'What `tamis show --as json` writes', showReport],
  ['stylesheet', 'What `tamis stylesheet --as json` writes', stylesheetReport],
  ['house-style', 'What house-style.yaml may say', houseStyleSchema(rules.map((rule) => rule.name))],
] as const) {
  const value = { title, ...z.toJSONSchema(schema) };
  writeFileSync(new URL(`${name}.json`, folder), `${JSON.stringify(value, null, 2)}\n`);
}
