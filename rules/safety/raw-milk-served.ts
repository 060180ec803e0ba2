/** Marks raw milk or cream that is served without having been heated. */
import { rawMilk } from '../../src/kitchen/served-raw.js';
import type { RecipeRule } from '../rule.js';

export const rawMilkServed: RecipeRule = {
  scope: 'recipe',
  name: 'raw-milk-served',
  topic: 'safety',
  weight: 'fault',
  summary: 'Raw milk or cream is served without having been heated.',
  why: 'Raw milk may carry listeria, salmonella and the like; pasteurizing kills them and takes little from the milk.',
  sources: [
    'FDA and CDC, raw milk',
    'FDA Food Code 2022, 3-202.14',
    'FDA Grade A Pasteurized Milk Ordinance: 161°F for 15 seconds, or 145°F for 30 minutes',
  ],
  beyond:
    'Raw-milk cheeses that have ripened for 60 days; raw juice and cider; milk of which the recipe does not say that it is raw.',
  examples: [
    {
      title: 'a raw-milk drink',
      text: '# Dairy Boat Shake\n\nServes 2\n\n- 2 cups raw milk\n- 1 banana\n\n1. Blend the milk with the banana until smooth.\n',
      marks: ['2 cups raw milk'],
    },
    {
      title: 'unpasteurized cream, whipped',
      text: '# Soft Cream\n\nServes 4\n\n- 1 cup unpasteurized cream\n- 2 tablespoons sugar\n\n1. Whip the cream with the sugar until soft peaks form.\n',
      marks: ['1 cup unpasteurized cream'],
    },
    {
      title: 'raw milk that is boiled',
      text: '# Milk Pudding\n\nServes 4\n\n- 4 cups raw milk\n- ½ cup rice\n\n1. Simmer the rice in the milk over low heat until thick, 40 minutes.\n',
      marks: [],
    },
    {
      title: 'milk as it is sold',
      text: '# Dairy Boat Shake\n\nServes 2\n\n- 2 cups whole milk\n- 1 banana\n\n1. Blend the milk with the banana until smooth.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const raw = rawMilk(dish);
    if (raw === null) return;
    yield {
      span: raw.passage.span(raw.start, raw.end),
      subject: raw.food,
      message: `"${raw.passage.text.slice(raw.start, raw.end)}" is not pasteurized, and nothing heats it.`,
      advice: 'Ask for the pasteurized kind, or have it heated to 161°F (72°C) first.',
    };
  },
};
