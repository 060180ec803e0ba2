/** Takes a step sentence by sentence: the words of each and the items between them. */
import type { Item } from '../grammar/types.js';
import { type KitchenWordClass, phraseAt } from '../larder/kitchen-words.js';
import type { Words } from './words.js';

export interface Sentence {
  /** Places among the step's words, end exclusive. */
  readonly from: number;
  readonly to: number;
  readonly keys: readonly string[];
  readonly items: readonly Item[];
}

/** The sentences of a step that have a word in them, in order. */
export function sentencesOf(words: Words): Sentence[] {
  const found: Sentence[] = [];
  for (let from = 0; from < words.keys.length; ) {
    let to = from + 1;
    while (to < words.keys.length && words.sentence[to] === words.sentence[from]) to++;
    // What stands before the first word ("180°C:") belongs to it, and so does what stands behind the last.
    const first = from === 0 ? 0 : words.at[from - 1]! + 1;
    const last = to === words.keys.length ? words.items.length : words.at[to]!;
    const begin = from === 0 ? 0 : skipEnd(words, first, words.at[from]!);
    found.push({
      from,
      to,
      keys: words.keys.slice(from, to),
      items: words.items.slice(begin, endOfSentence(words, words.at[to - 1]!, last)),
    });
    from = to;
  }
  return found;
}

/** Whether any word or phrase of the class stands in the row of folded words. */
export function says(keys: readonly string[], is: KitchenWordClass): boolean {
  return keys.some((_, at) => phraseAt(keys, at, is) !== null);
}

/** The first item behind the full stop before a sentence. */
function skipEnd(words: Words, from: number, to: number): number {
  for (let at = from; at < to; at++) if (isEnd(words.items[at]!)) return at + 1;
  return from;
}

/** The place behind the last item of a sentence whose last word is item `from`. */
function endOfSentence(words: Words, from: number, to: number): number {
  for (let at = from; at < to; at++) if (isEnd(words.items[at]!)) return at;
  return to;
}

function isEnd(item: Item): boolean {
  return item.kind === 'point' && /[.!?;\n]/.test(item.text);
}
