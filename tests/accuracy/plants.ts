/** Plants one fault in a copy of a recipe, reads both, and counts the plants that the right rule marks on the right food. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Mark } from '../../rules/rule.js';
import type { Dish } from '../../src/kitchen/types.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';

/** A changed text, and the mark that must come of it. */
interface Plant {
  readonly kind: string;
  readonly text: string;
  readonly rule: string;
  /** Whether a mark is about what was planted. */
  readonly isIt: (mark: Mark) => boolean;
}

type Planter = (dish: Dish, file: SourceFile) => Plant | null;

export interface PlantCount {
  planted: number;
  caught: number;
  missed: string[];
}

/** A listed food that the method names by itself, once or more, with an amount on the list. */
function namedListing(dish: Dish) {
  return dish.recipe.listings.find(
    (listing) =>
      listing.line.foods.length === 1 &&
      listing.line.foods[0]!.row !== null &&
      !listing.line.foods[0]!.row.generic &&
      listing.line.measures.length === 1 &&
      dish.uses[listing.index]!.some(
        (use) => !use.group && use.listings.length === 1 && use.food === listing.line.foods[0]!.row,
      ),
  );
}

const cut = (text: string, start: number, end: number, put = ''): string =>
  text.slice(0, start) + put + text.slice(end);

/** From the start of the listing's line to the end of it, with the line break. */
function lineOf(file: SourceFile, offset: number): [number, number] {
  const start = file.text.lastIndexOf('\n', offset) + 1;
  const end = file.text.indexOf('\n', offset);
  return [start, end < 0 ? file.text.length : end + 1];
}

const planters: Record<string, Planter> = {
  'listing taken out': (dish, file) => {
    const listing = namedListing(dish);
    if (listing === undefined) return null;
    const food = listing.line.foods[0]!.row!;
    const others = dish.recipe.listings.filter((other) => other !== listing);
    // Where another listing serves the same mention, taking one out leaves no fault.
    if (
      others.some((other) =>
        dish.mentions.some((m) => m.listings.includes(other) && m.listings.includes(listing)),
      )
    )
      return null;
    const span = listing.passage.span();
    return {
      kind: 'listing taken out',
      text: cut(file.text, ...lineOf(file, span.start)),
      rule: 'unlisted-ingredient',
      isIt: (mark) =>
        mark.subject === food.name ||
        file.text.slice(span.start, span.end).toLowerCase().includes(mark.subject),
    };
  },
  'listing added': (dish, file) => {
    const last = dish.recipe.listings.at(-1);
    if (last === undefined) return null;
    const [start, end] = lineOf(file, last.passage.span().start);
    const bullet = /^\s*(?:[-*+]|\d+\.)\s+/.exec(file.text.slice(start, end))?.[0];
    if (bullet === undefined) return null;
    return {
      kind: 'listing added',
      text: cut(
        file.text,
        end,
        end,
        `${file.text[end - 1] === '\n' ? '' : '\n'}${bullet}3 tablespoons capers\n`,
      ),
      rule: 'unused-ingredient',
      isIt: (mark) => mark.subject === 'caper',
    };
  },
  'amount restated, more': (dish, file) => restated(dish, file, 'amount restated, more', 4),
  'amount restated, less': (dish, file) => restated(dish, file, 'amount restated, less', 0.25),
  'food renamed': (dish, file) => {
    const listing = namedListing(dish);
    const use =
      listing === undefined
        ? undefined
        : dish.uses[listing.index]!.find((each) => !each.group && each.food === listing.line.foods[0]!.row);
    if (use === undefined) return null;
    const span = dish.recipe.steps[use.step]!.passage.span(use.start, use.end);
    return {
      kind: 'food renamed',
      text: cut(file.text, span.start, span.end, 'rhubarb'),
      rule: 'unlisted-ingredient',
      isIt: (mark) => mark.subject === 'rhubarb',
    };
  },
  'range reversed': (dish, file) => {
    const step = dish.steps.find((each) =>
      each.items.some((item) => item.kind === 'duration' && item.seconds !== null),
    );
    if (step === undefined) return null;
    const item = step.items.find((each) => each.kind === 'duration' && each.seconds !== null)!;
    const span = step.step.passage.span(item.start, item.end);
    return {
      kind: 'range reversed',
      text: cut(file.text, span.start, span.end, '40 to 30 minutes'),
      rule: 'range-reversed',
      isIt: (mark) => mark.subject.includes('40 to 30'),
    };
  },
  'scale dropped': (dish, file) => {
    for (const step of dish.steps) {
      const item = step.items.find(
        (each) => each.kind === 'temperature' && each.scale !== null && each.scale !== 'gas',
      );
      if (item?.kind !== 'temperature') continue;
      const span = step.step.passage.span(item.start, item.end);
      return {
        kind: 'scale dropped',
        text: cut(file.text, span.start, span.end, `${item.amount.low.toFraction()} degrees`),
        rule: 'scale-absent',
        isIt: (mark) => mark.span.start === span.start,
      };
    }
    return null;
  },
  'yield taken out': (dish, file) => {
    const stated = dish.recipe.yield;
    if (stated?.parsed == null) return null;
    const span = stated.passage.span();
    const [start, end] = lineOf(file, span.start);
    if (span.end > end) return null;
    return {
      kind: 'yield taken out',
      text: cut(file.text, start, end),
      rule: 'yield-absent',
      isIt: () => true,
    };
  },
  'placeholder left': (dish, file) => {
    const step = dish.recipe.steps[0];
    if (step === undefined) return null;
    const { end } = step.passage.span();
    return {
      kind: 'placeholder left',
      text: cut(file.text, end, end, ' (see page 000)'),
      rule: 'placeholder-left',
      isIt: (mark) => mark.subject === 'page 000',
    };
  },
  'temperature lowered': (dish, file) => {
    const raw = dish.rawFoods.find((each) => each.safety === 'poultry' || each.safety === 'ground-meat');
    const use = raw === undefined ? undefined : dish.uses[raw.listing.index]!.find((each) => !each.group);
    if (raw === undefined || use === undefined) return null;
    const { end } = dish.recipe.steps[use.step]!.passage.span();
    return {
      kind: 'temperature lowered',
      text: cut(file.text, end, end, ' Cook it until a thermometer reads 140°F.'),
      rule: 'safe-temperature-low',
      isIt: (mark) => mark.message.includes('140'),
    };
  },
};

