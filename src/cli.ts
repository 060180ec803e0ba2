#!/usr/bin/env node
/** The commands: what each is called, what it takes, and the only code that prints, opens the author's files and sets the exit status. */
import path from 'node:path';
import { Chalk, type ChalkInstance, supportsColor } from 'chalk';
import { Command, CommanderError, Option } from 'commander';
import { rules } from '../rules/index.js';
import type { Rule, Weight } from '../rules/rule.js';
import { couldNot, Failure } from './cli/failure.js';
import { type Gathered, gather } from './cli/files.js';
import { houseFile, houseStyle } from './cli/house.js';
import { chooseOffered, printMends, writeMends } from './cli/mend.js';
import { PageKeeper } from './cli/page-keeper.js';
import { progress } from './cli/progress.js';
import { ruleNamed, ruleNames } from './cli/rule-names.js';
import { writeNew, writeWhole } from './cli/write-whole.js';
import type { HouseStyle } from './manuscript/house-style.js';
import { mendManuscript } from './mending/mend.js';
import { readBook, readManuscript } from './reading/read.js';
import { newSince } from './reading/since.js';
import type { Reading } from './reading/types.js';
import { caution } from './reports/caution.js';
import { heldBack } from './reports/closing.js';
import { draftHouse } from './reports/draft-house.js';
import { explainRule, listRules } from './reports/explain.js';
import { galley } from './reports/galley.js';
import { html } from './reports/html.js';
import { json, jsonText } from './reports/json.js';
import { plain } from './reports/plain.js';
import { safetyPage } from './reports/safety-page.js';
import { sarif } from './reports/sarif.js';
import { showJson } from './reports/show.js';
import { showText } from './reports/show-text.js';
import { reportStylesheet } from './reports/stylesheet.js';
import { stylesheetMarkdown } from './reports/stylesheet-markdown.js';
import { oneLine } from './reports/text.js';
import { hasTopic } from './reports/topics.js';
import { countOf } from './reports/words.js';
import { version } from './version.js';

const weights: readonly Weight[] = ['fault', 'query', 'note'];

/** Columns of a report that goes to a file or a pipe. */
const pageColumns = 80;
/** ECMA-48: to the first line and column, and erase all. */
const emptyScreen = '\u001B[H\u001B[2J';
/** A line longer than this is hard to read back from. */
const widestColumns = 100;

interface ReadOptions {
  readonly as: 'galley' | 'plain' | 'json' | 'sarif' | 'html';
  readonly out?: string;
  readonly stopAt: Weight | 'never';
  readonly only?: string;
  readonly since?: string;
  readonly watch?: boolean;
  readonly house?: string;
}

interface MendOptions {
  readonly write?: true;
  readonly offered?: string;
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
      ['tamis mend book/', 'show what can be mended without a question'],
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
      .choices(['galley', 'plain', 'json', 'sarif', 'html'])
      .default('galley'),
  )
  .option('--out <file>', 'write the report to a file')
  .addOption(
    new Option('--stop-at <weight>', 'the least weight of a mark that makes the exit status 1')
      .choices([...weights, 'never'])
      .default('fault'),
  )
  .option('--only <rules>', 'only these rules, with commas between')
  .option('--since <file>', 'only marks that this earlier json reading does not have')
  .option('--watch', 'read again whenever a file changes, until Ctrl-C')
  .option('--house <file>', 'the house style; the nearest house-style.yaml upward if left out')
  .addHelpText(
    'after',
    () => `
Exit status: 0 no mark of that weight, 1 a mark of that weight or above, 2 something could not be read.
${helpAfter([
  ['tamis read', 'read the current folder'],
  ['tamis read book/soups leek.md', 'read a folder and a file'],
  ['tamis read --as plain book/', 'one line a mark, for editors and pipes'],
  ['tamis read --as json --out marks.json book/', 'write a report for other programs'],
  ['tamis read --since marks.json book/', 'hear of new marks only'],
  ['tamis read --only unlisted-ingredient book/', 'run one rule'],
])}`,
  )
  .action(read);

