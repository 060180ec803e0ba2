/** What the pages and recipes of a book are called: all that one recipe need know of the others. */
import { once } from '../manuscript/once.js';
import type { Passage } from '../manuscript/passage.js';
import type { Page } from '../manuscript/types.js';
import { Paths } from './link-targets.js';
import { type Title, Titles, titleFrom } from './titles.js';
import type { Book, Dish } from './types.js';

/** The same object from reading to reading while no name changes, so that what rests on names alone is kept with it. */
export interface BookNames {
  readonly titles: Titles;
  readonly paths: Paths;
}

/** The titles of a page, and where each stands on it. */
interface PageNames {
  readonly path: string;
  readonly titles: readonly Title[];
  readonly passages: readonly Passage[];
}

/** What the book's pages and recipes are called. */
export const namesOf = once((book: Book): BookNames => namesFrom(pageNames(book)));

/** Where a title of the book stands. */
export function standingOf(book: Book, { path, order }: Title): { page: Page; passage: Passage } {
  const page = pagesByPath(book).get(path)!;
  return { page, passage: byPage.get(page)!.passages[order]! };
}

const pagesByPath = once(({ pages }: Book) => new Map(pages.map((page) => [page.path, page])));
const byPage = new WeakMap<Page, PageNames>();

/** The names found last: of two readings of a book most have the same. */
let last: { readonly pages: readonly PageNames[]; readonly names: BookNames } | null = null;

function namesFrom(pages: readonly PageNames[]): BookNames {
  if (last !== null && areAlike(last.pages, pages)) {
    last = { pages, names: last.names };
    return last.names;
  }
  const all = pages.flatMap(({ titles }) => titles);
  const names = {
    titles: new Titles([
      ...all.filter(({ ofRecipe }) => ofRecipe),
      ...all.filter(({ ofRecipe }) => !ofRecipe),
    ]),
    paths: new Paths(pages.map(({ path }) => path)),
  };
  last = { pages, names };
  return names;
}

function areAlike(some: readonly PageNames[], others: readonly PageNames[]): boolean {
  return some.length === others.length && some.every((each, index) => isAlike(each, others[index]!));
}

function isAlike(one: PageNames, other: PageNames): boolean {
  if (one === other) return true;
  return (
    one.path === other.path &&
    one.titles.length === other.titles.length &&
    one.titles.every((title, index) => {
      const same = other.titles[index]!;
      return title.text === same.text && title.ofRecipe === same.ofRecipe && title.within === same.within;
    })
  );
}

function pageNames({ pages, dishes }: Book): PageNames[] {
  const dishesOn = new Map<Page, Dish[]>();
  for (const dish of dishes) {
    const same = dishesOn.get(dish.page);
    if (same === undefined) dishesOn.set(dish.page, [dish]);
    else same.push(dish);
  }
  return pages.map((page) => {
    let names = byPage.get(page);
    if (names === undefined) {
      names = readNames(page, dishesOn.get(page) ?? []);
      byPage.set(page, names);
    }
    return names;
  });
}

function readNames(page: Page, dishes: readonly Dish[]): PageNames {
  const { path } = page;
  const titles: Title[] = [];
  const passages: Passage[] = [];
  const add = (passage: Passage, ofRecipe: boolean, within: boolean): void => {
    titles.push(titleFrom(passage.text, { path, order: titles.length, ofRecipe, within }));
    passages.push(passage);
  };
  const taken = new Set<number>();
  for (const { recipe } of dishes) {
    if (recipe.title === null) continue;
    taken.add(recipe.title.span().start);
    add(recipe.title, true, false);
  }
  for (const { recipe } of dishes)
    for (const { heading } of recipe.components) if (heading !== null) add(heading, false, true);
  for (const { key, passage } of page.front) if (key === 'title') add(passage, false, false);
  for (const block of page.blocks)
    if (block.type === 'heading' && !taken.has(block.passage.span().start))
      add(block.passage, false, dishes.length > 0);
  return { path, titles, passages };
}
