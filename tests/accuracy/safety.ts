/** Prints how right the safety rules are: hazards of raw food planted and caught, and the marks that a person judged. */
import type { SourceFile } from '../../src/manuscript/types.js';
import { scoreMarks } from './marks.js';
import { scoreSafetyMarks } from './safety-marks.js';
import { countSafetyPlants } from './safety-plants.js';
import { printMarks, printPlants, type Shown } from './table.js';

export function printSafety(files: readonly SourceFile[], shown: Shown): void {
  printPlants('planted hazard', countSafetyPlants(files), shown);
  const score = scoreSafetyMarks(files);
  printMarks('marks of raw food', score, shown);
  console.log(
    `safety notes a recipe with raw animal food: median ${score.medianNotes}, most ${score.mostNotes}`,
  );
  const doneness = scoreMarks(files, 'doneness-marks.tsv', ['doneness-cue-absent']);
  printMarks('marks of cues of doneness', doneness, shown);
  console.log(`two judges agree on ${doneness.agreed} of ${doneness.labels}`);
}
