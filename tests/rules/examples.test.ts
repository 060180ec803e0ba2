/** Every rule's own examples: what it marks and what it leaves alone, with no other mark beside. */
import { describe, expect, it } from 'vitest';
import { rules } from '../../rules/index.js';
import { readManuscript } from '../../src/reading/read.js';

for (const rule of rules) {
  describe(rule.name, () => {
    it('has at least two examples that it marks and two that it leaves alone', () => {
      expect(rule.examples.filter((example) => example.marks.length > 0).length).toBeGreaterThanOrEqual(2);
      expect(rule.examples.filter((example) => example.marks.length === 0).length).toBeGreaterThanOrEqual(2);
    });
    for (const example of rule.examples) {
      it(`${example.marks.length > 0 ? 'marks' : 'leaves alone'}: ${example.title}`, () => {
        const { marks } = readManuscript([{ path: 'example.md', text: example.text }]);
        const words = (own: boolean) =>
          marks
            .filter((mark) => (mark.rule === rule.name) === own)
            .map(
              (mark) => `${own ? '' : `${mark.rule}: `}${example.text.slice(mark.span.start, mark.span.end)}`,
            );
        expect(words(true)).toEqual(example.marks);
        expect(words(false)).toEqual([]);
      });
    }
  });
}
