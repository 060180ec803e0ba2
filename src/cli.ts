#!/usr/bin/env node
/** The commands: what each is called, what it takes, and the only code that prints, opens the author's files and sets the exit status. */
import { Chalk, type ChalkInstance, supportsColor } from 'chalk';
import { Command, CommanderError, Option } from 'commander';
import { rules } from '../rules/index.js';
import type { Weight } from '../rules/rule.js';
import { couldNot, Failure } from './cli/failure.js';
import { type Gathered, gather } from './cli/files.js';
import { progress } from './cli/progress.js';
import { ruleNamed, ruleNames } from './cli/rule-names.js';
import { writeWhole } from './cli/write-whole.js';
import { readManuscript } from './reading/read.js';
import type { Reading } from './reading/types.js';
import { explainRule, listRules } from './reports/explain.js';
import { galley } from './reports/galley.js';
import { json } from './reports/json.js';
import { plain } from './reports/plain.js';
import { showJson } from './reports/show.js';
import { showText } from './reports/show-text.js';
import { oneLine } from './reports/text.js';
import { version } from './version.js';

const weights: readonly Weight[] = ['fault', 'query', 'note'];

/** Columns of a report that goes to a file or a pipe. */
const pageColumns = 80;
/** A line longer than this is hard to read back from. */
const widestColumns = 100;

interface ReadOptions {
  readonly as: 'galley' | 'plain' | 'json';
  readonly out?: string;
  readonly stopAt: Weight | 'never';
  readonly only?: string;
}

const program = new Command('tamis')
  .description(
    'Reads cookbook manuscripts in Markdown and marks what disagrees: list and method, amounts, heat, promises.',
  )
  .version(version, '--version', 'print the version')
  .helpOption('-h, --help', 'print this help')
  .exitOverride()
  .addHelpText('after', () =>
    helpAfter([
      ['tamis read book/', 'read every Markdown file in a folder'],
      ['tamis show soup.md', 'print a recipe as it was understood'],
      ['tamis explain', 'list the rules'],
    ]),
  );

program
  .command('read')
  .description('read a manuscript and report the marks')
  .argument('[path...]', 'folders and files; the current folder if left out')
  .addOption(
    new Option('--as <form>', 'how the report is written')
      .choices(['galley', 'plain', 'json'])
      .default('galley'),
  )
  .option('--out <file>', 'write the report to a file')
  .addOption(
    new Option('--stop-at <weight>', 'the least weight of a mark that makes the exit status 1')
      .choices([...weights, 'never'])
      .default('fault'),
  )
  .option('--only <rules>', 'only these rules, with commas between')
  .addHelpText(
    'after',
    () => `
Exit status: 0 no mark of that weight, 1 a mark of that weight or above, 2 something could not be read.
${helpAfter([
  ['tamis read', 'read the current folder'],
  ['tamis read book/soups leek.md', 'read a folder and a file'],
  ['tamis read --as plain book/', 'one line a mark, for editors and pipes'],
  ['tamis read --as json --out marks.json book/', 'write a report for other programs'],
  ['tamis read --only unlisted-ingredient book/', 'run one rule'],
])}`,
  )
  .action(read);

program
  .command('show')
  .description('print recipes as they were understood')
  .argument('[path...]', 'folders and files; the current folder if left out')
  .addOption(new Option('--as <form>', 'how it is written').choices(['text', 'json']).default('text'))
  .addHelpText('after', () =>
    helpAfter([
      ['tamis show soup.md', 'each line as written, and as understood'],
      ['tamis show --as json book/', 'the same for other programs'],
    ]),
  )
  .action(show);

program
  .command('explain')
  .description('tell what a rule looks for, why, and by which source')
  .argument('[rule]', 'the name of a rule; all are listed if left out')
  .addHelpText('after', () =>
    helpAfter([
      ['tamis explain', 'list the rules by topic'],
      ['tamis explain unlisted-ingredient', 'tell about one rule'],
    ]),
  )
  .action(explain);

program
  .command('serve')
  .description('answer an editor: a language server over standard input and output')
  // Editors put this word behind every server's command.
  .addOption(new Option('--stdio').hideHelp())
  .addHelpText('after', () =>
    helpAfter([['tamis serve', 'what an editor runs; the README has its settings']]),
  )
  .action(async () => {
    // What only an editor needs is not loaded for a reading.
    const { serveEditor } = await import('./cli/serve.js');
    serveEditor();
  });

