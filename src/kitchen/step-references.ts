/** Finds where a recipe sends the cook to a step by its number, and whether it has that step. */
import { readText } from '../grammar/text.js';
import type { Item } from '../grammar/types.js';
import { isWord } from '../larder/kitchen-words.js';
import type { Passage } from '../manuscript/passage.js';
import type { Span } from '../manuscript/types.js';
import type { Dish } from './types.js';

export interface StepReference {
  readonly span: Span;
  /** As written: "step 7", "steps 2 and 9". */
  readonly text: string;
  readonly number: number;
}

/** The references to steps that the method does not have, each with the first number that it lacks. */
export function* lostSteps(dish: Dish): Iterable<StepReference> {
  const { recipe } = dish;
  if (recipe.steps.length === 0) return;
  const isStep = stepsOf(dish);
  const look = function* (passage: Passage, items: readonly Item[] | null): Iterable<StepReference> {
    if (!STEP.test(passage.text)) return;
    for (const { start, end, numbers } of referencesIn(items ?? readText(passage.text))) {
      const lost = numbers.find((number) => !isStep(number));
      if (lost !== undefined)
        yield { span: passage.span(start, end), text: passage.text.slice(start, end), number: lost };
    }
  };
  for (const passage of recipe.headnote) yield* look(passage, null);
  for (const { passage } of recipe.listings) yield* look(passage, null);
  for (const { step, items } of dish.steps) yield* look(step.passage, items);
  for (const passage of [...recipe.notes, ...recipe.storage, ...recipe.rest]) yield* look(passage, null);
}

/** Whether the method prints the numbers of its steps, so that a reader can look one up. */
export function hasNumbers({ recipe }: Dish): boolean {
  return recipe.steps.every(({ number }) => number !== null);
}

const STEP = /\bsteps?\b/i;
/** Nobody lists more numbers than this in one breath; it bounds a range gone wrong. */
const MOST_STEPS = 100;

/** Which numbers are those of steps: the printed ones, else as many as there are steps. */
function stepsOf(dish: Dish): (number: number) => boolean {
  const { steps } = dish.recipe;
  if (!hasNumbers(dish)) return (number) => number >= 1 && number <= steps.length;
  const printed = new Set(steps.map(({ number }) => number));
  return (number) => printed.has(number);
}

interface Found {
  readonly start: number;
  readonly end: number;
  readonly numbers: readonly number[];
}

function* referencesIn(items: readonly Item[]): Iterable<Found> {
  for (let at = 0; at < items.length; at++) {
    const word = items[at]!;
    if (word.kind !== 'word' || !isWord(word.key, 'step-word') || word.hyphenated) continue;
    const from = at;
    const numbers = [...numbersOf(items[at + 1])];
    if (numbers.length === 0) continue;
    at++;
    for (;;) {
      const next = joined(items, at + 1);
      if (next === null) break;
      numbers.push(...numbersOf(items[next]));
      at = next;
    }
    // "Step 3:" at the head of a step is its own number; "step 3 of the pie dough" is another recipe's.
    if (from === 0 && isLabelEnd(items[at + 1])) continue;
    if (leadsElsewhere(items, at + 1)) continue;
    yield { start: word.start, end: items[at]!.end, numbers };
  }
}

function numbersOf(item: Item | undefined): readonly number[] {
  if (item?.kind !== 'count' && (item?.kind !== 'measure' || item.unit !== null)) return [];
  const { low, high } = item.amount;
  if (low.d !== 1n || high.d !== 1n || high.sub(low).gt(MOST_STEPS)) return [];
  const numbers: number[] = [];
  for (let number = Number(low.n); number <= Number(high.n); number++) numbers.push(number);
  return numbers.length === 0 ? [Number(low.n)] : numbers;
}

/** The place of a number that "and", "or", "through" or a comma joins to the one before; null where none does. */
function joined(items: readonly Item[], at: number): number | null {
  let next = at;
  while (next < at + 2 && isJoint(items[next])) next++;
  return next > at && items[next]?.kind === 'count' ? next : null;
}

function isJoint(item: Item | undefined): boolean {
  if (item?.kind === 'point') return item.text === ',' || item.text === '&';
  return item?.kind === 'word' && isWord(item.key, 'step-joint');
}

function isLabelEnd(item: Item | undefined): boolean {
  return item === undefined || (item.kind === 'point' && /[.:\n–—)-]/.test(item.text));
}

/** Whether the reference goes on with another recipe, or its sentence names one: "steps 1 to 3 of Plum Jam", "(page 12, step 3)". */
function leadsElsewhere(items: readonly Item[], from: number): boolean {
  const next = items[from];
  if (next?.kind === 'word' && isWord(next.key, 'step-owner')) return true;
  let start = from;
  while (start > 0 && !endsSentence(items[start - 1]!)) start--;
  for (let at = start; at < items.length && !(at >= from && endsSentence(items[at]!)); at++) {
    const item = items[at]!;
    if (item.kind === 'word' && (isWord(item.key, 'page-word') || isWord(item.key, 'recipe-word')))
      return true;
  }
  return false;
}

function endsSentence(item: Item): boolean {
  return item.kind === 'point' && /[.!?\n]/.test(item.text);
}
