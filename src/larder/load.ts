/** Gives the tables: the compiled ones where the package was built, else those of the YAML files beside this one. */
import { existsSync, readFileSync } from 'node:fs';
import type { Tables } from './schema.js';

const compiled = new URL('tables.json', import.meta.url);

export const larder: Tables = existsSync(compiled)
  ? (JSON.parse(readFileSync(compiled, 'utf8')) as Tables)
  : (await import('./read-yaml.js')).readTables(new URL('./', import.meta.url));
