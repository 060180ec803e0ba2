/** Finds the waits on which a dish hangs (a dough that rises, meat in its marinade) that have neither a time nor a sign. */

import { tellsOf } from '../larder/hazard-words.js';
import { phraseAt } from '../larder/kitchen-words.js';
import { durationsIn, heatVerbsIn, methodSentences, type Sentence, tells } from './sentences.js';
import type { Dish } from './types.js';
import { verbAt } from './words.js';

/** An order to wait: offsets of its verb in the step's text. */
export interface Wait {
  readonly step: number;
  readonly verb: string;
  readonly start: number;
  readonly end: number;
}

/** The waits for which neither the sentence, nor the one before or after, nor a stated time says how long or until when. */
export function untimedWaits(dish: Dish): Wait[] {
  if (dish.recipe.times.some(({ kind }) => kind === 'rest' || kind === 'other')) return [];
  const method = methodSentences(dish);
  return method.flatMap((sentence, index) => {
    if (!tells(sentence, 'timed-wait')) return [];
    // A sentence beside it that heats something tells its own time.
    const beside = [method[index - 1], method[index + 1]].filter(
      (near) => near !== undefined && (heatVerbsIn(near).length === 0 || opensWithCue(near)),
    );
    const wait = [sentence, ...beside].some((near) => tellsWhen(near!)) ? null : waitIn(dish, sentence);
    return wait === null ? [] : [wait];
  });
}

function waitIn(dish: Dish, sentence: Sentence): Wait | null {
  const { words } = dish.steps[sentence.step!]!;
  for (let at = 0; at < words.keys.length; at++) {
    const { start, end } = words.words[at]!;
    if (start < sentence.start || end > sentence.end || !tellsOf(words.keys[at]!, 'timed-wait')) continue;
    const verb = verbAt(words, at);
    const previous = words.before[at] === '' ? (words.keys[at - 1] ?? '') : '';
    const isOrder = previous !== 'to' || tellsOf(words.keys[at - 2] ?? '', 'leave');
    if (verb !== null && isOrder && !words.keys[at]!.endsWith('ing'))
      return { step: sentence.step!, verb: verb.name, start, end };
  }
  return null;
}

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
