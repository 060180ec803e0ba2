/** What the grammar makes of a piece of kitchen language. All extents are offsets into the text that was read. */
import type Fraction from 'fraction.js';
import type { Food } from '../larder/types.js';

/** A stretch of the text that was read: UTF-16 offsets from 0, end exclusive. */
export interface Extent {
  readonly start: number;
  readonly end: number;
}

export type Approximation = 'about' | 'scant' | 'heaped' | 'generous' | 'at-least' | 'up-to';

/** An exact amount: a single one has `high` equal to `low`; a range keeps the order in which it was written. */
export interface Amount {
  readonly low: Fraction;
  readonly high: Fraction;
  readonly approximation: Approximation | null;
}

/** An amount with its unit: "1 cup plus 2 tablespoons (150 g)", "2 (14½-ounce) cans", "3 eggs". */
export interface Measure extends Extent {
  readonly kind: 'measure';
  readonly amount: Amount;
  /** The id of a unit of the larder; null when the things themselves are counted. */
  readonly unit: string | null;
  /** What is added to it: "plus 2 tablespoons", "1 lb 2 oz". */
  readonly plus: readonly Measure[];
  /** The same said in other units: "(1.4 kg)", "/ 500 g". */
  readonly equals: readonly Measure[];
  /** The size of one pack or piece: "14½-ounce" in "2 (14½-ounce) cans", "400 g" in "1 x 400 g tin". */
  readonly pack: Measure | null;
  /** Whether a share is taken of something listed: "half the butter", "a third of the dough". Then unit is null. */
  readonly share: boolean;
}

/** Lengths side by side: "9 x 13-inch", "2 cm", "1-inch". */
export interface Dimension extends Extent {
  readonly kind: 'dimension';
  readonly lengths: readonly { readonly amount: Amount; readonly unit: string }[];
}

export type Scale = 'fahrenheit' | 'celsius' | 'gas';

export interface Temperature extends Extent {
  readonly kind: 'temperature';
  readonly amount: Amount;
  /** Null when the text does not say: "350 degrees", "bake at 350". */
  readonly scale: Scale | null;
  readonly fan: boolean;
  /** The same temperature on other scales. */
  readonly equals: readonly Temperature[];
}

export interface Duration extends Extent {
  readonly kind: 'duration';
  /** Seconds; null in "overnight" and the like, whose length is by custom. */
  readonly seconds: Amount | null;
  /** The unit id as written ("minute", "hour", "day"), of the first part. */
  readonly unit: string;
}

/** A number that nothing followed to explain: "step 3", "serves 4". */
export interface Count extends Extent {
  readonly kind: 'count';
  readonly amount: Amount;
}

export interface Word extends Extent {
  readonly kind: 'word';
  readonly text: string;
  /** Lower case, without accents or apostrophes; the form in which the larder is asked. */
  readonly key: string;
  /** Whether a hyphen with no space joins it to the word before: the second half of "all-purpose". */
  readonly hyphenated: boolean;
}

/** A punctuation mark, one character, or "\n". */
export interface Point extends Extent {
  readonly kind: 'point';
  readonly text: string;
}

/** A piece of a text, in the text's order; together they leave out only white space. */
export type Item = Measure | Dimension | Temperature | Duration | Count | Word | Point;

export interface Phrase extends Extent {
  readonly text: string;
}

/** A food as a listing names it. */
export interface ListedFood extends Extent {
  /** As written, without amount, size, state and preparation: "extra-virgin olive oil". */
  readonly text: string;
  /** The same as it is compared and shown: lower case, singular, single spaces. */
  readonly name: string;
  /** The row of the larder that the longest part of its words names; null when the larder has none. */
  readonly row: Food | null;
  /** How it stands to the food before it in the same line. */
  readonly joined: 'first' | 'and' | 'or';
  /** The part that is asked for: "juice" in "juice of 2 limes" and in "1 lime, juiced"; else null. */
  readonly form: string | null;
  /** Its own measures, where an alternative has some: "or 1½ pounds boneless". */
  readonly measures: readonly Measure[];
}

/** A line of an ingredient list, as understood. What was not understood stands in `unread`. */
export interface ListingLine {
  readonly text: string;
  /** Empty when the line states none. */
  readonly measures: readonly Measure[];
  /** Empty when no food was made out. */
  readonly foods: readonly ListedFood[];
  readonly dimensions: readonly Dimension[];
  readonly size: Phrase | null;
  /** State words before the food: "finely chopped", "cold", "boneless". */
  readonly states: readonly Phrase[];
  /** What is done to it, said after the food: "finely chopped", "at room temperature". */
  readonly preparation: readonly Phrase[];
  readonly optional: boolean;
  readonly divided: boolean;
  readonly toTaste: boolean;
  readonly asNeeded: boolean;
  /** "plus more for dusting", "plus extra": the phrase. */
  readonly plusMore: Phrase | null;
  /** "for garnish", "for the pan", "to serve": the phrase. */
  readonly purpose: Phrase | null;
  /** Words in parentheses that are neither measure nor preparation. */
  readonly asides: readonly Phrase[];
  readonly unread: readonly Phrase[];
}

/** How many or how much a recipe gives. */
export interface Yield {
  readonly text: string;
  readonly amount: Amount | null;
  /** "servings", "cookies", "loaf": what is counted, as written; empty when it is servings and unsaid. */
  readonly of: string;
  readonly measures: readonly Measure[];
  readonly dimensions: readonly Dimension[];
}
