/** What the kitchen takes for a hazard and what it leaves alone: food kept too warm, eaten raw, put up in jars, gathered or boiled too little. */
import { describe, expect, it } from 'vitest';
import { readManuscript } from '../../src/reading/read.js';

/** A statement about cooking, the list, the method, and whatever else the page says. */
type Case = readonly [statement: string, list: readonly string[], method: readonly string[], more?: More];

interface More {
  readonly title?: string;
  readonly headnote?: string;
  readonly note?: string;
}

function marked(rule: string, [, list, method, more = {}]: Case): boolean {
  const text = [
    `# ${more.title ?? 'Plain Supper'}`,
    more.headnote ?? '',
    'Serves 4',
    '## Ingredients',
    list.map((line) => `- ${line}`).join('\n'),
    '## Method',
    method.map((line, index) => `${index + 1}. ${line}`).join('\n'),
    more.note === undefined ? '' : `## Notes\n\n${more.note}`,
  ].join('\n\n');
  return readManuscript([{ path: 'supper.md', text }], { only: [rule] }).marks.length > 0;
}

function describeRule(rule: string, hazards: readonly Case[], harmless: readonly Case[]): void {
  describe(rule, () => {
    for (const each of hazards) it(`asks about ${each[0]}`, () => expect(marked(rule, each)).toBe(true));
    for (const each of harmless) it(`leaves alone ${each[0]}`, () => expect(marked(rule, each)).toBe(false));
  });
}

const chicken = ['4 chicken thighs', '1 teaspoon salt'];
const roast = 'Roast the chicken at 400°F until a thermometer reads 165°F.';

describeRule(
  'thaw-unsafe',
  [
    [
      'a turkey thawed in the garage sink',
      ['1 turkey'],
      ['Thaw the turkey in the sink for a day.', 'Roast.'],
    ],
    [
      'steaks that come up from frozen on the bench',
      ['4 beef steaks'],
      ['Let the frozen steaks defrost on the bench for 5 hours.', 'Grill.'],
    ],
    [
      'fish thawed under hot water',
      ['4 cod fillets'],
      ['Run the cod under hot tap water until thawed.', 'Fry.'],
    ],
    ['a bird that no word names, left out to thaw', chicken, ['Leave it out on the counter to thaw.', roast]],
    [
      'a listing thawed at room temperature',
      chicken,
      [roast],
      { note: 'Frozen chicken can be thawed at room temperature overnight.' },
    ],
    [
      'ground beef thawed out of the refrigerator',
      ['1 pound ground beef'],
      ['Thaw the beef at room temperature until soft.', 'Fry the beef.'],
    ],
  ],
  [
    [
      'thawing in the refrigerator with a rest outside it',
      chicken,
      [
        'Thaw the chicken in the refrigerator overnight, then let it stand at room temperature for 20 minutes.',
        roast,
      ],
    ],
    [
      'thawing under cold water',
      ['1 pound shrimp'],
      ['Thaw the shrimp in the sink under cold running water.', 'Fry.'],
    ],
    ['a warning against the counter', chicken, ['Do not thaw the chicken on the counter.', roast]],
    [
      'phyllo and bread dough thawed at room temperature',
      ['1 package phyllo'],
      ['Thaw the phyllo at room temperature for 2 hours.', 'Bake.'],
    ],
    [
      'peas thawed in hot water',
      ['1 cup frozen peas', '4 chicken thighs'],
      ['Thaw the peas in hot water.', roast],
    ],
    [
      'berries, beside chicken',
      ['1 cup frozen berries', '4 chicken thighs'],
      ['Let the berries thaw on the counter.', roast],
    ],
    ['thawing in a microwave', chicken, ['Defrost the chicken in the microwave and cook it at once.', roast]],
    [
      'butter left on the counter',
      ['1 cup butter', '2 eggs'],
      ['Leave the butter on the counter until soft.', 'Bake.'],
    ],
    [
      'ice cream that softens',
      ['1 quart ice cream'],
      ['Let the ice cream stand at room temperature until it thaws a little.'],
    ],
  ],
);

