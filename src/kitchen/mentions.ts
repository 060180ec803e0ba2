/** Reads the method from first step to last, and gives every mention of a food with the listings that it means. */
import { distance } from 'fastest-levenshtein';
import type { Listing, Recipe } from '../anatomy/types.js';
import { foodNamed, isKindOf } from '../larder/foods.js';
import { isWord } from '../larder/kitchen-words.js';
import { fold, singular } from '../larder/names.js';
import { does } from '../larder/techniques.js';
import type { Food } from '../larder/types.js';
import { determinerOf, firstOf, isCookingWater, isLikeness, isNegated, isSuggestion, isToolName, namesMade, says } from './context.js';
import { componentNamed, componentOfHeading, listingsOf } from './groups.js';
import { type Entry, type Vocabulary, vocabularyOf } from './listed.js';
import { resolveFood } from './resolve.js';
import { type Named, namedIn } from './scan.js';
import type { Mention, MentionRole, ReadStep } from './types.js';
import { governingVerb, measureOf, verbAt, type Words } from './words.js';

const SALT = foodNamed('salt');
const PEPPER = foodNamed('pepper');
const SEASONING = foodNamed('seasoning');
const SPICE = foodNamed('spice');
const WATER = foodNamed('water');

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
  return mentions;
}

function mentionsInStep(progress: Progress, step: ReadStep, words: Words): Mention[] {
  const named = namedIn(words, progress.vocabulary);
  const heading = step.step.heading === null ? null : componentOfHeading(progress.recipe, step.step.heading.text);
  const preferred: readonly Listing[] = heading?.listings ?? [];
  const mentions: Mention[] = [];
  for (const each of named) {
    const mention = each.group === null ? mentionOf(progress, step, words, each, preferred) : groupMention(progress, step, words, each, preferred);
    if (mention !== null) mentions.push(mention);
  }
  mentions.push(...seasonings(progress, step, words), ...componentsMade(progress, step, words));
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
  if (isLikeness(words, start, end) || (isNegated(words, start) && listings.length === 0)) role = 'aside';
  else if (named.made && isMade(progress, named, words, listings, determiner)) {
    role = 'made';
    listings = [];
  } else if (namesMade(words, end)) role = listings.length > 0 ? 'use' : 'made';
  else if (listings.length === 0 && (madeOf(progress, named, words, determiner) || named.food?.dish === true)) role = 'made';
  else if (listings.length === 0 && (isSuggestion(words, start) || words.depth[start]! > 0)) role = 'aside';
  else if (listings.length === 0 && isAlternative(progress, words, named)) role = 'aside';
  else if (listings.length === 0 && isWaterOnly(named.food) && isCookingWater(words, start, verb)) role = 'aside';
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
    verb: verb?.name ?? null,
    toTaste: named.implied || (verb !== null && does(verb, 'season')) || saysToTaste(words, end),
    optional: isSuggestion(words, start),
  };
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
  return misspelled(words.keys.slice(named.start, named.end).join(''), vocabulary);
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
    return entry.food.row === null && Math.abs(name.length - key.length) <= 1 && distance(name, singular(key)) <= 1;
  });
}

/** Of several listings of one food, those of the component that the step belongs to, where there are some. */
function narrowed(listings: readonly Listing[], preferred: readonly Listing[]): Listing[] {
  const unique = [...new Set(listings)];
  if (unique.length < 2 || preferred.length === 0) return unique;
  const own = unique.filter((listing) => preferred.includes(listing));
  return own.length > 0 ? own : unique;
}

/** Whether a word such as "sauce" or "cream" means what the recipe makes, and not a thing on the list. */
function isMade(progress: Progress, named: Named, words: Words, listings: readonly Listing[], determiner: string | null): boolean {
  if (listings.length === 0) return true;
  if (named.entries.some((entry) => entry.words.length === named.end - named.start)) return false;
  if (!says(determiner, 'referring')) return false;
  const word = singular(words.keys[named.end - 1]!);
  return progress.titleWords.has(word) || progress.recipe.components.some((component) => component.name?.split(' ').includes(word)) || listings.length > 1;
}

/** Whether an unlisted food is what the recipe itself makes: its title or a component says so. */
function madeOf(progress: Progress, named: Named, words: Words, determiner: string | null): boolean {
  const keys = words.keys.slice(named.start, named.end).map(singular);
  const inComponent = progress.recipe.components.some((component) => component.name !== null && keys.every((key) => component.name!.split(/[\s-]+/).some((word) => singular(fold(word)) === key)));
  return inComponent || (determiner !== null && keys.every((key) => progress.titleWords.has(key)) && !isBought(named.food));
}

/** A food that no recipe makes: an animal's or a plant's, as it comes. */
function isBought(food: Food | null): boolean {
  return food?.safety !== undefined || food?.source.startsWith('SR28 11') === true;
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

function groupMention(progress: Progress, step: ReadStep, words: Words, named: Named, preferred: readonly Listing[]): Mention | null {
  const { start, end } = named;
  const component = componentNamed(progress.recipe, words, firstOf(words, start), words.keys.length);
  const candidates = component?.listings ?? (preferred.length > 0 ? preferred : progress.recipe.listings);
  const means = named.group!;
  // "Mix everything" late in a method is what is in the bowl by then, unless hardly anything has been named before.
  const loose = means === 'all' && !words.keys.slice(Math.max(0, start - 1), end).some((key) => key === 'all' || key === 'each');
  if (loose && candidates.filter((listing) => progress.used.has(listing)).length * 2 > candidates.length) return null;
  return bare(step, words, start, end, listingsOf(means, candidates, progress.used), true);
}

/** "Season well", "season to taste": the salt, pepper and seasonings of the list. */
function seasonings(progress: Progress, step: ReadStep, words: Words): Mention[] {
  const found: Mention[] = [];
  words.keys.forEach((key, at) => {
    if (!key.startsWith('season') || key === 'seasoning' || key === 'seasonings') return;
    const listings = progress.recipe.listings.filter((listing) =>
      listing.line.foods.some((food) => food.row !== null && [SALT, PEPPER, SEASONING].some((kind) => kind !== null && isKindOf(food.row!, kind) && (kind !== PEPPER || SPICE === null || isKindOf(food.row!, SPICE)))),
    );
    if (listings.length > 0) found.push({ ...bare(step, words, at, at + 1, listings, true), toTaste: true });
  });
  return found;
}

/** "Make the dressing", "whisk the sauce together": all that its component lists goes into it. */
function componentsMade(progress: Progress, step: ReadStep, words: Words): Mention[] {
  const found: Mention[] = [];
  for (let at = 0; at < words.keys.length; at++) {
    if (words.keys[at] !== 'make' && words.keys[at] !== 'making') {
      const verb = verbAt(words, at);
      if (verb === null || !does(verb, 'combine', 'prepare')) continue;
    }
    const next = isWord(words.keys[at + 1], 'referring') ? at + 2 : at + 1;
    const component = componentNamed(progress.recipe, words, next, Math.min(words.keys.length, next + 4));
    if (component !== null) found.push(bare(step, words, at, at + 1, component.listings, true));
  }
  return found;
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
    toTaste: false,
    optional: false,
  };
}
