/** What a book has to decide about its wording: each decision with its forms and places, and those still open. */
import type { HouseStyle } from '../../manuscript/house-style.js';
import { once } from '../../manuscript/once.js';
import type { Span } from '../../manuscript/types.js';
import type { Book, Dish } from '../types.js';
import { isDecided } from './house.js';
import { choicesOf, type NameChoice, type Naming, usageOf } from './names.js';
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
  readonly dish: Dish;
  readonly key: string;
  readonly aspect: Aspect;
  readonly about: string;
  readonly form: string;
  readonly shown: string | undefined;
  readonly either: string | undefined;
  readonly usages: Usage[];
  /** Set where it is about what a food is called: the places that call it so are made when they are asked for, for few names are open. */
  readonly choice: NameChoice | null;
  readonly namings: Naming[];
}

const placesOfShare = once(({ dish, usages, choice, namings }: Share): readonly Place[] =>
  [...usages, ...namings.map((naming) => usageOf(choice!, naming))].map((usage) => ({
    dish,
    usage,
    span: usage.passage.span(usage.start, usage.end),
  })),
);

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
      const { key, aspect, about, form } = share;
      const names = share.choice !== null;
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
  const share = (of: NameChoice | Usage, about: string, choice: NameChoice | null): Share => {
    const { aspect, form, shown, either } = { shown: undefined, either: undefined, ...of };
    const own = [aspect, about, form, shown, either, choice === null].join('\n');
    let known = found.get(own);
    if (known === undefined) {
      const key = `${aspect} ${about} ${choice === null}`;
      known = { dish, key, aspect, about, form, shown, either, usages: [], choice, namings: [] };
      found.set(own, known);
    }
    return known;
  };
  const { usages, namings } = wordingOf(dish);
  for (const naming of namings)
    for (const choice of namedChoices(naming.named))
      share({ ...choice, shown: naming.named.shown }, choice.about, choice).namings.push(naming);
  for (const usage of usages) {
    // What a sentence opens with is put right recipe by recipe.
    const isOpening = usage.aspect === 'opening';
    const about = isOpening ? `opening ${dish.page.path} ${dish.recipe.span.start}` : usage.about;
    share(usage, about, null).usages.push(usage);
  }
  return [...found.values()];
});

const namedChoices = once(choicesOf);

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
  for (const share of all) for (const place of placesOfShare(share)) found.push(place);
  return found;
}

function count(all: readonly Share[]): number {
  return all.reduce((sum, share) => sum + sizeOf(share), 0);
}

function sizeOf({ usages, namings }: Share): number {
  return usages.length + namings.length;
}

function inOrder(all: readonly Share[], dishes: readonly Dish[]): Share[] {
  const order = orderOf(dishes);
  const at = ({ dish }: Share): number => order.get(dish)!;
  return all.toSorted((one, other) => at(one) - at(other));
}

/** The place of each recipe in the book, from 0. */
export const orderOf = once(
  (dishes: readonly Dish[]): ReadonlyMap<Dish, number> => new Map(dishes.map((dish, index) => [dish, index])),
);

function shownOf(form: string, all: readonly Share[]): string {
  const counts = new Map<string, number>();
  for (const share of all) {
    const { shown } = share;
    if (shown === undefined) return form;
    counts.set(shown, (counts.get(shown) ?? 0) + sizeOf(share));
  }
  return [...counts].toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? form;
}
