/**
 * Measures on the corpus how right tamis is, topic by topic: `npm run accuracy -- TOPIC…`. Without a topic it prints the
 * tables of the listing rules and the names of the other topics; with "all", everything.
 */
import { parseArgs } from 'node:util';
import type { SourceFile } from '../../src/manuscript/types.js';
import { printAnatomy } from './anatomy.js';
import { printBook } from './book.js';
import { printHazards } from './hazards.js';
import { printHeat } from './heat.js';
import { printListing } from './listing.js';
import { printMeasures } from './measures.js';
import { corpusIn } from './plants.js';
import { printSafety } from './safety.js';
import { printStyle } from './style.js';
import type { Shown } from './table.js';

interface Topic {
  readonly tells: string;
  readonly print: (files: readonly SourceFile[], shown: Shown) => void;
}

const topics: Readonly<Record<string, Topic>> = {
  listing: { tells: 'list and method: lines read, faults planted, marks judged', print: printListing },
  measures: { tells: 'every dual measure beside its label', print: printMeasures },
  heat: { tells: 'temperatures and times: faults planted, pairs judged', print: printHeat },
  book: { tells: 'references, titles, yields, promises: faults planted, marks judged', print: printBook },
  style: { tells: 'wording and house style: faults planted, marks judged', print: printStyle },
  safety: { tells: 'raw food: hazards planted, marks judged', print: printSafety },
  hazards: {
    tells: 'canning, keeping, thawing and the like: hazards planted, marks judged',
    print: printHazards,
  },
  anatomy: { tells: 'recipes in which title, list and method are found', print: printAnatomy },
};
const USUAL = 'listing';
const folder = '../shared/corpus/public-domain';

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: { missed: { type: 'boolean', default: false }, each: { type: 'boolean', default: false } },
});
const asked = positionals.includes('all')
  ? Object.keys(topics)
  : positionals.length > 0
    ? positionals
    : [USUAL];
const unknown = asked.filter((name) => !(name in topics));
const files = corpusIn(folder);

if (unknown.length > 0) {
  console.error(
    `accuracy: there is no topic "${unknown.join('", "')}"; there are:\n${listed(Object.keys(topics))}`,
  );
  process.exitCode = 2;
} else if (files === null) {
  console.log(`accuracy: the corpus is missing at ${folder}; nothing was measured (${asked.join(', ')})`);
} else {
  for (const name of asked) {
    console.log(`${name === asked[0] ? '' : '\n'}${name}: ${topics[name]!.tells}`);
    topics[name]!.print(files, values);
  }
  if (positionals.length === 0)
    console.log(
      `\nOther topics, behind "npm run accuracy --", or "all":\n${listed(Object.keys(topics).filter((name) => name !== USUAL))}`,
    );
}

function listed(names: readonly string[]): string {
  return names.map((name) => `  ${name.padEnd(10)}${topics[name]!.tells}`).join('\n');
}
