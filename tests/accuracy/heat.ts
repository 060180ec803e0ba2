/** Prints how right tamis is on heat and time in the corpus: planted faults, and every pair of statements against a person's labels. */
import { comparePairs, type Pair } from './heat-pairs.js';
import { countHeatPlants } from './heat-plants.js';
import { corpusIn } from './plants.js';

const files = corpusIn('../shared/corpus/public-domain');
if (files === null) {
  console.log('heat: the corpus is missing at ../shared/corpus/public-domain; nothing was counted');
} else {
  const { pairs, unlabelled, wrong } = comparePairs(files);
  if (process.argv.includes('--pairs')) for (const pair of pairs) console.log(shown(pair));
  console.log(
    `pairs: ${pairs.length}, without a label: ${unlabelled.length}, judged otherwise: ${wrong.length}`,
  );
  for (const pair of [...unlabelled, ...wrong]) console.log(`    ${shown(pair)}`);
  console.log('planted                    planted   caught');
  for (const [kind, { planted, caught, missed }] of countHeatPlants(files)) {
    console.log(`${kind.padEnd(24)}${String(planted).padStart(10)}${String(caught).padStart(9)}`);
    if (process.argv.includes('--missed') && missed.length > 0) console.log(`    ${missed.join(' ')}`);
  }
}

function shown({ file, line, compares, figures, verdict }: Pair): string {
  return [file, line, compares, figures, verdict].join('\t');
}
