/** Tells what a mention means on the list, and how much of that the method has used so far. */
import type { Listing } from '../anatomy/types.js';
import { sumMeasures } from '../arithmetic/compare.js';
import { convert } from '../arithmetic/convert.js';
import type { Dish, Mention } from '../kitchen/types.js';
import type { Fact } from './facts.js';
import { measureWords, sumWords } from './measure-words.js';
import { stepName } from './steps.js';

export function mentionFacts(dish: Dish, mention: Mention): Fact[] {
  const here: Fact[] = mention.measure === null ? [] : [['Here', measureWords(mention.measure)]];
  const listed = mention.listings.flatMap((listing): Fact[] => [
    ['On the list', listing.passage.text],
    ...usedFacts(dish, mention, listing),
  ]);
  if (listed.length > 0) return [...listed, ...here];
  return [...here, ['On the list', UNLISTED[mention.role]]];
}

const UNLISTED: Readonly<Record<Mention['role'], string>> = {
  use: 'no',
  aside: 'no; it is only spoken of',
  made: 'no; the recipe makes it',
};

/** The uses before this one, and what they come to together with it, where all give amounts that can be added. */
function usedFacts({ recipe, uses }: Dish, mention: Mention, listing: Listing): Fact[] {
  const before = uses[listing.index]!.filter(
    ({ step, start }) => step < mention.step || (step === mention.step && start < mention.start),
  );
  if (before.length === 0) return [['Used before', 'no']];
  const said = before.map(
    ({ step, measure }) =>
      `${measure === null ? 'no amount' : measureWords(measure)} in ${stepName(recipe, step)}`,
  );
  const total = totalOf([...before, mention], listing);
  return [
    ['Used before', said.join('; ')],
    ...(total === null ? [] : ([['Used with this', total]] as const)),
  ];
}

/** "3 tablespoons of 4 tablespoons", in the listing's own unit. */
function totalOf(uses: readonly Mention[], listing: Listing): string | null {
  const listed = listing.line.measures[0];
  const measures = uses.flatMap(({ measure }) => measure ?? []);
  const sum = measures.length < uses.length ? null : sumMeasures(measures);
  if (listed === undefined || sum === null) return null;
  const { unit } = listed;
  if (unit === null || sum.unit === null)
    return unit === sum.unit ? `${sumWords(sum)} of ${measureWords(listed)}` : null;
  const low = convert(sum.low, sum.unit, unit);
  const high = convert(sum.high, sum.unit, unit);
  return low === null || high === null ? null : `${sumWords({ unit, low, high })} of ${measureWords(listed)}`;
}
