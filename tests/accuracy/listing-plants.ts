/** Disagreements of list and method to plant in a recipe. */
import type { Mark } from '../../rules/rule.js';
import type { Listing } from '../../src/anatomy/types.js';
import { printFraction } from '../../src/grammar/print.js';
import type { Measure } from '../../src/grammar/types.js';
import type { Dish, Mention } from '../../src/kitchen/types.js';
import { isKindOf, isPartOf } from '../../src/larder/foods.js';
import { fold, singular } from '../../src/larder/names.js';
import { unitById } from '../../src/larder/units.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { cut, lineOf, type Plant, type Planters } from './plants.js';

/** Foods that few recipes have; the last one no larder knows. */
const STRANGERS = [
  { line: '3 tablespoons capers', word: 'capers', subject: 'caper' },
  { line: '2 teaspoons fenugreek seeds', word: 'fenugreek seeds', subject: 'fenugreek' },
  { line: '4 ounces smoked trout', word: 'smoked trout', subject: 'trout' },
  { line: '1 cup zorrel leaves', word: 'zorrel leaves', subject: 'zorrel' },
];
/** How many plants of a kind one recipe bears at most. */
const MOST = 2;

export const listingPlanters: Planters = {
  'listing taken out': (dish, file, pick) =>
    pick(
      namedListings(dish).filter(({ listing }) => !isServedOtherwise(dish, listing)),
      MOST,
    ).map(({ listing }) => ({
      text: cut(file.text, ...lineOf(file.text, listing.passage.span().start)),
      rule: 'unlisted-ingredient',
      isIt: isAbout(listing),
    })),

  'listing added': (dish, file, pick) => {
    // Where a step takes "all the ingredients", one more is used by it as well.
    if (dish.mentions.some(({ group }) => group)) return [];
    return pick(dish.recipe.listings, MOST).flatMap((listing) => {
      const [start, end] = lineOf(file.text, listing.passage.span().start);
      const bullet = /^\s*[-*+]\s+/.exec(file.text.slice(start, end))?.[0];
      const [stranger] = pick(strangersTo(file), 1);
      if (bullet === undefined || stranger === undefined) return [];
      const isIt = (mark: Mark): boolean => mark.subject.includes(stranger.subject);
      return [
        {
          text: cut(file.text, start, start, `${bullet}${stranger.line}\n`),
          rule: 'unused-ingredient',
          isIt,
        },
      ];
    });
  },

  'amount restated, more': (dish, file, pick) => restated(dish, file, pick(plainUses(dish), MOST), 4),
  'amount restated, less': (dish, file, pick) => restated(dish, file, pick(plainUses(dish), MOST), 0.25),

  '"divided" taken away': (dish, file, pick) => {
    const natural = dish.recipe.listings
      .filter(({ line }) => line.divided)
      .map((listing) => {
        const span = listing.passage.span();
        const line = file.text.slice(span.start, span.end).replace(/,?\s*\(?divided\)?/i, '');
        return {
          text: cut(file.text, span.start, span.end, line),
          rule: 'divided-absent',
          isIt: isAbout(listing),
        };
      });
    // Few recipes of the corpus divide anything, so that others are divided first: half of a food now, the rest in the last step.
    const made = pick(plainUses(dish), MOST).flatMap(({ listing, use }) => {
      const halved = halves(dish, file, listing, use);
      if (halved === null) return [];
      const { end } = listing.passage.span();
      return [
        {
          text: halved,
          sound: cut(halved, end, end, ', divided'),
          rule: 'divided-absent',
          isIt: isAbout(listing),
        },
      ];
    });
    return [...natural, ...made];
  },

  'listings swapped': (dish, file, pick) =>
    pick(swappable(dish), MOST).map(([first, second]) => {
      const [from, to] = [
        lineOf(file.text, first.passage.span().start),
        lineOf(file.text, second.passage.span().start),
      ];
      const moved = cut(file.text, ...to, file.text.slice(...from));
      const text = cut(moved, ...from, file.text.slice(...to));
      const isOne = (words: string): boolean => isNamedBy(words, first) || isNamedBy(words, second);
      return {
        text,
        rule: 'order-of-use',
        isIt: (mark) =>
          isOne(mark.subject) || mark.related.some(({ span }) => isOne(text.slice(span.start, span.end))),
      };
    }),

  'more used than listed': (dish, file, pick) =>
    pick(plainUses(dish), MOST).flatMap(({ listing, use }) => {
      const measure = listing.line.measures[0]!;
      const whole = said(measure, 1);
      const half = said(measure, 0.5);
      const last = dish.recipe.steps.at(-1)!.passage.span().end;
      const { start, end } = dish.recipe.steps[use.step]!.passage.span(use.start, use.end);
      const text = cut(file.text, last, last, ` Add ${half} of the ${use.text}.`);
      return use.step === dish.recipe.steps.length - 1
        ? []
        : [
            {
              text: cut(text, start, end, `${whole} of the ${use.text}`),
              rule: 'amount-overrun',
              isIt: isAbout(listing),
            },
          ];
    }),

  'less used than listed': (dish, file, pick) =>
    pick(plainUses(dish), MOST).map(({ listing, use }) => {
      const { start, end } = dish.recipe.steps[use.step]!.passage.span(use.start, use.end);
      const half = said(listing.line.measures[0]!, 0.5);
      return {
        text: cut(file.text, start, end, `${half} of the ${use.text}`),
        rule: 'amount-leftover',
        isIt: isAbout(listing),
      };
    }),

  'food renamed': (dish, file, pick) =>
    pick(namedListings(dish), MOST).flatMap(({ listing, use }) => {
      const [stranger] = pick(
        strangersTo(file).filter(({ subject }) => subject !== 'zorrel'),
        1,
      );
      if (stranger === undefined || isOpenTo(dish, stranger.word, listing)) return [];
      const { start, end } = dish.recipe.steps[use.step]!.passage.span(use.start, use.end);
      const isIt = (mark: Mark): boolean => mark.subject.includes(stranger.subject);
      return [{ text: cut(file.text, start, end, stranger.word), rule: 'unlisted-ingredient', isIt }];
    }),

  'the remaining, of nothing': (dish, file, pick) =>
    pick(plainUses(dish), MOST).map(({ listing, use }) => {
      const { start, end } = dish.recipe.steps[use.step]!.passage.span(use.start, use.end);
      return {
        text: cut(file.text, start, end, `remaining ${use.text}`),
        rule: 'remaining-of-nothing',
        isIt: isAbout(listing),
      };
    }),

  'listed twice': (dish, file, pick) =>
    pick(
      plainUses(dish).filter(({ listing }) => listing.line.foods.length === 1),
      MOST,
    ).map(({ listing }) => {
      const [start, end] = lineOf(file.text, listing.passage.span().start);
      return {
        text: cut(file.text, end, end, file.text.slice(start, end)),
        rule: 'twice-listed',
        isIt: isAbout(listing),
      };
    }),

  'cut again': (dish, file, pick) =>
    pick(
      plainUses(dish).filter(({ listing }) =>
        /\b(?:chopped|sliced|diced|grated|minced)\b/.test(listing.passage.text),
      ),
      MOST,
    ).map(({ listing, use }) => {
      const { start } = dish.recipe.steps[use.step]!.passage.span();
      return {
        text: cut(file.text, start, start, `Dice the ${use.text}. `),
        rule: 'preparation-disagreement',
        isIt: isAbout(listing),
      };
    }),
};

