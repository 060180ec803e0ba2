/** Reads the method from first step to last, and gives every mention of a food with the listings that it means. */
import { distance } from 'fastest-levenshtein';
import type { Listing, Recipe } from '../anatomy/types.js';
import { foodAt, foodNamed, isKindOf } from '../larder/foods.js';
import { isWord, wordsOfClass } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import { does, techniqueOf } from '../larder/techniques.js';
import type { Food, Technique } from '../larder/types.js';
import { vesselAt } from '../larder/vessels.js';
import { clauseOf, determinerOf, isBoughtToo, isCookingWater, isGivenUp, isLikeness, isMadeWord, isNegated, isPurposeOnly, isSuggestion, isToolName, namesMade, says, tellsWhen } from './context.js';
import { componentNamed, componentOfGroup, componentOfHeading, listingsOf } from './groups.js';
import { type Entry, listedAt, type Vocabulary, vocabularyOf } from './listed.js';
import { resolveFood } from './resolve.js';
import { type Named, namedIn } from './scan.js';
import type { Mention, MentionRole, ReadStep } from './types.js';
import { governingVerb, measureOf, unknownOrder, verbAt, type Words } from './words.js';

const SALT = foodNamed('salt');
const PEPPER = foodNamed('pepper');
const SEASONING = foodNamed('seasoning');
/** What "season" means when nothing else is named. */
const SEASONED_WITH = ['salt', 'black pepper', 'white pepper'].map(foodNamed).filter((food): food is Food => food !== null);
const SPICE = foodNamed('spice');
const WATER = foodNamed('water');
const PRODUCTS = foodsOf('product');
const GROWN = foodsOf('grown');
const BAKED = foodsOf('baked');

function foodsOf(is: 'product' | 'grown' | 'baked'): Food[] {
  return wordsOfClass(is)
    .map(foodNamed)
    .filter((food): food is Food => food !== null);
}

/** What has been read of the method so far. */
interface Progress {
  readonly recipe: Recipe;
  readonly vocabulary: Vocabulary;
  readonly used: Set<Listing>;
  readonly titleWords: ReadonlySet<string>;
}

/** Every mention in the method, in order. `words` are those of each step. */
export function mentionsOf(recipe: Recipe, steps: readonly ReadStep[], words: readonly Words[]): Mention[] {
  const progress: Progress = {
    recipe,
    vocabulary: vocabularyOf(recipe.listings),
    used: new Set(),
    titleWords: new Set((recipe.title?.text ?? '').split(/[^\p{L}\p{N}]+/u).map((word) => singular(fold(word)))),
  };
  const mentions: Mention[] = [];
  steps.forEach((step, index) => {
    const found = mentionsInStep(progress, step, words[index]!);
    for (const mention of found) {
      mentions.push(mention);
      if (mention.role === 'use') for (const listing of mention.listings) progress.used.add(listing);
    }
  });
  const made = steps.flatMap((step, index) => componentsMade(progress, step, words[index]!));
  return [...mentions, ...made].sort((a, b) => a.step - b.step || a.start - b.start);
}

function mentionsInStep(progress: Progress, step: ReadStep, words: Words): Mention[] {
  const named = namedIn(words, progress.vocabulary);
  const heading = step.step.heading === null ? null : componentOfHeading(progress.recipe, step.step.heading.text);
  const preferred: readonly Listing[] = heading?.listings ?? [];
  const mentions: Mention[] = [];
  for (const each of named) {
    const mention = each.group === null ? mentionOf(progress, step, words, each, preferred) : groupMention(progress, step, words, each, preferred, mentions);
    if (mention !== null) mentions.push(isSecondChoice(words, each, named, mentions) ? { ...mention, role: 'aside' } : mention);
  }
  mentions.push(...seasonings(progress, step, words));
  if (mentions.every((mention) => mention.role !== 'use')) mentions.push(...wholeList(progress, step, words));
  return leaveOutExcepted(words, mentions).sort((a, b) => a.start - b.start);
}

