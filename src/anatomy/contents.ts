/** Reads what a page holds: its recipes, and the stretches that look like one but cannot be told apart. */
import { readText } from '../grammar/text.js';
import { headingKind } from '../larder/headings.js';
import type { Passage } from '../manuscript/passage.js';
import type { Page, Span } from '../manuscript/types.js';
import { instructs, LineJudge, startsWithAmount } from './language.js';
import { type Outline, outlinesOf } from './outline.js';
import { type Naming, recipeOf } from './recipe.js';
import { type Section, sectionsOf } from './sections.js';
import type { Contents } from './types.js';

/** What is no recipe is passed over in silence; what may be one and cannot be told apart is said once. */
export function readContents(page: Page): Contents {
  const judge = new LineJudge();
  const sections = sectionsOf(page.blocks, judge);
  const frontTitle = page.front.find(
    (field) => field.key.toLowerCase() === 'title' && field.passage.text.trim() !== '',
  );
  const outlines = outlinesOf(sections, frontTitle !== undefined);
  const alone = outlines.length === 1;
  const recipes = outlines.map((outline) =>
    recipeOf(page, outline, naming(outline, alone, frontTitle?.passage), judge),
  );
  const taken = new Set(outlines.flatMap((outline) => outline.sections));
  const left = sections.filter((section) => !taken.has(section));
  const found = left.flatMap((section) => unclear(section) ?? []);
  const unset = recipes.some((recipe) => recipe.listings.length > 0) ? null : unsetList(page, judge);
  // A page is said to be unclear once for each reason, and what was not set as a list is the first of them.
  return {
    recipes,
    unclear:
      unset === null
        ? found
        : [
            unset,
            ...found.filter(({ span }) => span.end <= unset.span.start || span.start >= unset.span.end),
          ],
  };
}

/** The list of a page without one that stands where it is not read as text: in a block of code, or in the front matter. */
function unsetList(page: Page, judge: LineJudge): Contents['unclear'][number] | null {
  for (const { type, span } of page.blocks) {
    if (type !== 'code') continue;
    const lines = page.text.slice(span.start, span.end).split(/\r?\n/);
    if (listsFoods(lines, judge))
      return { span, why: 'the ingredients stand in a block of code, as indented lines do' };
  }
  const fields = page.front.filter(({ key }) =>
    key.split(/[.[]/).some((word) => headingKind(word) === 'list'),
  );
  if (
    !listsFoods(
      fields.map(({ passage }) => passage.text),
      judge,
    )
  )
    return null;
  const span: Span = { start: fields[0]!.passage.span().start, end: fields.at(-1)!.passage.span().end };
  return { span, why: 'the ingredients stand in the front matter' };
}

const MOST_UNSET_LINES = 60;

/** Whether at least two lines, and half of them, are amounts of foods. */
function listsFoods(lines: readonly string[], judge: LineJudge): boolean {
  const filled = lines
    .map((line) => line.trim().replace(/^[-*•]\s+/, ''))
    .filter((line) => line !== '')
    .slice(0, MOST_UNSET_LINES);
  const listed = filled.filter((line) => judge.kind(line) === 'amount').length;
  return listed > 1 && listed * 2 >= filled.length;
}

function naming(outline: Outline, alone: boolean, frontTitle: Passage | undefined): Naming {
  const head = outline.head?.passage ?? null;
  return { title: head ?? (alone ? (frontTitle ?? null) : null), front: alone };
}

const FEWEST_MEASURES = 3;
const MOST_BLOCKS = 8;

/** Why a section outside of all recipes looks like one: amounts and commands stand in the same lines. Null where it does not. */
function unclear({ head, scope, pieces }: Section): Contents['unclear'][number] | null {
  if (scope !== null || pieces.length === 0 || pieces.length > MOST_BLOCKS) return null;
  const span: Span = { start: (head ?? pieces[0]!.block).span.start, end: pieces.at(-1)!.block.span.end };
  if (pieces.some((piece) => piece.reads.mingled))
    return { span, why: 'the same list holds ingredients and steps' };
  let measures = 0;
  let commands = 0;
  for (const { block } of pieces) {
    if (block.type !== 'paragraph') continue;
    if (instructs(block.passage.text)) commands++;
    measures += measuresIn(block.passage.text);
    // A paragraph that opens with an amount is a list that was not set as one.
    if (startsWithAmount(block.passage.text) && measures > 1) measures = Math.max(measures, FEWEST_MEASURES);
  }
  if (commands === 0 || measures < FEWEST_MEASURES) return null;
  return { span, why: 'the amounts stand in the running text, and there is no list of ingredients' };
}

/** How many amounts of something the sentences of a paragraph hold. */
function measuresIn(text: string): number {
  return readText(text).filter((item) => item.kind === 'measure').length;
}
