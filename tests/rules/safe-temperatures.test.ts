/** Every row of the chart of safe minimum temperatures, in both scales: at the minimum, one degree under it, and without any. */
import { describe, expect, it } from 'vitest';
import { larder } from '../../src/larder/load.js';
import { readManuscript } from '../../src/reading/read.js';

/** What the chart prints, written down here a second time, so that a slip in the table is seen. */
interface Row {
  readonly safety: string;
  /** Forms in which the chart's food is bought, with the words that the method has for it. */
  readonly foods: readonly (readonly [listing: string, name: string])[];
  readonly fahrenheit: number;
  readonly celsius: number;
  readonly restMinutes: number;
  readonly low: 'fault' | 'query';
  /** The weight of the mark where no temperature is given; null where none is asked for. */
  readonly absent: 'query' | 'note' | null;
}

const chart: readonly Row[] = [
  {
    safety: 'poultry',
    foods: [
      ['1 whole chicken (4 pounds)', 'chicken'],
      ['8 chicken thighs', 'thighs'],
      ['1 turkey breast (5 pounds)', 'turkey breast'],
      ['4 duck legs', 'duck legs'],
      ['2 pounds chicken wings', 'wings'],
      ['1 goose (10 pounds)', 'goose'],
      ['1 pound ground turkey, shaped into 4 patties', 'turkey'],
      ['2 pounds chicken giblets', 'giblets'],
    ],
    fahrenheit: 165,
    celsius: 74,
    restMinutes: 0,
    low: 'fault',
    absent: 'query',
  },
  {
    safety: 'ground-meat',
    foods: [
      ['1 pound ground beef, shaped into 4 patties', 'beef'],
      ['1 pound ground pork, shaped into 4 patties', 'pork'],
      ['1 pound ground lamb, shaped into 4 patties', 'lamb'],
      ['6 fresh pork sausages', 'sausages'],
      ['1 saddle of rabbit', 'rabbit'],
      ['2 venison steaks', 'venison'],
      ['1 pound ground veal, shaped into 4 patties', 'veal'],
    ],
    fahrenheit: 160,
    celsius: 71,
    restMinutes: 0,
    low: 'fault',
    absent: 'query',
  },
  {
    safety: 'whole-cut',
    foods: [
      ['2 rib-eye steaks', 'steaks'],
      ['4 pork chops', 'chops'],
      ['1 pork loin roast (3 pounds)', 'pork'],
      ['1 leg of lamb (6 pounds)', 'lamb'],
      ['1 veal roast (3 pounds)', 'veal'],
      ['2 bison steaks', 'bison'],
      ['1 leg of goat (5 pounds)', 'goat'],
    ],
    fahrenheit: 145,
    celsius: 63,
    restMinutes: 3,
    low: 'query',
    absent: 'query',
  },
  {
    safety: 'fish',
    foods: [
      ['4 salmon fillets', 'salmon'],
      ['1 whole trout', 'trout'],
      ['1 pound cod', 'cod'],
    ],
    fahrenheit: 145,
    celsius: 63,
    restMinutes: 0,
    low: 'query',
    absent: 'query',
  },
  {
    safety: 'shellfish',
    foods: [
      ['1 pound shrimp', 'shrimp'],
      ['12 sea scallops', 'scallops'],
      ['2 lobster tails', 'lobster'],
    ],
    fahrenheit: 145,
    celsius: 63,
    restMinutes: 0,
    low: 'query',
    // The chart's own sign is the look of the flesh, about which doneness-cue-absent asks.
    absent: null,
  },
  {
    safety: 'egg',
    foods: [
      ['8 eggs', 'eggs'],
      ['12 egg whites', 'egg whites'],
    ],
    fahrenheit: 160,
    celsius: 71,
    restMinutes: 0,
    low: 'query',
    absent: null,
  },
  {
    safety: 'ham',
    foods: [['1 fresh ham (8 pounds)', 'ham']],
    fahrenheit: 145,
    celsius: 63,
    restMinutes: 3,
    low: 'query',
    absent: 'query',
  },
  {
    safety: 'cooked-ham',
    foods: [['1 bone-in ham (8 pounds)', 'ham']],
    fahrenheit: 140,
    celsius: 60,
    restMinutes: 0,
    low: 'query',
    absent: null,
  },
  {
    safety: 'offal',
    foods: [['1 pound beef liver', 'liver']],
    fahrenheit: 160,
    celsius: 71,
    restMinutes: 0,
    low: 'query',
    absent: 'query',
  },
  {
    safety: 'leftover',
    foods: [['1 pound leftover turkey', 'turkey']],
    fahrenheit: 165,
    celsius: 74,
    restMinutes: 0,
    low: 'query',
    absent: null,
  },
];

