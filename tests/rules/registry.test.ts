/** The registry, the folder and the names of the rules say the same. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { rules } from '../../rules/index.js';
import { safetyPage } from '../../src/reports/safety-page.js';

const folder = new URL('../../rules/', import.meta.url);
const files = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap((topic) =>
    readdirSync(new URL(`${topic.name}/`, folder))
      .filter((file) => file.endsWith('.ts'))
      .map((file) => `${topic.name}/${file.replace('.ts', '')}`),
  );

it('every rule file is registered once, in the folder of its topic and under its own name', () => {
  expect(rules.map((rule) => `${rule.topic}/${rule.name}`).sort()).toEqual(files.sort());
});

it('every rule says why and by which source', () => {
  for (const rule of rules) {
    expect(rule.summary.length, rule.name).toBeGreaterThan(20);
    expect(rule.why.length, rule.name).toBeGreaterThan(20);
    expect(rule.sources.length, rule.name).toBeGreaterThan(0);
  }
});

it('the README lists every rule with its weight', () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  for (const rule of rules)
    expect(readme).toContain(`| \`${rule.name}\` | ${rule.weight} | ${rule.summary} |`);
});

it('every safety rule says what it does not cover', () => {
  for (const rule of rules.filter(({ topic }) => topic === 'safety'))
    expect(rule.beyond?.length ?? 0, rule.name).toBeGreaterThan(20);
});

it('the safety page is the one made from the rules; `npm run docs` writes it', () => {
  const page = readFileSync(new URL('../../rules/safety/README.md', import.meta.url), 'utf8');
  expect(page).toBe(safetyPage(rules));
});
