/** Prints how right tamis is on the corpus: listings against the labels of a person, and faults planted and caught. */
import { listingPlanters } from './listing-plants.js';
import { scoreListings } from './listings.js';
import { pagePlanters } from './page-plants.js';
import { corpusIn, countPlants } from './plants.js';

const folder = '../shared/corpus/public-domain';
const files = corpusIn(folder);

if (files === null) {
  console.log(
    `accuracy: the corpus is missing at ${folder}; the labelled listings and the planted faults were skipped`,
  );
} else {
  const score = scoreListings(folder);
  console.log(`labelled listings: ${JSON.stringify({ ...score, misses: undefined })}`);
  console.log('\nplanted fault              planted   caught   recall');
  let planted = 0;
  let caught = 0;
  for (const [kind, count] of countPlants(files, { ...listingPlanters, ...pagePlanters })) {
    planted += count.planted;
    caught += count.caught;
    console.log(row(kind, count.planted, count.caught));
    if (process.argv.includes('--missed')) for (const miss of count.missed) console.log(`    ${miss}`);
  }
  console.log(row('all', planted, caught));
}

function row(kind: string, planted: number, caught: number): string {
  return `${kind.padEnd(24)}${String(planted).padStart(10)}${String(caught).padStart(9)}${`${((100 * caught) / planted).toFixed(1)} %`.padStart(9)}`;
}
