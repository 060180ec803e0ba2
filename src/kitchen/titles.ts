/** Knows what the recipes and sections of a book are called, and which of them a reference can mean. */
import { distance } from 'fastest-levenshtein';
import { isWord } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';

/** A title as a value: it says on which page it stands and not where, so that it stays the same while the text around it changes. */
export interface Title {
  /** As written, on one line. */
  readonly text: string;
  /** The path of its page. */
  readonly path: string;
  /** Its place among the titles of its page, from 0. */
  readonly order: number;
  /** Whether it is a recipe's, and not that of a section or of a part. */
  readonly ofRecipe: boolean;
  /** Whether it heads a part of a recipe's page: only its full name is a reference to it. */
  readonly within: boolean;
  /** Folded, singular, without articles. */
  readonly words: readonly string[];
  /** The words in one. */
  readonly key: string;
  /** All letters, small words too, to compare spellings. */
  readonly letters: string;
}

export class Titles {
  readonly recipes: readonly Title[];
  // The same names come again from recipe to recipe.
  private readonly slips = new Map<string, Title | null>();
  private readonly nearests = new Map<string, Title | null>();
  private readonly loose = new Map<string, readonly Title[]>();
  private readonly byKey = new Map<string, Title[]>();
  private readonly byWord = new Map<string, Set<Title>>();

  /** Of several that a name can mean, those that stand first come first. */
  constructor(titles: readonly Title[]) {
    this.recipes = titles.filter(({ ofRecipe }) => ofRecipe);
    for (const title of titles) this.index(title);
  }

  /** The titles of exactly these words, whatever their case, number or articles. */
  exact(name: string): readonly Title[] {
    return this.byKey.get(keyOf(wordsOf(name))) ?? [];
  }

  /** Titles that a shortened name can mean ("Plum Jam" for "Grandmother’s Plum Jam"), or those that make it up ("Plum Jam and Drop Scones"). */
  loosely(name: string): readonly Title[] {
    return remembered(this.loose, name, () => this.findLoosely(name));
  }

  private findLoosely(name: string): Title[] {
    const words = wordsOf(name).filter((word) => !saysLittle(word));
    if (words.length === 0) return [];
    const holding = [...this.withAny(words)].filter((title) => title.ofRecipe || !title.within);
    const proper = /^\p{Lu}/u.test(name);
    const shortened = holding.filter((title) =>
      // "Butter Biscuits" is not short for "Butter-Based Cookies and Biscuits"; in small letters it may be.
      proper ? holdsRun(title.words, words) : words.every((word) => title.words.includes(word)),
    );
    if (shortened.length > 0) return shortened;
    const held = holding.filter((title) => title.words.every((word) => words.includes(word)));
    const covered = new Set(held.flatMap((title) => title.words));
    return words.every((word) => covered.has(word)) ? held : [];
  }

  /** The one recipe whose title a slip of the pen may have made the name of. */
  misspelled(name: string): Title | null {
    return remembered(this.slips, name, () => this.findSlip(name));
  }

  /** One word at least is spelled right, or the name has but one: else every title would be compared with every name. */
  private findSlip(name: string): Title | null {
    const words = wordsOf(name);
    const letters = lettersOf(name);
    const candidates = words.length > 1 ? [...this.withAny(words)] : this.recipes;
    const near = candidates.filter((title) => title.ofRecipe && isSlip(letters, title.letters));
    return near.length > 0 && near.every((title) => title.key === near[0]!.key) ? near[0]! : null;
  }

  /** The recipe whose title has most in common with the name: half of its words at least. */
  nearest(name: string): Title | null {
    return remembered(this.nearests, name, () => this.findNearest(name));
  }

  private findNearest(name: string): Title | null {
    const words = wordsOf(name);
    let best: Title | null = null;
    let most = 0;
    for (const title of this.withAny(words)) {
      if (!title.ofRecipe) continue;
      const common = words.filter((word) => title.words.includes(word)).length;
      const share = (2 * common) / (words.length + title.words.length);
      if (share > most) [best, most] = [title, share];
    }
    return most >= HALF ? best : null;
  }

  /** Whether half of the words, the first left out where a sentence may begin with it, stand in titles: a quick no for most names. */
  mayName(run: string): boolean {
    const words = wordsOf(run);
    return 2 * words.filter((word) => this.byWord.has(word)).length >= words.length - 1;
  }

  private withAny(words: readonly string[]): Set<Title> {
    const found = new Set<Title>();
    for (const word of words) for (const title of this.byWord.get(word) ?? []) found.add(title);
    return found;
  }

  private index(title: Title): void {
    const same = this.byKey.get(title.key);
    if (same === undefined) this.byKey.set(title.key, [title]);
    else same.push(title);
    for (const word of title.words) {
      const holders = this.byWord.get(word);
      if (holders === undefined) this.byWord.set(word, new Set([title]));
      else holders.add(title);
    }
  }
}

function remembered<Found>(known: Map<string, Found>, name: string, find: () => Found): Found {
  let found = known.get(name);
  if (found === undefined) {
    found = find();
    known.set(name, found);
  }
  return found;
}

const HALF = 0.5;
/** A slip is one letter in so many. */
const LETTERS_FOR_A_SLIP = 6;
const MOST_SLIPS = 3;

/** Whether one name becomes the other by a few wrong letters, and not by none. */
function isSlip(one: string, other: string): boolean {
  const slips = Math.min(MOST_SLIPS, Math.floor(Math.min(one.length, other.length) / LETTERS_FOR_A_SLIP));
  if (one === other || Math.abs(one.length - other.length) > slips) return false;
  return distance(one, other) <= slips;
}

/** Whether two names of the same words are spelled alike; quotation marks, spaces and capitals do not tell. */
export function spelledAlike(name: string, title: string): boolean {
  return plainSpelling(name) === plainSpelling(title);
}

function plainSpelling(text: string): string {
  return text
    .normalize('NFC')
    .toLowerCase()
    .replace(/[’‘`]/g, "'")
    .replace(/[‐‑–—]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

/** The letters and digits of a name, folded, without an article before it. */
export function lettersOf(name: string): string {
  return fold(name.replace(/^(?:the|an?) /i, '')).replace(/[^\p{L}\p{N}]/gu, '');
}

/** The title that a heading makes. */
export function titleFrom(
  written: string,
  standing: Pick<Title, 'path' | 'order' | 'ofRecipe' | 'within'>,
): Title {
  const text = written.replace(/\s+/g, ' ').trim();
  const words = wordsOf(text);
  return { ...standing, text, words, key: keyOf(words), letters: lettersOf(text) };
}

function keyOf(words: readonly string[]): string {
  return words.join('');
}

function wordsOf(text: string): string[] {
  const words = text
    .split(/[^\p{L}\p{M}\p{N}'’]+/u)
    .map((word) => singular(fold(word)))
    .filter((word) => word !== '');
  const telling = words.filter((word) => !isWord(word, 'reference-filler') && !isWord(word, 'title-small'));
  return telling.length > 0 ? telling : words;
}

function holdsRun(words: readonly string[], run: readonly string[]): boolean {
  return words.some((_, at) => run.every((word, index) => words[at + index] === word));
}

/** "Homemade mayonnaise", "cooked rice": what a title need not say. */
function saysLittle(word: string): boolean {
  return isWord(word, 'adjective') || techniqueOf(word)?.form === 'past';
}
