/** Plants one hazard of the kitchen in a copy of a recipe, reads both, and counts the plants that the right rule marks. */
import type { Listing } from '../../src/anatomy/types.js';
import { isRawAnimal } from '../../src/kitchen/bought.js';
import type { Dish, Mention } from '../../src/kitchen/types.js';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';
import type { PlantCount } from './plants.js';

/** Edits of a text: each puts words at an offset, in place of what stands up to `end`. */
interface Change {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** The changes that plant a hazard in one of its wordings; null where the recipe cannot bear it. */
type Planter = (dish: Dish, wording: string, file: SourceFile) => readonly Change[] | null;

interface Hazard {
  readonly rule: string;
  readonly wordings: readonly string[];
  readonly plant: Planter;
}

/** A raw animal food of the list that the method names by itself. */
function animalUse(dish: Dish, poultry = false): { listing: Listing; use: Mention } | null {
  for (const { listing, food, safety } of dish.rawFoods) {
    if (!isRawAnimal(food) || safety === 'ham' || (poultry && safety !== 'poultry')) continue;
    if (!poultry && (safety === 'fish' || safety === 'shellfish')) continue;
    const use = dish.uses[listing.index]!.find(
      (each) => !each.group && each.food !== null && isRawAnimal(each.food),
    );
    if (use !== undefined) return { listing, use };
  }
  return null;
}

/** Before the step that first uses the raw food, a sentence about it: "X" stands for its name. */
const beforeAnimal =
  (poultry = false): Planter =>
  (dish, wording) => {
    const found = animalUse(dish, poultry);
    if (found === null) return null;
    const { start } = dish.recipe.steps[found.use.step]!.passage.span();
    return [{ start, end: start, text: `${wording.replaceAll('X', found.use.text.toLowerCase())} ` }];
  };

/** At the end of the method, a sentence. */
function atEnd(dish: Dish, text: string): Change | null {
  const last = dish.recipe.steps.at(-1);
  if (last === undefined) return null;
  const { end } = last.passage.span();
  const stop = /[.!?]$/.test(last.passage.text.trimEnd()) ? '' : '.';
  return { start: end, end, text: `${stop} ${text}` };
}

/** A new line under the last listing, bulleted like it. */
function newListing(dish: Dish, file: SourceFile, text: string): Change | null {
  const last = dish.recipe.listings.at(-1);
  if (last === undefined) return null;
  const { start, end } = last.passage.span();
  const line = file.text.lastIndexOf('\n', start) + 1;
  const bullet = /^\s*(?:[-*+]|\d+\.)\s+$/.exec(file.text.slice(line, start))?.[0];
  return bullet === undefined ? null : { start: end, end, text: `\n${bullet}${text}` };
}

/** A wording "listing | sentence": both are added, where the list has nothing of the kind yet. */
const withListing =
  (clash: RegExp): Planter =>
  (dish, wording, file) => {
    if (dish.recipe.listings.some(({ passage }) => clash.test(passage.text))) return null;
    const [listing, sentence] = wording.split(' | ');
    const line = newListing(dish, file, listing!);
    const end = atEnd(dish, sentence!);
    return line === null || end === null ? null : [line, end];
  };

/** Whether a step gives a time, which a wait planted beside it would borrow. */
function isTimed(dish: Dish, step: number): boolean {
  return dish.steps[step]?.items.some(({ kind }) => kind === 'duration') ?? false;
}

const endOnly: Planter = (dish, wording) => {
  const change = atEnd(dish, wording);
  return change === null ? null : [change];
};

const hazards: readonly Hazard[] = [
  {
    rule: 'thaw-unsafe',
    wordings: [
      'Thaw the X on the kitchen counter overnight.',
      'Leave the frozen X out at room temperature until thawed.',
      'Defrost the X in a bowl of warm water.',
      'Let the X sit in the sink until it has fully defrosted.',
      'In the morning, set it on the counter so that it thaws by dinner.',
    ],
    plant: beforeAnimal(),
  },
  {
    rule: 'danger-zone-hold',
    wordings: [
      'Let the X stand at room temperature for 3 hours.',
      'Season the X and leave it on the counter overnight.',
      'Cover the X and let it sit out for five hours.',
      'Marinate the X at room temperature for 4 to 6 hours.',
      'Keep the X in a warm place all day.',
    ],
    plant: beforeAnimal(),
  },
  {
    rule: 'danger-zone-hold',
    wordings: [
      'Stuff the X the night before, and refrigerate it until you are ready to roast.',
      'The evening before, fill the cavity of the X with the stuffing.',
    ],
    plant: beforeAnimal(true),
  },
  {
    rule: 'danger-zone-hold',
    wordings: [
      '2 cups rice | Boil the rice until tender. Leave the cooked rice at room temperature overnight before you serve it.',
      '1 cup rice | Simmer the rice until soft, 18 minutes. Let the rice stand on the counter for 5 hours.',
    ],
    plant: withListing(/\brice\b/i),
  },
  {
    rule: 'partial-cooking-held',
    wordings: [
      'Brown the X on all sides over high heat, then refrigerate it until the next day.',
      'The day before, sear the X quickly and keep it in the fridge overnight.',
      'Partially cook the X, let it cool, and refrigerate for up to 2 days; finish it when the guests arrive.',
      'Half-cook the X. Chill overnight.',
    ],
    plant: beforeAnimal(),
  },
  {
    rule: 'slow-cooker-frozen',
    wordings: [
      'Put the frozen X into the slow cooker.',
      'Place the X, still frozen, in a slow cooker and set it to low.',
      'Add the X to the crockpot straight from the freezer.',
    ],
    plant: (dish, wording, file) => {
      const before = beforeAnimal()(dish, wording, file);
      return dish.recipe.steps.some(({ passage }) => /thaw|defrost/i.test(passage.text)) ? null : before;
    },
  },
  {
    rule: 'slow-cooker-frozen',
    wordings: [
      'Transfer everything to a slow cooker, and cook on low until tender, 8 hours.',
      'Cook in the slow cooker on high until done, 4 hours.',
    ],
    plant: (dish, wording) => {
      const found = animalUse(dish);
      const food = found?.listing.line.foods[0];
      const end = atEnd(dish, wording);
      if (found === null || food === undefined || end === null) return null;
      const { start } = found.listing.passage.span(food.start, food.end);
      return [{ start, end: start, text: 'frozen ' }, end];
    },
  },
  {
    rule: 'raw-egg-served',
    wordings: [
      '2 egg yolks | For the aioli, whisk the egg yolks with a little oil until thick, and serve alongside.',
      '1 egg | Make a mayonnaise with the egg, and serve it on top.',
      '3 egg whites | Whip the egg whites, fold them into the mousse, and chill.',
      '4 egg yolks | Top each plate with a raw egg yolk.',
    ],
    plant: withListing(/\begg|pasteur/i),
  },
  {
    rule: 'raw-flour-served',
    wordings: [
      '1 cup all-purpose flour | Mix the flour with a little sugar and butter into an edible cookie dough, and serve by the spoonful.',
      '½ cup flour | Stir the flour and some butter together, and eat the dough raw.',
      '1 cup flour | Roll the flour, honey and butter into no-bake balls.',
    ],
    plant: withListing(/flour|dough|starter/i),
  },
  {
    rule: 'kidney-beans-unboiled',
    wordings: [
      '2 cups dried red kidney beans | Tip the kidney beans into the slow cooker with everything else, and cook on low until tender, 8 hours.',
      '1 pound dry kidney beans | Soak the kidney beans overnight, drain, and slow-cook them for 9 hours, until soft.',
      '2 cups dried kidney beans | Add the kidney beans to a crock pot, cover with water, and cook on low for 10 hours, until soft.',
    ],
    plant: withListing(/bean/i),
  },
  {
    rule: 'garlic-oil-kept',
    wordings: [
      'Cover the leftover garlic with olive oil, and keep it in a jar in the pantry for up to a month.',
      'Store the remaining garlic in oil in a sealed jar in a cool, dark place.',
      'Put any spare garlic into a jar, cover it with oil, and keep it in the refrigerator for up to 3 weeks.',
      'Steep the rest of the garlic in the oil, bottle it, and keep it at room temperature.',
    ],
    plant: (dish, wording, file) => {
      const has = (word: RegExp) => dish.recipe.listings.some(({ passage }) => word.test(passage.text));
      return has(/\bgarlic (clove|bulb|head)|cloves? (of )?garlic/i) && has(/\boil\b/i)
        ? endOnly(dish, wording, file)
        : null;
    },
  },
  {
    rule: 'infant-honey',
    wordings: [
      'Babies from six months on love it too.',
      'Mash a portion for the baby.',
      'It makes a gentle first food for an infant.',
      'Puree it for a 9-month-old.',
    ],
    plant: (dish, wording, file) =>
      dish.recipe.listings.some(({ line }) => line.foods.some(({ row }) => row?.name === 'honey'))
        ? endOnly(dish, wording, file)
        : null,
  },
  {
    rule: 'shellfish-unopened',
    wordings: [
      '2 pounds mussels, scrubbed | Add the mussels, cover, and steam until they open, about 6 minutes.',
      '24 littleneck clams | Simmer the clams over high heat until the shells have opened.',
      '1 kg mussels | Debeard the mussels, and boil them in the pot for 5 minutes, until open.',
    ],
    plant: withListing(/clam|mussel|oyster/i),
  },
  {
    rule: 'canning-untested',
    wordings: [
      'Ladle into hot jars, and process in a boiling-water bath for 20 minutes.',
      'Simmer until hot, pour into sterilized jars, seal, and store in a cool, dark place for up to a year.',
      'Fill the jars, close them, and turn them upside down until cool.',
      'Boil the sealed jars for 30 minutes, and keep them in the pantry.',
      'Pack into jars, leaving ½ inch headspace, and pressure can for 75 minutes.',
    ],
    plant: endOnly,
  },
  {
    rule: 'raw-milk-served',
    wordings: [
      '1 cup raw milk | Pour the raw milk over it, and serve cold.',
      '½ cup unpasteurized cream | Drizzle with the cream, and serve.',
      "2 cups raw cow's milk | Drink the milk with it.",
    ],
    plant: withListing(/milk|cream|unpasteur/i),
  },
  {
    rule: 'raw-sprouts-served',
    wordings: [
      '1 cup alfalfa sprouts | Top with the alfalfa sprouts just before serving.',
      '2 cups bean sprouts | Serve with the bean sprouts in a bowl beside it.',
      '½ cup radish sprouts | Garnish each plate with a few radish sprouts.',
      '1 cup clover sprouts | Tuck the clover sprouts into a sandwich, and eat it along with the rest.',
      '1 cup sprouted mung beans | For the salad, toss the sprouted mung beans with a little lemon juice and salt.',
    ],
    plant: withListing(/sprout|bean/i),
  },
  {
    rule: 'wild-food-caution',
    wordings: [
      '1 cup elderberries | Scatter the raw elderberries over the top.',
      '8 ounces mushrooms foraged in the woods | Fry the mushrooms over medium heat until golden, and spoon them on top.',
      '2 cups fiddleheads | Toss the fiddleheads with salt, and serve as a salad.',
      '4 ounces wild mushrooms | Cook the wild mushrooms that you have gathered over medium heat until soft.',
    ],
    plant: withListing(/mushroom|berr/i),
  },
  {
    rule: 'curdling-risk',
    wordings: [
      '1 cup plain yogurt | Bring to a boil. Stir in the yogurt.',
      '½ cup sour cream | Let it simmer for 5 minutes, until thick. Add the sour cream.',
      '1 cup buttermilk | Pour the buttermilk into the boiling pot.',
    ],
    plant: withListing(/yog|sour cream|buttermilk|kefir/i),
  },
  {
    rule: 'heat-unclear',
    wordings: ['medium to high', 'low to high', 'medium-to-high'],
    plant: (dish, wording) => {
      for (const { passage } of dish.recipe.steps) {
        const found = /\b(medium|low|high|medium-high|medium-low)(?= (heat|flame)\b)/i.exec(passage.text);
        if (found === null) continue;
        const { start, end } = passage.span(found.index, found.index + found[0].length);
        return [{ start, end, text: wording }];
      }
      return null;
    },
  },
  {
    rule: 'duration-absent',
    wordings: ['Marinate the X in some salt and oil.', 'Brine the X in salted water.'],
    plant: (dish, wording, file) => {
      const step = animalUse(dish)?.use.step;
      return step === undefined || isTimed(dish, step) || isTimed(dish, step - 1)
        ? null
        : beforeAnimal()(dish, wording, file);
    },
  },
  {
    rule: 'duration-absent',
    wordings: ['Cover and let rise.', 'Let the dough rise in a warm place.'],
    plant: (dish, wording) => {
      if (!dish.recipe.listings.some(({ passage }) => /\byeast\b/i.test(passage.text))) return null;
      const bake = dish.recipe.steps.find(({ passage }) =>
        /^(bake|preheat|heat the oven)/i.test(passage.text),
      );
      if (bake === undefined || isTimed(dish, bake.index - 1)) return null;
      const { start } = bake.passage.span();
      return [{ start, end: start, text: `${wording} ` }];
    },
  },
];

/** Plants every hazard, in each of its wordings, in every recipe that can bear it. By rule. */
export function countHazards(files: readonly SourceFile[]): Map<string, PlantCount> {
  const counts = new Map<string, PlantCount>();
  for (const file of files) {
    const before = readManuscript([file]);
    const [dish] = before.dishes;
    if (dish === undefined || before.dishes.length > 1 || dish.steps.length === 0) continue;
    for (const { rule, wordings, plant } of hazards) {
      const had = before.marks.filter((mark) => mark.rule === rule).length;
      for (const wording of wordings) {
        const changes = plant(dish, wording, file);
        if (changes === null) continue;
        const count = counts.get(rule) ?? { planted: 0, caught: 0, missed: [] };
        counts.set(rule, count);
        count.planted++;
        const { marks } = readManuscript([{ path: file.path, text: changed(file.text, changes) }], {
          only: [rule],
        });
        if (marks.length > had) count.caught++;
        else count.missed.push(`${file.path}: ${wording}`);
      }
    }
  }
  return counts;
}

/** The text with all changes made, the last first, so that the offsets of the others hold. */
function changed(text: string, changes: readonly Change[]): string {
  return [...changes]
    .sort((one, other) => other.start - one.start)
    .reduce((whole, { start, end, text: put }) => whole.slice(0, start) + put + whole.slice(end), text);
}
