/** Prints how many hazards planted in the corpus are caught, and how right the marks on it are by a person's labels; `npm run hazards` runs it, `-- --missed` names the files. */
import { readFileSync } from 'node:fs';
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';
import { countHazards } from './hazard-plants.js';
import { corpusIn } from './plants.js';

const folder = '../shared/corpus/public-domain';
const files = corpusIn(folder);

if (files === null) {
  console.log(`hazards: the corpus is missing at ${folder}; planted hazards and labelled marks were skipped`);
} else {
  const counts = countHazards(files);
  console.log('planted hazard             planted   caught   recall');
  let planted = 0;
  let caught = 0;
  for (const [rule, count] of counts) {
    planted += count.planted;
    caught += count.caught;
    console.log(row(rule, count.planted, count.caught));
    if (process.argv.includes('--missed')) for (const missed of count.missed) console.log(`    ${missed}`);
  }
  console.log(row('all', planted, caught));
  console.log('\nmarks on the corpus          marks    right    share');
  scoreMarks(files, [...counts.keys()]);
}

/** The marks by weight, and how many of them a person found right; those that nobody has judged are named. */
function scoreMarks(files: readonly SourceFile[], only: readonly string[]): void {
  const labels = new Map(
    readFileSync(new URL('hazard-marks.tsv', import.meta.url), 'utf8')
      .trimEnd()
      .split('\n')
      .slice(1)
      .map((line) => line.split('\t'))
      .map(([file, line, rule, , verdict]) => [`${file}:${line} ${rule}`, verdict]),
  );
  const { marks, pages } = readManuscript(files, { only });
  const lines = new Map(pages.map((page) => [page.path, page.lines]));
  for (const weight of ['fault', 'query', 'note'] as const) {
    const own = marks
      .filter((mark) => mark.weight === weight)
      .map(({ file, span, rule }) => `${file}:${lines.get(file)!.line(span.start)} ${rule}`);
    console.log(row(weight, own.length, own.filter((key) => labels.get(key) === 'right').length));
    for (const key of own) if (!labels.has(key)) console.log(`    not judged: ${key}`);
  }
}

function row(kind: string, all: number, good: number): string {
  const share = all === 0 ? '-' : `${((100 * good) / all).toFixed(1)} %`;
  return `${kind.padEnd(24)}${String(all).padStart(10)}${String(good).padStart(9)}${share.padStart(9)}`;
}
