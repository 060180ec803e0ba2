/** Finds the tin or dish that something is baked in, and whether the recipe says how large it is. */
import type { Item } from '../grammar/types.js';
import { isWord, phraseAt, speaksOf } from '../larder/kitchen-words.js';
import { unitById } from '../larder/units.js';
import type { Passage } from '../manuscript/passage.js';
import { type Sentence, says, sentencesOf } from './sentences.js';
import type { Dish } from './types.js';
import { type Words, wordsOf } from './words.js';

/** A place of the method that names a tin, or bakes in one that is not named: offsets into the step's text. */
export interface UnsizedPan {
  readonly step: number;
  readonly start: number;
  readonly end: number;
  /** Whether any tin or dish is named. */
  readonly named: boolean;
}

/** The tin of a bake that takes its tin's shape, where the recipe gives no size for any; null where all is well. */
export function unsizedPanOf(dish: Dish): UnsizedPan | null {
  const { title } = dish.recipe;
  if (title === null || speaksOf(title.text, 'mash-pie')) return null;
  const named = speaksOf(title.text, 'bake-good');
  if (!named && !dish.steps.some(({ words }) => says(words.keys, 'raw-bake'))) return null;
  const bake = dish.heatings.find(({ technique }) => technique.name === 'bake');
  if (bake === undefined && !dish.steps.some(({ words }) => says(words.keys, 'oven-word'))) return null;
  const batter = dish.steps.some(({ words }) => words.keys.includes('batter'));
  const shaped = (named || batter) && !speaksOf(title.text, 'loose-bake');
  const found = panIn(dish, shaped);
  if (found === null || givesSize(dish)) return null;
  if (found !== 'none') return found;
  // A cake or brownie whose batter goes into nothing at all.
  return named && shaped && batter && bake !== undefined
    ? { step: bake.step, start: bake.start, end: bake.end, named: false }
    : null;
}

/** The first tin that the method names; "none" where it names no vessel for the oven at all. */
function panIn(dish: Dish, shaped: boolean): UnsizedPan | 'none' | null {
  let other = false;
  for (const { step, words } of dish.steps) {
    for (const sentence of sentencesOf(words)) {
      const { keys } = sentence;
      for (let at = 0; at < keys.length; ) {
        const sizeless = phraseAt(keys, at, 'sizeless-vessel');
        const sized = phraseAt(keys, at, 'sized-vessel');
        const bare =
          sized === null && shaped && holdsBake(sentence, at) ? phraseAt(keys, at, 'bare-vessel') : null;
        const pan = sized ?? bare;
        if (sizeless !== null && sizeless.length >= (pan?.length ?? 0)) {
          other = true;
          at += sizeless.length;
          continue;
        }
        if (pan === null) {
          at++;
          continue;
        }
        // A tin or a sheet, as the cook likes: then the size is the cook's too.
        if (says(keys, 'any-size') || phraseAt(keys, at + pan.length, 'choice') !== null) return null;
        return {
          step: step.index,
          start: words.words[sentence.from + at]!.start,
          end: words.words[sentence.from + at + pan.length - 1]!.end,
          named: true,
        };
      }
      other ||= keys.some((key) => isWord(key, 'bare-vessel'));
    }
  }
  return other ? null : 'none';
}

/** Whether the bake goes into a vessel that is only called a pan, a tin or a dish. */
function holdsBake({ keys }: Sentence, at: number): boolean {
  // "A dish of apples", "melt the butter in a pan".
  if (keys[at + 1] === 'of') return false;
  const near = keys.slice(Math.max(0, at - REACH), at + REACH);
  if (near.some((key) => isWord(key, 'made-ready'))) return true;
  return near.some((key) => isWord(key, 'holds-bake')) && !says(keys, 'stove-verb');
}

/** How many words around a vessel may say what it is for, or how large it is. */
const REACH = 6;

/** Whether any tin or dish of the recipe has its size: sides, a volume, a weight of dough. */
function givesSize(dish: Dish): boolean {
  const { title, headnote, equipment, notes, rest, listings } = dish.recipe;
  const yielded = dish.recipe.yield?.parsed;
  if (yielded != null && yielded.dimensions.length > 0) return true;
  if (dish.steps.some(({ words }) => sizesPan(words))) return true;
  const texts: Passage[] = [
    ...(title === null ? [] : [title]),
    ...headnote,
    ...equipment,
    ...notes,
    ...rest,
    ...listings.map((listing) => listing.passage),
  ];
  return texts.some(({ text }) => FIGURE.test(text) && (isSideAlone(text) || sizesPan(wordsOf(text))));
}

const FIGURE = /\d/;

/** "One 23 cm cake" in a title or headnote says enough; a listing's lengths are those of its pieces. */
function isSideAlone(text: string): boolean {
  return speaksOf(text, 'bake-good') && wordsOf(text).items.some((item) => item.kind === 'dimension');
}

/** Whether a length, a volume or a weight stands beside a vessel. */
function sizesPan(words: Words): boolean {
  return words.keys.some((_, at) => {
    const vessel =
      phraseAt(words.keys, at, 'sized-vessel') ??
      phraseAt(words.keys, at, 'bare-vessel') ??
      phraseAt(words.keys, at, 'sizeless-vessel');
    if (vessel === null) return false;
    const first = words.at[at]!;
    const last = words.at[at + vessel.length - 1]!;
    return words.items.slice(Math.max(0, first - REACH), last + REACH).some(isSize);
  });
}

function isSize(item: Item): boolean {
  if (item.kind === 'dimension') return true;
  if (item.kind !== 'measure') return false;
  // "A 1.5-litre dish" is a pack of so much.
  if (item.unit === null || item.pack !== null) return item.pack !== null;
  const { kind } = unitById(item.unit);
  return kind === 'volume' || kind === 'mass' || kind === 'length';
}