function restated(dish: Dish, file: SourceFile, kind: string, factor: number): Plant | null {
  for (const listing of dish.recipe.listings) {
    const [measure] = listing.line.measures;
    const food = listing.line.foods[0];
    if (
      measure?.unit == null ||
      food?.row == null ||
      listing.line.foods.length > 1 ||
      measure.share ||
      measure.plus.length > 0
    )
      continue;
    if (listing.line.toTaste || listing.line.asNeeded || listing.line.divided) continue;
    const uses = dish.uses[listing.index]!;
    const use = uses[0];
    // One plain use, so that a smaller amount cannot be a part.
    if (
      uses.length !== 1 ||
      use === undefined ||
      use.group ||
      use.measure !== null ||
      use.determiner !== null ||
      use.listings.length > 1 ||
      use.food === null
    )
      continue;
    const amount = measure.amount.high.mul(factor);
    const span = dish.recipe.steps[use.step]!.passage.span(use.start, use.end);
    const words = file.text.slice(span.start, span.end);
    return {
      kind,
      text: cut(
        file.text,
        span.start,
        span.end,
        `${amount.toFraction(true)} ${measure.unit.replace('-', ' ')} ${words}`,
      ),
      rule: 'amount-disagreement',
      isIt: (mark) => mark.span.start === span.start,
    };
  }
  return null;
}

/** Plants every kind in every recipe that can bear it. */
export function countPlants(files: readonly SourceFile[]): Map<string, PlantCount> {
  const counts = new Map<string, PlantCount>();
  for (const file of files) {
    const before = readManuscript([file]);
    const [dish] = before.dishes;
    if (dish === undefined || before.dishes.length > 1) continue;
    for (const [kind, planter] of Object.entries(planters)) {
      const plant = planter(dish, file);
      if (plant === null || before.marks.some((mark) => mark.rule === plant.rule && plant.isIt(mark)))
        continue;
      const count = counts.get(kind) ?? { planted: 0, caught: 0, missed: [] };
      counts.set(kind, count);
      count.planted++;
      const after = readManuscript([{ path: file.path, text: plant.text }]);
      if (after.marks.some((mark) => mark.rule === plant.rule && plant.isIt(mark))) count.caught++;
      else count.missed.push(file.path);
    }
  }
  return counts;
}

/** The recipes of a folder, as texts; null where there is no such folder. */
export function corpusIn(folder: string): SourceFile[] | null {
  if (!existsSync(folder)) return null;
  return readdirSync(folder)
    .filter((file) => file.endsWith('.md'))
    .sort()
    .map((file) => ({ path: file, text: readFileSync(path.join(folder, file), 'utf8') }));
}
