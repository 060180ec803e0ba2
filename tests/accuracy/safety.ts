/** Prints how right the safety rules are on the corpus: hazards planted and caught, and the marks that a person judged. */
import { scoreMarks } from './marks.js';
import { corpusIn } from './plants.js';
import { scoreSafetyMarks } from './safety-marks.js';
import { countSafetyPlants } from './safety-plants.js';
import { row } from './table.js';

const folder = '../shared/corpus/public-domain';
const files = corpusIn(folder);

if (files === null) {
  console.log(
    `safety: the corpus is missing at ${folder}; the planted hazards and the judged marks were skipped`,
  );
} else {
  console.log('planted hazard                    planted   caught   recall');
  let planted = 0;
  let caught = 0;
  for (const [kind, count] of countSafetyPlants(files)) {
    planted += count.planted;
    caught += count.caught;
    console.log(row(kind, count.planted, count.caught));
    if (process.argv.includes('--missed')) console.log(`    ${count.missed.join(' ')}`);
  }
  console.log(row('all', planted, caught));
  const score = scoreSafetyMarks(files);
  console.log('\nweight                       judged    right   precision');
  for (const [weight, { judged, right }] of Object.entries(score.byWeight))
    console.log(row(weight, judged, right));
  console.log(
    `\nmarks without a label: ${score.unjudged.length}; labels without a mark: ${score.gone.length}`,
  );
  console.log(
    `safety notes a recipe with raw animal food: median ${score.medianNotes}, most ${score.mostNotes}`,
  );
  if (process.argv.includes('--missed')) console.log([...score.unjudged, ...score.gone].join('\n'));
  const cues = scoreMarks(files, 'doneness-marks.tsv', ['doneness-cue-absent']);
  console.log('\ndoneness-cue-absent          judged    right   precision');
  for (const [weight, { judged, right }] of Object.entries(cues.byWeight))
    console.log(row(weight, judged, right));
  console.log(`\nmarks without a label: ${cues.unjudged.length}; labels without a mark: ${cues.gone.length}`);
  if (process.argv.includes('--missed')) console.log([...cues.unjudged, ...cues.gone].join('\n'));
}
