/** Counts in how many recipes of the corpus a title, a list and a method are found; `npm run anatomy` prints it. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readContents } from '../../src/anatomy/contents.js';
import { openPage } from '../../src/manuscript/page.js';

export interface AnatomyCount {
  readonly files: number;
  readonly titled: number;
  readonly listed: number;
  readonly withMethod: number;
  readonly all: number;
  /** The files that lack one of the three. */
  readonly missing: string[];
}

/** Reads every Markdown file of the folder as one recipe. */
export function countAnatomy(corpusFolder: string): AnatomyCount {
  const files = readdirSync(corpusFolder)
    .filter((file) => file.endsWith('.md'))
    .sort();
  let titled = 0;
  let listed = 0;
  let withMethod = 0;
  const missing: string[] = [];
  for (const path of files) {
    const text = readFileSync(join(corpusFolder, path), 'utf8');
    const recipe = readContents(openPage({ path, text })).recipes[0];
    const found = [
      recipe?.title != null,
      (recipe?.listings.length ?? 0) > 0,
      (recipe?.steps.length ?? 0) > 0,
    ];
    if (found[0]) titled++;
    if (found[1]) listed++;
    if (found[2]) withMethod++;
    if (found.includes(false)) missing.push(path);
  }
  return { files: files.length, titled, listed, withMethod, all: files.length - missing.length, missing };
}

function main(): void {
  const folder = join('..', 'shared', 'corpus', 'public-domain');
  if (!existsSync(folder)) {
    console.log(`Skipped: there is no corpus at ${folder}.`);
    return;
  }
  const { files, titled, listed, withMethod, all, missing } = countAnatomy(folder);
  console.log(
    `${files} recipes: title in ${titled}, list in ${listed}, method in ${withMethod}, all three in ${all}.`,
  );
  for (const file of missing) console.log(`  ${file}`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();
