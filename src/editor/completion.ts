/** Completes the listed foods inside the method, and the names of rules inside a stet. */
import { type CompletionItem, CompletionItemKind, type Position } from 'vscode-languageserver';
import { rules } from '../../rules/index.js';
import type { Recipe } from '../anatomy/types.js';
import { ruleBeingTyped } from '../manuscript/stets.js';
import type { Sheet } from './desk.js';

export function completion({ read: { page, dishes }, places }: Sheet, position: Position): CompletionItem[] {
  const offset = places.offset(position);
  const typed = ruleBeingTyped(page.text, offset);
  if (typed !== null) {
    const range = places.range({ start: typed, end: offset });
    return rules.map(({ name, summary }) => ({
      label: name,
      kind: CompletionItemKind.EnumMember,
      detail: summary,
      textEdit: { range, newText: name },
    }));
  }
  const dish = dishes.find(({ recipe }) => isInMethod(recipe, offset));
  const foods = new Map(
    dish?.recipe.listings.flatMap(({ line, passage }) =>
      line.foods.map((food) => [food.text, passage.text] as const),
    ),
  );
  const line = page.text.slice(page.lines.start(page.lines.line(offset)), offset);
  return [...foods].map(([food, listing]) => ({
    label: food,
    kind: CompletionItemKind.Value,
    detail: listing,
    textEdit: { range: places.range({ start: offset - typedOf(line, food), end: offset }), newText: food },
  }));
}

/** How many characters before the cursor the food takes the place of: what is typed of it ("olive o"), else the last word. */
function typedOf(line: string, food: string): number {
  const words = [...line.matchAll(/(?<![\p{L}\p{N}])[\p{L}\p{N}]/gu)].map(({ index }) => line.slice(index));
  const begun = words.find((typed) => food.toLowerCase().startsWith(typed.toLowerCase()));
  return (begun ?? /[\p{L}\p{N}]*$/u.exec(line)![0]).length;
}

/** From the first step on, as long as no other part of the recipe has begun: also in a step that is being started. */
function isInMethod(recipe: Recipe, offset: number): boolean {
  const begins = (passages: readonly { span: () => { start: number } }[]) =>
    Math.max(-1, ...passages.map((passage) => passage.span().start).filter((start) => start <= offset));
  const step = begins(recipe.steps.map(({ passage }) => passage));
  const other = begins([
    ...recipe.listings.map(({ passage }) => passage),
    ...recipe.notes,
    ...recipe.storage,
    ...recipe.nutrition,
    ...recipe.equipment,
    ...recipe.rest,
  ]);
  return step > other && offset <= recipe.span.end + REACH;
}

/** A new step's number and its first blank: what may stand between the recipe's end and the cursor. */
const REACH = 8;