describeRule(
  'danger-zone-hold',
  [
    [
      'fried rice from rice left out',
      ['2 cups cooked rice'],
      ['Leave the cooked rice at room temperature overnight.', 'Fry the rice.'],
    ],
    [
      'beef marinated for half a day on the counter',
      ['1 pound beef'],
      ['Let the beef marinate on the counter for 8 hours.', 'Grill.'],
    ],
    [
      'a buffet of custards',
      ['2 cups milk', '4 eggs'],
      ['Bake the custards. Let the custard stand at room temperature for 4 hours before serving.'],
    ],
    [
      'soup that stays on the stove overnight',
      ['1 chicken', '8 cups water'],
      ['Simmer the chicken in the water for 2 hours. Leave the soup on the counter overnight.'],
    ],
    ['pork held lukewarm', ['1 pork shoulder'], ['Keep the pork in a 110°F oven for 6 hours.']],
    [
      'a goose stuffed the evening before',
      ['1 goose', '4 cups stuffing'],
      ['Stuff the goose the evening before, and keep it cool.', 'Roast the goose.'],
    ],
    [
      'meat that nobody names again',
      ['1 pound beef', '1 teaspoon salt'],
      ['Salt the beef.', 'Let it sit at room temperature for 5 hours.', 'Grill.'],
    ],
    [
      'a sauce of cream kept on the table',
      ['2 cups cream'],
      ['Whip the cream. Leave the cream on the counter all day.'],
    ],
    [
      'leftovers in a note',
      chicken,
      [roast],
      { note: 'The cooked chicken can sit out on the counter for up to 4 hours.' },
    ],
    [
      'potato salad at a picnic',
      ['2 pounds potatoes', '1 cup mayonnaise'],
      [
        'Boil the potatoes. Stir in the mayonnaise.',
        'The potato salad can be left at room temperature for 5 hours.',
      ],
    ],
  ],
  [
    [
      'steak that warms for an hour',
      ['4 beef steaks'],
      ['Let the steaks stand at room temperature for 1 hour.', 'Grill.'],
    ],
    [
      'a stew that cools and is refrigerated overnight',
      ['1 pound beef'],
      ['Simmer the beef for 2 hours.', 'Cool the stew to room temperature and refrigerate overnight.'],
    ],
    [
      'a marinade in the refrigerator',
      chicken,
      [
        'Cover the chicken and leave it in the refrigerator overnight; bring it to room temperature before you cook it.',
        roast,
      ],
    ],
    [
      'dough on the counter',
      ['3 cups flour', '1 teaspoon yeast', '1 pound sausage'],
      ['Let the dough rise at room temperature for 4 hours.', 'Bake.'],
    ],
    [
      'sauerkraut',
      ['1 cabbage', '1 tablespoon salt'],
      ['Leave the cabbage to ferment at room temperature for 2 weeks.'],
    ],
    [
      'yogurt that sets in a warm place',
      ['4 cups milk', '2 tablespoons yogurt'],
      ['Stir the yogurt into the warm milk, and leave to culture in a warm place for 8 hours.'],
    ],
    [
      'beans soaked on the counter',
      ['2 cups dried beans'],
      ['Soak the beans overnight at room temperature.', 'Boil the beans.'],
    ],
    [
      'cake that keeps on the counter',
      ['2 cups flour', '3 eggs', '1 cup milk'],
      ['Bake the cake.', 'Keep the cake at room temperature for up to 3 days.'],
    ],
    ['tomatoes that ripen', ['4 tomatoes'], ['Leave the tomatoes on the counter for 3 days to ripen.']],
    [
      'a warning',
      chicken,
      [roast],
      { note: 'Do not leave the chicken at room temperature for more than 2 hours.' },
    ],
    [
      'meat that roasts for hours and then rests',
      ['1 pork shoulder'],
      ['Roast the pork for 6 hours, and let it rest on the counter for 20 minutes.'],
    ],
    [
      'sous vide',
      ['4 beef steaks'],
      ['Cook the steaks sous vide at 130°F for 4 hours, and leave them in the bag.'],
    ],
    [
      'a turkey stuffed and roasted for hours',
      ['1 turkey', '4 cups stuffing'],
      ['Stuff the turkey.', 'Roast it for 4 hours until a thermometer reads 165°F.'],
    ],
    [
      'stuffing made the night before',
      ['1 turkey', '1 loaf bread'],
      ['Make the stuffing the night before and refrigerate it.', 'Roast the turkey.'],
    ],
    [
      'cookies on a rack overnight',
      ['2 cups flour', '1 egg'],
      ['Let the cookies dry on the counter overnight.'],
    ],
    [
      'eggs that lose their chill',
      ['6 eggs'],
      ['Let the eggs stand at room temperature for 3 hours.', 'Boil the eggs.'],
    ],
    ['jerky', ['1 pound beef'], ['Dry the beef in a dehydrator at 135°F for 8 hours.']],
  ],
);

