/** Judges what a recipe says twice: whether both measures are one amount, by which arithmetic, and in which system of cups and spoons. */
import type Fraction from 'fraction.js';
import { sumMeasures } from '../arithmetic/compare.js';
import { type Agreement, type Bounds, best, bookRounding, boundsAgreement } from '../arithmetic/tolerance.js';
import { baseUnits, SYSTEMS, type System, unitSize } from '../arithmetic/units.js';
import { volumeWeightAgreement, weighVolume } from '../arithmetic/weigh.js';
import type { Measure } from '../grammar/types.js';
import { foodsOfClass, isAnyOf } from '../larder/food-classes.js';
import { toleranceFor } from '../larder/tolerances.js';
import type { Food, ToleranceName } from '../larder/types.js';
import { unitById } from '../larder/units.js';
import { once } from '../manuscript/once.js';
import type { Passage } from '../manuscript/passage.js';
import { measuresSaidTwice, type SaidTwice } from './said-twice.js';
import type { Dish } from './types.js';

/** What one of the two measures comes to, and what the other says. */
export interface Judgement {
  readonly agreement: Agreement;
  readonly from: Measure;
  readonly to: Measure;
  /** What `from` comes to, in `unit`, the base of a kind. */
  readonly expected: Bounds;
  readonly unit: string;
  /** The food through whose weight the two are related; null where they are of one kind. */
  readonly food: Food | null;
  /** An ounce of weight was turned into milliliters as if it were a fluid ounce. */
  readonly asFluid: boolean;
  /** Whether they are as near as the sizes of one system's cup in print, so that they speak for the system. */
  readonly close?: boolean;
}

export interface Dual extends SaidTwice {
  /** Null where nothing that is known relates the two. */
  readonly judgement: Judgement | null;
  /** Those in which the two agree: all, where the system makes no difference. */
  readonly systems: readonly System[];
}

/**
 * Every dual measure of the recipe, judged in the book's system; where it has decided none, in the systems that make
 * the most of the recipe's own duals right.
 */
export function dualsOf(dish: Dish, system: System | null): Dual[] {
  const judged = judgedPairs(dish);
  if (judged.length === 0) return [];
  // British books measure by metric spoons and imperial pints: spoons say nothing of pints, though quarts do of cups.
  const ofCups = system === null ? likeliest(judged) : [system];
  const ofPints = system === null ? likeliest(judged.filter(({ pair }) => isOfPints(pair))) : [system];
  const rounded = roundedByBook(judged.map(({ pair }) => pair));
  return judged.map(({ pair, by }) => {
    const systems = isOfPints(pair) ? ofPints : ofCups;
    const fitting = system === null ? possible(pair, systems) : systems;
    const found = better(fitting.flatMap((each) => by.get(each) ?? []));
    const right = possible(pair, SYSTEMS).filter((each) => by.get(each)?.agreement === 'right');
    // A tablespoon of 20 mL among US cups is another country's spoon: something to ask, and no wrong arithmetic.
    const elsewhere = system === null && right.length > 0 && found?.agreement === 'wrong';
    const agreement = rounded.has(pair) ? 'right' : elsewhere ? 'loose' : found?.agreement;
    return {
      ...pair,
      judgement: found === null || agreement === undefined ? null : { ...found, agreement },
      systems: right,
    };
  });
}

/** The duals whose measures are not one amount: of several about the same words, the worst. */
export function wrongDuals(all: readonly Dual[]): Dual[] {
  const worst = new Map<string, Dual>();
  for (const dual of all) {
    const { judgement, passage, first } = dual;
    if (judgement === null || judgement.agreement === 'right') continue;
    const place = `${passage.span(first.start, first.end).start}`;
    if (
      worst.get(place)?.judgement?.agreement !== 'wrong' &&
      (judgement.agreement === 'wrong' || !worst.has(place))
    )
      worst.set(place, dual);
  }
  return [...worst.values()];
}

/** The passages that hold a dual measure which is wrong: what contradicts itself there is marked as that, and once. */
export function contradicted(dish: Dish, system: System | null): ReadonlySet<Passage> {
  return new Set(wrongDuals(dualsOf(dish, system)).map((dual) => dual.passage));
}

/** An amount in the base of its kind. */
interface Sized extends Bounds {
  readonly unit: string;
}

const OUNCE = 'ounce';
const FLUID_OUNCE = 'fluid-ounce';
const POURED = foodsOfClass('poured');
const KINDS: ReadonlyMap<string, ToleranceName> = new Map([
  [baseUnits.volume, 'volume'],
  [baseUnits.mass, 'mass'],
  [baseUnits.length, 'length'],
]);

