/** What a page gives of a file: blocks with text that knows its place, whatever Markdown it was written in. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { misplaced, page, passages } from './pages.js';

/** The text of the first block with its source, so that a test sees both. */
function first(text: string): { text: string; source: string } {
  const opened = page(text);
  const passage = passages(opened.blocks)[0]!;
  const span = passage.span();
  return { text: passage.text, source: text.slice(span.start, span.end) };
}

/** Where `word` of the page stands, as the source has it. */
function place(text: string, word: string): string {
  for (const passage of passages(page(text).blocks)) {
    const at = passage.text.indexOf(word);
    if (at >= 0) {
      const span = passage.span(at, at + word.length);
      return text.slice(span.start, span.end);
    }
  }
  return 'not on the page';
}

describe('inline text', () => {
  it('is read through emphasis, links and code', () => {
    const text = 'Fold in the **warm** [butter](butter.md) and `salt`.';
    expect(first(text).text).toBe('Fold in the warm butter and salt.');
    for (const word of ['warm', 'butter', 'salt']) expect(place(text, word)).toBe(word);
  });

  it('reads a character reference as the character, with the whole reference as its place', () => {
    const text = 'Add &frac12; cup salt &amp; pepper at 180&#176;C, &#x1F34B; too.';
    expect(first(text).text).toBe('Add ½ cup salt & pepper at 180°C, 🍋 too.');
    expect(place(text, '½')).toBe('&frac12;');
    expect(place(text, '🍋')).toBe('&#x1F34B;');
    expect(place(text, 'pepper')).toBe('pepper');
  });

  it('leaves an ampersand that is no reference as it is', () => {
    expect(first('salt &pepper; mac & cheese').text).toBe('salt &pepper; mac & cheese');
  });

  it('reads an escaped mark as the mark, with its backslash as part of its place', () => {
    const text = 'about 1\\. 5 \\* 2 cups';
    expect(first(text).text).toBe('about 1. 5 * 2 cups');
    expect(place(text, '*')).toBe('\\*');
    expect(place(text, 'cups')).toBe('cups');
  });

  it('has line breaks of either kind as one line end', () => {
    expect(first('salt  \npepper\\\noil\nwater<br>ice').text).toBe('salt\npepper\noil\nwater\nice');
  });

  it('has nothing for an image or a comment', () => {
    expect(first('![a pot](pot.png) Stir<!-- how long? --> well.').text).toBe(' Stir well.');
  });

  it('skips the indentation and the marks of a continued line', () => {
    const text = '> - Melt the\n>   butter, `then\n>   stir` &amp;\n> &gt; 5 g\nlazily';
    expect(passages(page(text).blocks)[0]!.text).toBe('Melt the\nbutter, then\nstir &\n> 5 g\nlazily');
    for (const word of ['butter', 'stir', 'lazily', '5 g']) expect(place(text, word)).toBe(word);
  });

  it('keeps a sign that opens a continued line where it is text', () => {
    const text = '> Melt\n        > butter';
    expect(first(text).text).toBe('Melt\n> butter');
    expect(place(text, 'butter')).toBe('butter');
  });
});

