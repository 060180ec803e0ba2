/** Follows a marinade: when raw food goes into it, whether some was kept apart before, whether it boils, and where it goes then. */
import { isWord, phraseAt } from '../larder/kitchen-words.js';
import { does } from '../larder/techniques.js';
import { names, placeOf } from './raw-course.js';
import { type Stretch, saidIn, saysIn, sentencesOf } from './stretches.js';
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
    const sentences = sentencesOf(step);
    sentences.forEach((sentence, number) => {
      const course = courses.find(({ raw }) =>
        names(
          step,
          sentence,
          index,
          mentions.filter((mention) => mention.listings.includes(raw.listing)),
        ),
      );
      const said = saidIn(step, sentence, 'marinade');
      if (state.held !== null) {
        const rest = { from: sentence.from, to: sentences.at(-1)!.to };
        const use = state.safe
          ? null
          : useIn(
              step,
              sentence,
              rest,
              said.map(({ at }) => at),
              words[index + 1] ?? null,
            );
        if (use !== null) {
          found.push({ ...placeOf(step, index, use.at, 1), food: state.held.raw, served: use.served });
          state.safe = true;
        }
        if (said.length > 0 && saysIn(step, sentence, 'boiling')) state.safe = true;
        return;
      }
      const isMarinated = sentenceMarinates(step, sentence) || said.length > 0;
      if (isMarinated && said.length > 0 && keepsApart(step, sentence)) state.safe = true;
      const last =
        course ??
        (number > 0 || index > 0 ? heldBefore(words, mentions, courses, index, sentence) : undefined);
      if (isMarinated && last !== undefined && !isOnlyMade(step, sentence, course)) state.held = last;
    });
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
  const start = words[step]!.words[sentence.from]!.start;
  const last = mentions
    .filter((mention) => mention.step < step || (mention.step === step && mention.start < start))
    .findLast((mention) => courses.some(({ raw }) => mention.listings.includes(raw.listing)));
  return last === undefined ? undefined : courses.find(({ raw }) => last.listings.includes(raw.listing));
}

/** "Reserve half of the marinade", "set ¼ cup aside". */
function keepsApart(words: Words, { from, to }: Stretch): boolean {
  for (let at = from; at < to; at++) {
    const verb = verbAt(words, at);
    if (verb?.name === 'reserve' || phraseAt(words.keys, at, 'reserve-word') !== null) return true;
    if (words.keys[at] === 'aside' || words.keys[at] === 'divide') return true;
  }
  return false;
}

/** Where a sentence puts the marinade on food: the word "marinade", and whether what it goes on is eaten as it is. */
function useIn(
  words: Words,
  sentence: Stretch,
  rest: Stretch,
  places: readonly number[],
  next: Words | null,
): { at: number; served: boolean } | null {
  for (const at of places) {
    if (saysIn(words, { from: Math.max(sentence.from, at - 4), to: at }, 'taken-off')) continue;
    const put = lastBasting(words, sentence, at);
    if (put === null || saysIn(words, sentence, 'boiling')) continue;
    const bastes =
      put.means === 'cooking' && words.keys[put.at] !== undefined && isBasting(words.keys[put.at]!);
    if (!bastes && cooksAfterwards(words, { from: at, to: rest.to }, next)) continue;
    return { at, served: put.means === 'serving' || serves(words, { from: at, to: sentence.to }) };
  }
  return null;
}

/** "… over the fish and serve": it goes to the table as it is. */
function serves(words: Words, { from, to }: Stretch): boolean {
  for (let at = from; at < to; at++) {
    const verb = verbAt(words, at);
    if (verb !== null && does(verb, 'serve')) return true;
  }
  return false;
}

/** The nearest verb before the marinade's name that puts a liquid on food. */
function lastBasting(
  words: Words,
  sentence: Stretch,
  at: number,
): { at: number; means: string | null } | null {
  for (let before = at - 1; before >= sentence.from; before--) {
    const verb = verbAt(words, before);
    const key = verb?.name ?? null;
    if (key === null) continue;
    const phrase = phraseAt([key], 0, 'basting');
    if (phrase !== null) return { at: before, means: phrase.means };
  }
  return null;
}

/** To baste and to brush is done while the food cooks, up to its end; what is poured over and then cooked has boiled with it. */
function isBasting(key: string): boolean {
  return key.startsWith('bast') || key.startsWith('brush') || key.startsWith('mop');
}

/** Whether the food, with the marinade on it, is cooked on after this. */
function cooksAfterwards(words: Words, stretch: Stretch, next: Words | null): boolean {
  for (let at = stretch.from; at < stretch.to; at++) {
    const verb = verbAt(words, at);
    if (verb !== null && does(verb, 'heat')) return true;
  }
  return (
    next?.keys.some((_, at) => {
      const verb = verbAt(next, at);
      return verb !== null && does(verb, 'heat') && !does(verb, 'serve');
    }) ?? false
  );
}