function mentionOf(progress: Progress, step: ReadStep, words: Words, named: Named, preferred: readonly Listing[]): Mention | null {
  const { start, end } = named;
  const vocabulary = progress.vocabulary;
  const verb = governingVerb(words, start);
  const determiner = determinerOf(words, start);
  const entries = named.entries.length > 0 ? named.entries : entriesOf(named, words, vocabulary);
  let listings = narrowed(entries.map((entry) => entry.listing), preferred);
  let role: MentionRole = 'use';
  if (isToolName(words, end) && !named.implied) return null;
  // "Grease the pan with butter" is a use of the butter.
  if (named.implied && listings.length === 0 && words.keys.slice(end, clauseOf(words, start)[1]).includes('with')) return null;
  if (isLikeness(words, start, end) || (isNegated(words, start) && listings.length === 0)) role = 'aside';
  else if (named.made && isMade(progress, named, words, listings, determiner)) {
    role = 'made';
    listings = [];
  } else if (namesMade(words, end)) {
    // "The spice paste" need not hold every spice of the list.
    if (named.food?.generic === true && named.entries.length === 0) listings = [];
    role = listings.length > 0 ? 'use' : 'made';
  }
  else if (listings.length === 0 && (madeOf(progress, named, words, determiner) || isTurnedInto(words, start) || (named.food?.dish === true && verb?.name !== 'serve'))) role = 'made';
  else if (listings.length === 0 && (isSuggestion(words, start) || (words.depth[start]! > 0 && measureOf(words, start, end) === null) || isGivenUp(words, start) || tellsWhen(words, start) || isPurposeOnly(words, start))) role = 'aside';
  else if (listings.length === 0 && isAlternative(progress, words, named)) role = 'aside';
  else if (listings.length === 0 && isWaterOnly(named.food) && isCookingWater(words, start, verb, measureOf(words, start, end))) role = 'aside';
  else if (listings.length === 0 && (words.keys[end] === 'from' || saidInList(progress, named))) role = 'aside';
  else if (listings.length > 0 && named.food?.generic === true && named.entries.length === 0 && tellsWhen(words, start)) role = 'aside';
  if (named.food === null && listings.length === 0 && role === 'use') return null;
  return {
    text: words.text.slice(words.words[start]!.start, words.words[end - 1]!.end),
    start: words.words[start]!.start,
    end: words.words[end - 1]!.end,
    step: step.step.index,
    role,
    food: named.food,
    listings,
    group: false,
    measure: role === 'use' && !named.implied ? measureOf(words, start, end) : null,
    determiner,
    verb: verb?.name ?? unknownOrder(words, start),
    telling: tellsWhen(words, start),
    toTaste: named.implied || (verb !== null && does(verb, 'season')) || saysToTaste(words, end),
    surface: isForSurface(words, start, verb),
    optional: isSuggestion(words, start),
  };
}

/** Whether the food goes on a pan, a board or a dish and not into the food: "dust the board with flour". */
function isForSurface(words: Words, start: number, verb: Technique | null): boolean {
  if (verb === null || !does(verb, 'coat', 'garnish')) return false;
  if (verb.implies !== undefined) return true;
  const [from, to] = clauseOf(words, start);
  for (let at = from; at < to; at++) if (vesselAt(words.keys, at) !== null) return true;
  return false;
}

/** The listed foods that a larder food means; a pepper beside salt is the spice. A misspelled word may still be the list's. */
function entriesOf(named: Named, words: Words, vocabulary: Vocabulary): readonly Entry[] {
  if (named.food === null) return [];
  const resolution = resolveFood(named.food, vocabulary);
  if (resolution !== null) {
    if (named.food !== PEPPER) return resolution.entries;
    const last = words.keys[named.end - 1]!;
    const spices = resolution.entries.filter((entry) => entry.food.row !== null && SPICE !== null && isKindOf(entry.food.row, SPICE));
    const others = resolution.entries.filter((entry) => !spices.includes(entry));
    if (singular(last) !== last) return others.length > 0 ? others : resolution.entries;
    return spices.length > 0 ? spices : besideSalt(words, named) ? [] : resolution.entries;
  }
  return withoutState(named, words, vocabulary) ?? misspelled(words.keys.slice(named.start, named.end).join(''), vocabulary);
}

/** "Pureed tomatoes" of listed tomatoes, "broccoli stems" of Chinese broccoli: the name without its state, or without the part. */
function withoutState(named: Named, words: Words, vocabulary: Vocabulary): readonly Entry[] | null {
  const { start, end } = named;
  if (end - start < 2) return null;
  if (techniqueOf(words.keys[start]!)?.form === 'past') {
    const rest = foodAt(words.keys, start + 1, end);
    const resolution = rest === null || rest.length !== end - start - 1 ? null : resolveFood(rest.food, vocabulary);
    if (resolution !== null) return resolution.entries;
  }
  const last = singular(words.keys[end - 1]!);
  const whole = isWord(last, 'vague') ? listedAt(vocabulary, words.keys, start, end - 1) : null;
  return whole !== null && whole.length === end - start - 1 ? whole.entries : null;
}

