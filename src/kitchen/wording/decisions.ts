/** What a book has to decide about its wording: each decision with its forms and places, and those still open. */
import type { HouseStyle } from '../../manuscript/house-style.js';
import { once } from '../../manuscript/once.js';
import type { Span } from '../../manuscript/types.js';
import type { Book, Dish } from '../types.js';
import { isDecided } from './house.js';
import { choicesOf, usageOf } from './names.js';
import type { Aspect, Usage } from './types.js';
import { wordingOf } from './wording.js';

/** A usage and its recipe; the same object as long as the recipe is. */
export interface Place {
  readonly dish: Dish;
  readonly usage: Usage;
  /** Where it stands in the recipe's file. */
  readonly span: Span;
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

/** Every decision of the book; of names and spellings of foods only those made in more than one way. */
export function decisionsOf(book: Pick<Book, 'dishes'>): readonly Decision[] {
  return decisionsAmong(book.dishes);
}

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

/** The places of one recipe that are alike: what it adds to a form of a decision. */
interface Share {
  readonly key: string;
  readonly aspect: Aspect;
  readonly about: string;
  readonly form: string;
  readonly shown: string | undefined;
  readonly either: string | undefined;
  /** Whether it is about what a food is called. */
  readonly names: boolean;
  readonly places: Place[];
}

const decisionsAmong = once((dishes: readonly Dish[]): readonly Decision[] => {
  const all = new Map<string, { aspect: Aspect; about: string; forms: Map<string, Share[]> }>();
  const open = openNames(dishes);
  for (const dish of dishes) {
    for (const share of sharesOf(dish)) {
      const { key, aspect, about, form, names } = share;
      if (names && !open.has(key)) continue;
      let decision = all.get(key);
      if (decision === undefined) {
        decision = { aspect, about, forms: new Map() };
        all.set(key, decision);
      }
      const same = decision.forms.get(form);
      if (same === undefined) decision.forms.set(form, [share]);
      else same.push(share);
    }
  }
  return [...all.values()].map(({ aspect, about, forms }) => ({
    aspect,
    about,
    forms: [...settled(forms, dishes)]
      .map(([form, own]) => ({
        form,
        shown: shownOf(form, own),
        places: own.flatMap(({ places }) => places),
      }))
      .toSorted((a, b) => b.places.length - a.places.length),
  }));
});

/** Counted once a recipe: of a book that is being written most recipes stay as they are. */
const sharesOf = once((dish: Dish): readonly Share[] => {
  const found = new Map<string, Share>();
  const add = (about: string, usage: Usage, names: boolean): void => {
    const { aspect, form, shown, either } = usage;
    const own = JSON.stringify([aspect, about, form, shown, either, names]);
    let share = found.get(own);
    if (share === undefined) {
      share = { key: `${aspect} ${about}`, aspect, about, form, shown, either, names, places: [] };
      found.set(own, share);
    }
    share.places.push({ dish, usage, span: usage.passage.span(usage.start, usage.end) });
  };
  const { usages, namings } = wordingOf(dish);
  for (const naming of namings)
    for (const choice of choicesOf(naming.named)) add(choice.about, usageOf(choice, naming), true);
  for (const usage of usages) {
    // What a sentence opens with is put right recipe by recipe.
    const isOpening = usage.aspect === 'opening';
    add(isOpening ? `opening ${dish.page.path} ${dish.recipe.span.start}` : usage.about, usage, false);
  }
  return [...found.values()];
});

/** The decisions about names that some name makes otherwise than another: most foods have one name, and need no counting. */
function openNames(dishes: readonly Dish[]): ReadonlySet<string> {
  const forms = new Map<string, string>();
  const open = new Set<string>();
  for (const dish of dishes) {
    for (const { key, form, names } of sharesOf(dish)) {
      if (!names) continue;
      const known = forms.get(key);
      if (known === undefined) forms.set(key, form);
      else if (known !== form) open.add(key);
    }
  }
  return open;
}

/** A place that may be of either form is of that which the book has more of otherwise. */
function settled(
  forms: ReadonlyMap<string, readonly Share[]>,
  dishes: readonly Dish[],
): ReadonlyMap<string, readonly Share[]> {
  const moved = new Map(forms);
  for (const [form, own] of forms) {
    const unclear = own.filter(({ either }) => either !== undefined);
    const other = unclear[0]?.either;
    const others = other === undefined ? undefined : forms.get(other);
    if (other === undefined || others === undefined || count(others) <= count(own) - count(unclear)) continue;
    moved.set(other, inOrder([...others, ...unclear], dishes));
    const left = own.filter((share) => !unclear.includes(share));
    if (left.length === 0) moved.delete(form);
    else moved.set(form, left);
  }
  return moved;
}

function count(all: readonly Share[]): number {
  return all.reduce((sum, { places }) => sum + places.length, 0);
}

function inOrder(all: readonly Share[], dishes: readonly Dish[]): Share[] {
  const order = orderOf(dishes);
  const at = ({ places }: Share): number => order.get(places[0]!.dish)!;
  return all.toSorted((one, other) => at(one) - at(other));
}

/** The place of each recipe in the book, from 0. */
export const orderOf = once(
  (dishes: readonly Dish[]): ReadonlyMap<Dish, number> => new Map(dishes.map((dish, index) => [dish, index])),
);

function shownOf(form: string, all: readonly Share[]): string {
  const counts = new Map<string, number>();
  for (const { shown, places } of all) {
    if (shown === undefined) return form;
    counts.set(shown, (counts.get(shown) ?? 0) + places.length);
  }
  return [...counts].toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? form;
}
