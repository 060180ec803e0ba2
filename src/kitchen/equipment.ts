/** Compares what a recipe lists as equipment with the special tools of its method. */
import type { Passage } from '../manuscript/passage.js';
import { toolsIn } from './promised-ways.js';
import type { Dish } from './types.js';

export interface UnnamedTool {
  readonly tool: string;
  readonly passage: Passage;
  readonly start: number;
  readonly end: number;
}

/** The special tools that the method uses and the recipe's own list of equipment lacks, each once; none where there is no such list. */
export function* unnamedTools({ recipe }: Dish): Iterable<UnnamedTool> {
  if (recipe.equipment.length === 0) return;
  const named = new Set(recipe.equipment.flatMap(({ text }) => [...toolsIn(text).keys()]));
  for (const { passage } of recipe.steps) {
    for (const [tool, { start, end }] of toolsIn(passage.text)) {
      if (named.has(tool)) continue;
      named.add(tool);
      yield { tool, passage, start, end };
    }
  }
}
