/** Measures a whole reading of the corpus against parsing alone with the same extensions: cold process, warm, and as it grows. */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';

const corpus = '../shared/corpus/public-domain';
const self = fileURLToPath(import.meta.url);
const [task, copies] = process.argv.slice(2);

if (!existsSync(corpus)) console.log(`bench: the corpus is missing at ${corpus}; nothing measured`);
else if (task === 'parse') await parseOnce(load(Number(copies)));
else if (task === 'read') await readOnce(load(Number(copies)));
else await report();

/** The corpus, repeated until there are about as many recipes as asked for. */
function load(recipes) {
  const files = readdirSync(corpus)
    .filter((file) => file.endsWith('.md'))
    .map((file) => ({ path: file, text: readFileSync(`${corpus}/${file}`, 'utf8') }));
  return Array.from({ length: recipes }, (_, index) => {
    const file = files[index % files.length];
    return { path: `${Math.floor(index / files.length)}/${file.path}`, text: file.text };
  });
}

async function parseOnce(files) {
  const { parser } = await import('../../dist/src/manuscript/markdown.js');
  const start = performance.now();
  for (const file of files) parser.parse(file.text);
  return performance.now() - start;
}

async function readOnce(files) {
  const { readManuscript } = await import('../../dist/src/reading/read.js');
  const start = performance.now();
  const reading = readManuscript(files);
  const time = performance.now() - start;
  if (process.argv[2] === 'read')
    console.log(
      JSON.stringify({ time, peak: process.resourceUsage().maxRSS / 1024, marks: reading.marks.length }),
    );
  return time;
}

async function report() {
  const files = load(251);
  const cold = (what) =>
    median(Array.from({ length: 5 }, () => timed(() => spawnSync(process.execPath, [self, what, '251']))));
  const [coldParse, coldRead] = [cold('parse'), cold('read')];
  const warm = { parse: [], read: [] };
  for (let round = 0; round < 12; round++) {
    warm.parse.push(await parseOnce(files));
    warm.read.push(await readOnce(files));
  }
  const [warmParse, warmRead] = [median(warm.parse.slice(4)), median(warm.read.slice(4))];
  console.log('251 recipes    parse (ms)   read (ms)   ratio');
  console.log(row('cold process', coldParse, coldRead));
  console.log(row('warm', warmParse, warmRead));
  console.log('\nrecipes   read (ms)   ms a recipe   peak memory (MB)');
  for (const recipes of [250, 500, 1000, 2500, 5000]) {
    const { time, peak } = JSON.parse(
      spawnSync(process.execPath, [self, 'read', String(recipes)], { encoding: 'utf8' }).stdout,
    );
    console.log(
      `${String(recipes).padStart(7)}${time.toFixed(0).padStart(12)}${(time / recipes).toFixed(2).padStart(14)}${peak.toFixed(0).padStart(19)}`,
    );
  }
}

function timed(run) {
  const start = performance.now();
  run();
  return performance.now() - start;
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

function row(name, parse, read) {
  return `${name.padEnd(12)}${parse.toFixed(0).padStart(13)}${read.toFixed(0).padStart(12)}${(read / parse).toFixed(2).padStart(8)}`;
}
