/** Prints how right tamis is on what only the book can tell: faults planted into the corpus as one book, and marks that a person judged. */
import { rules } from '../../rules/index.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { countBookPlants } from './book-plants.js';
import { scoreMarks } from './marks.js';
import { printMarks, printPlants, type Shown } from './table.js';

/** Enough of each kind to tell, and done within a minute. */
const EVERY = 9;

export function printBook(files: readonly SourceFile[], shown: Shown): void {
  printPlants('planted fault', countBookPlants(files, EVERY), shown);
  const only = rules.filter(({ topic }) => topic === 'structure').map(({ name }) => name);
  printMarks('marks of structure', scoreMarks(files, 'structure-marks.tsv', only, 'as one book'), shown);
}
