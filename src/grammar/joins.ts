/** Knows how two quantities side by side are one: a range, a sum, a pack, the same said twice, one length by another. */
import Fraction from 'fraction.js';
import { unitById } from '../larder/units.js';
import {
  type Draft,
  isSingle,
  isWeighed,
  ONE,
  packOf,
  type Quantity,
  secondsOf,
  sizeNumber,
} from './drafts.js';
import { addPart, inUnit, isRestOf, isSmallerOfKind, lastPart } from './sums.js';
import { endOf, type KitchenToken } from './tokens.js';
import type { Amount, Count, Dimension, Duration, Measure, Scale, Temperature } from './types.js';

export type Connector =
  | 'next'
  | 'slash'
  | 'or'
  | 'and'
  | 'plus'
  | 'to'
  | 'dash'
  | 'times'
  | 'by'
  | 'equals'
  | 'comma';

/** The one quantity that the two are together; null when they are two. */
export function join(left: Draft, how: Connector, right: Draft): Draft | null {
  if (isFull(left.item)) return null;
  const item = joinItems(left, how, right);
  if (item === null) return null;
  const ranged = how === 'to' || how === 'dash' || how === 'or';
  return { item, style: 'figure', tokens: [...left.tokens, ...right.tokens], implied: false, ranged };
}

/** No cook says a thing in more ways than this; the bound keeps a hostile line's cost in proportion. */
const MOST_PARTS = 6;

function isFull(item: Quantity): boolean {
  if (item.kind === 'dimension') return item.lengths.length >= MOST_PARTS;
  if (item.kind === 'temperature') return item.equals.length >= MOST_PARTS;
  return item.kind === 'measure' && item.equals.length + item.plus.length >= MOST_PARTS;
}

/** What parentheses after a quantity make of it: "(1.4 kg)" after pounds, "(14 ounces)" after a number of cans. */
export function joinGroup(left: Draft, group: readonly Draft[], end: number): Draft | null {
  if (isFull(left.item) || group.length > MOST_PARTS) return null;
  const items = group.map((draft) => draft.item);
  const item = groupItems(left, items, end);
  return item === null ? null : { ...left, item, implied: false };
}

/** "2 (14-ounce)" and then "cans"; "400 g (14 oz)" and then "can". */
export function joinPack(left: Draft, token: KitchenToken): Draft | null {
  const { item } = left;
  const unit = token.payload?.unit ?? null;
  if (item.kind !== 'measure' || unit === null) return null;
  const end = endOf(token);
  if (item.unit === null && item.pack !== null) {
    const { pack } = item;
    // "2 (250 g) cups": nothing is packed in cups, so the weight says the same.
    const same = unit.kind === 'volume' || unit.kind === 'mass';
    const said = same ? { pack: null, equals: [{ ...pack, equals: [] }, ...pack.equals] } : {};
    return { ...left, item: { ...item, ...said, unit: unit.id, end } };
  }
  if (!isWeighed(item) || unit.kind !== 'container') return null;
  return { ...left, item: packOf(ONE, item, unit.id, item.start, end), implied: true };
}

const MOST_PACKS = 60;
/** The ends of a range of sizes are not further apart than this; "1-15 oz can" is one can. */
const MOST_SPREAD = 4;
/** No oven or pan of ours is given in a number below this in Fahrenheit and above it in Celsius. */
const HOTTEST_CELSIUS = 260;
/** A smaller number beside a temperature is a mark or a fraction: "6/180°". */
const COOLEST_BESIDE = 30;
/** Sides of a tin without a unit: inches up to here, centimetres above. */
const LONGEST_SIDE_INCHES = 20;
const SHORTEST_SIDE = 4;
const LONGEST_SIDE = 60;

function joinItems(left: Draft, how: Connector, right: Draft): Quantity | null {
  const { item } = left;
  switch (item.kind) {
    case 'count':
      return joinCount(left, item, how, right);
    case 'measure':
      return joinMeasure(left, item, how, right);
    case 'duration':
      return joinDuration(left, item, how, right);
    case 'dimension':
      return joinDimension(item, how, right.item);
    case 'temperature':
      return joinTemperature(item, how, right);
  }
}

