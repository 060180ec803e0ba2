/** What has been read of a method so far: which listings an earlier step has used, and what the recipe promises to make. */
import type { Listing, Recipe } from '../anatomy/types.js';
import { fold, singular } from '../larder/names.js';
import type { Food } from '../larder/types.js';
import { type Vocabulary, vocabularyOf } from './listed.js';

export interface Progress {
  readonly recipe: Recipe;
  readonly vocabulary: Vocabulary;
  /** Grows from step to step. */
  readonly used: Set<Listing>;
  /** The foods that an earlier mention showed to be made by the recipe. Grows from step to step. */
  readonly made: Set<Food>;
  /** Names that a step gave to what it makes ("prepare the pepper sauce by stirring"), each as its folded singular words. Grows too. */
  readonly given: Set<string>;
  /** Folded and singular. */
  readonly titleWords: ReadonlySet<string>;
}

/** The state before the first step. */
export function progressOf(recipe: Recipe): Progress {
  return {
    recipe,
    vocabulary: vocabularyOf(recipe.listings),
    used: new Set(),
    made: new Set(),
    given: new Set(),
    titleWords: new Set(wordsIn(recipe.title?.text ?? '')),
  };
}

/** Whether more than half of the listings have been used. */
export function isMostlyUsed({ used }: Progress, listings: readonly Listing[]): boolean {
  return listings.filter((listing) => used.has(listing)).length * 2 > listings.length;
}

/** The words of a name, folded and singular. */
export function wordsIn(name: string): string[] {
  return name
    .split(/[^\p{L}\p{N}'’]+/u)
    .filter((word) => word !== '')
    .map((word) => singular(fold(word)));
}
