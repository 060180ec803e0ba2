/** What a book has decided for itself: the part of its house style that rules ask for. */
import type { System } from '../arithmetic/units.js';

export interface HouseStyle {
  /** What a bare "cup", "pint" or "tablespoon" means; null where the book has not said. */
  readonly system: System | null;
  /** How much is asked of kitchen hygiene: notes of the worst, the full wording at every touch, or nothing. */
  readonly hygiene: 'notes' | 'full' | 'off';
}

/** The style of a book that has decided nothing. */
export const undecided: HouseStyle = { system: null, hygiene: 'notes' };