/** Whether a pair is of pints, quarts or fluid ounces, which have imperial sizes and no metric ones. */
function isOfPints({ first, second }: SaidTwice): boolean {
  return [first, second].some(({ unit }) => {
    const elsewhere = unit === null ? {} : unitById(unit).elsewhere;
    return elsewhere.imperial !== undefined && elsewhere.metric === undefined;
  });
}

interface Judged {
  readonly pair: SaidTwice;
  readonly by: ReadonlyMap<System, Judgement>;
}

const judgedPairs = once((dish: Dish): readonly Judged[] =>
  measuresSaidTwice(dish).map((pair) => ({ pair, by: bySystem(pair) })),
);

function bySystem(pair: SaidTwice): ReadonlyMap<System, Judgement> {
  const found = new Map<System, Judgement>();
  const everywhere = !differsBySystem(pair.first, pair.second) && !differsBySystem(pair.second, pair.first);
  const one = everywhere ? judge(pair, 'us-customary') : null;
  for (const system of SYSTEMS) {
    const judgement = everywhere ? one : judge(pair, system);
    if (judgement !== null) found.set(system, judgement);
  }
  return found;
}

/** Whether a measure holds a unit of some size here and another there; an ounce beside a volume may be fluid. */
function differsBySystem(measure: Measure, other: Measure): boolean {
  const { unit, plus, pack } = measure;
  const fluid = unit === OUNCE && other.unit !== null && unitById(other.unit).kind === 'volume';
  const own = unit !== null && Object.keys(unitById(unit).elsewhere).length > 0;
  return (
    fluid ||
    own ||
    plus.some((each) => differsBySystem(each, other)) ||
    (pack !== null && differsBySystem(pack, other))
  );
}

function likeliest(judged: readonly Judged[]): readonly System[] {
  const counts = SYSTEMS.map(
    (system) =>
      judged.filter(
        ({ pair, by }) =>
          by.get(system)?.close === true && [pair.first, pair.second].every((each) => isOf(each, system)),
      ).length,
  );
  const most = Math.max(...counts);
  return SYSTEMS.filter((_, index) => counts[index] === most);
}

/** Those of the systems that both measures may be of; US customary where none is. */
function possible({ first, second }: SaidTwice, systems: readonly System[]): readonly System[] {
  const found = systems.filter((system) => isOf(first, system) && isOf(second, system));
  return found.length > 0 ? found : ['us-customary'];
}

/**
 * Whether a page that does not say so may mean the system's size of the unit. Metric cups know no quart, so a quart of
 * 946 mL speaks for US measures; and nobody's recipes mean the half pint of 284 mL by a cup, though they mean its pint.
 */
export function isOf({ unit }: Pick<Measure, 'unit'>, system: System): boolean {
  if (unit === null) return true;
  const { kind, elsewhere } = unitById(unit);
  if (kind !== 'volume' || Object.keys(elsewhere).length === 0) return true;
  if (system === 'imperial') return elsewhere.metric === undefined;
  return (system !== 'metric' && system !== 'australian') || elsewhere[system] !== undefined;
}

function judge(pair: SaidTwice, system: System): Judgement | null {
  const [there] = contents(pair.second, system);
  if (there === undefined) return null;
  return better(
    contents(pair.first, system, pair.packed).flatMap((here) => related(pair, here, there, system) ?? []),
  );
}

/** How the two agree, each in its base; null where nothing relates their kinds. */
function related(pair: SaidTwice, here: Sized, there: Sized, system: System): Judgement | null {
  const { first, second } = pair;
  const kind = here.unit === there.unit ? KINDS.get(here.unit) : undefined;
  if (kind !== undefined) {
    const agreement = boundsAgreement(here, there, toleranceFor(kind));
    // The reader is shown a cup in milliliters and an ounce in grams, whichever comes first.
    const turned = isMetric(first) && !isMetric(second);
    return {
      agreement,
      from: turned ? second : first,
      to: turned ? first : second,
      expected: turned ? there : here,
      unit: here.unit,
      food: null,
      asFluid: false,
      close: isClose(here.low, there.low) && isClose(here.high, there.high),
    };
  }
  if (here.unit === baseUnits.volume && there.unit === baseUnits.mass)
    return weighed(pair, [first, here], [second, there], system);
  if (here.unit === baseUnits.mass && there.unit === baseUnits.volume)
    return weighed(pair, [second, there], [first, here], system);
  return null;
}

