/** Prints temperatures for messages, and puts other numbers into a temperature as it is written. */
import type Fraction from 'fraction.js';
import { printFraction } from '../grammar/print.js';
import { readText } from '../grammar/text.js';
import type { Temperature } from '../grammar/types.js';

/** The words of one statement, without those that say the same on other scales: "350°F" of "350°F (180°C)". */
export function heatTextOf(text: string, item: Temperature): string {
  const end = item.equals.reduce((least, other) => Math.min(least, other.start), item.end);
  const words = text.slice(item.start, Math.max(end, item.start));
  const own = readText(words).find((each) => each.kind === 'temperature' || each.kind === 'count');
  return own === undefined ? words : words.slice(0, own.end);
}

/** "177°C", "160 to 170°C fan", "gas 4". */
export function heatText(numbers: readonly Fraction[], like: Temperature): string {
  const figures = numbers.map(printFraction).join(' to ');
  if (like.scale === 'gas') return `gas ${figures}`;
  const sign = like.scale === null ? ' degrees' : like.scale === 'celsius' ? '°C' : '°F';
  return `${figures}${sign}${like.fan ? ' fan' : ''}`;
}

/** The temperature as written with other numbers in it; null where they cannot be put in one for one. */
export function withNumbers(written: string, numbers: readonly Fraction[]): string | null {
  const places = [...written.matchAll(NUMBER)];
  if (places.length !== numbers.length) return null;
  let text = '';
  let from = 0;
  places.forEach((place, index) => {
    text += written.slice(from, place.index) + printFraction(numbers[index]!);
    from = place.index + place[0].length;
  });
  return text + written.slice(from);
}

const NUMBER = /\d+\/\d+|\d+(?:\.\d+)?|[¼-¾]/g;
