/** Reads a manuscript: every file into recipes, every rule over them, the marks stetted, weighed and put in order. */
import { rules } from '../../rules/index.js';
import type { Finding, Mark, RecipeRule, Rule, Weight } from '../../rules/rule.js';
import { readContents } from '../anatomy/contents.js';
import type { Recipe } from '../anatomy/types.js';
import { type BookNames, namesOf } from '../kitchen/book-names.js';
import { readDish } from '../kitchen/dish.js';
import type { Book, Dish } from '../kitchen/types.js';
import { type HouseStyle, isMatter, rulingOn, undecided } from '../manuscript/house-style.js';
import { openPage } from '../manuscript/page.js';
import type { SourceFile } from '../manuscript/types.js';
import { stetUses } from './stet-uses.js';
import { applyStets, type RecipePlace } from './stets.js';
import type { PageReading, Reading, ReadingOptions } from './types.js';

/** Everything that can be said of the texts. Never fails on a text; files are read in the order given. */
export function readManuscript(files: readonly SourceFile[], options: ReadingOptions = {}): Reading {
  const read = files.map((file, index) => {
    const page = readPage(file, options.style);
    options.onPage?.(index + 1, files.length);
    return page;
  });
  return readBook(read, options);
}

/** What one file says by itself, before any rule has looked at it. Front and back matter holds no recipes. */
export function readPage(file: SourceFile, style: HouseStyle = undecided): PageReading {
  const page = openPage(file);
  if (isMatter(style, page.path)) return { page, dishes: [], unclear: [] };
  const { recipes, unclear } = readContents(page);
  return {
    page,
    dishes: recipes.map((recipe) => readDish(page, recipe)),
    unclear: unclear.map((stretch) => ({ file: page.path, ...stretch })),
  };
}

/** The marks that the rules of one recipe left on a page. */
interface OwnMarks {
  readonly alone: readonly Mark[];
  /** Those of rules that ask what else the book has, and what it was called then. */
  readonly named: readonly Mark[];
  readonly names: BookNames;
}

/** What pages that were read before, under the same options, have by themselves: none of it is asked for again. */
export type KnownMarks = WeakMap<PageReading, OwnMarks>;

/** The rules over files that have been read, in the order given. New marks are added to those that are `known`. */
export function readBook(
  read: readonly PageReading[],
  options: ReadingOptions = {},
  known: KnownMarks = new WeakMap(),
): Reading {
  const { only, style = undecided } = options;
  const chosen = only === undefined ? rules : rules.filter((rule) => only.includes(rule.name));
  const book: Book = {
    pages: read.map(({ page }) => page),
    dishes: read.flatMap(({ dishes }) => dishes),
    unclear: read.flatMap(({ unclear }) => unclear),
  };
  const recipes = book.dishes.map(({ page, recipe }) => ({
    file: page.path,
    ...recipe.span,
    title: titleOf(recipe),
  }));
  const names = namesOf(book);
  const ofRecipes = chosen.filter((rule) => rule.scope === 'recipe');
  const asking = ofRecipes.filter(asksNames);
  const others = ofRecipes.filter((rule) => !asksNames(rule));
  const own = read.map((page) => {
    const before = known.get(page);
    if (before?.names === names) return before;
    const alone = before?.alone ?? recipeMarks(others, page.dishes, style, names);
    const now = { alone, named: recipeMarks(asking, page.dishes, style, names), names };
    known.set(page, now);
    return now;
  });
  const marks = [
    ...own.flatMap(({ alone }) => alone),
    ...own.flatMap(({ named }) => named),
    ...bookMarks(chosen, book, style),
  ];
  return settle(book, recipes, marks, chosen, style);
}

/** Whether a rule asks for the names of the book: it says so by taking them as its third argument. */
function asksNames(rule: RecipeRule): boolean {
  return rule.look.length > 2;
}

function recipeMarks(
  chosen: readonly RecipeRule[],
  dishes: readonly Dish[],
  style: HouseStyle,
  names: BookNames,
): Mark[] {
  return chosen.flatMap((rule) =>
    dishes.flatMap((dish) =>
      [...rule.look(dish, style, names)].map((finding) =>
        markOf(rule, finding, dish.page.path, titleOf(dish.recipe)),
      ),
    ),
  );
}

/** The marks of findings that a rule of the book gives again as they were, so that an editor sees that they are the same. */
const given = new WeakMap<Finding, Mark>();

/** What is said of stets is said when all other marks are settled. */
function bookMarks(chosen: readonly Rule[], book: Book, style: HouseStyle): Mark[] {
  return chosen.flatMap((rule) =>
    rule.scope === 'book'
      ? [...rule.look(book, style)].map((finding) => {
          const mark = given.get(finding) ?? markOf(rule, finding, finding.file, finding.recipe);
          given.set(finding, mark);
          return mark;
        })
      : [],
  );
}

function markOf(rule: Rule, finding: Finding, file: string, recipe: string | null): Mark {
  const { span, subject, message, advice, weight = rule.weight, related = [], mends = [] } = finding;
  return { rule: rule.name, weight, file, recipe, subject, message, advice, span, related, mends };
}

function titleOf(recipe: Recipe): string | null {
  return recipe.title?.text.replace(/\s+/g, ' ').trim() ?? null;
}

function settle(
  book: Book,
  recipes: readonly RecipePlace[],
  marks: readonly Mark[],
  chosen: readonly Rule[],
  style: HouseStyle,
): Reading {
  const { pages, dishes } = book;
  const isOff = ({ rule }: Mark, file: string): boolean => rulingOn(style, file, rule) === 'off';
  const { standing, stetted, silenced } = applyStets(pages, recipes, marks, isOff);
  const uses = stetUses(pages, recipes, silenced, chosen, rules, style);
  const ofStets = chosen.flatMap((rule) =>
    rule.scope === 'stets'
      ? [...rule.look(uses)]
          .map((finding) => markOf(rule, finding, finding.file, finding.recipe))
          .filter((mark) => !isOff(mark, mark.file))
      : [],
  );
  const all = inOrder([...standing, ...ofStets], pages).map((mark) => weighed(mark, style));
  const counts: Record<Weight, number> = { fault: 0, query: 0, note: 0 };
  for (const mark of all) counts[mark.weight]++;
  return {
    pages,
    dishes,
    marks: all,
    stetted: stetted.map((each) => ({ ...each, mark: weighed(each.mark, style) })),
    counts,
    style,
  };
}

/** The mark with the weight that the house style gives its rule. */
function weighed(mark: Mark, style: HouseStyle): Mark {
  const weight = rulingOn(style, mark.file, mark.rule);
  return weight === null || weight === 'off' ? mark : { ...mark, weight };
}

function inOrder(marks: readonly Mark[], pages: Book['pages']): Mark[] {
  const order = new Map(pages.map((page, index) => [page.path, index]));
  return [...marks].sort(
    (a, b) =>
      order.get(a.file)! - order.get(b.file)! ||
      a.span.start - b.span.start ||
      a.span.end - b.span.end ||
      compare(a.rule, b.rule),
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
