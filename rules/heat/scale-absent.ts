/** Marks a temperature without its scale. */
import { isTooHot } from '../../src/arithmetic/oven.js';
import type { Scale, Temperature } from '../../src/grammar/types.js';
import { heatText } from '../../src/kitchen/heat-text.js';
import type { Dish } from '../../src/kitchen/types.js';
import type { Span } from '../../src/manuscript/types.js';
import type { Mend, RecipeRule } from '../rule.js';

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
      title: 'a tin that is turned by half',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 250°F until crisp, 1 hour, turning the tray 180 degrees halfway.\n',
      marks: [],
    },
    {
      title: 'both scales, and a gas mark',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 250°F / 120°C / gas ½ until crisp, 1 hour.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const usual = scaleOf(dish);
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
        const span = passage.span(item.start, item.end);
        yield {
          span,
          subject: text,
          message: `"${text}" does not say whether it is Fahrenheit or Celsius.`,
          advice: 'Add °F or °C.',
          mends: mendsOf(item, usual, span),
        };
      }
    }
  },
};

/** The scale of all other temperatures of the recipe; null where it has none, or both. */
function scaleOf(dish: Dish): Scale | null {
  const scales = new Set(
    dish.parts.flatMap(({ items }) =>
      items.flatMap((item) => (item.kind === 'temperature' && item.scale !== null ? [item.scale] : [])),
    ),
  );
  const [scale, ...others] = scales;
  return scale === undefined || scale === 'gas' || others.length > 0 ? null : scale;
}

/** The temperature on the scale that the recipe has elsewhere, else on each that an oven could be set to. */
function mendsOf(item: Temperature, usual: Scale | null, span: Span): Mend[] {
  const { low, high } = item.amount;
  const scales: Scale[] = usual === null ? ['fahrenheit', 'celsius'] : [usual];
  return scales
    .map((scale): Temperature => ({ ...item, scale, equals: [] }))
    .filter((scaled) => !isTooHot(scaled))
    .map((scaled) => {
      const text = heatText(low.equals(high) ? [low] : [low, high], scaled);
      return { label: `Write ${text}`, sure: false, edits: [{ span, text }] };
    });
}
