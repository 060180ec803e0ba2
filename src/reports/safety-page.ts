/** The page that lists every rule of food safety: what it marks, by which source, and what it does not cover. */
import type { Rule } from '../../rules/rule.js';
import { caution } from './caution.js';

/** As Markdown; made from the rules themselves, so that it cannot say otherwise than they do. */
export function safetyPage(rules: readonly Rule[]): string {
  const safety = rules
    .filter((rule) => rule.topic === 'safety')
    .toSorted((one, other) => (one.name < other.name ? -1 : 1));
  const blocks = [
    '# Food safety',
    caution,
    'What a rule leaves unmarked is not thereby safe: each reads words on a page, and covers no more than is said here.',
    ...safety.flatMap(sectionOf),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function sectionOf({ name, weight, summary, why, sources, beyond }: Rule): string[] {
  return [
    `## \`${name}\``,
    `*${weight[0]!.toUpperCase()}${weight.slice(1)}.* ${summary} ${why}`,
    `Sources:\n${sources.map((source) => `- ${source}`).join('\n')}`,
    `Not covered: ${beyond}`,
  ];
}
