/** Pages with several recipes, or with none. */
import { describe, expect, it } from 'vitest';
import { contents, only, outline } from './pages.js';

const soup = (depth: string): string =>
  `${depth} Leek Broth\n\nA broth.\n\n${depth}# Ingredients\n\n- 3 leeks\n- salt\n\n${depth}# Method\n\n1. Stew.\n`;
const pie = (depth: string): string =>
  `${depth} Apple Pie\n\n${depth}# Ingredients\n\n- 3 apples\n\n${depth}# Method\n\n1. Peel.\n2. Bake.\n`;
const both = ['Leek Broth: 2 listed, 1 steps', 'Apple Pie: 1 listed, 2 steps'];

describe('several recipes in a file', () => {
  it('are each named by their own heading', () => {
    expect(outline(`${soup('#')}\n${pie('#')}`)).toEqual(both);
    expect(outline(`---\ntitle: Our Book\n---\n\n${soup('##')}\n${pie('##')}`)).toEqual(both);
  });

  it('are found below chapters, past introductions and essays', () => {
    const text = `# Our Kitchen\n\nHello.\n\n# Introduction\n\nWe cook.\n\n- often\n- gladly\n\n# Soups\n\nSoups are warm.\n\n${soup('##')}\n## On stock\n\nBones make it.\n\n# Pies\n\n${pie('##')}\n# Glossary\n\n- Blanch: to boil briefly.\n- Fold: to mix gently.\n`;
    expect(outline(text)).toEqual(both);
    const end = contents(text).recipes[0]!.span.end;
    expect(text.slice(0, end).endsWith('1. Stew.')).toBe(true);
  });

  it('may have all their headings at one depth', () => {
    const flat = (title: string): string =>
      `## ${title}\n\n## Ingredients\n\n- 3 leeks\n\n## Method\n\n1. Stew.\n\n`;
    expect(outline(`# Soups\n\n${flat('One')}${flat('Two')}`)).toEqual([
      'One: 1 listed, 1 steps',
      'Two: 1 listed, 1 steps',
    ]);
    expect(outline(`${flat('One')}${flat('Two')}`)).toEqual([
      'One: 1 listed, 1 steps',
      'Two: 1 listed, 1 steps',
    ]);
  });

  it('may have bold lines for titles', () => {
    const bold = (title: string): string =>
      `**${title}**\n\n**Ingredients**\n\n- 3 leeks\n\n**Method**\n\n1. Stew.\n\n`;
    expect(outline(`# Soups\n\n${bold('One')}${bold('Two')}`)).toEqual([
      'One: 1 listed, 1 steps',
      'Two: 1 listed, 1 steps',
    ]);
    const plain = (title: string): string =>
      `**${title}**\n\nServes 4\n\n- 3 leeks\n- 2 carrots\n\n1. Wash the leeks.\n2. Stew them.\n\n`;
    expect(outline(`# Soups\n\n${plain('One')}${plain('Two')}`)).toEqual([
      'One: 2 listed, 2 steps',
      'Two: 2 listed, 2 steps',
    ]);
  });

  it('may have headings over their parts that are larger than their titles', () => {
    const odd = (title: string): string =>
      `**${title}**\n\n## Ingredients\n\n- 3 leeks\n\n## Method\n\n1. Stew.\n\n`;
    expect(outline(`${odd('One')}${odd('Two')}`)).toEqual([
      'One: 1 listed, 1 steps',
      'Two: 1 listed, 1 steps',
    ]);
  });

  it('may be parted by rules alone', () => {
    const bare = (title: string): string =>
      `${title}\n\n- 500 g peas\n- 1 onion\n\nFry the onion. Add the peas.\n\n`;
    expect(outline(`${bare('Pea Soup')}***\n\n${bare('Pea Stew')}`)).toEqual([
      'Pea Soup: 2 listed, 1 steps',
      'Pea Stew: 2 listed, 1 steps',
    ]);
  });

  it('may have no headings over their parts', () => {
    const bare = (title: string): string =>
      `## ${title}\n\nA dish.\n\n- 500 g peas\n- 1 onion\n\nFry the onion.\n\nAdd the peas.\n\n`;
    expect(outline(`# Peas\n\nWe grow them.\n\n${bare('Soup')}${bare('Stew')}`)).toEqual([
      'Soup: 2 listed, 2 steps',
      'Stew: 2 listed, 2 steps',
    ]);
  });

  it('may lack a part without taking that of another', () => {
    expect(
      outline(`# Book\n\n${soup('##')}\n## Salt Mix\n\n### Ingredients\n\n- salt\n\n${pie('##')}`),
    ).toEqual([both[0], 'Salt Mix: 1 listed, 0 steps', both[1]]);
  });

  it('may use words for their steps that we do not know', () => {
    expect(
      outline(
        '# Sauces\n\n## Vinaigrette\n\n- 3 tbsp oil\n- 1 tbsp vinegar\n\nJiggle all of it in a jar.\n\n## Mayonnaise\n\n- 1 egg yolk\n- 1 cup oil\n\nWhisk the oil into the yolk.',
      ),
    ).toEqual(['Vinaigrette: 2 listed, 1 steps', 'Mayonnaise: 2 listed, 1 steps']);
  });

  it('may be one inside the file of another', () => {
    expect(
      outline(`# Noodles\n\n## Ingredients\n\n- noodles\n\n## Method\n\n1. Boil.\n\n${pie('##')}`),
    ).toEqual(['Noodles: 1 listed, 1 steps', both[1]]);
  });
});

