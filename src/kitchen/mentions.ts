/** Reads the method from first step to last, and gives every mention of a food with the listings that it means. */
import type { Listing, Recipe } from '../anatomy/types.js';
import { foodsNamed, isAnyOf } from '../larder/food-classes.js';
import { foodAt } from '../larder/foods.js';
import { phraseAt } from '../larder/kitchen-words.js';
import { singular } from '../larder/names.js';
import { does } from '../larder/techniques.js';
import type { Technique } from '../larder/types.js';
import { vesselAt } from '../larder/vessels.js';
import {
  collective,
  componentsMade,
  groupMention,
  leaveOutExcepted,
  seasonings,
  sweetenings,
  wholeList,
} from './collectives.js';
import {
  clauseOf,
  determinerOf,
  hasArticle,
  isChoice,
  isCookingWater,
  isDestination,
  isGivenUp,
  isLikeness,
  isNegated,
  isPouredOff,
  isPurposeOnly,
  isSuggestion,
  isToolName,
  namesMade,
  says,
  tellsWhen,
} from './context.js';
import { entriesOf, narrowed, saidInList } from './entries.js';
import { componentNamed, componentOfGroup, componentOfHeading } from './groups.js';
import { isGivenName, isMade, isProduct, isTurnedInto, madeOf } from './made.js';
import { isMostlyUsed, type Progress, progressOf } from './progress.js';
import { type Named, namedIn } from './scan.js';
import type { Mention, MentionRole, ReadStep } from './types.js';
import {
  governingVerb,
  isAllBut,
  LONGEST_CLAUSE,
  measureOf,
  unknownOrder,
  verbAt,
  type Words,
} from './words.js';

const WATER = foodsNamed('water');

/** Every mention in the method, in order. `words` are those of each step. */
export function mentionsOf(recipe: Recipe, steps: readonly ReadStep[], words: readonly Words[]): Mention[] {
  const progress = progressOf(recipe);
  const mentions: Mention[] = [];
  steps.forEach((step, index) => {
    for (const mention of mentionsInStep(progress, step, words[index]!)) {
      mentions.push(mention);
      if (mention.role === 'use') for (const listing of mention.listings) progress.used.add(listing);
      // "The onion mixture" makes no onion.
    }
  });
  const made = steps.flatMap((step, index) => componentsMade(progress, step, words[index]!));
  return [...mentions, ...made].sort((a, b) => a.step - b.step || a.start - b.start);
}

function promises(mention: Mention, words: Words): boolean {
  return (
    mention.role === 'made' ||
    isPurposeOnly(
      words,
      words.words.findIndex(({ start }) => start === mention.start),
    )
  );
}

function mentionsInStep(progress: Progress, step: ReadStep, words: Words): Mention[] {
  const named = namedIn(words, progress.vocabulary);
  const heading =
    step.step.heading === null ? null : componentOfHeading(progress.recipe, step.step.heading.text);
  const preferred: readonly Listing[] = heading?.listings ?? [];
  const mentions: Mention[] = [];
  for (const each of named) {
    const mention =
      each.group === null
        ? mentionOf(progress, step, words, each, preferred)
        : groupMention(progress, step, words, each, preferred, mentions);
    if (mention === null) continue;
    if (isMadeOfLast(words, each, mention, mentions)) mentions.push({ ...mention, role: 'made' });
    else if (isSecondChoice(words, each, named, mentions) || isStillAside(words, mention, mentions))
      mentions.push({ ...mention, role: 'aside' });
    else mentions.push(mention);
    // "The onion mixture" makes no onion; "the base for the hollandaise" promises one.
    if (
      mention.role !== 'use' &&
      mention.listings.length === 0 &&
      isProduct(mention.food) &&
      promises(mention, words)
    )
      progress.made.add(mention.food!);
  }
  mentions.push(...seasonings(progress, step, words), ...sweetenings(progress, step, words));
  if (mentions.every((mention) => mention.role !== 'use')) mentions.push(...wholeList(progress, step, words));
  return leaveOutExcepted(
    words,
    mentions.sort((a, b) => a.start - b.start),
  ).map((mention, index, all) => withSharedDeterminer(progress, words, mention, all[index - 1]));
}

/** "Yogurt sauce", "lemon herb vinaigrette": made of the listed food named right before it, or before one more food. */
function isMadeOfLast(words: Words, named: Named, mention: Mention, before: readonly Mention[]): boolean {
  if (mention.role !== 'use' || (!named.made && !isProduct(named.food))) return false;
  // "The sauce" may be the hot sauce of the list; "yogurt sauce" is none.
  if (mention.listings.length > 0 && named.food?.generic !== true) return false;
  const ends = [words.words[named.start - 1]?.end];
  if (named.start > 1 && foodAt(words.keys, named.start - 1) !== null)
    ends.push(words.words[named.start - 2]!.end);
  return (
    words.before[named.start] === '' &&
    before.some(({ listings, end }) => listings.length > 0 && ends.includes(end))
  );
}

