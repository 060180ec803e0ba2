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
  /** The same as a row of words. */
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
  /** The amount is what is left behind: "all but 2 tablespoons of the oil". */
  readonly allBut: boolean;
  /** "the", "remaining", "more": the words before it that refer back; lower case. */
  readonly determiner: string | null;
  /** The base form of the verb that governs it, where one was made out. */
  readonly verb: string | null;
  /** It stands in a clause that says when to stop: "until the lentils are soft". */
  readonly telling: boolean;
  /** "season to taste", "oil for the pan": nobody need list an amount. */
  readonly toTaste: boolean;
  /** "An egg", "a lemon": one that nothing has spoken of yet. */
  readonly article: boolean;
  /** Something else goes into it or onto it, and it was there before: "add to the onions", "pour over the rice". */
  readonly into: boolean;
  /** It only keeps something from sticking to a tool or a board: "grease the tin with oil", "a floured board". */
  readonly surface: boolean;
  /** "if using", "optional", "or": the author leaves it open. */
  readonly optional: boolean;
}

/** What a use takes of its listing; null in `sum` and `share` where the text gives no such amount. */
export interface Taking {
  readonly mention: Mention;
  /**
   * amount: so much of it; share: a half, a third; rest: what is left; but: all except an amount; extra: more than was listed;
   * some: no amount is given; surface: what keeps something from sticking.
   */
  readonly how: 'amount' | 'share' | 'rest' | 'but' | 'extra' | 'some' | 'surface';
}

/** What the method takes of a listing, in its order. */
export interface Account {
  readonly listing: Listing;
  readonly takings: readonly Taking[];
  /** Whether every use is understood: no group, no "2 tablespoons at a time", no name that may mean another listing. */
  readonly closed: boolean;
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
  /** What the order itself names: the onions of "fry the onions". Empty where it names nothing ("simmer for an hour"). */
  readonly objects: readonly Mention[];
}

/** A raw animal food of the list that has a safe minimum temperature. */
export interface RawFood {
  readonly listing: Listing;
  readonly food: Food;
  readonly safety: SafetyClass;
}

/** A temperature that the food itself is cooked to. */
export interface DoneTemperature {
  /** The step or, with a null number, the headnote or note that states it. */
  readonly step: number | null;
  readonly passage: Passage;
  readonly temperature: Temperature;
  readonly fahrenheit: Fraction;
  /** The animal foods that it is about, as far as the text tells; several where it may be about each of them. */
  readonly foods: readonly RawFood[];
  /** The text goes on to say that the heat inside rises further: "it will climb while it rests". */
  readonly rising: boolean;
}

/** A stretch of a step, in offsets of the step's text. */
export interface Place {
  readonly step: number;
  readonly start: number;
  readonly end: number;
}

/** A stretch of text that a mark can stand on. */
export interface PassagePlace {
  readonly passage: Passage;
  readonly start: number;
  readonly end: number;
}

/** Where one raw food goes from the list through the steps. */
export interface RawCourse {
  readonly raw: RawFood;
  /** Ground meat or poultry, and sausage. */
  readonly ground: boolean;
  /** The orders that cook it, in order. */
  readonly cookings: readonly Heating[];
  /** Where no order cooks it, the mention that says it is cooked all the same: "once the chicken is cooked". */
  readonly cooked: Mention | null;
  /** In pieces too small for a thermometer: crumbs of ground meat, strips, cubes. */
  readonly bits: boolean;
  /** Boiled, braised or baked so long, or to such a softness, that nobody need ask. */
  readonly sure: boolean;
  /** The method gives the chart's own sign for fish and shellfish. */
  readonly shown: boolean;
  /** A color or clear juices given as the sign that it is done. */
  readonly color: Place | null;
  /** A cook's word for meat that is not done through ("medium-rare"), with the most that it stands for. */
  readonly degree: (Place & { readonly fahrenheit: number }) | null;
  /** Whether it waits after the last heat; with its time and step where that is stated. */
  readonly rest: boolean | (Duration & { readonly step: number });
}

/** What the method says of hands, water, boards, plates and marinades around raw food. */
export interface RawHandling {
  /** Raw food worked on, step by step; `bare` where it is done with the hands. */
  readonly touches: readonly (Place & { readonly food: RawFood; readonly bare: boolean })[];
  /** The steps that have hands washed; -1 stands for text before the method. */
  readonly handsWashed: readonly number[];
  /** Raw meat or poultry put under water. */
  readonly rinsings: readonly (PassagePlace & { readonly food: RawFood })[];
  /** A surface or tool that held raw food, and then holds food that is ready. */
  readonly surfaces: readonly (Place & { readonly food: RawFood })[];
  /** A marinade that held raw food and goes on food without having boiled. */
  readonly marinades: readonly (Place & { readonly food: RawFood; readonly served: boolean })[];
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
  /** By listing index: what those uses take. */
  readonly accounts: readonly Account[];
  readonly heatings: readonly Heating[];
  /** The steps, and whatever else of the recipe has a figure in it, in the order of the page's parts. */
  readonly parts: readonly ReadPart[];
  readonly rawFoods: readonly RawFood[];
  readonly doneTemperatures: readonly DoneTemperature[];
  /** One for each raw food, in the order of the list. */
  readonly courses: readonly RawCourse[];
  readonly handling: RawHandling;
}

/** The recipes of a manuscript, each understood, in the order of their files. */
export interface Book {
  readonly dishes: readonly Dish[];
  readonly pages: readonly Page[];
  /** Stretches that look like a recipe whose list and method cannot be told apart. */
  readonly unclear: readonly { readonly file: string; readonly span: Span; readonly why: string }[];
}