program
  .command('mend')
  .description('show the mends that cannot change the meaning, and write them when told to')
  .argument('[path...]', 'folders and files; the current folder if left out')
  .option('--write', 'write the sure mends into the files')
  .option('--offered <rule>', 'go through the mends that a rule offers, and write those that you choose')
  .option('--only <rules>', 'only the mends of these rules, with commas between')
  .addHelpText(
    'after',
    () => `
Exit status: 0 nothing to mend or all written, 1 there are sure mends that were not written, 2 something could not be read or written.
${helpAfter([
  ['tamis mend book/', 'show the sure mends as a diff, and list the offered ones'],
  ['tamis mend --write book/', 'write the sure mends'],
  ['tamis mend --offered range-reversed book/', 'choose, one by one, at a terminal'],
])}`,
  )
  .action(mend);

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
  .command('stylesheet')
  .description('compile the style sheet of a manuscript, or draft its house style')
  .argument('[path...]', 'folders and files; the current folder if left out')
  .addOption(
    new Option('--as <form>', 'how the style sheet is written')
      .choices(['markdown', 'json'])
      .default('markdown'),
  )
  .option('--out <file>', 'write it to a file')
  .option('--house <file>', 'the house style; the nearest house-style.yaml upward if left out')
  .option(
    '--draft-house',
    'write a house-style.yaml that states what most of the book does, where there is none',
  )
  .addHelpText('after', () =>
    helpAfter([
      ['tamis stylesheet --out style.md book/', 'write the style sheet for the editor'],
      ['tamis stylesheet --draft-house book/', 'write book/house-style.yaml'],
    ]),
  )
  .action(stylesheet);

