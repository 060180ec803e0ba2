/** Finds the words that safety hangs on, of all classes in one pass; their classes are explained at the head of hazard-words.yaml. */
import { foodNamed } from './foods.js';
import { larder } from './load.js';
import { fold, singular } from './names.js';
import type { Food } from './types.js';

export const hazardClasses = [
  'acid',
  'at-once',
  'at-risk',
  'bean',
  'beside-baby',
  'bird',
  'boil',
  'brown',
  'can',
  'canning',
  'canning-open',
  'closes',
  'cold',
  'cooked',
  'cooked-dish',
  'cooled',
  'curdles',
  'drained',
  'dried',
  'eaten-raw',
  'eats',
  'egg-caution',
  'fermented',
  'fermenting',
  'finish',
  'foraged',
  'freezer',
  'frozen',
  'full-jar',
  'gathered',
  'gently',
  'heat-muddle',
  'heat-setting',
  'heat-treated',
  'hot-thing',
  'in-oil',
  'infant',
  'infant-caution',
  'jar',
  'jar-gear',
  'joining',
  'keep',
  'kept-in-oil',
  'leave',
  'letting',
  'long',
  'low-acid',
  'mild-heat',
  'mixer-word',
  'no-infant',
  'no-stove',
  'off-heat',
  'oven',
  'partly-cooked',
  'pasteurized',
  'poison-raw',
  'pours',
  'pressure',
  'process',
  'raw-dairy',
  'raw-dough',
  'raw-egg',
  'raw-egg-dish',
  'receives',
  'room',
  'seal',
  'served-so',
  'setting-word',
  'shelf',
  'shells',
  'shucked',
  'shut',
  'shut-shells',
  'simmers',
  'slow-cooker',
  'soak',
  'sous-vide',
  'spoiling',
  'sprout',
  'sprout-cold',
  'sprout-garnish',
  'sterile',
  'stove-word',
  'stuff',
  'sweet-dough',
  'tested',
  'thaw',
  'thawed',
  'timed-wait',
  'together',
  'uncooled',
  'unthawed',
  'until-needed',
  'warm-water',
  'warms',
  'warning',
  'weeks',
  'wild-caution',
  'wild-food',
  'within',
] as const;

export type HazardClass = (typeof hazardClasses)[number];

/** A word or phrase of a class: words `start` to `end`, end exclusive. */
export interface HazardWord {
  readonly is: HazardClass;
  readonly start: number;
  readonly end: number;
}

interface Entry {
  readonly is: HazardClass;
  readonly words: readonly string[];
}

/** By first word, folded and singular. Most words of a text open none, and are done with one look. */
const byFirst = new Map<string, Entry[]>();
const known: ReadonlySet<string> = new Set(hazardClasses);

for (const row of larder.hazardWords) {
  if (!known.has(row.is)) throw new Error(`hazard-words.yaml: "${row.word}" is of no class: ${row.is}`);
  const words = row.word.split(/[\s-]+/).map((word) => singular(fold(word)));
  const same = byFirst.get(words[0]!) ?? [];
  same.push({ is: row.is as HazardClass, words });
  same.sort((one, other) => other.words.length - one.words.length);
  byFirst.set(words[0]!, same);
}

/** Every word and phrase of every class among words `from` to `to` (folded keys), in order. */
export function hazardWordsIn(keys: readonly string[], from = 0, to = keys.length): HazardWord[] {
  const found: HazardWord[] = [];
  for (let at = from; at < to; at++) {
    const entries = openedBy(keys[at]!);
    if (entries === null) continue;
    for (const { is, words } of entries) {
      const end = at + words.length;
      const isHere = end <= to && words.every((word, index) => word === singular(keys[at + index]!));
      if (isHere && !isCovered(found, is, end)) found.push({ is, start: at, end });
    }
  }
  return found;
}

const opened = new Map<string, readonly Entry[] | null>();
const MOST_KEPT = 20_000;

/** The phrases that a folded word opens, in singular or plural; the same words come again and again, so the answer is kept. */
function openedBy(key: string): readonly Entry[] | null {
  let entries = opened.get(key);
  if (entries === undefined) {
    if (opened.size >= MOST_KEPT) opened.clear();
    entries = byFirst.get(singular(key)) ?? null;
    opened.set(key, entries);
  }
  return entries;
}

/** Of "on the counter" and "counter" the longer says all: whether one that ends no earlier was found just before. */
function isCovered(found: readonly HazardWord[], is: HazardClass, end: number): boolean {
  for (let at = found.length - 1; at >= 0 && found[at]!.start > end - LONGEST_PHRASE; at--) {
    if (found[at]!.is === is && found[at]!.end >= end) return true;
  }
  return false;
}

/** No phrase of the table has more words. */
const LONGEST_PHRASE = 10;

/** Whether a text holds a word of one of the classes; hyphens part words. */
export function tellsOf(text: string, ...classes: readonly HazardClass[]): boolean {
  const keys = text.split(/[^\p{L}\p{N}'’]+/u).map(fold);
  return hazardWordsIn(keys).some(({ is }) => classes.includes(is));
}

/** The foods that a class names; words that name no food are passed over. */
export function hazardFoods(is: HazardClass): Food[] {
  return larder.hazardWords.filter((row) => row.is === is).flatMap((row) => foodNamed(row.word) ?? []);
}
