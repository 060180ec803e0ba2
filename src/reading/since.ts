/** Compares a reading with an earlier one, so that a book with a backlog hears of new marks only. */
import type { Mark, Weight } from '../../rules/rule.js';
import { fingerprintsOf } from './fingerprints.js';
import type { Reading } from './types.js';

/** The reading without the marks whose fingerprints are known; those are held back. */
export function newSince(reading: Reading, known: ReadonlySet<string>): Reading {
  const fingerprints = fingerprintsOf(reading);
  const held: Mark[] = [];
  const marks: Mark[] = [];
  const counts: Record<Weight, number> = { fault: 0, query: 0, note: 0 };
  for (const mark of reading.marks) {
    if (known.has(fingerprints.get(mark)!)) held.push(mark);
    else {
      marks.push(mark);
      counts[mark.weight]++;
    }
  }
  return { ...reading, marks, counts, held };
}
