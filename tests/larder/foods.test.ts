/** What the food tables know: kinds, parts, synonyms, and facts of SR28 that a reader can look up. */
import { describe, expect, it } from 'vitest';
import { foodAt, foodNamed, isKindOf, isPartOf } from '../../src/larder/foods.js';
import { larder } from '../../src/larder/load.js';
import { fold, singular } from '../../src/larder/names.js';

const food = (name: string) => {
  const found = foodNamed(name);
  if (found === null) throw new Error(`no food "${name}"`);
  return found;
};
const keys = (text: string) => text.split(/[\s-]+/).map(fold);

describe('the food tables', () => {
  it('hold at least a thousand foods, each with its source', () => {
    expect(larder.foods.length).toBeGreaterThanOrEqual(1000);
    for (const row of larder.foods) expect(row.source.length, row.name).toBeGreaterThan(3);
  });

  it.each([
    ['chicken thighs', 'chicken'],
    ['chicken thighs', 'poultry'],
    ['extra-virgin olive oil', 'olive oil'],
    ['extra-virgin olive oil', 'oil'],
    ['ground cumin', 'cumin'],
    ['cumin seed', 'cumin'],
    ['Parmesan', 'cheese'],
    ['spaghetti', 'pasta'],
    ['basmati rice', 'rice'],
    ['bell pepper', 'pepper'],
    ['salmon', 'fish'],
  ])('%s are a kind of %s', (one, other) => {
    expect(isKindOf(food(one), food(other))).toBe(true);
  });

  it.each([
    ['coconut milk', 'milk'],
    ['peanut butter', 'butter'],
    ['black pepper', 'bell pepper'],
    ['chicken stock', 'chicken'],
    ['rice vinegar', 'rice'],
    ['cream of tartar', 'cream'],
    ['sweet potato', 'potato'],
    ['baking soda', 'baking powder'],
    ['water chestnut', 'water'],
  ])('%s is no kind of %s', (one, other) => {
    expect(isKindOf(food(one), food(other))).toBe(false);
  });

  it.each([
    ['lemon juice', 'lemon'],
    ['lemon zest', 'lemon'],
    ['egg whites', 'egg'],
    ['egg yolk', 'eggs'],
  ])('%s is had from %s', (part, whole) => {
    expect(isPartOf(food(part), food(whole))).toBe(true);
  });

  it.each([
    ['scallions', 'green onion'],
    ['spring onions', 'scallion'],
    ['aubergine', 'eggplant'],
    ['icing sugar', 'powdered sugar'],
    ['courgettes', 'zucchini'],
    ['yoghurt', 'yogurt'],
    ['bicarbonate of soda', 'baking soda'],
  ])('%s and %s are one food', (one, other) => {
    expect(food(one)).toBe(food(other));
  });

  it('the longest name wins, however it is split into words', () => {
    expect(foodAt(keys('all purpose flour and'), 0)).toEqual({ food: food('all-purpose flour'), length: 3 });
    expect(foodAt(keys('cream of tartar'), 0)?.food.name).toBe('cream of tartar');
    expect(foodAt(keys('bread crumbs'), 0)?.food).toBe(food('breadcrumbs'));
    expect(foodAt(keys('stirring slowly'), 0)).toBeNull();
  });
});

describe('names', () => {
  it('fold case, accents, apostrophes and hyphens', () => {
    expect(fold('Crème Fraîche')).toBe('cremefraiche');
    expect(fold('All-Purpose')).toBe('allpurpose');
  });
  it.each([
    ['potatoes', 'potato'],
    ['leaves', 'leaf'],
    ['olives', 'olive'],
    ['chives', 'chive'],
    ['berries', 'berry'],
    ['molasses', 'molasses'],
    ['hummus', 'hummus'],
    ['asparagus', 'asparagus'],
    ['swiss', 'swiss'],
  ])('%s has the singular %s', (plural, one) => {
    expect(singular(plural)).toBe(one);
  });
});