describeRule(
  'partial-cooking-held',
  [
    [
      'burgers seared today and finished tomorrow',
      ['1 pound ground beef'],
      ['Sear the beef patties, and refrigerate them overnight.', 'Finish them in the oven at 400°F.'],
    ],
    [
      'a brisket half roasted and chilled',
      ['1 beef brisket'],
      ['Par-cook the brisket, cool it, and chill until the next day.', 'Grill it.'],
    ],
    [
      'chicken parboiled the day before',
      chicken,
      ['The day before, parboil the chicken and keep it in the refrigerator.', 'Grill the chicken.'],
    ],
  ],
  [
    [
      'a fillet seared, chilled for half an hour and baked',
      ['1 beef fillet', '1 sheet puff pastry'],
      ['Sear the beef over high heat, and chill for 20 minutes.', 'Wrap it in the pastry and bake at 400°F.'],
    ],
    [
      'meat browned and set aside',
      ['2 pounds beef'],
      ['Brown the beef, and transfer it to a plate.', 'Simmer the beef for 2 hours.'],
    ],
    [
      'taco meat cooked through and frozen',
      ['1 pound ground beef'],
      [
        'Brown the beef, and simmer it in its juice until a thermometer reads 160°F.',
        'Refrigerate for up to 3 days.',
      ],
    ],
    [
      'potatoes parboiled the day before',
      ['2 pounds potatoes', '1 pound beef'],
      ['Parboil the potatoes the day before, and keep them in the refrigerator.', 'Roast the beef.'],
    ],
    [
      'butter browned and chilled',
      ['1 cup butter', '1 pound beef'],
      ['Brown the butter, and chill overnight.', 'Fry the beef in the butter.'],
    ],
  ],
);

describeRule(
  'slow-cooker-frozen',
  [
    [
      'frozen meatballs of raw beef',
      ['1 pound frozen ground beef'],
      ['Put everything into a slow cooker, and cook on low for 6 hours.'],
    ],
    [
      'a pork roast from the freezer',
      ['1 pork shoulder'],
      ['Set the pork, straight from the freezer, in the slow cooker.', 'Cook on low for 10 hours.'],
    ],
  ],
  [
    [
      'thawed in the method',
      ['2 pounds frozen chicken thighs'],
      ['Thaw the chicken in the refrigerator.', 'Cook it in a slow cooker for 6 hours.'],
    ],
    [
      'frozen corn beside fresh chicken',
      ['2 pounds chicken thighs', '2 cups frozen corn'],
      ['Put the chicken and the frozen corn into a slow cooker.'],
    ],
    [
      'leftovers that are frozen afterwards',
      ['2 pounds chicken thighs'],
      ['Cook the chicken in a slow cooker for 6 hours.'],
      { note: 'Leftovers can be frozen.' },
    ],
    [
      'a pressure cooker',
      ['2 pounds frozen chicken thighs'],
      ['Cook the chicken in a pressure cooker for 20 minutes.'],
    ],
  ],
);