function joinCount(left: Draft, item: Count, how: Connector, right: Draft): Quantity | null {
  const next = right.item;
  const { start, amount } = item;
  const { end } = next;
  const ranges = how === 'dash' || ((how === 'to' || how === 'or') && right.implied);
  if (ranges && next.kind === 'measure' && next.pack !== null && isNear(amount, next.pack.amount)) {
    // "400-500 g can", "4 to 5 quart pot": the pack has a range of sizes.
    return { ...next, start, pack: { ...next.pack, start, amount: range(amount, next.pack.amount) } };
  }
  if (how === 'next' || how === 'times' || how === 'by' || (how === 'dash' && right.implied)) {
    if (next.kind === 'measure' && isPlainCount(left, item)) {
      if (right.implied) return { ...next, amount, start };
      if (isWeighed(next)) return packOf(amount, next, null, start, end);
    }
    if (how === 'next' || how === 'dash') return null;
    if (next.kind === 'dimension') return joinSides(amount, next, start);
    return next.kind === 'count' ? guessedSides(item, next) : null;
  }
  if (how === 'slash') {
    if (next.kind !== 'temperature' || amount.low.lt(COOLEST_BESIDE)) return null;
    const scale = scaleBeside(amount, next);
    return {
      ...next,
      start,
      end,
      amount,
      scale,
      fan: false,
      equals: [plainTemperature(next), ...next.equals],
    };
  }
  if (how !== 'to' && how !== 'dash' && how !== 'or') return null;
  if (!isSingle(amount) || left.ranged || left.style === 'article') return null;
  if (how === 'dash' && next.kind === 'measure' && isMixed(left, next.amount)) {
    // "1 - 2/3 cups" is no range downwards.
    return { ...next, start, amount: { ...amount, ...sum(left, amount, next.amount) } };
  }
  switch (next.kind) {
    case 'count':
      return isSingle(next.amount) ? { ...item, end, amount: range(amount, next.amount) } : null;
    case 'measure':
      if (next.share || !isSingle(next.amount) || next.plus.length > 0) return null;
      return { ...next, start, amount: range(amount, next.amount) };
    case 'duration':
      return next.seconds === null
        ? null
        : { ...next, start, seconds: range(secondsOf(amount, next.unit), next.seconds) };
    case 'temperature':
      return isSingle(next.amount) ? { ...next, start, amount: range(amount, next.amount) } : null;
    case 'dimension': {
      const [first, ...others] = next.lengths;
      if (others.length > 0 || !isSingle(first!.amount)) return null;
      return { ...next, start, lengths: [{ ...first!, amount: range(amount, first!.amount) }] };
    }
  }
}

function joinMeasure(draft: Draft, left: Measure, how: Connector, right: Draft): Measure | null {
  const next = right.item;
  const { end } = next;
  if (next.kind === 'count') {
    // "three ounces and a half"
    const half = how === 'and' && right.style === 'fraction' && isSingle(left.amount) && left.unit !== null;
    return half
      ? { ...left, end, amount: { ...left.amount, ...sum(draft, left.amount, next.amount) } }
      : null;
  }
  if (next.kind !== 'measure' || next.share || left.share || next.unit === null) return null;
  // "half a 400 g tin"
  if (left.unit === null) {
    return how === 'next' && right.implied ? { ...next, start: left.start, amount: left.amount } : null;
  }
  const same = left.unit === next.unit;
  switch (how) {
    case 'next':
    case 'and':
      return isSmallerOfKind(lastPart(left), next) ? addPart(left, next, end) : null;
    case 'comma':
      return isRestOf(lastPart(left), next) ? addPart(left, next, end) : null;
    case 'plus':
      return { ...left, end, plus: [...left.plus, next] };
    case 'or':
    case 'to':
    case 'dash': {
      const bounds =
        left.plus.length === 0 && left.equals.length === 0 && left.pack === null && next.pack === null;
      const high = bounds ? inUnit(next, left.unit) : null;
      const rises =
        high !== null && isSingle(left.amount) && isSingle(high) && left.amount.low.mul(RISE).lt(high.low);
      if ((how === 'to' || same || (how === 'dash' && rises)) && high !== null && isSingle(left.amount)) {
        return { ...left, end, amount: range(left.amount, high) };
      }
      return how === 'to' || same ? null : { ...left, end, equals: [...left.equals, next] };
    }
    case 'slash':
    case 'equals':
      return same ? null : { ...left, end, equals: [...left.equals, next] };
    default:
      return null;
  }
}

