/** No tolerance changes without a date: books pin theirs in the house style. */
import { expect, it } from 'vitest';
import { larder } from '../../src/larder/load.js';
import { figuresOf } from '../../src/larder/read-yaml.js';

it('the figures of all tolerances are those of the last edition, and change with any of them', () => {
  const { figures } = larder.toleranceEditions.at(-1)!;
  expect(figuresOf(larder)).toBe(figures);
  const [first, ...others] = larder.tolerances;
  const wider = { ...larder, tolerances: [{ ...first!, share: '1/2' }, ...others] };
  expect(figuresOf(wider)).not.toBe(figures);
  const reworded = { ...larder, tolerances: [{ ...first!, why: 'the same in other words' }, ...others] };
  expect(figuresOf(reworded)).toBe(figures);
});

it('the editions stand in the order of their dates', () => {
  const dates = larder.toleranceEditions.map(({ edition }) => edition);
  expect(dates).toEqual(dates.toSorted());
});