describeRule(
  'raw-egg-served',
  [
    [
      'eggnog',
      ['4 eggs', '2 cups milk', '½ cup sugar'],
      ['Beat the eggs with the sugar and the milk.', 'Pour into glasses and serve.'],
      { title: 'Eggnog' },
    ],
    [
      'a cocktail with egg white',
      ['1 egg white', '2 ounces gin', '1 ounce lemon juice'],
      ['Shake the egg white with the gin and juice. Strain into a glass.'],
    ],
    [
      'a Caesar dressing beside a roast chicken',
      ['4 chicken thighs', '1 egg yolk', '½ cup oil'],
      [roast, 'For the Caesar dressing, whisk the egg yolk with the oil, and serve.'],
    ],
    [
      'tartare with a yolk',
      ['1 pound beef', '1 egg yolk'],
      ['Chop the beef. Serve with the raw egg yolk on top.'],
    ],
    [
      'ice cream that is never cooked',
      ['3 eggs', '2 cups cream', '1 cup sugar'],
      ['Beat the eggs with the sugar. Fold in the cream.', 'Freeze for 6 hours.'],
    ],
  ],
  [
    [
      'pancakes',
      ['2 eggs', '1 cup flour', '1 cup milk'],
      ['Mix the eggs, flour and milk.', 'Ladle onto a hot griddle and turn once.'],
    ],
    [
      'waffles',
      ['2 eggs', '1 cup flour', '1 cup milk'],
      ['Mix the eggs, flour and milk.', 'Pour into the waffle iron. Serve with syrup.'],
    ],
    [
      'cooked custard ice cream',
      ['3 egg yolks', '2 cups cream'],
      ['Whisk the yolks into the hot cream, and cook until it coats a spoon.', 'Chill, and freeze.'],
    ],
    [
      'hard-boiled eggs',
      ['6 hard-boiled eggs', '1 cup mayonnaise'],
      ['Chop the eggs, stir in the mayonnaise, and chill.'],
    ],
    [
      'egg salad whose eggs are boiled',
      ['6 eggs', '1 cup mayonnaise'],
      ['Boil the eggs for 10 minutes.', 'Chop the eggs, stir in the mayonnaise, and serve.'],
    ],
    [
      'an egg substitute',
      ['½ cup egg substitute', '1 cup oil'],
      ['Blend the egg substitute with the oil, and serve.'],
      { title: 'Mayonnaise' },
    ],
    [
      'eggnog with pasteurized eggs',
      ['4 pasteurized eggs', '2 cups milk'],
      ['Beat the eggs with the milk, and serve.'],
      { title: 'Eggnog' },
    ],
    [
      'a dough that another recipe bakes',
      ['2 cups flour', '2 eggs'],
      ['Knead the flour and eggs to a dough. Chill for 30 minutes.'],
      { title: 'Pasta Dough' },
    ],
    [
      'bought mayonnaise',
      ['1 cup mayonnaise', '1 cabbage'],
      ['Stir the mayonnaise into the cabbage, and chill.'],
    ],
    [
      'a meringue baked in the oven',
      ['4 egg whites', '1 cup sugar'],
      ['Whip the egg whites with the sugar.', 'Pipe onto a baking sheet, and dry in the oven for 2 hours.'],
    ],
    [
      'a mousse with a warning',
      ['4 eggs', '6 ounces chocolate'],
      ['Melt the chocolate. Beat in the eggs, and chill.'],
      { title: 'Chocolate Mousse', headnote: 'It holds raw egg, so it is not for the pregnant.' },
    ],
    [
      'vegan eggnog',
      ['2 cups oat milk', '1 banana'],
      ['Blend the milk with the banana, and serve.'],
      { title: 'Vegan Eggnog' },
    ],
    [
      'meatballs bound with egg',
      ['1 pound ground beef', '1 egg'],
      ['Mix the beef with the egg.', 'Fry until a thermometer reads 160°F.'],
    ],
    [
      'swiss meringue over simmering water',
      ['4 egg whites', '1 cup sugar'],
      ['Whisk the egg whites with the sugar over simmering water until hot.', 'Whip, and serve.'],
    ],
  ],
);