/** "Serve with syrup if you like. … before adding syrup": what its sentence has left to the cook stays so to its end. */
function isStillAside(words: Words, mention: Mention, before: readonly Mention[]): boolean {
  if (mention.role !== 'use' || mention.listings.length > 0 || mention.food === null) return false;
  const sentenceAt = (at: number): number =>
    words.sentence[words.words.findIndex(({ start }) => start === at)]!;
  return before.some(
    (other) =>
      other.food === mention.food &&
      other.role === 'aside' &&
      other.optional &&
      sentenceAt(other.start) === sentenceAt(mention.start),
  );
}

/** "The remaining soy sauce and lime juice": the first of the two speaks for both, where some was used before. */
function withSharedDeterminer(
  progress: Progress,
  words: Words,
  mention: Mention,
  previous: Mention | undefined,
): Mention {
  if (previous === undefined || mention.determiner !== null || mention.measure !== null) return mention;
  const isRest =
    says(previous.determiner, 'rest-word') && mention.listings.some((listing) => progress.used.has(listing));
  return isRest && words.text.slice(previous.end, mention.start).trim() === 'and'
    ? { ...mention, determiner: previous.determiner }
    : mention;
}

function mentionOf(
  progress: Progress,
  step: ReadStep,
  words: Words,
  named: Named,
  preferred: readonly Listing[],
): Mention | null {
  const { start, end } = named;
  const verb = governingVerb(words, start);
  const determiner = determinerOf(words, start);
  // "The seeds" are those so called on the list, and the linseed as well.
  const isNamedByList = named.entries.length > 0 && named.food?.generic !== true;
  const entries = isNamedByList
    ? named.entries
    : [...named.entries, ...entriesOf(named, words, progress.vocabulary, preferred)];
  const meant = narrowed(
    entries.map((entry) => entry.listing),
    preferred,
  );
  // "The spices" of a recipe with a "spice blend" are all that the blend lists.
  const blend = named.food?.generic === true ? componentOfGroup(progress.recipe, words.keys[end - 1]!) : null;
  if (
    blend !== null &&
    meant.some((listing) => blend.listings.includes(listing)) &&
    !isMostlyUsed(progress, blend.listings)
  )
    return collective(step, words, start, end, blend.listings);
  const sense = senseOf(progress, words, named, meant, determiner, verb);
  if (sense === null) return null;
  const { role, listings } = sense;
  const measure = role === 'use' && !named.implied ? measureOf(words, start, end) : null;
  return {
    text: words.text.slice(words.words[start]!.start, words.words[end - 1]!.end),
    start: words.words[start]!.start,
    end: words.words[end - 1]!.end,
    step: step.step.index,
    role,
    food: named.food,
    listings,
    group: false,
    measure,
    allBut: measure !== null && isAllBut(words, measure),
    determiner,
    verb: verb?.name ?? unknownOrder(words, start),
    telling: tellsWhen(words, start) || namesMade(words, end),
    article: hasArticle(words, start),
    into: isDestination(words, start),
    toTaste: named.implied || saysToTaste(words, end),
    surface: named.implied || isForSurface(words, start, verb),
    optional: isSuggestion(words, start) || (verb?.name === 'serve' && isChoice(words, start, end)),
  };
}

interface Sense {
  readonly role: MentionRole;
  readonly listings: readonly Listing[];
}

/** How the name stands in the text, and the listings that it still means then; null where it names no food at all. */
function senseOf(
  progress: Progress,
  words: Words,
  named: Named,
  listings: readonly Listing[],
  determiner: string | null,
  verb: Technique | null,
): Sense | null {
  const { start, end } = named;
  if ((isToolName(words, end) || isTool(words, named, listings)) && !named.implied) return null;
  if (isLikeness(words, start, end)) return { role: 'aside', listings };
  if (isPouredOff(words, start)) return { role: 'aside', listings: [] };
  if (named.made && isMade(progress, named, words, listings, determiner))
    return { role: 'made', listings: [] };
  if (isGivenName(progress, named, words)) return { role: 'made', listings: [] };
  // A class that the list does not name itself: "the spices" in "the spice paste", "the fruit" in "until the fruit is soft".
  const isClass = named.food?.generic === true && named.entries.length === 0;
  // "The honey glaze" is the component of that name, and pours no honey.
  if (namesMade(words, end) && componentNamed(progress.recipe, words, start, end + 1) !== null)
    return { role: 'made', listings: [] };
  if (namesMade(words, end))
    return listings.length > 0 && !isClass ? { role: 'use', listings } : { role: 'made', listings: [] };
  if (listings.length > 0) return { role: isClass && tellsWhen(words, start) ? 'aside' : 'use', listings };
  if (isNegated(words, start)) return { role: 'aside', listings };
  return senseOfUnlisted(progress, words, named, determiner, verb);
}

