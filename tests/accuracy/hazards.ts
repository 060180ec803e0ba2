/** Prints how many hazards planted in the corpus are caught, and how right the marks on it are by a person's labels; `npm run hazards` runs it, `-- --missed` names the files. */
import { countHazards } from './hazard-plants.js';
import { scoreMarks } from './marks.js';
import { corpusIn } from './plants.js';
import { row } from './table.js';

const folder = '../shared/corpus/public-domain';
const files = corpusIn(folder);

if (files === null) {
  console.log(`hazards: the corpus is missing at ${folder}; planted hazards and labelled marks were skipped`);
} else {
  const counts = countHazards(files);
  console.log('planted hazard                    planted   caught   recall');
  let planted = 0;
  let caught = 0;
  for (const [rule, count] of counts) {
    planted += count.planted;
    caught += count.caught;
    console.log(row(rule, count.planted, count.caught));
    if (process.argv.includes('--missed')) for (const missed of count.missed) console.log(`    ${missed}`);
  }
  console.log(row('all', planted, caught));
  const { byWeight, unjudged } = scoreMarks(files, 'hazard-marks.tsv', [...counts.keys()]);
  console.log('\nmarks on the corpus                judged    right    share');
  for (const [weight, { judged, right }] of Object.entries(byWeight)) console.log(row(weight, judged, right));
  for (const key of unjudged) console.log(`    not judged: ${key}`);
}
