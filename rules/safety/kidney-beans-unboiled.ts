/** Marks dried kidney beans that are not boiled hard before they cook slowly. */
import { type Beans, unboiledKidneyBeans } from '../../src/kitchen/beans.js';
import type { RecipeRule } from '../rule.js';

export const kidneyBeansUnboiled: RecipeRule = {
  scope: 'recipe',
  name: 'kidney-beans-unboiled',
  topic: 'safety',
  weight: 'fault',
  summary: 'Dried kidney beans are not soaked, drained and boiled hard for 10 minutes.',
  why: 'Raw kidney beans hold a toxin that a hard boil destroys; a slow cooker does not, and may make them worse.',
  sources: [
    'FDA Bad Bug Book, 2nd ed., phytohaemagglutinin: soaked 5 hours, the water thrown away, boiled at least 10 minutes (30 advised)',
  ],
  beyond:
    'Beans of which the list says neither dried nor canned and that are not soaked; other kinds of beans, which hold less of the toxin; whether the pot really boils.',
  examples: [
    {
      title: 'dried kidney beans in a slow cooker',
      text: '# Night Watch Chili\n\nServes 4\n\n- 2 cups dried kidney beans\n- 1 onion, chopped\n- 5 cups water\n\n1. Soak the beans overnight, and drain.\n2. Put the beans, onion and water into a slow cooker, and cook on low until tender, 8 hours.\n',
      marks: ['beans'],
    },
    {
      title: 'a boil that is too short',
      text: '# Night Watch Chili\n\nServes 4\n\n- 2 cups dried red kidney beans\n- 5 cups water\n\n1. Soak the beans overnight, and drain. Boil them for 5 minutes, until wrinkled.\n2. Cook the beans in the water in a slow cooker on low until tender, 8 hours.\n',
      marks: ['beans'],
    },
    {
      title: 'beans boiled in the water they soaked in',
      text: '# Watch Beans\n\nServes 4\n\n- 2 cups dried red kidney beans\n- 6 cups water\n\n1. Soak the beans in the water overnight.\n2. Boil them in the same pot for 30 minutes, and simmer until tender, 1 hour.\n',
      marks: ['beans'],
    },
    {
      title: 'beans that are soaked, drained and boiled',
      text: '# Night Watch Chili\n\nServes 4\n\n- 2 cups dried kidney beans\n- 5 cups water\n\n1. Soak the beans overnight, and drain. Boil them hard for 30 minutes, until they begin to soften.\n2. Cook the beans in the water in a slow cooker on low until tender, 8 hours.\n',
      marks: [],
    },
    {
      title: 'canned kidney beans',
      text: '# Night Watch Chili\n\nServes 4\n\n- 2 cans (15 ounces each) kidney beans, drained\n- 1 onion, chopped\n- 2 cups water\n\n1. Cook the beans, onion and water in a slow cooker on low until soft, 4 hours.\n',
      marks: [],
    },
    {
      title: 'beans boiled on the stove',
      text: '# Watch Beans\n\nServes 4\n\n- 2 cups dried red kidney beans\n- 6 cups water\n\n1. Soak the beans overnight, and drain them.\n2. Cover them with the water, bring to a boil, and boil for 15 minutes, until they begin to soften. Simmer until tender, 1 hour.\n',
      marks: [],
    },
  ],
  *look(dish) {
    const beans = unboiledKidneyBeans(dish);
    if (beans === null) return;
    const use = dish.uses[beans.listing.index]!.find(({ group }) => !group);
    yield {
      span:
        use === undefined
          ? beans.listing.passage.span()
          : dish.recipe.steps[use.step]!.passage.span(use.start, use.end),
      subject: beans.listing.line.foods[0]!.name,
      weight: beans.slow && beans.lacks === 'boil' ? 'fault' : 'query',
      message: messageOf(beans),
      advice:
        'Have them soaked at least 5 hours, the water thrown away, and boiled hard in fresh water for at least 10 minutes (30 are advised).',
    };
  },
};

function messageOf({ lacks, slow }: Beans): string {
  if (lacks === 'drain') return 'The dried kidney beans are soaked, and the water is not thrown away.';
  return slow
    ? 'The dried kidney beans go into the slow cooker without a hard boil of 10 minutes.'
    : 'The method does not say that the dried kidney beans boil hard for 10 minutes.';
}
