/** Finds the waits on which a dish hangs (a dough that rises, meat in its marinade) that have neither a time nor a sign. */

import { tellsOf } from '../larder/hazard-words.js';
import { phraseAt } from '../larder/kitchen-words.js';
import {
  durationsIn,
  heatVerbsIn,
  methodSentences,
  type Sentence,
  tells,
  verbsIn,
} from './hazard-sentences.js';
import type { Dish } from './types.js';
import { verbAt, type Words } from './words.js';

/** An order to wait: offsets of its verb in the step's text. */
export interface Wait {
  readonly step: number;
  readonly verb: string;
  readonly start: number;
  readonly end: number;
}

/** The waits for which neither their sentence, nor what stands around it, nor a stated time says how long or until when. */
export function untimedWaits(dish: Dish): Wait[] {
  if (dish.recipe.times.some(({ kind }) => kind === 'rest' || kind === 'other')) return [];
  const method = methodSentences(dish);
  // What the last sentence puts away is no longer waited for.
  return method.slice(0, -1).flatMap((sentence, index) => {
    if (!tells(sentence, 'timed-wait') || tellsWhen(sentence)) return [];
    // A sentence beside it that kneads or heats something tells its own time; "half an hour is enough" tells this one's.
    const beside = [method[index - 1], method[index + 1]].some(
      (near) =>
        near !== undefined &&
        (opensWithCue(near) ||
          (durationsIn(near).length > 0 &&
            heatVerbsIn(near).length === 0 &&
            (tells(near, 'leave') || verbsIn(near).length === 0))),
    );
    // "Proof the yeast. Stir it into warm water, and let it sit for 10 minutes": said in other words.
    const told =
      beside ||
      method
        .slice(Math.max(0, index - STEP_REACH), index + STEP_REACH)
        .some(
          (near) =>
            near.step === sentence.step &&
            near !== sentence &&
            tells(near, 'leave') &&
            durationsIn(near).length > 0,
        );
    const wait = told ? null : waitIn(sentence);
    return wait === null ? [] : [wait];
  });
}

function waitIn(sentence: Sentence): Wait | null {
  const { read, readAt, step } = sentence;
  for (const at of read === null ? [] : readAt) {
    const word = read!.words[at];
    if (word === undefined || word.hyphenated || !tellsOf(word.key, 'timed-wait') || !isOrder(read!, at))
      continue;
    const verb = verbAt(read!, at);
    if (verb !== null) return { step: step!, verb: verb.name, start: word.start, end: word.end };
  }
  return null;
}

/** Whether the verb opens a clause, follows "and" or "then", or is let happen: "let the dough rise"; "they will rise" is no order. */
function isOrder(words: Words, at: number): boolean {
  if (words.keys[at]!.endsWith('ing')) return false;
  if (at === 0 || words.before[at] !== '' || tellsOf(words.keys[at - 1]!, 'joining')) return true;
  return words.keys
    .slice(Math.max(words.opening[at]!, at - LETTING_REACH), at)
    .some((key) => tellsOf(key, 'letting'));
}

/** How many sentences off a step may still tell how long. */
const STEP_REACH = 6;
/** How many words may stand between "let" and its verb. */
const LETTING_REACH = 7;

/** "After two hours, …", "When it has doubled, …". */
function opensWithCue(sentence: Sentence): boolean {
  return sentence.keys[0] === 'after' || phraseAt(sentence.keys, 0, 'until') !== null;
}

/** Whether the sentence holds a time, a sign, or a clause that says until when. */
function tellsWhen(sentence: Sentence): boolean {
  if (durationsIn(sentence).length > 0 || tells(sentence, 'long')) return true;
  return sentence.keys.some(
    (_, at) => phraseAt(sentence.keys, at, 'until') !== null || phraseAt(sentence.keys, at, 'cue') !== null,
  );
}