/** The marks on one food that is baked to a temperature, or to none, and then left to rest, or not. */
function marks(
  listing: string,
  name: string,
  temperature: string | null,
  rest: string | null = null,
): string[] {
  const until = temperature === null ? '' : ` until a thermometer in the ${name} reads ${temperature}`;
  const steps = [
    `1. Bake the ${name} at 350°F${until}, about 40 minutes.`,
    ...(rest === null ? [] : [`2. Let rest for ${rest}.`]),
  ];
  const text = `# Plain Supper\n\nServes 4\n\n- ${listing}\n\n${steps.join('\n')}\n`;
  const only = ['safe-temperature-low', 'safe-temperature-absent', 'rest-absent'];
  return readManuscript([{ path: 'supper.md', text }], { only }).marks.map(
    (mark) => `${mark.rule} ${mark.weight} ${text.slice(mark.span.start, mark.span.end)}`,
  );
}

it('the table has these rows and no others, with these figures', () => {
  expect(
    larder.safeTemperatures.map(({ safety, fahrenheit, celsius, restMinutes }) => [
      safety,
      fahrenheit,
      celsius,
      restMinutes,
    ]),
  ).toEqual(
    chart.map(({ safety, fahrenheit, celsius, restMinutes }) => [safety, fahrenheit, celsius, restMinutes]),
  );
});

for (const { safety, foods, fahrenheit, celsius, restMinutes, low, absent } of chart) {
  describe.each(foods)(`${safety}: %s`, (listing, name) => {
    const rested = restMinutes === 0 ? null : `${restMinutes} minutes`;

    it.each([
      `${fahrenheit}°F`,
      `${celsius}°C`,
      `${fahrenheit}°F (${celsius}°C)`,
      `${fahrenheit} degrees`,
      `${fahrenheit + 40}°F`,
    ])('may be cooked to %s', (temperature) => {
      expect(marks(listing, name, temperature, rested)).toEqual([]);
    });

    it.each([
      `${fahrenheit - 1}°F`,
      `${celsius - 1}°C`,
      `${fahrenheit - 1} degrees`,
      `${fahrenheit - 5} to ${fahrenheit}°F`,
    ])('may not be cooked to %s', (temperature) => {
      expect(marks(listing, name, temperature, rested)).toEqual([
        `safe-temperature-low ${low} ${temperature}`,
      ]);
    });

    it(absent === null ? 'needs no temperature' : 'is asked for its temperature', () => {
      const expected = absent === null ? [] : [`safe-temperature-absent ${absent} ${name}`];
      expect(marks(listing, name, null)).toEqual(expected);
    });

    if (restMinutes > 0) {
      it('rests at its minimum, and long enough', () => {
        const at = `${fahrenheit}°F`;
        expect(marks(listing, name, at)).toEqual([`rest-absent query ${at}`]);
        expect(marks(listing, name, at, `${restMinutes - 1} minutes`)).toEqual([
          `rest-absent query ${restMinutes - 1} minutes`,
        ]);
        expect(marks(listing, name, '170°F')).toEqual([]);
      });
    }
  });
}
