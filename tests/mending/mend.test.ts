/** Mends of a whole manuscript: made once, nothing else touched, no new mark. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rules } from '../../rules/index.js';
import type { Mark } from '../../rules/rule.js';
import { type HouseStyle, undecided } from '../../src/manuscript/house-style.js';
import { readHouseStyle } from '../../src/manuscript/house-style-file.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import type { Choice } from '../../src/mending/choice.js';
import { settleOverlaps, sureChoices } from '../../src/mending/choice.js';
import { applyEdits } from '../../src/mending/edits.js';
import { type Mending, mendManuscript } from '../../src/mending/mend.js';
import { readManuscript } from '../../src/reading/read.js';
import { draftHouse } from '../../src/reports/draft-house.js';
import { corpusIn } from '../accuracy/plants.js';

const draft = new URL('../../fixtures/lock-keepers-table/draft/', import.meta.url);
const demo: SourceFile[] = readdirSync(draft, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.md'))
  .sort()
  .map((path) => ({ path, text: readFileSync(new URL(path, draft), 'utf8') }));
const corpus = corpusIn('../shared/corpus/public-domain');

/** Takes a mend of every mark that has any, offered ones too, since they put a mending to a harder test than sure ones. */
const chooseAny =
  (seed: number) =>
  (marks: readonly Mark[]): Choice[] =>
    marks.flatMap((mark) => {
      const mend = mark.mends[(seed + mark.span.start) % Math.max(1, mark.mends.length)];
      return mend === undefined ? [] : [{ mark, mend }];
    });

const after = (files: readonly SourceFile[], mending: Mending): SourceFile[] =>
  files.map(({ path, text }) => ({
    path,
    text: mending.files.find((file) => file.path === path)?.after ?? text,
  }));

