/** The parts of a recipe: its components, its list and its method, in all the ways in which they are set out. */
import { describe, expect, it } from 'vitest';
import { components, listings, only, steps, words } from './pages.js';

describe('a recipe that is told in another order', () => {
  it('has its numbered steps before its list, though no heading tells which is which', () => {
    const told = only(
      '# Pickle\n\n1. Slice the onions.\n2. Boil the vinegar.\n\n- 2 onions\n- 1 cup vinegar\n',
    );
    expect(steps(told)).toEqual(['1 Slice the onions.', '2 Boil the vinegar.']);
    expect(listings(told)).toEqual(['2 onions', '1 cup vinegar']);
  });

  it('has no tins and tools for ingredients', () => {
    const told = only(
      '# Loaf\n\n## You will need\n\n- 9 x 5-inch loaf tin\n- rolling pin\n\n## Ingredients\n\n- 2 eggs\n- 1 cup flour\n\n## Method\n\n1. Bake.\n',
    );
    expect(listings(told)).toEqual(['2 eggs', '1 cup flour']);
    expect(told.equipment.map(({ text }) => text)).toEqual(['9 x 5-inch loaf tin', 'rolling pin']);
  });

  it('has its only food for an ingredient, though the line ends in a cup', () => {
    const told = only(
      '# Onions\n\n## Ingredients\n\n- 1 onion, chopped (1 cup)\n\n## Method\n\n1. Fry the onion.\n',
    );
    expect(listings(told)).toEqual(['1 onion, chopped (1 cup)']);
  });
});

describe('components', () => {
  const method = '\n## Method\n\n1. Bake.\n';
  it.each([
    ['headings below', '### For the cake\n\n- 2 eggs\n\n### Lemon glaze\n\n- 1 lemon'],
    ['bold lines', '**For the cake**\n\n- 2 eggs\n\n**Lemon glaze:**\n\n- 1 lemon'],
    ['lines with a colon', 'For the cake:\n\n- 2 eggs\n\nLemon glaze:\n\n- 1 lemon'],
    ['bare lines', 'Cake\n- 2 eggs\n\nLemon Glaze\n- 1 lemon'],
    ['bullets of their own', '- For the cake:\n- 2 eggs\n- **Lemon glaze:**\n- 1 lemon'],
    ['bullets over bullets', '- For the cake:\n  - 2 eggs\n- Lemon glaze:\n  - 1 lemon'],
    [
      'headings with the usual word',
      '### Cake ingredients\n\n- 2 eggs\n\n### Ingredients for the lemon glaze\n\n- 1 lemon',
    ],
    ['lines among the listings', 'For the cake:\n2 eggs\n\nLemon glaze:\n1 lemon'],
    [
      'rows of a table',
      '| Amount | Ingredient |\n|---|---|\n| **For the cake** | |\n| 2 | eggs |\n| Lemon glaze: | |\n| 1 | lemon |',
    ],
  ])('are told by %s', (_how, list) => {
    expect(components(only(`# Cake\n\n## Ingredients\n\n${list}\n${method}`))).toEqual([
      'cake: 2 eggs',
      'lemon glaze: 1 lemon',
    ]);
  });

  it('stand beside the list as well as below it', () => {
    expect(
      components(
        only(
          `# Stew\n\n## Ingredients\n\n- 2 eggs\n\n## Spice Blend\n\n- 1 tsp salt\n- 2 tsp cumin\n${method}`,
        ),
      ),
    ).toEqual(['-: 2 eggs', 'spice blend: 1 tsp salt | 2 tsp cumin']);
  });

  it('may each have a list and a method of their own', () => {
    const recipe = only(
      '# Cake\n\n## For the cake\n\n### Ingredients\n\n- 2 eggs\n\n### Method\n\n1. Beat the eggs.\n\n## For the glaze\n\n### Ingredients\n\n- 1 lemon\n\n### Method\n\n1. Squeeze the lemon.',
    );
    expect(components(recipe)).toEqual(['cake: 2 eggs', 'glaze: 1 lemon']);
    expect(steps(recipe)).toEqual([
      '1 (For the cake) Beat the eggs.',
      '1 (For the glaze) Squeeze the lemon.',
    ]);
  });

  it('may stand without a heading for the whole list', () => {
    const recipe = only(
      '# Pie\n\n## Filling\n\n- 2 apples\n- 1 lemon\n\n## Crust\n\n- 200 g flour\n- 100 g butter\n\n## Method\n\n1. Bake.',
    );
    expect(recipe.title?.text).toBe('Pie');
    expect(components(recipe)).toEqual(['filling: 2 apples | 1 lemon', 'crust: 200 g flour | 100 g butter']);
  });

  it('may be bold lines in a recipe without any other heading', () => {
    const recipe = only(
      '# Pie\n\n**Filling**\n\n- 2 apples\n- 1 lemon\n\n**Crust**\n\n- 200 g flour\n- 100 g butter\n\nPeel the apples.\n\nRub the butter into the flour.',
    );
    expect(recipe.title?.text).toBe('Pie');
    expect(recipe.components.map((component) => component.name)).toEqual(['filling', 'crust']);
    expect(recipe.steps).toHaveLength(2);
  });

  it('are named as the method calls them', () => {
    const names = (heads: string[]): unknown =>
      only(
        `# Cake\n\n## Ingredients\n\n${heads.map((head) => `${head}\n- 2 eggs\n`).join('\n')}${method}`,
      ).components.map((component) => component.name);
    expect(
      names([
        'Dry ingredients:',
        'For the "crust", or bottom:',
        'For the topping in step 4:',
        'These are for about ten small cakes:',
      ]),
    ).toEqual(['dry ingredients', 'crust', 'topping', null]);
  });

  it('are not made of the same list in other measures', () => {
    const recipe = only(
      '# Bread\n\n## Ingredients\n\n**Metric**\n\n- 500 g flour\n\n**Imperial**\n\n- 4 cups flour\n\n## Method\n\nBake.',
    );
    expect(components(recipe)).toEqual(['-: 500 g flour']);
    expect(words(recipe.rest)).toEqual(['4 cups flour']);
  });

  it('may be what is added at the table', () => {
    expect(
      components(
        only('# Soup\n\n## Ingredients\n\n- leeks\n\n### To serve\n\n- 1 lemon\n\n## Method\n\nStew.'),
      ),
    ).toEqual(['-: leeks', 'to serve: 1 lemon']);
  });
});

