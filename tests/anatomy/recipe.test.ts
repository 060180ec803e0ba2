/** A recipe on a page of its own: where its parts are, whatever way its author set them out. */
import { describe, expect, it } from 'vitest';
import { contents, listings, only, outline, steps, words } from './pages.js';

describe('a recipe with usual headings', () => {
  const text = `# Charred Leek Broth

A broth for cold evenings. Serves 4.

## Ingredients

- 3 leeks
- 1 litre water
- salt

## Method

1. Char the leeks.
2. Simmer them in the water for 20 minutes.

## Notes

Good with toast.

## Storage

Keeps for three days.
`;

  it('has title, headnote, list, method, notes and storage in their places', () => {
    const recipe = only(text);
    expect(recipe.title?.text).toBe('Charred Leek Broth');
    expect(words(recipe.headnote)).toEqual(['A broth for cold evenings. Serves 4.']);
    expect(recipe.yield?.passage.text).toBe('Serves 4');
    expect(listings(recipe)).toEqual(['3 leeks', '1 litre water', 'salt']);
    expect(steps(recipe)).toEqual(['1 Char the leeks.', '2 Simmer them in the water for 20 minutes.']);
    expect(words(recipe.notes)).toEqual(['Good with toast.']);
    expect(words(recipe.storage)).toEqual(['Keeps for three days.']);
  });

  it('reaches from its title to its last block', () => {
    const { span } = only(`Intro to the file.\n\n${text}`);
    const whole = `Intro to the file.\n\n${text}`;
    expect(whole.slice(span.start, span.end)).toBe(text.trimEnd());
  });

  it('has every listing where the source has it, with Windows line ends and a byte-order mark too', () => {
    for (const variant of [text, `\uFEFF${text.replaceAll('\n', '\r\n')}`]) {
      for (const { passage } of only(variant).listings) {
        const span = passage.span();
        expect(variant.slice(span.start, span.end)).toBe(passage.text);
      }
    }
  });
});

describe('usual headings', () => {
  it.each([
    ['What you need', 'How to make it'],
    ["You'll need", 'Directions'],
    ['INGREDIENTS', 'PREPARATION'],
    ['🛒 Ingredients', '👩‍🍳 Instructions'],
    ['Ingredients (serves 4)', 'Steps'],
    ['Ingredients:', 'Method:'],
    ['1. Ingredients', '2. Method'],
  ])('may be "%s" and "%s"', (list, method) => {
    expect(outline(`# Soup\n\n## ${list}\n\n- leeks\n- salt\n\n## ${method}\n\nStew it all.`)).toEqual([
      'Soup: 2 listed, 1 steps',
    ]);
  });

  it.each([
    ['**Ingredients**', '**Method**'],
    ['Ingredients:', 'Method:'],
    ['INGREDIENTS', 'METHOD'],
    ['**Ingredients:**', '**Directions:**'],
    ['Ingredients', 'Method'],
    ['*What you need*', '*What to do*'],
  ])('may be lines that only look like headings: "%s"', (list, method) => {
    expect(
      outline(`# Soup\n\n${list}\n\n- leeks\n- salt\n\n${method}\n\n1. Stew it all.\n2. Serve.`),
    ).toEqual(['Soup: 2 listed, 2 steps']);
  });

  it('may stand in one paragraph with what they head', () => {
    const recipe = only(
      '# Soup\n\nServes 4\nIngredients:\n2 leeks\n1 pinch salt\n\nMethod:\nStew the leeks.\n',
    );
    expect(listings(recipe)).toEqual(['2 leeks', '1 pinch salt']);
    expect(steps(recipe)).toEqual(['- Stew the leeks.']);
    expect(recipe.yield?.passage.text).toBe('Serves 4');
  });

  it('may be bullets over bullets', () => {
    const recipe = only(
      '# Soup\n\n- Ingredients\n  - 2 leeks\n  - salt\n- Method\n  - Wash the leeks.\n  - Stew them.',
    );
    expect(listings(recipe)).toEqual(['2 leeks', 'salt']);
    expect(steps(recipe)).toEqual(['- Wash the leeks.', '- Stew them.']);
  });

  it('may be set under any depth, also beside the title', () => {
    expect(outline('## Soup\n\n## Ingredients\n\n- leeks\n\n## Method\n\nStew.')).toEqual([
      'Soup: 1 listed, 1 steps',
    ]);
  });
});

