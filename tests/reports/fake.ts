/** Readings made by hand for the tests of reports: what a reading of these two files might come to. */
import Fraction from 'fraction.js';
import type { Mark, Rule } from '../../rules/rule.js';
import type { Listing, Recipe, Step } from '../../src/anatomy/types.js';
import type { Amount, ListingLine, Measure } from '../../src/grammar/types.js';
import { untouched } from '../../src/kitchen/raw-handling.js';
import type { Dish, Mention } from '../../src/kitchen/types.js';
import { undecided } from '../../src/manuscript/house-style.js';
import { LineIndex } from '../../src/manuscript/lines.js';
import { Passage } from '../../src/manuscript/passage.js';
import type { Page, Span } from '../../src/manuscript/types.js';
import type { Reading } from '../../src/reading/types.js';

export const broth = page(
  'soups/leek-broth.md',
  `# Charred Leek Broth

Serves 4

- 2 large leeks, split lengthwise
- 1½ cups (360 ml) cream, divided
- 2 (400-gram) cans white beans
- 1 lemon, optional

1. Char the leeks in a dry pan, 6 to 8 minutes.
2. Add the beans and simmer; swirl in the cream.
`,
);

export const leaflet = page('front/leaflet.md', 'See page 000 for stocks.\n');

export function page(path: string, text: string): Page {
  return { path, text, lines: new LineIndex(text), front: [], blocks: [], stets: [], links: [] };
}

/** Where the words stand in the page; they must. */
export function spanOf(where: Page, words: string): Span {
  const start = where.text.indexOf(words);
  if (start < 0) throw new Error(`spanOf: expected "${words}" in ${where.path}`);
  return { start, end: start + words.length };
}

export function passageOf(where: Page, words: string): Passage {
  const { start, end } = spanOf(where, words);
  return Passage.verbatim(where.text, start, end);
}

export function mark(where: Page, words: string, more: Partial<Mark> = {}): Mark {
  return {
    rule: 'unlisted-ingredient',
    weight: 'fault',
    file: where.path,
    recipe: null,
    subject: words,
    message: 'Cream goes in at step 2 and is not on the list.',
    advice: 'List it, or take it out of the step.',
    span: spanOf(where, words),
    related: [],
    mends: [],
    ...more,
  };
}

export function reading(marks: readonly Mark[], more: Partial<Reading> = {}): Reading {
  const count = (weight: Mark['weight']): number => marks.filter((each) => each.weight === weight).length;
  return {
    pages: [broth, leaflet],
    dishes: [brothDish()],
    marks,
    stetted: [],
    counts: { fault: count('fault'), query: count('query'), note: count('note') },
    style: undecided,
    ...more,
  };
}

/** A mark that a stet on its line silences. */
export function stetted(silenced: Mark, reason: string): Reading['stetted'][number] {
  const stet = { rules: [silenced.rule], reason, scope: 'line', span: silenced.span, line: 1 } as const;
  return { mark: silenced, reason, stet };
}

export function rule(name: string, topic: Rule['topic']): Rule {
  return {
    name,
    topic,
    weight: 'fault',
    summary: 'Marks a thing.',
    why: 'The cook would stumble over it.',
    sources: ['common practice'],
    examples: [],
    scope: 'recipe',
    look: () => [],
  };
}

/** The recipe of `broth`, as it would be understood. */
export function brothDish(): Dish {
  const leeks = listing(0, '2 large leeks, split lengthwise', {
    measures: [measure('2 large leeks, split lengthwise', '2', '2', null)],
    foods: [food('leeks', 'leek')],
    size: { start: 2, end: 7, text: 'large' },
    preparation: [{ start: 15, end: 31, text: 'split lengthwise' }],
  });
  const creamText = '1½ cups (360 ml) cream, divided';
  const cream = listing(1, creamText, {
    measures: [
      {
        ...measure(creamText, '1½ cups', '3/2', 'cup'),
        equals: [measure(creamText, '360 ml', '360', 'milliliter')],
      },
    ],
    foods: [food('cream', 'cream')],
    divided: true,
  });
  const beansText = '2 (400-gram) cans white beans';
  const beans = listing(2, beansText, {
    measures: [
      {
        ...measure(beansText, '2 (400-gram) cans', '2', 'can'),
        pack: measure(beansText, '400-gram', '400', 'gram'),
      },
    ],
    foods: [food('white beans', 'white bean')],
  });
  const lemon = listing(3, '1 lemon, optional', {
    measures: [measure('1 lemon, optional', '1', '1', null)],
    foods: [food('lemon', 'lemon')],
    optional: true,
  });
  const listings = [leeks, cream, beans, lemon];
  const steps = [
    step(0, 'Char the leeks in a dry pan, 6 to 8 minutes.'),
    step(1, 'Add the beans and simmer; swirl in the cream.'),
  ];
  const recipe: Recipe = {
    file: broth.path,
    title: passageOf(broth, 'Charred Leek Broth'),
    span: { start: 0, end: broth.text.length },
    headnote: [],
    yield: {
      passage: passageOf(broth, 'Serves 4'),
      parsed: { text: 'Serves 4', amount: amount('4'), of: '', measures: [], dimensions: [] },
    },
    yields: [],
    times: [],
    components: [{ index: 0, heading: null, name: null, listings }],
    listings,
    steps,
    notes: [],
    storage: [],
    nutrition: [],
    equipment: [],
    rest: [],
  };
  const mentions = [
    mention(steps[0]!, 'leeks', [leeks]),
    mention(steps[1]!, 'beans', [beans]),
    mention(steps[1]!, 'cream', []),
  ];
  return {
    page: broth,
    recipe,
    steps: [],
    mentions,
    uses: [],
    accounts: [],
    heatings: [],
    parts: [],
    rawFoods: [],
    doneTemperatures: [],
    courses: [],
    handling: untouched,
  };
}

function listing(index: number, text: string, line: Partial<ListingLine>): Listing {
  const nothing: ListingLine = {
    text,
    measures: [],
    foods: [],
    dimensions: [],
    size: null,
    states: [],
    preparation: [],
    optional: false,
    divided: false,
    toTaste: false,
    asNeeded: false,
    plusMore: null,
    purpose: null,
    asides: [],
    unread: [],
  };
  return { index, passage: passageOf(broth, text), line: { ...nothing, ...line }, component: 0 };
}

function measure(text: string, words: string, value: string, unit: string | null): Measure {
  const start = text.indexOf(words);
  return {
    kind: 'measure',
    start,
    end: start + words.length,
    amount: amount(value),
    unit,
    plus: [],
    equals: [],
    pack: null,
    share: false,
  };
}

function amount(value: string): Amount {
  return { low: new Fraction(value), high: new Fraction(value), approximation: null };
}

function food(text: string, name: string): ListingLine['foods'][number] {
  return { start: 0, end: 0, text, name, row: null, joined: 'first', form: null, measures: [] };
}

function step(index: number, text: string): Step {
  return { index, number: index + 1, passage: passageOf(broth, text), heading: null };
}

function mention(where: Step, text: string, listings: readonly Listing[]): Mention {
  const start = where.passage.text.indexOf(text);
  return {
    text,
    start,
    end: start + text.length,
    step: where.index,
    role: 'use',
    food: null,
    listings,
    group: false,
    measure: null,
    determiner: 'the',
    verb: null,
    telling: false,
    article: false,
    into: false,
    allBut: false,
    toTaste: false,
    surface: false,
    optional: false,
  };
}
