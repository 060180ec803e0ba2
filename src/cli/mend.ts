/** Shows mends, asks which of the offered ones to make, and writes those that are to be written. */
import readline from 'node:readline/promises';
import type { HouseStyle } from '../manuscript/house-style.js';
import type { SourceFile } from '../manuscript/types.js';
import { type Choice, settleOverlaps } from '../mending/choice.js';
import { applyEdits } from '../mending/edits.js';
import { type MendedFile, type Mending, makeChosen } from '../mending/mend.js';
import { readManuscript } from '../reading/read.js';
import { mendsDiff, offeredList, offeredMends, visibleDiff } from '../reports/mends.js';
import { oneLine } from '../reports/text.js';
import { couldNot, Failure } from './failure.js';
import { writeMended } from './write-mended.js';

/** The list of what is offered, then the diff: as the files are, or as they will be once it is written. */
export function printMends(mending: Mending, only: readonly string[] | undefined, write: boolean): void {
  const reading = write ? mending.after : mending.before;
  const diff = mendsDiff(mending.files);
  process.stdout.write(offeredList(reading, only) + (process.stdout.isTTY ? visibleDiff(diff) : diff));
}

/** Each file by itself: one that cannot be written is told on stderr, and the others are written. */
export function writeMends(
  files: readonly MendedFile[],
  places: ReadonlyMap<string, string>,
  complain: (message: string) => void,
): void {
  for (const { path, before, after, mends } of files) {
    try {
      writeMended({ name: path, place: places.get(path)!, before, after });
      process.stdout.write(`# ${oneLine(path)}: ${mends === 1 ? '1 mend' : `${mends} mends`} written\n`);
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      complain(error.message);
      process.exitCode = couldNot;
    }
  }
}

/** Shows every mend that the rule offers and asks for it; returns the manuscript with those chosen. */
export async function chooseOffered(
  files: readonly SourceFile[],
  rule: string,
  style: HouseStyle,
  ask: (question: string) => Promise<string> = askTerminal,
  tell: (text: string) => void = (text) => process.stdout.write(text),
): Promise<Mending> {
  const marks = readManuscript(files, { only: [rule], style }).marks.filter(
    (mark) => offeredMends(mark).length > 0,
  );
  if (marks.length === 0) tell(`${rule} offers no mend here.\n`);
  const texts = new Map(files.map(({ path, text }) => [path, text]));
  const chosen: Choice[] = [];
  for (const mark of marks) {
    const offers = offeredMends(mark);
    tell(`\n${oneLine(mark.file)}: ${oneLine(mark.message)}\n`);
    offers.forEach((mend, index) => {
      const before = texts.get(mark.file)!;
      const diff = mendsDiff([{ path: mark.file, before, after: applyEdits(before, mend.edits) }]);
      tell(`${index + 1}  ${oneLine(mend.label)}\n${hunksOf(visibleDiff(diff))}`);
    });
    const answer = (await ask(question(offers.length))).trim().toLowerCase();
    if (answer === 'q') break;
    const mend = offers[answer === 'y' && offers.length === 1 ? 0 : Number.parseInt(answer, 10) - 1];
    if (mend === undefined) continue;
    if (settleOverlaps([...chosen, { mark, mend }]).length > chosen.length) chosen.push({ mark, mend });
    else tell('This changes what you have just changed; run the command again for it.\n');
  }
  const mending = makeChosen(files, chosen, { style });
  for (const { mark, mend } of mending.refused)
    tell(
      `Left as it was in ${oneLine(mark.file)}, since a new mark would come of it: ${oneLine(mend.label)}\n`,
    );
  return mending;
}

function question(offers: number): string {
  const numbers = offers === 1 ? '1 to make it' : `1 to ${offers} to make one`;
  return `${numbers}, Enter to leave it, q to stop: `;
}

/** A diff without the two lines that name the file. */
function hunksOf(diff: string): string {
  return diff.slice(diff.indexOf('@@'));
}

/** The end of the input is an answer too: stop. */
async function askTerminal(question: string): Promise<string> {
  const terminal = readline.createInterface({ input: process.stdin, output: process.stdout });
  const closed = new Promise<string>((resolve) => terminal.once('close', () => resolve('q')));
  try {
    return await Promise.race([terminal.question(question), closed]);
  } finally {
    terminal.close();
  }
}
