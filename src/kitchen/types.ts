/** Who is who in one recipe: what each word of the method means on the list, and what is made on the way. */
import type Fraction from 'fraction.js';
import type { Listing, Recipe, Step } from '../anatomy/types.js';
import type { Duration, Item, Measure, Temperature } from '../grammar/types.js';
import type { Food, SafetyClass, Technique } from '../larder/types.js';
import type { Passage } from '../manuscript/passage.js';
import type { Page, Span } from '../manuscript/types.js';
import type { Words } from './words.js';

/** A step with its words and measures, and the stretches of it that are clauses of their own. */
export interface ReadStep {
  readonly step: Step;
  readonly items: readonly Item[];
  readonly words: Words;
}

/**
 * How a food's name stands in the text:
 * - use: it goes into the dish, or something is done with it;
 * - aside: a suggestion, a comparison, an alternative the list need not have;
 * - made: it names a thing the recipe makes ("the dough"), or the dish itself.
 */
export type MentionRole = 'use' | 'aside' | 'made';

/** A place in the method that names a food or a group of foods. */
export interface Mention {
  /** The exact words that name it. */
  readonly text: string;
  /** Offsets into the step's text. */
  readonly start: number;
  readonly end: number;
  readonly step: number;
  readonly role: MentionRole;
  /** What the larder calls it; null for words only the list knows, and for groups. */
  readonly food: Food | null;
  /** The listings it means: none when it is on no list, several for a group ("the spices") or an undecided kind. */
  readonly listings: readonly Listing[];
  /** "the spices", "the remaining ingredients": a group rather than one food. */
  readonly group: boolean;
  /** An amount stated with it. */
  readonly measure: Measure | null;
  /** "the", "remaining", "more": the words before it that refer back; lower case. */
  readonly determiner: string | null;
  /** The base form of the verb that governs it, where one was made out. */
  readonly verb: string | null;
  /** It stands in a clause that says when to stop: "until the lentils are soft". */
  readonly telling: boolean;
  /** "season to taste", "oil for the pan": nobody need list an amount. */
  readonly toTaste: boolean;
  /** It only keeps something from sticking to a tool or a board: "grease the tin with oil", "a floured board". */
  readonly surface: boolean;
  /** "if using", "optional", "or": the author leaves it open. */
  readonly optional: boolean;
}

/** An order to cook something: what heats the food, how long and until when, as far as the step tells. */
export interface Heating {
  readonly step: number;
  readonly technique: Technique;
  /** Offsets of the verb in the step's text. */
  readonly start: number;
  readonly end: number;
  /** Those of the same sentence. */
  readonly durations: readonly Duration[];
  /** Whether the step, or the opening of the next one, says how the food is when it is done. */
  readonly cued: boolean;
  /** The listings named in the step. */
  readonly listings: readonly Listing[];
}

/** A raw animal food of the list that has a safe minimum temperature. */
export interface RawFood {
  readonly listing: Listing;
  readonly food: Food;
  readonly safety: SafetyClass;
}

/** A temperature that the food itself is cooked to. */
export interface DoneTemperature {
  readonly step: number;
  readonly temperature: Temperature;
  readonly fahrenheit: Fraction;
  /** The raw foods that it can be about: those the step names, else all of the recipe. */
  readonly foods: readonly RawFood[];
}

/** A stretch of the recipe's text with what it says of amounts, heat and time. */
export interface ReadPart {
  readonly part: 'title' | 'headnote' | 'yield' | 'time' | 'listing' | 'step' | 'note';
  readonly passage: Passage;
  readonly items: readonly Item[];
}

/** One recipe, understood. */
export interface Dish {
  readonly page: Page;
  readonly recipe: Recipe;
  readonly steps: readonly ReadStep[];
  readonly mentions: readonly Mention[];
  /** By listing index: the mentions that use it. */
  readonly uses: readonly (readonly Mention[])[];
  readonly heatings: readonly Heating[];
  /** The steps, and whatever else of the recipe has a figure in it, in the order of the page's parts. */
  readonly parts: readonly ReadPart[];
  readonly rawFoods: readonly RawFood[];
  readonly doneTemperatures: readonly DoneTemperature[];
}

/** The recipes of a manuscript, each understood, in the order of their files. */
export interface Book {
  readonly dishes: readonly Dish[];
  readonly pages: readonly Page[];
  /** Stretches that look like a recipe whose list and method cannot be told apart. */
  readonly unclear: readonly { readonly file: string; readonly span: Span; readonly why: string }[];
}
