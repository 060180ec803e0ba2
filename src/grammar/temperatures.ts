/** Knows what the words and signs around temperatures make of them: degrees below zero, "(fan)", one temperature said on two scales. */
import { lexiconAt } from '../larder/lexicon.js';
import type { Item, Temperature } from './types.js';

/** The items with each temperature settled: its sign, whether a fan oven is meant, and what says the same on another scale. */
export function settleTemperatures(text: string, items: Item[]): Item[] {
  if (!items.some((item) => item.kind === 'temperature')) return items;
  const settled: Item[] = [];
  for (let at = 0; at < items.length; ) {
    const item = items[at]!;
    if (item.kind !== 'temperature') {
      settled.push(item);
      at++;
      continue;
    }
    if (isTurn(items, at, item)) {
      const { start, end, amount } = item;
      settled.push({ kind: 'count', start, end, amount });
      at++;
      continue;
    }
    const [whole, next] = together(text, items, withSign(text, settled, item), at + 1);
    settled.push(withFans(whole));
    at = next;
  }
  return settled;
}

/** "Rotate the tin 180 degrees": the parts of a full turn are no heat, unless "to" or "at" leads to them. */
function isTurn(items: readonly Item[], at: number, item: Temperature): boolean {
  const { low, high } = item.amount;
  if (item.scale !== null || item.equals.length > 0 || !low.equals(high)) return false;
  if (!low.mod(EIGHTH_OF_TURN).equals(0) || low.gt(FULL_TURN)) return false;
  const keys = items
    .slice(Math.max(0, at - TURN_REACH), at + 2)
    .map((each) => (each.kind === 'word' ? each.key : ''));
  const before = items[at - 1];
  if (before?.kind === 'word' && lexiconAt([before.key], 0, 'oven-before') !== null) return false;
  return keys.some((_, word) => lexiconAt(keys, word, 'turning') !== null);
}

/** In "180°C / 350°F (fan 160°C / 325°F)" all behind the fan is for the fan oven. */
function withFans(item: Temperature): Temperature {
  if (item.equals.length < 2) return item;
  const seen = [item];
  let fan = item.fan;
  for (const each of item.equals) {
    const again = seen.some((one) => one.scale === each.scale && one.fan === each.fan);
    const settled = again && fan ? { ...each, fan: true } : each;
    fan ||= settled.fan;
    seen.push(settled);
  }
  return { ...item, equals: seen.slice(1) };
}

/** Turns are told in eighths: 45, 90, 180, 360. */
const EIGHTH_OF_TURN = 45;
const FULL_TURN = 360;
/** How many words before the degrees may say that something is turned. */
const TURN_REACH = 6;
/** How many words and marks may stand between two namings of one temperature: ", or ". */
const WIDEST_BRIDGE = 4;
const MINUS = new Set(['-', '−', '–']);
const CLOSING = new Map([
  ['(', ')'],
  ['[', ']'],
]);
const BETWEEN = new Set([',', ';', '/', '|']);