program
  .command('explain')
  .description('tell what a rule looks for, why, and by which source')
  .argument('[rule]', 'the name of a rule; all are listed if left out')
  .option('--safety', 'print the page of all rules of food safety, in Markdown')
  .addHelpText('after', () =>
    helpAfter([
      ['tamis explain', 'list the rules by topic'],
      ['tamis explain unlisted-ingredient', 'tell about one rule'],
      ['tamis explain --safety', 'what the safety rules cover, and what not'],
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

async function read(paths: string[], options: ReadOptions): Promise<void> {
  const only = options.only === undefined ? undefined : ruleNames(options.only, rules);
  const ran = only === undefined ? rules : rules.filter((rule) => only.includes(rule.name));
  const known = options.since === undefined ? undefined : await knownSince(options.since, options.out);
  const write = (gathered: Gathered, whole: Reading): Reading => {
    const reading = known === undefined ? whole : newSince(whole, known);
    const text = report(reading, ran, options);
    if (options.out === undefined) process.stdout.write(text);
    else writeWhole(options.out, text, gathered.realPaths);
    // One line a mark has no line for what is left out.
    if (options.as === 'plain') {
      for (const sentence of heldBack(reading)) complain(sentence);
      // Nor for the caution, which every report of food safety carries once.
      if (hasTopic(reading.marks, ran, 'safety')) complain(caution);
    }
    return reading;
  };
  const gathered = open(paths);
  if (gathered.files.length === 0) return;
  const style = await styleOf(gathered, options.house);
  if (options.watch === true) return watchManuscript(paths, only, options, style, write);
  const { counts } = write(gathered, readAll(gathered, only, style));
  const counted = options.stopAt === 'never' ? [] : weights.slice(0, weights.indexOf(options.stopAt) + 1);
  if (process.exitCode !== couldNot && counted.some((weight) => counts[weight] > 0)) process.exitCode = 1;
}

/** Prints the report anew after each change; the exit status is that of a person who had enough: 0. */
async function watchManuscript(
  paths: readonly string[],
  only: readonly string[] | undefined,
  { out, house }: ReadOptions,
  first: HouseStyle,
  write: (gathered: Gathered, whole: Reading) => Reading,
): Promise<void> {
  // The library that watches files is loaded only here: every start would pay for it.
  const { watch } = await import('./cli/watch.js');
  const keeper = new PageKeeper();
  const named = paths.length === 0 ? ['.'] : paths;
  let style = first;
  let told: string | undefined;
  const look = async (): Promise<void> => {
    const gathered = gather(named);
    const { pages, changed } = keeper.read(gathered.files);
    const troubles = troublesOf(gathered);
    // A house style in the middle of being written leaves the last good one standing.
    style = await styleOf(gathered, house, (line) => troubles.push(line)).catch((error: unknown) => {
      if (!(error instanceof Failure)) throw error;
      troubles.push(error.message);
      return style;
    });
    const now = [JSON.stringify(style), ...troubles].join('\n');
    if (changed || told !== now) {
      told = now;
      if (process.stdout.isTTY && out === undefined) process.stdout.write(emptyScreen);
      write(gathered, readBook(pages, { style, ...(only === undefined ? {} : { only }) }));
      troubles.forEach(complain);
      complain(`watching ${countOf(pages.length, 'file', 'files')}; Ctrl-C ends`);
    }
  };
  const onBlind = (reason: string): void =>
    complain(`the system does not tell of every change (${reason}); some are seen a few seconds later`);
  await watch(named, { look, onBlind });
  process.exitCode = 0;
}

async function mend(paths: string[], options: MendOptions): Promise<void> {
  const only = options.only === undefined ? undefined : ruleNames(options.only, rules);
  const offered = options.offered === undefined ? undefined : ruleNamed(options.offered, rules).name;
  if (offered !== undefined && (only !== undefined || options.write === true))
    throw new Failure('--offered goes by itself: it writes what you choose, of one rule');
  if (offered !== undefined && !(process.stdin.isTTY && process.stdout.isTTY))
    throw new Failure(
      '--offered asks before each mend, and there is nobody to ask: run it at a terminal, or leave it out to see the list',
    );
  const gathered = open(paths);
  if (gathered.files.length === 0) return;
  const style = await styleOf(gathered);
  if (offered !== undefined) {
    const { files } = await chooseOffered(gathered.files, offered, style);
    writeMends(files, gathered.places, complain);
    return;
  }
  const { onPage, clear } = progress(process.stderr);
  const mending = mendManuscript(gathered.files, { onPage, style, ...(only === undefined ? {} : { only }) });
  clear();
  printMends(mending, only, options.write === true);
  if (options.write === true) writeMends(mending.files, gathered.places, complain);
  else if (process.exitCode !== couldNot && mending.files.length > 0) process.exitCode = 1;
}

async function show(paths: string[], options: { readonly as: 'text' | 'json' }): Promise<void> {
  const gathered = open(paths);
  if (gathered.files.length === 0) return;
  const { dishes } = readAll(gathered, [], await styleOf(gathered));
  process.stdout.write(options.as === 'json' ? showJson(dishes) : showText(dishes, screen()));
}

interface StylesheetOptions {
  readonly as: 'markdown' | 'json';
  readonly out?: string;
  readonly house?: string;
  readonly draftHouse?: boolean;
}

async function stylesheet(paths: string[], options: StylesheetOptions): Promise<void> {
  const gathered = open(paths);
  if (gathered.files.length === 0) return;
  const reading = readAll(gathered, [], await styleOf(gathered, options.house));
  if (options.draftHouse === true) {
    const folder = gathered.folders[0] ?? gathered.root;
    const file = path.resolve(options.out ?? path.join(folder, houseFile));
    writeNew(file, draftHouse(reading));
    process.stdout.write(
      `${path.relative(process.cwd(), file) || file} was written. Go through it before you keep it.\n`,
    );
    return;
  }
  const sheet = reportStylesheet(reading);
  const text = options.as === 'json' ? jsonText(sheet) : stylesheetMarkdown(sheet);
  if (options.out === undefined) process.stdout.write(text);
  else writeWhole(options.out, text, gathered.realPaths);
}

function explain(name: string | undefined, options: { readonly safety?: boolean }): void {
  if (options.safety === true) {
    process.stdout.write(safetyPage(rules));
    return;
  }
  process.stdout.write(
    name === undefined ? listRules(rules, screen()) : explainRule(ruleNamed(name, rules), screen()),
  );
}

/** Reads what was named from the disk, and tells on stderr what could not be read. */
function open(paths: readonly string[]): Gathered {
  const gathered = gather(paths.length === 0 ? ['.'] : paths);
  troublesOf(gathered).forEach(complain);
  if (gathered.troubles.length > 0) process.exitCode = couldNot;
  return gathered;
}

function troublesOf({ troubles }: Gathered): string[] {
  return troubles.map(({ where, what, remedy }) => `${where}: ${what}; ${remedy}`);
}

function styleOf(gathered: Gathered, named?: string, tell = complain): Promise<HouseStyle> {
  return houseStyle(
    gathered,
    named,
    rules.map((rule) => rule.name),
    tell,
  );
}

function readAll(gathered: Gathered, only: readonly string[] | undefined, style: HouseStyle): Reading {
  const { onPage, clear } = progress(process.stderr);
  try {
    return readManuscript(gathered.files, { onPage, style, ...(only === undefined ? {} : { only }) });
  } finally {
    clear();
  }
}

/** The library that checks the earlier reading is loaded only where there is one: every start would pay for it. */
async function knownSince(file: string, out: string | undefined): Promise<ReadonlySet<string>> {
  const since = await import('./cli/since.js');
  return since.knownSince(file, out);
}

function report(reading: Reading, ran: readonly Rule[], options: ReadOptions): string {
  if (options.as === 'json') return json(reading);
  if (options.as === 'html') return html(reading, ran);
  if (options.as === 'sarif') return sarif(reading, ran);
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
      for (const line of error.message.split('\n')) complain(line);
      process.exitCode = couldNot;
    } else {
      const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
      complain(`this is a mistake of the tool, not of the manuscript; please report it: ${detail}`);
      process.exitCode = couldNot;
    }
  }
}
