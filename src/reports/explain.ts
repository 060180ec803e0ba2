/** Tells what a rule looks for, why and by which source, with its examples; and lists the rules by topic. */
import type { ChalkInstance } from 'chalk';
import type { Example, Rule } from '../../rules/rule.js';
import { caution } from './caution.js';
import { displayWidth, fill, visible, wrap } from './text.js';

export interface ExplainOptions {
  readonly color: ChalkInstance;
  readonly width: number;
}

export function explainRule(rule: Rule, { color, width }: ExplainOptions): string {
  const head = `${rule.topic}, ${rule.weight}`;
  const blocks = [
    [color.bold(rule.name) + fill(displayWidth(rule.name) + displayWidth(head), width) + color.dim(head)],
    wrap(rule.summary, width),
    wrap(rule.why, width),
    [color.bold('Sources'), ...rule.sources.flatMap((source) => hanging('  ', source, width))],
    ...rule.examples.map((example) => exampleLines(example, color, width)),
  ];
  if (rule.topic === 'safety') blocks.push(wrap(caution, width));
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

export function listRules(rules: readonly Rule[], { color, width }: ExplainOptions): string {
  const topics = [...new Set(rules.map((rule) => rule.topic))].sort();
  const columns = Math.max(0, ...rules.map((rule) => rule.name.length));
  const blocks = topics.map((topic) => {
    const own = rules
      .filter((rule) => rule.topic === topic)
      .toSorted((one, other) => (one.name < other.name ? -1 : 1));
    const lines = own.flatMap((rule) =>
      hanging(`  ${rule.name.padEnd(columns)}  ${rule.weight.padEnd(weightColumns)}  `, rule.summary, width),
    );
    return [color.bold(topic), ...lines];
  });
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

const weightColumns = 'fault'.length;

function exampleLines(example: Example, color: ChalkInstance, width: number): string[] {
  const kind = example.marks.length === 0 ? 'Left alone' : 'Marked';
  const marks = example.marks.map((words) => `"${words}"`).join(', ');
  const text = example.text.trimEnd().split('\n');
  return [
    ...wrap(`${kind}: ${example.title}`, width).map((line) => color.bold(line)),
    ...text.map((line) => `    ${visible(line)}`.trimEnd()),
    ...(example.marks.length === 0 ? [] : hanging('  marks ', marks, width)),
  ];
}

function hanging(lead: string, text: string, width: number): string[] {
  const rows = wrap(text, Math.max(20, width - lead.length));
  return rows.map((row, index) => (index === 0 ? lead : ' '.repeat(lead.length)) + row);
}
