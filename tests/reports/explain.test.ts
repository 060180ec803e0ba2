import { Chalk } from 'chalk';
import { describe, expect, test } from 'vitest';
import type { Rule } from '../../rules/rule.js';
import { explainRule, listRules } from '../../src/reports/explain.js';
import { rule } from './fake.js';

const options = { color: new Chalk({ level: 0 }), width: 60 };

describe('explaining a rule', () => {
  const explained: Rule = {
    ...rule('cold-oven', 'heat'),
    examples: [
      { title: 'a loaf goes into an oven nobody lit', text: '# Loaf\n\n1. Bake it.\n', marks: ['Bake'] },
      { title: 'a loaf goes into a hot oven', text: '# Loaf\n\n1. Heat the oven. Bake it.\n', marks: [] },
    ],
  };

  test('tells its topic and weight, why, the sources, and an example of each kind', () => {
    expect(explainRule(explained, options)).toBe(
      `
cold-oven                                        heat, fault

Marks a thing.

The cook would stumble over it.

Sources
  common practice

Marked: a loaf goes into an oven nobody lit
    # Loaf

    1. Bake it.
  marks "Bake"

Left alone: a loaf goes into a hot oven
    # Loaf

    1. Heat the oven. Bake it.
`.slice(1),
    );
  });
  test('adds the caution where it is about food safety', () => {
    expect(explainRule(rule('pink-chicken', 'safety'), options)).toContain('Local codes');
    expect(explainRule(explained, options)).not.toContain('Local codes');
  });
});

test('the list of rules is by topic, and by name in a topic', () => {
  const rules = [rule('zest', 'listing'), rule('cold-oven', 'heat'), rule('amount', 'listing')];
  expect(listRules(rules, options)).toBe(
    `
heat
  cold-oven  fault  Marks a thing.

listing
  amount     fault  Marks a thing.
  zest       fault  Marks a thing.
`.slice(1),
  );
});