/** A volume beside a weight. An ounce of what is poured may be fluid; of anything else it is a weight. */
function weighed(
  pair: SaidTwice,
  [volume, milliliters]: readonly [Measure, Sized],
  [weight, grams]: readonly [Measure, Sized],
  system: System,
): Judgement | null {
  const { foods } = pair;
  if (foods.length === 0) return null;
  const ounces = weight.pack ?? weight;
  if (ounces.unit === OUNCE && isMetric(volume)) {
    const fluid = asFluidOunces(grams, system);
    const agreement = boundsAgreement(fluid, milliliters, toleranceFor('volume'));
    const poured = foods.some((food) => isAnyOf(food, POURED));
    if (poured)
      return {
        agreement,
        from: ounces,
        to: volume,
        expected: fluid,
        unit: fluid.unit,
        food: null,
        asFluid: false,
      };
    if (agreement === 'right')
      return {
        agreement: 'wrong',
        from: ounces,
        to: volume,
        expected: grams,
        unit: grams.unit,
        food: null,
        asFluid: true,
      };
  }
  if (pair.changed) return null;
  return better(
    foods.flatMap((food) => {
      const agreement = volumeWeightAgreement(food, milliliters, grams, pair.words);
      const expected = weighVolume(food, milliliters, pair.words)?.grams;
      if (agreement === null || expected === undefined) return [];
      return [{ agreement, from: volume, to: weight, expected, unit: baseUnits.mass, food, asFluid: false }];
    }),
  );
}

/** What a measure may come to: as it stands, or the content of its pack, of one or of all; none where it has no size. */
function contents(measure: Measure, system: System, packed = false): Sized[] {
  if (measure.pack !== null) {
    const { low, high } = measure.amount;
    return contents(measure.pack, system).flatMap((one) => [
      { unit: one.unit, low: one.low.mul(low), high: one.high.mul(high) },
      one,
    ]);
  }
  const sum = sumMeasures([measure], system);
  if (sum === null || sum.unit === null || !KINDS.has(sum.unit)) return [];
  const whole = { unit: sum.unit, low: sum.low, high: sum.high };
  const part = packed ? fractionAlone(measure) : null;
  return part === null ? [whole] : [whole, ...contents(part, system)];
}

/** "1 1/4 oz packet" may be one packet of a quarter ounce. */
function fractionAlone(measure: Measure): Measure | null {
  const { low, high } = measure.amount;
  const part = low.mod(1);
  if (!low.equals(high) || part.equals(0) || part.equals(low)) return null;
  return { ...measure, amount: { ...measure.amount, low: part, high: part } };
}

function asFluidOunces(grams: Sized, system: System): Sized {
  const ounce = unitSize(OUNCE)!.value;
  const fluid = unitSize(FLUID_OUNCE, system)!.value;
  return {
    unit: baseUnits.volume,
    low: grams.low.div(ounce).mul(fluid),
    high: grams.high.div(ounce).mul(fluid),
  };
}

/** Whether a measure is written in grams, milliliters and the like, whose size no system changes. */
function isMetric({ unit }: Measure): boolean {
  const size = unit === null ? null : unitSize(unit);
  return size !== null && METRIC.some((each) => size.value.equals(each));
}

const METRIC = [1, 10, 100, 1000];

/** The pairs that a coarse rounding of whole books makes right, where at least half of the recipe's pairs keep to it. */
function roundedByBook(pairs: readonly SaidTwice[]): ReadonlySet<SaidTwice> {
  const alike = pairs.flatMap((pair) => {
    const [here] = contents(pair.first, 'us-customary');
    const [there] = contents(pair.second, 'us-customary');
    if (here === undefined || here.unit !== baseUnits.mass || there?.unit !== here.unit) return [];
    return [{ pair, rounding: bookRounding(here, there) }];
  });
  const rounded = alike.filter((each) => each.rounding !== null);
  const keeps = rounded.length * 2 >= alike.length;
  return new Set(rounded.flatMap(({ pair, rounding }) => (keeps || rounding === 'always' ? [pair] : [])));
}

/** A cup of 236.6 mL is printed as 240, one of 250 as 250: nearer than the two are to each other. */
const ONE_CUP = 0.02;

function isClose(one: Fraction, other: Fraction): boolean {
  const [a, b] = [one.valueOf(), other.valueOf()];
  return Math.abs(a - b) <= ONE_CUP * Math.max(a, b);
}

function better(all: readonly Judgement[]): Judgement | null {
  const good = best(all.map((each) => each.agreement));
  return all.find((each) => each.agreement === good) ?? null;
}
