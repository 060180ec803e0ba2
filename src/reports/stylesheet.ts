/** Compiles a book's style sheet: what it names, measures, refers to and spells, in which forms, how often and where. */
import { printFraction } from '../grammar/print.js';
import { readText } from '../grammar/text.js';
import type { Extent, Item, Measure, Word } from '../grammar/types.js';
import { namesOf } from '../kitchen/book-names.js';
import { followedLinks, isOwn, referencesOf as namedIn } from '../kitchen/references.js';
import type { Dish } from '../kitchen/types.js';
import { decisionsOf } from '../kitchen/wording/decisions.js';
import { foreignWords, namesIn, spellingUsages, wordPattern } from '../kitchen/wording/names.js';
import { titleForm } from '../kitchen/wording/statements.js';
import type { Aspect } from '../kitchen/wording/types.js';
import { textsOf, wordingOf } from '../kitchen/wording/wording.js';
import { fold } from '../larder/names.js';
import { toleranceEdition } from '../larder/tolerances.js';
import { unitById } from '../larder/units.js';
import { vesselAt } from '../larder/vessels.js';
import type { Passage } from '../manuscript/passage.js';
import { passagesOf } from '../manuscript/texts.js';
import type { Span } from '../manuscript/types.js';
import type { Reading } from '../reading/types.js';
import { version } from '../version.js';
import { type Places, placesOf, titleOf } from './places.js';
import type { StylesheetEntry, StylesheetReport } from './stylesheet-schema.js';

export function reportStylesheet(reading: Reading): StylesheetReport {
  const places = placesOf(reading);
  const { dishes } = reading;
  return {
    tamis: version,
    recipes: dishes.length,
    tolerances: toleranceEdition,
    foods: foodsOf(dishes, places),
    spellings: spellingsOf(reading, places),
    units: decided(reading, places, ['unit']),
    numbers: decided(reading, places, ['number']),
    ranges: decided(reading, places, ['range']),
    temperatures: decided(reading, places, ['degree', 'scales']),
    yields: decided(reading, places, ['yield']),
    listings: decided(reading, places, ['capital']),
    equivalents: equivalentsOf(dishes, places),
    pans: pansOf(dishes, places),
    references: referencesOf(reading, places),
    foreign: foreignOf(dishes, places),
    titles: dishes.flatMap(({ recipe }) => {
      const title = titleOf(recipe);
      if (title === null || recipe.title === null) return [];
      const { line } = places.place(recipe.file, recipe.title.span().start);
      return [{ title, capitals: titleForm(title), file: recipe.file, line }];
    }),
  };
}

/** Gathers places by what they are about and in which form. */
class Register {
  private readonly entries = new Map<string, Map<string, { file: string; line: number }[]>>();

  constructor(private readonly places: Places) {}

  add(about: string, form: string, dish: Dish, passage: Passage, start: number, end: number): void {
    this.place(about, form, dish.page.path, passage.span(start, end).start);
  }

  place(about: string, form: string, path: string, offset: number): void {
    const { line } = this.places.place(path, offset);
    let forms = this.entries.get(about);
    if (forms === undefined) {
      forms = new Map();
      this.entries.set(about, forms);
    }
    const known = forms.get(form);
    if (known === undefined) forms.set(form, [{ file: path, line }]);
    else known.push({ file: path, line });
  }

  /** In the order of the alphabet, the most used form first. */
  sorted(): StylesheetEntry[] {
    return [...this.entries]
      .map(([about, forms]) => ({
        about,
        forms: [...forms]
          .map(([form, places]) => ({ form, count: places.length, places }))
          .toSorted((a, b) => b.count - a.count || byName.compare(a.form, b.form)),
      }))
      .toSorted((a, b) => byName.compare(a.about, b.about));
  }
}

/** The language is fixed so that the order is the same on every machine. */
const byName = new Intl.Collator('en', { numeric: true });

