/** Marks a temperature that is said on two scales which do not agree. */
import { heatOn } from '../../src/arithmetic/heat.js';
import { isTooHot } from '../../src/arithmetic/oven.js';
import type { Temperature } from '../../src/grammar/types.js';
import { type DualTemperature, dualTemperaturesOf } from '../../src/kitchen/dual-temperatures.js';
import { heatText, heatTextOf, withNumbers } from '../../src/kitchen/heat-text.js';
import type { Finding, Mend, RecipeRule } from '../rule.js';

export const dualTemperatureDisagreement: RecipeRule = {
  scope: 'recipe',
  name: 'dual-temperature-disagreement',
  topic: 'heat',
  weight: 'fault',
  summary: 'A temperature is said on two scales that do not agree: "350°F (210°C)".',
  why: 'Readers on either side of the ocean set different ovens, and one of the two bakes a different cake.',
  sources: [
    'NIST SP 811 (2008), appendix B.8: degrees Celsius and Fahrenheit',
    'British oven scale, from memory: gas marks',
    'The table of tolerances in heat-tolerances.yaml (common practice)',
  ],
  examples: [
    {
      title: 'a Celsius that belongs to another mark of the dial',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 350°F (210°C) until crisp, 10 minutes.\n',
      marks: ['210°C'],
    },
    {
      title: 'a gas mark that is one too low, and a fan oven hotter than the plain one',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Heat the oven to 200°C/400°F/gas 4.\n2. Butter the bread, and bake it at 180°C (200°C fan) until crisp, 10 minutes.\n',
      marks: ['gas 4', '200°C fan'],
    },
    {
      title: 'one scale out of three that the other two bear out',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 325°F/180°C/gas 4 until crisp, 10 minutes.\n',
      marks: ['325°F'],
    },
    {
      title: '350°F as 180°C, and gas 4 with a fan oven 20 degrees lower',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Heat the oven to 350°F/180°C/160°C fan/gas 4.\n2. Butter the bread, and bake it until crisp, 10 minutes.\n',
      marks: [],
    },
    {
      title: 'a freezer below zero, and an oven turned down by a difference',
      text: '# Rusks\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Take the bread out of a freezer at 0°F (-18°C), butter it, and bake it at 400°F until crisp, 10 minutes. With a fan, lower the oven by 25°F (15°C).\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const pair of dualTemperaturesOf(dish)) {
      if (pair.nearness !== 'right') yield findingOf(pair);
    }
  },
};

function findingOf(pair: DualTemperature): Finding {
  const { passage, kept, other, difference } = pair;
  const stated = heatTextOf(passage.text, other);
  const figures = heatOn(kept, other, 'exactly', difference);
  const keptText = heatTextOf(passage.text, kept);
  const reckoned =
    figures === null
      ? `${keptText} and ${stated} are not the same.`
      : `${keptText} is ${heatText(figures, other)}; the line says ${stated}.`;
  return {
    span: passage.span(other.start, other.start + stated.length),
    subject: stated,
    weight: pair.nearness === 'wrong' ? 'fault' : 'query',
    message: reckoned,
    advice: 'Make the two agree.',
    mends: [mendOf(pair, kept, other, pair.borneOut), mendOf(pair, other, kept, false)].filter(
      (mend) => mend !== null,
    ),
  };
}

/** The mend that keeps one statement and reckons the other from it; sure where the rest of the page bears it out. */
function mendOf(pair: DualTemperature, from: Temperature, to: Temperature, sure: boolean): Mend | null {
  const { passage, difference } = pair;
  // A temperature that no oven has is not the one to keep.
  const figures = isTooHot(from) ? null : heatOn(from, to, 'rounded', difference);
  const old = heatTextOf(passage.text, to);
  const text = figures === null ? null : withNumbers(old, figures);
  if (text === null) return null;
  return {
    label: `Keep ${heatTextOf(passage.text, from)}, and write ${text}`,
    sure: sure && pair.nearness === 'wrong',
    edits: [{ span: passage.span(to.start, to.start + old.length), text }],
  };
}
