/** Where raw food goes: what cooks it, which temperature is its own, and when nobody need ask for one. */
import { describe, expect, it } from 'vitest';
import type { RawCourse } from '../../src/kitchen/types.js';
import { dish } from './dishes.js';

/** The course of the first raw food. */
function course(listings: readonly string[], steps: readonly string[], title?: string): RawCourse {
  return dish(listings, steps, title).courses[0]!;
}

/** Each temperature of food with the foods that it is about. */
function temperatures(listings: readonly string[], ...steps: string[]): string[] {
  return dish(listings, steps).doneTemperatures.map(
    ({ passage, temperature, foods }) =>
      `${passage.text.slice(temperature.start, temperature.end)} ${foods.map(({ food }) => food.name).join(', ')}`,
  );
}

describe('raw animal food is', () => {
  const raw = (listing: string, title?: string) =>
    dish([listing], ['Fry it until done.'], title).rawFoods.map(({ safety }) => safety);

  it.each([
    ['4 chicken thighs', ['poultry']],
    ['1 pound ground turkey', ['poultry']],
    ['1 pound chuck, ground', ['ground-meat']],
    ['2 pork chops', ['whole-cut']],
    ['1 pound raw shrimp, not cooked shrimp', ['shellfish']],
    ['4 chicken breasts, rinsed and dried', ['poultry']],
  ])('%s', (listing, expected) => {
    expect(raw(listing)).toEqual(expected);
  });

  it.each([
    '2 cups cooked chicken',
    '1 rotisserie chicken',
    '1 can (5 ounces) tuna',
    '4 ounces smoked salmon',
    '1 can (15 ounces) kidney beans',
    '1 tablespoon gelatin',
    '4 cups chicken stock',
    '1 chicken bouillon cube',
    '1 pound plant-based ground beef',
    '2 vegan chicken cutlets',
    '8 ounces vegetarian sausage',
    '3 ounces prosciutto',
    '1 pound cooked shrimp',
  ])('not %s', (listing) => {
    expect(raw(listing)).toEqual([]);
  });

  it('none in a dish that calls itself vegan', () => {
    expect(raw('1 pound ground beef', 'Vegan Taco Filling')).toEqual([]);
  });
});

describe('a temperature is that of', () => {
  const two = ['4 chicken thighs', '4 pork chops'];

  it('the food that its own clause names', () => {
    expect(temperatures(two, 'Grill the chicken and the chops until the chops reach 145°F.')).toEqual([
      '145°F pork chop',
    ]);
  });

  it('the food behind it', () => {
    expect(temperatures(two, 'Grill both to an internal temperature of 165°F for the chicken.')).toEqual([
      '165°F chicken thigh',
    ]);
  });

  it('each food in turn', () => {
    const step = 'Roast until the chicken reaches 165°F and the chops reach 145°F.';
    expect(temperatures(two, step)).toEqual(['165°F chicken thigh', '145°F pork chop']);
  });

  it('the food that the method named last', () => {
    expect(
      temperatures(
        two,
        'Put the chicken in the oven.',
        'Lay the chops in a pan.',
        'Fry until a thermometer reads 145°F.',
      ),
    ).toEqual(['145°F pork chop']);
  });

  it('the bird, and not the egg that is brushed on', () => {
    expect(
      temperatures(
        ['1 chicken', '1 egg'],
        'Brush the chicken with the egg and roast to an internal temperature of 165°F.',
      ),
    ).toEqual(['165°F chicken']);
  });

  it('no food, where it is the oven, the oil or warm milk', () => {
    expect(
      temperatures(
        ['4 chicken thighs', '1 cup milk'],
        'Heat the oven to 200°F.',
        'Warm the milk until a thermometer reads 120°F.',
        'Keep the chicken warm in a 170°F oven.',
      ),
    ).toEqual([]);
  });
});

describe('nobody need ask about', () => {
  it.each<[string, string[], string[], string?]>([
    [
      'a bird that simmers for an hour',
      ['1 chicken', '8 cups water'],
      ['Simmer the chicken in the water for 1 hour.'],
    ],
    [
      'two simmers that make an hour',
      ['1 chicken'],
      ['Simmer the chicken for 40 minutes.', 'Add salt and simmer 20 minutes.'],
    ],
    [
      'meat that falls off the bone',
      ['2 pounds pork ribs'],
      ['Bake the ribs until the meat falls off the bone.'],
    ],
    [
      'what the slow cooker has all day',
      ['2 pounds beef'],
      ['Put the beef in the slow cooker and cook on low for 8 hours.'],
    ],
    [
      'a stock',
      ['1 chicken', '8 cups water'],
      ['Simmer the chicken in the water for 30 minutes and strain.'],
      'Chicken Stock',
    ],
    [
      'what cooks under pressure',
      ['4 chicken thighs'],
      ['Cook the chicken at high pressure for 12 minutes.'],
    ],
    [
      'crumbs of meat in a long sauce',
      ['1 pound ground beef'],
      ['Brown the beef, breaking it up.', 'Simmer for 25 minutes.'],
    ],
    [
      'what the package tells',
      ['1 pound chicken nuggets'],
      ['Bake the chicken nuggets according to the package directions.'],
    ],
  ])('%s', (_, listings, steps, title) => {
    expect(course(listings, steps, title).sure).toBe(true);
  });

  it.each<[string, string[], string[]]>([
    ['a bird that simmers for half an hour', ['1 chicken'], ['Simmer the chicken for 30 minutes.']],
    ['a bird that roasts for an hour', ['1 chicken'], ['Roast the chicken for 1 hour.']],
    [
      'a steak that was marinated for a day',
      ['2 rib-eye steaks'],
      ['Marinate the steaks for 1 day, then grill for 8 minutes.'],
    ],
    [
      'a fish beside potatoes that boil',
      ['1 pound cod', '2 potatoes'],
      ['Lay out the cod.', 'Boil the potatoes for 1 hour.', 'Fry the cod.'],
    ],
  ])('but about %s', (_, listings, steps) => {
    expect(course(listings, steps).sure).toBe(false);
  });
});

describe('ground meat is in crumbs', () => {
  it('unless it is shaped', () => {
    expect(course(['1 pound ground beef'], ['Fry the beef until brown.']).bits).toBe(true);
    expect(course(['1 pound ground beef'], ['Shape the beef into patties.', 'Fry them.']).bits).toBe(false);
    expect(course(['1 pound pork sausages'], ['Fry the sausages.']).bits).toBe(false);
    expect(course(['1 pound pork sausages'], ['Crumble the sausages into a pan and fry.']).bits).toBe(true);
  });
});

describe('the chart’s sign for fish', () => {
  it('is flesh that flakes, not pepper in flakes', () => {
    const list = ['1 pound cod', '1 teaspoon red pepper flakes'];
    expect(course(list, ['Fry the cod until it flakes easily.']).shown).toBe(true);
    expect(course(list, ['Fry the cod with the pepper flakes.']).shown).toBe(false);
  });
});

describe('meat rests', () => {
  it('when the method says so after the heat, with its time', () => {
    const { rest } = course(['2 pork chops'], ['Fry the chops.', 'Let rest for 5 minutes.']);
    expect(rest).toMatchObject({ unit: 'minute', step: 1 });
  });

  it('not when something else waits before it, or "the rest" is used', () => {
    expect(course(['2 pork chops'], ['Let the chops rest at room temperature.', 'Fry the chops.']).rest).toBe(
      false,
    );
    expect(
      course(['2 pork chops', '2 tablespoons oil'], ['Fry the chops.', 'Add the rest of the oil.']).rest,
    ).toBe(false);
  });
});
