/** Faults of a single place to plant in a recipe: a range, a scale, a yield, a placeholder, a temperature. */
import { cut, lineOf, type Planters } from './plants.js';

export const pagePlanters: Planters = {
  'range reversed': (dish, file) => {
    for (const { step, items } of dish.steps) {
      const item = items.find((each) => each.kind === 'duration' && each.seconds !== null);
      if (item === undefined) continue;
      const span = step.passage.span(item.start, item.end);
      const text = cut(file.text, span.start, span.end, '40 to 30 minutes');
      return [{ text, rule: 'range-reversed', isIt: (mark) => mark.subject.includes('40 to 30') }];
    }
    return [];
  },
  'scale dropped': (dish, file) => {
    for (const { step, items } of dish.steps) {
      const item = items.find(
        (each) => each.kind === 'temperature' && each.scale !== null && each.scale !== 'gas',
      );
      if (item?.kind !== 'temperature') continue;
      const span = step.passage.span(item.start, item.end);
      const text = cut(file.text, span.start, span.end, `${item.amount.low.toFraction()} degrees`);
      return [{ text, rule: 'scale-absent', isIt: (mark) => mark.span.start === span.start }];
    }
    return [];
  },
  'yield taken out': (dish, file) => {
    const stated = dish.recipe.yield;
    if (stated?.parsed == null) return [];
    const span = stated.passage.span();
    const [start, end] = lineOf(file.text, span.start);
    if (span.end > end) return [];
    return [{ text: cut(file.text, start, end), rule: 'yield-absent', isIt: () => true }];
  },
  'placeholder left': (dish, file) => {
    const [step] = dish.recipe.steps;
    if (step === undefined) return [];
    const { end } = step.passage.span();
    const text = cut(file.text, end, end, ' (see page 000)');
    return [{ text, rule: 'placeholder-left', isIt: (mark) => mark.subject === 'page 000' }];
  },
};