/** Foods that some list or method uses, wherever the book names them; those without a row by the list's own words. */
function foodsOf(dishes: readonly Dish[], places: Places): StylesheetEntry[] {
  const register = new Register(places);
  const used = new Set(dishes.flatMap((dish) => wordingOf(dish).namings.map(({ named }) => named.food)));
  for (const dish of dishes) {
    const measures = new Map(dish.recipe.listings.map(({ passage, line }) => [passage, line.measures]));
    for (const passage of textsOf(dish.recipe)) {
      for (const { named, from } of namesIn(passage, used, measures.get(passage))) {
        const { food, shown, start, end } = named;
        register.add(food.name, shown, dish, passage, from + start, from + end);
      }
    }
    for (const { passage, line } of dish.recipe.listings) {
      for (const { row, name, start, end } of line.foods) {
        if (row === null && name !== '') register.add(name, name, dish, passage, start, end);
      }
    }
  }
  return register.sorted();
}

function decided(reading: Reading, places: Places, aspects: readonly Aspect[]): StylesheetEntry[] {
  const register = new Register(places);
  for (const { aspect, about, forms } of decisionsOf(reading)) {
    if (!aspects.includes(aspect)) continue;
    for (const { shown, places: each } of forms) {
      for (const { dish, usage } of each) {
        register.add(about.replaceAll('-', ' '), shown, dish, usage.passage, usage.start, usage.end);
      }
    }
  }
  return register.sorted();
}

/** Words other than foods, whose spellings stand with the foods. */
function spellingsOf({ dishes }: Reading, places: Places): StylesheetEntry[] {
  const register = new Register(places);
  for (const dish of dishes) {
    for (const { about, shown, passage, start, end } of spellingUsages(textsOf(dish.recipe))) {
      register.add(about, shown, dish, passage, start, end);
    }
  }
  return register.sorted();
}

const FEWEST_EQUIVALENTS = 2;

/** "1 cup flour": 125 g in four places, 120 g in one. What is measured twice by volume is the same for every food. */
function equivalentsOf(dishes: readonly Dish[], places: Places): StylesheetEntry[] {
  const register = new Register(places);
  const add = (measure: Measure, food: string, dish: Dish, passage: Passage): void => {
    for (const other of measure.equals) {
      const same = kindOf(measure) !== null && kindOf(measure) === kindOf(other);
      if (!same && food === '') continue;
      const about = same ? amountText(measure) : `${amountText(measure)} ${food}`;
      register.add(about, amountText(other), dish, passage, other.start, other.end);
    }
  };
  for (const dish of dishes) {
    for (const { passage, line } of dish.recipe.listings) {
      const [food] = line.foods;
      for (const measure of line.measures) add(measure, food?.row?.name ?? food?.name ?? '', dish, passage);
    }
    for (const { step, items } of dish.steps) {
      for (const item of items) if (item.kind === 'measure') add(item, '', dish, step.passage);
    }
  }
  const count = ({ forms }: StylesheetEntry): number => forms.reduce((sum, form) => sum + form.count, 0);
  return register.sorted().filter((entry) => count(entry) >= FEWEST_EQUIVALENTS);
}

function kindOf({ unit }: Measure): string | null {
  return unit === null ? null : unitById(unit).kind;
}

function amountText({ amount, unit }: Measure): string {
  const low = printFraction(amount.low);
  const number = amount.low.equals(amount.high) ? low : `${low} to ${printFraction(amount.high)}`;
  return unit === null ? number : `${number} ${unitById(unit).id.replaceAll('-', ' ')}`;
}

/** How many words may stand between a size and its vessel: "9 x 13-inch glass baking dish". */
const WORDS_BETWEEN = 3;

function pansOf(dishes: readonly Dish[], places: Places): StylesheetEntry[] {
  const register = new Register(places);
  for (const dish of dishes) {
    const texts = [
      ...dish.steps.map(({ step, items }) => ({ passage: step.passage, items })),
      ...dish.recipe.equipment.map((passage) => ({ passage, items: readText(passage.text) })),
    ];
    for (const { passage, items } of texts) {
      items.forEach((item, at) => {
        const vessel = isVesselSize(item) ? vesselBehind(items, at) : null;
        if (vessel === null) return;
        const size = passage.text.slice(item.start, item.end);
        register.add(
          passage.text.slice(vessel.start, vessel.end).toLowerCase(),
          size,
          dish,
          passage,
          item.start,
          vessel.end,
        );
      });
    }
  }
  return register.sorted();
}

/** A pan has lengths or holds quarts; what is spooned or weighed goes into it. */
function isVesselSize(item: Item): boolean {
  if (item.kind === 'dimension') return true;
  if (item.kind !== 'measure' || item.unit === null) return false;
  const unit = unitById(item.unit);
  return unit.kind === 'volume' && unit.elsewhere.metric === undefined;
}

