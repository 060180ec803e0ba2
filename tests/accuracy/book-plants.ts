/** Plants faults that only the book, or a promise of the page, can tell, and counts those that the right rule marks in the right place. */
import type { Mark } from '../../rules/rule.js';
import type { Dish } from '../../src/kitchen/types.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readBook, readPage } from '../../src/reading/read.js';
import type { PageReading } from '../../src/reading/types.js';
import type { PlantCount } from './plants.js';

/** What is changed on one or two pages, and the mark that must come of it. */
interface Plant {
  readonly texts: Readonly<Record<string, string>>;
  readonly rule: string;
  readonly isIt: (mark: Mark) => boolean;
}

/** A page with one recipe, and another one of the book for it to refer to. */
interface Ground {
  readonly file: SourceFile;
  readonly dish: Dish;
  readonly other: { readonly file: SourceFile; readonly dish: Dish };
  /** Counts up from plant to plant, so that foods and forms take turns. */
  readonly turn: number;
}

type Planter = (ground: Ground) => Plant | null;

const cut = (text: string, start: number, end: number, put: string): string =>
  text.slice(0, start) + put + text.slice(end);

function atTitle({ text }: SourceFile, dish: Dish, put: (title: string) => string): string | null {
  const span = dish.recipe.title?.span();
  return span === undefined ? null : cut(text, span.start, span.end, put(text.slice(span.start, span.end)));
}

/** The text with a sentence more at the end of the last step, and where that begins. */
function afterMethod(
  { text }: SourceFile,
  dish: Dish,
  sentence: string,
): { text: string; at: number } | null {
  const last = dish.recipe.steps.at(-1)?.passage.span();
  if (last === undefined) return null;
  // A full stop first, so that the sentence stands by itself whatever the author ended with.
  const joint = /[.!?)]/.test(text[last.end - 1]!) ? ' ' : '. ';
  return { text: cut(text, last.end, last.end, joint + sentence), at: last.end };
}

const nameOf = (dish: Dish): string => dish.recipe.title!.text.replace(/\s+/g, ' ').trim();

/** A reference to the other recipe, in each of the forms that a manuscript has. */
function referring(ground: Ground, name: string): { text: string; at: number } | null {
  const forms = [
    `Serve with the ${name} (page 41).`,
    `Serve it, and for more see ${name}.`,
    `It keeps as long as the other does (see ${name}, page 41).`,
    `Spread it over 1 plate of ${name}, page 41.`,
  ];
  return afterMethod(ground.file, ground.dish, forms[ground.turn % forms.length]!);
}

/** A name that can be referred to in any sentence: a few capitalized words of plain letters. */
const isPlainName = (name: string): boolean =>
  /^(?:\p{Lu}\p{L}+(?: (?:and|of|with) )? ?){2,5}$/u.test(name) && !/recipe/i.test(name);

const RENAMED = ['Lockside Supper', 'Barge Breakfast', 'Towpath Treat', 'Mooring Morsel'];
const FOODS = ['Walnut', 'Raspberry', 'Pumpkin', 'Salmon', 'Apricot', 'Pistachio', 'Fennel', 'Duck'];
const PLURALS = ['walnuts', 'raspberries', 'dried apricots', 'pistachios', 'hazelnuts', 'figs'];

