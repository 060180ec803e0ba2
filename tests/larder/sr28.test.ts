/** The tables made from SR28 say what SR28 says: amount and grams of every row stand under its NDB number in the data. */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { larder } from '../../src/larder/load.js';
import { measureOf } from '../../src/larder/sr28/measures.js';

const data = '../shared/data/usda-sr28';

describe.skipIf(!existsSync(data))('the tables of SR28', () => {
  const rows = (file: string) =>
    readFileSync(`${data}/${file}`, 'utf8')
      .trimEnd()
      .split('\n')
      .slice(1)
      .map((line) => line.split('\t'));
  const measures = new Set(
    rows('measures.tsv').map(([ndb, amount, , grams]) => `${ndb} ${Number(amount)} ${Number(grams)}`),
  );
  const refuse = new Map(rows('foods.tsv').map(([ndb, , , , percent]) => [ndb!, Number(percent)]));

  it('has every weight of a volume and of a piece', () => {
    const made = [...larder.volumeWeights, ...larder.pieceWeights].flatMap((row) =>
      row.weights.map(([amount, , , grams]) => `${row.ndb} ${amount} ${grams}`),
    );
    expect(made.filter((each) => !measures.has(each))).toEqual([]);
    expect(made.length).toBeGreaterThan(1000);
  });
  it('has every share of refuse', () => {
    expect(larder.refuse.filter((row) => refuse.get(row.ndb) !== row.percent)).toEqual([]);
  });
});

describe('a household measure as SR28 words it', () => {
  it('is a volume with its wording, or a piece with its size', () => {
    expect(measureOf(1, 'cup, chopped', 160, ['onion'])).toMatchObject({ unit: 'cup', wording: 'chopped' });
    expect(measureOf(1, 'medium (2-1/2" dia)', 110, ['onion'])).toMatchObject({
      unit: '',
      wording: 'medium',
    });
    expect(measureOf(3, 'cloves', 9, ['garlic'])).toMatchObject({ unit: 'clove', count: 3 });
  });
  it('is nothing where it is a serving, a package, what something yields, or a maker’s own', () => {
    for (const text of [
      'NLEA serving',
      'package (10 oz)',
      'cup, in shell, edible yield',
      'oz',
      'cookie Great Crunch',
    ])
      expect(measureOf(1, text, 30, ['cookie'])).toBeNull();
  });
});
