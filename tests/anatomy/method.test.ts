/** The method and what stands in it and after it: steps, labels of steps, remarks, and the parts with lists of their own. */
import { describe, expect, it } from 'vitest';
import { components, contents, listings, only, outline, steps, words } from './pages.js';

const list = '# Tacos\n\n## Ingredients\n\n- 2 leeks\n- salt\n\n';
const around = (method: string): string => `${list}## Method\n\n${method}`;
const washed = '1. Wash the leeks.\n2. Stew them.\n\n';

describe('a paragraph under a method heading', () => {
  it.each([
    'Roast in the oven.',
    'Roast uncovered for an hour.',
    'Sprinkle over the salt.',
    'Repeat with the other half.',
    'Bring to the table.',
    'Tent with foil.',
    'Tip the leeks onto a plate.',
    'While still warm brush with oil.',
    'Slacken it for an hour.',
    'The leeks are done when a knife slides in.',
  ])('is a step, whatever its verb: "%s"', (text) => {
    expect(steps(only(around(`Wash the leeks.\n\n${text}`)))).toEqual(['- Wash the leeks.', `- ${text}`]);
  });

  it.each([
    'Note that small leeks taste best.',
    'Tip: buy small ones.',
    'Variation: use onions.',
    'Serving suggestion: toast.',
    'Enjoy!',
    'This is a dish for spring.',
    'Makes four bowls.',
  ])('is a note where it remarks: "%s"', (text) => {
    const recipe = only(around(`Wash the leeks.\n\n${text}`));
    expect(steps(recipe)).toEqual(['- Wash the leeks.']);
    expect(words(recipe.notes)).toEqual([text]);
  });

  it('tells the yield where the page gives it nowhere else', () => {
    const recipe = only(around('Wash the leeks.\n\nMakes 2 quarts.'));
    expect(recipe.yield?.passage.text).toBe('Makes 2 quarts');
  });

  it('is no heading because it is set in italics', () => {
    expect(words(only(around('Wash the leeks.\n\n*Keeps for a week.*')).storage)).toEqual([
      'Keeps for a week.',
    ]);
  });

  it('tells of storage where it says how long the dish keeps', () => {
    const recipe = only(around('Wash the leeks.\n\nKeeps for three days.'));
    expect(steps(recipe)).toEqual(['- Wash the leeks.']);
    expect(words(recipe.storage)).toEqual(['Keeps for three days.']);
  });

  it('is a step where it opens with a remark and goes on with an order', () => {
    expect(steps(only(around('We start with the leeks. Wash them.')))).toEqual([
      '- We start with the leeks. Wash them.',
    ]);
  });
});

describe('a paragraph after numbered steps', () => {
  it.each([
    'Garnish with lemon.',
    'Rub with salt.',
    'Roast until brown.',
    'Taste and adjust.',
    'Check the seasoning.',
  ])('is a step where it gives an order: "%s"', (text) => {
    expect(only(around(washed + text)).steps.at(-1)?.passage.text).toBe(text);
  });

  it.each(['Onion tacos are made by adding onions.', 'The leeks of spring taste best.'])(
    'is a note where it gives none: "%s"',
    (text) => {
      const recipe = only(around(washed + text));
      expect(recipe.steps).toHaveLength(2);
      expect(words(recipe.notes)).toEqual([text]);
    },
  );
});

describe('a name with the word of the title over a few words after the steps', () => {
  it('heads a variation', () => {
    const text =
      '# Pancakes\n\n- 2 eggs\n- 1 cup flour\n\nBeat them. Fry.\n\n## Corn Pancakes\n\nFold in corn.';
    expect(steps(only(text))).toEqual(['- Beat them. Fry.']);
    expect(words(only(text).notes)).toEqual(['Fold in corn.']);
  });
});

describe('the heading of a step', () => {
  it('may be one verb with a colon', () => {
    expect(steps(only(around('Fry:\n\n1. Heat the oil.\n2. Stir.')))).toEqual([
      '1 (Fry:) Heat the oil.',
      '2 (Fry:) Stir.',
    ]);
  });

  it('may have the word of the title', () => {
    const text =
      '# Lemon Cake\n\n- 2 eggs\n- 1 cup flour\n\nBeat the eggs.\n\n## Finishing the Cake\n\nGlaze it.';
    expect(only(text).steps).toHaveLength(2);
  });

  it('is not that of the last listings before it', () => {
    const text = '# Cake\n\n**Cake**\n\n- 2 eggs\n- 100 g flour\n\n**Top**\n\n- 100 g sugar\n- 1 lemon\n\n';
    expect(steps(only(`${text}1. Beat the eggs.\n2. Squeeze the lemon.`))).toEqual([
      '1 Beat the eggs.',
      '2 Squeeze the lemon.',
    ]);
    expect(components(only(`${text}1. Beat the eggs.`))).toEqual([
      'cake: 2 eggs | 100 g flour',
      'top: 100 g sugar | 1 lemon',
    ]);
    expect(steps(only(`${text}---\n\n1. Beat the eggs.`))).toEqual(['1 Beat the eggs.']);
    expect(steps(only(`${text}**Bake**\n\n1. Beat the eggs.`))).toEqual(['1 (Bake) Beat the eggs.']);
  });

  it('may be bold words at its head', () => {
    expect(
      steps(
        only(
          around(
            '1. **Clean the leeks.** Wash them.\n2. **Stew**: cook them in a pot.\n3. __Serve:__ ladle it.',
          ),
        ),
      ),
    ).toEqual(['1 (Clean the leeks) Wash them.', '2 (Stew) cook them in a pot.', '3 (Serve) ladle it.']);
  });

  it('is not made of bold words that the step needs', () => {
    expect(
      steps(
        only(
          around(
            '1. **Wash** the leeks.\n2. **Heat the oven to 200°C.** Grease a tin.\n3. **Rest:** 10 minutes.\n4. **Serve.**',
          ),
        ),
      ),
    ).toEqual([
      '1 Wash the leeks.',
      '2 Heat the oven to 200°C. Grease a tin.',
      '3 Rest: 10 minutes.',
      '4 Serve.',
    ]);
  });
});