/** The vessel that the size behind which it stands belongs to; nothing but words may come between. */
function vesselBehind(items: readonly Item[], at: number): Extent | null {
  const words: Word[] = [];
  for (let next = at + 1; next < items.length && words.length < 2 * WORDS_BETWEEN; next++) {
    const item = items[next]!;
    if (item.kind === 'word') words.push(item);
    else if (item.kind !== 'point' || item.text !== '-') break;
  }
  const keys = words.map(({ key }) => key);
  for (let first = 0; first <= WORDS_BETWEEN && first < keys.length; first++) {
    const match = vesselAt(keys, first);
    if (match !== null) return { start: words[first]!.start, end: words[first + match.length - 1]!.end };
  }
  return null;
}

/**
 * Where the book sends its reader to another of its recipes, by name or by a link, with the page that is printed; names
 * that it has nothing for, and pages without a name.
 */
function referencesOf(reading: Reading, places: Places): StylesheetReport['references'] {
  const { pages, dishes } = reading;
  const book = { pages, dishes, unclear: [] };
  const register = new Register(places);
  const found = new Set<string>();
  const told: { readonly file: string; readonly span: Span }[] = [];
  const { titles } = namesOf(book);
  for (const { name, page, sign, proper, from, dish, passage, start, end, targets } of namedIn(book)) {
    const title = targets[0] ?? (proper ? titles.misspelled(name) : null) ?? undefined;
    // Capitals alone may be a brand's, and a recipe may speak of itself.
    if (
      title === undefined
        ? sign === 'capitals'
        : title.path === from.path && dish !== null && isOwn(title, dish)
    )
      continue;
    const about = title?.text ?? onOneLine(name);
    if (title !== undefined) found.add(about);
    const form = page === null ? onOneLine(name) : `${onOneLine(name)}, page ${page}`;
    const span = passage.span(start, end);
    told.push({ file: from.path, span });
    register.place(about, form, from.path, span.start);
  }
  for (const { link, page, to, title } of followedLinks(book)) {
    if (told.some(({ file, span }) => file === page.path && touches(span, link.span))) continue;
    const about = title?.text ?? to;
    found.add(about);
    register.place(
      about,
      onOneLine(page.text.slice(link.span.start, link.span.end)),
      page.path,
      link.span.start,
    );
  }
  for (const page of pages) {
    for (const passage of passagesOf(page.blocks)) {
      for (const { 0: text, index } of passage.text.matchAll(PAGE)) {
        const span = passage.span(index, index + text.length);
        if (told.some((each) => each.file === page.path && isBefore(each.span, span, page.text))) continue;
        register.place(onOneLine(text), onOneLine(text), page.path, span.start);
      }
    }
  }
  return register.sorted().map((entry) => ({ ...entry, found: found.has(entry.about) }));
}

const PAGE = /(?<!\p{L})pages? [\p{N}Xx]+(?!\p{L})/gu;

function onOneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

function touches(one: Span, other: Span): boolean {
  return one.start < other.end && other.start < one.end;
}

/** Whether a page number belongs to the name before it: nothing but brackets, commas and small words stand between. */
function isBefore(name: Span, page: Span, text: string): boolean {
  return (
    name.end <= page.start &&
    /^[\s,("“”’\]–—-]*(?:\p{Ll}{1,3}[\s]+)*$/u.test(text.slice(name.end, page.start))
  );
}

function foreignOf(dishes: readonly Dish[], places: Places): StylesheetEntry[] {
  const register = new Register(places);
  const pattern = wordPattern(
    foreignWords.flatMap((word) => [word, word.normalize('NFD').replace(/\p{M}+/gu, '')]),
    String.raw`(?:e?s)?(?!\p{L})`,
  );
  const known = new Map(foreignWords.map((word) => [fold(word), word]));
  for (const dish of dishes) {
    for (const passage of textsOf(dish.recipe)) {
      for (const found of pattern === null ? [] : passage.text.matchAll(pattern)) {
        const form = found[1]!.toLowerCase();
        register.add(
          known.get(fold(form)) ?? form,
          form,
          dish,
          passage,
          found.index,
          found.index + found[0].length,
        );
      }
    }
  }
  return register.sorted();
}
