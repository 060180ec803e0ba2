/** Makes the marks of the rules of wording: one a decision where the book has not decided, one a place where it has. */

import { namesOf } from '../src/kitchen/book-names.js';
import { namesRecipe } from '../src/kitchen/references.js';
import type { Book, Dish } from '../src/kitchen/types.js';
import {
  type Decision,
  decisionsOf,
  openDecisions,
  orderOf,
  type Place,
} from '../src/kitchen/wording/decisions.js';
import { wantedForm } from '../src/kitchen/wording/house.js';
import { Unwanted } from '../src/kitchen/wording/names.js';
import { type Rewriting, replaceWord, rewrite } from '../src/kitchen/wording/rewrite.js';
import type { Aspect } from '../src/kitchen/wording/types.js';
import { textsOf } from '../src/kitchen/wording/wording.js';
import type { HouseStyle } from '../src/manuscript/house-style.js';
import type { Passage } from '../src/manuscript/passage.js';
import type { BookRule, Finding, Mend, Related } from './rule.js';

export type BookFinding = Finding & { readonly file: string; readonly recipe: string | null };

/** What a rule of wording says of its decisions. */
interface Sayings {
  /** What the decision is about, as it opens a sentence: 'A "tablespoon"'. */
  readonly subject: (about: string) => string;
}

/** The `look` of a rule about these aspects. */
export function lookAt(aspects: readonly Aspect[], sayings: Sayings): BookRule['look'] {
  return function* look(book, style) {
    for (const decision of openDecisions(book, style)) {
      if (aspects.includes(decision.aspect)) yield openFinding(book, decision, style, sayings);
    }
    if (style.stated) yield* statedFindings(book, style, aspects, sayings);
  };
}

/** What was last said of a decision, by the first of its places. */
const said = new WeakMap<
  Place,
  { readonly decision: Decision; readonly stated: boolean; readonly finding: BookFinding }
>();

/** The same object as before while no place of the decision has changed: most decisions have none in the recipe that is typed in. */
function openFinding(book: Book, decision: Decision, style: HouseStyle, sayings: Sayings): BookFinding {
  const first = decision.forms[0]!.places[0]!;
  const before = said.get(first);
  if (before?.stated === style.stated && isAlike(before.decision, decision)) return before.finding;
  const finding = findingOf(book, decision, style, sayings);
  said.set(first, { decision, stated: style.stated, finding });
  return finding;
}

function isAlike(one: Decision, other: Decision): boolean {
  return (
    one.aspect === other.aspect &&
    one.about === other.about &&
    one.forms.length === other.forms.length &&
    one.forms.every((form, at) => {
      const { shown, places } = other.forms[at]!;
      return (
        form.shown === shown &&
        form.places.length === places.length &&
        form.places.every((place, index) => place === places[index])
      );
    })
  );
}

/** One mark for a decision that was made in several ways: at the first place that is not as most are. */
function findingOf(book: Book, decision: Decision, style: HouseStyle, sayings: Sayings): BookFinding {
  const { forms, about, aspect } = decision;
  const [most, ...others] = forms;
  const places = others.flatMap(({ places: each, shown }) => each.map((place) => ({ place, shown })));
  const [first, ...more] = inBookOrder(book, places);
  const all = forms.reduce((sum, each) => sum + each.places.length, 0);
  const ways = forms.map(({ shown, places: each }) => `${quoted(shown)} (${each.length})`).join(', ');
  return {
    ...placeOf(first!.place),
    subject: aspect === 'unit' ? plainly(about) : about,
    message: `${sayings.subject(nameOf(decision))} is written ${forms.length} ways in ${all} places: ${ways}.`,
    advice: `${isTied(decision) ? 'Choose one' : `Most of the ${style.stated ? 'book' : 'manuscript'} has ${quoted(most!.shown)}: choose one`}, and write it everywhere.`,
    related: [
      ...more.map(({ place, shown }) => ({ ...relatedTo(place, shown), alike: true })),
      relatedTo(most!.places[0]!, most!.shown),
    ],
  };
}

