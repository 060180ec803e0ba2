/** Marks every recipe that puts food up in jars to keep on the shelf: no process is passed as safe. */
import { type Canning, canningOf } from '../../src/kitchen/preserving.js';
import type { RecipeRule } from '../rule.js';

export const canningUntested: RecipeRule = {
  scope: 'recipe',
  name: 'canning-untested',
  topic: 'safety',
  weight: 'query',
  summary: 'Food is canned at home: the process cannot be taken as tested, and is never passed as safe.',
  why: 'Only a tested process, for this food, this jar and this altitude, is known to stop botulism.',
  sources: ['USDA Complete Guide to Home Canning, 2015'],
  beyond:
    'Whether a process is right: none is ever passed as safe; jams, pickles and ferments that are kept in the refrigerator; dry goods in jars.',
  examples: [
    {
      title: 'tomatoes in a water bath',
      text: '# Winter Tomatoes\n\nMakes 4 pints\n\n- 4 pounds tomatoes, peeled\n- 4 teaspoons lemon juice\n\n1. Simmer the tomatoes until hot, 5 minutes. Ladle them into jars with the lemon juice.\n2. Process the jars in boiling water for 20 minutes.\n',
      marks: ['Process the jars'],
    },
    {
      title: 'jars turned upside down',
      text: '# Pear Jam\n\nMakes 4 cups\n\n- 2 pounds pears, peeled\n- 3 cups sugar\n\n1. Simmer the pears with the sugar until thick, 40 minutes.\n2. Fill into sterilized jars, close, and turn upside down to seal.\n',
      marks: ['upside down'],
    },
    {
      title: 'sealed jars in the pantry',
      text: '# Lock Chutney\n\nMakes 4 cups\n\n- 2 pounds apples, peeled\n- 2 cups cider vinegar\n- 1 cup sugar\n\n1. Simmer the apples with the vinegar and sugar until thick, 1 hour.\n2. Seal in sterilized jars, and store in a cool, dark place.\n',
      marks: ['cool, dark place'],
    },
    {
      title: 'jam for the refrigerator',
      text: '# Pear Jam\n\nMakes 3 cups\n\n- 2 pounds pears, peeled\n- 1 cup sugar\n\n1. Simmer the pears with the sugar until thick, 40 minutes.\n2. Cool, and keep in a jar in the refrigerator for up to 2 weeks.\n',
      marks: [],
    },
    {
      title: 'a water bath for custards, and spices in a jar',
      text: '# Dusk Custards\n\nServes 4\n\n- 2 cups milk\n- 4 eggs\n- 1 teaspoon ground cinnamon\n\n1. Whisk the milk with the eggs and cinnamon.\n2. Bake in a water bath at 325°F until just set, 35 minutes. Dust with more cinnamon from the jar.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const canning = canningOf(dish);
    if (canning === null) return;
    yield {
      span: canning.passage.span(canning.start, canning.end),
      subject: 'canning',
      weight: canning.way === 'open' ? 'fault' : canning.tested ? 'note' : 'query',
      message: messageOf(canning),
      advice: adviceOf(canning),
    };
  },
};

function messageOf({ way, passage, start, end }: Canning): string {
  const words = passage.text.slice(start, end);
  if (way === 'open') return `"${words}": jars that are closed in this way are not safely sealed.`;
  return way === 'process'
    ? `"${words}": food is canned at home, and the process cannot be checked here.`
    : `"${words}": the jars are sealed to keep, and no canning process is given.`;
}

function adviceOf({ lowAcid, tested }: Canning): string {
  if (tested) return 'Check the process against the current guide, and print the altitudes it holds for.';
  return lowAcid
    ? 'Name the tested process that it follows, with its altitudes (foods low in acid need a pressure canner), or keep the jars in the refrigerator.'
    : 'Name the tested process that it follows, with its altitudes, or keep the jars in the refrigerator.';
}
