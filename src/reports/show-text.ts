/** Prints the recipes of a show report for a person at a terminal: each line as written, and below it as understood. */
import type { ChalkInstance } from 'chalk';
import type { Dish } from '../kitchen/types.js';
import type { ShownListing, ShownMeasure, ShownRecipe } from './schema.js';
import { reportShow } from './show.js';
import { displayWidth, fill, oneLine, wrap } from './text.js';

export function showText(dishes: readonly Dish[], options: { color: ChalkInstance; width: number }): string {
  const { recipes } = reportShow(dishes);
  if (recipes.length === 0) return 'No recipe was found.\n';
  return `${recipes.map((recipe) => recipeLines(recipe, options).join('\n')).join('\n\n\n')}\n`;
}

interface Sheet {
  readonly color: ChalkInstance;
  readonly width: number;
}

function recipeLines(recipe: ShownRecipe, sheet: Sheet): string[] {
  const { color, width } = sheet;
  const title = recipe.title === null ? '(without a title)' : oneLine(recipe.title);
  const place = `${oneLine(recipe.file)}:${recipe.line}`;
  const used = displayWidth(title) + displayWidth(place);
  const lines = [
    color.bold(title) +
      (used + 2 > width ? `\n${fill(displayWidth(place), width)}` : fill(used, width)) +
      color.dim(place),
  ];
  lines.push(...facts(recipe).flatMap((fact) => hanging('  ', fact, width)));
  for (const component of recipe.components) {
    lines.push('', `  ${color.bold(oneLine(component.heading ?? 'List'))}`);
    for (const index of component.listings) {
      const listing = recipe.listings[index];
      if (listing !== undefined) lines.push(...listingLines(listing, recipe, sheet));
    }
  }
  lines.push('', `  ${color.bold(recipe.steps.length === 0 ? 'No method' : 'Method')}`);
  for (const step of recipe.steps) {
    if (step.heading !== null) lines.push(`  ${oneLine(step.heading)}`);
    lines.push(...hanging(`    ${stepName(recipe, step.index)}  `, step.text, width));
    for (const mention of recipe.mentions.filter((each) => each.step === step.index)) {
      lines.push(
        ...hanging('         ', mentionText(mention, recipe), width).map((line) => color.cyan(line)),
      );
    }
  }
  return lines;
}

function facts(recipe: ShownRecipe): string[] {
  const found: string[] = [];
  if (recipe.yield === null) found.push('no yield');
  else {
    const { amount, of, text } = recipe.yield;
    // What is poured is said by its measure, and counts nothing.
    const counted = amount === null ? '' : ` (${range(amount)} ${of || 'servings'})`;
    found.push(`yield: ${text}${of === null ? ' (not understood)' : counted}`);
  }
  for (const time of recipe.times) found.push(`${time.kind} time: ${time.value}`);
  return found;
}

function listingLines(listing: ShownListing, recipe: ShownRecipe, sheet: Sheet): string[] {
  const written = hanging(`    line ${String(listing.line).padEnd(4)} `, listing.text, sheet.width);
  const understood = hanging('              ', understoodText(listing, recipe), sheet.width);
  return [...written, ...understood.map((line) => sheet.color.cyan(line))];
}

function understoodText(listing: ShownListing, recipe: ShownRecipe): string {
  const foods = listing.foods.map((food) =>
    food.joined === 'first' ? food.name : `${food.joined} ${food.name}`,
  );
  const steps = recipe.mentions
    .filter((mention) => mention.listings.includes(listing.index))
    .map((mention) => stepName(recipe, mention.step));
  const flags = [
    ...(listing.optional ? ['optional'] : []),
    ...(listing.divided ? ['divided'] : []),
    ...(listing.toTaste ? ['to taste'] : []),
    ...(listing.asNeeded ? ['as needed'] : []),
  ];
  return [
    listing.measures.length === 0 ? 'no amount' : listing.measures.map(measureText).join(' and '),
    foods.length === 0 ? 'no food made out' : foods.join(' '),
    ...(listing.size === null ? [] : [listing.size]),
    ...listing.states,
    ...listing.preparation,
    ...flags,
    ...(listing.unread.length === 0 ? [] : [`not understood: ${listing.unread.join(', ')}`]),
    steps.length === 0
      ? 'in no step'
      : `in ${steps.length === 1 ? 'step' : 'steps'} ${[...new Set(steps)].join(', ')}`,
  ].join('; ');
}

function measureText(measure: ShownMeasure): string {
  const unit = measure.unit === null ? '' : ` ${measure.unit}`;
  const share = measure.share ? ' of it' : '';
  const pack = measure.pack === null ? '' : ` of ${measureText(measure.pack)} each`;
  const plus = measure.plus.map((part) => ` plus ${measureText(part)}`).join('');
  const same = measure.equals.map((other) => ` = ${measureText(other)}`).join('');
  return `${range(measure)}${unit}${share}${pack}${plus}${same}`;
}

function range(amount: { low: string; high: string }): string {
  return amount.low === amount.high ? amount.low : `${amount.low} to ${amount.high}`;
}

function mentionText(mention: ShownRecipe['mentions'][number], recipe: ShownRecipe): string {
  const lines = mention.listings.map((index) => `line ${recipe.listings[index]?.line}`);
  const meant = lines.length === 0 ? 'on no list' : lines.join(', ');
  const role = mention.role === 'use' ? '' : `, ${mention.role}`;
  const much = mention.measure === null ? '' : `, ${measureText(mention.measure)}`;
  return `"${mention.text}": ${mention.role === 'use' || lines.length > 0 ? meant : 'not looked for'}${role}${much}`;
}

/** The number printed before the step, else its place in the method from 1. */
function stepName(recipe: ShownRecipe, index: number): string {
  return String(recipe.steps[index]?.number ?? index + 1);
}

/** The text behind `lead`, its further lines indented to where it began. */
function hanging(lead: string, text: string, width: number): string[] {
  const rows = wrap(text, Math.max(20, width - lead.length));
  return rows.map((row, index) => (index === 0 ? lead : ' '.repeat(lead.length)) + row);
}
