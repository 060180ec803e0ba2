/** Prints how many other hazards planted in the corpus are caught, and how right the marks on it are by a person's labels. */
import type { SourceFile } from '../../src/manuscript/types.js';
import { countHazards } from './hazard-plants.js';
import { scoreMarks } from './marks.js';
import { printMarks, printPlants, type Shown } from './table.js';

export function printHazards(files: readonly SourceFile[], shown: Shown): void {
  const counts = countHazards(files);
  printPlants('planted hazard', counts, shown);
  printMarks('marks of other hazards', scoreMarks(files, 'hazard-marks.tsv', [...counts.keys()]), shown);
}