describe('an ingredient list', () => {
  const around = (list: string): string => `# Soup\n\n## Ingredients\n\n${list}\n\n## Method\n\n1. Stew.`;

  it('takes inner bullets that list, and leaves those that remark', () => {
    const recipe = only(
      around('- 2 eggs\n  - Free-range ones taste better, I find.\n- spices\n  - 1 tsp cumin\n  - pepper'),
    );
    expect(listings(recipe)).toEqual(['2 eggs', 'spices', '1 tsp cumin', 'pepper']);
    expect(words(recipe.rest)).toEqual(['Free-range ones taste better, I find.']);
  });

  it('leaves a paragraph that only remarks', () => {
    const recipe = only(around('Use what the garden gives.\n\n- 2 leeks'));
    expect(listings(recipe)).toEqual(['2 leeks']);
    expect(words(recipe.rest)).toEqual(['Use what the garden gives.']);
  });

  it('may be a table with the amount first', () => {
    const text = around('| Amount | Ingredient |\n|---|---|\n| 2 cups | flour, sifted |\n| | salt |');
    const recipe = only(text);
    expect(listings(recipe)).toEqual(['2 cups flour, sifted', 'salt']);
    const span = recipe.listings[0]!.passage.span();
    expect(text.slice(span.start, span.end)).toBe('2 cups | flour, sifted');
  });

  it('may be a table with the food first', () => {
    expect(
      listings(only(around('| Ingredient | Amount |\n|---|---|\n| flour | 2 cups |\n| salt | |'))),
    ).toEqual(['flour, 2 cups', 'salt']);
  });

  it('may be a table without a heading over it', () => {
    expect(
      listings(
        only(
          '# Soup\n\n| Ingredient | Amount |\n|---|---|\n| peas | 500 g |\n| onion | 1 |\n\n1. Fry the onion.\n2. Add the peas.',
        ),
      ),
    ).toEqual(['peas, 500 g', 'onion, 1']);
  });

  it('drops the boxes and bullets that Markdown does not know', () => {
    expect(listings(only(around('- [ ] 2 leeks\n- [x] salt')))).toEqual(['2 leeks', 'salt']);
    expect(listings(only(around('• 2 leeks\n• 1 carrot')))).toEqual(['2 leeks', '1 carrot']);
  });

  it('may be paragraphs of one line', () => {
    expect(listings(only(around('2 leeks\n\n1 carrot\n\nsalt')))).toEqual(['2 leeks', '1 carrot', 'salt']);
  });

  it('may be a table in two kinds of measures', () => {
    expect(
      listings(
        only(
          around('| Metric | US | Ingredient |\n|---|---|---|\n| 200 g | 1 cup | lentils |\n| | | salt |'),
        ),
      ),
    ).toEqual(['200 g / 1 cup lentils', 'salt']);
  });

  it('leaves a sentence over inner bullets, and takes the bullets', () => {
    const recipe = only(
      around('- 2 leeks\n- Any of the following are good with it if you have them\n  - mustard\n  - capers'),
    );
    expect(listings(recipe)).toEqual(['2 leeks', 'mustard', 'capers']);
  });

  it('is not parted by a comment', () => {
    expect(listings(only(around('- 2 leeks\n<!-- stet a-b: c -->\n- salt')))).toEqual(['2 leeks', 'salt']);
  });
});

