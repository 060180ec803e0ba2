/** Follows the references of a book: which recipe each name or link means, and which lead nowhere. */

import { readText } from '../grammar/text.js';
import type { Item } from '../grammar/types.js';
import { foodAt } from '../larder/foods.js';
import { headingKind } from '../larder/headings.js';
import { fold } from '../larder/names.js';
import { once } from '../manuscript/once.js';
import type { Passage } from '../manuscript/passage.js';
import { passagesOf } from '../manuscript/texts.js';
import type { Page, PageLink, Span } from '../manuscript/types.js';
import { type BookNames, namesOf } from './book-names.js';
import { hasAnchor } from './link-targets.js';
import { capitalRuns, hasSign, type NamedReference, namedReferences } from './reference-names.js';
import { lettersOf, spelledAlike, type Title, type Titles } from './titles.js';
import type { Book, Dish } from './types.js';

/** A place that sends the reader to another recipe. */
export interface Reference extends NamedReference {
  /** The page that sends the reader, and the recipe in which it does so; null for a word of welcome, a chapter's opening or an index. */
  readonly from: Page;
  readonly dish: Dish | null;
  readonly passage: Passage;
  /** What it can mean; empty where nothing in the book is called so. */
  readonly targets: readonly Title[];
  /** Whether the name is the whole of a title. */
  readonly exact: boolean;
}

/** The references by name of a book: those of its recipes, and those of what is none. */
export const referencesOf = once((book: Book): readonly Reference[] => {
  const names = namesOf(book);
  const dishes = dishesOf(book);
  return [
    ...book.dishes.flatMap((dish) => referencesIn(dish, names)),
    ...book.pages.flatMap((page) => referencesBeside(page, dishes.get(page) ?? [], names)),
  ];
});

/** Those of one recipe. They stay as they are while recipe and names do. */
export function referencesIn(dish: Dish, names: BookNames): readonly Reference[] {
  let known = byDish.get(dish);
  if (known?.names !== names) {
    known = { names, references: readReferences(dish, names.titles) };
    byDish.set(dish, known);
  }
  return known.references;
}

/** Those of a page that stand in none of its recipes. They stay as they are while page and names do. */
function referencesBeside(page: Page, dishes: readonly Dish[], names: BookNames): readonly Reference[] {
  let known = byPage.get(page);
  if (known?.names !== names) {
    known = { names, references: readBeside(page, dishes, names.titles) };
    byPage.set(page, known);
  }
  return known.references;
}

interface Known {
  readonly names: BookNames;
  readonly references: readonly Reference[];
}

const byPage = new WeakMap<Page, Known>();
const byDish = new WeakMap<Dish, Known>();

/** A link that should lead to a place in the manuscript and does not, with what it misses: the file or the heading in it. */
export interface BrokenLink {
  readonly link: PageLink;
  readonly page: Page;
  readonly misses: 'file' | 'heading';
  /** Whether it can be nothing but a file of the manuscript. */
  readonly sure: boolean;
}

/** A link that leads to a page of the manuscript, and the recipe that it means; null where the page has none, or several. */
export interface FollowedLink {
  readonly link: PageLink;
  readonly page: Page;
  /** The path of the page that it leads to. */
  readonly to: string;
  readonly title: Title | null;
}

export function* followedLinks(book: Book): Iterable<FollowedLink> {
  const { paths, titles } = namesOf(book);
  for (const page of book.pages) {
    for (const link of page.links) {
      const led = paths.follow(page.path, link.target);
      if (led === null || led.path === null) continue;
      const there = titles.recipes.filter((title) => title.path === led.path);
      const letters = lettersOf(led.anchor ?? '');
      const named = there.filter((title) => title.letters === letters);
      const [title = null, ...others] = named.length > 0 ? named : there;
      yield { link, page, to: led.path, title: others.length > 0 ? null : title };
    }
  }
}

export function* brokenLinks(book: Book): Iterable<BrokenLink> {
  const { paths } = namesOf(book);
  const byPath = new Map(book.pages.map((page) => [page.path, page]));
  for (const page of book.pages) {
    for (const link of page.links) {
      const led = paths.follow(page.path, link.target);
      if (led === null) continue;
      if (led.path === null) yield { link, page, misses: 'file', sure: led.sure };
      else if (led.anchor !== null && led.anchor !== '' && !hasAnchor(byPath.get(led.path)!, led.anchor))
        yield { link, page, misses: 'heading', sure: true };
    }
  }
}

/** Whether words of a dish stand in a reference, so that they name what another recipe makes: by name, or by a link. */
export function refersToRecipe(names: BookNames, dish: Dish, span: Span): boolean {
  const { links, path } = dish.page;
  if (links.some((link) => touches(link.span, span) && names.paths.follow(path, link.target) !== null))
    return true;
  return referencesIn(dish, names).some(
    ({ passage, start, end, sign, targets }) =>
      (sign !== 'capitals' || targets.some((title) => !isOwn(title, dish))) &&
      touches(passage.span(start, end), span),
  );
}

/** Whether words of a dish are part of another recipe's title, with which they are referred to. */
export function namesRecipe(names: BookNames, dish: Dish, span: Span): boolean {
  return referencesIn(dish, names).some(
    ({ passage, start, end, exact, targets }) =>
      exact && targets.some((title) => !isOwn(title, dish)) && touches(passage.span(start, end), span),
  );
}

/** Whether a title is no other recipe's: the dish's own, or that of a part. */
export function isOwn(title: Title, { page, recipe }: Dish): boolean {
  const own = recipe.title?.text;
  return !title.ofRecipe || (title.path === page.path && own !== undefined && spelledAlike(title.text, own));
}

