/** Finds the foods that a stretch of an ingredient line names, and tells their names from states, sizes and what is done to them. */
import { foodAt, foodNamed, kindsOf } from '../larder/foods.js';
import { lexiconAt } from '../larder/lexicon.js';
import { techniqueOf } from '../larder/techniques.js';
import { unitNamed } from '../larder/units.js';
import { keysOf, type Piece, QUANTITY_KEY } from './line-pieces.js';
import { rowOf, stateLength } from './words.js';

/** One food of a stretch: its words, and what was said of it before and after. */
export interface Named {
  readonly joined: 'first' | 'and' | 'or';
  readonly quantities: readonly Piece[];
  readonly states: readonly (readonly Piece[])[];
  readonly size: readonly Piece[] | null;
  /** The words of its name; empty where an alternative only gives another amount or state. */
  readonly name: readonly Piece[];
  /** Words of the name that it shares with the next food: "broth" of "beef broth" in "chicken or beef broth". */
  readonly shared: readonly Piece[];
}

export interface Naming {
  readonly foods: readonly Named[];
  /** What follows the last name: a preparation, an attachment, a comment. */
  readonly tail: readonly Piece[];
}

/** Reads "small red onions or shallots finely chopped": the foods, and the stretch after them. */
export function namesIn(pieces: readonly Piece[]): Naming {
  const keys = keysOf(pieces);
  const cuts: { joined: Named['joined']; from: number }[] = [{ joined: 'first', from: 0 }];
  let named = false;
  let end = pieces.length;
  for (let at = 0; at < pieces.length; ) {
    const piece = pieces[at]!;
    const joint = jointOf(piece);
    if (joint !== null) {
      if (named) {
        const food = looksLikeFood(pieces, keys, at + 1);
        if (!food) {
          end = at;
          break;
        }
        cuts.push({ joined: joint, from: at + 1 });
        named = false;
      }
      at++;
      continue;
    }
    if (piece.draft !== null) {
      if (named) {
        end = at;
        break;
      }
      at++;
      continue;
    }
    const food = foodAt(keys, at);
    if (food !== null && food.length > 1) {
      named = true;
      at += food.length;
      continue;
    }
    const state = stateLength(keys, at);
    if (state > 0) {
      if (named && closes(pieces, keys, at + state)) {
        end = at;
        break;
      }
      at += state;
      continue;
    }
    // An alternative may only give another amount: "or 2 if they are small".
    const nameable = named || (cuts.length > 1 && at > cuts[cuts.length - 1]!.from);
    if (nameable && !piece.hyphenated && opensTail(keys, at)) {
      end = at;
      break;
    }
    const skipped = named ? 0 : beforeNameLength(keys, at);
    if (skipped > 0 && at + skipped < pieces.length) at += skipped;
    else {
      named = true;
      at++;
    }
  }
  const foods: Named[] = [];
  for (let index = cuts.length - 1; index >= 0; index--) {
    const { joined, from } = cuts[index]!;
    const next = cuts[index + 1];
    const to = next === undefined ? end : next.from - 1;
    foods.unshift(nameOf(pieces.slice(from, to), joined, foods[0] ?? null));
  }
  return { foods, tail: pieces.slice(end) };
}

/** Whether the words, from `from` on, could name a food: something is left after states, sizes and fillers. */
export function looksLikeFood(pieces: readonly Piece[], keys: readonly string[], from: number): boolean {
  for (let at = from; at < pieces.length; ) {
    if (pieces[at]!.draft !== null) {
      at++;
      continue;
    }
    if (lexiconAt(keys, at, 'plus-more') !== null || lexiconAt(keys, at, 'to-taste') !== null) return false;
    const vague = vagueMeasureLength(keys, at);
    if (vague > 0) {
      at += vague;
      continue;
    }
    const skipped = stateLength(keys, at) || beforeNameLength(keys, at);
    if ((foodAt(keys, at)?.length ?? 0) > skipped) return true;
    if (skipped === 0) return !opensTail(keys, at) && techniqueOf(keys[at]!)?.form !== 'ing';
    at += skipped;
  }
  return false;
}

/** "few pinches of", "a few dashes each": how many words stand for an amount that is not told, with their unit; 0 without one. */
export function vagueMeasureLength(keys: readonly string[], at: number): number {
  const vague = lexiconAt(keys, at, 'vague-amount')?.length ?? 0;
  if (vague === 0 || unitNamed(keys[at + vague] ?? '') === null) return 0;
  const next = at + vague + 1;
  return keys[next] === 'of' || lexiconAt(keys, next, 'each') !== null ? next + 1 - at : 0;
}