/** Whether the list speaks of the food in a preparation or an aside: "1 cup milk, warmed with a cinnamon stick". */
function saidInList(progress: Progress, named: Named): boolean {
  if (named.food === null) return false;
  return progress.recipe.listings.some((listing) => {
    const { line } = listing;
    return [...line.preparation, ...line.asides, ...line.states].some((phrase) => {
      const keys = phrase.text.split(/[^\p{L}\p{N}]+/u).map(fold);
      return keys.some((_, at) => {
        const said = foodAt(keys, at);
        return said !== null && isKindOf(said.food, named.food!);
      });
    });
  });
}

function besideSalt(words: Words, named: Named): boolean {
  return words.keys[named.start - 1] === 'and' && words.keys[named.start - 2] === 'salt';
}

/** From how many letters on one wrong letter is forgiven. */
const LONG_WORD = 6;

function misspelled(key: string, vocabulary: Vocabulary): readonly Entry[] {
  if (key.length < LONG_WORD) return [];
  return vocabulary.entries.filter((entry) => {
    const name = entry.words.join('');
    const slips = distance(name, singular(key));
    return entry.food.row === null && (slips <= 1 || (slips === 2 && key.length > LONG_WORD));
  });
}

/** Of several listings of one food, those of the component that the step belongs to, where there are some. */
function narrowed(listings: readonly Listing[], preferred: readonly Listing[]): Listing[] {
  const unique = [...new Set(listings)];
  if (unique.length < 2 || preferred.length === 0) return unique;
  const own = unique.filter((listing) => preferred.includes(listing));
  return own.length > 0 ? own : unique;
}

/** Whether a word such as "sauce" or "filling" means what the recipe makes, and not a thing on the list. */
function isMade(progress: Progress, named: Named, words: Words, listings: readonly Listing[], determiner: string | null): boolean {
  if (listings.length === 0) {
    if (!isBoughtToo(words.keys, named.end - 1)) return measureOf(words, named.start, named.end) === null;
    return says(determiner, 'referring') || hasArticle(words, named.start) || madeOf(progress, named, words, determiner);
  }
  if (named.entries.some((entry) => entry.words.length === named.end - named.start)) return false;
  if (!says(determiner, 'referring')) return false;
  // What is listed and has not gone in yet comes first: "boil the noodles" in a recipe for noodles.
  if (isBoughtToo(words.keys, named.end - 1) && !goesIn(words, named.start)) return true;
  if (listings.some((listing) => !progress.used.has(listing))) return false;
  const word = singular(words.keys[named.end - 1]!);
  return progress.titleWords.has(word) || progress.recipe.components.some((component) => component.name?.split(' ').includes(word)) || listings.length > 1;
}

/** Whether the verb before puts the food in among others: what is added so has not been made by this recipe. */
function isMixedIn(words: Words, start: number): boolean {
  const verb = governingVerb(words, start);
  return verb !== null && (verb.name === 'add' || does(verb, 'combine', 'season')) && !tellsWhen(words, start);
}

/** Whether the verb before adds the food, and the food stands in no clause that says when to stop. */
function goesIn(words: Words, start: number): boolean {
  const verb = governingVerb(words, start);
  return verb !== null && does(verb, 'add', 'combine', 'season', 'coat') && !tellsWhen(words, start);
}

/**
 * Whether an unlisted food is what the recipe itself makes: a component's name, a product that the title names ("the bread"
 * of "Coconut Bread"), or a mixture of what is listed ("tomato sauce" from tomatoes).
 */