describe('a method', () => {
  const around = (method: string): string => `# Soup\n\n## Ingredients\n\n- leeks\n\n## Method\n\n${method}`;

  it('is one step a number, with all its paragraphs', () => {
    expect(steps(only(around('1. Wash.\n\n   Do it well.\n\n2. Stew.\n4. Serve.')))).toEqual([
      '1 Wash.\nDo it well.',
      '2 Stew.',
      '4 Serve.',
    ]);
  });

  it('counts where every number is the same', () => {
    expect(steps(only(around('1. Wash.\n1. Stew.')))).toEqual(['1 Wash.', '2 Stew.']);
  });

  it('may be paragraphs or bullets', () => {
    expect(steps(only(around('Wash the leeks.\n\nThen stew them.')))).toEqual([
      '- Wash the leeks.',
      '- Then stew them.',
    ]);
    expect(steps(only(around('- Wash the leeks.\n- Stew them.')))).toEqual([
      '- Wash the leeks.',
      '- Stew them.',
    ]);
  });

  it('may print its numbers in ways that Markdown does not know', () => {
    expect(steps(only(around('Step 1: Wash the leeks.\n\nStep 2: Stew them.')))).toEqual([
      '1 Step 1: Wash the leeks.',
      '2 Step 2: Stew them.',
    ]);
    expect(steps(only(around('### Step 1\n\nWash the leeks.\n\n### Step 2\n\nStew them.')))).toEqual([
      '1 (Step 1) Wash the leeks.',
      '2 (Step 2) Stew them.',
    ]);
  });

  it('has groups of steps under headings of any kind', () => {
    expect(
      steps(
        only(
          around(
            '### Prepare the leeks\n\n1. Wash.\n\n**For the broth**\n\n1. Stew.\n\nTo serve:\n\n1. Ladle.',
          ),
        ),
      ),
    ).toEqual(['1 (Prepare the leeks) Wash.', '1 (For the broth) Stew.', '1 (To serve:) Ladle.']);
  });

  it('has bullets within a step as steps where they command, else as its end', () => {
    expect(
      steps(
        only(
          around('1. Make the base:\n   - Chop the leeks.\n   - Fry them.\n2. Add\n   - salt\n   - pepper'),
        ),
      ),
    ).toEqual(['1 Make the base:', '- Chop the leeks.', '- Fry them.', '2 Add\nsalt\npepper']);
  });

  it('leaves closing remarks and tips to the notes', () => {
    const recipe = only(
      around('1. Wash.\n2. Stew.\n\n![a bowl](bowl.png)\n\nIt tastes of spring.\n\nTip: buy small leeks.'),
    );
    expect(recipe.steps).toHaveLength(2);
    expect(words(recipe.notes)).toEqual(['It tastes of spring.', 'Tip: buy small leeks.']);
  });

  it('leaves bullets after numbered steps, and bullets that only remark within one', () => {
    const recipe = only(
      around('1. Wash.\n   - It is fine if some sand stays.\n2. Stew.\n\n* Preheat the pot if you like.'),
    );
    expect(steps(recipe)).toEqual(['1 Wash.\nIt is fine if some sand stays.', '2 Stew.']);
    expect(words(recipe.notes)).toEqual(['Preheat the pot if you like.']);
  });

  it('leaves what is labelled to the part of that name', () => {
    const recipe = only(
      around(
        'Wash the leeks.\n\nStew them.\n\n**Storage** — two days in the fridge.\n\n**Cook\u2019s note:** buy small leeks.',
      ),
    );
    expect(recipe.steps).toHaveLength(2);
    expect(words(recipe.storage)).toEqual(['Storage — two days in the fridge.']);
    expect(words(recipe.notes)).toEqual(['Cook\u2019s note: buy small leeks.']);
  });

  it('may follow the list without a heading', () => {
    const recipe = only('# Soup\n\n## Ingredients\n\n- 2 leeks\n- salt\n\n1. Wash the leeks.\n2. Stew them.');
    expect(listings(recipe)).toEqual(['2 leeks', 'salt']);
    expect(steps(recipe)).toEqual(['1 Wash the leeks.', '2 Stew them.']);
  });
});