const planters: Record<string, Planter> = {
  'recipe renamed': (ground) => {
    const { file, other, turn } = ground;
    const name = nameOf(other.dish);
    const renamed = atTitle(other.file, other.dish, () => RENAMED[turn % RENAMED.length]!);
    const referred = referring(ground, name);
    if (!isPlainName(name) || renamed === null || referred === null) return null;
    return {
      texts: { [file.path]: referred.text, [other.file.path]: renamed },
      rule: 'reference-broken',
      isIt: (mark) => mark.file === file.path && mark.subject.includes(name),
    };
  },
  'recipe renamed, listed': ({ file, dish, other, turn }) => {
    const name = nameOf(other.dish);
    const renamed = atTitle(other.file, other.dish, () => RENAMED[turn % RENAMED.length]!);
    const last = dish.recipe.listings.at(-1)?.passage.span();
    if (!isPlainName(name) || renamed === null || last === undefined || file.text[last.end] !== '\n')
      return null;
    const start = file.text.lastIndexOf('\n', last.start) + 1;
    const bullet = /^\s*[-*+] /.exec(file.text.slice(start, last.start))?.[0];
    if (bullet === undefined) return null;
    const line = `\n${bullet}${turn % 2 === 0 ? `1 recipe ${name}` : `1 cup ${name} (page 41)`}`;
    return {
      texts: { [file.path]: cut(file.text, last.end, last.end, line), [other.file.path]: renamed },
      rule: 'reference-broken',
      isIt: (mark) => mark.file === file.path && name.includes(mark.subject),
    };
  },
  'name misspelled': (ground) => {
    const name = nameOf(ground.other.dish);
    const at = Math.floor(name.length / 2);
    // A letter within a word, so that the name keeps its capitals.
    const slip = /\p{Ll}/u.test(name[at]!) ? at : at + 2;
    const referred = referring(ground, name.slice(0, slip) + name.slice(slip + 1));
    if (!isPlainName(name) || name.length < 8 || referred === null) return null;
    return {
      texts: { [ground.file.path]: referred.text },
      rule: 'reference-misspelled',
      isIt: (mark) => mark.file === ground.file.path && mark.span.start > referred.at,
    };
  },
  'page changed': (ground) => {
    const name = nameOf(ground.other.dish);
    const referred = afterMethod(
      ground.file,
      ground.dish,
      `Serve with ${name} (page 41). Leftovers go into ${name} (page 14).`,
    );
    if (!isPlainName(name) || referred === null) return null;
    return {
      texts: { [ground.file.path]: referred.text },
      rule: 'reference-broken',
      isIt: (mark) => mark.file === ground.file.path && /page (?:41|14)/.test(mark.message),
    };
  },
  'link to a file that moved': ({ file, dish, other, turn }) => {
    const target =
      turn % 2 === 0 ? other.file.path.replace('.md', '-old.md') : `${other.file.path}#no-such-part`;
    const referred = afterMethod(file, dish, `Serve with [this](${target}).`);
    if (referred === null) return null;
    return {
      texts: { [file.path]: referred.text },
      rule: 'reference-broken',
      isIt: (mark) => mark.file === file.path && mark.subject === target,
    };
  },
  'title twice': ({ file, dish, other }) => {
    const text = atTitle(file, dish, () => nameOf(other.dish));
    if (text === null || !isPlainName(nameOf(other.dish))) return null;
    return {
      texts: { [file.path]: text },
      rule: 'title-twice',
      isIt: (mark) => mark.file === file.path || mark.file === other.file.path,
    };
  },
  'step taken out': ({ file, dish, turn }) => {
    const beyond =
      Math.max(...dish.recipe.steps.map(({ number, index }) => Math.max(number ?? 0, index + 1))) + 1;
    const sentences = [
      `Repeat step ${beyond}.`,
      `Proceed as in steps 1 and ${beyond}.`,
      `(See step ${beyond}.)`,
    ];
    const referred = afterMethod(file, dish, sentences[turn % sentences.length]!);
    if (referred === null) return null;
    return {
      texts: { [file.path]: referred.text },
      rule: 'step-reference-broken',
      isIt: (mark) => mark.span.start > referred.at,
    };
  },
  'food promised in the title': ({ file, dish, turn }) => {
    const food = FOODS[turn % FOODS.length]!;
    // What the recipe has in it is no broken promise.
    if (file.text.toLowerCase().includes(food.toLowerCase().slice(0, 5))) return null;
    const text = atTitle(file, dish, (title) => `${food} ${title.replace(/^the /i, '')}`);
    if (text === null) return null;
    return {
      texts: { [file.path]: text },
      rule: 'headnote-promise',
      isIt: (mark) => mark.subject === food.toLowerCase(),
    };
  },
  'food promised in the headnote': ({ file, dish, turn }) => {
    const food = PLURALS[turn % PLURALS.length]!;
    const head = dish.recipe.headnote[0]?.span();
    if (head === undefined || file.text.toLowerCase().includes(food.split(' ').at(-1)!.slice(0, 5)))
      return null;
    // Raspberries are borne out by berries of any kind.
    if (food.endsWith('berries') && /berr/i.test(file.text)) return null;
    return {
      texts: { [file.path]: cut(file.text, head.start, head.start, `It is full of ${food}. `) },
      rule: 'headnote-promise',
      isIt: (mark) => mark.message.includes(`"${food}"`) || mark.message.includes(food.split(' ').at(-1)!),
    };
  },
  'ingredients miscounted': ({ file, dish, turn }) => {
    // One line may list several foods.
    const foods = dish.recipe.listings.reduce((sum, { line }) => sum + Math.max(1, line.foods.length), 0);
    const count = foods + 2 + (turn % 3);
    const text = atTitle(file, dish, (title) => `${count}-Ingredient ${title}`);
    if (text === null || dish.recipe.listings.length < 3) return null;
    return {
      texts: { [file.path]: text },
      rule: 'headnote-promise',
      isIt: (mark) => mark.subject.includes('Ingredient'),
    };
  },
  'servings changed': ({ file, dish, turn }) => {
    const amount = dish.recipe.yield?.parsed?.amount;
    const of = dish.recipe.yield?.parsed?.of ?? 'none';
    if (amount == null || !/^$|serving|people|person|portion/.test(of) || dish.recipe.yields.length !== 1)
      return null;
    const other = Number(amount.high.valueOf()) * (amount.approximation === null ? 1 : 2) + 3;
    if (!Number.isInteger(other)) return null;
    const sentences = [
      `Divide among ${other} plates.`,
      `Ladle into ${other} bowls and serve.`,
      `Serve on ${other} warm plates.`,
    ];
    const referred = afterMethod(file, dish, sentences[turn % sentences.length]!);
    if (referred === null) return null;
    return {
      texts: { [file.path]: referred.text },
      rule: 'servings-disagreement',
      isIt: (mark) => mark.span.start > referred.at,
    };
  },
};

