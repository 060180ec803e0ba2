/** The json and SARIF reports of whole books keep their schemas: the demo's, and the corpus's where it is present. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import ajvDraft04 from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { rules } from '../../rules/index.js';
import { readManuscript } from '../../src/reading/read.js';
import { json } from '../../src/reports/json.js';
import { sarif } from '../../src/reports/sarif.js';
import { readingReport } from '../../src/reports/schema.js';
import { broth, leaflet, mark, reading, spanOf, stetted } from './fake.js';
import { sarifTroubles } from './sarif-checks.js';

const project = new URL('../../', import.meta.url);
const books = [
  ['the demo', new URL('fixtures/lock-keepers-table/draft/', project)],
  ['the corpus', new URL('../shared/corpus/public-domain/', project)],
] as const;

const keepsSarif = sarifSchema();
const keepsJson = new Ajv2020({ strict: false }).compile(z.toJSONSchema(readingReport));

describe.each(books)('%s', (name, root) => {
  const missing = !existsSync(root);
  if (missing) console.warn(`Skipped: ${name} is not beside the project, so its reports were not checked.`);
  const files = missing
    ? []
    : readdirSync(root, { recursive: true, encoding: 'utf8' })
        .filter((file) => file.endsWith('.md'))
        .sort()
        .map((path) => ({ path, text: readFileSync(new URL(encodeURI(path), root), 'utf8') }));
  const book = readManuscript(files);

  test.skipIf(missing)('has marks to report', () => {
    expect(book.marks.length).toBeGreaterThan(20);
  });
  test.skipIf(missing)('keeps the JSON Schema of a reading', () => {
    keepsJson(JSON.parse(json(book)));
    expect(keepsJson.errors).toBeNull();
  });
  test.skipIf(missing)('keeps what SARIF asks beyond its schema', () => {
    const sources = new Map(files.map(({ path, text }) => [path, text]));
    expect(sarifTroubles(sarif(book, rules), sources)).toEqual([]);
  });
  test.skipIf(missing || keepsSarif === null)('keeps the JSON Schema of SARIF', () => {
    keepsSarif!(JSON.parse(sarif(book, rules)));
    expect(keepsSarif!.errors).toBeNull();
  });
});

test.skipIf(keepsSarif === null)('a SARIF log that has everything in it keeps the JSON Schema', () => {
  const full = mark(broth, 'swirl in the cream', {
    recipe: 'Charred Leek Broth',
    related: [{ file: leaflet.path, span: spanOf(leaflet, 'page 000'), message: 'Stocks are elsewhere.' }],
    mends: [
      {
        label: 'Take it out',
        sure: false,
        edits: [{ span: spanOf(broth, '; swirl in the cream'), text: '' }],
      },
    ],
  });
  const silenced = [stetted(mark(leaflet, 'page 000'), 'the printer fills it in')];
  const text = sarif(reading([full], { stetted: silenced, held: [mark(broth, 'lemon')] }), rules);
  expect(text).toContain('"justification"');
  expect(text).toContain('"replacements"');
  keepsSarif!(JSON.parse(text));
  expect(keepsSarif!.errors).toBeNull();
});

function sarifSchema() {
  const file = new URL('../shared/data/sarif/sarif-schema-2.1.0.json', project);
  if (!existsSync(file)) {
    console.warn('Skipped: the SARIF schema is not beside the project; only our own checks were run.');
    return null;
  }
  const ajv = new ajvDraft04.default({ strict: false });
  addFormats.default(ajv);
  return ajv.compile(JSON.parse(readFileSync(file, 'utf8')));
}
