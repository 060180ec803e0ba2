/** What a book has to decide about its wording: each decision with its forms and places, and those still open. */
import type { HouseStyle } from '../../manuscript/house-style.js';
import type { Book, Dish } from '../types.js';
import { isDecided } from './house.js';
import type { Aspect, Usage } from './types.js';
import { wordingOf } from './wording.js';

/** A usage and its recipe. */
export interface Place {
  readonly dish: Dish;
  readonly usage: Usage;
  /** The place of the recipe in the book, from 0. */
  readonly order: number;
}

export interface Decision {
  readonly aspect: Aspect;
  readonly about: string;
  /** The most used first; of two that are used alike, the one that came first. */
  readonly forms: readonly Form[];
}

export interface Form {
  readonly form: string;
  /** As most places have it. */
  readonly shown: string;
  readonly places: readonly Place[];
}

/** Every decision of the book, in the order of their first places. */
export function decisionsOf(book: Pick<Book, 'dishes'>): readonly Decision[] {
  let decisions = decided.get(book.dishes);
  if (decisions === undefined) {
    decisions = readDecisions(book);
    decided.set(book.dishes, decisions);
  }
  return decisions;
}

const decided = new WeakMap<Book['dishes'], readonly Decision[]>();

/** More notes of style than these to a recipe are more than an author reads. */
const MOST_TO_A_RECIPE = 2;

/**
 * The decisions that the book has made in more than one way and its house style leaves open, those first that confuse
 * the cook most. Of a small manuscript only so many are told; its style sheet has them all.
 */
export function openDecisions(book: Book, style: HouseStyle): Decision[] {
  return decisionsOf(book)
    .filter(({ aspect, about, forms }) => {
      if (aspect === 'opening') return !style.stated;
      return forms.length > 1 && !isDecided(style, aspect, about);
    })
    .map((decision, index) => ({ decision, index }))
    .toSorted((a, b) => rank(a.decision) - rank(b.decision) || a.index - b.index)
    .slice(0, MOST_TO_A_RECIPE * book.dishes.length)
    .map(({ decision }) => decision);
}

const ORDER: readonly Aspect[] = [
  'term',
  'unit',
  'opening',
  'range',
  'number',
  'degree',
  'scales',
  'spelling',
  'yield',
  'capital',
  'title',
];

function rank({ aspect }: Decision): number {
  return ORDER.indexOf(aspect);
}

function readDecisions(book: Pick<Book, 'dishes'>): Decision[] {
  const all = new Map<string, { aspect: Aspect; about: string; forms: Map<string, Place[]> }>();
  for (const [order, dish] of book.dishes.entries()) {
    for (const usage of wordingOf(dish).usages) {
      // What a sentence opens with is put right recipe by recipe.
      const about =
        usage.aspect === 'opening' ? `opening ${dish.page.path} ${dish.recipe.span.start}` : usage.about;
      const key = `${usage.aspect} ${about}`;
      let decision = all.get(key);
      if (decision === undefined) {
        decision = { aspect: usage.aspect, about, forms: new Map() };
        all.set(key, decision);
      }
      const places = decision.forms.get(usage.form);
      if (places === undefined) decision.forms.set(usage.form, [{ dish, usage, order }]);
      else places.push({ dish, usage, order });
    }
  }
  return [...all.values()].map(({ aspect, about, forms }) => ({
    aspect,
    about,
    forms: [...forms]
      .map(([form, places]) => ({ form, shown: shownOf(form, places), places }))
      .toSorted((a, b) => b.places.length - a.places.length),
  }));
}

function shownOf(form: string, places: readonly Place[]): string {
  const counts = new Map<string, number>();
  for (const { usage } of places) {
    if (usage.shown === undefined) return form;
    counts.set(usage.shown, (counts.get(usage.shown) ?? 0) + 1);
  }
  return [...counts].toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? form;
}
