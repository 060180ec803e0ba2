/** Run by the build: writes the explanation of each rule as a page of its own, for an editor to open. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { rules } from '../../rules/index.js';
import { explanation } from './explanation.js';

const folder = new URL('../../explanations/', import.meta.url);
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
for (const rule of rules) writeFileSync(new URL(`${rule.name}.md`, folder), explanation(rule));
