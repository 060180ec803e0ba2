/** Follows the references of a book: which recipe each name or link means, and which lead nowhere. */

import { readText } from '../grammar/text.js';
import type { Item } from '../grammar/types.js';
import { foodAt } from '../larder/foods.js';
import { headingKind } from '../larder/headings.js';
import { fold } from '../larder/names.js';
import { once } from '../manuscript/once.js';
import type { Passage } from '../manuscript/passage.js';
import type { Page, PageLink, Span } from '../manuscript/types.js';
import { type BookNames, namesOf } from './book-names.js';
import { hasAnchor } from './link-targets.js';
import { capitalRuns, hasSign, type NamedReference, namedReferences } from './reference-names.js';
import { lettersOf, spelledAlike, type Title, type Titles } from './titles.js';
import type { Book, Dish } from './types.js';

/** A place that sends the reader to another recipe. */
export interface Reference extends NamedReference {
  readonly dish: Dish;
  readonly passage: Passage;
  /** What it can mean; empty where nothing in the book is called so. */
  readonly targets: readonly Title[];
  /** Whether the name is the whole of a title. */
  readonly exact: boolean;
}

/** The references by name of all recipes of a book. */
export const referencesOf = once((book: Book): readonly Reference[] =>
  book.dishes.flatMap((dish) => referencesIn(dish, namesOf(book))),
);

/** Those of one recipe. They stay as they are while recipe and names do. */
export function referencesIn(dish: Dish, names: BookNames): readonly Reference[] {
  let known = byDish.get(dish);
  if (known?.names !== names) {
    known = { names, references: readReferences(dish, names.titles) };
    byDish.set(dish, known);
  }
  return known.references;
}

const byDish = new WeakMap<Dish, { readonly names: BookNames; readonly references: readonly Reference[] }>();

/** A link that should lead to a place in the manuscript and does not, with what it misses: the file or the heading in it. */
export interface BrokenLink {
  readonly link: PageLink;
  readonly page: Page;
  readonly misses: 'file' | 'heading';
  /** Whether it can be nothing but a file of the manuscript. */
  readonly sure: boolean;
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
  const own = dish.recipe.title?.text;
  const isOther = (title: Title): boolean =>
    title.ofRecipe && (title.path !== path || own === undefined || !spelledAlike(title.text, own));
  return referencesIn(dish, names).some(
    ({ passage, start, end, sign, targets }) =>
      (sign !== 'capitals' || targets.some(isOther)) && touches(passage.span(start, end), span),
  );
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
    for (const reference of namedReferences(passage.text, items ?? readText(passage.text), listing, inDish)) {
      // "See Notes" is about this page.
      if (headingKind(reference.name) !== null) continue;
      const exact = titles.exact(reference.name);
      const targets = exact.length > 0 ? exact : titles.loosely(reference.name);
      found.push({ ...reference, dish, passage, targets, exact: exact.length > 0 });
    }
  };
  const { recipe } = dish;
  for (const passage of recipe.headnote) look(passage, null, null, false);
  for (const listing of recipe.listings) look(listing.passage, null, listing, true);
  for (const { step, items } of dish.steps) look(step.passage, items, null, true);
  for (const passage of [...recipe.notes, ...recipe.storage, ...recipe.rest])
    look(passage, null, null, false);
  return found;
}