function touches(one: Span, other: Span): boolean {
  return one.start < other.end && other.start < one.end;
}

/** References whose spelling is not the title's: other accents or hyphens, or a slip of the pen that no food's name explains. */
export function* misspelledReferences(
  book: Book,
): Iterable<{ readonly reference: Reference; readonly title: Title; readonly sameWords: boolean }> {
  const { titles } = namesOf(book);
  for (const reference of referencesOf(book)) {
    const { name, targets, exact, proper, sign } = reference;
    if (!proper) continue;
    if (exact) {
      const title = targets[0]!;
      // Plurals differ as they must in a sentence; only the spelling of the same form is compared.
      const same = lettersOf(name) === title.letters;
      if (same && !targets.some(({ text }) => spelledAlike(withoutArticle(name), withoutArticle(text))))
        yield { reference, title, sameWords: true };
      continue;
    }
    const title =
      targets.length > 0 || (sign === 'capitals' && isFood(name)) ? null : titles.misspelled(name);
    if (title !== null) yield { reference, title, sameWords: false };
  }
}

/** Pairs of references to one recipe that give it different pages; of two the later is the first of the pair. */
export function* conflictingPages(
  book: Book,
): Iterable<{ readonly reference: Reference; readonly other: Reference }> {
  const byTitle = new Map<string, Reference[]>();
  for (const reference of referencesOf(book)) {
    const [title] = reference.targets;
    if (reference.page === null || title === undefined) continue;
    // A name that may mean one of several tells nothing of their pages.
    if (reference.targets.some(({ key }) => key !== title.key)) continue;
    const same = byTitle.get(title.key);
    if (same === undefined) byTitle.set(title.key, [reference]);
    else same.push(reference);
  }
  for (const references of byTitle.values()) {
    const usual = mostUsed(references);
    for (const reference of references) {
      if (reference.page === usual.page) continue;
      yield { reference, other: usual };
    }
  }
}

function mostUsed(references: readonly Reference[]): Reference {
  const counts = new Map<number | null, number>();
  for (const { page } of references) counts.set(page, (counts.get(page) ?? 0) + 1);
  const count = ({ page }: Reference): number => counts.get(page) ?? 0;
  return references.reduce((best, each) => (count(each) > count(best) ? each : best));
}

function withoutArticle(text: string): string {
  return text.replace(/^(?:the|an?) /i, '');
}

function isFood(name: string): boolean {
  const keys = name.split(/[^\p{L}\p{M}\p{N}'’]+/u).map(fold);
  return foodAt(keys, 0)?.length === keys.length;
}

function readReferences(dish: Dish, titles: Titles): Reference[] {
  const found: Reference[] = [];
  const look = (
    passage: Passage,
    items: readonly Item[] | null,
    listing: Dish['recipe']['listings'][number] | null,
    inDish: boolean,
  ): void => {
    const mayName = inDish && capitalRuns(passage.text).some((run) => titles.mayName(run));
    if (!mayName && !hasSign(passage.text)) return;
    const named = namedReferences(passage.text, items ?? readText(passage.text), listing, inDish);
    found.push(...followed(named, { from: dish.page, dish, passage }, titles));
  };
  const { recipe } = dish;
  for (const passage of recipe.headnote) look(passage, null, null, false);
  for (const listing of recipe.listings) look(listing.passage, null, listing, true);
  for (const { step, items } of dish.steps) look(step.passage, items, null, true);
  for (const passage of [...recipe.notes, ...recipe.storage, ...recipe.rest])
    look(passage, null, null, false);
  return found;
}

/** References in what is no recipe: only those by a name with capitals and a sign, for running text is full of other names. */
function readBeside(page: Page, own: readonly Dish[], titles: Titles): Reference[] {
  return passagesOf(page.blocks).flatMap((passage) => {
    if (!hasSign(passage.text)) return [];
    const { start } = passage.span();
    if (own.some(({ recipe: { span } }) => span.start <= start && start < span.end)) return [];
    const named = namedReferences(passage.text, readText(passage.text), null, false);
    return followed(
      named.filter(({ proper }) => proper),
      { from: page, dish: null, passage },
      titles,
    );
  });
}

/** The names with what they can mean. "See Notes" is about this page. */
function followed(
  named: readonly NamedReference[],
  place: Pick<Reference, 'from' | 'dish' | 'passage'>,
  titles: Titles,
): Reference[] {
  return named
    .filter(({ name }) => headingKind(name) === null)
    .map((each) => {
      const reference = titles.exact(each.name).length > 0 ? each : (withoutOpening(each, titles) ?? each);
      const exact = titles.exact(reference.name);
      const targets = exact.length > 0 ? exact : titles.loosely(reference.name);
      return { ...reference, ...place, targets, exact: exact.length > 0 };
    });
}

/** "Begin with the Plum Jam": what is left behind the article, where that is the whole of a title. */
function withoutOpening(reference: NamedReference, titles: Titles): NamedReference | null {
  const { name, start } = reference;
  for (const { index } of name.matchAll(/(?<=\s(?:the|an?|our|my|your)\s)\p{Lu}/gu)) {
    const left = name.slice(index);
    if (left.includes(' ') && titles.exact(left).length > 0)
      return { ...reference, name: left, start: start + index };
  }
  return null;
}

function dishesOf(book: Book): ReadonlyMap<Page, readonly Dish[]> {
  const byPage = new Map<Page, Dish[]>();
  for (const dish of book.dishes) {
    const same = byPage.get(dish.page);
    if (same === undefined) byPage.set(dish.page, [dish]);
    else same.push(dish);
  }
  return byPage;
}
