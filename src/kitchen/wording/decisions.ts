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

/** What some recipes add to one decision: their shares by form. */
interface Part {
  readonly aspect: Aspect;
  readonly about: string;
  readonly names: boolean;
  readonly forms: ReadonlyMap<string, readonly Share[]>;
}

const decisionsAmong = once((dishes: readonly Dish[]): readonly Decision[] => {
  const all = new Map<string, Part[]>();
  for (let from = 0; from < dishes.length; from += RECIPES_TOGETHER) {
    for (const [key, part] of partsOf(dishes.slice(from, from + RECIPES_TOGETHER))) {
      const same = all.get(key);
      if (same === undefined) all.set(key, [part]);
      else same.push(part);
    }
  }
  return [...all.values()].flatMap((parts) => {
    const { aspect, about, names } = parts[0]!;
    // Most foods have one name, and leave nothing to decide.
    if (names && parts.every(({ forms }) => forms.size === 1 && sameForm(forms, parts[0]!.forms))) return [];
    const forms = [...settled(together(parts), dishes)]
      .map(([form, own]) => ({
        form,
        shown: shownOf(form, own),
        places: placesOf(own),
      }))
      .toSorted((a, b) => b.places.length - a.places.length);
    return [{ aspect, about, forms }];
  });
});

function sameForm(one: Part['forms'], other: Part['forms']): boolean {
  const [form] = one.keys();
  return other.has(form!);
}

function together(parts: readonly Part[]): Map<string, Share[]> {
  const forms = new Map<string, Share[]>();
  for (const part of parts) {
    for (const [form, shares] of part.forms) {
      const same = forms.get(form);
      if (same === undefined) forms.set(form, [...shares]);
      else same.push(...shares);
    }
  }
  return forms;
}

/** So many recipes are counted together: where one of them changes, only they are counted again. */
const RECIPES_TOGETHER = 32;
/** By the first recipe of those that were counted together. */
const counted = new WeakMap<
  Dish,
  { readonly dishes: readonly Dish[]; readonly parts: ReadonlyMap<string, Part> }
>();

/** What a few recipes add to each decision, by its key. */
function partsOf(dishes: readonly Dish[]): ReadonlyMap<string, Part> {
  const before = counted.get(dishes[0]!);
  if (before?.dishes.length === dishes.length && before.dishes.every((dish, at) => dish === dishes[at]))
    return before.parts;
  const parts = new Map<
    string,
    { aspect: Aspect; about: string; names: boolean; forms: Map<string, Share[]> }
  >();
  for (const dish of dishes) {
    for (const share of sharesOf(dish)) {
      const { key, aspect, about, form, names } = share;
      let part = parts.get(key);
      if (part === undefined) {
        part = { aspect, about, names, forms: new Map() };
        parts.set(key, part);
      }
      const same = part.forms.get(form);
      if (same === undefined) part.forms.set(form, [share]);
      else same.push(share);
    }
  }
  counted.set(dishes[0]!, { dishes, parts });
  return parts;
}

/** Counted once a recipe: of a book that is being written most recipes stay as they are. */
const sharesOf = once((dish: Dish): readonly Share[] => {
  const found = new Map<string, Share>();
  const add = (about: string, usage: Usage, names: boolean): void => {
    const { aspect, form, shown, either } = usage;
    const own = JSON.stringify([aspect, about, form, shown, either, names]);
    let share = found.get(own);
    if (share === undefined) {
      const key = `${aspect} ${about} ${names}`;
      share = { key, aspect, about, form, shown, either, names, places: [] };
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

/** A loop, since this is the most of what a keystroke costs the decisions. */
function placesOf(all: readonly Share[]): Place[] {
  const found: Place[] = [];
  for (const { places } of all) for (const place of places) found.push(place);
  return found;
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
