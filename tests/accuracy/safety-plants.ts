/** Plants one hazard in a copy of a recipe with raw animal food, reads both, and counts the plants that the right rule marks. */
import { rules } from '../../rules/index.js';
import type { Mark } from '../../rules/rule.js';
import type { Dish, RawCourse } from '../../src/kitchen/types.js';
import { safeTemperature } from '../../src/larder/safety.js';
import type { SafetyClass } from '../../src/larder/types.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';

/** A changed text, and the rules of which one must mark it. */
interface Plant {
  readonly text: string;
  readonly rules: readonly string[];
  readonly isIt?: (mark: Mark) => boolean;
}

/** A raw food with its recipe, the words that name it, and a number that varies the wording from file to file. */
interface Case {
  readonly file: SourceFile;
  readonly dish: Dish;
  readonly course: RawCourse;
  readonly name: string;
  readonly turn: number;
}

type Planter = (place: Case) => Plant | null;

export interface PlantCount {
  planted: number;
  caught: number;
  missed: string[];
}

const MEATS: readonly SafetyClass[] = ['poultry', 'ground-meat', 'whole-cut', 'fish'];

const planters: Record<string, Planter> = {
  'temperature lowered': (place) => {
    const { course, dish, name, turn, file } = place;
    const { safety } = course.raw;
    if (safety !== 'poultry' && safety !== 'ground-meat' && safety !== 'fish' && safety !== 'egg')
      return null;
    if (course.cookings.length === 0) return null;
    const stated = dish.doneTemperatures.find((done) => done.foods.includes(course.raw));
    const chart = safeTemperature(safety);
    const low = chart.fahrenheit - [25, 10, 15, 5][turn % 4]!;
    if (stated !== undefined) {
      const span = stated.passage.span(stated.temperature.start, stated.temperature.end);
      return {
        text: put(file, span.start, span.end, `${low}°F`),
        rules: ['safe-temperature-low'],
        isIt: (mark) => mark.span.start === span.start,
      };
    }
    const celsius = chart.celsius - [12, 6, 8, 3][turn % 4]!;
    const wordings = [
      ` Cook until a thermometer in the ${name} reads ${low}°F.`,
      ` The ${name} is done when its internal temperature reaches ${celsius}°C.`,
      ` Cook until the ${name} registers ${low} degrees F on an instant-read thermometer.`,
      ` Cook the ${name} to an internal temperature of ${low}°F (${Math.round(((low - 32) * 5) / 9)}°C).`,
      ` Use a food thermometer to check that the ${name} has reached ${low}°F.`,
      ` Test the ${name} with a probe: the center should be at ${celsius} °C.`,
      ` The center of the ${name} should register ${low}-${low + 3}°F.`,
      ` Remove the ${name} from the heat once it hits ${low}°F in the middle.`,
    ];
    return afterCooking(place, wordings[turn % wordings.length]!, ['safe-temperature-low']);
  },
  'cue taken away': ({ file, course, dish }) => {
    if (!MEATS.includes(course.raw.safety) && course.raw.safety !== 'egg') return null;
    for (const cooking of course.cookings) {
      if (!cooking.cued || cooking.technique.ends) continue;
      const span = dish.recipe.steps[cooking.step]!.passage.span();
      const step = file.text.slice(span.start, span.end);
      const bare = step.replace(/,?\s*(?:or )?(?:until|till)\b[^.;]*/g, '');
      // Where another sign is left ("when …", "don't let them dry"), nothing was taken away.
      const next = dish.recipe.steps[cooking.step + 1]?.passage.text ?? '';
      const isSaidTwice =
        /\b(?:done|when|once|runny|don['’]t let|do not let)\b/i.test(bare) ||
        /^.{0,20}\b(?:done|when|once|until)\b/i.test(next);
      if (bare === step || isSaidTwice) continue;
      return {
        text: put(file, span.start, span.end, bare),
        rules: ['doneness-cue-absent', 'safe-temperature-absent'],
        isIt: (mark) => mark.span.start >= span.start - 1 && mark.span.start <= span.end,
      };
    }
    return null;
  },
  'color as the only cue': (place) => {
    const { course, name, dish, turn } = place;
    if (course.raw.safety !== 'poultry' && course.raw.safety !== 'ground-meat') return null;
    if (course.cookings.length === 0 || course.sure || course.color !== null) return null;
    if (dish.doneTemperatures.length > 0) return null;
    const wordings = [
      ` Cook until the juices of the ${name} run clear.`,
      ` Cook until the ${name} is no longer pink in the middle.`,
      ` The ${name} is ready when no pink remains.`,
      ` Cook through, until the ${name} is white throughout and the juices are clear.`,
      ` Continue to cook until there is no trace of pink in the ${name}.`,
    ];
    return afterCooking(place, wordings[turn % wordings.length]!, ['color-cue-alone']);
  },
  'rest taken away': (place) => {
    const { course, name } = place;
    const isStanding = typeof course.rest !== 'boolean' || course.rest;
    if (course.raw.safety !== 'whole-cut' || course.cookings.length === 0 || isStanding) return null;
    return afterCooking(place, ` Cook until a thermometer in the ${name} reads 145°F.`, ['rest-absent']);
  },
  'rinsing added': (place) => {
    const { course, name, turn } = place;
    const { safety } = course.raw;
    if (safety !== 'poultry' && safety !== 'whole-cut') return null;
    const wordings = [
      `Rinse the ${name} under cold running water and pat dry. `,
      `Wash the ${name} well. `,
      `Place the ${name} in a colander and rinse. `,
      `Rinse and drain the ${name}. `,
      `Clean the ${name} under running water, then pat it dry. `,
      `Hold the ${name} under cold running water until the water runs clear. `,
      `Start by washing the ${name}. `,
    ];
    return beforeUse(place, wordings[turn % wordings.length]!, ['raw-poultry-rinsed']);
  },
  'marinade reused': (place) => {
    const { course, name, turn } = place;
    // Nobody marinates mince by the bowl.
    const isInPieces = MEATS.includes(course.raw.safety) && course.raw.safety !== 'ground-meat';
    if (!isInPieces || course.cookings.length === 0) return null;
    const before = [
      `Marinate the ${name} in oil and lemon juice in the refrigerator for 1 hour. `,
      `Lay the ${name} in the marinade for 1 hour, in the refrigerator. `,
    ];
    const after = [
      ` Brush the ${name} with the marinade as it cooks.`,
      ` Baste with the remaining marinade.`,
      ` Drizzle the marinade over the ${name} and serve.`,
      ` Serve with the marinade on the side.`,
      ` Pour the used marinade over the cooked ${name}.`,
      ` Spoon some of the marinade over the ${name} before serving.`,
      ` Toss the cooked ${name} in the marinade.`,
      ` Use the marinade as a dipping sauce.`,
    ];
    return twice(place, before[turn % 2]!, after[turn % after.length]!, ['marinade-reused']);
  },
  'plate reused': (place) => {
    const { course, name, turn } = place;
    if (!MEATS.includes(course.raw.safety) || course.cookings.length === 0) return null;
    const after = [
      ` Return the ${name} to the same plate.`,
      ` Put the cooked ${name} back on the plate.`,
      ` Slice the ${name} on the same cutting board and serve.`,
      ` Transfer the ${name} to the plate that held the raw ${name}.`,
    ];
    const before = [
      `Lay the ${name} on a plate and season. `,
      `Put the ${name} on a plate. `,
      `Trim the ${name} on a cutting board. `,
      `Season the ${name} on a plate. `,
    ];
    return twice(place, before[turn % 4]!, after[turn % 4]!, ['raw-surface-reused']);
  },
  'hands on raw food': (place) => {
    if (!MEATS.includes(place.course.raw.safety) || place.dish.handling.handsWashed.length > 0) return null;
    return beforeUse(place, `With your hands, rub salt all over the ${place.name}. `, [
      'hand-washing-absent',
    ]);
  },
  'thawing on the counter': (place) => {
    if (!MEATS.includes(place.course.raw.safety)) return null;
    return beforeUse(place, `Thaw the ${place.name} on the counter overnight. `, ['thaw-unsafe']);
  },
};

/** Plants every kind in every recipe that can bear it; a kind whose rule is not registered is left out. */
export function countSafetyPlants(files: readonly SourceFile[]): Map<string, PlantCount> {
  const known = new Set(rules.map((rule) => rule.name));
  const counts = new Map<string, PlantCount>();
  let turn = 0;
  for (const file of files) {
    const before = readManuscript([file]);
    const [dish] = before.dishes;
    if (dish === undefined || before.dishes.length > 1) continue;
    for (const [kind, planter] of Object.entries(planters)) {
      // One plant of a kind in a recipe: on the first raw food that can bear it.
      for (const course of dish.courses) {
        const mention = dish.uses[course.raw.listing.index]!.find(
          (each) => !each.group && each.role === 'use',
        );
        // What the method names only when it is cooked can bear no raw handling.
        const [cooking] = course.cookings;
        if (mention === undefined || (cooking !== undefined && mention.step > cooking.step)) continue;
        const plant = planter({ file, dish, course, name: mention.text, turn });
        if (plant === null || !plant.rules.some((rule) => known.has(rule))) continue;
        const isIt = (mark: Mark) => plant.rules.includes(mark.rule) && (plant.isIt?.(mark) ?? true);
        if (before.marks.some(isIt)) continue;
        turn++;
        const count = counts.get(kind) ?? { planted: 0, caught: 0, missed: [] };
        counts.set(kind, count);
        count.planted++;
        const after = readManuscript([{ path: file.path, text: plant.text }]);
        if (after.marks.some(isIt)) count.caught++;
        else count.missed.push(file.path);
        break;
      }
    }
  }
  return counts;
}

function put(file: SourceFile, start: number, end: number, text: string): string {
  return file.text.slice(0, start) + text + file.text.slice(end);
}

/** Where a step ends in the file. */
function endOf({ dish }: Case, step: number): number {
  return dish.recipe.steps[step]!.passage.span().end;
}

/** A sentence behind the last step that cooks the food. */
function afterCooking(place: Case, sentence: string, names: readonly string[]): Plant {
  const end = endOf(place, place.course.cookings.at(-1)!.step);
  const text = put(place.file, end, end, stopped(place.file.text, end) + sentence);
  return { text, rules: names, isIt: (mark) => mark.span.start >= end };
}

/** A sentence before the first step that uses the food. */
function beforeUse(place: Case, sentence: string, names: readonly string[]): Plant | null {
  const start = startOf(place);
  return { text: put(place.file, start, start, sentence), rules: names };
}

function twice(place: Case, before: string, after: string, names: readonly string[]): Plant {
  const start = startOf(place);
  const end = endOf(place, place.course.cookings.at(-1)!.step);
  const { text } = place.file;
  return {
    text:
      text.slice(0, start) + before + text.slice(start, end) + stopped(text, end) + after + text.slice(end),
    rules: names,
  };
}

function startOf({ dish, course }: Case): number {
  const first = dish.uses[course.raw.listing.index]!.find((each) => !each.group && each.role === 'use')!;
  return dish.recipe.steps[first.step]!.passage.span().start;
}

/** A step that ends without a full stop gets one before another sentence follows. */
function stopped(text: string, end: number): string {
  return /[.!?)]\s*$/.test(text.slice(0, end)) ? '' : '.';
}
