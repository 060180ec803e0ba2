/** Prints how right tamis is on heat and time: planted faults, and every pair of statements against a person's labels. */
import type { SourceFile } from '../../src/manuscript/types.js';
import { comparePairs, type Pair } from './heat-pairs.js';
import { countHeatPlants } from './heat-plants.js';
import { printPlants, type Shown } from './table.js';

export function printHeat(files: readonly SourceFile[], shown: Shown): void {
  const { pairs, unlabelled, wrong } = comparePairs(files);
  if (shown.each) for (const pair of pairs) console.log(inOneLine(pair));
  console.log(
    `pairs: ${pairs.length}, without a label: ${unlabelled.length}, judged otherwise: ${wrong.length}`,
  );
  for (const pair of [...unlabelled, ...wrong]) console.log(`    ${inOneLine(pair)}`);
  printPlants('planted fault', countHeatPlants(files), shown);
}

function inOneLine({ file, line, compares, figures, verdict }: Pair): string {
  return [file, line, compares, figures, verdict].join('\t');
}
