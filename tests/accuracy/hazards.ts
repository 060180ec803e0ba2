/** Prints how many hazards planted in the corpus are caught; `npm run hazards` runs it, `-- --missed` names the files. */
import { countHazards } from './hazard-plants.js';
import { corpusIn } from './plants.js';

const folder = '../shared/corpus/public-domain';
const files = corpusIn(folder);

if (files === null) {
  console.log(`hazards: the corpus is missing at ${folder}; the planted hazards were skipped`);
} else {
  console.log('planted hazard             planted   caught   recall');
  let planted = 0;
  let caught = 0;
  for (const [rule, count] of countHazards(files)) {
    planted += count.planted;
    caught += count.caught;
    console.log(row(rule, count.planted, count.caught));
    if (process.argv.includes('--missed')) for (const missed of count.missed) console.log(`    ${missed}`);
  }
  console.log(row('all', planted, caught));
}

function row(kind: string, planted: number, caught: number): string {
  return `${kind.padEnd(24)}${String(planted).padStart(10)}${String(caught).padStart(9)}${`${((100 * caught) / planted).toFixed(1)} %`.padStart(9)}`;
}