function madeOf(progress: Progress, named: Named, words: Words, determiner: string | null): boolean {
  const keys = words.keys.slice(named.start, named.end).map(singular);
  const isNamed = (name: string): boolean => keys.every((key) => name.split(/[\s-]+/).some((word) => singular(fold(word)) === key));
  if (progress.recipe.components.some((component) => component.name !== null && isNamed(component.name))) return true;
  const isProduct = named.food !== null && (named.food.dish || PRODUCTS.some((kind) => isKindOf(named.food!, kind)));
  const isGrown = named.food !== null && GROWN.some((kind) => isKindOf(named.food!, kind));
  const mixedIn = isMixedIn(words, named.start);
  const titled = !mixedIn && keys.every((key) => progress.titleWords.has(key));
  // "Ricotta" is a recipe for ricotta; "Spaghetti with Clams" is none for spaghetti.
  if (titled && !isGrown && (isProduct || progress.titleWords.size <= keys.length + 1)) return true;
  const isBaked = named.food !== null && BAKED.some((kind) => isKindOf(named.food!, kind));
  if (isBaked && says(determiner, 'referring') && !goesIn(words, named.start)) return true;
  const isSauce = keys.length > 1 && isMadeWord(keys, keys.length - 1) > 0;
  if (isSauce && says(determiner, 'referring') && keys.slice(0, -1).every((key) => isWord(key, 'adjective'))) return true;
  return isSauce && !mixedIn && measureOf(words, named.start, named.end) === null && keys.slice(0, -1).some((key) => progress.vocabulary.byWord.has(key));
}

/** "stir to a cream", "reduce to a syrup": what the food becomes. */
function isTurnedInto(words: Words, start: number): boolean {
  return hasArticle(words, start) && words.keys.slice(Math.max(0, start - 4), start).some((key) => key === 'to' || key === 'into' || key === 'form');
}

/** "a soft dough", "to a cream": the article within two adjectives before the word. */
function hasArticle(words: Words, start: number): boolean {
  for (let index = start - 1; index >= 0 && index >= start - 3; index--) {
    if (words.sentence[index] !== words.sentence[start] || words.before[index + 1] !== '') return false;
    if (words.keys[index] === 'a' || words.keys[index] === 'an') return true;
  }
  return false;
}

/** The second of two unlisted foods between which the cook may choose: one of them is asked about. */
function isSecondChoice(words: Words, named: Named, all: readonly Named[], before: readonly Mention[]): boolean {
  const previous = all[all.indexOf(named) - 1];
  const mention = before.at(-1);
  if (previous === undefined || mention === undefined || mention.listings.length > 0 || named.entries.length > 0) return false;
  return named.start - previous.end === 1 && words.keys[previous.end] === 'or' && mention.start === words.words[previous.start]!.start;
}

/** "vegetable or canola oil", "lard or dripping": one of the two is on the list. */
function isAlternative(progress: Progress, words: Words, named: Named): boolean {
  const sentence = words.sentence[named.start];
  for (const [from, step] of [[named.start - 1, -1], [named.end, 1]] as const) {
    const at = from;
    if (words.sentence[at] !== sentence || words.keys[at] !== 'or') continue;
    for (let index = at + step; index >= 0 && index < words.keys.length && Math.abs(index - at) <= 3; index += step) {
      if (words.sentence[index] !== sentence) break;
      if (progress.vocabulary.byWord.has(singular(words.keys[index]!))) return true;
    }
  }
  return false;
}

function isWaterOnly(food: Food | null): boolean {
  return food !== null && WATER !== null && isKindOf(food, WATER);
}

function saysToTaste(words: Words, end: number): boolean {
  for (let index = end; index < words.keys.length && index < end + 6 && words.sentence[index] === words.sentence[end - 1]; index++) {
    if (words.keys[index] === 'taste' || words.keys[index] === 'needed' || words.keys[index] === 'liking') return true;
  }
  return false;
}

function groupMention(progress: Progress, step: ReadStep, words: Words, named: Named, preferred: readonly Listing[], before: readonly Mention[]): Mention | null {
  const { start, end } = named;
  if (governingVerb(words, start) === null || tellsWhen(words, start) || isNegated(words, start) || words.keys[start - 1] === 'most') return null;
  const own = componentNamed(progress.recipe, words, start, end);
  if (own !== null) return isMostlyUsed(progress, own.listings) ? null : bare(step, words, start, end, own.listings, true);
  const component = componentNamed(progress.recipe, words, ...clauseOf(words, start)) ?? componentOfGroup(progress.recipe, words.keys[end - 1]!);
  const candidates = component?.listings ?? (preferred.length > 0 ? preferred : progress.recipe.listings);
  const means = named.group!;
  const used = new Set([...progress.used, ...before.flatMap((mention) => mention.listings)]);
  const taken = candidates.filter((listing) => used.has(listing));
  // "Mix everything" late in a method is what is in the bowl by then, unless hardly anything has been named before.
  const said = words.keys.slice(Math.max(0, start - 1), end);
  const loose = means === 'all' && !(said.some((key) => key === 'all' || key === 'each') && said.some((key) => key.startsWith('ingredient')));
  if (loose && taken.length * 2 > candidates.length) return null;
  const classed = listingsOf(means, candidates, used);
  // "Mix the seasonings" of a seasoning is the whole list, also what goes by another class.
  const members = foodNamed(means) !== null && taken.length === 0 && classed.length * 2 > candidates.length ? [...candidates] : classed;
  // "The dry ingredients", once some of them have been named, are those.
  const known = means === 'dry' || means === 'wet' ? members.filter((listing) => used.has(listing)) : [];
  return bare(step, words, start, end, known.length > 1 ? known : members, true);
}

