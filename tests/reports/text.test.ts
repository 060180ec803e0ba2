import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clip, displayWidth, oneLine, visible, wrap } from '../../src/reports/text.js';
import { countOf, curled, joined } from '../../src/reports/words.js';

describe('text in a terminal', () => {
  test('a control character is shown as its picture', () => {
    expect(visible('a\u001Bb\u007Fc\u0085d\uD800')).toBe('a␛b␡c␦d␦');
  });
  test('accents, fractions and emoji stay', () => {
    expect(visible('crème brûlée ½ 👩‍🍳')).toBe('crème brûlée ½ 👩‍🍳');
  });
  test('line ends and tabs are one space', () => {
    expect(oneLine(' a\r\n\tb  c\n')).toBe('a b c');
  });
  test('Chinese takes two columns a character, a combining accent none', () => {
    expect(displayWidth('汤a')).toBe(3);
    expect(displayWidth('e\u0301')).toBe(1);
  });
  test('a text is cut only where it is too wide', () => {
    expect(clip('leeks', 5)).toBe('leeks');
    expect(clip('leek broth', 6)).toBe('leek…');
    expect(clip('汤汤汤', 4)).toBe('汤…');
  });
  test('wrapped lines are within the width and lose no letter', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 300 }),
        fc.integer({ min: 2, max: 60 }),
        (text, columns) => {
          const lines = wrap(text, columns);
          expect(lines.every((line) => displayWidth(line) <= columns)).toBe(true);
          expect(lines.join('').replaceAll(' ', '')).toBe(oneLine(text).replaceAll(' ', ''));
        },
      ),
    );
  });
});

describe('counts in words', () => {
  test.each([
    [0, 'no notes'],
    [1, 'one note'],
    [12, 'twelve notes'],
    [20, 'twenty notes'],
    [99, 'ninety-nine notes'],
    [100, '100 notes'],
  ])('%d', (count, words) => {
    expect(countOf(count, 'note', 'notes')).toBe(words);
  });
  test('a list of them ends with "and"', () => {
    expect(joined(['one', 'two', 'three'])).toBe('one, two and three');
    expect(joined(['one'])).toBe('one');
  });
});

describe('quotation marks', () => {
  test('are set as on a printed page', () => {
    expect(curled('"A" here; the list has "B" ("C").')).toBe('“A” here; the list has “B” (“C”).');
  });
  test.each(['a 9" pan', 'a 9" by 13" pan', 'the "9" pan"', 'src="x" "', '"'])(
    'that may be inches stay: %s',
    (text) => {
      expect(curled(text)).toBe(text);
    },
  );
});