/** "peeled cored sliced"; after more states than this a name would have been cut off before. */
const MOST_STATES = 6;
const MOST_SHARED_WORDS = 3;

export function jointOf(piece: Piece): 'and' | 'or' | null {
  if (piece.hyphenated || piece.draft !== null) return null;
  switch (piece.key) {
    case 'or':
    case '/':
      return 'or';
    case 'and':
    case '&':
    case '+':
    case 'plus':
      return 'and';
    default:
      return null;
  }
}

/** After a state that follows the name: nothing, a joint, or more of the kind, so that the state closes the name. */
function closes(pieces: readonly Piece[], keys: readonly string[], from: number): boolean {
  let at = from;
  for (let states = 0; states < MOST_STATES; states++) {
    const piece = pieces[at];
    if (piece === undefined || piece.draft !== null || jointOf(piece) !== null) return true;
    if (opensTail(keys, at)) return true;
    const more = stateLength(keys, at);
    if (more === 0) return false;
    at += more;
  }
  return true;
}

function opensTail(keys: readonly string[], at: number): boolean {
  if (foodAt(keys, at) !== null) return false;
  if (keys[at + 1] === QUANTITY_KEY && lexiconAt(keys, at, 'less') !== null) return true;
  return (
    lexiconAt(keys, at, 'preparation') !== null ||
    lexiconAt(keys, at, 'attachment') !== null ||
    lexiconAt(keys, at, 'aside') !== null
  );
}

/** Words before a name that are no part of it: sizes, fillers, articles, "of". */
function beforeNameLength(keys: readonly string[], at: number): number {
  const match =
    lexiconAt(keys, at, 'vague-amount') ?? lexiconAt(keys, at, 'size') ?? lexiconAt(keys, at, 'filler');
  return match?.length ?? 0;
}

/** One food: the states and sizes before the words of its name are taken off, unless the larder knows it by them. */
function nameOf(all: readonly Piece[], joined: Named['joined'], next: Named | null): Named {
  const quantities = all.filter((piece) => piece.draft !== null);
  const pieces = all.filter((piece) => piece.draft === null && !piece.mark);
  const keys = keysOf(pieces);
  const states: Piece[][] = [];
  let size: Piece[] | null = null;
  let at = 0;
  while (at < keys.length) {
    const length = stateLength(keys, at);
    const sized = lexiconAt(keys, at, 'size')?.length ?? 0;
    const skipped = Math.max(
      length,
      sized,
      beforeNameLength(keys, at),
      jointOf(pieces[at]!) === null && keys[at] !== 'to' ? 0 : 1,
    );
    if (skipped === 0 || pieces[at + skipped]?.hyphenated || namesOtherFood(keys, at, skipped)) break;
    if (at + skipped >= keys.length && length === 0 && sized === 0) break;
    const words = pieces.slice(at, at + skipped);
    if (sized > 0 && sized >= length) size = size === null ? words : [...size, ...words];
    else if (length > 0) states.push(words);
    at += skipped;
  }
  const name = pieces.slice(at);
  return { joined, quantities, states, size, name, shared: sharedWords(name, next) };
}

/** Whether the words are another food to the larder with the state than without: "ground beef", "brown sugar". */
function namesOtherFood(keys: readonly string[], at: number, length: number): boolean {
  const match = foodAt(keys, at);
  if (match === null) return false;
  if (at + match.length < keys.length) return match.length > length;
  const rest = foodAt(keys, at + length);
  // "freshly ground pepper": the bare word already means the food.
  if (rest !== null && rest.food.uncounted === match.food.name) return false;
  return rest === null || at + length + rest.length < keys.length || rest.food !== match.food;
}

/** "chicken or beef broth" is chicken broth or beef broth: the last words of the next name that make a food with this one. */
function sharedWords(name: readonly Piece[], next: Named | null): readonly Piece[] {
  if (next === null || next.quantities.length > 0 || name.length === 0) return [];
  const own = keysOf(name).join(' ');
  const after = next.shared.length > 0 ? [...next.name, ...next.shared] : next.name;
  for (let from = Math.max(1, after.length - MOST_SHARED_WORDS); from < after.length; from++) {
    const words = after.slice(from);
    const food = foodNamed(`${own} ${keysOf(words).join(' ')}`);
    if (food === null) continue;
    // "rosemary and bay leaves": leaves of rosemary are rosemary, and need not be said.
    const alone = foodNamed(own);
    return alone !== null && kindsOf(food).has(alone) ? [] : words;
  }
  if (rowOf(keysOf(name)) !== null || after.length < 2 || name.length > 1) return [];
  const last = after.slice(-1);
  return rowOf(keysOf(last)) === null ? [] : last;
}
