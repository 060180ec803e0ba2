/** What the grammar makes of temperatures, durations and lengths. */
import { describe, expect, test } from 'vitest';
import { readTime } from '../../src/grammar/stated-time.js';
import { readText } from '../../src/grammar/text.js';
import { shown } from './notation.js';

const reads = (table: Record<string, string>) => {
  test.each(Object.entries(table))('%s', (text, tree) => expect(shown(readText(text))).toBe(tree));
};

describe('a temperature is read on its scale, whatever the sign for degrees', () => {
  reads({
    '350°F': '[350 fahrenheit]',
    '350F': '[350 fahrenheit]',
    '180 °C': '[180 celsius]',
    '180C': '[180 celsius]',
    '180º C': '[180 celsius]',
    '350˚F': '[350 fahrenheit]',
    '230 ℃': '[230 celsius]',
    '450℉': '[450 fahrenheit]',
    '350 degrees F': '[350 fahrenheit]',
    '110 degrees Fahrenheit': '[110 fahrenheit]',
    '350 degrees': '[350 degrees]',
    'gas mark 4': '[4 gas]',
    'Gas 4': '[4 gas]',
    '200C fan': '[200 celsius fan]',
    'fan 160C': '[160 celsius fan]',
    '180-190°C': '[180..190 celsius]',
    '350°F to 375°F': '[350..375 fahrenheit]',
    'bake at 350.': 'bake at [350 degrees] .',
    'a 350 oven': 'a [350 degrees] oven',
  });
});

describe('a plain number that a thermometer shows or an oven is set to is a temperature', () => {
  reads({
    'until it reads 165.': 'until it reads [165 degrees] .',
    'it registers 63 in the middle': 'it registers [63 degrees] in the middle',
    'once it reaches 145, rest': 'once it reaches [145 degrees] , rest',
    'a temperature of 203.': 'a temperature of [203 degrees] .',
    'Heat the oven to 300 and line a tray': 'Heat the oven to [300 degrees] and line a tray',
    'Reduce oven to 120.': 'Reduce oven to [120 degrees] .',
    'the pile reaches 200 hands': 'the pile reaches [200] hands',
    'until it reaches 6.': 'until it reaches [6] .',
  });
});

describe('a temperature said on two scales is one', () => {
  reads({
    '350°F/175°C': '[350 fahrenheit = [175 celsius]]',
    '180°C (350°F)': '[180 celsius = [350 fahrenheit]]',
    '425 degrees F (218 C)': '[425 fahrenheit = [218 celsius]]',
    '180C/160C fan/gas 4': '[180 celsius = [160 celsius fan] = [4 gas]]',
    '60-70°F / 15-20°C': '[60..70 fahrenheit = [15..20 celsius]]',
    '350/180C': '[350 fahrenheit = [180 celsius]]',
    '350°F (or 175°C)': '[350 fahrenheit = [175 celsius]]',
    'a hot oven (425°F; 220°C)': 'a hot oven ( [425 fahrenheit = [220 celsius]] )',
    'gas 4/160°C fan': '[4 gas = [160 celsius fan]]',
    '375 degrees (190 C)': '[375 degrees = [190 celsius]]',
  });
});

describe('the kind of oven is said behind a temperature', () => {
  reads({
    '220°C (fan), or gas mark 7': '[220 celsius fan = [7 gas]]',
    '180°C conventional/160°C fan': '[180 celsius = [160 celsius fan]]',
    '160°C fan (180°C conventional)': '[160 celsius fan = [180 celsius]]',
    '180°C, 160°C with fan': '[180 celsius = [160 celsius fan]]',
    '180°C / 350°F (fan 160°C / 325°F)':
      '[180 celsius = [350 fahrenheit] = [160 celsius fan] = [325 fahrenheit fan]]',
  });
});

describe('a minus with a space before it and none behind is a sign', () => {
  reads({
    '0°F (-18°C)': '[0 fahrenheit = [-18 celsius]]',
    'at −18 °C': 'at [-18 celsius]',
    '60-70°F': '[60..70 fahrenheit]',
    '60 - 70°F': '[60..70 fahrenheit]',
  });
});

