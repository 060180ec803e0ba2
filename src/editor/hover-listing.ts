/** Tells how a listing was understood, with its amount in the other system and its weight. */
import type { Listing } from '../anatomy/types.js';
import { inOtherSystem, onScales } from '../arithmetic/other-system.js';
import type { System } from '../arithmetic/units.js';
import type { ListedFood } from '../grammar/types.js';
import { weightOfListing } from '../kitchen/listing-weight.js';
import type { Dish } from '../kitchen/types.js';
import type { Fact } from './facts.js';
import { measureWords, scaleWords, sumWords } from './measure-words.js';
import { stepName } from './steps.js';

/** What the list says of the food, then where the method uses it. What was not made out is said too. */
export function listingFacts({ recipe, uses }: Dish, listing: Listing, system?: System): Fact[] {
  const { line, index } = listing;
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
    ['Weight', weightWords(listing, system)],
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

/** "about 120 grams (4.2 ounces)"; nothing where the larder does not know it. */
function weightWords(listing: Listing, system: System | undefined): string {
  const weight = weightOfListing(listing, system);
  const [first, second] = weight === null ? [] : onScales(weight.sum).map(scaleWords);
  if (weight === null || first === undefined) return '';
  const waste = weight.trimmed ? ', without what is thrown away' : '';
  return `about ${first}${second === undefined ? '' : ` (${second})`}${waste}`;
}

function foodWords({ name, row, joined }: ListedFood): string {
  const known = row === null ? ' (not in the larder)' : row.name === name ? '' : ` (${row.name})`;
  return `${joined === 'first' ? '' : `${joined} `}${name}${known}`;
}

function texts(phrases: readonly { readonly text: string }[]): string {
  return phrases.map(({ text }) => text).join(', ');
}
