/** Run by the build: checks the YAML tables and writes them as one JSON file beside the compiled code, for a quick start. */
import { writeFileSync } from 'node:fs';
import { readTables } from './read-yaml.js';

const built = new URL('./', import.meta.url);
const source = new URL('../../../src/larder/', built);
writeFileSync(new URL('tables.json', built), JSON.stringify(readTables(source)));