describe('offsets', () => {
  it('count a byte-order mark, Windows line ends and pairs as JavaScript does', () => {
    const text = '\uFEFF# 🍋 Tart\r\n\r\n- 2 lemons,\r\n  zested\r\n\r\n1. Bake 🔥 it.\r\n';
    for (const word of ['Tart', '🍋', 'zested', 'Bake', 'it']) expect(place(text, word)).toBe(word);
    expect(misplaced(page(text))).toEqual([]);
    expect(page(text).blocks[0]!.span.start).toBe(1);
  });

  it('hold with lone carriage returns, tabs and hard spaces', () => {
    const text = '-\tsalt\r\t\tand\u00A0oil\r\r\tmore\tsalt\r';
    expect(misplaced(page(text))).toEqual([]);
    expect(passages(page(text).blocks).map((passage) => passage.text)).toEqual([
      'salt\nand\u00A0oil',
      'more\tsalt',
    ]);
  });

  it('hold past a null character, which reads as the sign for a lost one', () => {
    expect(first('salt\0 and oil').text).toBe('salt\uFFFD and oil');
    expect(place('salt\0 and oil', 'oil')).toBe('oil');
  });

  it('hold in tables with escaped bars', () => {
    const text = '| Amount | Food |\n|---|:-:|\n| 2 \\| 3 | `a\\|b` eggs |\n| | **salt** |';
    const table = page(text).blocks[0]!;
    expect(table.type === 'table' && table.rows.map((row) => row.map((cell) => cell.text))).toEqual([
      ['Amount', 'Food'],
      ['2 | 3', 'a|b eggs'],
      ['', 'salt'],
    ]);
    expect(misplaced(page(text))).toEqual([]);
  });

  it('hold for any mixture of marks of Markdown', () => {
    const piece = fc.constantFrom(
      ...[
        '\n',
        '\r\n',
        '\r',
        '\n\n',
        ' ',
        '  \n',
        '\\\n',
        '\t',
        '    ',
        '> ',
        '>',
        '- ',
        '1. ',
        '2) ',
        '# ',
        '===\n',
        '---\n',
        '|',
        '|-|-|\n',
      ],
      ...[
        '*',
        '**',
        '_',
        '`',
        '``',
        '[',
        '](u)',
        '![',
        '<br>',
        '<!--',
        '-->',
        '<b>',
        '&amp;',
        '&frac12;',
        '&#x41;',
        '&gt;',
        '&',
        '\\',
        '\\>',
      ],
      ...['flour', 'salt', '½', '🍋', '\u00A0', 'é', '.', ':', '```\n', 'key: ', "'", '"', '\uFEFF'],
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
        expect(misplaced(page(pieces.join('')))).toEqual([]);
      }),
      { numRuns: 4000 },
    );
  });

  it('hold for any string at all', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        expect(misplaced(page(text))).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('real recipes', () => {
  const corpus = new URL('../../../shared/corpus/public-domain/', import.meta.url);
  const files = ((): string[] => {
    try {
      return readdirSync(corpus).filter((file) => file.endsWith('.md'));
    } catch {
      return [];
    }
  })();

  it.skipIf(files.length === 0)(
    'have every word where the page says, in any line ends and with a byte-order mark',
    () => {
      for (const file of files) {
        const text = readFileSync(new URL(file, corpus), 'utf8').replace(/\r\n?/g, '\n');
        for (const variant of [
          text,
          text.replaceAll('\n', '\r\n'),
          `\uFEFF${text}`,
          text.replaceAll('\n', '\r'),
        ]) {
          expect(misplaced(page(variant)), file).toEqual([]);
        }
      }
    },
  );
});

describe('blocks', () => {
  it('number the items of a list as printed, and count where all are printed alike', () => {
    const numbers = (text: string): unknown => {
      const list = page(text).blocks[0]!;
      return list.type === 'list' && list.items.map((item) => item.number);
    };
    expect(numbers('1. Mix.\n2. Rest.\n4. Bake.')).toEqual([1, 2, 4]);
    expect(numbers('1. Mix.\n1. Rest.\n1. Bake.')).toEqual([1, 2, 3]);
    expect(numbers('- Mix.\n- Rest.')).toEqual([null, null]);
  });

  it('know a paragraph that is wholly bold or slanted', () => {
    const wrapped = (text: string): unknown => {
      const block = page(text).blocks[0]!;
      return block.type === 'paragraph' && block.wrapped;
    };
    expect(wrapped('**For the sauce**')).toBe('strong');
    expect(wrapped('**For the sauce**:')).toBe('strong');
    expect(wrapped('***For the sauce***')).toBe('strong');
    expect(wrapped('*Serves 4*')).toBe('emphasis');
    expect(wrapped('**Stir** well')).toBe(null);
  });

  it('are not parted by a comment', () => {
    expect(page('Stir.\n\n<!-- a remark -->\n\nServe.').blocks.map((block) => block.type)).toEqual([
      'paragraph',
      'paragraph',
    ]);
  });

  it('survive nesting without end', () => {
    expect(() => page('> '.repeat(3000))).not.toThrow();
    expect(() => page(`${'*a **b '.repeat(2000)}${'** *'.repeat(2000)}`)).not.toThrow();
  });
});
