/** Plants one fault of style in a copy of the corpus, whose style is made one by its own house style first, and counts the plants that are marked. */
import type { Mark } from '../../rules/rule.js';
import type { Dish } from '../../src/kitchen/types.js';
import type { Usage } from '../../src/kitchen/wording/types.js';
import { wordingOf } from '../../src/kitchen/wording/wording.js';
import { type HouseStyle, undecided } from '../../src/manuscript/house-style.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';
import type { PlantCount } from './plants.js';

/** Words put in place of others in one recipe, and the rule that must mark them. */
interface StylePlant {
  readonly rule: string;
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** A kind of fault: the style against which it is one, and where a recipe can bear it. */
interface Planter {
  readonly style: Partial<HouseStyle>;
  readonly plant: (dish: Dish, file: SourceFile) => StylePlant | null;
}

/** The first usage of the recipe that has that form, with other words in its place. */
function instead(
  dish: Dish,
  rule: string,
  fits: (usage: Usage) => boolean,
  put: (text: string) => string,
): StylePlant | null {
  const usage = wordingOf(dish).usages.find(fits);
  if (usage === undefined) return null;
  const span = usage.passage.span(usage.start, usage.end);
  const text = put(usage.passage.text.slice(usage.start, usage.end));
  return { rule, from: span.start, to: span.end, text };
}

/** A word of the page put in place of another; `word` must be found as it stands there. */
function replaced(file: SourceFile, dish: Dish, rule: string, word: RegExp, text: string): StylePlant | null {
  const body = file.text.slice(dish.recipe.span.start, dish.recipe.span.end);
  const found = word.exec(body);
  if (found === null) return null;
  const from = dish.recipe.span.start + found.index;
  return { rule, from, to: from + found[0].length, text };
}

const planters: Readonly<Record<string, Planter>> = {
  'term variant': {
    style: { terms: { 'olive oil': ['oil of olives'], scallion: ['green onion'], cilantro: [] } },
    plant: (dish, file) =>
      replaced(
        file,
        dish,
        'term-variant',
        /(?<![\p{L}-])(parsley|onions?|tomato(?:es)?)(?![\p{L}-])/u,
        'green onions',
      ),
  },
  'spelling variant': {
    style: { spellings: { yogurt: ['yoghurt'], flavor: ['flavour'] } },
    plant: (dish, file) =>
      replaced(file, dish, 'spelling-variant', /(?<!\p{L})(milk|cream)(?!\p{L})/u, 'yoghurt'),
  },
  'mixed unit form': {
    style: { units: { form: null, own: { tablespoon: 'tablespoon', teaspoon: 'teaspoon', cup: 'cup' } } },
    plant: (dish) =>
      instead(
        dish,
        'unit-style',
        ({ aspect, form }) => aspect === 'unit' && form === 'tablespoon',
        () => 'Tbs',
      ),
  },
  'mixed gram form': {
    style: { units: { form: null, own: { gram: 'g' } } },
    plant: (dish) =>
      instead(
        dish,
        'unit-style',
        ({ aspect, form }) => aspect === 'unit' && form === 'g',
        () => ' grams',
      ),
  },
  'mixed fraction': {
    style: { numbers: '1/2' },
    plant: (dish) =>
      instead(
        dish,
        'number-style',
        ({ aspect, form, passage, start, end }) =>
          aspect === 'number' && form === '1/2' && passage.text.slice(start, end) === '1/2',
        () => '½',
      ),
  },
  'mixed range': {
    style: { ranges: '3-5' },
    plant: (dish) =>
      instead(
        dish,
        'range-style',
        ({ aspect, form }) => aspect === 'range' && form === '3-5',
        (text) => text.replace('-', ' to '),
      ),
  },
  'mixed degrees': {
    style: { temperatures: { form: '350°F', order: null } },
    plant: (dish) =>
      instead(
        dish,
        'temperature-style',
        ({ aspect, form }) => aspect === 'degree' && form === '350°F',
        (text) => text.replace('°', ' degrees '),
      ),
  },
  'scales turned round': {
    style: { temperatures: { form: null, order: 'Fahrenheit (Celsius)' } },
    plant: (dish) =>
      instead(
        dish,
        'temperature-style',
        ({ aspect, form }) => aspect === 'scales' && form === 'Fahrenheit (Celsius)',
        (text) => text.replace(/^(.*?)\s*\((.*)\)$/, '$2 ($1)'),
      ),
  },
  'yield put otherwise': {
    style: { yields: 'Servings: 4' },
    plant: (dish) =>
      instead(
        dish,
        'yield-style',
        ({ aspect, form }) => aspect === 'yield' && form === 'Servings: 4',
        (text) => text.replace(/^\P{L}*Servings: /u, 'Serves '),
      ),
  },
  'title in small letters': {
    style: { titles: 'Headline Capitals' },
    plant: (dish) =>
      instead(
        dish,
        'title-style',
        ({ aspect, form }) => aspect === 'title' && form === 'Headline Capitals',
        (text) => text.charAt(0) + text.slice(1).toLowerCase(),
      ),
  },
  'list line in small letters': {
    style: { listings: 'Capital first' },
    plant: (dish) =>
      instead(
        dish,
        'listing-capital',
        ({ aspect, form }) => aspect === 'capital' && form === 'Capital first',
        (text) => text.toLowerCase(),
      ),
  },
  'sentence opened with a numeral': {
    style: {},
    plant: (dish) => {
      const step = dish.recipe.steps.at(-1);
      if (step === undefined) return null;
      const { end } = step.passage.span();
      const stop = /[.!?:]$/.test(step.passage.text.trimEnd()) ? '' : '.';
      return { rule: 'opening-number', from: end, to: end, text: `${stop} 4 slices make a supper.` };
    },
  },
};

/** More plants of a kind than these tell nothing new. */
const MOST_OF_A_KIND = 12;

/** Words put in place of others in a book without a house style, where most places have the others. */
const strangers: Readonly<
  Record<string, { readonly rule: string; readonly word: RegExp; readonly text: string }>
> = {
  'term variant, no house style': {
    rule: 'term-variant',
    word: /(?<![\p{L}-])cilantro(?![\p{L}-])/u,
    text: 'coriander leaves',
  },
  'another, no house style': {
    rule: 'term-variant',
    word: /(?<![\p{L}-])green onions(?![\p{L}-])/u,
    text: 'scallions',
  },
  'spelling variant, no house style': {
    rule: 'spelling-variant',
    word: /(?<!\p{L})yogurt(?!\p{L})/u,
    text: 'yoghourt',
  },
  'mixed unit form, no house style': { rule: 'unit-style', word: /(?<=\d )tbsp(?=\s)/u, text: 'Tblsp' },
  'mixed range, no house style': { rule: 'range-style', word: /(?<=\d)-(?=\d+ min)/u, text: '—' },
};
/** A book of this many recipes has a majority; reading all of the corpus for every plant takes long. */
const BOOK = 90;
const MOST_STRANGERS = 5;

function plantStrangers(files: readonly SourceFile[], counts: Map<string, PlantCount>): void {
  for (const [kind, { rule, word, text }] of Object.entries(strangers)) {
    const count: PlantCount = { planted: 0, caught: 0, missed: [] };
    counts.set(kind, count);
    const bearing = files.filter((file) => word.test(file.text));
    const book = [...bearing, ...files.filter((file) => !bearing.includes(file))].slice(0, BOOK);
    for (const file of bearing.slice(0, MOST_STRANGERS)) {
      const { dishes } = readManuscript([file], { only: [] });
      const plant = dishes.length === 1 ? replaced(file, dishes[0]!, rule, word, text) : null;
      if (plant === null) continue;
      const changed = {
        path: file.path,
        text: file.text.slice(0, plant.from) + text + file.text.slice(plant.to),
      };
      const { marks } = readManuscript(
        book.map((each) => (each === file ? changed : each)),
        { only: [rule] },
      );
      const places = marks.flatMap((mark) => [mark, ...mark.related.filter((each) => each.alike === true)]);
      count.planted++;
      const end = plant.from + text.length;
      if (
        places.some((each) => each.file === file.path && each.span.start < end && plant.from < each.span.end)
      )
        count.caught++;
      else count.missed.push(file.path);
    }
  }
}

/** Plants every kind in the first recipes that can bear it. */
export function countStylePlants(files: readonly SourceFile[]): Map<string, PlantCount> {
  const counts = new Map<string, PlantCount>();
  const read = files.flatMap((file) => {
    const { dishes } = readManuscript([file], { only: [] });
    return dishes.length === 1 ? [{ file, dish: dishes[0]! }] : [];
  });
  for (const [kind, { style, plant }] of Object.entries(planters)) {
    const count: PlantCount = { planted: 0, caught: 0, missed: [] };
    counts.set(kind, count);
    for (const { file, dish } of read) {
      if (count.planted >= MOST_OF_A_KIND) break;
      const planted = plant(dish, file);
      if (planted === null) continue;
      count.planted++;
      if (isCaught(file, planted, { ...undecided, ...style, stated: true })) count.caught++;
      else count.missed.push(file.path);
    }
  }
  plantStrangers(files, counts);
  return counts;
}

/** Marked where it was planted and not before, on the same words. */
function isCaught(file: SourceFile, { rule, from, to, text }: StylePlant, style: HouseStyle): boolean {
  const changed = { path: file.path, text: file.text.slice(0, from) + text + file.text.slice(to) };
  const at = (marks: readonly Mark[], end: number): boolean =>
    marks.some((mark) => mark.span.start < end && from < mark.span.end);
  const marksOf = (one: SourceFile): readonly Mark[] => readManuscript([one], { only: [rule], style }).marks;
  return at(marksOf(changed), from + text.length) && (from === to || !at(marksOf(file), to));
}