/** The higher end of a range is higher by more than a rounded conversion is off. */
const RISE = new Fraction(6, 5);

function joinDuration(draft: Draft, left: Duration, how: Connector, right: Draft): Duration | null {
  const next = right.item;
  const { end } = next;
  if (left.seconds === null) return null;
  if (next.kind === 'count') {
    if (how === 'and' && right.style === 'fraction') {
      return {
        ...left,
        end,
        seconds: { ...left.seconds, ...sum(draft, left.seconds, secondsOf(next.amount, left.unit)) },
      };
    }
    const minutes =
      how === 'next' && left.unit === 'hour' && next.start === left.end && isSingle(next.amount);
    return minutes
      ? {
          ...left,
          end,
          seconds: { ...left.seconds, ...sum(draft, left.seconds, secondsOf(next.amount, 'minute')) },
        }
      : null;
  }
  if (next.kind !== 'duration' || next.seconds === null) return null;
  if (how === 'to' || how === 'dash' || how === 'or') {
    return isSingle(left.seconds) && isSingle(next.seconds)
      ? { ...left, end, seconds: range(left.seconds, next.seconds) }
      : null;
  }
  const smaller = sizeNumber(next.unit).lt(sizeNumber(left.unit));
  if (how === 'plus' || ((how === 'next' || how === 'and' || how === 'comma') && smaller)) {
    return { ...left, end, seconds: { ...left.seconds, ...sum(draft, left.seconds, next.seconds) } };
  }
  return null;
}

function joinDimension(left: Dimension, how: Connector, next: Quantity): Dimension | null {
  if (how === 'times' || how === 'by') {
    const unit = left.lengths[0]!.unit;
    if (next.kind === 'count') {
      return { ...left, end: next.end, lengths: [...left.lengths, { amount: next.amount, unit }] };
    }
    return next.kind === 'dimension'
      ? { ...left, end: next.end, lengths: [...left.lengths, ...next.lengths] }
      : null;
  }
  if (how !== 'to' && how !== 'dash' && how !== 'or') return null;
  if (next.kind !== 'dimension' || next.lengths.length > 1 || left.lengths.length > 1) return null;
  const [low, high] = [left.lengths[0]!, next.lengths[0]!];
  if (low.unit !== high.unit || !isSingle(low.amount) || !isSingle(high.amount)) return null;
  return { ...left, end: next.end, lengths: [{ unit: low.unit, amount: range(low.amount, high.amount) }] };
}

function joinTemperature(left: Temperature, how: Connector, right: Draft): Temperature | null {
  const next = right.item;
  const ranging = how === 'to' || how === 'dash' || how === 'or';
  if (next.kind === 'count') {
    if (!ranging || right.style !== 'figure' || !isSingle(left.amount) || !isSingle(next.amount)) return null;
    return { ...left, end: next.end, amount: range(left.amount, next.amount) };
  }
  if (next.kind !== 'temperature' || how === 'plus' || how === 'and') return null;
  const scale = left.scale ?? next.scale;
  const alike = left.scale === next.scale || next.scale === null || left.scale === null;
  if (alike && left.fan === next.fan) {
    if (how === 'to' && isOvenThenFood(left, next)) return null;
    if (!ranging || !isSingle(left.amount) || !isSingle(next.amount)) return null;
    return { ...left, end: next.end, scale, amount: range(left.amount, next.amount) };
  }
  if (how === 'to') return null;
  return { ...left, end: next.end, equals: [...left.equals, plainTemperature(next), ...next.equals] };
}

/** "Roast at 400°F to 145°F": an oven's temperature, and what the food comes to, which cannot boil; no range. */
function isOvenThenFood({ scale, amount }: Temperature, next: Temperature): boolean {
  if (scale === null || scale === 'gas' || next.scale !== scale) return false;
  const boiling = scale === 'celsius' ? BOILING_CELSIUS : BOILING_FAHRENHEIT;
  return amount.low.gt(boiling) && next.amount.low.lt(boiling);
}