/** How often a rule marks a file; a mark for many places stands at the first of them, and may move to the next file. */
function census(marks: readonly Mark[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { rule, file } of marks) {
    const key = wording.has(rule) ? rule : `${rule} ${file}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

/** What most of the files do, as a house style: it makes a sure mend of nearly every departure. */
function draftedStyle(files: readonly SourceFile[]): HouseStyle {
  return styleIn(draftHouse(readManuscript(files, { only: [] })));
}

function styleIn(yaml: string): HouseStyle {
  const read = readHouseStyle(
    yaml,
    rules.map(({ name }) => name),
  );
  if ('troubles' in read) throw new Error(JSON.stringify(read.troubles));
  return read.style;
}

const wording = new Set(rules.filter(({ topic }) => topic === 'wording').map(({ name }) => name));

function checkMending(
  files: readonly SourceFile[],
  choose: (marks: readonly Mark[]) => readonly Choice[],
  style: HouseStyle = undecided,
): number {
  const mending = mendManuscript(files, { style }, choose);
  for (const { before, after: mended, rounds } of mending.files) {
    let text = before;
    for (const round of rounds) {
      expect(round.text).toBe(text);
      text = outsideKept(round.text, round.edits);
    }
    expect(text).toBe(mended);
  }
  const twice = mendManuscript(after(files, mending), { style }, choose);
  expect(twice.files.map(({ path }) => path)).toEqual([]);
  const before = census(mending.before.marks);
  for (const [key, count] of census(readManuscript(after(files, mending), { style }).marks))
    expect(count, key).toBeLessThanOrEqual(before.get(key) ?? 0);
  return mending.files.length;
}

/** The text with the edits, put together again by hand from what stands between them. */
function outsideKept(text: string, edits: Mending['files'][number]['rounds'][number]['edits']): string {
  const made = applyEdits(text, edits);
  let grown = 0;
  let from = 0;
  for (const { span, text: put } of edits.toSorted((a, b) => a.span.start - b.span.start)) {
    expect(made.slice(from + grown, span.start + grown)).toBe(text.slice(from, span.start));
    grown += put.length - (span.end - span.start);
    from = span.end;
  }
  expect(made.slice(from + grown)).toBe(text.slice(from));
  return made;
}

describe('mending', () => {
  it('of the demo, whatever is chosen: twice is once, the rest is untouched, no new mark', () => {
    for (const seed of [0, 1, 2]) expect(checkMending(demo, chooseAny(seed))).toBeGreaterThan(5);
  });

  it.skipIf(corpus === null)('of the corpus, file by file: the same', { timeout: 240_000 }, () => {
    let mended = 0;
    for (const file of corpus!) mended += checkMending([file], chooseAny(0));
    expect(mended).toBeGreaterThan(50);
  });

  it('of the demo by a house style that wants everything otherwise, the sure mends: the same', () => {
    const style = styleIn(
      'units: { form: abbreviated with period }\nnumbers: 0.5\nranges: 3–5\ntemperatures: { form: 350 degrees F }\nterms: { spring onion: [], broth: [stock] }\n',
    );
    expect(checkMending(demo, sureChoices, style)).toBeGreaterThan(5);
  });

  it.skipIf(corpus === null)(
    'of a fifth of the corpus as one book by its drafted house style: the same',
    { timeout: 240_000 },
    () => {
      const book = corpus!.filter((_, index) => index % 5 === 0);
      expect(checkMending(book, sureChoices, draftedStyle(book))).toBeGreaterThan(20);
    },
  );

  it('keeps line ends, a byte-order mark and odd white space', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('\r\n', '\n'),
        fc.boolean(),
        fc.constantFrom('', ' ', '\t', '  '),
        fc.nat(demo.length - 1),
        (lineEnd, mark, space, index) => {
          const { path, text } = demo[index]!;
          const odd =
            (mark ? '\uFEFF' : '') + text.replace(/\n/g, `${space.length > 1 ? '' : space}${lineEnd}`);
          const { files } = mendManuscript([{ path, text: odd }], {}, chooseAny(0));
          for (const file of files) {
            expect(file.after.startsWith('\uFEFF')).toBe(mark);
            expect(file.after.replaceAll(lineEnd, '')).not.toMatch(/[\r\n]/);
          }
        },
      ),
      { numRuns: 20 },
    );
  });

  it('makes nothing of its own accord where every mend is a choice', () => {
    expect(mendManuscript([{ path: 'a.md', text: scones }]).files).toEqual([]);
  });

  it('refuses a mend that would leave a new mark', () => {
    const worse = (marks: readonly Mark[]): Choice[] =>
      marks
        .filter(({ rule }) => rule === 'range-reversed')
        .map((mark) => ({
          mark,
          mend: { label: 'worse', sure: true, edits: [{ span: mark.span, text: 'TK minutes' }] },
        }));
    const { files, refused } = mendManuscript([{ path: 'a.md', text: scones }], {}, worse);
    expect(files).toEqual([]);
    expect(refused.map(({ mend }) => mend.label)).toEqual(['worse']);
  });

  it('refuses a mend that does not mend its own mark', () => {
    const idle = (marks: readonly Mark[]): Choice[] =>
      marks.map((mark) => ({
        mark,
        mend: { label: 'idle', sure: true, edits: [{ span: { start: 0, end: 0 }, text: '\n' }] },
      }));
    expect(mendManuscript([{ path: 'a.md', text: scones }], {}, idle).files).toEqual([]);
  });

  it('of two mends on the same words makes the one that comes first', () => {
    const mark = readManuscript([{ path: 'a.md', text: scones }]).marks[0]!;
    const to = (text: string): Choice => ({
      mark,
      mend: { label: text, sure: true, edits: [{ span: mark.span, text }] },
    });
    expect(settleOverlaps([to('one'), to('two')]).map(({ mend }) => mend.label)).toEqual(['one']);
  });
});

const scones =
  '# Lock Scones\n\nMakes 8\n\n- 2 cups flour\n- 1 cup cream\n\n1. Mix the flour and the cream, cut into rounds, and bake until golden, 15 to 12 minutes.\n';