describe('the degrees of a turn are no heat', () => {
  reads({
    'Rotate the tray 180 degrees': 'Rotate the tray [180]',
    'a 90 degree turn': 'a [90] turn',
    'turn the oven to 180 degrees': 'turn the oven to [180 degrees]',
  });
});

test('two temperatures of one scale are two', () => {
  expect(shown(readText('350°F, then 325°F'))).toBe('[350 fahrenheit] , then [325 fahrenheit]');
});

describe('a stated time is read with its codes, its minutes and what is left open', () => {
  const minutes = (text: string): string | null => {
    const time = readTime(text);
    if (time === null) return null;
    const { low, high, open } = time;
    return [low, high].map((seconds) => seconds.div(60).toString()).join('-') + (open ? '+' : '');
  };
  test.each([
    ['45 min', '45-45'],
    ['PT1H30M', '90-90'],
    ['1 hr 20', '80-80'],
    ['1-2 hours', '60-120'],
    ['about 40 minutes', '40-40'],
    ['20 minutes plus chilling', '20-20+'],
    ['at least 4 hours', '240-240+'],
    ['1 hour+', '60-60+'],
    ['5 min/day', null],
    ['45', null],
    ['overnight', null],
  ])('%s', (text, expected) => expect(minutes(text)).toBe(expected));
});

test('a C after a small number is a cup, after a large one Celsius', () => {
  expect(shown(readText('1 C flour at 180 C'))).toBe('[1 cup] flour at [180 celsius]');
});

describe('a duration is in seconds, and keeps the unit of its first part', () => {
  reads({
    '5 minutes': '[300 s in minutes]',
    '5-10 min': '[300..600 s in minutes]',
    '5~10 min': '[300..600 s in minutes]',
    '5 mins. or so': '[300 s in minutes] or so',
    '1 hr 20 min': '[4800 s in hours]',
    '1 hour and 20 minutes': '[4800 s in hours]',
    '1h30min': '[5400 s in hours]',
    '1h30': '[5400 s in hours]',
    'an hour and a half': '[5400 s in hours]',
    'an hour to an hour and a half': '[3600..5400 s in hours]',
    '1 1/2 hours': '[5400 s in hours]',
    'one or two minutes': '[60..120 s in minutes]',
    'half an hour': '[1800 s in hours]',
    '30 minutes to 1 hour': '[1800..3600 s in minutes]',
    '2 days': '[172800 s in days]',
    'another 10-15 minutes': 'another [600..900 s in minutes]',
    '3 more minutes': '[180 s in minutes]',
    'a 30-minute rest': 'a [1800 s in minutes] rest',
    'at least 4 hours': '[at-least 14400 s in hours]',
  });
});

describe('a time whose length is not told has no seconds', () => {
  reads({
    overnight: '[some in nights]',
    'a few minutes': '[some in minutes]',
    'several hours': '[some in hours]',
  });
});

describe('lengths stand side by side', () => {
  reads({
    'a 1-inch piece': 'a [1 inch] piece',
    '1 in piece': '[1 inch] piece',
    '9-in. pan': '[9 inch] pan',
    '23cm': '[23 centimeter]',
    'cut into 2 cm cubes': 'cut into [2 centimeter] cubes',
    '9 x 13-inch pan': '[9 inch x 13 inch] pan',
    '9 by 13 inch': '[9 inch x 13 inch]',
    '9-by-13-inch': '[9 inch x 13 inch]',
    '9" x 13" pan': '[9 inch x 13 inch] pan',
    '9×13': '[9 inch x 13 inch]',
    '20×30': '[20 centimeter x 30 centimeter]',
    '1- to 2-inch pieces': '[1..2 inch] pieces',
    '8-inch (20 cm)': '[8 inch] ( [20 centimeter] )',
    '"Step 2"': '" Step [2] "',
  });
});
