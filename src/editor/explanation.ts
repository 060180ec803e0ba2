/** The explanation of a rule as a page of Markdown: what `tamis explain` tells, where an editor can open it. */
import type { Example, Rule } from '../../rules/rule.js';
import { caution } from '../reports/caution.js';

export function explanation({ name, topic, weight, summary, why, sources, examples }: Rule): string {
  return `${[
    `# ${name}`,
    `${topic}, ${weight}`,
    summary,
    why,
    `## Sources`,
    sources.map((source) => `- ${source}`).join('\n'),
    ...examples.flatMap(exampleBlocks),
    ...(topic === 'safety' ? [caution] : []),
  ].join('\n\n')}\n`;
}

function exampleBlocks({ title, text, marks }: Example): string[] {
  return [
    `## ${marks.length === 0 ? 'Left alone' : 'Marked'}: ${title}`,
    // Fenced, so that the example is shown as an author writes it, and is read as no recipe.
    `~~~~markdown\n${text.trimEnd()}\n~~~~`,
    ...(marks.length === 0 ? [] : [`Marks ${marks.map((words) => `"${words}"`).join(', ')}.`]),
  ];
}
