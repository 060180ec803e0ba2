/** What a book has to decide about its wording: each decision with its forms and places, and those still open. */
import type { HouseStyle } from '../../manuscript/house-style.js';
import type { Book, Dish } from '../types.js';
import { isDecided } from './house.js';
import { choicesOf, type NameChoice, type Named, usageOf } from './names.js';
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

/** Every decision of the book; of names and spellings of foods only those made in more than one way. */
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

type Tally = Map<string, { aspect: Aspect; about: string; forms: Map<string, Place[]> }>;

function readDecisions(book: Pick<Book, 'dishes'>): Decision[] {
  const all: Tally = new Map();
  const open = openNames(book.dishes);
  for (const [order, dish] of book.dishes.entries()) {
    const { usages, namings } = wordingOf(dish);
    for (const naming of namings) {
      for (const choice of open.get(naming.named) ?? []) {
        tally(all, choice.about, { dish, order, usage: usageOf(choice, naming) });
      }
    }
    for (const usage of usages) {
      // What a sentence opens with is put right recipe by recipe.
      const about =
        usage.aspect === 'opening' ? `opening ${dish.page.path} ${dish.recipe.span.start}` : usage.about;
      tally(all, about, { dish, order, usage });
    }
  }
  return [...all.values()].map(({ aspect, about, forms }) => ({
    aspect,
    about,
    forms: [...settled(forms)]
      .map(([form, places]) => ({ form, shown: shownOf(form, places), places }))
      .toSorted((a, b) => b.places.length - a.places.length),
  }));
}

/** A place that may be of either form is of that which the book has more of otherwise. */
function settled(forms: ReadonlyMap<string, readonly Place[]>): ReadonlyMap<string, readonly Place[]> {
  const moved = new Map(forms);
  for (const [form, places] of forms) {
    const unclear = places.filter(({ usage }) => usage.either !== undefined);
    const other = unclear[0]?.usage.either;
    const others = other === undefined ? undefined : forms.get(other);
    if (other === undefined || others === undefined || others.length <= places.length - unclear.length)
      continue;
    moved.set(
      other,
      [...others, ...unclear].sort((a, b) => a.order - b.order),
    );
    const left = places.filter((place) => !unclear.includes(place));
    if (left.length === 0) moved.delete(form);
    else moved.set(form, left);
  }
  return moved;
}

function tally(all: Tally, about: string, place: Place): void {
  const { aspect, form } = place.usage;
  const key = `${aspect} ${about}`;
  let decision = all.get(key);
  if (decision === undefined) {
    decision = { aspect, about, forms: new Map() };
    all.set(key, decision);
  }
  const places = decision.forms.get(form);
  if (places === undefined) decision.forms.set(form, [place]);
  else places.push(place);
}

/** The choices that each name makes and another name makes otherwise: most foods have one name, and need no counting. */
function openNames(dishes: readonly Dish[]): ReadonlyMap<Named, readonly NameChoice[]> {
  const choices = new Map<Named, readonly NameChoice[]>();
  const forms = new Map<string, string | null>();
  for (const dish of dishes) {
    for (const { named } of wordingOf(dish).namings) {
      if (choices.has(named)) continue;
      const own = choicesOf(named);
      choices.set(named, own);
      for (const { aspect, about, form } of own) {
        const key = `${aspect} ${about}`;
        const known = forms.get(key);
        // Null says that there are several.
        if (known === undefined) forms.set(key, form);
        else if (known !== form) forms.set(key, null);
      }
    }
  }
  return new Map(
    [...choices].map(([named, own]) => [
      named,
      own.filter(({ aspect, about }) => forms.get(`${aspect} ${about}`) === null),
    ]),
  );
}

function shownOf(form: string, places: readonly Place[]): string {
  const counts = new Map<string, number>();
  for (const { usage } of places) {
    if (usage.shown === undefined) return form;
    counts.set(usage.shown, (counts.get(usage.shown) ?? 0) + 1);
  }
  return [...counts].toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? form;
}
