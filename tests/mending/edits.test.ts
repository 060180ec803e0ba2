/** Edits change what they span and nothing else. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Edit } from '../../rules/rule.js';
import { applyEdits, overlap, placeBefore } from '../../src/mending/edits.js';

/** A text with edits in it that do not overlap, in any order. */
const edited = fc.string({ minLength: 1, maxLength: 60 }).chain((text) =>
  fc
    .tuple(
      fc.uniqueArray(fc.nat(text.length), { maxLength: 8 }),
      fc.array(fc.string({ maxLength: 6 }), { minLength: 4, maxLength: 4 }),
    )
    .map(([cuts, puts]) => {
      const sorted = cuts.toSorted((a, b) => a - b);
      const edits: Edit[] = [];
      for (let at = 0; at + 1 < sorted.length; at += 2)
        edits.push({ span: { start: sorted[at]!, end: sorted[at + 1]! }, text: puts[at / 2]! });
      return { text, edits: edits.toReversed() };
    }),
);

it('every character outside the edits is kept, in its order', () => {
  fc.assert(
    fc.property(edited, ({ text, edits }) => {
      const sorted = edits.toSorted((a, b) => a.span.start - b.span.start);
      let rest = applyEdits(text, edits);
      let from = 0;
      for (const { span, text: put } of sorted) {
        const expected = text.slice(from, span.start) + put;
        expect(rest.startsWith(expected)).toBe(true);
        rest = rest.slice(expected.length);
        from = span.end;
      }
      expect(rest).toBe(text.slice(from));
    }),
  );
});

it('a place outside the edits is found again where it stood', () => {
  fc.assert(
    fc.property(edited, fc.nat(80), ({ text, edits }, seed) => {
      const after = applyEdits(text, edits);
      const at = seed % (after.length + 1);
      const before = placeBefore(edits)(at);
      const inEdit = edits.some(({ span }) => before >= span.start && before < span.end);
      if (!inEdit && at < after.length && !edits.some(({ span }) => span.start === before))
        expect(text[before]).toBe(after[at]);
    }),
  );
});

it('overlapping edits are refused, and nothing is guessed', () => {
  const edits = [
    { span: { start: 0, end: 4 }, text: 'a' },
    { span: { start: 3, end: 6 }, text: 'b' },
  ];
  expect(overlap(edits[0]!, edits[1]!)).toBe(true);
  expect(() => applyEdits('plum jam', edits)).toThrow(/overlap/);
});

it('two insertions at one place overlap, and neighbours do not', () => {
  const at = (start: number, end: number): Edit => ({ span: { start, end }, text: 'x' });
  expect(overlap(at(2, 2), at(2, 2))).toBe(true);
  expect(overlap(at(2, 4), at(4, 6))).toBe(false);
});
