/** Knows the phrases of an ingredient line: what asks for a part, what opens a purpose or a preparation, what is a list of foods. */
import { foodAt } from '../larder/foods.js';
import { lexiconAt } from '../larder/lexicon.js';
import { techniqueOf } from '../larder/techniques.js';
import { keysOf, QUANTITY_KEY, type Segment } from './line-pieces.js';
import { jointOf, namesIn } from './naming.js';
import { rowEndingAt, stateLength } from './words.js';

/** The index after "juice of", "finely grated zest and juice of", "juice from"; `from` where no part is asked for. */
export function skipForms(keys: readonly string[], from: number): number {
  let at = from;
  let asked = false;
  for (; at < keys.length; at++) {
    const form = lexiconAt(keys, at, 'form') !== null || isPart(keys, at);
    asked ||= form;
    const between = keys[at] !== 'of' && BETWEEN_FORMS.has(keys[at]!);
    if (form || between) continue;
    const state = asked ? 0 : stateLength(keys, at);
    if (state === 0) break;
    at += state - 1;
  }
  if (!asked) return from;
  if (keys[at] === 'of' || keys[at] === 'from') return at + 1;
  return keys[at] === QUANTITY_KEY && at > from ? at : from;
}

/** "leaves of", "seeds and pulp from": a word that may also be a food or a unit is a part only there. */
function isPart(keys: readonly string[], at: number): boolean {
  if (lexiconAt(keys, at, 'part') === null) return false;
  let next = at + 1;
  while (keys[next] !== 'of' && isPartWord(keys, next)) next++;
  return keys[next] === 'of' || keys[next] === 'from';
}

function isPartWord(keys: readonly string[], at: number): boolean {
  const between = BETWEEN_FORMS.has(keys[at]!);
  return between || lexiconAt(keys, at, 'form') !== null || lexiconAt(keys, at, 'part') !== null;
}

/** The parts of a food that the words ask for. */
export function formsIn(keys: readonly string[]): string[] {
  const forms: string[] = [];
  for (let at = 0; at < keys.length; at++) {
    const means = (lexiconAt(keys, at, 'form') ?? (isPart(keys, at) ? lexiconAt(keys, at, 'part') : null))
      ?.means;
    if (means === undefined || means === null) continue;
    if (!forms.includes(means)) forms.push(means);
  }
  return forms;
}

/** The parts that a preparation makes of a food: "juiced", "zest and juice", but not the "white and green parts" of a leek. */
export function formsMade(keys: readonly string[]): string[] {
  // "rind removed" leaves the rest.
  if (keys.some((key) => techniqueOf(key)?.technique.does.includes('remove'))) return [];
  const made = keys.filter((key) => techniqueOf(key)?.form === 'past');
  const only = skipForms([...keys, 'of'], 0) > keys.length || keys.every((_, at) => isFormWord(keys, at));
  return formsIn(only ? keys : made);
}

function isFormWord(keys: readonly string[], at: number): boolean {
  const between = BETWEEN_FORMS.has(keys[at]!) || lexiconAt(keys, at, 'state-adverb') !== null;
  return between || lexiconAt(keys, at, 'form') !== null || techniqueOf(keys[at]!)?.form === 'past';
}

const BETWEEN_FORMS = new Set(['and', '&', 'the', 'only', 'of']);

/** Words that leave the cook free, or that say that the amount is used in parts. */
export function flagAt(keys: readonly string[], at: number): { is: Flag; length: number } | null {
  for (const is of FLAGS) {
    const match = lexiconAt(keys, at, is);
    if (match !== null) return { is, length: match.length };
  }
  return null;
}

const FLAGS = ['optional', 'to-taste', 'as-needed', 'divided'] as const;
type Flag = (typeof FLAGS)[number];

/** Where the words begin to say what the food is for ("to garnish"), or that more of it is wanted ("plus more for the pan"); -1 if nowhere. */
export function closingAt(keys: readonly string[], afterName: boolean): number {
  return keys.findIndex(
    (_, at) => lexiconAt(keys, at, 'plus-more') !== null || isPurpose(keys, at, afterName),
  );
}

