/** Recomputes one measure of a dual from the other: the number as the book rounds it, in the author's own unit and notation. */
import type Fraction from 'fraction.js';
import { toBase } from '../arithmetic/convert.js';
import { type System, unitSize } from '../arithmetic/units.js';
import { isSmallMetric, kitchenRound } from '../arithmetic/write.js';
import { printFraction } from '../grammar/print.js';
import type { Extent, Measure } from '../grammar/types.js';
import { fold, plurals } from '../larder/names.js';
import { unitById, unitWord } from '../larder/units.js';
import type { Dual } from './duals.js';

export interface Recomputed extends Extent {
  /** The measure that is kept, and the new words for the other. */
  readonly kept: string;
  readonly text: string;
  readonly keeps: 'first' | 'second';
}

/** The ways to make a dual of one kind agree, the first keeping its first measure; none where a range or the food's weight is in it. */
export function recomputed(dual: Dual, all: readonly Dual[], system: System): Recomputed[] {
  const { first, second, judgement } = dual;
  if (judgement === null || judgement.food !== null) return [];
  if (judgement.asFluid) {
    const text = `${whole(judgement.expected.low, all)} g`;
    return [{ start: second.start, end: second.end, text, kept: ownText(dual, first), keeps: 'first' }];
  }
  return [
    ...from(dual, first, second, 'first', all, system),
    ...from(dual, second, first, 'second', all, system),
  ];
}

/**
 * Whether something else on the page says that the first measure is the right one: a third measure beside it, or a
 * weight that was only taken for a volume.
 */
export function isFirstConfirmed(dual: Dual, all: readonly Dual[]): boolean {
  if (dual.judgement?.asFluid) return true;
  return all.some(
    (other) =>
      other !== dual &&
      other.first.start === dual.first.start &&
      other.passage === dual.passage &&
      other.judgement?.agreement === 'right',
  );
}

/** The words of a measure, without what stands beside it as its equal. */
export function ownText({ passage }: Pick<Dual, 'passage'>, measure: Measure): string {
  const inner = [...measure.equals, ...(measure.pack?.equals ?? [])].sort((a, b) => a.start - b.start);
  const [first] = inner;
  if (first === undefined) return passage.text.slice(measure.start, measure.end);
  const before = passage.text
    .slice(measure.start, Math.min(first.start, measure.end))
    .replace(JOINT_BEFORE, '');
  const after = passage.text.slice(inner[inner.length - 1]!.end, measure.end).replace(JOINT_AFTER, '');
  return after === '' ? before : `${before} ${after}`;
}

const JOINT_BEFORE = /(?:[\s(/,;=~|]|\bor|\babout|\bapprox\.?)+$/;
const JOINT_AFTER = /^[\s)]+/;
/** A number as it stands before its unit. */
const NUMBER = /^(?:about |around |approx\.? |~ ?)?(\d[\d.,]*(?:[ -]\d+)?(?:[/⁄]\d+)?[¼-¾⅐-⅞]?|[¼-¾⅐-⅞])/;

function from(
  dual: Dual,
  kept: Measure,
  changed: Measure,
  keeps: Recomputed['keeps'],
  all: readonly Dual[],
  system: System,
): Recomputed[] {
  const { passage } = dual;
  if (kept.unit === null || changed.unit === null || !isPlain(kept) || !isPlain(changed)) return [];
  const base = toBase(kept.amount.low, kept.unit, system);
  const size = unitSize(changed.unit, system);
  if (base === null || size === null || base.kind !== size.kind) return [];
  const value = kitchenRound(base.value.div(size.value), changed.unit, finestStep(all, changed.unit));
  const old = passage.text.slice(changed.start, changed.end);
  const number = NUMBER.exec(old)?.[1];
  if (number === undefined) return [];
  const start = changed.start + old.indexOf(number);
  const words = /^\s?\p{L}*/u.exec(passage.text.slice(start + number.length, changed.end))![0];
  const text = `${printed(value)}${inNumber(words, value, changed.unit)}`;
  return [{ start, end: start + number.length + words.length, text, kept: ownText(dual, kept), keeps }];
}

/** A single amount, with nothing added. */
function isPlain({ amount, plus, pack }: Measure): boolean {
  return amount.low.equals(amount.high) && plus.length === 0 && pack === null;
}

/** "1.4", "2½": a vulgar fraction where there is one. */
function printed(value: Fraction): string {
  const text = printFraction(value);
  const [, whole = '', part = ''] = /^(?:(\d+) )?(\d+\/\d+)$/.exec(text) ?? [];
  const sign = VULGAR.get(part);
  return sign === undefined ? text : `${whole}${sign}`;
}

const VULGAR = new Map([
  ['1/8', '⅛'],
  ['1/4', '¼'],
  ['1/3', '⅓'],
  ['3/8', '⅜'],
  ['1/2', '½'],
  ['5/8', '⅝'],
  ['2/3', '⅔'],
  ['3/4', '¾'],
  ['7/8', '⅞'],
]);

/** The unit's word in the number that the new amount asks for; a short form stays as it is. */
function inNumber(words: string, value: Fraction, unit: string): string {
  const word = words.trimStart();
  const [name = ''] = unitById(unit).names;
  if (![name, ...plurals(name)].map(fold).includes(fold(word))) return words;
  return `${words.slice(0, words.length - word.length)}${unitWord(unit, value.valueOf())}`;
}

const COARSE = 10;
const FIVE = 5;

/** The step that the right duals of the recipe keep to in grams or milliliters: 1, 5 or 10. */
function finestStep(all: readonly Dual[], unit: string): number {
  if (!isSmallMetric(unit)) return 1;
  const values = all.flatMap(({ second, judgement }) =>
    judgement?.agreement === 'right' && second.unit === unit ? [second.amount.low] : [],
  );
  if (values.length === 0) return FIVE;
  const keeps = (step: number) => values.every((value) => value.mod(step).equals(0));
  return keeps(COARSE) ? COARSE : keeps(FIVE) ? FIVE : 1;
}

function whole(grams: Fraction, all: readonly Dual[]): string {
  return printFraction(kitchenRound(grams, 'gram', finestStep(all, 'gram')));
}
