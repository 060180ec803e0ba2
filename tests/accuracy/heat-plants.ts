/** Plants faults of heat and time into copies of the corpus's recipes, one at a time, and counts what the right rule marks. */
import { compareHeat, heatOn } from '../../src/arithmetic/heat.js';
import { timeText } from '../../src/arithmetic/times.js';
import type { Temperature } from '../../src/grammar/types.js';
import { heatText, heatTextOf, withNumbers } from '../../src/kitchen/heat-text.js';
import { minutes } from '../../src/kitchen/minutes.js';
import { statedTimesOf, together } from '../../src/kitchen/stated-times.js';
import { stepTimesOf } from '../../src/kitchen/step-times.js';
import type { Dish } from '../../src/kitchen/types.js';
import type { SourceFile, Span } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';
import type { PlantCount } from './plants.js';

/** A changed text and the rule that must speak of it; with `right` it must stay silent, since nothing is wrong. */
interface HeatPlant {
  readonly text: string;
  readonly rule: string;
  readonly right?: boolean;
}

type Planter = (dish: Dish, file: SourceFile) => HeatPlant | null;

const put = (text: string, { start, end }: Span, words: string): string =>
  text.slice(0, start) + words + text.slice(end);

/** Every temperature of the steps that an oven may have, with its place. */
function ovenHeats(dish: Dish): { item: Temperature; span: Span; words: string }[] {
  return dish.steps.flatMap(({ step, items }) =>
    items.flatMap((item) => {
      if (item.kind !== 'temperature' || item.scale === null || item.scale === 'gas') return [];
      const words = heatTextOf(step.passage.text, item);
      const { start } = step.passage.span(item.start, item.end);
      const hot = item.amount.low.gte(item.scale === 'celsius' ? 120 : 250);
      return hot ? [{ item, span: { start, end: start + words.length }, words }] : [];
    }),
  );
}

/** The second scale of a dual temperature put out by so many degrees Celsius. */
const dualPut =
  (celsius: number): Planter =>
  (dish, file) => {
    for (const { step, items } of dish.steps) {
      for (const item of items) {
        const other = item.kind === 'temperature' ? item.equals[0] : undefined;
        if (item.kind !== 'temperature' || other === undefined || other.scale === 'gas') continue;
        if (compareHeat(item, other) !== 'right' || !other.amount.low.equals(other.amount.high)) continue;
        const words = heatTextOf(step.passage.text, other);
        const wrong = other.amount.low.add(other.scale === 'celsius' ? celsius : (celsius * 9) / 5);
        const text = withNumbers(words, [wrong]);
        const { start } = step.passage.span(other.start, other.end);
        if (text !== null)
          return {
            text: put(file.text, { start, end: start + words.length }, text),
            rule: 'dual-temperature-disagreement',
          };
      }
    }
    return null;
  };

/** A single temperature given a second scale, right or put out. */
const dualAdded =
  (out: number, right: boolean): Planter =>
  (dish, file) => {
    const heat = ovenHeats(dish).find(
      ({ item }) => item.equals.length === 0 && item.amount.low.equals(item.amount.high),
    );
    if (heat === undefined) return null;
    const to: Temperature = {
      ...heat.item,
      scale: heat.item.scale === 'celsius' ? 'fahrenheit' : 'celsius',
    };
    const [figure] = heatOn(heat.item, to, 'rounded') ?? [];
    if (figure === undefined) return null;
    return {
      text: put(
        file.text,
        { start: heat.span.end, end: heat.span.end },
        ` (${heatText([figure.add(out)], to)})`,
      ),
      rule: 'dual-temperature-disagreement',
      right,
    };
  };

/** What still tells the heat of an oven, by a measure that is not tamis's own. */
const TELLS_HEAT =
  /\d{3}\s*(?:°|º|˚|℃|℉|degrees|[fc]\b)|\bgas \d|pre-?heat|(?:moderate|hot|warm|cold) oven|oven (?:set|temp)/i;

/** Every sentence that has the oven heated taken out, where nothing else tells its heat. */
const preheatRemoved: Planter = (dish, file) => {
  let { text } = file;
  for (const { step } of [...dish.steps].reverse()) {
    for (const sentence of [
      ...step.passage.text.matchAll(/[^.!?\n]+(?:[.!?](?=\d)[^.!?\n]*)*[.!?]?/g),
    ].reverse()) {
      const heats = /pre-?heat|(?:heat|set|start|turn on)\b.{0,20}\boven/i.test(sentence[0]);
      if (!heats) continue;
      text = put(text, step.passage.span(sentence.index, sentence.index + sentence[0].length), '');
    }
  }
  const bakes = /\b(?:bake|roast)\b|\b(?:in|into) (?:the )?oven/i.test(text);
  return text === file.text || !bakes || TELLS_HEAT.test(text) ? null : { text, rule: 'oven-unheated' };
};

