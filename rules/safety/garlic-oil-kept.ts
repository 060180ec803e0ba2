/** Marks garlic, herbs or vegetables in oil that are kept too long, or not cold. */
import { keptInOil, type OilKept } from '../../src/kitchen/preserving.js';
import type { RecipeRule } from '../rule.js';

export const garlicOilKept: RecipeRule = {
  scope: 'recipe',
  name: 'garlic-oil-kept',
  topic: 'safety',
  weight: 'fault',
  summary: 'Garlic or herbs in oil are kept longer than 4 days, or not refrigerated.',
  why: 'Under oil there is no air and no acid: the spores of botulism that come with garlic and herbs can grow there, and nothing shows it.',
  sources: [
    'CDC, botulism prevention: oils infused with garlic or herbs are refrigerated and thrown away after 4 days',
    'University extension services after CDC advice (some leaflets say up to 7 days)',
  ],
  beyond:
    'Mixtures with vinegar or citrus, whose acid the tool cannot measure; dried garlic and herbs; bought oils; freezing.',
  examples: [
    {
      title: 'garlic oil in the pantry',
      text: '# Garlic Oil\n\nMakes 2 cups\n\n- 8 garlic cloves\n- 2 cups olive oil\n\n1. Warm the garlic in the oil over low heat until golden.\n2. Pour into a bottle, and keep in the pantry for up to a month.\n',
      marks: ['keep in the pantry for up to a month'],
    },
    {
      title: 'confit kept two weeks',
      text: '# Garlic Confit\n\nMakes 2 cups\n\n- 3 heads garlic, peeled\n- 2 cups olive oil\n\n1. Cook the garlic in the oil over low heat until soft, 45 minutes.\n2. Keep in the refrigerator for up to 2 weeks.\n',
      marks: ['up to 2 weeks'],
    },
    {
      title: 'a jar of which nothing is said',
      text: '# Rosemary Oil\n\nMakes 2 cups\n\n- 6 sprigs rosemary\n- 2 cups olive oil\n\n1. Warm the rosemary in the oil over low heat until fragrant.\n2. Store in a jar.\n',
      marks: ['Store in a jar'],
    },
    {
      title: 'garlic oil used within four days',
      text: '# Garlic Oil\n\nMakes 2 cups\n\n- 8 garlic cloves\n- 2 cups olive oil\n\n1. Warm the garlic in the oil over low heat until golden.\n2. Pour into a bottle, refrigerate, and use within 4 days.\n',
      marks: [],
    },
    {
      title: 'a dressing soured with vinegar',
      text: '# Lock Dressing\n\nMakes 1 cup\n\n- 2 garlic cloves\n- ½ cup olive oil\n- ¼ cup red wine vinegar\n\n1. Whisk the garlic, oil and vinegar.\n2. Keep in a jar in the refrigerator for up to 1 week.\n',
      marks: [],
    },
    {
      title: 'a stew with garlic and oil',
      text: '# Bank Stew\n\nServes 4\n\n- 2 garlic cloves\n- 1 tablespoon olive oil\n- 4 potatoes, cubed\n- 3 cups water\n\n1. Fry the garlic in the oil over low heat until golden.\n2. Add the potatoes and water, and simmer until tender, 25 minutes. Keeps 5 days in the refrigerator.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const kept = keptInOil(dish);
    if (kept === null) return;
    yield {
      span: kept.passage.span(kept.start, kept.end),
      subject: kept.food,
      weight: kept.why === 'not-cold' ? 'fault' : 'query',
      message: messageOf(kept),
      advice: 'Say that it is refrigerated at 40°F (4°C) or below, and used within 4 days or frozen.',
    };
  },
};

function messageOf({ why, food, passage, start, end }: OilKept): string {
  if (why === 'too-long') return `The ${food} in oil is kept for ${passage.text.slice(start, end)}.`;
  return why === 'not-cold'
    ? `The ${food} in oil is kept, and not in the cold.`
    : `The ${food} in oil is kept, and the recipe says neither where nor how long.`;
}