/** A unit by its name, anything else as most of the book has it where it is named by a form. */
function nameOf({ aspect, about, forms }: Decision): string {
  if (aspect === 'unit') return plainly(about);
  return aspect === 'term' || aspect === 'spelling' ? forms[0]!.shown : about;
}

/** The id of a unit as words. */
function plainly(id: string): string {
  return id.replaceAll('-', ' ');
}

function isTied({ forms }: Decision): boolean {
  return forms[0]!.places.length === forms[1]?.places.length;
}

function* statedFindings(
  book: Book,
  style: HouseStyle,
  aspects: readonly Aspect[],
  { subject }: Sayings,
): Iterable<BookFinding> {
  for (const { aspect, about, forms } of decisionsOf(book)) {
    if (!aspects.includes(aspect)) continue;
    const wanted = wantedForm(style, aspect, about);
    if (wanted === null) continue;
    for (const { form, places } of forms) {
      if (form === wanted) continue;
      for (const place of places) {
        if (place.usage.either === wanted) continue;
        yield {
          ...placeOf(place),
          subject: plainly(about),
          message: `${subject(plainly(about))} is written ${quoted(form)} here; the house style has ${quoted(wanted)}.`,
          advice: 'Write it as the house style has it.',
          mends: mendsOf(place.usage.passage, rewrite(place.usage, wanted)),
        };
      }
    }
  }
}

/** The mend of a passage. */
export function mendsOf(passage: Passage, rewriting: Rewriting | null): Mend[] {
  if (rewriting === null) return [];
  const { start, end, text, sure } = rewriting;
  return [{ label: `Write "${text.trim()}"`, sure, edits: [{ span: passage.span(start, end), text }] }];
}

/** Where a mark stands: the place's words, its file and its recipe. */
export function placeOf(place: Place): Pick<BookFinding, 'file' | 'recipe' | 'span'> {
  return { file: place.dish.page.path, span: place.span, recipe: titleOf(place.dish) };
}

export function quoted(form: string): string {
  return `"${form}"`;
}

function relatedTo({ dish, span }: Place, shown: string): Related {
  return { file: dish.page.path, span, message: `${quoted(shown)} here` };
}

/** From the first recipe of the book to the last, and within one by where the places stand. */
function inBookOrder<T extends { readonly place: Place }>({ dishes }: Book, all: readonly T[]): T[] {
  const order = orderOf(dishes);
  return all.toSorted(
    ({ place: one }, { place: other }) =>
      order.get(one.dish)! - order.get(other.dish)! || one.span.start - other.span.start,
  );
}

/** A mark for every place where a word stands that the house style has decided against. */
export function* unwantedFindings(
  book: Book,
  style: HouseStyle,
  of: 'terms' | 'spellings',
): Iterable<BookFinding> {
  if (Object.keys(style[of]).length === 0) return;
  const unwanted = new Unwanted(style[of], of);
  const names = namesOf(book);
  for (const dish of book.dishes) {
    for (const passage of textsOf(dish.recipe)) {
      for (const { wanted, written, start, end, isStem } of unwanted.in(passage)) {
        // A reference has the words of the title, and is put right with it.
        if (passage !== dish.recipe.title && namesRecipe(names, dish, passage.span(start, end))) continue;
        // A title is the author's; the words around it may hang on it.
        const mends =
          passage === dish.recipe.title
            ? []
            : mendsOf(passage, replaceWord(passage.text, start, written, wanted, isStem));
        yield {
          file: dish.page.path,
          recipe: titleOf(dish),
          span: passage.span(start, end),
          subject: wanted,
          message: `"${written}" stands here; the house style has "${wanted}".`,
          advice: `Write "${wanted}".`,
          mends,
        };
      }
    }
  }
}

function titleOf(dish: Dish): string | null {
  return dish.recipe.title?.text.replace(/\s+/g, ' ').trim() ?? null;
}