await main();

function read(paths: string[], options: ReadOptions): void {
  const only = options.only === undefined ? undefined : ruleNames(options.only, rules);
  const gathered = open(paths);
  if (gathered.files.length === 0) return;
  const reading = readAll(gathered, only);
  const text = report(reading, options);
  if (options.out === undefined) process.stdout.write(text);
  else writeWhole(options.out, text, gathered.realPaths);
  const counted = options.stopAt === 'never' ? [] : weights.slice(0, weights.indexOf(options.stopAt) + 1);
  if (process.exitCode !== couldNot && counted.some((weight) => reading.counts[weight] > 0))
    process.exitCode = 1;
}

function show(paths: string[], options: { readonly as: 'text' | 'json' }): void {
  const gathered = open(paths);
  if (gathered.files.length === 0) return;
  const { dishes } = readAll(gathered, []);
  process.stdout.write(options.as === 'json' ? showJson(dishes) : showText(dishes, screen()));
}

function explain(name: string | undefined): void {
  process.stdout.write(
    name === undefined ? listRules(rules, screen()) : explainRule(ruleNamed(name, rules), screen()),
  );
}

/** Reads what was named from the disk, and tells on stderr what could not be read. */
function open(paths: readonly string[]): Gathered {
  const gathered = gather(paths.length === 0 ? ['.'] : paths);
  for (const { where, what, remedy } of gathered.troubles) complain(`${where}: ${what}; ${remedy}`);
  if (gathered.troubles.length > 0) process.exitCode = couldNot;
  return gathered;
}

function readAll(gathered: Gathered, only: readonly string[] | undefined): Reading {
  const { onPage, clear } = progress(process.stderr);
  try {
    return readManuscript(gathered.files, only === undefined ? { onPage } : { onPage, only });
  } finally {
    clear();
  }
}

function report(reading: Reading, options: ReadOptions): string {
  if (options.as === 'json') return json(reading);
  if (options.as === 'plain') return plain(reading);
  const { color, width } =
    options.out === undefined ? screen() : { color: new Chalk({ level: 0 }), width: pageColumns };
  return galley(reading, { color, width, rules });
}

/** The colors and the width of where the report goes. */
function screen(): { color: ChalkInstance; width: number } {
  const width = process.stdout.isTTY
    ? Math.min(process.stdout.columns || pageColumns, widestColumns)
    : pageColumns;
  return { color: new Chalk({ level: colorLevel() }), width };
}

/** NO_COLOR (its informal standard: set and not empty) turns colors off, unless FORCE_COLOR asks for them, as in Node itself. */
function colorLevel(): 0 | 1 | 2 | 3 {
  const { NO_COLOR, FORCE_COLOR } = process.env;
  if (NO_COLOR && FORCE_COLOR === undefined) return 0;
  return supportsColor ? supportsColor.level : 0;
}

function complain(message: string): void {
  process.stderr.write(`tamis: ${oneLine(message)}\n`);
}

function helpAfter(examples: readonly (readonly [string, string])[]): string {
  const columns = Math.max(...examples.map(([command]) => command.length));
  return `\nExamples:\n${examples.map(([command, does]) => `  ${command.padEnd(columns)}  ${does}`).join('\n')}`;
}

/** A reader that closes the pipe early ("| head") has what it wanted: that is no error. */
function endEarly(error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE') process.exit();
  complain(`the report could not be written out (${error.code}); look at where the output goes`);
  process.exit(couldNot);
}

async function main(): Promise<void> {
  process.stdout.on('error', endEarly);
  process.stderr.on('error', () => process.exit());
  try {
    await program.parseAsync();
  } catch (error) {
    if (error instanceof CommanderError) {
      // Commander has printed its own message; help and version are no errors.
      process.exitCode = error.exitCode === 0 ? 0 : couldNot;
    } else if (error instanceof Failure) {
      complain(error.message);
      process.exitCode = couldNot;
    } else {
      const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
      complain(`this is a mistake of the tool, not of the manuscript; please report it: ${detail}`);
      process.exitCode = couldNot;
    }
  }
}
