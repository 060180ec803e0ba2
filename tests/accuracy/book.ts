/** Prints how many of the faults planted into the corpus, taken as one book, are caught. */
import { countBookPlants } from './book-plants.js';
import { corpusIn } from './plants.js';
import { row } from './table.js';

const folder = '../shared/corpus/public-domain';
const files = corpusIn(folder);

/** Enough of each kind to tell, and done within a minute. */
const EVERY = 9;

if (files === null) console.log(`book: the corpus is missing at ${folder}; the planted faults were skipped`);
else {
  console.log('planted fault                     planted   caught   recall');
  let planted = 0;
  let caught = 0;
  for (const [kind, count] of countBookPlants(files, EVERY)) {
    planted += count.planted;
    caught += count.caught;
    console.log(row(kind, count.planted, count.caught));
    if (process.argv.includes('--missed')) console.log(`    ${count.missed.join(' ')}`);
  }
  console.log(row('all', planted, caught));
}
