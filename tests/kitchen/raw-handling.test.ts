/** What hands, water, boards and marinades do with raw food, by the words of the method. */
import { describe, expect, it } from 'vitest';
import { dish } from './dishes.js';

const list = ['4 chicken thighs', '1 head lettuce', '1 tablespoon oil'];
const handling = (...steps: string[]) => dish(list, steps).handling;

describe('raw poultry is rinsed', () => {
  it.each([
    'Rinse the chicken and pat it dry.',
    'Wash and dry the chicken.',
    'Place the chicken in a colander and rinse under cold water.',
    'Hold the chicken under cold running water.',
    'Start by washing the chicken.',
  ])('in "%s"', (step) => {
    expect(handling(step, 'Fry the chicken in the oil.').rinsings).toHaveLength(1);
  });

  it.each([
    'Do not rinse the chicken.',
    'There is no need to wash the chicken.',
    'Rinse the lettuce. Pat the chicken dry.',
    'Wash the cutting board that held the chicken.',
    'Wash your hands after touching the chicken.',
    'Take the chicken out of the brine, rinse and pat dry.',
    'Thaw the chicken under cold running water.',
  ])('but not in "%s"', (step) => {
    expect(handling(step, 'Fry the chicken in the oil.').rinsings).toEqual([]);
  });

  it('but not once it is cooked', () => {
    expect(handling('Boil the chicken.', 'Rinse the chicken and chill.').rinsings).toEqual([]);
  });
});

describe('a surface is used again', () => {
  it.each([
    ['Lay the chicken on a plate.', 'Grill the chicken.', 'Return the chicken to the plate.'],
    ['Cut the chicken on a board.', 'On the same board, shred the lettuce.', 'Grill the chicken.'],
    ['Grill the chicken.', 'Put the chicken back on the same plate.'],
  ])('when the method says "%s" … "%s"', (...steps) => {
    expect(handling(...steps).surfaces).toHaveLength(1);
  });

  it.each([
    ['Lay the chicken on a plate.', 'Grill the chicken.', 'Move the chicken to a clean plate.'],
    [
      'Lay the chicken on a plate.',
      'Wash the plate.',
      'Grill the chicken.',
      'Return the chicken to the plate.',
    ],
    ['Brown the chicken, and move it to a plate.', 'Return the chicken from the plate to the pan.'],
    ['Grill the chicken.', 'Transfer the chicken to the platter.'],
  ])('but not in "%s" … "%s"', (...steps) => {
    expect(handling(...steps).surfaces).toEqual([]);
  });
});

describe('a used marinade', () => {
  const soak = 'Lay the chicken in the marinade, and refrigerate for 2 hours.';

  it.each([
    ['Grill the chicken, basting with the marinade.', false],
    ['Grill the chicken. Brush with the remaining marinade.', false],
    ['Grill the chicken. Spoon the marinade over it, and serve.', true],
    ['Grill the chicken, and serve it with the marinade.', true],
  ])('goes on food in "%s"', (step, served) => {
    expect(handling(soak, step).marinades.map((each) => each.served)).toEqual([served]);
  });

  it.each([
    'Drain off the marinade, and grill the chicken.',
    'Discard the marinade. Grill the chicken.',
    'Boil the marinade for 5 minutes. Grill the chicken, basting with the marinade.',
    'Pour the chicken and the marinade into a pan, and simmer for 1 hour.',
    'Brush the chicken with the marinade once more, and grill.',
  ])('does no harm in "%s"', (step) => {
    expect(handling(soak, step).marinades).toEqual([]);
  });

  it('does no harm where some was kept apart before', () => {
    const first = 'Set half of the marinade aside. Lay the chicken in the rest of the marinade.';
    expect(handling(first, 'Grill the chicken, and serve it with the marinade.').marinades).toEqual([]);
  });
});

describe('hands', () => {
  it('touch raw food where they are named, and where the work is theirs', () => {
    expect(handling('Mix the chicken and the oil with your hands.').touches.map(({ bare }) => bare)).toEqual([
      true,
    ]);
    expect(handling('Rub the chicken with the oil.').touches.map(({ bare }) => bare)).toEqual([true]);
    expect(handling('Cut the chicken into strips.').touches.map(({ bare }) => bare)).toEqual([false]);
    expect(handling('Tear the lettuce with your hands.').touches).toEqual([]);
  });

  it('are washed where a step, a note or the headnote says so', () => {
    expect(handling('Rub the chicken with the oil.', 'Wash your hands.').handsWashed).toEqual([1]);
  });
});