describe('a recipe without headings', () => {
  it('is told by amounts and by commands', () => {
    const recipe = only(
      '# Pea Soup\n\nMy aunt made it in spring.\n\n- 500 g peas\n- 1 onion\n- salt\n\nMelt the onion in butter.\n\nAdd the peas and boil them.\n\nWe ate it on the porch.',
    );
    expect(listings(recipe)).toEqual(['500 g peas', '1 onion', 'salt']);
    expect(words(recipe.headnote)).toEqual(['My aunt made it in spring.']);
    expect(steps(recipe)).toEqual(['- Melt the onion in butter.', '- Add the peas and boil them.']);
    expect(words(recipe.notes)).toEqual(['We ate it on the porch.']);
  });

  it('may have its listings one a line with breaks', () => {
    const recipe = only(
      '# Pea Soup\n\n500 g peas  \n1 onion  \n2 tablespoons oil\n\n1. Fry the onion.\n2. Add the peas.',
    );
    expect(listings(recipe)).toEqual(['500 g peas', '1 onion', '2 tablespoons oil']);
    expect(steps(recipe)).toEqual(['1 Fry the onion.', '2 Add the peas.']);
  });

  it('may number its listings', () => {
    const recipe = only(
      '# Pea Soup\n\n1. 500 g peas\n2. 1 onion\n3. 2 eggs\n\n## Method\n\n1. Fry the onion.\n2. Add the peas.',
    );
    expect(listings(recipe)).toEqual(['500 g peas', '1 onion', '2 eggs']);
  });

  it('may lack amounts where numbered steps follow', () => {
    expect(
      outline(
        '# Salad\n\n- lettuce\n- tomatoes\n- olive oil\n\n1. Wash the lettuce.\n2. Slice the tomatoes.',
      ),
    ).toEqual(['Salad: 3 listed, 2 steps']);
  });

  it('may have a title that is only its first line', () => {
    const recipe = only('Pea Soup\n\n- 500 g peas\n- 1 onion\n\nFry the onion. Add the peas.');
    expect(recipe.title?.text).toBe('Pea Soup');
  });

  it('may have no method yet', () => {
    expect(outline('# Spice Mix\n\n- 2 tsp cumin\n- 1 tsp salt\n- 3 tsp paprika')).toEqual([
      'Spice Mix: 3 listed, 0 steps',
    ]);
  });
});

describe('titles', () => {
  const rest = '\n## Ingredients\n\n- leeks\n\n## Method\n\nStew.';
  it('come from the front matter where no heading gives one', () => {
    const text = `---\ntitle: "Leek Broth"\n---\n${rest}`;
    const recipe = only(text);
    expect(recipe.title?.text).toBe('Leek Broth');
    expect(recipe.span).toEqual({ start: 0, end: text.length });
  });

  it('come from the heading where both give one', () => {
    expect(outline(`---\ntitle: leeks\n---\n\n# Leek Broth\n${rest}`)).toEqual([
      'Leek Broth: 1 listed, 1 steps',
    ]);
  });

  it('are not a heading over the headnote', () => {
    expect(outline(`# Leek Broth\n\n## My grandmother's garden\n\nLeeks grew there.\n${rest}`)).toEqual([
      'Leek Broth: 1 listed, 1 steps',
    ]);
    expect(outline(`---\ntitle: Leek Broth\n---\n\n## Her garden\n\nLeeks grew there.\n${rest}`)).toEqual([
      'Leek Broth: 1 listed, 1 steps',
    ]);
  });

  it('may have the word recipe before them', () => {
    expect(outline(`# Recipe: Rye Crackers (v2)\n${rest}`)).toEqual(['Rye Crackers (v2): 1 listed, 1 steps']);
  });

  it('may be missing', () => {
    expect(only(rest).title).toBe(null);
  });
});

describe('a page with usual headings but empty parts', () => {
  it('is a recipe all the same', () => {
    expect(outline('# Soup\n\n## Ingredients\n\n## Method\n\n1. Stew.')).toEqual(['Soup: 0 listed, 1 steps']);
    expect(outline('# Soup\n\n## Ingredients\n\n- leeks\n\n## Method\n')).toEqual([
      'Soup: 1 listed, 0 steps',
    ]);
    expect(outline('# Soup\n\n## Ingredients\n\n- leeks')).toEqual(['Soup: 1 listed, 0 steps']);
    expect(outline('# Soup\n\n## Method\n\n1. Stew the leeks.')).toEqual(['Soup: 0 listed, 1 steps']);
  });
});

describe('a recipe that cannot be told apart', () => {
  it('is said once', () => {
    const text =
      '# Pancakes\n\nTake 2 cups flour, 3 eggs and 1 cup milk. Beat it well, then fry it in 1 tablespoon butter.';
    const { recipes, unclear } = contents(text);
    expect(recipes).toEqual([]);
    expect(unclear).toHaveLength(1);
  });

  it('is said for the one part of a book that it is', () => {
    const { recipes, unclear } = contents(
      '**Egg Noodles**\n\n3 eggs, 300 g flour, salt.\n\nKnead the eggs into the flour. Roll it thin.\n\n**Leek Soup**\n\n- 2 leeks\n- 1 onion\n\nStew the leeks.',
    );
    expect(recipes.map((recipe) => recipe.title?.text)).toEqual(['Leek Soup']);
    expect(unclear.map(({ span }) => span.start)).toEqual([0]);
  });

  it('may mingle its list with its steps', () => {
    const { recipes, unclear } = contents(
      '# Pancakes\n\n- 2 eggs\n- beat them well\n- 1 cup flour\n- stir it in\n- 1 cup milk\n- whisk again',
    );
    expect(recipes).toEqual([]);
    expect(unclear).toHaveLength(1);
  });
});
