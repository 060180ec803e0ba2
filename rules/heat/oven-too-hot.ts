/** Marks an oven temperature that no home oven reaches. */
import { heatOn } from '../../src/arithmetic/heat.js';
import { boundOn, isTooHot } from '../../src/arithmetic/oven.js';
import { gasMarks } from '../../src/arithmetic/temperatures.js';
import { printFraction } from '../../src/grammar/print.js';
import type { Temperature } from '../../src/grammar/types.js';
import { heatText, heatTextOf } from '../../src/kitchen/heat-text.js';
import { tooHotOvens } from '../../src/kitchen/too-hot.js';
import type { RecipeRule } from '../rule.js';

export const ovenTooHot: RecipeRule = {
  scope: 'recipe',
  name: 'oven-too-hot',
  topic: 'heat',
  weight: 'fault',
  summary: 'An oven is set hotter than a home oven goes: "bake at 350°C".',
  why: 'Mostly the scale is wrong, and the cook either cannot follow or burns the dish.',
  sources: [
    'oven-limits.yaml: home ovens end near 300°C, 550°F (common practice)',
    'British oven scale, from memory',
  ],
  examples: [
    {
      title: 'a Celsius that is plainly Fahrenheit',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Heat the oven to 350°C.\n2. Butter the bread, and bake until crisp, 10 minutes.\n',
      marks: ['350°C'],
    },
    {
      title: 'a gas mark that ovens do not have, and a slip of the pen',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Heat the oven to gas mark 14.\n2. Butter the bread, and bake at 750°F until crisp, 10 minutes.\n',
      marks: ['gas mark 14', '750°F'],
    },
    {
      title: 'the hottest that ovens go',
      text: '# Flat Breads\n\nMakes 8\n\n- 1 pound bread dough\n- 1 tablespoon flour\n\n1. Heat the oven to 550°F (290°C).\n2. Dust the dough with the flour, and bake until brown, 5 minutes.\n',
      marks: [],
    },
    {
      title: 'a wood-fired oven, and coals',
      text: '# Flat Breads\n\nMakes 8\n\n- 1 pound bread dough\n- 1 tablespoon flour\n\n1. Bring a wood-fired oven to 800°F.\n2. Dust the dough with the flour, and bake until blistered, 2 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { passage, item } of tooHotOvens(dish)) {
      const text = heatTextOf(passage.text, item);
      const span = passage.span(item.start, item.start + text.length);
      const plain = inFahrenheit(item);
      yield {
        span,
        subject: text,
        message: messageOf(item, text),
        advice: plain === null ? 'Mend the number.' : `Say whether ${plain[0]} is meant.`,
        mends: (plain ?? []).map((put) => ({
          label: `Write ${put}`,
          sure: false,
          edits: [{ span, text: put }],
        })),
      };
    }
  },
};

function messageOf(item: Temperature, text: string): string {
  if (item.scale === 'gas')
    return `The marks of a gas oven end at ${printFraction(gasMarks.at(-1)!.mark)}; the line says ${text}.`;
  const other: Temperature = { ...item, scale: item.scale === 'celsius' ? 'fahrenheit' : 'celsius' };
  const figures = item.scale === null ? null : heatOn(item, other, 'exactly');
  const reckoned = figures === null ? '' : ` is ${heatText(figures, other)}`;
  return `${text}${reckoned === '' ? ' is' : `${reckoned},`} hotter than home ovens go; they end near ${heatText([boundOn(item, 'hottest')], item)}.`;
}

/** The same number in Fahrenheit, and what that is in Celsius; null where it is no oven's in Fahrenheit either. */
function inFahrenheit(item: Temperature): string[] | null {
  const fahrenheit: Temperature = { ...item, scale: 'fahrenheit', equals: [] };
  if (item.scale !== 'celsius' || isTooHot(fahrenheit)) return null;
  const { low, high } = item.amount;
  const celsius = heatOn(fahrenheit, item, 'rounded');
  return [
    heatText(low.equals(high) ? [low] : [low, high], fahrenheit),
    ...(celsius === null ? [] : [heatText(celsius, item)]),
  ];
}
