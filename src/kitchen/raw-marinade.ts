/** Follows a marinade: when raw food goes into it, whether some was kept apart before, whether it boils, and where it goes then. */
import { isWord, type PhraseMatch, phraseAt } from '../larder/kitchen-words.js';
import { fold } from '../larder/names.js';
import { does } from '../larder/techniques.js';
import { isCookedBefore, placeOf } from './raw-course.js';
import {
  lastMentionBefore,
  mentionsIn,
  type Said,
  type Stretch,
  saidIn,
  saysIn,
  sentencesOf,
} from './stretches.js';
import type { Mention, RawCourse, RawHandling } from './types.js';
import { verbAt, type Words } from './words.js';

/** What becomes of the marinade as the method goes on. */
interface State {
  /** The raw food that lies in it; null before. */
  held: RawCourse | null;
  /** Some was set aside before raw food touched it, or it has boiled. */
  safe: boolean;
}

/** The places where a marinade that held raw food goes on food, and has not boiled. */
export function marinadesReused(
  words: readonly Words[],
  mentions: readonly Mention[],
  courses: readonly RawCourse[],
): RawHandling['marinades'] {
  if (!words.some((step) => step.keys.some((key) => isMarinating(key)))) return [];
  const found: RawHandling['marinades'][number][] = [];
  const state: State = { held: null, safe: false };
  words.forEach((step, index) => {
    for (const sentence of sentencesOf(step)) {
      const there = mentionsIn(step, sentence, index, mentions);
      const course = courses.find(({ raw }) => there.some(({ listings }) => listings.includes(raw.listing)));
      const said = saidIn(step, sentence, 'marinade');
      if (state.held === null) {
        const isMarinated = said.length > 0 || sentenceMarinates(step, sentence);
        // "Set aside a third", before any raw food is in it.
        if (keepsApart(step, sentence) && (said.length > 0 || keepsShare(step, sentence, there)))
          state.safe = true;
        const before = course ?? heldBefore(words, mentions, courses, index, sentence) ?? null;
        if (isMarinated && !isOnlyMade(step, sentence, course)) state.held = before;
        // A marinade that is first named when the food is cooked held it all the same.
        const [first] = said;
        if (first === undefined || before === null) continue;
        if (!isCookedBefore(before, { step: index, start: step.words[first.at]!.start })) continue;
        state.held = before;
      }
      if (state.safe || said.length === 0) continue;
      const use = useOf({ words: step, index, sentence, next: words[index + 1] ?? null }, said, state.held);
      if (use !== null)
        found.push({ ...placeOf(step, index, use.at, 1), food: state.held.raw, served: use.served });
      state.safe = use !== null || saysIn(step, sentence, 'boiling');
    }
  });
  return found;
}

function isMarinating(key: string): boolean {
  return isWord(key, 'marinade') || key.startsWith('marina');
}

/** "Marinate for 2 hours": the food goes in, named or not. */
function sentenceMarinates(words: Words, { from, to }: Stretch): boolean {
  for (let at = from; at < to; at++) if (words.keys[at]!.startsWith('marinat')) return true;
  return false;
}

/** "For the marinade, whisk …": it is made, and no raw food is in the sentence. */
function isOnlyMade(words: Words, sentence: Stretch, course: RawCourse | undefined): boolean {
  return course === undefined && !sentenceMarinates(words, sentence);
}

/** The raw food that was named last before a sentence. */
function heldBefore(
  words: readonly Words[],
  mentions: readonly Mention[],
  courses: readonly RawCourse[],
  step: number,
  sentence: Stretch,
): RawCourse | undefined {
  const { start } = words[step]!.words[sentence.from]!;
  const holds = ({ raw }: RawCourse, mention: Mention): boolean => mention.listings.includes(raw.listing);
  const last = lastMentionBefore(mentions, step, start, (mention) =>
    courses.some((course) => holds(course, mention)),
  );
  return last === null ? undefined : courses.find((course) => holds(course, last));
}

/** "Reserve half of the marinade", "set ¼ cup aside". */
function keepsApart(words: Words, { from, to }: Stretch): boolean {
  for (let at = from; at < to; at++) {
    const verb = verbAt(words, at);
    if (verb?.name === 'reserve' || phraseAt(words.keys, at, 'reserve-word') !== null) return true;
    if (words.keys[at] === 'aside' || words.keys[at] === 'divide') return true;
    if (phraseAt(words.keys, at, 'keeping-apart') !== null) return true;
  }
  return false;
}

/** "Set aside a third": a share of what was just made. "Set aside" alone keeps all of it. */
function keepsShare(words: Words, { from, to }: Stretch, there: readonly Mention[]): boolean {
  if (there.length > 0) return false;
  const isMeasured = words.items
    .slice(words.at[from], words.at[to] ?? words.items.length)
    .some(({ kind }) => kind === 'measure' || kind === 'count');
  return isMeasured || words.keys.slice(from, to).some((key) => isWord(key, 'share-word'));
}

/** A sentence of a step, and what follows it. */
interface Here {
  readonly words: Words;
  readonly index: number;
  readonly sentence: Stretch;
  readonly next: Words | null;
}

/** Where a sentence puts the marinade on food that has been cooked: the word for it, and whether the food is then eaten as it is. */
function useOf(
  { words, index, sentence, next }: Here,
  said: readonly Said[],
  held: RawCourse,
): { at: number; served: boolean } | null {
  if (saysIn(words, sentence, 'boiling')) return null;
  for (const { at } of said) {
    if (!isCookedBefore(held, { step: index, start: words.words[at]!.start })) continue;
    if (saysIn(words, { from: Math.max(sentence.from, at - REACH_OF_TAKING), to: at }, 'taken-off')) continue;
    const put = lastBasting(words, sentence, at);
    if (put === null) continue;
    const isServed = put.means === 'serving' || serves(words, { from: at, to: sentence.to });
    // What is poured over and then cooked has boiled with the food; to baste goes on to the end.
    const isCooked = cooksIn(words, at) || (!isServed && next !== null && cooksIn(next, 0));
    if (put.means === 'basting' || !isCooked) return { at, served: isServed };
  }
  return null;
}

/** How many words before the marinade's name may take it away: "drain off most of the marinade". */
const REACH_OF_TAKING = 4;

/** "… over the fish and serve", "over the cooked fish", "as a dipping sauce": it goes to the table as it is. */
function serves(words: Words, { from, to }: Stretch): boolean {
  if (saysIn(words, { from, to }, 'dipping') || words.keys.slice(from, to).includes('cooked')) return true;
  for (let at = from; at < to; at++) {
    const verb = verbAt(words, at);
    if (verb !== null && does(verb, 'serve')) return true;
  }
  return false;
}

/** The nearest verb before the marinade's name that puts a liquid on food. */
function lastBasting(words: Words, sentence: Stretch, at: number): PhraseMatch | null {
  for (let before = at - 1; before >= sentence.from; before--) {
    const verb = verbAt(words, before);
    const phrase = verb === null ? null : phraseAt([fold(verb.name)], 0, 'putting');
    if (phrase !== null) return phrase;
  }
  return null;
}

/** Whether an order to cook follows word `from`, as far as a step that a cook can follow goes on. */
function cooksIn(words: Words, from: number): boolean {
  for (let at = from; at < Math.min(words.keys.length, from + FURTHEST_ORDER); at++) {
    const verb = verbAt(words, at);
    if (verb !== null && does(verb, 'heat')) return true;
  }
  return false;
}

const FURTHEST_ORDER = 150;