/** A minus with a space before it and none behind is a sign: "-18°C". */
function withSign(text: string, before: Item[], item: Temperature): Temperature {
  const sign = before.at(-1);
  if (sign?.kind !== 'point' || !MINUS.has(sign.text) || sign.end !== item.start) return item;
  const ahead = text.charAt(sign.start - 1);
  if (sign.start > 0 && !/[\s(/[]/.test(ahead)) return item;
  // "Between 60 -70°F" is a range with a space gone astray.
  const last = before.at(-2);
  if (last !== undefined && last.kind !== 'word' && last.kind !== 'point' && last.kind !== 'temperature')
    return item;
  before.pop();
  const { low, high } = item.amount;
  return { ...item, start: sign.start, amount: { ...item.amount, low: low.neg(), high: high.neg() } };
}

/** The temperature with all that is said of it right behind, and the place of the first item that is not. */
function together(
  text: string,
  items: readonly Item[],
  first: Temperature,
  from: number,
): [Temperature, number] {
  let whole = first;
  let at = from;
  for (;;) {
    const [kinded, afterKind] = withKind(items, whole, at);
    whole = kinded;
    at = afterKind;
    const bridge = bridgeAt(items, at);
    if (bridge === null) return [whole, at];
    const sign: Item[] = items.slice(at, bridge.to);
    const stated = items[bridge.to] as Temperature;
    const [other, next] = withKind(items, withSign(text, sign, stated), bridge.to + 1);
    if (!saysTheSame(whole, other)) return [whole, at];
    const closed = bridge.closing !== null && isPoint(items[next], bridge.closing);
    if (bridge.closing !== null && !closed) return [whole, at];
    at = closed ? next + 1 : next;
    whole = {
      ...whole,
      end: items[at - 1]!.end,
      equals: [...whole.equals, { ...other, equals: [] }, ...other.equals],
    };
  }
}

/** A temperature with the kind of oven said behind it: "(fan)", "conventional"; the ordinary oven needs no name. */
function withKind(items: readonly Item[], item: Temperature, from: number): [Temperature, number] {
  const opening = items[from];
  const closing = opening?.kind === 'point' ? CLOSING.get(opening.text) : undefined;
  const start = closing === undefined ? from : from + 1;
  const kind = ovenKindAt(items, start);
  if (kind === null) return [item, from];
  const end = start + kind.length;
  if (closing !== undefined && !isPoint(items[end], closing)) return [item, from];
  const next = closing === undefined ? end : end + 1;
  const last = item.equals.length - 1;
  const settled = { ...item, end: items[next - 1]!.end };
  if (!kind.fan) return [settled, next];
  if (last < 0) return [{ ...settled, fan: true }, next];
  // In "350°F / 160°C fan" the fan belongs to what was said last.
  return [
    { ...settled, equals: item.equals.map((one, at) => (at === last ? { ...one, fan: true } : one)) },
    next,
  ];
}

function ovenKindAt(items: readonly Item[], from: number): { fan: boolean; length: number } | null {
  const keys: string[] = [];
  for (let at = from; at < items.length && keys.length < WIDEST_BRIDGE; at++) {
    const item = items[at]!;
    if (item.kind === 'word') keys.push(item.key);
    else if (item.kind !== 'point' || item.text !== '-') break;
    else return null;
  }
  const plain = lexiconAt(keys, 0, 'plain-oven');
  if (plain !== null) return { fan: false, length: plain.length };
  // "With the fan" sets the oven's kind as "fan" does.
  const fan = lexiconAt(keys, 0, 'fan') ?? lexiconAt(keys, 0, 'fan-after');
  return fan === null ? null : { fan: true, length: fan.length };
}

/** What leads from one temperature to another that says the same: ", or", "(", "/", "; ". */
function bridgeAt(items: readonly Item[], from: number): { to: number; closing: string | null } | null {
  let closing: string | null = null;
  for (let at = from; at < items.length && at <= from + WIDEST_BRIDGE; at++) {
    const item = items[at]!;
    if (item.kind === 'temperature') return at === from ? null : { to: at, closing };
    if (item.kind === 'word' && lexiconAt([item.key], 0, 'same-heat') !== null) continue;
    if (item.kind !== 'point') return null;
    const close = CLOSING.get(item.text);
    if (close !== undefined && at === from) closing = close;
    else if (!BETWEEN.has(item.text) && !MINUS.has(item.text)) return null;
  }
  return null;
}

/** Another scale, or the other kind of oven; two temperatures of one scale are two. */
function saysTheSame(one: Temperature, other: Temperature): boolean {
  if (one.scale === null && other.scale === null) return false;
  return [one, ...one.equals].every((each) => each.scale !== other.scale || each.fan !== other.fan);
}

function isPoint(item: Item | undefined, text: string): boolean {
  return item?.kind === 'point' && item.text === text;
}
