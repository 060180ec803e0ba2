// Knows how the 300 ingredient lines of the accuracy measurement were drawn: at
// random, with a fixed seed, from the measured lines of a folder of recipes.
// Usage: node draw-listings.mjs FOLDER; prints `file<TAB>line`, lines from 1.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const SEED = 20240229;
const SAMPLE_LINES = 300;
const SECTION = /^##[ \t]+ingredients\s*$/i;
const SECTION_END = /^##?[ \t]/;
// A bullet, then emphasis marks, approximations and again emphasis marks, then a number.
const MEASURED = /^\s*[-*+]\s+[*_]*(?:(?:~|about\b|around\b|approx(?:imately)?\b\.?)\s*)?[*_]*[\d¼-¾⅐-⅞↉]/i;

const folder = process.argv[2];
if (folder === undefined) {
  console.error('Name the folder of recipes: node draw-listings.mjs FOLDER');
  process.exit(2);
}
const random = mulberry32(SEED);
const drawn = shuffle(measuredLines(folder), random).slice(0, SAMPLE_LINES);
for (const { file, line } of drawn) console.log(`${file}\t${line}`);

function measuredLines(root) {
  const found = [];
  // The names are sorted so that the draw does not depend on the file system.
  const files = readdirSync(root, { recursive: true }).map((name) => name.replaceAll('\\', '/'));
  for (const file of files.filter((name) => name.endsWith('.md')).sort()) {
    let inside = false;
    readFileSync(join(root, file), 'utf8')
      .split(/\r?\n/)
      .forEach((text, index) => {
        if (SECTION.test(text)) inside = true;
        else if (SECTION_END.test(text)) inside = false;
        else if (inside && MEASURED.test(text)) found.push({ file, line: index + 1 });
      });
  }
  return found;
}

// Fisher and Yates's shuffle: every order is equally likely.
function shuffle(items, next) {
  for (let last = items.length - 1; last > 0; last -= 1) {
    const other = Math.floor(next() * (last + 1));
    [items[last], items[other]] = [items[other], items[last]];
  }
  return items;
}

// mulberry32, a public-domain 32-bit generator, gives numbers from 0 up to, not including, 1.
function mulberry32(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
