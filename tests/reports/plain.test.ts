import { describe, expect, test } from 'vitest';
import { plain } from '../../src/reports/plain.js';
import { broth, leaflet, mark, page, reading } from './fake.js';

describe('a plain report', () => {
  test('is one line a mark: file, line, column, weight, words, rule', () => {
    const marks = [
      mark(broth, 'swirl in the cream'),
      mark(leaflet, 'page 000', {
        rule: 'placeholder',
        weight: 'note',
        message: 'A page number is missing.',
        advice: 'Put it in.',
      }),
    ];
    expect(plain(reading(marks))).toBe(
      'soups/leek-broth.md:11:30: fault: Cream goes in at step 2 and is not on the list. List it, or take it out of the step. [unlisted-ingredient]\n' +
        'front/leaflet.md:1:5: note: A page number is missing. Put it in. [placeholder]\n',
    );
  });
  test('is empty when there is nothing to mark', () => {
    expect(plain(reading([]))).toBe('');
  });
  test('keeps a message on its line and the terminal unharmed', () => {
    const odd = page('two\nlines\u001B.md', 'x');
    const text = plain(
      reading([mark(odd, 'x', { message: 'One\r\ntwo\u001B[0m.', advice: 'Three\u2028four.' })], {
        pages: [odd],
      }),
    );
    expect(text).toBe('two lines␛.md:1:1: fault: One two␛[0m. Three four. [unlisted-ingredient]\n');
  });
});
