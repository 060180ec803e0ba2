/** The fields of the front matter, each where it stands. */
import { describe, expect, it } from 'vitest';
import { misplaced, page } from './pages.js';

function fields(yaml: string): [string, string][] {
  return page(`---\n${yaml}\n---\n\n# Soup\n`).front.map((field) => [field.key, field.passage.text]);
}

describe('front matter', () => {
  it('gives every scalar with its key', () => {
    expect(fields('title: Leek Broth\nserves: 4\ntags: [soup, "green"]\nyield:')).toEqual([
      ['title', 'Leek Broth'],
      ['serves', '4'],
      ['tags', 'soup'],
      ['tags', 'green'],
      ['yield', ''],
    ]);
  });

  it('joins the keys of nested maps with dots', () => {
    expect(fields('time:\n  prep: 10 min # quick\n  cook: "1 h"\nby:\n  - Ada\n  - Bo')).toEqual([
      ['time.prep', '10 min'],
      ['time.cook', '1 h'],
      ['by', 'Ada'],
      ['by', 'Bo'],
    ]);
  });

  it('reads quotes, escapes and folded lines, each in its place', () => {
    const text = `---\na: "Grandma\\u2019s \\"pie\\""\nb: 'it''s good'\nc: >\n  one\n  two\nd: |\n  three\n  four\ne: five\n  six\n---\n`;
    const opened = page(text);
    expect(opened.front.map((field) => field.passage.text)).toEqual([
      'Grandma\u2019s "pie"',
      "it's good",
      'one two\n',
      'three\nfour\n',
      'five six',
    ]);
    expect(misplaced(opened)).toEqual([]);
    const apostrophe = opened.front[0]!.passage.span(7, 8);
    expect(text.slice(apostrophe.start, apostrophe.end)).toBe('\\u2019');
  });

  it('holds its places with Windows line ends and a byte-order mark', () => {
    const opened = page(
      '\uFEFF---\r\ntitle: "Leek Broth"\r\nserves: 4\r\nnote: "a \\"b\\" c"\r\n---\r\n# Soup',
    );
    expect(opened.front.map((field) => field.passage.text)).toEqual(['Leek Broth', '4', 'a "b" c']);
    expect(misplaced(opened)).toEqual([]);
  });

  it('is read as far as its lines are plain when it is broken', () => {
    expect(fields('title: Soup: the best\nserves: 4\ntags: [a')).toEqual([
      ['title', 'Soup: the best'],
      ['serves', '4'],
    ]);
    expect(fields('title: "Leek\n: [}')).toEqual([]);
    expect(page('---\ntitle: [\n---\n\n# Soup').blocks).toHaveLength(1);
  });

  it('reads the same by the quick way and by the long one', () => {
    const yaml = 'title: Leek Broth, charred\nserves: 4-6\ntags: [a b, "c"]\nday: 2024-05-06\nempty:';
    const long = fields(`${yaml}\nzz: a # remark`).slice(0, -1);
    expect(fields(yaml.replace('Broth, charred', 'Broth'))).toEqual(
      fields(`${yaml.replace('Broth, charred', 'Broth')}\nzz: a # remark`).slice(0, -1),
    );
    expect(long[0]).toEqual(['title', 'Leek Broth, charred']);
  });
});
