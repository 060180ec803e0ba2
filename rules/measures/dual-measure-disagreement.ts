/** Marks an amount that is given in two units and is not the same in both. */
import type { System } from '../../src/arithmetic/units.js';
import { writtenAmount } from '../../src/arithmetic/write.js';
import { isFirstConfirmed, ownText, recomputed } from '../../src/kitchen/dual-mends.js';
import { type Dual, dualsOf, wrongDuals } from '../../src/kitchen/duals.js';
import { sidesOf, writtenSides } from '../../src/kitchen/sides.js';
import type { Mend, RecipeRule } from '../rule.js';

export const dualMeasureDisagreement: RecipeRule = {
  scope: 'recipe',
  name: 'dual-measure-disagreement',
  topic: 'measures',
  weight: 'fault',
  summary: 'An amount given in two units is not the same in both: "3 pounds (1.1 kg)".',
  why: 'Half of the readers measure by the one and half by the other, and they cook two different dishes.',
  sources: [
    'NIST SP 811 (2008), appendix B, and NIST Handbook 44, appendix C',
    'USDA SR28 for the weight of a cup',
    'src/larder/tolerances.yaml: what kitchen rounding allows (common practice)',
  ],
  examples: [
    {
      title: 'three pounds that are not 1.1 kilograms',
      text: '# Braised Cabbage\n\nServes 4\n\n- 3 pounds (1.1 kg) cabbage, sliced\n- ½ cup (120 mL) vegetable stock\n\n1. Braise the cabbage in the stock until soft.\n',
      marks: ['3 pounds (1.1 kg)'],
    },
    {
      title: 'an ounce of weight taken for a fluid ounce',
      text: '# Bean Soup\n\nServes 4\n\n- 2 (15-ounce / 444 mL) cans black beans\n- 2 cups (480 mL) vegetable stock\n\n1. Simmer the beans in the stock until soft.\n',
      marks: ['15-ounce / 444 mL'],
    },
    {
      title: 'a cup of honey that weighs what water does, and a tin of two sizes',
      text: '# Honey Sponge\n\nMakes 1 cake\n\n- 1 cup (240 g) honey\n- 2 cups (250 g) all-purpose flour\n- 4 eggs\n\n1. Beat the honey, flour and eggs, pour into a 9-inch (28 cm) round tin, and bake at 350°F (180°C) until a skewer comes out clean, 30 minutes.\n',
      marks: ['1 cup (240 g)', '9-inch (28 cm)'],
    },
    {
      title: 'amounts rounded for the kitchen',
      text: '# Shortbread\n\nMakes 12\n\n- 1 pound (450 g) flour\n- 1 cup (200 g) sugar\n- 8 ounces (230 g) butter\n- 1 cup (240 mL) milk\n- 1 ounce (30 g) raisins\n\n1. Rub the butter into the flour, sugar and raisins, bind with the milk, press into a 9-inch (23 cm) tin, and bake at 350°F (180°C) until golden, 30 minutes.\n',
      marks: [],
    },
    {
      title: 'a food whose cup the handbook has not weighed, and a book that counts a pound as 500 grams',
      text: '# Trail Bars\n\nMakes 12\n\n- 1 cup (60 g) towpath crunch\n- 1 pound (500 g) dates\n- 2 pounds (1 kg) rolled oats\n\n1. Mash the dates, stir in the oats and the towpath crunch, and chill until firm.\n',
      marks: [],
    },
  ],
  *look(dish, style) {
    const all = dualsOf(dish, style.system);
    for (const dual of wrongDuals(all)) {
      const { passage, first, second, judgement } = dual;
      if (judgement === null) continue;
      yield {
        span: passage.span(first.start, Math.max(first.end, second.end)),
        subject: dual.foods[0]?.name ?? ownText(dual, first),
        message: messageOf(dual),
        advice: 'Make the two the same amount.',
        weight: judgement.agreement === 'wrong' ? 'fault' : 'query',
        mends: mendsOf(dual, all, style.system ?? dual.systems[0] ?? 'us-customary'),
      };
    }
    for (const { passage, first, second, end, verdict } of sidesOf(dish)) {
      if (verdict === 'right') continue;
      const text = passage.text.slice(first.start, first.end);
      yield {
        span: passage.span(first.start, end),
        subject: text,
        message: `${text} is ${writtenSides(first)}; the text says ${passage.text.slice(second.start, second.end)}.`,
        advice: 'Make the two the same length.',
        weight: verdict === 'wrong' ? 'fault' : 'query',
      };
    }
  },
};

/** The arithmetic, in a sentence. */
function messageOf(dual: Dual): string {
  const { from, to, expected, unit, food, asFluid } = dual.judgement!;
  const amount = writtenAmount(expected, unit);
  const [one, other] = [ownText(dual, from), ownText(dual, to)];
  const place = dual.part === 'listing' ? 'line' : 'text';
  if (asFluid)
    return `${one} is a weight, ${amount}; the ${place} says ${other}, as if it were fluid ounces.`;
  const of = food === null ? ` is ${amount}` : ` of ${food.name} weighs about ${amount}`;
  const [country] = dual.systems;
  const there = country === undefined ? '' : `, by ${country} measure`;
  return `${one}${of}; the ${place} says ${other}${there}.`;
}

function mendsOf(dual: Dual, all: readonly Dual[], system: System): Mend[] {
  return recomputed(dual, all, system).map(({ start, end, text, kept, keeps }) => ({
    label: `Keep ${kept}, and write ${text}`,
    sure: keeps === 'first' && isFirstConfirmed(dual, all),
    edits: [{ span: dual.passage.span(start, end), text }],
  }));
}
