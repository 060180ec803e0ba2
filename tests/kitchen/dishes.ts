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

/** The parts of a small recipe; headnote and note may be left out. */
export interface SmallRecipe {
  readonly title: string;
  readonly headnote: string;
  readonly list: readonly string[];
  readonly method: readonly string[];
  readonly note?: string | undefined;
}

/** What the rules `only` leave on a small recipe. */
export function marksOn({ title, headnote, list, method, note }: SmallRecipe, only: readonly string[]) {
  const text = [
    `# ${title}`,
    headnote,
    'Serves 4',
    '## Ingredients',
    list.map((line) => `- ${line}`).join('\n'),
    '## Method',
    method.map((line, index) => `${index + 1}. ${line}`).join('\n'),
    note === undefined ? '' : `## Notes\n\n${note}`,
  ].join('\n\n');
  return readManuscript([{ path: 'page.md', text }], { only: [...only] }).marks;
}

/** Each mention as "words = listed food, listed food", or "words (made)", "words (aside)", "words = ?" for an unlisted use. */
export function meanings(dish: Dish): string[] {
  return dish.mentions.map(({ text, role, listings }) => {
    if (role !== 'use') return `${text} (${role})`;
    return `${text} = ${listings.map((listing) => listing.line.foods[0]!.name).join(', ') || '?'}`;
  });
}
