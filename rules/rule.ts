/** What a rule is, and what it leaves on the page. */
import type { BookNames } from '../src/kitchen/book-names.js';
import type { Book, Dish } from '../src/kitchen/types.js';
import type { HouseStyle } from '../src/manuscript/house-style.js';
import type { Page, Span, Stet } from '../src/manuscript/types.js';

/** fault: the page contradicts itself, its arithmetic is wrong, or it is unsafe; query: only the author can answer; note: style or advice. */
export type Weight = 'fault' | 'query' | 'note';

export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/** A change of text: sure where the meaning cannot change, else offered. */
export interface Mend {
  readonly label: string;
  readonly sure: boolean;
  readonly edits: readonly Edit[];
}

/** The other side of a disagreement. */
export interface Related {
  readonly file: string;
  readonly span: Span;
  readonly message: string;
  /** Whether the same is to be said there as at the mark's own place, so that the mark may stand at either. */
  readonly alike?: boolean;
}

/** What a rule finds; the reading adds the rule's name, the file and the recipe. */
export interface Finding {
  readonly span: Span;
  /** The food, amount or words that the mark is about. */
  readonly subject: string;
  /** One or two plain sentences: what is there, and what it disagrees with. */
  readonly message: string;
  /** What to do, one sentence. */
  readonly advice: string;
  /** Only where it differs from the rule's own. */
  readonly weight?: Weight;
  readonly related?: readonly Related[];
  readonly mends?: readonly Mend[];
}

export interface Mark extends Finding {
  readonly rule: string;
  readonly weight: Weight;
  readonly file: string;
  /** The recipe's title; null where the mark is about the file, or the recipe has none. */
  readonly recipe: string | null;
  readonly related: readonly Related[];
  readonly mends: readonly Mend[];
}

/** A manuscript small enough to read in a review, with the words that the rule must mark; none for a silent one. */
export interface Example {
  /** A statement about cooking, as a test's name. */
  readonly title: string;
  readonly text: string;
  /** The exact words marked, in order; empty where the rule stays silent. */
  readonly marks: readonly string[];
}

interface RuleBase {
  /** Lower case, hyphens: the file's name. */
  readonly name: string;
  /** The folder's name. */
  readonly topic:
    | 'listing'
    | 'measures'
    | 'heat'
    | 'doneness'
    | 'safety'
    | 'claims'
    | 'structure'
    | 'wording';
  readonly weight: Weight;
  /** One line: what it marks. */
  readonly summary: string;
  /** Why it matters to the person at the stove. */
  readonly why: string;
  readonly sources: readonly string[];
  /** What it does not cover, as the safety page prints it. Every safety rule says so. */
  readonly beyond?: string;
  /** At least two that are marked and two that are left alone. */
  readonly examples: readonly Example[];
}

export interface RecipeRule extends RuleBase {
  readonly scope: 'recipe';
  /** A rule that takes the names of the book is asked again when one of them has changed; what else the book holds it cannot see. */
  readonly look: (dish: Dish, style: HouseStyle, names: BookNames) => Iterable<Finding>;
}

export interface BookRule extends RuleBase {
  readonly scope: 'book';
  readonly look: (
    book: Book,
    style: HouseStyle,
  ) => Iterable<Finding & { readonly file: string; readonly recipe: string | null }>;
}

/** A stet of the author's, and what came of it. */
export interface StetUse {
  readonly page: Page;
  readonly stet: Stet;
  /** The recipe it stands in, by its title. */
  readonly recipe: string | null;
  /** How many marks it silences. */
  readonly silenced: number;
  /** Whether every rule that it could silence was run. */
  readonly judged: boolean;
  /** The names in it that no rule has, each with the nearest that one has. */
  readonly unknown: readonly { readonly name: string; readonly nearest: string }[];
}

export interface StetRule extends RuleBase {
  readonly scope: 'stets';
  /** Looks at all stets once the marks of the other rules are settled. */
  readonly look: (
    stets: readonly StetUse[],
  ) => Iterable<Finding & { readonly file: string; readonly recipe: string | null }>;
}

export type Rule = RecipeRule | BookRule | StetRule;
