/** Says in a sentence or two what came of a reading: how many marks of each weight, in how many recipes, and what is silenced or held back. */
import type { Rule, Weight } from '../../rules/rule.js';
import type { Reading } from '../reading/types.js';
import { hasTopic } from './topics.js';
import { capitalized, countOf, joined } from './words.js';

export function closing(reading: Reading, rules: readonly Rule[]): string {
  const { fault, query, note } = reading.counts;
  const where =
    reading.dishes.length === 0
      ? `${countOf(reading.pages.length, 'file', 'files')}, and no recipe was found`
      : countOf(reading.dishes.length, 'recipe', 'recipes');
  const weights = joined([countMarks('fault', fault), countMarks('query', query), countMarks('note', note)]);
  const compared = reading.held !== undefined;
  const none = compared ? 'No new marks' : 'No marks';
  const some = compared ? `New: ${weights}` : capitalized(weights);
  const sentences = [
    `${reading.marks.length === 0 ? none : some} in ${where}.`,
    ...silenced(reading),
    ...heldBack(reading),
    ...bySelf(reading, rules),
  ];
  return sentences.join(' ');
}

/** "no faults", "one query", "two notes". */
export function countMarks(weight: Weight, count: number): string {
  return countOf(count, weight, plurals[weight]);
}

/** Tells of the marks that an earlier reading had already; no sentence where none was compared with. */
export function heldBack({ held }: Pick<Reading, 'held'>): string[] {
  if (held === undefined) return [];
  return [`${capitalized(countOf(held.length, 'mark', 'marks'))} held back, known from the earlier reading.`];
}

/** Who has marks of style and no house style is told by what they were judged. */
function bySelf({ style, marks }: Reading, rules: readonly Rule[]): string[] {
  if (style.stated || !hasTopic(marks, rules, 'wording')) return [];
  return ['There is no house style: what most of the manuscript does was taken as its style.'];
}

const plurals: Readonly<Record<Weight, string>> = { fault: 'faults', query: 'queries', note: 'notes' };

function silenced({ stetted }: Reading): string[] {
  return stetted.length === 0
    ? []
    : [`${capitalized(countOf(stetted.length, 'mark', 'marks'))} silenced by stet.`];
}
