/** Knows the components that the method forgets: listed and never made, or made and never used. */
import type { Component, Listing } from '../anatomy/types.js';
import { foodAt } from '../larder/foods.js';
import { fold, singular } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import { isMadeWord } from './context.js';
import { componentOfHeading, listingsOf } from './groups.js';
import { wordsIn } from './progress.js';
import { isServedAside } from './purposes.js';
import { isAfter, isTakenUp, type StepExtent } from './taken-up.js';
import type { Dish, Mention } from './types.js';

/** Fewer listings need no making. */
const FEWEST_LISTINGS = 2;

/**
 * The place that first uses a component which no step makes: the method names it, and takes up its listings neither one by one nor
 * together. Null for one that is made, that is never named, or that is only stirred together: a blend of dry things.
 */
export function unmadePlace(dish: Dish, component: Component): StepExtent | null {
  if (!isThing(component) || isHeaded(dish, component) || isBlend(component)) return null;
  const name = wordsIn(component.name!);
  // "The vinegar" may be another component's.
  const own = usesOf(dish, component).filter((use) => isOwn(component, use));
  const onlyNamed = own.every((use) => use.group && isNamedIn(use.text, name) && !makes(use));
  const place = onlyNamed ? placesOf(dish, name)[0] : undefined;
  return place === undefined || (!hasNameOfItsOwn(component) && isMadeThere(dish, component, place))
    ? null
    : place;
}

/** Whether the step has put other listings together in a sentence before the place: "the sauce" is then what came of them. */
function isMadeThere(dish: Dish, component: Component, { step, start }: StepExtent): boolean {
  const { words } = dish.steps[step]!;
  const sentenceAt = (offset: number): number | undefined =>
    words.sentence[words.words.findIndex((word) => word.start >= offset)];
  const put = dish.mentions.filter(
    (mention) =>
      mention.step === step &&
      mention.start < start &&
      mention.listings.length > 0 &&
      !isOwn(component, mention) &&
      sentenceAt(mention.start) !== sentenceAt(start),
  );
  return put.length >= FEWEST_LISTINGS;
}

/** "Walnut dressing" can be no other; "the sauce" may be one that the method makes without a list. */
export function hasNameOfItsOwn({ name }: Component): boolean {
  return name !== null && wordsIn(name).length > 1;
}

/** Whether the method neither names a component nor uses anything of its list. */
export function isForgotten(dish: Dish, component: Component): boolean {
  return (
    isThing(component) &&
    !isHeaded(dish, component) &&
    component.listings.every((listing) => !isServedAside(dish, listing)) &&
    usesOf(dish, component).length === 0 &&
    placesOf(dish, wordsIn(component.name!)).length === 0
  );
}

/** The step that makes a component apart, where nothing after it takes the component up; null where something does, or may. */
export function madeInVain(dish: Dish, component: Component): number | null {
  if (!isThing(component) || !isFoodName(component.name!)) return null;
  const uses = usesOf(dish, component).filter((use) => !use.group && isOwn(component, use));
  const last = uses.at(-1);
  if (last === undefined || last.step === dish.steps.length - 1) return null;
  const steps = new Set(uses.map(({ step }) => step));
  const isApart = dish.mentions.every(
    (mention) =>
      !steps.has(mention.step) || mention.listings.every((listing) => component.listings.includes(listing)),
  );
  const isTaken = isTakenUp(dish, uses[0]!, last, wordsIn(component.name!), otherNames(dish, component));
  return isApart &&
    !isTaken &&
    !dish.mentions.some((mention) => isAfter(mention, last) && isOwn(component, mention))
    ? last.step
    : null;
}

/** The component of a listing that is marked as a whole, so that its lines need no marks of their own; null where it is not. */
export function forgottenComponent(dish: Dish, listing: Listing): Component | null {
  const component = dish.recipe.components[listing.component]!;
  return isForgotten(dish, component) || unmadePlace(dish, component) !== null ? component : null;
}

/** "Prepare the sauce", "whisk the dressing". */
function makes({ verb }: Mention): boolean {
  const technique = verb === null ? null : techniqueOf(fold(verb))?.technique;
  return technique != null && does(technique, 'combine', 'prepare');
}

/** Whether a mention means this component's listings and no others. */
function isOwn(component: Component, { listings }: Mention): boolean {
  return listings.length > 0 && listings.every((listing) => component.listings.includes(listing));
}

function otherNames({ recipe }: Dish, component: Component): string[] {
  return recipe.components.flatMap((each) =>
    each === component || each.name === null ? [] : wordsIn(each.name),
  );
}

function isThing(component: Component): boolean {
  return component.name !== null && component.listings.length >= FEWEST_LISTINGS;
}

/** Whether a component's name is that of a food or of a thing that is made: "pickled radishes", "dressing"; not "the base". */
function isFoodName(name: string): boolean {
  const last = wordsIn(name).slice(-1);
  return foodAt(last, 0) !== null || isMadeWord(last, 0) > 0;
}

/** Whether a heading over some steps says that they make it. */
function isHeaded({ recipe }: Dish, component: Component): boolean {
  return recipe.steps.some(
    ({ heading }) => heading !== null && componentOfHeading(recipe, heading.text) === component,
  );
}

function isBlend({ listings }: Component): boolean {
  return listingsOf('dry', listings, new Set()).length === listings.length;
}

function usesOf(dish: Dish, component: Component): Mention[] {
  return component.listings
    .flatMap((listing) => dish.uses[listing.index]!)
    .sort((a, b) => a.step - b.step || a.start - b.start);
}

function isNamedIn(text: string, name: readonly string[]): boolean {
  const words = wordsIn(text);
  return name.some((word) => words.includes(word));
}

/** Where the steps say all the words of a name, side by side. */
function placesOf(dish: Dish, name: readonly string[]): StepExtent[] {
  return dish.steps.flatMap(({ step, items }) => {
    const words = items.filter((item) => item.kind === 'word');
    return words.flatMap((word, at) => {
      const isHere = name.every((part, index) => singular(words[at + index]?.key ?? '') === part);
      return isHere ? [{ step: step.index, start: word.start, end: words[at + name.length - 1]!.end }] : [];
    });
  });
}
