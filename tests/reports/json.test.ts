import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { toleranceEdition } from '../../src/larder/tolerances.js';
import { fingerprintsOf } from '../../src/reading/fingerprints.js';
import { caution } from '../../src/reports/caution.js';
import { json, reportReading } from '../../src/reports/json.js';
import { readingReport, showReport } from '../../src/reports/schema.js';
import { version } from '../../src/version.js';
import { broth, brothDish, leaflet, mark, page, reading, rule, spanOf, stetted } from './fake.js';

const recipe = 'Charred Leek Broth';

describe('a json report', () => {
  const fault = mark(broth, 'swirl in the cream', {
    recipe,
    subject: 'cream',
    related: [{ file: leaflet.path, span: spanOf(leaflet, 'page 000'), message: 'Stocks are elsewhere.' }],
    mends: [
      {
        label: 'Take it out',
        sure: false,
        edits: [{ span: spanOf(broth, '; swirl in the cream'), text: '' }],
      },
    ],
  });
  const silenced = [stetted(mark(leaflet, 'page 000', { rule: 'placeholder' }), 'the printer fills it in')];

  test('holds what the contract says, to the letter', () => {
    // The ten lines before line 11 have 21, 1, 9, 1, 34, 34, 32, 20, 1 and 48 units, line ends included.
    const lineStart = 201;
    expect(JSON.parse(json(reading([fault], { stetted: silenced })))).toEqual({
      tamis: version,
      recipes: [{ title: recipe, file: 'soups/leek-broth.md', line: 1 }],
      marks: [
        {
          rule: 'unlisted-ingredient',
          weight: 'fault',
          file: 'soups/leek-broth.md',
          recipe,
          subject: 'cream',
          message: 'Cream goes in at step 2 and is not on the list. List it, or take it out of the step.',
          start: { line: 11, column: 30, offset: lineStart + 29 },
          end: { line: 11, column: 48, offset: lineStart + 47 },
          related: [
            {
              file: 'front/leaflet.md',
              start: { line: 1, column: 5, offset: 4 },
              end: { line: 1, column: 13, offset: 12 },
              message: 'Stocks are elsewhere.',
            },
          ],
          fingerprint: fingerprintsOf(reading([fault], { stetted: silenced })).get(fault),
          mends: [
            {
              label: 'Take it out',
              sure: false,
              edits: [
                {
                  start: { line: 11, column: 28, offset: lineStart + 27 },
                  end: { line: 11, column: 48, offset: lineStart + 47 },
                  text: '',
                },
              ],
            },
          ],
        },
      ],
      counts: { fault: 1, query: 0, note: 0 },
      stetted: [
        {
          rule: 'placeholder',
          file: 'front/leaflet.md',
          line: 1,
          recipe: null,
          subject: 'page 000',
          reason: 'the printer fills it in',
          stet: { line: 1, scope: 'line' },
        },
      ],
      held: null,
      caution: null,
      style: 'majority',
      tolerances: toleranceEdition,
    });
  });
  test('keeps the contract of the schema, which allows nothing else', () => {
    const report = JSON.parse(json(reading([fault], { stetted: silenced })));
    expect(readingReport.safeParse(report).success).toBe(true);
    expect(readingReport.safeParse({ ...report, more: 1 }).success).toBe(false);
    expect(readingReport.safeParse({ ...report, counts: { fault: 1 } }).success).toBe(false);
  });
  test('gives null for the title of a recipe that has none', () => {
    const dish = brothDish();
    const untitled = { ...dish, recipe: { ...dish.recipe, title: null } };
    const report = readingReport.parse(JSON.parse(json(reading([], { dishes: [untitled] }))));
    expect(report.recipes).toEqual([{ title: null, file: 'soups/leek-broth.md', line: 1 }]);
  });
  test('tells how many marks are held back, and the caution where a mark is about safety', () => {
    const safety = mark(broth, 'cream', { rule: 'safe-temperature' });
    const rules = [rule('unlisted-ingredient', 'listing'), rule('safe-temperature', 'safety')];
    const held = [fault];
    expect(reportReading(reading([safety], { held }), rules)).toMatchObject({ held: 1, caution });
    expect(reportReading(reading([fault]), rules)).toMatchObject({ held: null, caution: null });
  });
  test('escapes what a terminal would obey, and means the same', () => {
    const odd = page('odd.md', '\u009B31m\u202E');
    const text = json(reading([mark(odd, '\u009B31m\u202E')], { pages: [odd], dishes: [] }));
    expect(text).not.toMatch(/[\u0080-\u009F\u202E]/);
    expect(readingReport.parse(JSON.parse(text)).marks[0]?.subject).toBe('\u009B31m\u202E');
  });
});

describe('the JSON Schemas made of the contract', () => {
  test.each([
    [
      'reading',
      readingReport,
      ['tamis', 'recipes', 'marks', 'counts', 'stetted', 'held', 'caution', 'style', 'tolerances'],
    ],
    ['show', showReport, ['tamis', 'recipes']],
  ])('%s: names what is required and forbids the rest', (_name, schema, required) => {
    const made = z.toJSONSchema(schema);
    expect(made.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(made.required).toEqual(required);
    expect(made.additionalProperties).toBe(false);
  });
});
