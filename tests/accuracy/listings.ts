/** Measures how well ingredient lines are read: against labels that a person made, line by line. */
import { readFileSync } from 'node:fs';
import { readListing } from '../../src/grammar/listing.js';
import type { ListedFood, ListingLine, Measure } from '../../src/grammar/types.js';
import { fold, singular } from '../../src/larder/names.js';
import { unitNamed } from '../../src/larder/units.js';
import type { SourceFile } from '../../src/manuscript/types.js';

export interface Miss {
  readonly file: string;
  /** From 1. */
  readonly line: number;
  readonly part: 'amount' | 'unit' | 'food';
  readonly wanted: string;
  readonly read: string;
}

export interface ListingScore {
  readonly lines: number;
  readonly amounts: number;
  readonly units: number;
  readonly foods: number;
  /** Lines of which all three are right. */
  readonly whole: number;
  readonly misses: readonly Miss[];
}

/** Reads every labelled line of the files; a line labelled "!" has nothing a person could label and is left out. */
export function scoreListings(files: readonly SourceFile[]): ListingScore {
  const lines = new Map(files.map(({ path, text }) => [path, text.split(/\r?\n/)]));
  const [, ...rows] = readFileSync(new URL('listings.tsv', import.meta.url), 'utf8')
    .trimEnd()
    .split('\n');
  const misses: Miss[] = [];
  const right = { lines: 0, amounts: 0, units: 0, foods: 0, whole: 0 };
  for (const row of rows) {
    const [file, number, amount, unit, food] = row.split('\t') as [string, string, string, string, string];
    if (amount === '!') continue;
    const line = Number(number);
    const source = lines.get(file)?.[line - 1] ?? '';
    const reading = readListing(plain(source));
    const first = reading.measures[0];
    const results = [
      {
        part: 'amount',
        wanted: amount,
        read: [amountOf(first)],
        good: amount.split('|').includes(amountOf(first)),
      },
      {
        part: 'unit',
        wanted: unit,
        read: [first?.unit ?? '-'],
        good: unit.split('|').some((one) => isUnit(one, first)),
      },
      {
        part: 'food',
        wanted: food,
        read: reading.foods.map((one) => one.name),
        good: food.split('|').some((one) => names(reading).has(key(one))),
      },
    ] as const;
    right.lines++;
    const [amounts, units, foods] = results;
    if (amounts.good) right.amounts++;
    if (units.good) right.units++;
    if (foods.good) right.foods++;
    if (results.every(({ good }) => good)) right.whole++;
    for (const { part, wanted, read, good } of results) {
      if (!good) misses.push({ file, line, part, wanted, read: read.join(' | ') });
    }
  }
  return { ...right, misses };
}

/** The line as the manuscript's reader would hand it over: no bullet, emphasis or link targets. */
function plain(source: string): string {
  return source
    .replace(/^\s*[-*+]\s+/, '')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/\*\*|__/g, '');
}

/** The amount as labels write it: "3/2", "2..3"; an improper fraction, so that both sides agree. */
function amountOf(measure: Measure | undefined): string {
  if (measure === undefined) return '-';
  const { low, high } = measure.amount;
  return low.equals(high) ? low.toFraction() : `${low.toFraction()}..${high.toFraction()}`;
}

function isUnit(label: string, measure: Measure | undefined): boolean {
  const unit = measure?.unit ?? null;
  return label === '-' ? unit === null : unit !== null && unitNamed(label)?.id === unit;
}

function names(line: ListingLine): ReadonlySet<string> {
  return new Set(line.foods.flatMap(namesOf).map(key));
}

function namesOf(food: ListedFood): string[] {
  const own = [food.name, food.text];
  const whole = food.form === null ? own : [...own, `${food.name} ${food.form}`];
  return food.row === null ? whole : [...whole, food.row.name, ...food.row.also];
}

function key(name: string): string {
  return name
    .split(/[\s-]+/)
    .map((word) => singular(fold(word)))
    .join('');
}
