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
  let latencies = [];
  // By turns, so that what else the machine does falls on both.
  for (let round = 0; round < ROUNDS; round++) {
    reads.push(
      timed(() =>
        spawnSync(process.execPath, [command, 'read', folder, '--as', 'plain', '--stop-at', 'never']),
      ),
    );
    const last = round === ROUNDS - 1;
    const { opened, typed } = await serveOnce(folder, file, last ? KEYSTROKES : 0);
    opens.push(opened);
    if (last) latencies = typed.slice(WARMING).sort((a, b) => a - b);
  }
  const [read, open] = [median(reads), median(opens)];
  console.log(`${RECIPES} recipes              ms`);
  console.log(row('tamis read, cold', read));
  console.log(row('opened in an editor', open), ` ${(open / read).toFixed(2)} times a cold read`);
  console.log(`\nkeystroke to diagnostics  ms  (${latencies.length} keystrokes)`);
  for (const [name, share] of [
    ['half', 0.5],
    ['95 of 100', 0.95],
    ['99 of 100', 0.99],
    ['slowest', 1],
  ])
    console.log(row(name, latencies[Math.min(latencies.length - 1, Math.floor(latencies.length * share))]));
}

/** From the start of the server to the diagnostics of the whole book; then types into one recipe. */
async function serveOnce(folder, file, keystrokes) {
  const started = performance.now();
  const server = spawn(process.execPath, [command, 'serve'], { stdio: ['pipe', 'pipe', 'inherit'] });
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
  const opened = performance.now() - started;
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
  await connection.sendRequest('shutdown');
  await connection.sendNotification('exit');
  connection.dispose();
  return { opened, typed };
}

function timed(run) {
  const start = performance.now();
  run();
  return performance.now() - start;
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

function row(name, milliseconds) {
  return `${name.padEnd(22)}${milliseconds.toFixed(1).padStart(9)}`;
}