interface NamedListing {
  readonly listing: Listing;
  /** A mention that names it, and nothing else. */
  readonly use: Mention;
}

/** The listings of one food with an amount, each with the first use that names it by itself and plainly puts it in. */
function namedListings(dish: Dish): NamedListing[] {
  return dish.recipe.listings.flatMap((listing) => {
    const [food, ...others] = listing.line.foods;
    if (food?.row == null || food.row.generic || others.length > 0 || listing.line.measures.length !== 1)
      return [];
    const use = dish.uses[listing.index]!.find(
      (each) => isPlain(each) && each.listings.length === 1 && each.food === food.row,
    );
    return use === undefined ? [] : [{ listing, use }];
  });
}

function isPlain(use: Mention): boolean {
  return !use.group && !use.telling && !use.optional && !use.surface && !use.toTaste && use.role === 'use';
}

/** Of those, the ones used once, bare, with an amount that can be said again. */
function plainUses(dish: Dish): NamedListing[] {
  return namedListings(dish).filter(({ listing, use }) => {
    const { line } = listing;
    const [measure] = line.measures;
    return (
      dish.uses[listing.index]!.length === 1 &&
      use.measure === null &&
      use.determiner === null &&
      !line.toTaste &&
      !line.asNeeded &&
      !line.divided &&
      line.plusMore === null &&
      measure?.unit != null &&
      ['volume', 'mass'].includes(unitById(measure.unit).kind) &&
      !measure.share &&
      measure.plus.length === 0
    );
  });
}