/** "for the pan", "to serve". "to" needs a verb after a preparation ("mashed to paste"), and no size after a name. */
export function isPurpose(keys: readonly string[], at: number, afterName: boolean): boolean {
  const match = lexiconAt(keys, at, 'purpose');
  if (match === null) return false;
  if (keys[at] !== 'to') return true;
  const next = keys[at + 1];
  if (next === undefined || next === QUANTITY_KEY) return false;
  return techniqueOf(next)?.form === 'base' || (afterName && lexiconAt(keys, at + 1, 'size') === null);
}

/** Whether the words say what is done to a food: they open with a state or participle, or hold one ("skin removed"). */
export function opensWithPreparation(keys: readonly string[]): boolean {
  if (lexiconAt(keys, 0, 'preparation') !== null || stateLength(keys, 0) > 0) return true;
  // "split", "cut": verbs that are their own participles.
  if (techniqueOf(keys[0] ?? '')?.technique.forms.includes(keys[0]!)) return true;
  const form = lexiconAt(keys, 0, 'form')?.length ?? 0;
  // "white pepper" is a food, "white part only" is not.
  if (form > 0 && (foodAt(keys, 0)?.length ?? 0) <= form) return true;
  if (lexiconAt(keys, 0, 'aside') !== null) return false;
  if (rowEndingAt(keys) !== null) return false;
  return keys.some(
    (key, at) => techniqueOf(key)?.form === 'past' || lexiconAt(keys, at, 'preparation') !== null,
  );
}

/** "fresh fruit", "cooked brown rice": a state and then nothing but a food's name. */
export function isStatedFood(keys: readonly string[]): boolean {
  const at = stateLength(keys, 0);
  return at < keys.length && foodAt(keys, at)?.length === keys.length - at;
}

/**
 * How many of the stretches after the first name go on listing foods: "Onion, celery, carrot and garlic". Beside an
 * amount they must end as a list does ("2 tablespoons maple syrup, agave, or honey") unless it is `each`.
 */
export function isFoodList(
  rest: readonly Segment[],
  measured: boolean,
  named: boolean,
  each: boolean,
): { length: number; joined: 'and' | 'or' } {
  let length = 0;
  let joined: 'and' | 'or' | null = null;
  for (let at = 0; named && joined === null && at < rest.length; at++) {
    const segment = rest[at]!;
    if (isNames(segment, each)) {
      joined = listJoint(segment);
      length = at + 1;
    } else if (!isUnknownName(segment)) break;
  }
  if (joined === null && measured && !each) return { length: 0, joined: 'and' };
  return { length, joined: joined ?? 'and' };
}

/** Whether a stretch only names foods that the larder has. */
function isNames(segment: Segment, each: boolean): boolean {
  if (segment.lead !== 'comma' && !(each && segment.lead === 'stop')) return false;
  const from = jointOf(segment.pieces[0]!) === null ? 0 : 1;
  const keys = keysOf(segment.pieces);
  const ends = [closingAt(keys, true), keys.findIndex((_, at) => flagAt(keys, at) !== null)];
  const pieces = segment.pieces.slice(from, Math.min(...ends.map((end) => (end < 0 ? keys.length : end))));
  // A later food may have an amount of its own: "white pepper and a pinch of nutmeg".
  const amount = pieces.findIndex((piece) => piece.draft !== null);
  if (pieces.length === 0 || amount === 0 || (amount > 0 && jointOf(pieces[amount - 1]!) === null))
    return false;
  const { foods, tail } = namesIn(pieces);
  if (tail.length > 0) return false;
  const known = foods.filter(({ name, shared }) => rowEndingAt(keysOf([...name, ...shared])) !== null);
  // The end of a list ("oregano or foo") may have one food that the larder has not.
  return foods.length > 1 ? known.length > 0 : known.length === 1;
}

/** One or two words that the larder does not know: a food where a list goes on after it. */
function isUnknownName({ lead, pieces }: Segment): boolean {
  if (lead !== 'comma' || pieces.length > 2 || pieces.some((piece) => piece.draft !== null || piece.mark))
    return false;
  const keys = keysOf(pieces);
  const { foods, tail } = namesIn(pieces);
  return (
    tail.length === 0 &&
    foods.length === 1 &&
    foods[0]!.name.length === pieces.length &&
    !opensWithPreparation(keys)
  );
}

function listJoint(segment: Segment): 'and' | 'or' | null {
  const first = jointOf(segment.pieces[0]!);
  if (first !== null) return first;
  const last = namesIn(segment.pieces).foods.at(-1)!.joined;
  return last === 'first' ? null : last;
}
