/** Marks meat that is browned or cooked in part, and put away to be finished later. */
import { partlyCookedHolds } from '../../src/kitchen/holding.js';
import type { RecipeRule } from '../rule.js';

export const partialCookingHeld: RecipeRule = {
  scope: 'recipe',
  name: 'partial-cooking-held',
  topic: 'safety',
  weight: 'fault',
  summary: 'Meat or poultry is browned or cooked in part, and put away to be finished later.',
  why: 'Half-cooked meat is warm enough for bacteria to grow and not hot enough to kill them.',
  sources: [
    'USDA FSIS, Kitchen Companion: never brown or partially cook meat or poultry to refrigerate and finish cooking later',
  ],
  beyond:
    'Meat that is set aside for some minutes; meat that is cooked through and then refrigerated; fish and shellfish; sous vide.',
  examples: [
    {
      title: 'beef browned the day before',
      text: '# Tiller Beef\n\nServes 4\n\n- 2 pounds beef chuck, cubed\n- 1 tablespoon oil\n- 3 cups water\n\n1. Brown the beef in the oil over high heat, and refrigerate it overnight.\n2. Simmer it in the water until tender, 2 hours.\n',
      marks: ['Brown the beef in the oil over high heat, and refrigerate'],
    },
    {
      title: 'ribs half-cooked and finished the next day',
      text: '# Wharf Ribs\n\nServes 4\n\n- 3 pounds pork ribs\n- 1 cup barbecue sauce\n\n1. Half-cook the ribs over low heat, turning once. Keep in the refrigerator until the next day.\n2. Brush with the sauce, and grill until a thermometer reads 145°F. Rest 3 minutes.\n',
      marks: ['Half-cook'],
    },
    {
      title: 'beef browned and set aside, and a stew that is chilled when it is done',
      text: '# Tiller Beef\n\nServes 4\n\n- 2 pounds beef chuck, cubed\n- 1 tablespoon oil\n- 3 cups water\n\n1. Brown the beef in the oil over high heat, and set it aside.\n2. Add the water, return the beef, and simmer until tender, 2 hours.\n3. Refrigerate overnight, and lift off the fat.\n',
      marks: [],
    },
    {
      title: 'onions browned ahead',
      text: '# Tiller Beef\n\nServes 4\n\n- 2 pounds beef chuck, cubed\n- 2 onions, sliced\n- 1 tablespoon oil\n- 3 cups water\n\n1. Brown the onions in the oil over high heat, and refrigerate overnight.\n2. Simmer the beef and the onions in the water until tender, 2 hours.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const { passage, start, end, food } of partlyCookedHolds(dish)) {
      yield {
        span: passage.span(start, end),
        subject: food,
        message: `The recipe cooks the ${food} in part and keeps it for later.`,
        advice: 'Have it cooked through in one go, or browned right before the rest of the cooking.',
      };
    }
  },
};
