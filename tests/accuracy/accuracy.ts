/** Prints how right tamis is on the corpus: listings against the labels of a person, and faults planted and caught. */
import { rules } from '../../rules/index.js';
import { listingPlanters } from './listing-plants.js';
import { scoreListings } from './listings.js';
import { scoreMarks } from './marks.js';
import { pagePlanters } from './page-plants.js';
import { corpusIn, countPlants } from './plants.js';
import { row } from './table.js';

const folder = '../shared/corpus/public-domain';
const files = corpusIn(folder);

if (files === null) {
  console.log(
    `accuracy: the corpus is missing at ${folder}; the labelled listings and the planted faults were skipped`,
  );
} else {
  const score = scoreListings(folder);
  console.log(`labelled listings: ${JSON.stringify({ ...score, misses: undefined })}`);
  console.log('\nplanted fault                     planted   caught   recall');
  let planted = 0;
  let caught = 0;
  for (const [kind, count] of countPlants(files, { ...listingPlanters, ...pagePlanters })) {
    planted += count.planted;
    caught += count.caught;
    console.log(row(kind, count.planted, count.caught));
    if (process.argv.includes('--missed')) for (const miss of count.missed) console.log(`    ${miss}`);
  }
  console.log(row('all', planted, caught));
  const only = rules.filter(({ topic }) => topic === 'listing').map(({ name }) => name);
  const marks = scoreMarks(files, 'listing-marks.tsv', only);
  console.log('\nmarks of the listing rules   judged    right precision');
  for (const weight of ['fault', 'query'] as const)
    console.log(row(weight, marks.byWeight[weight].judged, marks.byWeight[weight].right));
  console.log(
    `two judges agree on ${marks.agreed} of ${marks.labels}; ${marks.gone.length} of the labelled marks are no longer made, ${marks.unjudged.length} marks have no label`,
  );
}
