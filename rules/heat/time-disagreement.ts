/** Marks a length of time that the recipe tells twice, differently. */
import { timeText } from '../../src/arithmetic/times.js';
import type { TimePair, TimesTold } from '../../src/kitchen/time-pair.js';
import { timePairsOf } from '../../src/kitchen/time-pairs.js';
import type { Finding, RecipeRule } from '../rule.js';

export const timeDisagreement: RecipeRule = {
  scope: 'recipe',
  name: 'time-disagreement',
  topic: 'heat',
  weight: 'fault',
  summary: 'Two times of a recipe do not agree: parts and total, total and steps, title and method.',
  why: 'Someone who has half an hour starts a dish that takes two.',
  sources: ['common practice', 'The table of tolerances in time-tolerances.yaml (common practice)'],
  examples: [
    {
      title: 'parts that are longer than their total',
      text: '# Rusks\n\nMakes 8\n\nPrep time: 15 minutes\n\nCook time: 45 minutes\n\nTotal time: 30 minutes\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 250°F until crisp, 45 minutes.\n',
      marks: ['30 minutes'],
    },
    {
      title: 'a step that takes longer than the whole',
      text: '# Bean Pot\n\nServes 4\n\nTotal time: 40 minutes\n\n- 2 cups soaked white beans\n- 4 cups vegetable stock\n\n1. Simmer the beans in the stock until tender, 1½ to 2 hours.\n',
      marks: ['40 minutes'],
    },
    {
      title: 'a title that promises half an hour for two',
      text: '# Thirty-Minute Bean Pot\n\nServes 4\n\n- 2 cups soaked white beans\n- 4 cups vegetable stock\n\n1. Simmer the beans in the stock until tender, 1½ to 2 hours.\n',
      marks: ['Thirty-Minute'],
    },
    {
      title: 'a headnote that bakes longer than the method',
      text: '# Rusks\n\nThe oven does the work: they bake for 2 hours while you read.\n\nMakes 8\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 250°F until crisp, 45 minutes.\n',
      marks: ['2 hours'],
    },
    {
      title: 'a total that holds the waiting as well',
      text: '# Cold Rusks\n\nMakes 8\n\nPrep time: 15 minutes\n\nCook time: 45 minutes\n\nTotal time: 3 hours\n\n- 8 slices bread\n- 1 tablespoon butter\n\n1. Butter the bread, and bake it at 250°F until crisp, 45 minutes.\n2. Chill the rusks for 2 hours.\n',
      marks: [],
    },
    {
      title: 'two pots at once, and times that are parts of others',
      text: '# Beans and Rice\n\nServes 4\n\nPrep time: 5 minutes\n\nCook time: 30 minutes\n\nTotal time: 35 minutes\n\n- 2 cups cooked white beans\n- 1 cup rice\n- 4 cups vegetable stock, divided\n\n1. Simmer the rice in half of the stock until tender, 25 to 30 minutes, stirring every 5 minutes.\n2. Meanwhile, simmer the beans in the remaining stock until hot, 20 minutes.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const marked = new Set<number>();
    for (const pair of timePairsOf(dish)) {
      if (pair.agree || marked.has(pair.marked.span.start)) continue;
      marked.add(pair.marked.span.start);
      yield findingOf(dish.page.path, pair);
    }
  },
};

function findingOf(file: string, pair: TimePair): Finding {
  return {
    span: pair.marked.span,
    subject: pair.marked.words,
    weight: pair.certain ? 'fault' : 'query',
    message: messageOf(pair),
    advice: ADVICE[pair.compares],
    related: pair.parts
      .slice(0, MOST_RELATED)
      .map(({ span, low, high }) => ({ file, span, message: timeText(low, high) })),
  };
}

/** More places than these are no help on the page. */
const MOST_RELATED = 4;

function messageOf({ compares, stated, parts, reckoned, marked }: TimePair): string {
  const sum = sumText(parts, reckoned);
  const said = timeText(stated.low, stated.high);
  switch (compares) {
    case 'sum':
      return parts.length > 1
        ? `${sum}; the total says ${said}.`
        : `One part alone takes ${sum}; the total says ${said}.`;
    case 'unexplained':
      return `${sum}; the total says ${said}, and the method has no wait as long as the rest.`;
    case 'step':
      return `One step takes ${sum}; the time stated before the recipe comes to ${said}.`;
    case 'steps':
      return `On the stove and in the oven ${sum}; the time stated before the recipe comes to ${said}.`;
    case 'sole-step':
      return `The only step with heat takes ${sum}; the cooking time says ${said}.`;
    case 'waiting':
      return `With the waiting ${sum}; the total says ${said}.`;
    case 'promise':
      return `"${marked.words}" promises ${said}; ${parts.length > 1 ? sum : `the recipe takes ${sum}`}.`;
    case 'same-step':
      return `Here it takes ${said}, in the method ${sum}.`;
  }
}

/** "15 minutes and 45 minutes make 1 hour". */
function sumText(parts: TimePair['parts'], { low, high }: TimePair['reckoned']): string {
  const whole = timeText(low, high);
  if (parts.length === 1) return whole;
  const texts = parts.map((part) => timeText(part.low, part.high));
  return `${texts.slice(0, -1).join(', ')} and ${texts.at(-1)} make ${whole}`;
}

const ADVICE: Readonly<Record<TimesTold, string>> = {
  sum: 'Mend the total or its parts.',
  unexplained: 'Say where the rest of the time goes, or mend the total.',
  step: 'Mend the time or the step.',
  steps: 'Say which of the steps go on side by side, or mend the time.',
  'sole-step': 'Make the two agree.',
  waiting: 'Count the waiting into the total, or name it beside it.',
  promise: 'Mend the promise or the times.',
  'same-step': 'Make the two agree.',
};
