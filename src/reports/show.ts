/** Tells how each recipe was understood, as a value of the contract in schema.ts and as text. */
import type { Listing, Recipe } from '../anatomy/types.js';
import type { Amount, ListingLine, Measure, Phrase } from '../grammar/types.js';
import type { Dish, Mention } from '../kitchen/types.js';
import type { Passage } from '../manuscript/passage.js';
import { version } from '../version.js';
import { jsonText } from './json.js';
import { titleOf } from './places.js';
import type { ShownListing, ShownMeasure, ShownRecipe, ShowReport } from './schema.js';

/** The recipes as json text, by the contract. */
export function showJson(dishes: readonly Dish[]): string {
  return jsonText(reportShow(dishes));
}

export function reportShow(dishes: readonly Dish[]): ShowReport {
  return { tamis: version, recipes: dishes.map(shown) };
}

function shown(dish: Dish): ShownRecipe {
  const { recipe, page } = dish;
  const lineOf = (passage: Passage, offset = 0): number =>
    page.lines.line(passage.span(offset, offset).start);
  return {
    title: titleOf(recipe),
    file: recipe.file,
    line: page.lines.line(recipe.title?.span().start ?? recipe.span.start),
    yield: shownYield(recipe, lineOf),
    times: recipe.times.map((time) => ({
      kind: time.kind,
      text: time.passage.text,
      value: time.value.text,
      line: lineOf(time.passage),
    })),
    components: recipe.components.map((component) => ({
      index: component.index,
      name: component.name,
      heading: component.heading?.text ?? null,
      listings: component.listings.map((listing) => listing.index),
    })),
    listings: recipe.listings.map((listing) => shownListing(listing, lineOf(listing.passage))),
    steps: recipe.steps.map((step) => ({
      index: step.index,
      number: step.number,
      heading: step.heading?.text ?? null,
      text: step.passage.text,
      line: lineOf(step.passage),
    })),
    mentions: dish.mentions.map((mention) => shownMention(mention, recipe, lineOf)),
  };
}

function shownYield(recipe: Recipe, lineOf: (passage: Passage) => number): ShownRecipe['yield'] {
  if (recipe.yield === null) return null;
  const { passage, parsed } = recipe.yield;
  const amount = parsed?.amount ?? null;
  return {
    text: passage.text,
    line: lineOf(passage),
    amount: amount === null ? null : shownAmount(amount),
    of: parsed?.of ?? null,
  };
}

function shownListing(listing: Listing, line: number): ShownListing {
  const read: ListingLine = listing.line;
  const measureOf = (measure: Measure): ShownMeasure => shownMeasure(measure, read.text);
  return {
    index: listing.index,
    text: listing.passage.text,
    line,
    component: listing.component,
    measures: read.measures.map(measureOf),
    food: read.foods[0]?.name ?? null,
    foods: read.foods.map((food) => ({
      text: food.text,
      name: food.name,
      larder: food.row?.name ?? null,
      joined: food.joined,
      form: food.form,
      measures: food.measures.map(measureOf),
    })),
    size: textOf(read.size),
    states: read.states.map((phrase) => phrase.text),
    preparation: read.preparation.map((phrase) => phrase.text),
    optional: read.optional,
    divided: read.divided,
    toTaste: read.toTaste,
    asNeeded: read.asNeeded,
    plusMore: textOf(read.plusMore),
    purpose: textOf(read.purpose),
    unread: read.unread.map((phrase) => phrase.text),
  };
}

function shownMention(
  mention: Mention,
  recipe: Recipe,
  lineOf: (passage: Passage, offset: number) => number,
): ShownRecipe['mentions'][number] {
  const passage = recipe.steps[mention.step]?.passage;
  if (passage === undefined)
    throw new Error(`shownMention: expected a step of the recipe, got ${mention.step}`);
  return {
    step: mention.step,
    text: mention.text,
    line: lineOf(passage, mention.start),
    listings: mention.listings.map((listing) => listing.index),
    role: mention.role,
    measure: mention.measure === null ? null : shownMeasure(mention.measure, passage.text),
  };
}

/** `text` is what was read when the measure was found: its offsets count in it. */
function shownMeasure(measure: Measure, text: string): ShownMeasure {
  return {
    text: text.slice(measure.start, measure.end),
    ...shownAmount(measure.amount),
    unit: measure.unit,
    share: measure.share,
    plus: measure.plus.map((part) => shownMeasure(part, text)),
    equals: measure.equals.map((other) => shownMeasure(other, text)),
    pack: measure.pack === null ? null : shownMeasure(measure.pack, text),
  };
}

function shownAmount(amount: Amount): Pick<ShownMeasure, 'low' | 'high' | 'approximation'> {
  return {
    low: amount.low.toFraction(),
    high: amount.high.toFraction(),
    approximation: amount.approximation,
  };
}

function textOf(phrase: Phrase | null): string | null {
  return phrase === null ? null : phrase.text;
}
