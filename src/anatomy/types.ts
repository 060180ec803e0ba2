/** A recipe as it stands on the page: which words are its title, headnote, list, method and the rest. */
import type { ListingLine, Yield } from '../grammar/types.js';
import type { Passage } from '../manuscript/passage.js';
import type { Span } from '../manuscript/types.js';

export interface Listing {
  /** Its place among the recipe's listings, from 0. */
  readonly index: number;
  /** The whole line, without bullet or number. */
  readonly passage: Passage;
  readonly line: ListingLine;
  /** Index of its component. */
  readonly component: number;
}

/** A part with its own list: "For the glaze". A recipe with one plain list has one component without a name. */
export interface Component {
  readonly index: number;
  /** As written, without "For the" kept or dropped: the heading's passage; null for the unnamed one. */
  readonly heading: Passage | null;
  /** The thing made, lower case: "glaze"; null for the unnamed one. */
  readonly name: string | null;
  readonly listings: readonly Listing[];
}

export interface Step {
  readonly index: number;
  /** The number printed before it, where there is one. */
  readonly number: number | null;
  readonly passage: Passage;
  /** The heading over this group of steps ("Make the glaze"), if any. */
  readonly heading: Passage | null;
}

export type TimeKind = 'prep' | 'cook' | 'total' | 'rest' | 'other';

/** A stated time: "Prep time: 10 min". */
export interface StatedTime {
  readonly kind: TimeKind;
  /** The label with the value. */
  readonly passage: Passage;
  /** The value alone. */
  readonly value: Passage;
}

export interface StatedYield {
  /** The words that state it, with the label. */
  readonly passage: Passage;
  /** Null when it is blank or says nothing that can be counted ("??", "depends"). */
  readonly parsed: Yield | null;
}

export interface Recipe {
  readonly file: string;
  /** Null when the page gives none. */
  readonly title: Passage | null;
  /** All of it: from the title, or its first part, to its last. */
  readonly span: Span;
  readonly headnote: readonly Passage[];
  readonly yield: StatedYield | null;
  /** Every place that states one, that one included, in the order of the page's parts; front matter comes last. */
  readonly yields: readonly StatedYield[];
  readonly times: readonly StatedTime[];
  readonly components: readonly Component[];
  /** Those of all components, in order. */
  readonly listings: readonly Listing[];
  readonly steps: readonly Step[];
  readonly notes: readonly Passage[];
  readonly storage: readonly Passage[];
  readonly nutrition: readonly Passage[];
  readonly equipment: readonly Passage[];
  /** Text inside the recipe that is none of these. */
  readonly rest: readonly Passage[];
}

/** What a file holds. */
export interface Contents {
  readonly recipes: readonly Recipe[];
  /** Stretches that look like a recipe whose list or method cannot be told apart, each with why. */
  readonly unclear: readonly { readonly span: Span; readonly why: string }[];
}
