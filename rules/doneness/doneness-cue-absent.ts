/** Marks an order to cook that does not say how the food is when it is done. */
import Fraction from 'fraction.js';
import { isStock } from '../../src/kitchen/raw-course.js';
import { isToldElsewhere } from '../../src/kitchen/told-elsewhere.js';
import type { Dish, Heating, RawCourse } from '../../src/kitchen/types.js';
import { does } from '../../src/larder/techniques.js';
import type { RecipeRule, Weight } from '../rule.js';

/** Up to a minute is a gesture ("stir for 30 seconds"), whose end needs no cue (common practice). */
const BRIEF_SECONDS = new Fraction(60);
/** Onions that fry, or a sauce that simmers, for so few minutes hang on no sign; raw meat and fish do (common practice). */
const SHORT_SECONDS = { pan: new Fraction(180), pot: new Fraction(300) };

/** What boils for hours is not missed by minutes (common practice). */
const LONG_POT_SECONDS = new Fraction(2 * 3600);

export const donenessCueAbsent: RecipeRule = {
  scope: 'recipe',
  name: 'doneness-cue-absent',
  topic: 'doneness',
  weight: 'query',
  summary: 'A heating step gives only a time, or nothing, and no cue for doneness.',
  why: 'Stoves and pans differ; what the cook can see, smell or measure does not.',
  sources: [
    'Whitman and Simon, Recipes into Type, 1993 (from memory)',
    'House styles of cookbook publishers',
    'Practice of food magazines',
  ],
  examples: [
    {
      title: 'a bake with only a time',
      text: '# Plum Cake\n\nMakes 1 cake\n\n- 1 cup flour\n- 4 plums\n\n1. Press the plums into the flour, and bake at 350°F for 40 minutes.\n',
      marks: ['40 minutes'],
    },
    {
      title: 'an order to fry with neither time nor cue',
      text: '# Onions\n\nServes 2\n\n- 2 onions\n- 1 tablespoon oil\n\n1. Fry the onions in the oil.\n',
      marks: ['Fry'],
    },
    {
      title: 'a time with a cue',
      text: '# Onions\n\nServes 2\n\n- 2 onions\n- 1 tablespoon oil\n\n1. Fry the onions in the oil until golden brown, 8 to 10 minutes.\n',
      marks: [],
    },
    {
      title: 'a cue alone, and a rest without heat',
      text: '# Onions\n\nServes 2\n\n- 2 onions\n- 1 tablespoon oil\n\n1. Fry the onions in the oil until golden brown.\n2. Let stand for 10 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const seen = new Set<number>();
    for (const order of dish.heatings) {
      if (order.cued || order.technique.ends || seen.has(order.step)) continue;
      const heating = timed(dish.heatings, order);
      if (heating.cued || isToldElsewhere(dish, heating)) continue;
      const duration = heating.durations[0];
      if (isSoonDone(dish, heating) || isMeasured(dish, heating) || needsNoSign(dish, heating)) continue;
      seen.add(heating.step);
      const passage = dish.recipe.steps[heating.step]!.passage;
      const extent = duration ?? heating;
      yield {
        span: passage.span(extent.start, extent.end),
        subject: heating.technique.name,
        weight: weigh(heating),
        message:
          duration === undefined
            ? `The step says to ${heating.technique.name}, and neither how long nor until when.`
            : `The step gives ${passage.text.slice(duration.start, duration.end)} and no sign of doneness.`,
        advice: 'Add what to see, feel, smell or measure: "until golden brown", "until tender".',
      };
    }
  },
};

/** "Fry the perch. Fry it no longer than 7 minutes": the order of the step that tells the time. */
function timed(heatings: readonly Heating[], order: Heating): Heating {
  if (order.durations.length > 0) return order;
  const again = heatings.find(
    ({ step, technique, durations }) =>
      step === order.step && technique === order.technique && durations.length > 0,
  );
  return again ?? order;
}

/** In dry heat minutes too long show; in a pot they matter less, and are advice. */
function weigh({ technique, durations }: Heating): Weight {
  return does(technique, 'dry-heat') || durations.length === 0 ? 'query' : 'note';
}

function isSoonDone(dish: Dish, { technique, durations, ...heating }: Heating): boolean {
  const seconds = durations[0]?.seconds?.high;
  if (seconds === undefined) return false;
  const cooksRaw = coursesOf(dish, heating).some(({ cookings }) => cookings.length === 1);
  const short = does(technique, 'dry-heat') ? SHORT_SECONDS.pan : SHORT_SECONDS.pot;
  return seconds.lte(cooksRaw ? BRIEF_SECONDS : short);
}

/** A stock, and a pudding or a soup that boils for hours; not where raw meat is cooked so, whose tenderness is the sign. */
function needsNoSign(dish: Dish, heating: Heating): boolean {
  const seconds = heating.durations[0]?.seconds;
  if (seconds == null || does(heating.technique, 'dry-heat')) return false;
  return isStock(dish.recipe) || (seconds.low.gte(LONG_POT_SECONDS) && coursesOf(dish, heating).length === 0);
}

/** The raw foods that an order cooks. */
function coursesOf(dish: Dish, { step, start }: Pick<Heating, 'step' | 'start'>): RawCourse[] {
  return dish.courses.filter(
    ({ raw, cookings }) =>
      raw.safety !== 'egg' && cookings.some((cooking) => cooking.step === step && cooking.start === start),
  );
}

/** "Smoke for 3 hours. … Take it off at 165°F": the temperature that a later step gives is the sign. */
function isMeasured(dish: Dish, heating: Heating): boolean {
  return coursesOf(dish, heating).some(({ raw }) =>
    dish.doneTemperatures.some(
      ({ step, foods }) => foods.includes(raw) && (step === null || step >= heating.step),
    ),
  );
}
