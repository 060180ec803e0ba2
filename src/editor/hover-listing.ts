/** Tells how a listing was understood, with its amount in the other system. */
import type { Listing } from '../anatomy/types.js';
import { inOtherSystem } from '../arithmetic/other-system.js';
import type { System } from '../arithmetic/units.js';
import type { ListedFood } from '../grammar/types.js';
import type { Dish } from '../kitchen/types.js';
import type { Fact } from './facts.js';
import { measureWords, sumWords } from './measure-words.js';
import { stepName } from './steps.js';

/** What the list says of the food, then where the method uses it. What was not made out is said too. */
export function listingFacts({ recipe, uses }: Dish, { line, index }: Listing, system?: System): Fact[] {
  const other = line.measures.flatMap((measure) => inOtherSystem(measure, system) ?? []);
  const packs = line.measures.flatMap(({ pack }) =>
    pack === null ? [] : (inOtherSystem(pack, system) ?? []),
  );
  const said = [
    ...(line.optional ? ['optional'] : []),
    ...(line.divided ? ['divided'] : []),
    ...(line.toTaste ? ['to taste'] : []),
    ...(line.asNeeded ? ['as needed'] : []),
  ];
  const steps = [...new Set(uses[index]!.map(({ step }) => stepName(recipe, step)))];
  const facts: Fact[] = [
    ['Amount', line.measures.map(measureWords).join(' and ') || 'none'],
    ['In other measures', other.map((sum) => `about ${sumWords(sum)}`).join(' and ')],
    ['Each', packs.map((sum) => `about ${sumWords(sum)}`).join(' and ')],
    ['Food', line.foods.map(foodWords).join(' ') || 'none made out'],
    ['Size', line.size?.text ?? ''],
    ['State when measured', texts(line.states)],
    ['Then', texts(line.preparation)],
    ['For', line.purpose?.text ?? ''],
    ['Said of it', [...said, ...(line.plusMore === null ? [] : [line.plusMore.text])].join(', ')],
    ['Not understood', texts(line.unread)],
    ['Used in', steps.length === 0 ? 'no step' : steps.join(', ')],
  ];
  return facts.filter(([, value]) => value !== '');
}

function foodWords({ name, row, joined }: ListedFood): string {
  const known = row === null ? ' (not in the larder)' : row.name === name ? '' : ` (${row.name})`;
  return `${joined === 'first' ? '' : `${joined} `}${name}${known}`;
}

function texts(phrases: readonly { readonly text: string }[]): string {
  return phrases.map(({ text }) => text).join(', ');
}
