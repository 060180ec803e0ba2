/** Makes a recipe of a list and a method, and says in short what its mentions mean. */
import type { Dish } from '../../src/kitchen/types.js';
import { readManuscript } from '../../src/reading/read.js';

/** The recipe of this list and this method, understood. */
export function dish(listings: readonly string[], steps: readonly string[], title = 'Plain Supper'): Dish {
  const text = [
    `# ${title}`,
    'Serves 4',
    '## Ingredients',
    listings.map((line) => `- ${line}`).join('\n'),
    '## Method',
    steps.map((line, index) => `${index + 1}. ${line}`).join('\n'),
  ].join('\n\n');
  return readManuscript([{ path: 'supper.md', text }]).dishes[0]!;
}

/** Each mention as "words = listed food, listed food", or "words (made)", "words (aside)", "words = ?" for an unlisted use. */
export function meanings(dish: Dish): string[] {
  return dish.mentions.map(({ text, role, listings }) => {
    if (role !== 'use') return `${text} (${role})`;
    return `${text} = ${listings.map((listing) => listing.line.foods[0]!.name).join(', ') || '?'}`;
  });
}
