/** Prints how right tamis is on list and method: lines as a person read them, faults planted, and marks that a person judged. */
import { rules } from '../../rules/index.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { listingPlanters } from './listing-plants.js';
import { scoreListings } from './listings.js';
import { scoreMarks } from './marks.js';
import { pagePlanters } from './page-plants.js';
import { countPlants } from './plants.js';
import { printMarks, printPlants, type Shown } from './table.js';

export function printListing(files: readonly SourceFile[], shown: Shown): void {
  console.log(`labelled listings: ${JSON.stringify({ ...scoreListings(files), misses: undefined })}`);
  printPlants('planted fault', countPlants(files, { ...listingPlanters, ...pagePlanters }), shown);
  const only = rules.filter(({ topic }) => topic === 'listing').map(({ name }) => name);
  const score = scoreMarks(files, 'listing-marks.tsv', only);
  printMarks('marks of the listing rules', score, shown);
  console.log(`two judges agree on ${score.agreed} of ${score.labels}`);
}