/** "Season well", "season to taste": the salt, pepper and seasonings of the list. */
function seasonings(progress: Progress, step: ReadStep, words: Words): Mention[] {
  const found: Mention[] = [];
  words.keys.forEach((key, at) => {
    if (!key.startsWith('season') || key === 'seasoning' || key === 'seasonings') return;
    const listings = progress.recipe.listings.filter((listing) =>
      listing.line.toTaste || listing.line.foods.some((food) => food.row !== null && (food.row === SEASONING || food.row === PEPPER || SEASONED_WITH.some((kind) => isKindOf(food.row!, kind)))),
    );
    if (listings.length > 0) found.push({ ...bare(step, words, at, at + 1, listings, true), toTaste: true });
  });
  return found;
}

/**
 * "Make the dressing", "whisk the sauce together": all that its component lists goes into it, where the method does not
 * name most of it one by one.
 */
function componentsMade(progress: Progress, step: ReadStep, words: Words): Mention[] {
  const found: Mention[] = [];
  for (let at = 0; at < words.keys.length; at++) {
    if (words.keys[at] !== 'make' && words.keys[at] !== 'making') {
      const verb = verbAt(words, at);
      if (verb === null || !does(verb, 'combine', 'prepare')) continue;
    }
    const next = isWord(words.keys[at + 1], 'referring') ? at + 2 : at + 1;
    const component = componentNamed(progress.recipe, words, next, Math.min(words.keys.length, next + 6));
    if (component === null || isMostlyUsed(progress, component.listings)) continue;
    found.push(bare(step, words, at, at + 1, component.listings, true));
  }
  return found;
}

/** "Whisk together until smooth", as the first that is done with anything: all of the list. */
function wholeList(progress: Progress, step: ReadStep, words: Words): Mention[] {
  if (progress.used.size > 0) return [];
  const at = words.keys.findIndex((_, index) => {
    const verb = words.opening[index] === index ? verbAt(words, index) : null;
    return verb !== null && does(verb, 'combine');
  });
  return at < 0 ? [] : [bare(step, words, at, at + 1, progress.recipe.listings, true)];
}

function isMostlyUsed(progress: Progress, listings: readonly Listing[]): boolean {
  return listings.filter((listing) => progress.used.has(listing)).length * 2 > listings.length;
}

/** "Everything except the parsley": what is named after it is not part of the group. */
function leaveOutExcepted(words: Words, mentions: readonly Mention[]): Mention[] {
  return mentions.map((mention) => {
    if (!mention.group) return mention;
    const at = words.words.findIndex((word) => word.start >= mention.end);
    const key = words.keys[at];
    if (at < 0 || (key !== 'but' && key !== 'except')) return mention;
    const excepted = mentions.filter((other) => !other.group && other.start >= mention.end && words.text.slice(mention.end, other.start).length < 30);
    return { ...mention, listings: mention.listings.filter((listing) => !excepted.some((other) => other.listings.includes(listing))) };
  });
}

function bare(step: ReadStep, words: Words, start: number, end: number, listings: readonly Listing[], group: boolean): Mention {
  return {
    text: words.text.slice(words.words[start]!.start, words.words[end - 1]!.end),
    start: words.words[start]!.start,
    end: words.words[end - 1]!.end,
    step: step.step.index,
    role: 'use',
    food: null,
    listings: [...listings],
    group,
    measure: null,
    determiner: determinerOf(words, start),
    verb: governingVerb(words, start)?.name ?? null,
    telling: false,
    toTaste: false,
    surface: false,
    optional: false,
  };
}
