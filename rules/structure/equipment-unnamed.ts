/** Marks a special tool of the method that the recipe's own list of equipment lacks. */
import { unnamedTools } from '../../src/kitchen/equipment.js';
import type { RecipeRule } from '../rule.js';

export const equipmentUnnamed: RecipeRule = {
  scope: 'recipe',
  name: 'equipment-unnamed',
  topic: 'structure',
  weight: 'query',
  summary: 'The method uses a special tool that the recipe’s list of equipment lacks.',
  why: 'A cook who has laid out all that is listed finds out halfway that a blowtorch is needed too.',
  sources: ['House styles of cookbook publishers', 'common practice'],
  examples: [
    {
      title: 'a food processor that is not among the equipment',
      text: '# Pea Spread\n\nMakes 1 cup\n\n## Equipment\n\n- a large bowl\n- a spatula\n\n## Ingredients\n\n- 2 cups cooked peas\n- 1 tablespoon butter\n\n## Method\n\n1. Blend the peas with the butter in a food processor until smooth.\n',
      marks: ['food processor'],
    },
    {
      title: 'a blowtorch, named twice and marked once',
      text: '# Burnt Custard\n\nServes 2\n\n## Ingredients\n\n- 2 cups ready custard\n- 1 tablespoon sugar\n\n## Special equipment\n\n- 2 small dishes\n\n## Method\n\n1. Put the custard into the dishes, and strew with the sugar. Brown it with a blowtorch until dark.\n2. Let the blowtorch cool.\n',
      marks: ['blowtorch'],
    },
    {
      title: 'the tool is listed under another of its names',
      text: '# Pea Soup\n\nServes 2\n\n## Equipment\n\n- a stick blender\n\n## Ingredients\n\n- 2 cups peas\n- 2 cups vegetable stock\n\n## Method\n\n1. Simmer the peas in the stock until soft, 5 minutes, and crush with the hand blender.\n',
      marks: [],
    },
    {
      title: 'no list of equipment, and tools of every kitchen',
      text: '# Pea Spread\n\nMakes 1 cup\n\n## Ingredients\n\n- 2 cups cooked peas\n- 1 tablespoon butter\n\n## Method\n\n1. Blend the peas with the butter in a food processor until smooth, and scrape into a bowl.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { tool, passage, start, end } of unnamedTools(dish)) {
      yield {
        span: passage.span(start, end),
        subject: tool,
        message: `The method uses "${passage.text.slice(start, end)}", which the list of equipment does not name.`,
        advice: 'Add it to the equipment.',
      };
    }
  },
};
