import { describe, expect, test } from 'vitest';
import { progress } from '../../src/cli/progress.js';

/** Runs a reading of ten files, each of which takes so long, and gives what was written. */
function written(isTTY: boolean, millisecondsPerFile: number): string[] {
  let now = 0;
  const texts: string[] = [];
  const { onPage, clear } = progress({ isTTY, write: (text) => texts.push(text) }, () => now);
  for (let done = 1; done <= 10; done++) {
    now += millisecondsPerFile;
    onPage(done, 10);
  }
  clear();
  return texts;
}

describe('progress', () => {
  test('is one line that is written over, and gone at the end', () => {
    const texts = written(true, 100);
    expect(texts[0]).toBe('\r\u001B[2KReading: 3 of 10 files');
    expect(texts.at(-2)).toBe('\r\u001B[2KReading: 10 of 10 files');
    expect(texts.at(-1)).toBe('\r\u001B[2K');
    expect(texts.join('')).not.toContain('\n');
  });
  test('is not shown while the reading is quick', () => {
    expect(written(true, 20)).toEqual([]);
  });
  test('is not shown where there is no terminal', () => {
    expect(written(false, 1000)).toEqual([]);
  });
});
