/** Whatever a file holds, it has contents, in places that exist, and in time that grows with its length. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../src/anatomy/types.js';
import { contents } from './pages.js';

const pieces = fc.constantFrom(
  ...[
    '# Soup\n\n',
    '## Ingredients\n\n',
    '## Method\n\n',
    '### For the sauce\n\n',
    '**Notes**\n\n',
    'Serves 4\n',
    'Prep time: 10 min\n',
    '---\n\n',
  ],
  ...[
    '- 2 eggs\n',
    '- salt\n',
    '  - 1 cup milk\n',
    '1. Beat the eggs.\n',
    '2. Stir.\n',
    'Bake for 20 minutes.\n\n',
    'For the glaze:\n',
    '> Tip: rest it.\n\n',
  ],
  ...[
    '| Amount | Ingredient |\n|---|---|\n',
    '| 2 | eggs |\n',
    '\n',
    '\n\n',
    '  \n',
    '<!-- stet a-b: c -->\n',
    '![x](y)\n',
    '&frac12; cup oil\n',
    '- [ ] ',
    '- For the dip:\n',
  ],
);

/** Every passage of a recipe lies within its span, but for what the front matter says. */
function strays(recipe: Recipe): string[] {
  const passages = [
    ...(recipe.title === null ? [] : [recipe.title]),
    ...recipe.headnote,
    ...recipe.listings.map((listing) => listing.passage),
    ...recipe.steps.map((step) => step.passage),
    ...recipe.notes,
    ...recipe.storage,
    ...recipe.nutrition,
    ...recipe.equipment,
    ...recipe.rest,
  ];
  return passages
    .filter((passage) => passage.span().start < recipe.span.start || passage.span().end > recipe.span.end)
    .map((passage) => passage.text);
}

describe('any text', () => {
  it('made of the pieces of recipes has recipes whose parts lie within them', () => {
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 30 }), (parts) => {
        for (const recipe of contents(parts.join('')).recipes) {
          expect(strays(recipe)).toEqual([]);
          expect(recipe.components.flatMap((component) => component.listings)).toEqual(recipe.listings);
          expect(recipe.listings.map((listing) => listing.index)).toEqual(
            recipe.listings.map((_, index) => index),
          );
        }
      }),
      { numRuns: 1500 },
    );
  });

  it('of any characters has contents', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        expect(contents(`# ${text}\n\n- ${text}\n\n${text}`).unclear.length).toBeLessThan(3);
      }),
    );
  });

  it.each([
    ['words', 'for the cup '],
    ['dots', '. . '],
    ['commands', 'Stir, and stir. '],
    ['figures', '1 2/3 '],
    ['labels', 'Serves: 4 | '],
    ['comments', '<!-- stet a-b: c -->'],
  ])('is read in time that grows with the length of a line: %s', (_what, piece) => {
    const time = (length: number): number => {
      const line = piece.repeat(length / piece.length);
      const text = `# ${line}\n\n${line}\n\n## Ingredients\n\n- ${line}\n\n## Method\n\n${line}\n`;
      const start = performance.now();
      contents(text);
      return performance.now() - start;
    };
    time(2_000);
    // Ten times the length in forty times the time leaves room for noise, and fails what grows with the square.
    expect(time(60_000)).toBeLessThan(40 * Math.max(time(6_000), 40));
  });
});