/** The step that heats the oven, where it does nothing else, moved behind the last. */
const preheatLate: Planter = (dish, file) => {
  const lines = file.text.split('\n');
  const at = lines.findIndex((line) =>
    /^\s*(?:\d+\.|[-*])\s+pre-?heat (?:the |your )?oven[^.]*\.?\s*$/i.test(line),
  );
  const last = dish.recipe.steps.at(-1);
  if (at < 0 || last === undefined) return null;
  const end = dish.page.lines.line(last.passage.span().end);
  if (
    end - 1 <= at ||
    !/\b(?:bake|roast)\b|\b(?:in|into) (?:the )?oven/i.test(lines.slice(at + 1, end).join('\n'))
  )
    return null;
  if (TELLS_HEAT.test([...lines.slice(0, at), ...lines.slice(at + 1)].join('\n'))) return null;
  const moved = [...lines.slice(0, at), ...lines.slice(at + 1, end), lines[at]!, ...lines.slice(end)];
  return { text: moved.join('\n'), rule: 'oven-unheated' };
};

/** An oven's Fahrenheit called Celsius. */
const tooHot: Planter = (dish, file) => {
  const heat = ovenHeats(dish).find(
    ({ item }) => item.scale === 'fahrenheit' && item.equals.length === 0 && item.amount.low.gte(325),
  );
  if (heat === undefined) return null;
  const number = /\d+/.exec(heat.words)?.[0];
  return number === undefined
    ? null
    : { text: put(file.text, heat.span, `${number}°C`), rule: 'oven-too-hot' };
};

/** A total put under preparing and cooking, right or out by a factor. */
const totalAdded =
  (factor: number, right: boolean): Planter =>
  (dish, file) => {
    const { prep, cook, total, rest } = statedTimesOf(dish);
    const all = together([...prep, ...cook, ...rest]);
    if (total !== null || prep.length === 0 || cook.length === 0 || all.open || all.high.lt(minutes(20)))
      return null;
    const line = cook[0]!.stated.passage.span();
    const start = file.text.lastIndexOf('\n', line.start) + 1;
    const bullet = /^\s*[-*]\s+/.exec(file.text.slice(start))?.[0] ?? '\n';
    const five = minutes(5);
    const sum = all.high.mul(String(factor)).div(five).round().mul(five);
    return {
      text: put(file.text, { start, end: start }, `${bullet}Total time: ${timeText(sum)}\n`),
      rule: 'time-disagreement',
      right,
    };
  };

/** The cooking time cut to a third of the longest step on the stove. */
const cookCut: Planter = (dish, file) => {
  const { cook } = statedTimesOf(dish);
  const longest = stepTimesOf(dish)
    .filter(({ kind }) => kind === 'heat')
    .reduce((most, { low }) => (low.gt(most) ? low : most), minutes(0));
  if (cook.length !== 1 || longest.lt(minutes(30))) return null;
  const third = minutes(5).mul(longest.div(minutes(15)).round());
  return { text: put(file.text, cook[0]!.stated.value.span(), timeText(third)), rule: 'time-disagreement' };
};

/** A title that promises twenty minutes for what takes an hour or more. */
const promise: Planter = (dish, file) => {
  const { prep, cook } = statedTimesOf(dish);
  const title = dish.recipe.title?.span();
  if (cook.length === 0 || together([...prep, ...cook]).low.lt(minutes(45)) || title === undefined)
    return null;
  return {
    text: put(file.text, { start: title.start, end: title.start }, '20-Minute '),
    rule: 'time-disagreement',
  };
};

/** Lengths, volumes and numbers taken from before every tin and dish of a bake. */
const panSize: Planter = (dish, file) => {
  const name = dish.recipe.title?.text ?? '';
  if (!/cake|bread|loaf|pie|tart|quiche|brownie|pudding/i.test(name)) return null;
  const text = file.text.replace(
    /\b\d+(?:[\s-]*(?:x|×|by)[\s-]*\d+)?(?:\s*-?\s*(?:inch|in\.?|cm|quart|"))(?:\s*Ø)?(?:\s*\(\d+\s*cm\))?(?=[^.\n]{0,25}\b(?:pan|tin|plate|dish|springform))/gi,
    '',
  );
  return text === file.text ? null : { text, rule: 'pan-size-absent' };
};

const planters: Readonly<Record<string, Planter>> = {
  'dual out by 25°C': dualPut(25),
  'dual out by -25°C': dualPut(-25),
  'dual out by 15°C': dualPut(15),
  'dual added, out': dualAdded(40, false),
  'dual added, right': dualAdded(0, true),
  'preheat removed': preheatRemoved,
  'preheat late': preheatLate,
  'oven too hot': tooHot,
  'total halved': totalAdded(0.5, false),
  'total right': totalAdded(1, true),
  'cook time cut': cookCut,
  'title promises': promise,
  'pan size removed': panSize,
};

/** Plants every kind in every recipe that can bear it; of the right ones it counts as caught those left alone. */
export function countHeatPlants(files: readonly SourceFile[]): Map<string, PlantCount> {
  const counts = new Map<string, PlantCount>();
  for (const file of files) {
    const before = readManuscript([file]);
    const [dish] = before.dishes;
    if (dish === undefined || before.dishes.length > 1) continue;
    for (const [kind, planter] of Object.entries(planters)) {
      const plant = planter(dish, file);
      if (plant === null || before.marks.some((mark) => mark.rule === plant.rule)) continue;
      const count = counts.get(kind) ?? { planted: 0, caught: 0, missed: [] };
      counts.set(kind, count);
      count.planted++;
      const marked = readManuscript([{ path: file.path, text: plant.text }]).marks.some(
        (mark) => mark.rule === plant.rule,
      );
      if (marked !== (plant.right ?? false)) count.caught++;
      else count.missed.push(file.path);
    }
  }
  return counts;
}
