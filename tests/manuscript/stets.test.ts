/** The author's stets: which rules they name, why, and which line they silence. */
import { describe, expect, it } from 'vitest';
import { page } from './pages.js';

function stets(text: string): unknown[] {
  return page(text).stets.map(({ rules, reason, line }) => [rules, reason, line]);
}

describe('a stet', () => {
  it('silences the line it ends', () => {
    expect(stets('# Broth\n\n- 1 leek <!-- stet unused-ingredient: for the look -->\n- salt')).toEqual([
      [['unused-ingredient'], 'for the look', 3],
    ]);
  });

  it('silences the next line with text when it stands alone', () => {
    expect(stets('<!-- stet a-rule, other-rule: because: yes -->\n\n\n# Broth')).toEqual([
      [['a-rule', 'other-rule'], 'because: yes', 4],
    ]);
    expect(stets('- leek\n<!-- stet order: habit -->\n- salt')).toEqual([[['order'], 'habit', 3]]);
  });

  it('passes over other comments on its way', () => {
    expect(stets('<!-- stet a-b: c -->\n<!-- stet d-e: f -->\n<!-- a\nremark -->\nStir.')).toEqual([
      [['a-b'], 'c', 5],
      [['d-e'], 'f', 5],
    ]);
  });

  it('silences its own line when only a bullet stands before it', () => {
    expect(stets('- <!-- stet a-b: c --> 1 leek')).toEqual([[['a-b'], 'c', 1]]);
  });

  it('may name no rule, and may go without a reason', () => {
    expect(stets('Stir. <!-- stet: the author insists -->')).toEqual([[[], 'the author insists', 1]]);
    expect(stets('Stir. <!-- stet -->')).toEqual([[[], '', 1]]);
    expect(stets('Stir. <!-- stet a-rule -->')).toEqual([[['a-rule'], '', 1]]);
    expect(stets('Stir. <!-- STET the author insists -->')).toEqual([[[], 'the author insists', 1]]);
  });

  it('is no other comment, nor one in code', () => {
    expect(stets('<!-- stetson hats -->\n\n`<!-- stet a: b -->`\n\n    <!-- stet a: b -->\n')).toEqual([]);
  });

  it('is found in a table, a quote and a block of HTML', () => {
    expect(stets('| a | b |\n|---|---|\n| 1 cup | oil <!-- stet a-b: c --> |')).toEqual([[['a-b'], 'c', 3]]);
    expect(stets('> <!-- stet a-b: c -->\n> Stir.')).toEqual([[['a-b'], 'c', 2]]);
    expect(stets('<div>\n<!-- stet a-b: c -->\n</div>\n\nStir.')).toEqual([[['a-b'], 'c', 3]]);
  });
});
