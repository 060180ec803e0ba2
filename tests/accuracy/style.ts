/** Prints how right tamis is on wording: faults planted against a house style and without one, and marks that a person judged. */
import { rules } from '../../rules/index.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { scoreMarks } from './marks.js';
import { countStylePlants } from './style-plants.js';
import { printMarks, printPlants, type Shown } from './table.js';

export function printStyle(files: readonly SourceFile[], shown: Shown): void {
  printPlants('planted fault', countStylePlants(files), shown);
  const only = rules.filter(({ topic }) => topic === 'wording').map(({ name }) => name);
  printMarks('marks of wording', scoreMarks(files, 'wording-marks.tsv', only, 'as one book'), shown);
}
