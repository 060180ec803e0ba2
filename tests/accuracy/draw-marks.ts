/**
 * Draws marks of the listing rules, of weight fault or query, at random from what they leave on the untouched corpus, to be judged by
 * a person: `npx tsx tests/accuracy/draw-marks.ts` prints file, line, rule and subject. The seed is fixed, so each draw is the same.
 */
import { rules } from '../../rules/index.js';
import { readManuscript } from '../../src/reading/read.js';
import { corpusIn, pickerFor } from './plants.js';

const SAMPLE = 200;
const only = rules.filter((rule) => rule.topic === 'listing').map((rule) => rule.name);
const files = corpusIn('../shared/corpus/public-domain') ?? [];
const marks = files.flatMap((file) => {
  const reading = readManuscript([file], { only });
  return reading.marks
    .filter(({ weight }) => weight !== 'note')
    .map((mark) =>
      [file.path, reading.pages[0]!.lines.line(mark.span.start), mark.rule, mark.subject].join('\t'),
    );
});
console.error(`${marks.length} marks`);
for (const mark of pickerFor('marks of the listing rules, drawn again')(marks, SAMPLE).sort())
  console.log(mark);