describeRule(
  'raw-flour-served',
  [
    [
      'a dip of cake batter',
      ['1 cup flour', '1 cup yogurt', '½ cup sugar'],
      ['Beat the flour with the yogurt and sugar. Serve with fruit.'],
      { title: 'Cake Batter Dip' },
    ],
    [
      'truffles',
      ['1 cup flour', '½ cup butter'],
      ['Beat the flour with the butter. Roll into balls, and chill.'],
      { title: 'Cookie Dough Truffles' },
    ],
  ],
  [
    [
      'pie crust',
      ['2 cups flour', '1 cup butter'],
      ['Rub the butter into the flour. Chill the dough.'],
      { title: 'Pie Crust' },
    ],
    [
      'an unbaked crust that is baked',
      ['2 cups flour', '1 cup butter'],
      ['Rub the butter into the flour.', 'Line a tin with the unbaked dough, and bake at 375°F.'],
    ],
    [
      'almond flour',
      ['1 cup almond flour', '½ cup honey'],
      ['Mix the almond flour with the honey into edible dough, and serve.'],
      { title: 'No-Bake Bites' },
    ],
    [
      'flour that is toasted first',
      ['1 cup flour', '½ cup butter'],
      ['Toast the flour in the oven until it reaches 165°F.', 'Beat it with the butter, and eat the dough.'],
      { title: 'Edible Cookie Dough' },
    ],
    [
      'edible flowers on a cake',
      ['2 cups flour', '1 cup edible flowers'],
      ['Mix the flour, and bake the cake.', 'Decorate with the flowers.'],
    ],
    [
      'a no-bake cheesecake',
      ['2 cups cream cheese', '1 cup crackers'],
      ['Beat the cream cheese. Chill on the crackers.'],
      { title: 'No-Bake Cheesecake' },
    ],
  ],
);

describeRule(
  'kidney-beans-unboiled',
  [
    [
      'beans soaked and slow-cooked',
      ['2 cups kidney beans'],
      ['Soak the kidney beans overnight and drain.', 'Cook in a slow cooker for 8 hours.'],
    ],
    [
      'dried beans that only simmer for a little',
      ['1 cup dried red kidney beans', '1 cup rice'],
      ['Soak the beans, and drain.', 'Simmer the beans with the rice until tender.'],
    ],
  ],
  [
    [
      'canned beans in a slow cooker',
      ['1 can kidney beans', '1 pound ground beef'],
      ['Cook the beans and beef in a slow cooker for 6 hours.'],
    ],
    [
      'beans whose kind nobody knows',
      ['2 cups kidney beans'],
      ['Stir the beans into the chili, and warm through.'],
    ],
    [
      'beans in a pressure cooker',
      ['2 cups dried kidney beans'],
      ['Soak the beans, and drain.', 'Pressure-cook the beans for 30 minutes.'],
    ],
    ['black beans', ['2 cups dried black beans'], ['Cook the beans in a slow cooker for 8 hours.']],
    [
      'beans that simmer for hours',
      ['2 cups dried kidney beans'],
      ['Soak the beans overnight, and drain.', 'Bring to a boil, and simmer for 2 hours.'],
    ],
  ],
);

