/** Finds how a recipe's title, yield, list lines and sentences are put. */
import type { Recipe } from '../../anatomy/types.js';
import type { Item } from '../../grammar/types.js';
import { isWord } from '../../larder/kitchen-words.js';
import { fold } from '../../larder/names.js';
import type { Passage } from '../../manuscript/passage.js';
import type { Page } from '../../manuscript/types.js';
import type { ReadPart } from '../types.js';
import type { Usage } from './types.js';

/** The forms of a recipe's title, yield and list lines, and its sentences that open with a numeral. */
export function statementUsages(page: Page, recipe: Recipe, parts: readonly ReadPart[]): Usage[] {
  return [
    ...titleUsages(recipe),
    ...yieldUsages(page, recipe),
    ...capitalUsages(recipe),
    ...parts.flatMap(({ part, passage, items }) =>
      part === 'step' || part === 'headnote' || part === 'note' ? openingUsages(passage, items) : [],
    ),
  ];
}

function titleUsages({ title }: Recipe): Usage[] {
  const form = title === null ? null : titleForm(title.text);
  if (title === null || form === null) return [];
  return [{ aspect: 'title', about: 'title', form, passage: title, start: 0, end: title.text.length }];
}

/** The letters that every form writes small or large alike tell nothing; null where no others are left. */
export function titleForm(title: string): string | null {
  const words = [...title.replace(/\([^)]*\)/g, ' ').matchAll(/\p{L}[\p{L}\p{M}'’]*/gu)].map(
    ([word]) => word,
  );
  const telling = words.slice(1).filter((word) => word.length > 1 && !isWord(fold(word), 'small-in-title'));
  if (telling.length === 0) return null;
  if (words.every((word) => word === word.toUpperCase())) return 'ALL CAPITALS';
  const large = telling.filter((word) => word[0] !== word[0]!.toLowerCase()).length;
  return large === telling.length ? 'Headline Capitals' : large === 0 ? 'Sentence capitals' : null;
}

const APPROXIMATION = /^(?:about|around|approx|approximately|roughly|up to|at least)$/;

/** A label of words, perhaps a colon, perhaps a word for "about", the number, and what is counted. */
const YIELD =
  /^\P{L}*(?:(\p{L}+(?: \p{L}+){0,4}?)(?!\p{L}))?\s*(:?)\s*(?:(?:about|around|approx\.?|approximately|roughly|up to|at least)\s+)?~?\s*\d[\d¼-¾\s/.,–—-]*(?:to \d+)?\s*([\p{L}-]*)/u;

/** "Serves 4", "Servings: 4", "Makes 4 servings": the label and whether the helpings are named. */
function yieldUsages(page: Page, recipe: Recipe): Usage[] {
  const stated = recipe.yield;
  if (stated?.parsed == null || isFront(page, stated.passage)) return [];
  const form = yieldForm(stated.passage.text);
  if (form === null) return [];
  const { passage } = stated;
  return [{ aspect: 'yield', ...form, passage, start: 0, end: passage.text.length }];
}

/** A yield as an example of its form, with 4 helpings or 12 things; null where it has no label, or another shape. */
export function yieldForm(text: string): { readonly about: string; readonly form: string } | null {
  const found = YIELD.exec(text);
  if (found?.[1] === undefined) return null;
  const label = found[1].trim().toLowerCase();
  // "About 2 cups" has no label.
  if (APPROXIMATION.test(label)) return null;
  const labelled = label.charAt(0).toUpperCase() + label.slice(1);
  const things = found[3] ?? '';
  const helpings = isWord(fold(things), 'helping');
  if (!helpings && things !== '' && !isWord(fold(label.split(' ')[0]!), 'helping')) {
    return { about: 'yield in pieces', form: `${labelled}${found[2]} 12 pieces` };
  }
  const named = helpings ? ` ${things.toLowerCase()}` : '';
  return { about: 'yield in helpings', form: `${labelled}${found[2]} 4${named}` };
}

/** What stands in the front matter is for machines, and its form is theirs. */
function isFront(page: Page, passage: Passage): boolean {
  const { start } = passage.span();
  return page.front.some((field) => {
    const span = field.passage.span();
    return span.start <= start && start <= span.end;
  });
}

function capitalUsages({ listings }: Recipe): Usage[] {
  return listings.flatMap(({ passage }) => {
    const first = /^\p{L}[\p{L}'’-]*/u.exec(passage.text)?.[0];
    if (first === undefined || first.charAt(0).toLowerCase() === first.charAt(0).toUpperCase()) return [];
    const form = first.charAt(0) === first.charAt(0).toLowerCase() ? 'small first' : 'Capital first';
    return [{ aspect: 'capital', about: 'list line', form, passage, start: 0, end: first.length }];
  });
}

/** A sentence shorter than this is a heading or a time, and no sentence. */
const FEWEST_WORDS = 3;

const OPENING_FIGURE = /(?:^|[.!?]\s+)[\d¼-¾⅐-⅞]/;

function openingUsages(passage: Passage, items: readonly Item[]): Usage[] {
  if (!OPENING_FIGURE.test(passage.text)) return [];
  const usages: Usage[] = [];
  items.forEach((item, at) => {
    if (item.kind === 'word' || item.kind === 'point') return;
    if (!opensSentence(items, at) || !isSentence(items, at)) return;
    const numeral = /^\d+(?![\d.,:/]*\d|\s?[/⁄¼-¾⅐-⅞])|^[\d¼-¾⅐-⅞][\d¼-¾⅐-⅞/.,\s]*/u.exec(
      passage.text.slice(item.start),
    )?.[0];
    if (numeral === undefined) return;
    const end = item.start + numeral.trimEnd().length;
    usages.push({ aspect: 'opening', about: 'opening', form: 'numeral', passage, start: item.start, end });
  });
  return usages;
}

function opensSentence(items: readonly Item[], at: number): boolean {
  const before = items[at - 1];
  if (before === undefined) return true;
  if (before.kind !== 'point' || !/^[.!?]$/.test(before.text)) return false;
  const last = items[at - 2];
  // "approx. 5", "No. 3", "1. 2 eggs": a full stop that ends no sentence.
  return last?.kind === 'word' && !isWord(last.key, 'abbreviation') && last.key.length > 1;
}

function isSentence(items: readonly Item[], at: number): boolean {
  let words = 0;
  for (let next = at + 1; next < items.length; next++) {
    const item = items[next]!;
    if (item.kind === 'point' && /^[.!?\n]$/.test(item.text))
      return words >= FEWEST_WORDS && item.text !== '\n';
    // "2 minutes: …", "1) …": a label, not a sentence.
    if (item.kind === 'point' && next === at + 1 && /^[:)]$/.test(item.text)) return false;
    if (item.kind === 'word') words++;
  }
  return words >= FEWEST_WORDS;
}
