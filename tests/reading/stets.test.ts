/** What a stet silences: a line, a recipe or a file; and what is said of one that silences nothing. */
import { describe, expect, it } from 'vitest';
import { readManuscript } from '../../src/reading/read.js';

const toast = (title: string, before = '', after = '') => `${before}# ${title}

Serves 1

- 1 slice bread

1. Toast the bread until golden, 2 minutes.
2. Spread with the jam.${after}

`;
const read = (text: string, only?: string[]) =>
  readManuscript([{ path: 'toast.md', text }], only === undefined ? {} : { only });
const marks = (text: string, only?: string[]) =>
  read(text, only).marks.map((mark) => `${mark.rule} ${read(text).pages[0]!.lines.line(mark.span.start)}`);

describe('a stet for a recipe', () => {
  it('above its title silences the rule all through that recipe, and in no other', () => {
    const stet = '<!-- stet recipe unlisted-ingredient: any jar -->\n';
    expect(marks(toast('Plain', stet) + toast('Plainer'))).toEqual(['unlisted-ingredient 18']);
  });

  it('may stand inside the recipe', () => {
    const stet = '\n\n<!-- stet recipe unlisted-ingredient: any jar -->';
    expect(marks(toast('Plain', '', stet))).toEqual([]);
    expect(marks(toast('Plainer') + toast('Plain', '', stet))).toEqual(['unlisted-ingredient 8']);
  });
});

describe('a stet for a file', () => {
  it('silences the rule in every recipe of it, wherever it stands', () => {
    const stet = '<!-- stet file unlisted-ingredient: any jar -->\n';
    expect(marks(toast('Plain') + toast('Plainer') + stet)).toEqual([]);
  });

  it('that names no rule silences all of them', () => {
    expect(marks(`<!-- stet file: a joke -->\n\n${toast('Plain')}`)).toEqual([]);
  });
});

describe('several stets', () => {
  it('above one line speak for it each, and the one that names the rule answers', () => {
    const text = toast('Plain').replace(
      '2. Spread',
      '\n<!-- stet unlisted-ingredient: any jar -->\n<!-- stet -->\n2. Spread',
    );
    const reading = read(text);
    expect(reading.stetted.map(({ reason }) => reason)).toEqual(['any jar']);
    expect(reading.marks.map(({ rule, subject }) => [rule, subject])).toEqual([['stet-idle', 'stet']]);
  });

  it('in one comment are parted by commas', () => {
    expect(marks(toast('Plain', '', ' <!-- stet unlisted-ingredient, doneness-cue-absent: x -->'))).toEqual(
      [],
    );
  });
});

describe('a stet', () => {
  it('inside a list, a table or a file with Windows line ends silences its line', () => {
    const between = toast('Plain').replace(
      '2. Spread',
      '<!-- stet unlisted-ingredient: any jar -->\n2. Spread',
    );
    expect(marks(between)).toEqual([]);
    expect(marks(between.replaceAll('\n', '\r\n'))).toEqual([]);
    const table = toast('Plain').replace(
      '- 1 slice bread',
      '| Amount | Ingredient |\n| --- | --- |\n| 1 slice | bread |\n| 1 cup | rice <!-- stet unused-ingredient: for the look --> |',
    );
    expect(marks(table)).toEqual(['unlisted-ingredient 11']);
  });

  it('is not called idle when its rule was not run', () => {
    const text = toast('Plain', '', ' <!-- stet unlisted-ingredient: any jar -->');
    expect(marks(text, ['unused-ingredient', 'stet-idle'])).toEqual([]);
  });
});
