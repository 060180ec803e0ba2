/** Knows how the marks of a reading are grouped and numbered for people: by recipe, from Q1 on in each. */
import type { Mark } from '../../rules/rule.js';
import type { Recipe } from '../anatomy/types.js';
import type { Reading } from '../reading/types.js';
import { titleOf } from './places.js';

/** The marks of one recipe, or those of a file that belong to none. */
export interface Group {
  readonly title: string | null;
  readonly file: string;
  readonly marks: readonly Mark[];
}

/** In the order of the marks. Two recipes of one title in one file are told apart by where the mark stands. */
export function groupMarks(reading: Pick<Reading, 'dishes' | 'marks'>): Group[] {
  const titled = new Map<string, Recipe[]>();
  for (const { recipe } of reading.dishes) {
    const key = JSON.stringify([recipe.file, titleOf(recipe)]);
    titled.set(key, [...(titled.get(key) ?? []), recipe]);
  }
  const groups = new Map<string, Group & { readonly marks: Mark[] }>();
  for (const mark of reading.marks) {
    const named = JSON.stringify([mark.file, mark.recipe]);
    const recipe = titled
      .get(named)
      ?.find(({ span }) => span.start <= mark.span.start && mark.span.start <= span.end);
    const key = mark.recipe === null ? named : `${named} ${recipe?.span.start}`;
    const group = groups.get(key) ?? { title: mark.recipe, file: mark.file, marks: [] };
    group.marks.push(mark);
    groups.set(key, group);
  }
  return [...groups.values()];
}

/** What the mark at this place (from 0) of its group is called. */
export function numberOf(index: number): string {
  return `Q${index + 1}`;
}