/** Plants every kind in one of so many recipes that can bear it, in the files taken as one book. */
export function countBookPlants(files: readonly SourceFile[], every: number): Map<string, PlantCount> {
  const pages = files.map((file) => readPage(file));
  const single = files.flatMap((file, index) => {
    const dishes = pages[index]!.dishes;
    return dishes.length === 1 && dishes[0]!.recipe.title !== null ? [{ file, dish: dishes[0]! }] : [];
  });
  const counts = new Map<string, PlantCount>();
  const before = new Map<string, readonly Mark[]>();
  Object.entries(planters).forEach(([kind, planter], offset) => {
    const count: PlantCount = { planted: 0, caught: 0, missed: [] };
    counts.set(kind, count);
    let turn = 0;
    for (let at = offset; at < single.length; at++) {
      // The next recipe that can bear it, then a few are passed over.
      const plant = planter({ ...single[at]!, other: single[(at + 3) % single.length]!, turn });
      if (plant === null) continue;
      at += every - 1;
      turn++;
      const known = before.get(plant.rule) ?? marksOf(pages, {}, plant.rule);
      before.set(plant.rule, known);
      if (known.some((mark) => plant.isIt(mark) && plant.texts[mark.file] !== undefined)) continue;
      count.planted++;
      if (marksOf(pages, plant.texts, plant.rule).some(plant.isIt)) count.caught++;
      else count.missed.push(Object.keys(plant.texts)[0]!);
    }
  });
  return counts;
}

function marksOf(
  pages: readonly PageReading[],
  texts: Readonly<Record<string, string>>,
  rule: string,
): readonly Mark[] {
  const read = pages.map((each) => {
    const text = texts[each.page.path];
    return text === undefined ? each : readPage({ path: each.page.path, text });
  });
  return readBook(read, { only: [rule] }).marks;
}
