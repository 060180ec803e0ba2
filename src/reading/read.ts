/** Reads a manuscript: every file into recipes, every rule over them, the marks stetted and put in order. */

import { rules } from '../../rules/index.js';
import type { Finding, Mark, Rule, Weight } from '../../rules/rule.js';
import { readContents } from '../anatomy/contents.js';
import type { Recipe } from '../anatomy/types.js';
import { readDish } from '../kitchen/dish.js';
import type { Book, Dish } from '../kitchen/types.js';
import { openPage } from '../manuscript/page.js';
import type { Page, SourceFile } from '../manuscript/types.js';
import { applyStets } from './stets.js';
import type { Reading, ReadingOptions } from './types.js';

/** Everything that can be said of the texts. Never fails on a text; files are read in the order given. */
export function readManuscript(files: readonly SourceFile[], options: ReadingOptions = {}): Reading {
  const chosen =
    options.only === undefined ? rules : rules.filter((rule) => options.only!.includes(rule.name));
  const pages: Page[] = [];
  const dishes: Dish[] = [];
  const unclear: Book['unclear'][number][] = [];
  files.forEach((file, index) => {
    const page = openPage(file);
    const contents = readContents(page);
    pages.push(page);
    for (const recipe of contents.recipes) dishes.push(readDish(page, recipe));
    for (const stretch of contents.unclear) unclear.push({ file: page.path, ...stretch });
    options.onPage?.(index + 1, files.length);
  });
  const marks = chosen.flatMap((rule) => marksOf(rule, { dishes, pages, unclear }));
  return settle(pages, dishes, marks);
}

function marksOf(rule: Rule, book: Book): Mark[] {
  if (rule.scope === 'book') {
    return [...rule.look(book)].map((finding) => markOf(rule, finding, finding.file, finding.recipe));
  }
  return book.dishes.flatMap((dish) =>
    [...rule.look(dish)].map((finding) => markOf(rule, finding, dish.page.path, titleOf(dish.recipe))),
  );
}

function markOf(rule: Rule, finding: Finding, file: string, recipe: string | null): Mark {
  const { span, subject, message, advice, weight = rule.weight, related = [], mends = [] } = finding;
  return { rule: rule.name, weight, file, recipe, subject, message, advice, span, related, mends };
}

function titleOf(recipe: Recipe): string | null {
  return recipe.title?.text.replace(/\s+/g, ' ').trim() ?? null;
}

function settle(pages: readonly Page[], dishes: readonly Dish[], marks: readonly Mark[]): Reading {
  const order = new Map(pages.map((page, index) => [page.path, index]));
  const sorted = [...marks].sort(
    (a, b) =>
      order.get(a.file)! - order.get(b.file)! ||
      a.span.start - b.span.start ||
      a.span.end - b.span.end ||
      compare(a.rule, b.rule),
  );
  const { standing, stetted } = applyStets(pages, sorted);
  const counts: Record<Weight, number> = { fault: 0, query: 0, note: 0 };
  for (const mark of standing) counts[mark.weight]++;
  return { pages, dishes, marks: standing, stetted, counts };
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