/** The same for a name that no listing answers to. */
function senseOfUnlisted(
  progress: Progress,
  words: Words,
  named: Named,
  determiner: string | null,
  verb: Technique | null,
): Sense | null {
  const { start, end, food } = named;
  const measure = measureOf(words, start, end);
  // "Grease the pan with butter" is a use of the butter.
  if (named.implied && words.keys.slice(end, clauseOf(words, start)[1]).includes('with')) return null;
  const isDish = food?.dish === true && verb?.name !== 'serve';
  if (
    isDish ||
    madeOf(progress, named, words, determiner) ||
    isTurnedInto(words, start) ||
    phraseAt(words.keys, end, 'made-of') !== null
  )
    return { role: 'made', listings: [] };
  const isAside =
    isSuggestion(words, start) ||
    isQuoted(words, start) ||
    (words.depth[start]! > 0 && measure === null && !isToldInside(progress, words, named)) ||
    isGivenUp(words, start) ||
    tellsWhen(words, start) ||
    isPurposeOnly(words, start) ||
    (verb !== null && does(verb, 'remove') && measure === null) ||
    isAlternative(progress, words, named) ||
    (isAnyOf(food, WATER) && isCookingWater(words, start, verb, measure)) ||
    words.keys[end] === 'from' ||
    saidInList(progress.recipe.listings, named);
  if (isAside) return { role: 'aside', listings: [] };
  return food === null ? null : { role: 'use', listings: [] };
}

/** "Beat it with a meat tenderizer", where none is listed: a name that a food and a tool share. */
function isTool(words: Words, { start, end }: Named, listings: readonly Listing[]): boolean {
  return (
    listings.length === 0 &&
    measureOf(words, start, end) === null &&
    // "Baking beans": the tool's name may begin before the food's.
    [start, start - 1].some((at) => at >= 0 && vesselAt(words.keys, at)?.length === end - at)
  );
}

/** Whether the food goes on a pan, a board or a dish and not into the food: "dust the board with flour". */
function isForSurface(words: Words, start: number, verb: Technique | null): boolean {
  if (verb === null || !does(verb, 'coat', 'garnish')) return false;
  if (verb.implies !== undefined) return true;
  const [from, to] = clauseOf(words, start);
  for (let at = from; at < to; at++) {
    // The next order speaks of other things: "scatter the parsley over, and carry the pot to the table".
    if (at > start && verbAt(words, at) !== null) return false;
    if (vesselAt(words.keys, at) !== null && verbAt(words, at) === null) return true;
  }
  return false;
}

/** The second of two unlisted foods between which the cook may choose: one of them is asked about. */
function isSecondChoice(
  words: Words,
  named: Named,
  all: readonly Named[],
  before: readonly Mention[],
): boolean {
  const previous = all[all.indexOf(named) - 1];
  const mention = before.at(-1);
  if (
    previous === undefined ||
    mention === undefined ||
    mention.listings.length > 0 ||
    named.entries.length > 0
  )
    return false;
  return (
    named.start - previous.end === 1 &&
    words.keys[previous.end] === 'or' &&
    mention.start === words.words[previous.start]!.start
  );
}

/** "vegetable or canola oil", "lard or dripping": one of the two is on the list. */
function isAlternative(progress: Progress, words: Words, named: Named): boolean {
  const sentence = words.sentence[named.start];
  for (const [from, step] of [
    [named.start - 1, -1],
    [named.end, 1],
  ] as const) {
    const at = from;
    if (words.sentence[at] !== sentence || words.keys[at] !== 'or') continue;
    for (
      let index = at + step;
      index >= 0 && index < words.keys.length && Math.abs(index - at) <= 3;
      index += step
    ) {
      if (words.sentence[index] !== sentence) break;
      if (progress.vocabulary.byWord.has(singular(words.keys[index]!))) return true;
    }
  }
  return false;
}

/** Whether what parentheses hold is part of the method: an order ("mix flour and butter"), or a list of what is on the list ("flour, salt, nutmeg"). */
function isToldInside(progress: Progress, words: Words, named: Named): boolean {
  let from = named.start;
  while (from > 0 && words.depth[from - 1]! > 0 && named.start - from < LONGEST_CLAUSE) from--;
  for (let at = from; at < named.start; at++) {
    const verb = verbAt(words, at);
    if (verb !== null && does(verb, 'combine', 'cut', 'heat')) return true;
    const isNeighbor = words.before[named.start] === ',' || words.keys[named.start - 1] === 'and';
    if (isNeighbor && progress.vocabulary.byWord.has(singular(words.keys[at]!))) return true;
  }
  return false;
}

/** Flax "egg", oat “milk”: a stand-in. */
function isQuoted(words: Words, start: number): boolean {
  return words.before[start] === '"' || words.before[start] === '“' || words.before[start] === '‘';
}

function saysToTaste(words: Words, end: number): boolean {
  for (
    let index = end;
    index < words.keys.length && index < end + 6 && words.sentence[index] === words.sentence[end - 1];
    index++
  ) {
    if (words.keys[index] === 'taste' || words.keys[index] === 'needed' || words.keys[index] === 'liking')
      return true;
  }
  return false;
}