describe('boxes to be ticked off', () => {
  it('are no part of a step', () => {
    expect(steps(only(around('- [ ] Wash the leeks.\n- [x] Stew them.')))).toEqual([
      '- Wash the leeks.',
      '- Stew them.',
    ]);
  });
});

describe('a table of steps', () => {
  it.each(['| Step | What to do |', '| # | Directions |', '| Step | Action |'])(
    'has their numbers: "%s"',
    (head) => {
      const table = `${head}\n|---|---|\n| 1 | Wash the leeks. |\n| 2 | Stew them. |`;
      expect(steps(only(around(table)))).toEqual(['1 Wash the leeks.', '2 Stew them.']);
    },
  );

  it('beside the ingredients of each step cannot be told apart', () => {
    const { recipes, unclear } = contents(
      '# Soup\n\n| Ingredients | Method |\n|---|---|\n| 2 leeks<br>1 onion | Wash.<br>Stew. |',
    );
    expect(recipes).toEqual([]);
    expect(unclear).toHaveLength(1);
  });
});

describe('a part with a list of its own after the method', () => {
  const slaw = 'Makes 2 cups\n\n- 2 limes\n- 1 cup cabbage\n\nToss the cabbage.';
  it.each(['### Lime Slaw', '**Lime Slaw**', '## Lime Slaw', '## For the lime slaw'])(
    'is a component with its steps under "%s"',
    (head) => {
      const recipe = only(`${around(washed)}${head}\n\n${slaw}`);
      expect(components(recipe)).toEqual(['-: 2 leeks | salt', 'lime slaw: 2 limes | 1 cup cabbage']);
      expect(recipe.steps.at(-1)?.passage.text).toBe('Toss the cabbage.');
      expect(recipe.steps.at(-1)?.heading?.text).toBe(head.replace(/[#* ]+/, '').replace('**', ''));
      expect(recipe.yield).toBe(null);
    },
  );

  it('is a component of a recipe whose list has headings for its parts only', () => {
    const recipe = only(
      `# Tacos\n\n## For the leeks\n\n- 2 leeks\n- 1 tsp salt\n\n## Method\n\n${washed}## Lime Slaw\n\n${slaw}`,
    );
    expect(recipe.components.map((component) => component.name)).toEqual(['leeks', 'lime slaw']);
    expect(recipe.steps.at(-1)?.heading?.text).toBe('Lime Slaw');
  });

  it('is a recipe under a heading as large as the title', () => {
    expect(outline(`${around(washed)}# Lime Slaw\n\n${slaw}`)).toEqual([
      'Tacos: 2 listed, 2 steps',
      'Lime Slaw: 2 listed, 1 steps',
    ]);
  });

  it('is a component of a recipe without headings where its name is a bold line', () => {
    const recipe = only(`# Tacos\n\n- 2 leeks\n- 1 cup corn\n\nWash the leeks.\n\n**Lime Slaw**\n\n${slaw}`);
    expect(recipe.components.map((component) => component.name)).toEqual([null, 'lime slaw']);
  });
});

describe('a usual heading of the method', () => {
  const heads = [
    'Assembly',
    'To assemble',
    'To cook',
    'To bake',
    'Preparation',
    'Cooking',
    'Baking',
    'Accompaniments',
  ];
  it.each(heads)('heads a component over a list of amounts: "%s"', (head) => {
    const part = `## ${head}\n\n- 200 ml cream\n- 1 cup sugar\n\n`;
    const expected = ['-: 2 leeks | salt', `${head.toLowerCase()}: 200 ml cream | 1 cup sugar`];
    for (const text of [`${list}${part}## Method\n\n${washed}`, `${around(washed)}${part}`]) {
      expect(components(only(text))).toEqual(expected);
      expect(only(text).steps).toHaveLength(2);
    }
  });

  it.each(heads)('heads steps over prose: "%s"', (head) => {
    const recipe = only(`${list}## ${head}\n\nWash the leeks and fry them.`);
    expect(components(recipe)).toEqual(['-: 2 leeks | salt']);
    expect(recipe.steps).toHaveLength(1);
  });
});

describe('lists and steps in turns', () => {
  const part = (head: string, food: string): string =>
    `${head}\n\n- 2 eggs\n- 1 cup ${food}\n\n1. Beat the eggs.\n2. Stir.\n\n`;

  it('are parts of one recipe where the title states the yield', () => {
    const recipe = only(
      `# Layered Trifle\n\nServes 10\n\n${part('## Custard', 'milk')}${part('## Cake', 'flour')}`,
    );
    expect(recipe.title?.text).toBe('Layered Trifle');
    expect(recipe.yield?.passage.text).toBe('Serves 10');
    expect(components(recipe)).toEqual(['custard: 2 eggs | 1 cup milk', 'cake: 2 eggs | 1 cup flour']);
    expect(steps(recipe)).toEqual([
      '1 (Custard) Beat the eggs.',
      '2 (Custard) Stir.',
      '1 (Cake) Beat the eggs.',
      '2 (Cake) Stir.',
    ]);
  });

  it('are parts of one recipe where all their names are those of parts', () => {
    const text = `# Layered Trifle\n\nFor Sundays.\n\n${part('## Lemon Custard', 'milk')}${part('## Cake', 'flour')}`;
    expect(outline(text)).toEqual(['Layered Trifle: 4 listed, 4 steps']);
  });

  it('are parts of one recipe with headings of their own as well', () => {
    const headed = (head: string): string =>
      `## ${head}\n\n### Ingredients\n\n- 2 eggs\n\n### Method\n\n1. Beat the eggs.\n\n`;
    expect(outline(`# Trifle\n\nServes 10\n\n${headed('Custard')}${headed('Cake')}`)).toEqual([
      'Trifle: 2 listed, 2 steps',
    ]);
    expect(outline(`# Eggs\n\nServes 4\n\n${headed('Omelette')}${headed('Pancakes')}`)).toHaveLength(2);
  });

  it('are recipes of a chapter where their names are those of dishes, with yields or without', () => {
    const leek = [
      'Leek Soup: 2 listed, 2 steps',
      'Pea Soup: 2 listed, 2 steps',
      'Bean Pot: 2 listed, 2 steps',
    ];
    const chapter = (under: string): string =>
      `# Soups\n\nSoup is warm.\n\n${['Leek Soup', 'Pea Soup', 'Bean Pot'].map((name) => part(`## ${name}${under}`, 'milk')).join('')}`;
    expect(outline(chapter(''))).toEqual(leek);
    expect(outline(chapter('\n\nServes 4'))).toEqual(leek);
  });

  it('are recipes where their names are kinds of the same part, or state yields', () => {
    expect(
      outline(`# Sauces\n\nFor fish.\n\n${part('## Mint Sauce', 'mint')}${part('## Bread Sauce', 'milk')}`),
    ).toHaveLength(2);
    expect(
      outline(
        `# Basics\n\n${part('## Custard\n\nMakes 2 cups', 'milk')}${part('## Cake\n\nServes 8', 'flour')}`,
      ),
    ).toHaveLength(2);
  });

  it('may be led by orders alone', () => {
    const recipe = only(
      '# Bars\n\nMelt over low heat:\n\n- 100 g butter\n- 100 g sugar\n\nAdd:\n\n- 2 eggs\n- 1 cup flour\n\nBake for an hour.',
    );
    expect(listings(recipe)).toEqual(['100 g butter', '100 g sugar', '2 eggs', '1 cup flour']);
    expect(steps(recipe)).toEqual(['- Melt over low heat:', '- Add:', '- Bake for an hour.']);
  });
});

describe('a method without a heading', () => {
  const bare = '# Tacos\n\nServes 4\n\n- 2 leeks, sliced\n- 1 tablespoon oil\n- 1 teaspoon salt\n\n';

  it('keeps a paragraph whose verb is no cook’s, and lets go of a remark', () => {
    const recipe = only(
      `${bare}Wash the leeks.\n\nGet the pan hot.\n\nFry the leeks in the oil.\n\nStack the lot.\n\nThis keeps for two days.\n`,
    );
    expect(steps(recipe)).toEqual([
      '- Wash the leeks.',
      '- Get the pan hot.',
      '- Fry the leeks in the oil.',
      '- Stack the lot.',
    ]);
    expect(words(recipe.notes)).toEqual(['This keeps for two days.']);
  });

  it('is a numbered list of sentences, whatever their verbs', () => {
    const recipe = only(
      `${bare}1. Get the oven hot.\n2. Slash the leeks.\n3. Stack the lot.\n4. Bake until soft.\n`,
    );
    expect(steps(recipe).length).toBe(4);
    expect(listings(recipe).length).toBe(3);
  });

  it('does not take a tip among the steps for one', () => {
    const recipe = only(`${bare}Wash the leeks.\n\nTip: a sharp knife helps.\n\nFry the leeks in the oil.\n`);
    expect(steps(recipe)).toEqual(['- Wash the leeks.', '- Fry the leeks in the oil.']);
  });
});
