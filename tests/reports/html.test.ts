/** The query sheet as text; how a browser takes it is in page.test.ts. */
import { describe, expect, test } from 'vitest';
import { caution } from '../../src/reports/caution.js';
import { html } from '../../src/reports/html.js';
import { quotePassage } from '../../src/reports/sheet/passage.js';
import { broth, leaflet, mark, page, reading, rule, spanOf, stetted } from './fake.js';
import { hostileReading } from './hostile.js';

const recipe = 'Charred Leek Broth';
const rules = [
  rule('unlisted-ingredient', 'listing'),
  rule('servings-agree', 'claims'),
  rule('safe-temperature', 'safety'),
];
const fault = mark(broth, 'swirl in the cream', {
  recipe,
  related: [{ file: leaflet.path, span: spanOf(leaflet, 'page 000'), message: 'Stocks are elsewhere.' }],
  mends: [{ label: 'Take it out', sure: false, edits: [] }],
});
const yields = mark(broth, 'Serves 4', { recipe, rule: 'servings-agree', weight: 'query' });

describe('a query sheet', () => {
  const text = html(reading([yields, fault, mark(leaflet, 'page 000')]), rules);

  test('goes by chapter and recipe, and numbers the queries of each as a galley does', () => {
    const order = [
      '<h2>Soups</h2>',
      '<bdi>Charred Leek Broth</bdi></h3>',
      '<span class="number">Q1</span> <span class="weight">query</span> <span class="line">line 3</span>',
      '<span class="number">Q2</span> <span class="weight">fault</span> <span class="line">line 11</span>',
      '<h2>Front</h2>',
      '<bdi>front/leaflet.md</bdi></h3>',
      '<span class="number">Q1</span> <span class="weight">fault</span> <span class="line">line 1</span>',
    ].map((part) => text.indexOf(part, text.indexOf('id="queries"')));
    expect(order.slice(0, 6)).not.toContain(-1);
    expect(order.slice(0, 6)).toEqual(order.slice(0, 6).toSorted((one, other) => one - other));
    expect(text.lastIndexOf('line 1</span>')).toBeGreaterThan(order[5]!);
  });
  test('quotes the passage with the exact words marked, the other side and what is offered', () => {
    expect(text).toContain('2. Add the beans and simmer; <mark>swirl in the cream</mark>.</bdi>');
    expect(text).toContain(
      'Compare front/leaflet.md, line 1: Stocks are elsewhere. <q><bdi>page 000</bdi></q>',
    );
    expect(text).toContain('Offered: Take it out');
  });
  test('quotes the other side once where there is no more to say of it, and with the marks of a printed page', () => {
    const twice = mark(broth, 'Serves 4', {
      recipe,
      message: '"Serves 4" stands twice.',
      related: [{ file: broth.path, span: spanOf(broth, 'Serves 4'), message: 'Serves 4' }],
    });
    const said = html(reading([twice]), rules);
    expect(said).toContain('Compare line 3: <q><bdi>Serves 4</bdi></q></p>');
    expect(said).toContain('“Serves 4” stands twice.');
  });
  test('says the caution where a mark is about safety, and only there', () => {
    const safety = mark(broth, 'cream', { rule: 'safe-temperature' });
    expect(html(reading([safety]), rules)).toContain(caution);
    expect(text).not.toContain(caution);
  });
  test('explains the rules that left marks, and no others', () => {
    expect(text).toContain('id="rule-servings-agree"');
    expect(text).not.toContain('id="rule-safe-temperature"');
  });
  test('loads nothing and sends nothing', () => {
    expect(text).not.toMatch(/https?:|<link|<iframe|<img|@import|url\((?!#)|\bfetch\b|XMLHttpRequest/);
    expect(text).toContain('content="default-src &#39;none&#39;; style-src &#39;sha256-');
  });
  test('is content where there is nothing to ask', () => {
    const empty = html(reading([]), rules);
    expect(empty).toContain('No marks in one recipe.');
    expect(empty).not.toContain('<article');
    expect(empty).not.toContain('id="tools"');
  });
  test('tells what is held back and what is silenced', () => {
    const told = html(reading([], { held: [fault], stetted: [stetted(yields, 'so')] }), rules);
    expect(told).toContain('No new marks in one recipe. One mark silenced by stet. One mark held back');
  });
  test('lets nothing of the author become markup', () => {
    const hostile = html(hostileReading(), rules);
    const body = hostile.slice(hostile.indexOf('<body>'), hostile.lastIndexOf('<script>'));
    expect(body).not.toMatch(/<(?:script|img|iframe|style|a href="javascript)/i);
    expect(body).not.toMatch(/[\u202A-\u202E\u2066-\u2069\u200F\u061C\u2028\uD800-\uDFFF]/);
    expect(body).not.toContain('\u0000');
    // Every quote that an attribute's value could end at is escaped: what is left between tags has none.
    expect(body.replace(/<[^<>]*>/g, '')).not.toMatch(/["'<>`]/);
  });
});

describe('a passage', () => {
  const quote = (text: string, words: string) => quotePassage(text, spanOf(page('a.md', text), words));

  test('is the block around the words, on one line, without its bullet', () => {
    const text = 'Soup.\n\n- leeks\n- two cups\n  of cream,\n  cold\n- salt\n';
    expect(quote(text, 'cream')).toEqual({ before: 'two cups of ', words: 'cream', after: ', cold' });
  });
  test('keeps the number of its step and the text of its table row', () => {
    expect(quote('1. Boil.\n2. Add the cream.\n3. Serve.', 'cream').before).toBe('2. Add the ');
    expect(quote('| a | b |\n| 2 cups | milk |  |\n| 1 | egg |', 'milk')).toEqual({
      before: '2 cups | ',
      words: 'milk',
      after: '',
    });
  });
  test('ends at an empty line, also in a file with CRLF', () => {
    expect(quote('One.\r\n\r\nTwo words\r\nhere.\r\n\r\nThree.', 'words')).toEqual({
      before: 'Two ',
      words: 'words',
      after: ' here.',
    });
  });
  test('is cut between words when the block is long', () => {
    const long = 'stir well '.repeat(60);
    const { before, after } = quote(`${long}cream ${long}`, 'cream');
    expect(before).toMatch(/^… (?:stir|well) (?:\w+ )+$/);
    expect(after).toMatch(/^ (?:\w+ )+…$/);
    expect(before.length).toBeLessThan(170);
  });
  test('keeps both ends of very long words', () => {
    const { words } = quotePassage('stir well '.repeat(100), { start: 0, end: 1000 });
    expect(words).toMatch(/^stir well .* … .* stir well$/);
    expect(words.length).toBeLessThan(330);
  });
  test('is empty where the mark stands between two characters', () => {
    expect(quotePassage('Bake it.', { start: 4, end: 4 })).toEqual({
      before: 'Bake',
      words: '',
      after: ' it.',
    });
  });
});
