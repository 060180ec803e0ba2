/** The words and units that the grammar knows are those of the larder's tables, each once. */
import { describe, expect, test } from 'vitest';
import { readText } from '../../src/grammar/text.js';
import { lexiconAt, phrases } from '../../src/larder/lexicon.js';
import { larder } from '../../src/larder/load.js';
import { sizeOf, unitById, unitNamed } from '../../src/larder/units.js';

test('no word stands twice in one class of the lexicon', () => {
  const rows = phrases.map(({ words, is }) => `${is}: ${words.join(' ')}`);
  expect(rows.filter((row, index) => rows.indexOf(row) !== index)).toEqual([]);
});

test('the longest phrase that begins at a word is found', () => {
  expect(lexiconAt(['skin', 'on'], 0, 'state')?.length).toBe(2);
  expect(lexiconAt(['plus', 'more'], 0, 'plus-more')?.length).toBe(2);
  expect(lexiconAt(['flour'], 0, 'state')).toBeNull();
});

test('no short form or name means two units', () => {
  const holders = new Map<string, string>();
  const twice: string[] = [];
  for (const { id, names, short, exact } of larder.units) {
    for (const name of [
      ...names.map((one) => one.toLowerCase()),
      ...short,
      ...exact.map((one) => `exactly ${one}`),
    ]) {
      if (holders.has(name)) twice.push(`${name}: ${holders.get(name)} and ${id}`);
      holders.set(name, id);
    }
  }
  expect(twice).toEqual([]);
});

describe('every unit of volume, mass and time is read after a number by each of its names', () => {
  const units = larder.units.filter(({ kind }) => kind === 'volume' || kind === 'mass' || kind === 'time');
  test.each(units.flatMap(({ id, names, short }) => [...names, ...short].map((name) => [name, id])))(
    '3 %s',
    (name, id) => {
      const [item, ...others] = readText(`3 ${name}`);
      expect(others).toEqual([]);
      expect(item).toMatchObject({ unit: id });
    },
  );
});

test('a unit is found by name, short form or id; T is not t', () => {
  expect(unitNamed('Tablespoons')?.id).toBe('tablespoon');
  expect(unitNamed('fl oz')?.id).toBe('fluid-ounce');
  expect(unitNamed('T')?.id).toBe('tablespoon');
  expect(unitNamed('t')?.id).toBe('teaspoon');
  expect(unitNamed('gribble')).toBeNull();
});

test('a unit knows its size in the base of its kind', () => {
  expect(sizeOf(unitById('pound'))).toBe('453.59237');
  expect(sizeOf(unitById('pinch'))).toBeNull();
  expect(() => unitById('gribble')).toThrow('unitById');
});
