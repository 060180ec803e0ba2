/** Names a step as the page does. */
import type { Recipe } from '../anatomy/types.js';

/** "step 3", by the number printed before it, else by its place. */
export function stepName({ steps }: Recipe, index: number): string {
  return `step ${steps[index]?.number ?? index + 1}`;
}
