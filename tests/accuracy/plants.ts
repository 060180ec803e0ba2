/** Plants one fault in a copy of a recipe, reads both copies, and counts the plants that the right rule marks on the right subject. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Mark } from '../../rules/rule.js';
import type { Dish } from '../../src/kitchen/types.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';

/** A changed text, and the mark that must come of it and must not be there without it. */
export interface Plant {
  readonly text: string;
  /** The copy that has no such fault; the recipe as it stands when left out. */
  readonly sound?: string;
  readonly rule: string;
  /** Whether a mark of the changed text is about what was planted. */
  readonly isIt: (mark: Mark) => boolean;
}

/** The plants that a recipe can bear, by kind; `pick` draws from a list, always alike for one recipe and kind. */
export type Planter = (dish: Dish, file: SourceFile, pick: Pick) => Plant[];
export type Planters = Readonly<Record<string, Planter>>;
export type Pick = <T>(from: readonly T[], most: number) => T[];

export interface PlantCount {
  planted: number;
  caught: number;
  /** The file, and the changed words, of each that was not caught. */
  missed: string[];
}

/** `text` with the stretch from `start` to `end` taken out and `put` in its place. */
export function cut(text: string, start: number, end: number, put = ''): string {
  return text.slice(0, start) + put + text.slice(end);
}

/** From the start of the line that holds `offset` to its end, with the line break. */
export function lineOf(text: string, offset: number): [start: number, end: number] {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  const end = text.indexOf('\n', offset);
  return [start, end < 0 ? text.length : end + 1];
}

/** Plants every kind in every recipe that can bear it. Files of several recipes are left out: a plant there is no plain one. */
export function countPlants(files: readonly SourceFile[], planters: Planters): Map<string, PlantCount> {
  const counts = new Map<string, PlantCount>();
  for (const file of files) {
    const { dishes, marks } = readManuscript([file]);
    const [dish, ...others] = dishes;
    if (dish === undefined || others.length > 0) continue;
    for (const [kind, planter] of Object.entries(planters)) {
      const count = counts.get(kind) ?? { planted: 0, caught: 0, missed: [] };
      counts.set(kind, count);
      for (const plant of planter(dish, file, pickerFor(`${kind} ${file.path}`))) {
        const isCaught = (found: readonly Mark[]): boolean =>
          found.some((mark) => mark.rule === plant.rule && plant.isIt(mark));
        const sound = plant.sound === undefined ? marks : marksOf(file.path, plant.sound);
        if (isCaught(sound)) continue;
        count.planted++;
        if (isCaught(marksOf(file.path, plant.text))) count.caught++;
        else count.missed.push(`${file.path}: ${changedPart(plant.sound ?? file.text, plant.text)}`);
      }
    }
  }
  return counts;
}

/** What stood at the first difference of two texts, and what stands there now, on one line. */
function changedPart(before: string, after: string): string {
  let at = 0;
  while (at < after.length && before[at] === after[at]) at++;
  const from = Math.max(0, at - CONTEXT);
  return `${before.slice(from, at + CONTEXT)} → ${after.slice(at, at + CONTEXT)}`.replaceAll('\n', '⏎');
}

const CONTEXT = 40;

function marksOf(file: string, text: string): readonly Mark[] {
  return readManuscript([{ path: file, text }]).marks;
}

/** Draws by a small generator (mulberry32) seeded with the name, so that each run plants the same. */
export function pickerFor(name: string): Pick {
  let state = [...name].reduce((hash, letter) => (Math.imul(hash, 31) + letter.charCodeAt(0)) | 0, 7);
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return (from, most) => {
    const left = [...from];
    return Array.from(
      { length: Math.min(most, left.length) },
      () => left.splice(Math.floor(next() * left.length), 1)[0]!,
    );
  };
}

/** The recipes of a folder, as texts; null where there is no such folder. */
export function corpusIn(folder: string): SourceFile[] | null {
  if (!existsSync(folder)) return null;
  return readdirSync(folder)
    .filter((file) => file.endsWith('.md'))
    .sort()
    .map((file) => ({ path: file, text: readFileSync(path.join(folder, file), 'utf8') }));
}