describeRule(
  'garlic-oil-kept',
  [
    [
      'chili oil with garlic in the cupboard',
      ['6 garlic cloves', '2 cups oil'],
      ['Fry the garlic in the oil over low heat.', 'Store in a jar in the cupboard.'],
      { title: 'Garlic Chili Oil' },
    ],
    [
      'basil under oil for months',
      ['2 cups basil', '1 cup olive oil'],
      ['Pack the basil into a jar and cover it with olive oil. It keeps for 3 months.'],
    ],
    [
      'tomatoes with garlic in oil on the shelf',
      ['1 pound tomatoes', '4 garlic cloves', '2 cups olive oil'],
      ['Put the tomatoes and garlic into a jar, cover with oil, and store at room temperature.'],
    ],
    [
      'a storage note of ten days',
      ['6 garlic cloves', '2 cups olive oil'],
      ['Warm the garlic in the oil over low heat.'],
      { title: 'Garlic Oil', note: 'Keeps in the refrigerator for 10 days.' },
    ],
  ],
  [
    [
      'garlic fried in oil',
      ['2 garlic cloves', '2 tablespoons oil', '1 pound spinach'],
      ['Fry the garlic in the oil. Add the spinach.'],
      { note: 'Keeps for 5 days in the refrigerator.' },
    ],
    [
      'oil used at once',
      ['6 garlic cloves', '1 cup olive oil'],
      ['Warm the garlic in the oil, and serve immediately with bread.'],
      { title: 'Garlic Oil' },
    ],
    [
      'oil with dried chiles',
      ['¼ cup dried chili flakes', '2 cups oil'],
      ['Heat the oil, pour over the chili flakes, and store in a jar.'],
      { title: 'Chili Oil' },
    ],
    [
      'a vinaigrette',
      ['1 garlic clove', '½ cup olive oil', '¼ cup vinegar'],
      ['Shake in a jar. Keeps for 2 weeks in the refrigerator.'],
    ],
    [
      'three days in the refrigerator',
      ['6 garlic cloves', '2 cups olive oil'],
      ['Warm the garlic in the oil. Refrigerate in a jar for up to 3 days.'],
      { title: 'Garlic Oil' },
    ],
    [
      'pesto for the freezer',
      ['2 cups basil', '2 garlic cloves', '½ cup olive oil'],
      ['Blend the basil and garlic with the oil.', 'Freeze for up to 3 months.'],
      { title: 'Basil Pesto' },
    ],
    [
      'coconut oil',
      ['1 cup coconut oil', '1 cup oats'],
      ['Stir the oil into the oats, and keep in a jar for 2 weeks.'],
    ],
  ],
);

describeRule(
  'infant-honey',
  [
    [
      'teething biscuits',
      ['1 cup flour', '2 tablespoons honey'],
      ['Bake for 20 minutes.'],
      { title: 'Teething Biscuits' },
    ],
    [
      'a mash for a 7-month-old',
      ['1 banana', '1 teaspoon honey'],
      ['Mash the banana with the honey.'],
      { note: 'Our 7-month-old eats it by the spoon.' },
    ],
  ],
  [
    [
      'baby back ribs',
      ['2 racks baby back ribs', '¼ cup honey'],
      ['Brush the baby back ribs with the honey, and bake.'],
      { title: 'Baby Back Ribs' },
    ],
    [
      'baby spinach',
      ['4 cups baby spinach', '1 tablespoon honey'],
      ['Toss the baby spinach with the honey.'],
    ],
    [
      'a warning',
      ['1 banana', '1 teaspoon honey'],
      ['Mash.'],
      { note: 'Not for babies: no honey under 12 months.' },
    ],
    [
      'a cake for a party',
      ['1 cup honey'],
      ['Bake the cake.'],
      { headnote: 'My baby sister loves this cake.' },
    ],
  ],
);

describeRule(
  'shellfish-unopened',
  [
    [
      'mussels marinière',
      ['4 pounds mussels', '1 cup wine'],
      ['Scrub the mussels.', 'Boil them in the wine for 5 minutes, and serve.'],
    ],
    ['clams on the grill', ['24 clams'], ['Grill the clams until they open. Serve with butter.']],
  ],
  [
    [
      'clams that are thrown out if closed',
      ['24 clams'],
      ['Grill the clams until they open. Discard any closed clams.'],
    ],
    [
      'a discard in other words',
      ['4 pounds mussels'],
      ['Steam the mussels until open; any that stay shut go in the bin.'],
    ],
    [
      'oyster sauce and clam juice',
      ['2 tablespoons oyster sauce', '1 cup clam juice'],
      ['Simmer the clam juice with the oyster sauce.'],
    ],
    ['shucked oysters', ['1 pint shucked oysters'], ['Fry the oysters until golden.']],
    ['smoked mussels', ['1 can smoked mussels'], ['Heat the mussels in the sauce.']],
  ],
);

