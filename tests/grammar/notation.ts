/** Prints trees of the grammar in one line each, every field but the offsets, so that tests compare whole trees by eye. */
import type { Amount, Item, ListedFood, ListingLine, Measure, Temperature } from '../../src/grammar/types.js';

/** Items side by side: words as they stand, quantities in brackets: `[3/2 cup] flour`. */
export function shown(items: readonly Item[]): string {
  return items.map(shownItem).join(' ');
}

/** A measure: amount and unit, then `+` what is added, `=` the same in other units, `of` the pack. */
export function shownMeasure(measure: Measure): string {
  const { amount, unit, plus, equals, pack, share } = measure;
  const parts = [share ? `share ${shownAmount(amount)}` : shownAmount(amount)];
  if (unit !== null) parts.push(unit);
  if (pack !== null) parts.push(`of ${shownMeasure(pack)}`);
  for (const part of plus) parts.push(`+ ${shownMeasure(part)}`);
  for (const same of equals) parts.push(`= ${shownMeasure(same)}`);
  return `[${parts.join(' ')}]`;
}

/** Everything an ingredient line was understood to say, empty fields left out. */
export function shownListing(line: ListingLine): Record<string, unknown> {
  const texts = (phrases: readonly { text: string }[]) => phrases.map(({ text }) => text);
  const all: Record<string, unknown> = {
    measures: line.measures.map(shownMeasure),
    foods: line.foods.map(shownFood),
    dimensions: line.dimensions.map(shownItem),
    size: line.size?.text ?? null,
    states: texts(line.states),
    preparation: texts(line.preparation),
    optional: line.optional,
    divided: line.divided,
    toTaste: line.toTaste,
    asNeeded: line.asNeeded,
    plusMore: line.plusMore?.text ?? null,
    purpose: line.purpose?.text ?? null,
    asides: texts(line.asides),
    unread: texts(line.unread),
  };
  const said = Object.entries(all).filter(([, value]) => value !== null && value !== false);
  return Object.fromEntries(said.filter(([, value]) => !Array.isArray(value) || value.length > 0));
}

/** `or beef broth (beef stock)`: how it is joined, its text, and the larder's name for it where it has one. */
function shownFood(food: ListedFood): string {
  const joined = food.joined === 'first' ? '' : `${food.joined} `;
  const form = food.form === null ? '' : ` ${food.form}`;
  const measures = food.measures.map((measure) => ` ${shownMeasure(measure)}`).join('');
  return `${joined}${food.text}${form}${measures} (${food.row?.name ?? '?'})`;
}

function shownItem(item: Item): string {
  switch (item.kind) {
    case 'word':
      return item.hyphenated ? `~${item.text}` : item.text;
    case 'point':
      return item.text;
    case 'measure':
      return shownMeasure(item);
    case 'count':
      return `[${shownAmount(item.amount)}]`;
    case 'dimension':
      return `[${item.lengths.map(({ amount, unit }) => `${shownAmount(amount)} ${unit}`).join(' x ')}]`;
    case 'temperature':
      return shownTemperature(item);
    case 'duration':
      return `[${item.seconds === null ? 'some' : `${shownAmount(item.seconds)} s`} in ${item.unit}s]`;
  }
}

function shownTemperature({ amount, scale, fan, equals }: Temperature): string {
  const same = equals.map((one) => ` = ${shownTemperature(one)}`).join('');
  return `[${shownAmount(amount)} ${scale ?? 'degrees'}${fan ? ' fan' : ''}${same}]`;
}

function shownAmount({ low, high, approximation }: Amount): string {
  const number = low.equals(high) ? low.toFraction() : `${low.toFraction()}..${high.toFraction()}`;
  return approximation === null ? number : `${approximation} ${number}`;
}
