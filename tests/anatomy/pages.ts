/** Helpers of the anatomy tests: a page read into plain words, so that a test compares all of it at once. */
import { readContents } from '../../src/anatomy/contents.js';
import type { Contents, Recipe } from '../../src/anatomy/types.js';
import { openPage } from '../../src/manuscript/page.js';
import type { Passage } from '../../src/manuscript/passage.js';

export function contents(text: string): Contents {
  return readContents(openPage({ path: 'page.md', text }));
}

export function only(text: string): Recipe {
  const { recipes } = contents(text);
  if (recipes.length !== 1) throw new Error(`expected one recipe, found ${recipes.length}`);
  return recipes[0]!;
}

/** The titles of all recipes, with how many listings and steps each has. */
export function outline(text: string): string[] {
  return contents(text).recipes.map(
    (recipe) =>
      `${recipe.title?.text ?? '-'}: ${recipe.listings.length} listed, ${recipe.steps.length} steps`,
  );
}

export function words(passages: readonly Passage[]): string[] {
  return passages.map((passage) => passage.text);
}

export function listings(recipe: Recipe): string[] {
  return recipe.listings.map((listing) => listing.passage.text);
}

/** Every component with its listings: "glaze: sugar | water". */
export function components(recipe: Recipe): string[] {
  return recipe.components.map(
    (component) =>
      `${component.name ?? '-'}: ${component.listings.map((listing) => listing.passage.text).join(' | ')}`,
  );
}

/** Every step with its number and the heading over it. */
export function steps(recipe: Recipe): string[] {
  return recipe.steps.map(
    (step) =>
      `${step.number ?? '-'} ${step.heading === null ? '' : `(${step.heading.text}) `}${step.passage.text}`,
  );
}
