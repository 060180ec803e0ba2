/** Marks a steak, chop or roast that is cooked to its minimum and not left to rest. */
import type { Dish, DoneTemperature, RawCourse } from '../../src/kitchen/types.js';
import { safeTemperature } from '../../src/larder/safety.js';
import type { RecipeRule } from '../rule.js';

const SECONDS_PER_MINUTE = 60;

export const restAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'rest-absent',
  topic: 'safety',
  weight: 'query',
  summary:
    'A steak, chop, roast or raw ham is cooked to its minimum, and its rest of 3 minutes is missing or shorter.',
  why: 'At 145°F (63°C) the minutes of rest finish what the heat began. Local codes and licensed practice come first.',
  sources: [
    'USDA FSIS and foodsafety.gov, Safe Minimum Internal Temperature chart',
    'USDA FSIS, Compliance Guidelines, Appendix A (from memory): from 158°F on no rest is needed',
  ],
  beyond:
    'A rest whose time is not said; meat whose temperature is not said, about which safe-temperature-absent asks; cuts cooked to 158°F and beyond.',
  examples: [
    {
      title: 'chops that are served at once',
      text: '# Pork Chops\n\nServes 2\n\n- 2 pork chops\n- 1 tablespoon oil\n\n1. Fry the chops in the oil until a thermometer reads 145°F, 10 minutes. Serve at once.\n',
      marks: ['145°F'],
    },
    {
      title: 'a rest that is too short',
      text: '# Pork Chops\n\nServes 2\n\n- 2 pork chops\n- 1 tablespoon oil\n\n1. Fry the chops in the oil until a thermometer reads 145°F, 10 minutes.\n2. Let rest for 1 minute.\n',
      marks: ['1 minute'],
    },
    {
      title: 'a rest of five minutes',
      text: '# Pork Chops\n\nServes 2\n\n- 2 pork chops\n- 1 tablespoon oil\n\n1. Fry the chops in the oil until a thermometer reads 145°F, 10 minutes.\n2. Let rest for 5 minutes.\n',
      marks: [],
    },
    {
      title: 'a roast that is cooked well past the minimum, and fish',
      text: '# Two Roasts\n\nServes 4\n\n- 1 pork loin (2 pounds)\n- 1 pound cod fillets\n\n1. Roast the pork at 350°F until a thermometer reads 165°F, 1 hour.\n2. Bake the cod beside it until a thermometer reads 145°F, 15 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    for (const course of dish.courses) {
      const chart = safeTemperature(course.raw.safety);
      const done = lastTemperature(dish, course);
      if (chart.restMinutes === 0 || done?.step == null) continue;
      const isAtMinimum =
        done.fahrenheit.gte(chart.fahrenheit) && done.fahrenheit.lt(chart.restless ?? chart.fahrenheit);
      if (!isAtMinimum || isCookedOn(course, done)) continue;
      const rest = restOf(course, chart.restMinutes);
      if (rest === 'enough') continue;
      const short = rest === 'none' ? null : rest;
      const passage = short === null ? done.passage : dish.recipe.steps[short.step]!.passage;
      const place = short ?? done.temperature;
      const food = course.raw.listing.line.foods[0]!;
      const stated = passage.text.slice(place.start, place.end);
      yield {
        span: passage.span(place.start, place.end),
        subject: food.name,
        message:
          short === null
            ? `The method cooks ${food.text} to ${stated} and does not let it rest; the minimum for ${chart.label} comes with ${chart.restMinutes} minutes of rest.`
            : `The rest for ${food.text} is ${stated}; the minimum for ${chart.label} comes with ${chart.restMinutes} minutes of rest.`,
        advice: `Add that it rests at least ${chart.restMinutes} minutes before it is cut or served.`,
        related: [{ file: dish.page.path, span: course.raw.listing.passage.span(), message: 'the listing' }],
      };
    }
  },
};

function lastTemperature(dish: Dish, { raw }: RawCourse): DoneTemperature | undefined {
  return dish.doneTemperatures.findLast((done) => done.foods.includes(raw));
}

/** Whether a later order cooks the food further. */
function isCookedOn({ cookings }: RawCourse, done: DoneTemperature): boolean {
  return cookings.some(
    (cooking) =>
      done.step !== null &&
      (cooking.step > done.step || (cooking.step === done.step && cooking.start > done.temperature.end)),
  );
}

/** The stated rest where it is too short; else whether there is one. */
function restOf(
  { rest }: RawCourse,
  minutes: number,
): 'none' | 'enough' | Exclude<RawCourse['rest'], boolean> {
  if (typeof rest === 'boolean') return rest ? 'enough' : 'none';
  return rest.seconds === null || rest.seconds.high.gte(minutes * SECONDS_PER_MINUTE) ? 'enough' : rest;
}