describeRule(
  'canning-untested',
  [
    [
      'pickles in a water bath',
      ['2 pounds cucumbers', '2 cups vinegar'],
      [
        'Pack the cucumbers into jars, and pour over the boiling vinegar.',
        'Process the jars for 10 minutes.',
      ],
    ],
    [
      'a pressure canner',
      ['4 pounds beef'],
      ['Pack the beef into jars.', 'Cook in a pressure canner for 90 minutes.'],
    ],
    [
      'jam sealed with paraffin',
      ['4 cups berries', '3 cups sugar'],
      ['Boil the berries with the sugar.', 'Pour into jars, and seal with melted paraffin.'],
    ],
    [
      'a tested process, as a note',
      ['4 pounds tomatoes'],
      ['Process the jars in boiling water for 45 minutes, following a tested recipe for your altitude.'],
    ],
    [
      'jars that seal as they cool',
      ['4 cups berries', '3 cups sugar'],
      ['Boil the berries with the sugar. Ladle into sterilized jars, and seal.'],
      { note: 'Keeps in a cool, dark place for 6 months.' },
    ],
  ],
  [
    [
      'overnight oats in a jar',
      ['1 cup oats', '1 cup milk'],
      ['Put the oats and milk into a jar, screw on the lid, and refrigerate overnight.'],
    ],
    ['cheesecake in a water bath', ['2 cups cream cheese', '3 eggs'], ['Bake in a water bath for 1 hour.']],
    [
      'sourdough starter',
      ['1 cup flour', '1 cup water'],
      ['Stir the flour and water in a jar. Cover loosely and leave at room temperature.'],
    ],
    [
      'a spice mix',
      ['1 tablespoon cumin', '1 tablespoon coriander'],
      ['Grind the spices. Store in an airtight jar in a cool, dark place for up to a year.'],
    ],
    [
      'refrigerator pickles',
      ['1 cucumber', '1 cup vinegar'],
      ['Boil the vinegar, pour over the cucumber in a jar, close, and refrigerate.'],
    ],
    [
      'a cake turned upside down',
      ['2 cups flour', '1 jar cherries'],
      ['Drain the jar of cherries. Bake the cake, and turn it upside down onto a plate.'],
    ],
    [
      'granola',
      ['3 cups oats', '½ cup honey'],
      ['Bake the oats with the honey.', 'Seal in a jar, and keep in the pantry.'],
    ],
    [
      'kombucha',
      ['4 cups tea', '1 cup sugar'],
      [
        'Boil the tea, and let it ferment in a jar at room temperature for a week.',
        'Refrigerate in sealed bottles.',
      ],
    ],
    [
      'simple syrup',
      ['1 cup sugar', '1 cup water'],
      ['Simmer the sugar in the water until dissolved.', 'Keep in a jar in the refrigerator.'],
    ],
  ],
);

describeRule(
  'raw-milk-served',
  [
    [
      'kefir of raw milk',
      ['4 cups raw milk', '1 tablespoon kefir grains'],
      ['Leave the milk with the grains for a day. Strain, and drink.'],
    ],
    ['raw cream on berries', ['1 cup raw cream', '2 cups berries'], ['Pour the cream over the berries.']],
  ],
  [
    [
      'raw milk in a baked custard',
      ['2 cups raw milk', '4 eggs'],
      ['Whisk the milk with the eggs, and bake at 325°F.'],
    ],
    [
      'raw almonds and almond milk',
      ['1 cup raw almonds', '2 cups almond milk'],
      ['Blend the almonds with the milk.'],
    ],
    ['raw milk scalded', ['2 cups raw milk'], ['Scald the milk, cool it, and drink.']],
  ],
);

describeRule(
  'wild-food-caution',
  [
    ['nettles in a raw pesto', ['2 cups nettles', '½ cup oil'], ['Blend the nettles with the oil.']],
    ['morels in a salad', ['1 cup morels', '2 cups greens'], ['Slice the morels over the greens.']],
    [
      'wild garlic from the hedgerow',
      ['1 bunch wild garlic', '½ cup oil'],
      ['Blend the wild garlic with the oil.'],
      { headnote: 'In April the hedgerow gives it away for nothing.' },
    ],
  ],
  [
    [
      'wild rice and wild salmon',
      ['1 cup wild rice', '4 wild salmon fillets'],
      ['Simmer the rice. Fry the salmon.'],
    ],
    ['nettle soup', ['4 cups nettles', '4 cups stock'], ['Simmer the nettles in the stock.']],
    ['wild blueberries', ['1 cup wild blueberries'], ['Scatter the blueberries on the oats.']],
    [
      'dried porcini',
      ['1 ounce dried porcini', '1 cup rice'],
      ['Soak the porcini in hot water. Simmer the rice with the porcini.'],
    ],
    [
      'elderflower cordial',
      ['1 cup elderflower cordial', '2 cups water'],
      ['Stir the cordial into the water.'],
    ],
  ],
);

