/** Everything that one recipe decides about its wording. */

import type { Recipe } from '../../anatomy/types.js';
import { readText } from '../../grammar/text.js';
import type { Extent, Item } from '../../grammar/types.js';
import { once } from '../../manuscript/once.js';
import type { Passage } from '../../manuscript/passage.js';
import type { Dish, ReadPart } from '../types.js';
import { type Naming, namingsOf, spellingUsages } from './names.js';
import { quantityUsages } from './quantities.js';
import { statementUsages } from './statements.js';
import type { Usage } from './types.js';

export interface Wording {
  /** All but what foods are called. */
  readonly usages: readonly Usage[];
  readonly namings: readonly Naming[];
}

/** The wording of a recipe. */
export const wordingOf = once(({ page, recipe, parts, mentions }: Dish): Wording => {
  const usages = [
    ...quantitiesIn(recipe, parts),
    ...statementUsages(page, recipe, parts),
    ...spellingUsages(textsOf(recipe)),
  ];
  return { usages, namings: namingsOf(recipe, mentions) };
});

/** All that a recipe says in words. */
export function textsOf(recipe: Recipe): Passage[] {
  return [
    ...(recipe.title === null ? [] : [recipe.title]),
    ...recipe.headnote,
    ...recipe.listings.map(({ passage }) => passage),
    ...recipe.steps.map(({ passage }) => passage),
    ...recipe.notes,
    ...recipe.storage,
    ...recipe.equipment,
  ];
}

/** Yields and times stand in fields, which have a shortness of their own. */
function quantitiesIn(recipe: Recipe, parts: readonly ReadPart[]): Usage[] {
  return [
    ...recipe.listings.flatMap(({ passage, line }) => {
      const { measures, dimensions, foods } = line;
      const items = [
        ...measures,
        ...foods.flatMap((food) => food.measures),
        ...dimensions,
        ...asides(passage, line),
      ];
      return quantityUsages(passage, apart(items));
    }),
    ...parts.flatMap(({ part, passage, items }) =>
      part === 'step' || part === 'headnote' || part === 'note' ? quantityUsages(passage, items) : [],
    ),
  ];
}

const FIGURE = /[\d¼-¾⅐-⅞]/;

/** Quantities in what the line says beside its amounts: "(about 1 cup)", "cut into 2-inch pieces". */
function asides(passage: Passage, line: Recipe['listings'][number]['line']): Item[] {
  const beside = [...line.asides, ...line.preparation, ...line.unread, ...line.states];
  return beside
    .filter(({ text }) => FIGURE.test(text))
    .flatMap(({ start, end }) => readText(passage.text.slice(start, end)).map((item) => moved(item, start)));
}

/** The item with its places, and those of what it holds, further on by `by`. */
function moved(item: Item, by: number): Item {
  if (by === 0) return item;
  const place = { start: item.start + by, end: item.end + by };
  if (item.kind === 'temperature') {
    return { ...item, ...place, equals: item.equals.map((each) => moved(each, by) as typeof each) };
  }
  if (item.kind !== 'measure') return { ...item, ...place };
  const each = (measure: typeof item): typeof item => moved(measure, by) as typeof item;
  return {
    ...item,
    ...place,
    plus: item.plus.map(each),
    equals: item.equals.map(each),
    pack: item.pack === null ? null : each(item.pack),
  };
}

/** Each place once: a measure may be both the line's and a food's. */
function apart<T extends Extent>(items: readonly T[]): T[] {
  const kept: T[] = [];
  for (const item of items.toSorted((a, b) => a.start - b.start || b.end - a.end)) {
    const last = kept.at(-1);
    if (last === undefined || item.start >= last.end) kept.push(item);
  }
  return kept;
}
