/** Knows when two spellings are the same word: case, accents, apostrophes, hyphens and number are folded away. */
import pluralize from 'pluralize';

// Words of the kitchen that end like plurals and are none, or whose regular singular is wrong.
for (const word of [
  'molasses',
  'hummus',
  'couscous',
  'asparagus',
  'swiss',
  'bias',
  'citrus',
  'haggis',
  'focus',
  'us',
  'zucchini',
  'broccoli',
]) {
  pluralize.addUncountableRule(word);
}
pluralize.addSingularRule(/^(chive|olive|clove|endive|glove|stove|sleeve|curve|half-halve)s$/i, '$1');

const MARKS = /\p{M}+/gu;
const JOINTS = /['’ʼ`\s-]+/g;
const singulars = new Map<string, string>();

/** The form in which a word is compared: lower case, no accents, no apostrophes, hyphens or spaces. */
export function fold(text: string): string {
  const lower = text.toLowerCase();
  const plain = isAscii(lower)
    ? lower
    : inLatin(lower).normalize('NFD').replace(MARKS, '').replaceAll('œ', 'oe').replaceAll('ß', 'ss');
  return plain.replace(JOINTS, '');
}

/** A Cyrillic letter that looks like a Latin one, in a word of Latin letters, is a slip of the keyboard: "сrab". Takes small letters. */
export function inLatin(text: string): string {
  if (!/\p{Script=Cyrillic}/u.test(text) || !/[a-z]/.test(text)) return text;
  return text.replace(/[аеорсухі]/g, (letter) => LOOKALIKES.charAt('аеорсухі'.indexOf(letter)));
}

const LOOKALIKES = 'aeopcyxi';

/** The singular of one folded word; a word that is singular comes back as it is. */
export function singular(word: string): string {
  if (!word.endsWith('s') && !word.endsWith('en') && !word.endsWith('e')) return word;
  let known = singulars.get(word);
  if (known === undefined) {
    known = word.endsWith('ss') || word.length < 4 ? word : pluralize.singular(word);
    if (singulars.size > 20_000) singulars.clear();
    singulars.set(word, known);
  }
  return known;
}

const pluralsByWord = new Map<string, readonly string[]>();

/** The plurals a name may have, by its last word: "bay leaf" gives "bay leaves", "potato" gives "potatoes" and "potatos". */
export function plurals(name: string): string[] {
  const cut = Math.max(name.lastIndexOf(' '), name.lastIndexOf('-')) + 1;
  const last = name.slice(cut);
  let forms = pluralsByWord.get(last);
  if (forms === undefined) {
    forms = pluralsOfWord(last);
    pluralsByWord.set(last, forms);
  }
  return forms.map((form) => name.slice(0, cut) + form);
}

function pluralsOfWord(word: string): string[] {
  const regular = pluralize.plural(word);
  const last = word.at(-1);
  if (last === 'o' || last === 'i') return [regular, `${word}s`, `${word}es`];
  return last === 'f' ? [regular, `${word}s`] : [regular];
}

function isAscii(text: string): boolean {
  for (let at = 0; at < text.length; at++) if (text.charCodeAt(at) > 127) return false;
  return true;
}