describe('a rule inside a recipe', () => {
  it('parts nothing', () => {
    expect(
      outline('# Soup\n\nA soup.\n\n---\n\n## Ingredients\n\n- leeks\n\n---\n\n## Method\n\n1. Stew.'),
    ).toEqual(['Soup: 1 listed, 1 steps']);
    expect(outline('# Soup\n\n- 3 leeks\n- 2 carrots\n\n---\n\n1. Wash the leeks.\n2. Stew.')).toEqual([
      'Soup: 2 listed, 2 steps',
    ]);
  });
});

describe('what is no recipe', () => {
  it.each([
    ['an empty file', ''],
    [
      'an introduction',
      '# Introduction\n\nThis book began in a small kitchen. We measure with spoons. Serve what you like.',
    ],
    [
      'a glossary',
      '# Glossary\n\n- **Blanch**: boil briefly, then cool.\n- **Fold**: mix gently with a spoon.\n- **Sear**: brown in a hot pan.',
    ],
    [
      'an essay with lists',
      '# On bread\n\nGood bread needs four things:\n\n- flour\n- water\n- salt\n- time\n\nKnead with patience, and let it rest.',
    ],
    [
      'shopping advice',
      '# Shopping\n\n- Buy 2 kg of flour at a time.\n- Look for 70% chocolate.\n- Keep 12 eggs in the house.\n\nStore it all in a cool place.',
    ],
    [
      'shopping advice under a title of its own',
      '# What we keep at home\n\n- Buy flour in small bags.\n- Choose firm lemons.\n- Taste the olive oil.\n',
    ],
    [
      'a table of equivalents',
      '# Weights\n\n| Cups | Grams |\n|---|---|\n| 1 cup flour | 120 g |\n| 1 cup sugar | 200 g |\n| 1 cup butter | 225 g |\n\nSpoon the flour into the cup and level it.',
    ],
    [
      'a list of equivalents',
      '# Measures\n\n- 1 cup = 240 ml\n- 1 tablespoon = 15 ml\n- 1 teaspoon = 5 ml\n',
    ],
    ['a menu', '# A spring dinner\n\n- Leek broth\n- Roast chicken with lemon\n- Apple pie\n'],
    ['a menu with counts', '# A feast\n\n- 1 leek tart\n- 2 salads\n- 12 bread rolls\n'],
    [
      'a table of contents',
      '# Contents\n\n1. [Soups](soups.md)\n2. [Pies](pies.md)\n3. [Breads](breads.md)\n',
    ],
    [
      'a list of tools',
      '# Your kitchen\n\n- 2 sharp knives\n- 1 large pan\n- A whisk\n\nKeep the knives sharp.',
    ],
  ])('is passed over: %s', (_what, text) => {
    expect(contents(text)).toEqual({ recipes: [], unclear: [] });
  });
});

describe('any string', () => {
  it('has contents', () => {
    for (const text of [
      '#',
      '---',
      '-',
      '1.',
      '**',
      '|',
      '|-|\n',
      '# \n\n## Ingredients',
      '- \n- \n',
      '> # Soup\n> ## Ingredients\n> - leeks',
    ]) {
      expect(() => contents(text)).not.toThrow();
    }
    expect(only('> # Soup\n>\n> ## Ingredients\n>\n> - leeks').title?.text).toBe('Soup');
  });
});
