/** Counts in how many recipes of the corpus a title, a list and a method are found. */
import { readContents } from '../../src/anatomy/contents.js';
import { openPage } from '../../src/manuscript/page.js';
import type { SourceFile } from '../../src/manuscript/types.js';

/** Reads every file as one recipe, and names those that lack one of the three. */
export function printAnatomy(files: readonly SourceFile[]): void {
  let titled = 0;
  let listed = 0;
  let withMethod = 0;
  const missing: string[] = [];
  for (const file of files) {
    const recipe = readContents(openPage(file)).recipes[0];
    const found = [
      recipe?.title != null,
      (recipe?.listings.length ?? 0) > 0,
      (recipe?.steps.length ?? 0) > 0,
    ];
    if (found[0]) titled++;
    if (found[1]) listed++;
    if (found[2]) withMethod++;
    if (found.includes(false)) missing.push(file.path);
  }
  console.log(
    `${files.length} recipes: title in ${titled}, list in ${listed}, method in ${withMethod}, all three in ${files.length - missing.length}.`,
  );
  for (const file of missing) console.log(`  ${file}`);
}