/** Whether another listing serves the same words: without this one nothing would be missing. */
function isServedOtherwise(dish: Dish, listing: Listing): boolean {
  const { row } = listing.line.foods[0]!;
  return dish.recipe.listings.some(
    (other) =>
      other !== listing &&
      other.line.foods.some(
        (food) =>
          food.row !== null &&
          row !== null &&
          (isKindOf(food.row, row) ||
            isKindOf(row, food.row) ||
            isPartOf(row, food.row) ||
            isPartOf(food.row, row)),
      ),
  );
}

/** Whether a list leaves a food so open ("fruit of your choice") that the stranger may be one of them. */
function isOpenTo(dish: Dish, word: string, listing: Listing): boolean {
  return dish.recipe.listings.some((other) => other !== listing && other.passage.text.includes(word));
}

function strangersTo(file: SourceFile): typeof STRANGERS {
  const text = file.text.toLowerCase();
  return STRANGERS.filter(({ subject }) => !text.includes(subject));
}

function isAbout(listing: Listing): (mark: Mark) => boolean {
  return (mark) => isNamedBy(mark.subject, listing);
}

/** Whether a mark's subject is a food of the listing, by any of its words. */
function isNamedBy(subject: string, listing: Listing): boolean {
  const words = new Set(listing.passage.text.split(/[^\p{L}]+/u).map((word) => singular(fold(word))));
  return subject.split(/[\s-]+/).some((word) => words.has(singular(fold(word))));
}

/** A share of a measure, as a method would say it: "1 1/2 cups". */
function said({ amount, unit }: Measure, share: number): string {
  const value = amount.high.mul(share);
  const [name] = unitById(unit!).names;
  return `${printFraction(value)} ${value.gt(1) ? `${name}s` : name}`;
}

function restated(dish: Dish, file: SourceFile, uses: readonly NamedListing[], factor: number): Plant[] {
  return uses.map(({ listing, use }) => {
    const { start, end } = dish.recipe.steps[use.step]!.passage.span(use.start, use.end);
    const text = cut(file.text, start, end, `${said(listing.line.measures[0]!, factor)} ${use.text}`);
    return { text, rule: 'amount-disagreement', isIt: (mark) => mark.span.start === start };
  });
}

/** The text with half of a food where it was, and the rest in the last step; null where that is the same step. */
function halves(dish: Dish, file: SourceFile, listing: Listing, use: Mention): string | null {
  const last = dish.recipe.steps.length - 1;
  if (use.step === last || listing.passage.span().end > dish.recipe.steps[0]!.passage.span().start)
    return null;
  const { end: foot } = dish.recipe.steps[last]!.passage.span();
  const { start, end } = dish.recipe.steps[use.step]!.passage.span(use.start, use.end);
  return cut(
    cut(file.text, foot, foot, ` Finish with the remaining ${use.text}.`),
    start,
    end,
    `half of the ${use.text}`,
  );
}

/** Pairs of listings in the order of use that are out of it once swapped: with another between them, each first used in a step of its own. */
function swappable(dish: Dish): [Listing, Listing][] {
  const pairs: [Listing, Listing][] = [];
  for (const { listings } of dish.recipe.components) {
    const steps = listings.map((listing) =>
      isPlaced(listing) ? (dish.uses[listing.index]![0]?.step ?? null) : null,
    );
    // A main ingredient may open the list by habit.
    for (let one = 1; one < listings.length; one++) {
      for (let other = one + 2; other < listings.length; other++) {
        const between = steps.slice(one + 1, other);
        const [low, high] = [steps[one], steps[other]];
        if (low == null || high == null || low >= high) continue;
        if (between.some((step) => step !== null && step > low && step < high))
          pairs.push([listings[one]!, listings[other]!]);
      }
    }
  }
  return pairs;
}

function isPlaced({ line }: Listing): boolean {
  const food = line.foods[0]?.name ?? '';
  const isHabit = /\b(?:salt|pepper|water)$/.test(food);
  return (
    line.measures.length > 0 &&
    line.purpose === null &&
    !line.optional &&
    !line.toTaste &&
    !line.asNeeded &&
    !isHabit
  );
}