describeRule(
  'curdling-risk',
  [
    [
      'yogurt into a boiling soup',
      ['1 cup yogurt', '4 cups stock'],
      ['Stir the yogurt into the boiling stock.'],
    ],
    [
      'sour cream into a stroganoff that simmers',
      ['1 cup sour cream', '1 pound beef'],
      ['Simmer the beef for 10 minutes. Stir in the sour cream and cook for 5 minutes.'],
    ],
  ],
  [
    ['heavy cream', ['1 cup heavy cream', '4 cups stock'], ['Simmer the stock. Stir in the cream.']],
    [
      'coconut yogurt on top',
      ['1 cup yogurt', '4 cups stock'],
      ['Simmer the stock. Serve with a dollop of yogurt.'],
    ],
    [
      'tempered yogurt',
      ['1 cup yogurt', '4 cups stock'],
      ['Simmer the stock. Temper the yogurt with a ladleful, and stir it in.'],
    ],
    [
      'a cake batter',
      ['1 cup buttermilk', '2 cups flour'],
      ['Bring a kettle to the boil.', 'Stir the buttermilk into the flour in a bowl.'],
    ],
    [
      'a pot that was turned off',
      ['1 cup sour cream', '1 pound beef'],
      ['Simmer the beef. Turn off the heat. Stir in the sour cream.'],
    ],
    [
      'a marinade',
      ['1 cup yogurt', '4 chicken thighs'],
      ['Mix the yogurt with the chicken, and marinate.', 'Boil rice.'],
    ],
    [
      'yogurt thickened with flour',
      ['1 cup yogurt', '1 tablespoon flour', '4 cups stock'],
      ['Simmer the stock. Whisk the yogurt with the flour, and add it.'],
    ],
  ],
);

describeRule(
  'heat-unclear',
  [
    [
      'low to high',
      ['2 onions', '1 tablespoon oil'],
      ['Cook the onions over low to high heat until golden.'],
    ],
    [
      'a first pan left open',
      ['2 onions', '1 tablespoon oil', '1 cup rice'],
      ['Sauté the onions in the oil until soft.', 'Add the rice and cook over medium heat for 5 minutes.'],
    ],
  ],
  [
    [
      'medium to medium-high',
      ['2 onions'],
      ['Cook the onions over medium to medium-high heat until golden.'],
    ],
    ['from medium to high', ['2 onions'], ['Turn the heat from medium to high, and cook until golden.']],
    ['onions of two sizes', ['2 medium to large onions'], ['Fry the onions over low heat until golden.']],
    [
      'a pan already heated',
      ['2 onions', '1 tablespoon oil'],
      ['Heat the oil over medium heat.', 'Fry the onions until golden. Lower the heat to low.'],
    ],
  ],
);

describeRule(
  'duration-absent',
  [
    [
      'a dough in a warm place',
      ['3 cups flour', '1 teaspoon yeast'],
      ['Knead the flour and yeast. Leave to rise in a warm place.', 'Shape it.', 'Bake until brown.'],
    ],
    ['chicken in a brine', chicken, ['Brine the chicken in salted water.', roast]],
  ],
  [
    [
      'a rise until doubled',
      ['3 cups flour', '1 teaspoon yeast'],
      ['Let the dough rise until doubled.', 'Bake.'],
    ],
    [
      'a rise told by the next step',
      ['3 cups flour', '1 teaspoon yeast'],
      ['Let the dough rise.', 'When it has doubled, punch it down.', 'Bake.'],
    ],
    ['overnight', chicken, ['Marinate the chicken overnight.', roast]],
    ['a statement', ['3 cups flour', '1 teaspoon yeast'], ['The dough will rise in the oven.', 'Bake.']],
    ['leftovers to freeze', ['3 cups flour'], ['Bake the bread until brown.', 'Freeze what is left.']],
  ],
);