const BOILING_CELSIUS = 100;
const BOILING_FAHRENHEIT = 212;

function groupItems(left: Draft, items: readonly Quantity[], end: number): Quantity | null {
  const { item } = left;
  if (items.length === 0) return null;
  if (items.every((one) => one.kind === 'measure')) {
    if (items.some((one) => one.unit === null || one.share)) return null;
    const [first, ...others] = items;
    if (item.kind === 'count') {
      if (item.amount.high.gt(MOST_PACKS) || !isWeighed(first!)) return null;
      const pack = { ...first!, equals: [...first!.equals, ...others] };
      return packOf(item.amount, pack, null, item.start, end);
    }
    if (item.kind !== 'measure') return null;
    if (item.pack !== null)
      return { ...item, end, pack: { ...item.pack, equals: [...item.pack.equals, ...items] } };
    if (item.unit === null) return null;
    if (unitById(item.unit).kind === 'container') {
      return { ...item, end, pack: { ...first!, equals: [...first!.equals, ...others] } };
    }
    if (item.plus.length > 0 && item.equals.length > 0) {
      const last = item.plus[item.plus.length - 1]!;
      return {
        ...item,
        end,
        plus: [...item.plus.slice(0, -1), { ...last, equals: [...last.equals, ...items] }],
      };
    }
    return { ...item, end, equals: [...item.equals, ...items] };
  }
  if (item.kind === 'temperature' && items.every((one) => one.kind === 'temperature')) {
    const equals = items.flatMap((one) => [plainTemperature(one), ...one.equals]);
    return { ...item, end, equals: [...item.equals, ...equals] };
  }
  return null;
}

function joinSides(amount: Amount, next: Dimension, start: number): Dimension {
  const { unit } = next.lengths[0]!;
  return { ...next, start, lengths: [{ amount, unit }, ...next.lengths] };
}

/** "9×13" alone: the sides of a tin. */
function guessedSides(left: Count, right: Count): Dimension | null {
  const sides = [left.amount, right.amount];
  if (!sides.every((side) => isSingle(side) && side.low.gte(SHORTEST_SIDE) && side.low.lte(LONGEST_SIDE)))
    return null;
  const unit = sides.some((side) => side.low.gt(LONGEST_SIDE_INCHES)) ? 'centimeter' : 'inch';
  return {
    kind: 'dimension',
    start: left.start,
    end: right.end,
    lengths: sides.map((amount) => ({ amount, unit })),
  };
}

/** The scale of the first number in "350/180C" or "180/160C fan". */
function scaleBeside(amount: Amount, next: Temperature): Scale | null {
  if (next.scale === 'celsius' && amount.low.gt(HOTTEST_CELSIUS)) return 'fahrenheit';
  if (next.scale === 'fahrenheit' && amount.low.lt(HOTTEST_CELSIUS) && next.amount.low.gt(HOTTEST_CELSIUS))
    return 'celsius';
  return next.scale === 'gas' ? null : next.scale;
}

function plainTemperature(item: Temperature): Temperature {
  return item.equals.length === 0 ? item : { ...item, equals: [] };
}

function range(low: Amount, high: Amount): Amount {
  return { low: low.low, high: high.high, approximation: low.approximation ?? high.approximation };
}

function sum(draft: Draft, a: Amount, b: Amount): { low: Fraction; high: Fraction } {
  return { low: draft.ranged ? a.low : a.low.add(b.low), high: a.high.add(b.high) };
}

function isMixed(left: Draft, fraction: Amount): boolean {
  return (
    left.style === 'figure' &&
    isPlainAmount(left.item) &&
    isSingle(fraction) &&
    fraction.low.lt(1) &&
    fraction.low.n > 0n
  );
}

function isPlainAmount(item: Quantity): boolean {
  return item.kind === 'count' && item.amount.low.d === 1n && item.amount.low.gte(1);
}

function isNear(a: Amount, b: Amount): boolean {
  return a.low.mul(MOST_SPREAD).gt(b.high);
}

function isPlainCount(left: Draft, item: Count): boolean {
  return left.style !== 'fraction' && item.amount.high.lte(MOST_PACKS) && item.amount.high.d === 1n;
}
