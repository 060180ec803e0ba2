/** What a manuscript has to decide about its wording, and the places where it decided. */
import type { Amount } from '../../grammar/types.js';
import type { Passage } from '../../manuscript/passage.js';

/**
 * What there is to decide:
 * term: which of a food's names; spelling: how a word is spelled; unit: how a unit is written; number: how one that is
 * not whole; range; degree: how a temperature; scales: which scales, and which first; yield; title: its capitals;
 * capital: the first letter of a list's line; opening: a sentence that opens with a numeral.
 */
export type Aspect =
  | 'term'
  | 'spelling'
  | 'unit'
  | 'number'
  | 'range'
  | 'degree'
  | 'scales'
  | 'yield'
  | 'title'
  | 'capital'
  | 'opening';

/** A place where the manuscript writes something in one of several forms. */
export interface Usage {
  readonly aspect: Aspect;
  /** What is decided: a unit's id, a food's name, "range". */
  readonly about: string;
  /** How it is written there, so that equal forms are equal: "tbsp.", "3 to 5". */
  readonly form: string;
  /** As it is shown to people, where that is not the form: "caramelized" for the beginning "carameliz". */
  readonly shown?: string;
  readonly passage: Passage;
  /** Offsets into the passage's text. */
  readonly start: number;
  readonly end: number;
  /** Another form that it may be as well: before the end of a sentence, "min." is "min" and "min." */
  readonly either?: string;
  /** The amount beside a unit. */
  readonly amount?: Amount;
}
