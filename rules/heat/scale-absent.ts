/** Marks a temperature without its scale. */
import { offered, replacing } from '../mends.js';
import type { RecipeRule } from '../rule.js';

export const scaleAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'scale-absent',
  topic: 'heat',
  weight: 'query',
  summary: 'A temperature does not say its scale: "350 degrees".',
  why: 'A book is read on both sides of the ocean, and 200 degrees is a warm oven here and a hot one there.',
  sources: [
    'Ostmann and Baker, The Recipe Writer’s Handbook, 2001 (from memory)',
    'House styles of cookbook publishers',
  ],
  examples: [
    {
      title: 'degrees without a scale',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 250 degrees until crisp, 1 hour.\n',
      marks: ['250 degrees'],
    },
    {
      title: 'a bare number after the oven',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 350 until crisp, 10 minutes.\n',
      marks: ['350'],
    },
    {
      title: 'a scale spelled out',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 250 degrees Fahrenheit until crisp, 1 hour.\n',
      marks: [],
    },
    {
      title: 'both scales, and a gas mark',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 250°F / 120°C / gas ½ until crisp, 1 hour.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { passage, items } of dish.parts) {
      for (const item of items) {
        // Where the other scale stands beside it, a reader can tell.
        if (
          item.kind !== 'temperature' ||
          item.scale !== null ||
          item.equals.some((other) => other.scale !== null)
        )
          continue;
        const text = passage.text.slice(item.start, item.end);
        yield {
          span: passage.span(item.start, item.end),
          subject: text,
          message: `"${text}" does not say whether it is Fahrenheit or Celsius.`,
          advice: 'Add °F or °C.',
          mends: SIGNS.flatMap((sign) =>
            offered(
              `write "${withScale(text, sign)}"`,
              replacing(dish.page, passage, [item.start, item.end], withScale(text, sign)),
            ),
          ),
        };
      }
    }
  },
};

const SIGNS = ['°F', '°C'] as const;

/** The number keeps its form; the sign takes the place of "degrees" or "°". */
function withScale(text: string, sign: string): string {
  return `${text.replace(/\s*(?:°|º|\p{L}+)\.?$/u, '')}${sign}`;
}
