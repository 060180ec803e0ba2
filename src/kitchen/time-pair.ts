/** What it is that two statements of one length of time are compared. */
import type Fraction from 'fraction.js';
import type { TimeSpan } from '../grammar/stated-time.js';
import type { Span } from '../manuscript/types.js';
import type { StepTime } from './step-times.js';
import type { Dish } from './types.js';

/**
 * What is compared:
 * - sum: prepare and cook against the total;
 * - unexplained: a total with more in it than its parts and the waiting of the method;
 * - step: the longest of the steps against the times before the recipe;
 * - steps: all steps on the stove against the same;
 * - sole-step: a cooking time against the only step on the stove;
 * - waiting: all steps against the same, with the waiting;
 * - promise: a title or headnote against the recipe;
 * - same-step: a headnote or note against the step it tells of.
 */
export type TimesTold =
  | 'sum'
  | 'unexplained'
  | 'step'
  | 'steps'
  | 'sole-step'
  | 'waiting'
  | 'promise'
  | 'same-step';

/** Two statements of one length of time, in seconds. */
export interface TimePair {
  readonly compares: TimesTold;
  readonly agree: boolean;
  /** Beyond doubt where they do not agree. */
  readonly certain: boolean;
  /** The statement that would be marked: where it stands and its words. */
  readonly marked: { readonly span: Span; readonly words: string };
  readonly stated: TimeSpan;
  /** What it is compared with: the parts in the order of the page, and what they come to. */
  readonly parts: readonly { readonly span: Span; readonly low: Fraction; readonly high: Fraction }[];
  readonly reckoned: { readonly low: Fraction; readonly high: Fraction };
}

/** A step's time as a part of what is compared. */
export function stepPart(dish: Dish, { step, item, low, high }: StepTime): TimePair['parts'][number] {
  const { passage } = dish.recipe.steps[step]!;
  return { span: passage.span(item.start, item.end), low, high };
}
