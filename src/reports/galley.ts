/** Writes a reading for a person at a terminal, laid out like an editor's query list: by recipe, numbered, with the passage quoted. */
import type { ChalkInstance } from 'chalk';
import type { Mark, Related, Rule, Weight } from '../../rules/rule.js';
import type { Reading } from '../reading/types.js';
import { caution } from './caution.js';
import { closing } from './closing.js';
import { type Group, groupMarks, numberOf } from './groups.js';
import { type Places, placesOf } from './places.js';
import { clip, displayWidth, fill, oneLine, wrap } from './text.js';
import { hasTopic } from './topics.js';
import { countOf, joined } from './words.js';

export interface GalleyOptions {
  /** Colors repeat what the words say, so that a reader without them misses nothing. */
  readonly color: ChalkInstance;
  /** Columns; a galley narrower than `narrowest` is not laid out. */
  readonly width: number;
  /** The rules that were run; tells which marks are about food safety. */
  readonly rules: readonly Rule[];
}

export function galley(reading: Reading, options: GalleyOptions): string {
  const sheet: Sheet = {
    places: placesOf(reading),
    color: options.color,
    width: Math.max(narrowest, options.width),
  };
  const blocks = groupMarks(reading).map((group) => groupLines(group, sheet));
  blocks.push(wrap(closing(reading, options.rules), sheet.width));
  if (hasTopic(reading.marks, options.rules, 'safety')) blocks.push(wrap(caution, sheet.width));
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

interface Sheet {
  readonly places: Places;
  readonly color: ChalkInstance;
  readonly width: number;
}

/** Columns below which the parts of a line no longer fit beside each other. */
const narrowest = 40;

function groupLines(group: Group, sheet: Sheet): string[] {
  const lineOf = (mark: Mark): string => `line ${sheet.places.place(mark.file, mark.span.start).line}`;
  const columns = {
    number: numberOf(group.marks.length - 1).length,
    line: Math.max(...group.marks.map((mark) => lineOf(mark).length)),
  };
  const lines = heading(group, sheet);
  group.marks.forEach((mark, index) => {
    if (index > 0) lines.push('');
    lines.push(
      ...markLines(mark, numberOf(index).padEnd(columns.number), lineOf(mark).padEnd(columns.line), sheet),
    );
  });
  return lines;
}

function heading(group: Group, sheet: Sheet): string[] {
  const file = oneLine(group.file);
  if (group.title === null) return [sheet.color.bold(file)];
  const title = wrap(group.title, sheet.width);
  const last = title.at(-1) ?? '';
  const above = title.slice(0, -1).map((line) => sheet.color.bold(line));
  return [...above, ...withRight(last, file, sheet.width, sheet.color.bold, sheet.color.dim)];
}

function markLines(mark: Mark, number: string, line: string, sheet: Sheet): string[] {
  const { color, width } = sheet;
  const indent = ' '.repeat(number.length + 4);
  const start = `  ${number}  ${line}   `;
  const room = width - start.length - mark.weight.length - 2;
  const words = oneLine(sheet.places.passage(mark.file, mark.span));
  const quoted = words === '' ? '' : `"${clip(words, room - 2)}"`;
  const gap = fill(start.length + displayWidth(quoted) + mark.weight.length, width);
  const body = (text: string): string[] => wrap(text, width - indent.length).map((row) => indent + row);
  const advice = body(mark.advice);
  const last = advice.pop() ?? indent;
  return [
    `  ${color.bold(number)}  ${line}   ${color.italic(quoted)}${gap}${weightColor(color, mark.weight)(mark.weight)}`,
    ...body(mark.message),
    ...mark.related
      .filter((related) => related.alike !== true)
      .flatMap((related) => body(comparison(mark, related, sheet))),
    ...body(likewise(mark, sheet)),
    ...advice,
    ...withRight(last, mark.rule, width, (text) => text, color.dim),
  ];
}

/** The other side of the disagreement, with its place. */
function comparison(mark: Mark, related: Related, sheet: Sheet): string {
  return `Compare ${placeOf(mark, related, sheet)}: ${related.message}`;
}

/** More places than these are told by their number. */
const MOST_PLACES = 4;

/** The other places where the same is to be said; empty where there are none. */
function likewise(mark: Mark, sheet: Sheet): string {
  const places = mark.related.filter((related) => related.alike === true);
  if (places.length === 0) return '';
  const told = places.slice(0, MOST_PLACES).map((place) => placeOf(mark, place, sheet));
  const more = places.length - told.length;
  if (more > 0) told.push(countOf(more, 'place more', 'places more'));
  return `Also ${joined(told)}.`;
}

function placeOf(mark: Mark, place: Related, sheet: Sheet): string {
  const { line } = sheet.places.place(place.file, place.span.start);
  return place.file === mark.file ? `line ${line}` : `${oneLine(place.file)}, line ${line}`;
}

/** `left` and `right` at the two ends of a line, or on two lines where they do not fit on one. */
function withRight(
  left: string,
  right: string,
  width: number,
  paintLeft: (text: string) => string,
  paintRight: (text: string) => string,
): string[] {
  const used = displayWidth(left) + displayWidth(right);
  const below = fill(displayWidth(right), width) + paintRight(right);
  if (left.trim() === '') return [below];
  if (used + 2 > width) return [paintLeft(left), below];
  return [paintLeft(left) + fill(used, width) + paintRight(right)];
}

function weightColor(color: ChalkInstance, weight: Weight): (text: string) => string {
  if (weight === 'fault') return color.red.bold;
  return weight === 'query' ? color.yellow : color.cyan;
}
