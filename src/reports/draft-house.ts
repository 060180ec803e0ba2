/** Drafts a house-style.yaml that states what most of the book does, with the counts beside it. */
import { type Decision, decisionsOf, type Form } from '../kitchen/wording/decisions.js';
import type { Aspect } from '../kitchen/wording/types.js';
import { toleranceEdition } from '../larder/tolerances.js';
import {
  degreeForms,
  listingForms,
  numberForms,
  rangeForms,
  scaleOrders,
  titleForms,
} from '../manuscript/house-style.js';
import type { Reading } from '../reading/types.js';
import { countOf } from './words.js';

/** The text of the file. What the book has not decided stands in it as a comment. */
export function draftHouse(reading: Reading): string {
  const decisions = decisionsOf(reading);
  const of = (...aspects: Aspect[]): Decision[] =>
    decisions
      .filter(({ aspect }) => aspects.includes(aspect))
      .toSorted((a, b) => (a.about < b.about ? -1 : 1));
  const one = (aspect: Aspect, about?: string): Decision | undefined =>
    of(aspect).find((decision) => about === undefined || decision.about === about);
  const empty = reading.pages.filter((page) => reading.dishes.every((dish) => dish.page !== page));
  const lines = [
    `# House style, drafted from ${countOf(reading.dishes.length, 'recipe', 'recipes')}: it states what most of the book does.`,
    '# Go through it, change what you decide otherwise, and take out what you want to leave open.',
    '',
    '# Whose cups, pints and tablespoons: us-customary, us-legal, metric, imperial or australian.',
    '# system: us-customary',
    '',
    ...block(
      'How units are written; "form" is for those not named here (spelled out, abbreviated, abbreviated with period).',
      'units',
      of('unit').map((decision) => entry(decision.about, decision.forms[0]!.form, decision)),
    ),
    ...choice('numbers', one('number'), numberForms, 'An example of a number that is not whole.'),
    ...choice('ranges', one('range'), rangeForms, 'An example of a range.'),
    ...block('How temperatures are written, and which scale comes first.', 'temperatures', [
      ...keyed('form', one('degree'), degreeForms),
      ...keyed('order', one('scales', 'temperature on two scales') ?? one('scales'), scaleOrders),
    ]),
    ...choice('yields', one('yield', 'yield in helpings'), null, 'An example of a yield.'),
    ...choice('titles', one('title'), titleForms, 'The capitals of recipe titles.'),
    ...choice(
      'listings',
      one('capital'),
      listingForms,
      'How a line of a list begins that opens with a word.',
    ),
    ...block(
      'One name for one food: the name that is wanted, and those that are not.',
      'terms',
      of('term').flatMap(others),
    ),
    ...block('One spelling for one word.', 'spellings', wordsOnce(of('spelling')).flatMap(others)),
    '# Foods that a method may use without their standing on the list.',
    '# unlisted: [water]',
    '',
    '# The date of the tolerances by which amounts, temperatures and times are compared: a version that has others will say so.',
    `tolerances: ${toleranceEdition}`,
    '',
    '# Front and back matter: files and folders in which no recipe is sought.',
    `${empty.length === 0 ? '# matter: [front/]' : `matter: [${empty.map(({ path }) => scalar(path)).join(', ')}]`}`,
    '',
    '# Rules that are off or weigh otherwise (off, note, query, fault), everywhere or by folder.',
    '# rules:',
    '#   yield-absent: note',
    '# folders:',
    '#   drinks/:',
    '#     doneness-cue-absent: off',
  ];
  return `${lines.join('\n')}\n`;
}

function block(comment: string, key: string, entries: readonly string[]): string[] {
  if (entries.length === 0) return [];
  return [`# ${comment}`, `${key}:`, ...entries.map((line) => `  ${line}`), ''];
}

function choice(
  key: string,
  decision: Decision | undefined,
  known: readonly string[] | null,
  comment: string,
): string[] {
  const lines = keyed(key, decision, known);
  return lines.length === 0 ? [] : [`# ${comment}`, ...lines, ''];
}

/** The most used form that a house style can state. */
function keyed(key: string, decision: Decision | undefined, known: readonly string[] | null): string[] {
  const form = decision?.forms.find((each) => known === null || known.includes(each.form));
  return decision === undefined || form === undefined ? [] : [entry(key, form.form, decision)];
}

function entry(key: string, form: string, { forms }: Decision): string {
  return `${scalar(key)}: ${scalar(form)} # ${counts(forms)}`;
}

/** "green onion: [scallion, spring onion]"; nothing where the book has one form only. */
function others({ aspect, forms }: Decision): string[] {
  const [first, ...rest] = forms;
  // A name that is a word of the wanted one would be found in it.
  const unwanted = rest.filter(({ shown }) => !` ${first!.shown} `.includes(` ${shown} `));
  if (unwanted.length === 0) return [];
  const name = ({ form, shown }: Form): string => (aspect === 'term' ? shown : form);
  return [
    `${scalar(name(first!))}: [${unwanted.map((form) => scalar(name(form))).join(', ')}] # ${counts(forms)}`,
  ];
}

/** "Tomato purée" follows from "purée": a name is left out when one of its words is decided by itself. */
function wordsOnce(decisions: readonly Decision[]): Decision[] {
  const words = ({ forms }: Decision): string[] => forms.map(({ form }) => form);
  const single = new Set(decisions.flatMap(words).filter((form) => !form.includes(' ')));
  return decisions.filter((decision) =>
    words(decision).every(
      (form) => !form.includes(' ') || form.split(' ').every((word) => !single.has(word)),
    ),
  );
}

const MOST_COUNTS = 5;

function counts(forms: readonly Form[]): string {
  const told = forms.slice(0, MOST_COUNTS).map(({ shown, places }) => `${shown} ${places.length}`);
  return told.join(', ').replace(/\s+/g, ' ');
}

/** A plain word as it is, anything that YAML might read otherwise in quotation marks. */
function scalar(text: string): string {
  return /^\p{L}[\p{L}\p{N} /.()-]*[\p{L}\p{N}.)]$|^\p{L}$/u.test(text) &&
    !/^(true|false|null|yes|no|on|off)$/i.test(text)
    ? text
    : JSON.stringify(text);
}
