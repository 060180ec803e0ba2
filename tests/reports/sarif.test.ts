import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/reading/types.js';
import { sarif } from '../../src/reports/sarif.js';
import { version } from '../../src/version.js';
import { broth, leaflet, mark, page, reading, rule, spanOf, stetted } from './fake.js';
import { sarifTroubles } from './sarif-checks.js';

const recipe = 'Charred Leek Broth';
const rules = [rule('unlisted-ingredient', 'listing'), rule('placeholder', 'structure')];
const sourcesOf = ({ pages }: Reading) => new Map(pages.map(({ path, text }) => [path, text]));
const runOf = (what: Reading) => {
  const text = sarif(what, rules);
  expect(sarifTroubles(text, sourcesOf(what))).toEqual([]);
  return JSON.parse(text).runs[0];
};

const fault = mark(broth, 'swirl in the cream', {
  recipe,
  related: [{ file: leaflet.path, span: spanOf(leaflet, 'page 000'), message: 'Stocks are elsewhere.' }],
  mends: [
    { label: 'Take it out', sure: false, edits: [{ span: spanOf(broth, '; swirl in the cream'), text: '' }] },
  ],
});

describe('a SARIF log', () => {
  test('holds a mark with its place, the other place and the mend', () => {
    const [result] = runOf(reading([fault])).results;
    expect(result).toEqual({
      ruleId: 'unlisted-ingredient',
      ruleIndex: 0,
      level: 'error',
      message: {
        text: 'Cream goes in at step 2 and is not on the list. List it, or take it out of the step.',
      },
      locations: [
        {
          physicalLocation: {
            artifactLocation: { uri: 'soups/leek-broth.md', uriBaseId: '%SRCROOT%', index: 0 },
            region: {
              startLine: 11,
              startColumn: 30,
              endLine: 11,
              endColumn: 48,
              snippet: { text: 'swirl in the cream' },
            },
          },
          logicalLocations: [{ name: recipe, kind: 'recipe' }],
        },
      ],
      relatedLocations: [
        {
          id: 1,
          physicalLocation: {
            artifactLocation: { uri: 'front/leaflet.md', uriBaseId: '%SRCROOT%', index: 1 },
            region: {
              startLine: 1,
              startColumn: 5,
              endLine: 1,
              endColumn: 13,
              snippet: { text: 'page 000' },
            },
          },
          message: { text: 'Stocks are elsewhere.' },
        },
      ],
      fixes: [
        {
          description: { text: 'Take it out' },
          artifactChanges: [
            {
              artifactLocation: { uri: 'soups/leek-broth.md', uriBaseId: '%SRCROOT%', index: 0 },
              replacements: [
                {
                  deletedRegion: { startLine: 11, startColumn: 28, endLine: 11, endColumn: 48 },
                  insertedContent: { text: '' },
                },
              ],
            },
          ],
          properties: { sure: false },
        },
      ],
      partialFingerprints: { 'passage/v1': expect.stringMatching(/^[0-9a-f]{32}$/) },
      suppressions: [],
    });
  });
  test('tells the rules that were run, with their help', () => {
    const { driver } = runOf(reading([])).tool;
    expect(driver).toMatchObject({ name: 'tamis', version, semanticVersion: version });
    expect(driver.rules.map((each: { id: string }) => each.id)).toEqual([
      'unlisted-ingredient',
      'placeholder',
    ]);
    expect(driver.rules[0].help.text).toContain('The cook would stumble over it.');
    expect(driver.rules[0].help.markdown).toContain('- common practice');
  });
  test('calls fault, query and note error, warning and note', () => {
    const marks = (['fault', 'query', 'note'] as const).map((weight, index) =>
      mark(broth, ['leeks', 'cream', 'lemon'][index]!, { weight }),
    );
    const { results } = runOf(reading(marks));
    expect(results.map((each: { level: string }) => each.level)).toEqual(['error', 'warning', 'note']);
  });
  test('holds what a stet silences as suppressed, with the reason where one is given', () => {
    const silenced = [
      stetted(mark(leaflet, 'page 000', { rule: 'placeholder' }), 'the printer fills it in'),
      stetted(mark(leaflet, 'stocks', { rule: 'placeholder' }), ''),
    ];
    const { results } = runOf(reading([fault], { stetted: silenced }));
    expect(results.map((each: { suppressions: unknown }) => each.suppressions)).toEqual([
      [],
      [{ kind: 'inSource', status: 'accepted', justification: 'the printer fills it in' }],
      [{ kind: 'inSource', status: 'accepted' }],
    ]);
  });
  test('tells how many marks are held back, where there was an earlier reading', () => {
    expect(runOf(reading([], { held: [fault] })).properties).toEqual({ held: 1 });
    expect(runOf(reading([])).properties).toBeUndefined();
  });
  test('keeps what an author writes from being an argument, a link or a path', () => {
    const odd = page('été 100%/a#b?.md', '\uFEFFx {0} [here](http://x)\r\ny');
    const what = reading(
      [mark(odd, '{0} [here](http://x)', { message: 'Odd {0}: [here](http://x) and \\.', advice: 'Mend.' })],
      { pages: [odd], dishes: [] },
    );
    const [result] = runOf(what).results;
    expect(result.message.text).toBe('Odd {{0}}: \\[here\\](http://x) and \\\\. Mend.');
    expect(result.locations[0].physicalLocation.artifactLocation.uri).toBe(
      '%C3%A9t%C3%A9%20100%25/a%23b%3F.md',
    );
    // The byte-order mark has no column.
    expect(result.locations[0].physicalLocation.region).toMatchObject({ startColumn: 3 });
  });
});

describe('the checks of a SARIF log', () => {
  const good = JSON.parse(sarif(reading([fault]), rules));
  const troubles = (change: (log: typeof good) => void): string[] => {
    const log = structuredClone(good);
    change(log);
    return sarifTroubles(JSON.stringify(log), sourcesOf(reading([fault])));
  };
  test.each<[string, (log: typeof good) => void]>([
    ['a rule index that is another rule’s', (log) => (log.runs[0].results[0].ruleIndex = 1)],
    [
      'a line that is not in the text',
      (log) => {
        log.runs[0].results[0].locations[0].physicalLocation.region.endLine = 99;
      },
    ],
    [
      'a snippet of another place',
      (log) => {
        log.runs[0].results[0].locations[0].physicalLocation.region.startColumn = 1;
      },
    ],
    ['a fingerprint given twice', (log) => log.runs[0].results.push(log.runs[0].results[0])],
    ['no suppressions', (log) => delete log.runs[0].results[0].suppressions],
    ['a brace that is not doubled', (log) => (log.runs[0].results[0].message.text = 'a {0}')],
    ['a path that is no URI', (log) => (log.runs[0].artifacts[0].location.uri = 'a b.md')],
  ])('find %s', (_name, change) => {
    expect(troubles(change)).not.toEqual([]);
  });
});
