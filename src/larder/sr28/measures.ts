/** Knows how SR28 words a household measure: "cup, chopped or diced", "medium (2-1/2" dia)", "slice, thin". */

export interface VolumeWeight {
  readonly kind: 'volume';
  readonly amount: number;
  readonly unit: string;
  /** "chopped or diced"; empty where the measure says no more. */
  readonly wording: string;
  readonly grams: number;
}

export interface PieceWeight {
  readonly kind: 'piece';
  readonly count: number;
  /** A unit of the larder; empty where the thing itself is counted. */
  readonly unit: string;
  readonly wording: string;
  readonly grams: number;
}

/** A measure as the larder keeps it; null for what no recipe measures by: servings, ounces, packages, yields. */
export function measureOf(
  amount: number,
  text: string,
  grams: number,
  names: readonly string[],
): VolumeWeight | PieceWeight | null {
  const plain = text.replace(UNSTATED, '').toLowerCase().replace(/\s+/g, ' ').trim();
  if (NAMED.test(text.replace(UNSTATED, ''))) return null;
  // "cup, fluid (yields 2 cups whipped)" is a cup all the same.
  if (UNUSED.test(plain.replace(PARENTHESES, '')) || !(amount > 0) || !(grams > 0)) return null;
  const words = plain.replace(PARENTHESES, (_, inside: string) => (STATED.test(inside) ? ` ${inside}` : ''));
  const volume = VOLUME.exec(words);
  if (volume !== null) {
    const wording = trimmed(words.slice(volume[0].length));
    return DIGIT.test(wording)
      ? null
      : { kind: 'volume', amount, unit: VOLUMES.get(volume[1]!)!, wording, grams };
  }
  const first = /^[a-z]+/.exec(words)?.[0] ?? '';
  const unit = PIECES.get(first);
  if (unit !== undefined) return piece(amount, unit, words.slice(first.length), grams);
  if (SIZE.test(words)) return piece(amount, '', words, grams);
  const named = [...names, ...THINGS].find(
    (name) => words === name || new RegExp(`^${escaped(name)}s?\\b`).test(words),
  );
  return named === undefined ? null : piece(amount, '', words.slice(named.length).replace(/^s\b/, ''), grams);
}

/** What is no measure of a cook, or weighs something other than the food as listed. */
const UNUSED =
  /yield|serving|nlea|makes|prepared|condensed|with refuse|package|container|recipe|reconstituted|pkg|frozen|box|purchased|ulated/;
/** "Not stated", as to where it was grown. */
const UNSTATED = /,? NS as to.*$/;
/** A capital letter inside is a maker's or a country's name: what is sold so weighs what its maker likes. */
const NAMED = /\S\s+\p{Lu}\p{Ll}/u;
const PARENTHESES = /\s?\(([^)]*)\)?/g;
/** Parentheses that say how it is filled, rather than its size. */
const STATED = /^(not )?packed$|^whipped$|^sifted$|^thawed$/;
const DIGIT = /\d/;

const VOLUMES = new Map([
  ['cup', 'cup'],
  ['tbsp', 'tablespoon'],
  ['tablespoon', 'tablespoon'],
  ['tsp', 'teaspoon'],
  ['teaspoon', 'teaspoon'],
  ['fl oz', 'fluid-ounce'],
  ['pint', 'pint'],
  ['quart', 'quart'],
  ['liter', 'liter'],
]);
const VOLUME = /^(cup|tbsp|tablespoon|tsp|teaspoon|fl oz|pint|quart|liter)s?(?![a-z])/;
const SIZE = /^(extra large|extra small|jumbo|large|medium|small|mini|baby|cherry|plum|italian)\b/;
/** Words for a piece, and the larder's unit of it. */
const PIECES = new Map(
  [
    ...[
      'bulb',
      'bunch',
      'clove',
      'cube',
      'ear',
      'fillet',
      'head',
      'leaf',
      'link',
      'loaf',
      'piece',
      'pod',
      'rack',
    ],
    ...['sheet', 'slice', 'sprig', 'stalk', 'stick', 'strip', 'wedge', 'dash', 'pat'],
  ].flatMap((unit) => [[unit, unit] as const, [`${unit}s`, unit] as const]),
);
PIECES.set('leaves', 'leaf');
PIECES.set('rasher', 'rasher');
/** What SR28 calls the thing itself, whatever its name. */
const THINGS = [
  'fruit',
  'each',
  'whole',
  'item',
  'half',
  'pepper',
  'potato',
  'squash',
  'root',
  'egg',
  'breast',
  'thigh',
  'drumstick',
  'wing',
  'leg',
  'steak',
  'chop',
  'sausage',
  'shell',
  'tortilla',
  'roll',
  'biscuit',
  'cookie',
  'cracker',
  'beans',
  'date',
  'nuts',
];

function piece(count: number, unit: string, rest: string, grams: number): PieceWeight | null {
  const wording = trimmed(rest);
  return DIGIT.test(wording) ? null : { kind: 'piece', count, unit, wording, grams };
}

function trimmed(text: string): string {
  return text
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
    .replace(/^of /, '');
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
