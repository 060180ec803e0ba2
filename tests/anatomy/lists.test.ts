/** Ingredient lists as tables, as bullets over bullets, in running lines, and where they cannot be read. */
import { describe, expect, it } from 'vitest';
import { components, contents, listings, only, outline, words } from './pages.js';

const around = (list: string): string => `# Bread\n\n## Ingredients\n\n${list}\n\n## Method\n\n1. Bake.`;

describe('a table of ingredients', () => {
  const table = (head: string, ...rows: string[]): string =>
    `| ${head} |\n|${'---|'.repeat(head.split('|').length)}\n${rows.map((row) => `| ${row} |`).join('\n')}`;

  it.each([
    ['Ingredient | Amount | Prep', 'flour | 2 cups | sifted', 'flour, 2 cups, sifted'],
    ['Quantity | Unit | Item', '2 | cups | flour', '2 cups flour'],
    ['Item | Qty | Unit', 'flour | 2 | cups', 'flour, 2 cups'],
    ["Ingredient | Weight | Baker's %", 'flour | 500 g | 100%', 'flour, 500 g'],
    ["Ingredient | Baker's % | Weight", 'flour | 100% | 500 g', 'flour, 500 g'],
    ['Ingredient | For 4 | For 8', 'flour | 500 g | 1 kg', 'flour, 500 g'],
    ['Ingredient | 1 loaf | 2 loaves', 'flour | 500 g | 1 kg', 'flour, 500 g'],
    ['Ingredient | Amount | Shop', 'flour | 2 cups | the mill', 'flour, 2 cups'],
    ['Amount | Ingredient | Notes', '2 cups | flour | sifted', '2 cups flour, sifted'],
    ['2 | eggs | beaten', '2 cups | flour | sifted', '2 eggs, beaten'],
  ])('has the amount, the food and its preparation of each row, and no header: "%s"', (head, row, first) => {
    expect(listings(only(around(table(head, row))))[0]).toBe(first);
    expect(only(around(table(head, row))).listings).toHaveLength(head.startsWith('2') ? 2 : 1);
  });

  it('leaves the row that adds up the others', () => {
    const recipe = only(
      around(table('Ingredient | Weight', 'flour | 500 g', 'water | 350 g', '**Total** | 850 g')),
    );
    expect(listings(recipe)).toEqual(['flour, 500 g', 'water, 350 g']);
    expect(words(recipe.rest)).toEqual(['Total 850 g']);
  });

  it('has components under rows of one cell', () => {
    const flour = table(
      'Ingredient | Weight | %',
      'flour | 500 g | 100%',
      'salt | | ',
      '**Topping** | | ',
      'seeds | 20 g | 4%',
    );
    expect(components(only(around(flour)))).toEqual(['-: flour, 500 g | salt', 'topping: seeds, 20 g']);
    const first = table('Amount | Ingredient', '2 cups | flour', '**Crumb** | ', '1 cup | sugar');
    expect(components(only(around(first)))).toEqual(['-: 2 cups flour', 'crumb: 1 cup sugar']);
  });

  it('is the list of a recipe without a heading over it', () => {
    expect(
      outline(
        `# Bread\n\n${table('Quantity | Unit | Item', '2 | cups | flour', '1 | | egg')}\n\nMix it all. Bake.`,
      ),
    ).toEqual(['Bread: 2 listed, 1 steps']);
  });
});

describe('a table of tools', () => {
  it('is no list of ingredients', () => {
    const { recipes } = contents(
      '# Your kitchen\n\n| Item | Quantity |\n|---|---|\n| whisk | 1 |\n| sharp knives | 2 |\n| large pan | 1 |\n\nKeep the knives sharp.',
    );
    expect(recipes).toEqual([]);
  });
});

describe('bullets over bullets', () => {
  it('are a component where those below have the amounts, and what follows is none of it', () => {
    expect(
      components(only(around('- 1 onion\n- Salsa\n  - 2 tomatoes\n  - 1 lime\n- 2 cups flour'))),
    ).toEqual(['-: 1 onion', 'salsa: 2 tomatoes | 1 lime', '-: 2 cups flour']);
    expect(
      components(only(around('- Dough\n  - 500 g flour\n  - 1 tsp salt\n- Filling\n  - 2 onions\n  - salt'))),
    ).toEqual(['dough: 500 g flour | 1 tsp salt', 'filling: 2 onions | salt']);
  });

  it('are asides where those below say something of the listing', () => {
    const recipe = only(around('- 2 cups flour\n  - fresh if possible\n  - or spelt flour'));
    expect(listings(recipe)).toEqual(['2 cups flour']);
    expect(words(recipe.rest)).toEqual(['fresh if possible', 'or spelt flour']);
  });
});

describe('an ingredient list in running lines', () => {
  it('may have the foods first', () => {
    expect(listings(only(around('Apples, 2 lb, peeled\nVinegar, 2 cups\nSugar, 1 lb')))).toEqual([
      'Apples, 2 lb, peeled',
      'Vinegar, 2 cups',
      'Sugar, 1 lb',
    ]);
  });

  it('may be one line with commas', () => {
    const text = around('2 lb apples, peeled, 2 cups vinegar, and salt.');
    const recipe = only(text);
    expect(listings(recipe)).toEqual(['2 lb apples, peeled', '2 cups vinegar', 'salt']);
    const span = recipe.listings[1]!.passage.span();
    expect(text.slice(span.start, span.end)).toBe('2 cups vinegar');
  });

  it('may have a line between two lists', () => {
    expect(listings(only(around('- 2 apples\n\nA cinnamon stick\n\n- salt')))).toEqual([
      '2 apples',
      'A cinnamon stick',
      'salt',
    ]);
  });
});

describe('a list of one line', () => {
  it('is a list before a component', () => {
    expect(
      components(
        only(
          '# Stew\n\n- 2 leeks\n\n**Spice Blend**\n\n- 1 tsp salt\n- 2 tsp cumin\n\n1. Wash the leeks.\n2. Stew them.',
        ),
      ),
    ).toEqual(['-: 2 leeks', 'spice blend: 1 tsp salt | 2 tsp cumin']);
  });
});

describe('a list that is not set as text', () => {
  it.each([
    [
      'in a block of code',
      '# Soup\n\n    2 leeks\n    1 cup milk\n    salt\n\nStew the leeks. Add the milk.',
    ],
    [
      'in a block of code below its heading',
      '# Soup\n\n## Ingredients\n\n    2 leeks\n    1 cup milk\n\n## Method\n\n1. Stew.',
    ],
    [
      'in the front matter',
      '---\ntitle: Soup\ningredients:\n  - 2 leeks\n  - 1 cup milk\n---\n\n1. Stew the leeks.\n2. Add the milk.',
    ],
  ])('is said to be unclear once: %s', (_where, text) => {
    expect(contents(text).unclear).toHaveLength(1);
    expect(contents(text).recipes.flatMap((recipe) => recipe.listings)).toEqual([]);
  });

  it('is passed over where the page has its list, or where it is no list', () => {
    const code = '\n\n    2 leeks\n    1 cup milk\n';
    expect(contents(`${around('- 2 leeks')}${code}`).unclear).toEqual([]);
    expect(contents('# Notes\n\n    run the press\n    2 sheets a minute\n').unclear).toEqual([]);
    expect(contents('---\ntitle: Soup\ntags: [leek, milk]\n---\n\nWe like soup.').unclear).toEqual([]);
  });
});
