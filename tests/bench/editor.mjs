/** Measures the language server on a book of 500 recipes, a file each: opening it against a cold `tamis read`, and from a keystroke to its diagnostics. */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { createProtocolConnection } from 'vscode-languageserver-protocol/node';

const corpus = '../shared/corpus/public-domain';
const command = fileURLToPath(new URL('../../dist/src/cli.js', import.meta.url));
const RECIPES = 500;
const ROUNDS = 5;
const KEYSTROKES = 300;
/** Lets a process tell at its end how long it computed, in microseconds: on a busy machine the clock tells more of the others. */
const TELLING = [
  '--import',
  'data:text/javascript,process.on("exit",()=>{const{user,system}=process.cpuUsage();process.stderr.write("computed "+(user+system))})',
];
/** The first keystrokes meet code that has not run yet. */
const WARMING = 50;

if (!existsSync(corpus)) console.log(`bench: the corpus is missing at ${corpus}; nothing measured`);
else {
  const folder = mkdtempSync(path.join(tmpdir(), 'book-'));
  try {
    await report(folder, writeBook(folder));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The corpus, again from its start when it ends, as a book of as many files; gives one of them. */
function writeBook(folder) {
  const files = readdirSync(corpus).filter((file) => file.endsWith('.md'));
  for (let index = 0; index < RECIPES; index++) {
    const text = readFileSync(`${corpus}/${files[index % files.length]}`, 'utf8');
    writeFileSync(path.join(folder, `${index}.md`), text);
  }
  return path.join(folder, `${Math.floor(RECIPES / 2)}.md`);
}

async function report(folder, file) {
  const [reads, opens] = [[], []];
  // By turns, so that what else the machine does falls on both.
  for (let round = 0; round < ROUNDS; round++) {
    reads.push(readOnce(folder));
    opens.push(await serveOnce(folder, file, 0));
  }
  const { typed, computing } = await serveOnce(folder, file, KEYSTROKES);
  const latencies = typed.slice(WARMING).sort((a, b) => a - b);
  const [read, open] = [medians(reads), medians(opens)];
  console.log(`${RECIPES} recipes              ms   computing`);
  console.log(row('tamis read, cold', read.passed, read.computing));
  console.log(row('opened in an editor', open.passed, open.computing));
  console.log(row('times a cold read', open.passed / read.passed, open.computing / read.computing, 2));
  console.log(`\nkeystroke to marks        ms   computing  (${latencies.length} keystrokes)`);
  console.log(row('half', at(latencies, 0.5), (computing - open.computing) / KEYSTROKES));
  for (const [name, share] of [
    ['95 of 100', 0.95],
    ['99 of 100', 0.99],
    ['slowest', 1],
  ])
    console.log(row(name, at(latencies, share)));
}

function readOnce(folder) {
  const started = performance.now();
  const run = spawnSync(
    process.execPath,
    [...TELLING, command, 'read', folder, '--as', 'plain', '--stop-at', 'never'],
    {
      encoding: 'utf8',
      maxBuffer: 2 ** 28,
    },
  );
  return { passed: performance.now() - started, computing: computed(run.stderr) };
}

/** From the start of the server to the diagnostics of the whole book (`passed`); then types into one recipe. */
async function serveOnce(folder, file, keystrokes) {
  const started = performance.now();
  const server = spawn(process.execPath, [...TELLING, command, 'serve'], { stdio: 'pipe' });
  let said = '';
  server.stderr.on('data', (data) => {
    said += data;
  });
  const connection = createProtocolConnection(server.stdout, server.stdin);
  const uri = pathToFileURL(file).href;
  let wake = () => {};
  let seen = 0;
  connection.onNotification('textDocument/publishDiagnostics', (params) => {
    if (params.uri !== uri || params.version === undefined) return;
    seen = params.version;
    wake();
  });
  connection.listen();
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    capabilities: {},
    workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'book' }],
  });
  await connection.sendNotification('initialized', {});
  const text = readFileSync(file, 'utf8');
  const shown = (version) =>
    seen >= version
      ? undefined
      : new Promise((done) => {
          wake = () => seen >= version && done();
        });
  await connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'markdown', version: 1, text },
  });
  await shown(1);
  const passed = performance.now() - started;
  const typed = [];
  const words = ' and add 1 cup cream to the pan';
  const line = text.split('\n').length - 1;
  for (let count = 0; count < keystrokes; count++) {
    const version = count + 2;
    const at = { line, character: count };
    const start = performance.now();
    await connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ range: { start: at, end: at }, text: words[count % words.length] }],
    });
    await shown(version);
    typed.push(performance.now() - start);
  }
  const ended = new Promise((done) => server.once('close', done));
  await connection.sendRequest('shutdown');
  await connection.sendNotification('exit');
  await ended;
  connection.dispose();
  return { passed, typed, computing: computed(said) };
}

function computed(stderr) {
  return Number(/computed (\d+)/.exec(stderr)[1]) / 1000;
}

function medians(runs) {
  return { passed: at(sorted(runs, 'passed'), 0.5), computing: at(sorted(runs, 'computing'), 0.5) };
}

function sorted(runs, what) {
  return runs.map((run) => run[what]).sort((a, b) => a - b);
}

function at(sorted, share) {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
}

function row(name, milliseconds, computing, digits = 1) {
  const second = computing === undefined ? '' : computing.toFixed(digits).padStart(12);
  return `${name.padEnd(22)}${milliseconds.toFixed(digits).padStart(9)}${second}`;
}
