/** Reads what a page holds: its recipes, and the stretches that look like one but cannot be told apart. */
import { readText } from '../grammar/text.js';
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
  return { recipes, unclear: left.flatMap((section) => unclear(section) ?? []) };
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
