/** Marks a temperature for the food itself that is below the safe minimum. */
import type { Dish, DoneTemperature, RawCourse, RawFood } from '../../src/kitchen/types.js';
import { safeTemperature } from '../../src/larder/safety.js';
import type { SafeTemperature } from '../../src/larder/types.js';
import type { Finding, RecipeRule, Weight } from '../rule.js';

export const safeTemperatureLow: RecipeRule = {
  scope: 'recipe',
  name: 'safe-temperature-low',
  topic: 'safety',
  weight: 'fault',
  summary: 'The temperature to which a food is cooked is below its safe minimum.',
  why: 'Below it the bacteria that make people ill survive. Local codes and licensed practice come first.',
  sources: ['USDA FSIS and foodsafety.gov, Safe Minimum Internal Temperature chart'],
  beyond:
    'Longer times at lower heat, as sous vide has them; temperatures that may be those of the oven, the oil or the dough; the rest after cooking.',
  examples: [
    {
      title: 'chicken at 150°F',
      text: '# Roast Chicken\n\nServes 4\n\n- 1 chicken (4 pounds)\n- 1 teaspoon salt\n\n1. Sprinkle the chicken with the salt, and roast at 400°F until a thermometer in the thigh reads 150°F, 1 hour.\n',
      marks: ['150°F'],
    },
    {
      title: 'a burger at 60 degrees Celsius',
      text: '# Burgers\n\nServes 4\n\n- 500 g ground beef\n- 1 teaspoon salt\n\n1. Salt the beef, press it into patties with a clean spoon, and grill until the internal temperature is 60°C, 8 minutes.\n',
      marks: ['60°C'],
    },
    {
      title: 'a steak at 130°F, which the author may let stand',
      text: '# Pan Steak\n\nServes 2\n\n- 2 rib-eye steaks\n- 1 tablespoon oil\n\n1. Fry the steaks in the oil until a thermometer reads 130°F, 4 minutes a side.\n2. Let rest for 5 minutes.\n',
      marks: ['130°F'],
    },
    {
      title: 'a steak by the word',
      text: '# Pan Steak\n\nServes 2\n\n- 2 rib-eye steaks\n- 1 tablespoon oil\n\n1. Fry the steaks in the oil until medium-rare, 4 minutes a side.\n',
      marks: ['medium-rare'],
    },
    {
      title: 'a bird that climbs to its temperature while it rests',
      text: '# Roast Turkey\n\nServes 8\n\n- 1 turkey (12 pounds)\n- 1 tablespoon salt\n\n1. Rub the turkey with the salt, and wash your hands.\n2. Roast at 325°F until a thermometer in the thigh reads 160°F, 3 hours. The temperature will climb to 165°F while it rests.\n',
      marks: [],
    },
    {
      title: 'chicken at the minimum, in a slow oven',
      text: '# Roast Chicken\n\nServes 4\n\n- 1 chicken (4 pounds)\n- 1 teaspoon salt\n\n1. Sprinkle the chicken with the salt, and roast at 275°F until a thermometer in the thigh reads 165°F (74°C), 2 hours.\n',
      marks: [],
    },
    {
      title: 'water for yeast, and a cake’s middle',
      text: '# Buns\n\nMakes 8\n\n- 1 packet (7 g) yeast\n- 1/2 cup water\n- 2 cups flour\n\n1. Heat the water to 110°F, and stir in the yeast and the flour.\n2. Bake at 375°F until a thermometer in the center reads 200°F, 20 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const seen = new Set<string>();
    for (const done of dish.doneTemperatures) {
      const raw = tooCold(dish, done);
      if (raw === null) continue;
      const key = `${done.step} ${raw.listing.index}`;
      if (seen.has(key)) continue;
      seen.add(key);
      yield lowTemperature(dish, done, raw);
    }
    for (const course of dish.courses) {
      const isStated = dish.doneTemperatures.some((done) => done.foods.includes(course.raw));
      if (course.degree !== null && !isStated) yield* lowDegree(dish, course);
    }
  },
};

/** The food whose minimum the temperature misses: of several that it may be about, the one with the lowest. */
function tooCold(dish: Dish, done: DoneTemperature): RawFood | null {
  const [least] = [...done.foods].sort((a, b) => minimum(a).fahrenheit - minimum(b).fahrenheit);
  return least !== undefined && isBelow(done, minimum(least)) && !isRaisedLater(dish, done, least)
    ? least
    : null;
}

function minimum(raw: RawFood): SafeTemperature {
  return safeTemperature(raw.safety);
}

/** 71°C is 159.8°F: a temperature stated in Celsius is compared with the chart's own Celsius. */
function isBelow({ temperature, fahrenheit }: DoneTemperature, chart: SafeTemperature): boolean {
  if (fahrenheit.gte(chart.fahrenheit)) return false;
  const { low, high } = temperature.amount;
  const isFahrenheit = fahrenheit.equals(low) || fahrenheit.equals(high);
  return isFahrenheit || low.lt(chart.celsius) || high.lt(chart.celsius);
}

/** "Take it out at 155°F; it will climb to 165°F", "roast to 115°F … sear until 145°F": what is said last is what the food comes to. */
function isRaisedLater(dish: Dish, done: DoneTemperature, raw: RawFood): boolean {
  return dish.doneTemperatures.some((other) => {
    if (!other.foods.includes(raw) || other.step === null || done.step === null) return false;
    const isBehind = other.step === done.step && other.temperature.start > done.temperature.start;
    return other.step > done.step || (isBehind && done.rising && !isBelow(other, minimum(raw)));
  });
}

function lowTemperature(dish: Dish, done: DoneTemperature, raw: RawFood): Finding {
  const text = done.passage.text.slice(done.temperature.start, done.temperature.end);
  const { text: name } = raw.listing.line.foods[0]!;
  return {
    ...aboutFood(dish, raw),
    span: done.passage.span(done.temperature.start, done.temperature.end),
    weight: done.rising ? 'query' : weigh(raw),
    message: `The method cooks ${name} to ${text}; ${minimumIs(minimum(raw))}.`,
    advice:
      weigh(raw) === 'fault'
        ? `Raise it to ${asked(minimum(raw))}.`
        : `Raise it to ${asked(minimum(raw))}, or let it stand with a reason (stet).`,
  };
}

/** A word such as "medium-rare", where no figure stands beside it. */
function* lowDegree(dish: Dish, { raw, degree }: RawCourse): Generator<Finding> {
  const chart = minimum(raw);
  if (
    degree === null ||
    degree.fahrenheit >= chart.fahrenheit ||
    raw.safety === 'fish' ||
    raw.safety === 'egg'
  )
    return;
  const { passage } = dish.recipe.steps[degree.step]!;
  const word = passage.text.slice(degree.start, degree.end);
  yield {
    ...aboutFood(dish, raw),
    span: passage.span(degree.start, degree.end),
    weight: weigh(raw),
    message: `"${word}" stands for about ${degree.fahrenheit}°F; ${minimumIs(chart)}.`,
    advice: `Give ${asked(chart)} on a food thermometer, or let it stand with a reason (stet).`,
  };
}

function aboutFood(dish: Dish, raw: RawFood): Pick<Finding, 'subject' | 'related'> {
  return {
    subject: raw.listing.line.foods[0]!.name,
    related: [{ file: dish.page.path, span: raw.listing.passage.span(), message: 'the listing' }],
  };
}

function minimumIs(chart: SafeTemperature): string {
  return `the safe minimum for ${chart.label} is ${chart.fahrenheit}°F (${chart.celsius}°C)`;
}

function asked(chart: SafeTemperature): string {
  const rest = chart.restMinutes > 0 ? ` with ${chart.restMinutes} minutes of rest` : '';
  return `${chart.fahrenheit}°F (${chart.celsius}°C)${rest}`;
}

/** Bacteria sit all through ground meat and birds; a whole cut or a fish below its minimum is the author's to answer for. */
function weigh(raw: RawFood): Weight {
  return raw.safety === 'poultry' || raw.safety === 'ground-meat' ? 'fault' : 'query';
}
